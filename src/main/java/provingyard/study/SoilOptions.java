package provingyard.study;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import provingyard.scenario.Point;
import provingyard.scenario.SensorKind;
import provingyard.season.Siting;
import provingyard.setup.Interlock;
import provingyard.setup.Interlock.Action;
import provingyard.setup.Placement;

/** What can be chosen about a soil moisture sensor. Shares are of the available water at its place. */
record SoilOptions(List<Point> spots, Siting siting) implements Options {

    /** Wet at these shares. */
    static final double[] WET = {0.5, 0.65, 0.8, 0.95};

    /** Dry at so much of the wet share. */
    private static final double DRY = 0.6;

    /** Depths in m. */
    private static final double[] DEPTHS = {0.05, 0.1, 0.15};

    private static final double LEAST = 0.1;
    private static final double LEAST_WET = 0.3;
    private static final double MOST_WET = 1.1;

    /** Volume share from dry to wet, at least; and what can be set. */
    private static final double APART = 0.01;

    @Override
    public SensorKind kind() {
        return SensorKind.SOIL;
    }

    @Override
    public List<Fitting> places() {
        String id = Fitting.id(kind(), 1);
        Interlock block = new Interlock(id, Action.BLOCK, List.of());
        return spots.stream()
                .map(at -> new Fitting(probe(id, at, DEPTHS[1], WET[2]), block, null))
                .toList();
    }

    private Placement probe(String id, Point at, double depth, double share) {
        return new Placement.Soil(id, at, depth, siting.soil(at), volume(at, DRY * share), volume(at, share));
    }

    private double volume(Point at, double share) {
        return Math.rint(siting.volumeShare(at, share) / APART) * APART;
    }

    @Override
    public List<Fitting> settings(Fitting fitting) {
        Placement.Soil s = (Placement.Soil) fitting.placement();
        return DoubleStream.of(WET)
                .mapToObj(share -> fitting.with(probe(s.id(), s.at(), s.depth(), share)))
                .toList();
    }

    @Override
    public List<Fitting> switches(Fitting fitting) {
        List<Fitting> all = new ArrayList<>(fitting.actions(Action.BLOCK, Action.ALLOW, Action.START));
        Placement.Soil s = (Placement.Soil) fitting.placement();
        for (double depth : DEPTHS) {
            all.add(fitting.with(new Placement.Soil(s.id(), s.at(), depth, s.soil(), s.dry(), s.wet())));
        }
        return all;
    }

    @Override
    public List<Dial<Fitting>> dials(Fitting fitting) {
        Placement.Soil s = (Placement.Soil) fitting.placement();
        double least = siting.volumeShare(s.at(), LEAST);
        double leastWet = siting.volumeShare(s.at(), LEAST_WET);
        double most = siting.volumeShare(s.at(), MOST_WET);
        return List.of(
                new Dial<>(leastWet, most, APART / 2, s.wet(), v -> set(fitting, Math.min(s.dry(), v - APART), v)),
                new Dial<>(
                        least, most - APART, APART / 2, s.dry(), v -> set(fitting, v, Math.max(s.wet(), v + APART))));
    }

    private static Fitting set(Fitting fitting, double dry, double wet) {
        Placement.Soil s = (Placement.Soil) fitting.placement();
        return fitting.with(new Placement.Soil(s.id(), s.at(), s.depth(), s.soil(), dry, wet));
    }
}
