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

    private boolean covered(Point at) {
        return at.equals(eave);
    }

    @Override
    public double airTemperature(Point at, double height) {
        return air;
    }

    @Override
    public double sunOn(Point at, double height) {
        return sun;
    }

    @Override
    public double wind(Point at, double height) {
        return wind;
    }

    @Override
    public double rain(Point at, double height) {
        return covered(at) ? 0 : rain;
    }

    @Override
    public double spray(Point at, double height) {
        return covered(at) ? 0 : spray;
    }

    @Override
    public double drying(Point at, double height) {
        return drying;
    }

    @Override
    public double soilWater(Point at, double depth, double support) {
        return water;
    }

    @Override
    public String soilAt(Point at) {
        return soil;
    }

    @Override
    public double flow(String on, double along) {
        return flow;
    }

    @Override
    public StraightPipe straightPipe(String on, double along) {
        return pipe;
    }
}
