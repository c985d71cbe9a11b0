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

/** What can be chosen about a freeze sensor. */
record FreezeOptions(List<Point> spots) implements Options {

    /** Trip temperatures in °C. */
    static final double[] BELOW = {1, 2, 3, 4.5};

    private static final double[] HEIGHTS = {1.2, 1.8};
    private static final double LEAST_BELOW = -1;
    private static final double MOST_BELOW = 8;

    /** K from trip to re-arming: usual, least and most. */
    private static final double GAP = 1.5;

    private static final double LEAST_GAP = 0.5;
    private static final double MOST_GAP = 5;

    @Override
    public SensorKind kind() {
        return SensorKind.FREEZE;
    }

    @Override
    public List<Fitting> places() {
        String id = Fitting.id(kind(), 1);
        Interlock shut = new Interlock(id, Action.SHUT, List.of());
        return spots.stream()
                .map(at -> new Fitting(
                        new Placement.Freeze(id, at, Mount.POST, HEIGHTS[0], BELOW[2], BELOW[2] + GAP), shut, null))
                .toList();
    }

    @Override
    public List<Fitting> settings(Fitting fitting) {
        return DoubleStream.of(BELOW)
                .mapToObj(below -> trips(fitting, below, GAP))
                .toList();
    }

    @Override
    public List<Fitting> switches(Fitting fitting) {
        List<Fitting> all = new ArrayList<>(fitting.actions(Action.SKIP, Action.PAUSE, Action.SHUT));
        Placement.Freeze f = (Placement.Freeze) fitting.placement();
        if (f.mount() == Mount.POST) {
            for (double height : HEIGHTS) {
                all.add(fitting.with(new Placement.Freeze(f.id(), f.at(), f.mount(), height, f.below(), f.rearm())));
            }
        }
        return all;
    }

    @Override
    public List<Dial<Fitting>> dials(Fitting fitting) {
        Placement.Freeze f = (Placement.Freeze) fitting.placement();
        double gap = f.rearm() - f.below();
        return List.of(
                new Dial<>(LEAST_BELOW, MOST_BELOW, 0.1, f.below(), v -> trips(fitting, v, gap)),
                new Dial<>(LEAST_GAP, MOST_GAP, 0.5, gap, v -> trips(fitting, f.below(), v)));
    }

    private static Fitting trips(Fitting fitting, double below, double gap) {
        Placement.Freeze f = (Placement.Freeze) fitting.placement();
        double rearm = Math.rint(10 * (below + gap)) / 10;
        return fitting.with(new Placement.Freeze(f.id(), f.at(), f.mount(), f.height(), below, rearm));
    }
}
