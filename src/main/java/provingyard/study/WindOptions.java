package provingyard.study;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import provingyard.scenario.Point;
import provingyard.scenario.SensorKind;
import provingyard.setup.Interlock;
import provingyard.setup.Interlock.Action;
import provingyard.setup.Mount;
import provingyard.setup.Placement;

/**
 * What can be chosen about a wind sensor.
 *
 * @param sprayed zones with heads, which wind matters to
 */
record WindOptions(List<Point> spots, List<String> sprayed) implements Options {

    /** Trip speeds in m/s. */
    static final double[] TRIPS = {3, 4, 5, 6.5};

    private static final double HEIGHT = 3;
    private static final double[] AVERAGINGS = {60, 300, 600};
    private static final double[] HOLDS = {0, 600, 1800};
    private static final double LEAST_TRIP = 2;
    private static final double MOST_TRIP = 10;

    /** Re-arms at so much of the trip speed. */
    private static final double REARM = 0.8;

    @Override
    public SensorKind kind() {
        return SensorKind.WIND;
    }

    @Override
    public List<Fitting> places() {
        String id = Fitting.id(kind(), 1);
        Interlock pause = new Interlock(id, Action.PAUSE, sprayed);
        return spots.stream()
                .map(at -> new Fitting(
                        new Placement.Wind(
                                id, at, Mount.POST, HEIGHT, TRIPS[1], REARM * TRIPS[1], AVERAGINGS[1], HOLDS[1]),
                        pause,
                        null))
                .toList();
    }

    @Override
    public List<Fitting> settings(Fitting fitting) {
        return DoubleStream.of(TRIPS).mapToObj(v -> trips(fitting, v)).toList();
    }

    @Override
    public List<Fitting> switches(Fitting fitting) {
        List<Fitting> all = new ArrayList<>(fitting.actions(Action.SKIP, Action.PAUSE, Action.SHUT));
        Action now =
                fitting.interlock() == null ? Action.PAUSE : fitting.interlock().action();
        all.add(fitting.with(now, List.of()));
        all.add(fitting.with(now, sprayed));
        Placement.Wind w = (Placement.Wind) fitting.placement();
        for (double averaging : AVERAGINGS) {
            all.add(times(fitting, averaging, w.hold()));
        }
        for (double hold : HOLDS) {
            all.add(times(fitting, w.averaging(), hold));
        }
        return all;
    }

    @Override
    public List<Dial<Fitting>> dials(Fitting fitting) {
        double now = ((Placement.Wind) fitting.placement()).trip();
        return List.of(new Dial<>(LEAST_TRIP, MOST_TRIP, 0.1, now, v -> trips(fitting, v)));
    }

    private static Fitting trips(Fitting fitting, double trip) {
        Placement.Wind w = (Placement.Wind) fitting.placement();
        double rearm = Math.rint(10 * REARM * trip) / 10;
        return fitting.with(
                new Placement.Wind(w.id(), w.at(), w.mount(), w.height(), trip, rearm, w.averaging(), w.hold()));
    }

    private static Fitting times(Fitting fitting, double averaging, double hold) {
        Placement.Wind w = (Placement.Wind) fitting.placement();
        return fitting.with(
                new Placement.Wind(w.id(), w.at(), w.mount(), w.height(), w.trip(), w.rearm(), averaging, hold));
    }
}
