package provingyard.call;

import provingyard.scenario.Point;
import provingyard.sensor.Surroundings;
import provingyard.world.hydraulics.WaterFlows;
import provingyard.world.hydraulics.Waterworks;

/**
 * What a hand does to a sensor in one minute, in place of the weather: water poured on it, cups turned, or pipes that flow
 * as they do.
 *
 * @param poured m in this minute
 * @param wind m/s at the cups
 * @param flows what flows; null where no flow sensor is looked at
 */
record ByHand(double poured, double wind, WaterFlows flows, Waterworks pipes) implements Surroundings {

    /** °C of the air meanwhile: mild, so that nothing freezes. */
    private static final double MILD = 15;

    @Override
    public Air air(Point at, double height) {
        return new HandledAir();
    }

    @Override
    public Soil soil(Point at, double depth, double support) {
        throw new UnsupportedOperationException("hands do nothing to soil");
    }

    @Override
    public Pipe pipe(String pipe, double along) {
        return new Flowing(pipe, along);
    }

    private final class HandledAir implements Air {

        @Override
        public double temperature() {
            return MILD;
        }

        @Override
        public double sun() {
            return 0;
        }

        @Override
        public double wind() {
            return wind;
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
            return 0;
        }
    }

    private final class Flowing implements Pipe {

        private final String pipe;
        private final double along;

        Flowing(String pipe, double along) {
            this.pipe = pipe;
            this.along = along;
        }

        @Override
        public double flow() {
            return flows.at(pipe, along);
        }

        @Override
        public StraightPipe straight() {
            double[] straight = pipes.straight(pipe, along);
            return new StraightPipe(straight[0], straight[1], pipes.innerDiameter(pipe));
        }
    }
}
