package provingyard.season;

import java.util.List;
import provingyard.scenario.Catalogue;
import provingyard.scenario.Point;
import provingyard.sensor.Surroundings;
import provingyard.world.ground.Ground;
import provingyard.world.ground.Watering;
import provingyard.world.hydraulics.WaterFlows;
import provingyard.world.weather.Spot;
import provingyard.world.weather.StoredHeat;
import provingyard.world.weather.Weather;
import provingyard.world.yard.Yard;

/** What the world is like around each sensor in one minute. */
record SeasonSurroundings(
        Site site, Spots spots, Weather now, StoredHeat heat, Ground ground, WaterFlows flows, Watering landed)
        implements Surroundings {

    /** Spray reaches a catcher in full below this height in m, and none above {@link #SPRAY_GONE}. */
    private static final double SPRAY_FULL = 1.0;

    /** Height in m that sprays and rotors hardly reach (common practice, no source). */
    private static final double SPRAY_GONE = 3.0;

    private Spot spot(Point at, double height) {
        return spots.of(at, height);
    }

    @Override
    public double airTemperature(Point at, double height) {
        return spot(at, height).air(now, heat);
    }

    /** Temperature in °C of a small body without a radiation shield. */
    double unshielded(Point at, double height) {
        return spot(at, height).unshielded(now, heat);
    }

    @Override
    public double sunOn(Point at, double height) {
        return now.sun() > 0 ? spot(at, height).sun(now) : 0;
    }

    @Override
    public double wind(Point at, double height) {
        return spot(at, height).wind(now);
    }

    @Override
    public double rain(Point at, double height) {
        return now.rain() > 0 ? spot(at, height).rain(now) : 0;
    }

    @Override
    public double spray(Point at, double height) {
        if (landed == null) {
            return 0;
        }
        int cell = site.yard().cellAt(at.x(), at.y());
        return cell < 0 ? 0 : landed.depth(cell) * sprayShare(height);
    }

    /** Share of the spray over a spot that still flies at a height in m. */
    static double sprayShare(double height) {
        return Math.max(0, Math.min(1, (SPRAY_GONE - height) / (SPRAY_GONE - SPRAY_FULL)));
    }

    @Override
    public double drying(Point at, double height) {
        return spot(at, height).evaporation(now, heat);
    }

    @Override
    public double soilWater(Point at, double depth, double support) {
        Yard yard = site.yard();
        int own = yard.cellAt(at.x(), at.y());
        if (own < 0 || !yard.planted(own)) {
            return 0;
        }
        double sum = ground.waterContent(own, depth);
        int count = 1;
        int reach = (int) Math.ceil(support / yard.cellSize());
        for (int j = -reach; j <= reach; j++) {
            for (int i = -reach; i <= reach; i++) {
                double dx = i * yard.cellSize();
                double dy = j * yard.cellSize();
                int cell = yard.cellAt(at.x() + dx, at.y() + dy);
                boolean within = cell >= 0
                        && cell != own
                        && yard.planted(cell)
                        && new Point(yard.x(cell), yard.y(cell)).distance(at) <= support;
                if (within) {
                    sum += ground.waterContent(cell, depth);
                    count++;
                }
            }
        }
        return sum / count;
    }

    @Override
    public String soilAt(Point at) {
        int cell = site.yard().cellAt(at.x(), at.y());
        List<Catalogue.Soil> soils = site.scenario().catalogue().soils();
        return cell >= 0 && site.yard().planted(cell)
                ? soils.get(site.yard().soil(cell)).id()
                : null;
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
