package provingyard.season;

import provingyard.scenario.Point;
import provingyard.sensor.Surroundings;
import provingyard.world.hydraulics.WaterFlows;

/** The yard at a standing minute, with what a technician does to it by hand at one sensor. NaN leaves it as it is. */
final class BenchSurroundings implements Surroundings {

    private final SeasonSurroundings yard;
    private final Site site;

    /** m of water poured on the rain sensor in this minute. */
    double poured;

    /** m that warm air dries off the rain sensor in this minute. */
    double dried;

    /** m/s at the cups. */
    double wind = Double.NaN;

    /** °C at the freeze sensor. */
    double air = Double.NaN;

    /** Volume share of water at the probe. */
    double soil = Double.NaN;

    /** What flows in this minute. */
    WaterFlows flows;

    BenchSurroundings(Site site, SeasonSurroundings yard, WaterFlows flows) {
        this.site = site;
        this.yard = yard;
        this.flows = flows;
    }

    @Override
    public Air air(Point at, double height) {
        return new HandledAir(yard.air(at, height));
    }

    @Override
    public Soil soil(Point at, double depth, double support) {
        return new HandledSoil(yard.soil(at, depth, support));
    }

    @Override
    public Pipe pipe(String pipe, double along) {
        return new WatchedPipe(pipe, along);
    }

    private final class HandledAir implements Air {

        private final Air left;

        HandledAir(Air left) {
            this.left = left;
        }

        @Override
        public double temperature() {
            return Double.isNaN(air) ? left.temperature() : air;
        }

        @Override
        public double sun() {
            return Double.isNaN(air) ? left.sun() : 0;
        }

        @Override
        public double wind() {
            return Double.isNaN(wind) ? left.wind() : wind;
        }

        @Override
        public double rain() {
            return poured;
        }

        @Override
        public double spray() {
            return 0;
        }

        @Override
        public double drying() {
            return dried;
        }
    }

    private final class HandledSoil implements Soil {

        private final Soil left;

        HandledSoil(Soil left) {
            this.left = left;
        }

        @Override
        public double water() {
            return Double.isNaN(soil) ? left.water() : soil;
        }

        @Override
        public String id() {
            return left.id();
        }
    }

    private final class WatchedPipe implements Pipe {

        private final String pipe;
        private final double along;

        WatchedPipe(String pipe, double along) {
            this.pipe = pipe;
            this.along = along;
        }

        @Override
        public double flow() {
            return flows.at(pipe, along);
        }

        @Override
        public StraightPipe straight() {
            double[] straight = site.waterworks().straight(pipe, along);
            return new StraightPipe(straight[0], straight[1], site.waterworks().innerDiameter(pipe));
        }
    }
}
