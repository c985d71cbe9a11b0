package provingyard.season;

import java.util.Arrays;
import provingyard.scenario.Point;
import provingyard.sensor.Surroundings;
import provingyard.world.ground.Ground;
import provingyard.world.ground.Watering;
import provingyard.world.hydraulics.WaterFlows;
import provingyard.world.weather.Spot;
import provingyard.world.weather.StoredHeat;
import provingyard.world.weather.Weather;
import provingyard.world.yard.Yard;

/** What the world of one season is like around each sensor in the minute being lived. Mutable. */
final class SeasonSurroundings implements Surroundings {

    /** Spray reaches a catcher in full below this height in m, and none above {@link #SPRAY_GONE}. */
    private static final double SPRAY_FULL = 1.0;

    /** Height in m that sprays and rotors hardly reach (common practice, no source). */
    private static final double SPRAY_GONE = 3.0;

    private final Site site;
    private final Ground ground;
    private Weather now;
    private StoredHeat heat;
    private WaterFlows flows;
    private Watering landed;

    SeasonSurroundings(Site site, Ground ground) {
        this.site = site;
        this.ground = ground;
    }

    /** Goes on to a minute; {@code landed} is null when no water flew. */
    void minute(Weather weather, StoredHeat stored, WaterFlows water, Watering spray) {
        now = weather;
        heat = stored;
        flows = water;
        landed = spray;
    }

    @Override
    public SpotAir air(Point at, double height) {
        return new SpotAir(at, height);
    }

    @Override
    public Soil soil(Point at, double depth, double support) {
        return new ProbedSoil(at, depth, support);
    }

    @Override
    public Pipe pipe(String pipe, double along) {
        return new PipePlace(pipe, along);
    }

    /** Share of the spray over a spot that still flies at a height in m. */
    static double sprayShare(double height) {
        return Math.max(0, Math.min(1, (SPRAY_GONE - height) / (SPRAY_GONE - SPRAY_FULL)));
    }

    /** The air at a spot. */
    final class SpotAir implements Air {

        private final Spot spot;
        private final int cell;
        private final double sprayShare;

        SpotAir(Point at, double height) {
            spot = site.spot(at, height);
            cell = site.yard().cellAt(at.x(), at.y());
            sprayShare = sprayShare(height);
        }

        @Override
        public double temperature() {
            return spot.air(now, heat);
        }

        /** Temperature in °C of a small body without a radiation shield. */
        double unshielded() {
            return spot.unshielded(now, heat);
        }

        @Override
        public double sun() {
            return spot.sun(now);
        }

        @Override
        public double wind() {
            return spot.wind(now);
        }

        @Override
        public double rain() {
            return spot.rain(now);
        }

        @Override
        public double spray() {
            return landed == null || cell < 0 ? 0 : landed.depth(cell) * sprayShare;
        }

        @Override
        public double drying() {
            return spot.evaporation(now, heat);
        }
    }

    private final class ProbedSoil implements Soil {

        private final double depth;
        private final int[] cells;

        ProbedSoil(Point at, double depth, double support) {
            this.depth = depth;
            cells = cells(site.yard(), at, support);
        }

        @Override
        public double water() {
            double sum = 0;
            for (int cell : cells) {
                sum += ground.waterContent(cell, depth);
            }
            return cells.length == 0 ? 0 : sum / cells.length;
        }

        @Override
        public String id() {
            return cells.length == 0
                    ? null
                    : site.scenario()
                            .catalogue()
                            .soils()
                            .get(site.yard().soil(cells[0]))
                            .id();
        }

        /** The planted cell at a place first, then those around it whose centre is within reach; none under paving. */
        private static int[] cells(Yard yard, Point at, double support) {
            int own = yard.cellAt(at.x(), at.y());
            if (own < 0 || !yard.planted(own)) {
                return new int[0];
            }
            int reach = (int) Math.ceil(support / yard.cellSize());
            int[] found = new int[(2 * reach + 1) * (2 * reach + 1) + 1];
            int count = 0;
            found[count++] = own;
            for (int j = -reach; j <= reach; j++) {
                for (int i = -reach; i <= reach; i++) {
                    int cell = yard.cellAt(at.x() + i * yard.cellSize(), at.y() + j * yard.cellSize());
                    boolean within = cell >= 0
                            && cell != own
                            && yard.planted(cell)
                            && new Point(yard.x(cell), yard.y(cell)).distance(at) <= support;
                    if (within) {
                        found[count++] = cell;
                    }
                }
            }
            return Arrays.copyOf(found, count);
        }
    }

    private final class PipePlace implements Pipe {

        private final String pipe;
        private final double along;
        private WaterFlows seen;
        private double flow;

        PipePlace(String pipe, double along) {
            this.pipe = pipe;
            this.along = along;
        }

        /** Flows are looked up when they are others than in the last minute. */
        @Override
        public double flow() {
            if (flows != seen) {
                seen = flows;
                flow = flows.at(pipe, along);
            }
            return flow;
        }

        @Override
        public StraightPipe straight() {
            double[] straight = site.waterworks().straight(pipe, along);
            return new StraightPipe(straight[0], straight[1], site.waterworks().innerDiameter(pipe));
        }
    }
}
