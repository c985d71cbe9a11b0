package provingyard.sensor;

import provingyard.TestYards;
import provingyard.scenario.Point;

/** A yard of plain numbers: whatever a test sets is true everywhere, under an eave rain and spray do not reach. */
public final class FakeSurroundings implements Surroundings {

    public double air = 15;
    public double sun;
    public double wind = 1;
    public double rain;
    public double spray;
    public double drying;
    public double water = 0.2;
    public String soil = TestYards.SOIL;
    public double flow;
    public StraightPipe pipe = new StraightPipe(10, 10, 0.0302);
    public Point eave;

    @Override
    public Air air(Point at, double height) {
        return new FakeAir(at);
    }

    @Override
    public Soil soil(Point at, double depth, double support) {
        return new FakeSoil();
    }

    @Override
    public Pipe pipe(String on, double along) {
        return new FakePipe();
    }

    private final class FakeAir implements Air {

        private final Point at;

        FakeAir(Point at) {
            this.at = at;
        }

        private boolean covered() {
            return at.equals(eave);
        }

        @Override
        public double temperature() {
            return air;
        }

        @Override
        public double sun() {
            return sun;
        }

        @Override
        public double wind() {
            return wind;
        }

        @Override
        public double rain() {
            return covered() ? 0 : rain;
        }

        @Override
        public double spray() {
            return covered() ? 0 : spray;
        }

        @Override
        public double drying() {
            return drying;
        }
    }

    private final class FakeSoil implements Soil {

        @Override
        public double water() {
            return water;
        }

        @Override
        public String id() {
            return soil;
        }
    }

    private final class FakePipe implements Pipe {

        @Override
        public double flow() {
            return flow;
        }

        @Override
        public StraightPipe straight() {
            return pipe;
        }
    }
}
