package provingyard.study;

import java.util.ArrayList;
import java.util.List;
import provingyard.scenario.Point;
import provingyard.scenario.SensorKind;
import provingyard.setup.Interlock;
import provingyard.setup.Interlock.Action;
import provingyard.setup.Mount;
import provingyard.setup.Placement;

/** What can be chosen about a rain sensor. */
record RainOptions(List<Point> spots) implements Options {

    /** Set points in m: 1/8, 1/4 and 1/2 in. */
    static final double[] TRIPS = {0.003175, 0.00635, 0.0127};

    static final double[] VENTS = {0.3, 0.5, 0.8};
    private static final double[] HEIGHTS = {2.1, 3};
    private static final double LEAST_TRIP = 0.003;
    private static final double MOST_TRIP = 0.0254;

    @Override
    public SensorKind kind() {
        return SensorKind.RAIN;
    }

    @Override
    public List<Fitting> places() {
        String id = Fitting.id(kind(), 1);
        Interlock skip = new Interlock(id, Action.SKIP, List.of());
        return spots.stream()
                .map(at ->
                        new Fitting(new Placement.Rain(id, at, Mount.POST, HEIGHTS[0], TRIPS[1], VENTS[1]), skip, null))
                .toList();
    }

    @Override
    public List<Fitting> settings(Fitting fitting) {
        List<Fitting> all = new ArrayList<>();
        for (double trip : TRIPS) {
            for (double vent : VENTS) {
                all.add(set(fitting, trip, vent));
            }
        }
        return all;
    }

    @Override
    public List<Fitting> switches(Fitting fitting) {
        List<Fitting> all = new ArrayList<>(fitting.actions(Action.SKIP, Action.PAUSE, Action.SHUT));
        Placement.Rain r = (Placement.Rain) fitting.placement();
        if (r.mount() == Mount.POST) {
            for (double height : HEIGHTS) {
                all.add(fitting.with(new Placement.Rain(r.id(), r.at(), r.mount(), height, r.trip(), r.vent())));
            }
        }
        return all;
    }

    @Override
    public List<Dial<Fitting>> dials(Fitting fitting) {
        Placement.Rain r = (Placement.Rain) fitting.placement();
        return List.of(
                new Dial<>(LEAST_TRIP, MOST_TRIP, 1e-4, r.trip(), v -> set(fitting, v, r.vent())),
                new Dial<>(0, 1, 0.05, r.vent(), v -> set(fitting, r.trip(), v)));
    }

    private static Fitting set(Fitting fitting, double trip, double vent) {
        Placement.Rain r = (Placement.Rain) fitting.placement();
        return fitting.with(new Placement.Rain(r.id(), r.at(), r.mount(), r.height(), trip, vent));
    }
}
