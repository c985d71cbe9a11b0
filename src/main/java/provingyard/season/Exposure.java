package provingyard.season;

import java.util.HashMap;
import java.util.Map;
import provingyard.control.Controller;
import provingyard.scenario.Point;
import provingyard.sensor.Readings;
import provingyard.sensor.Sensors;
import provingyard.sensor.SoilSensor;
import provingyard.sensor.Surroundings;
import provingyard.setup.Placement;
import provingyard.world.hydraulics.WaterFlows;
import provingyard.world.hydraulics.Waterworks;

/**
 * What the sensors of a season were exposed to, minute by minute, so that sensors and controller can live the same days
 * again under other faults of sensors, wires and pipes in a thousandth of the time: the ground is not lived again. Air,
 * rain and sun do not depend on what the controller does. Spray on a sensor and water in the soil do, and are those of
 * the lived season. Safe for several threads.
 */
public final class Exposure {

    /** Sensors and controller in one minute, and what the sensors then showed. */
    public record Devices(Sensors sensors, Controller controller, Readings readings) {

        /** The same in the same state. */
        public Devices copy() {
            return new Devices(sensors.copy(), controller.copy(), readings);
        }
    }

    private record Spot(Point at, double height) {}

    private record Probe(Point at, double depth) {}

    /** Kinds of values of the air, in the order in which they are kept. */
    private static final int AIR = 6;

    private final long from;
    private final long until;
    private final Devices begin;
    private final Map<Spot, double[]> airs = new HashMap<>();
    private final Map<Probe, double[]> soils = new HashMap<>();
    private final Map<Probe, String> soilIds = new HashMap<>();

    private Exposure(Season season, long until) {
        from = season.tick();
        this.until = until;
        begin = season.devices();
        int minutes = (int) (until - from);
        for (Placement placement : season.setUp().sensors()) {
            if (placement instanceof Placement.Soil soil) {
                soils.put(new Probe(soil.at(), soil.depth()), new double[minutes]);
            } else if (!(placement instanceof Placement.Flow)) {
                airs.put(spot(placement), new double[AIR * minutes]);
            }
        }
    }

    private static Spot spot(Placement placement) {
        if (placement instanceof Placement.Rain rain) {
            return new Spot(rain.at(), rain.height());
        }
        if (placement instanceof Placement.Wind wind) {
            return new Spot(wind.at(), wind.height());
        }
        Placement.Freeze freeze = (Placement.Freeze) placement;
        return new Spot(freeze.at(), freeze.height());
    }

    /** Lives a season on from its minute until another one and keeps what its sensors are exposed to. */
    public static Exposure of(Season season, long until) {
        if (until < season.tick() || until > season.end()) {
            throw new IllegalArgumentException("minute " + until + " is not one that the season will live");
        }
        Exposure exposure = new Exposure(season, until);
        exposure.record(season);
        return exposure;
    }

    private void record(Season season) {
        Map<Spot, Surroundings.Air> air = new HashMap<>();
        Map<Probe, Surroundings.Soil> soil = new HashMap<>();
        while (season.tick() < until) {
            int minute = (int) (season.tick() - from);
            season.advance();
            SeasonSurroundings around = season.surroundings();
            airs.forEach((spot, values) ->
                    keep(air.computeIfAbsent(spot, s -> around.air(s.at(), s.height())), values, AIR * minute));
            soils.forEach((probe, values) -> values[minute] = soil.computeIfAbsent(
                            probe, p -> around.soil(p.at(), p.depth(), SoilSensor.SUPPORT))
                    .water());
        }
        soil.forEach((probe, found) -> soilIds.put(probe, found.id()));
    }

    private static void keep(Surroundings.Air air, double[] values, int at) {
        values[at] = air.temperature();
        values[at + 1] = air.sun();
        values[at + 2] = air.wind();
        values[at + 3] = air.rain();
        values[at + 4] = air.spray();
        values[at + 5] = air.drying();
    }

    /** First minute kept. */
    public long from() {
        return from;
    }

    /** First minute that is not kept any more. */
    public long until() {
        return until;
    }

    /** Sensors and controller before the first minute; a copy of one's own. */
    public Devices begin() {
        return begin.copy();
    }

    /** The days once more, for one run of sensors; pipes say what flows in them. */
    public Again again(Waterworks pipes) {
        return new Again(pipes);
    }

    /** Surroundings that go from minute to minute as they were, with other flows. Mutable. */
    public final class Again implements Surroundings {

        private final Waterworks pipes;
        private int minute;
        private WaterFlows flows;

        private Again(Waterworks pipes) {
            this.pipes = pipes;
        }

        /** Goes to a minute of the season with what flows in it; null where nothing flows. */
        public void go(long tick, WaterFlows water) {
            minute = (int) (tick - from);
            flows = water;
        }

        @Override
        public Air air(Point at, double height) {
            return new KeptAir(this, airs.get(new Spot(at, height)));
        }

        @Override
        public Soil soil(Point at, double depth, double support) {
            Probe probe = new Probe(at, depth);
            return new KeptSoil(this, soils.get(probe), soilIds.get(probe));
        }

        @Override
        public Pipe pipe(String pipe, double along) {
            return new FlowingPipe(this, pipe, along);
        }
    }

    private record KeptAir(Again again, double[] values) implements Surroundings.Air {

        private double value(int kind) {
            return values[AIR * again.minute + kind];
        }

        @Override
        public double temperature() {
            return value(0);
        }

        @Override
        public double sun() {
            return value(1);
        }

        @Override
        public double wind() {
            return value(2);
        }

        @Override
        public double rain() {
            return value(3);
        }

        @Override
        public double spray() {
            return value(4);
        }

        @Override
        public double drying() {
            return value(5);
        }
    }

    private record KeptSoil(Again again, double[] values, String id) implements Surroundings.Soil {

        @Override
        public double water() {
            return values[again.minute];
        }
    }

    private record FlowingPipe(Again again, String pipe, double along) implements Surroundings.Pipe {

        @Override
        public double flow() {
            return again.flows == null ? 0 : again.flows.at(pipe, along);
        }

        @Override
        public Surroundings.StraightPipe straight() {
            double[] straight = again.pipes.straight(pipe, along);
            return new Surroundings.StraightPipe(straight[0], straight[1], again.pipes.innerDiameter(pipe));
        }
    }
}
