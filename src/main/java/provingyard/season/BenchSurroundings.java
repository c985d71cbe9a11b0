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
    public double airTemperature(Point at, double height) {
        return Double.isNaN(air) ? yard.airTemperature(at, height) : air;
    }

    @Override
    public double sunOn(Point at, double height) {
        return Double.isNaN(air) ? yard.sunOn(at, height) : 0;
    }

    @Override
    public double wind(Point at, double height) {
        return Double.isNaN(wind) ? yard.wind(at, height) : wind;
    }

    @Override
    public double rain(Point at, double height) {
        return poured;
    }

    @Override
    public double spray(Point at, double height) {
        return 0;
    }

    @Override
    public double drying(Point at, double height) {
        return dried;
    }

    @Override
    public double soilWater(Point at, double depth, double support) {
        return Double.isNaN(soil) ? yard.soilWater(at, depth, support) : soil;
    }

    @Override
    public String soilAt(Point at) {
        return yard.soilAt(at);
    }

    @Override
    public double flow(String pipe, double along) {
        return flows.at(pipe, along);
    }

    @Override
    public StraightPipe straightPipe(String pipe, double along) {
        double[] straight = site.waterworks().straight(pipe, along);
        return new StraightPipe(straight[0], straight[1], site.waterworks().innerDiameter(pipe));
    }
}
