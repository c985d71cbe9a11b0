package provingyard.world.weather;

import java.util.List;
import provingyard.numeric.Deterministic;
import provingyard.scenario.Scenario;
import provingyard.scenario.YardPlan.Hollow;
import provingyard.scenario.YardPlan.Vent;
import provingyard.world.yard.Wall;
import provingyard.world.yard.Yard;

/**
 * The air of a yard, spot by spot: how it differs from the open-field weather.
 *
 * <p>Ask {@link #at} once for each place and keep the {@link Spot}; ask {@link #cold} for a map. Immutable. Heights in
 * m over the ground, temperatures in °C, differences in K.
 */
public final class LocalClimate {

    /** Height in m of the map of cold. */
    public static final double MAP_HEIGHT = 0.1;

    /** Height in m of the open-field weather. */
    static final double SCREEN = 2;

    /**
     * K by which the air at 0.1 m is colder than at 2 m on a fully clear and calm night. Bounds: 1 to 3 K over slippery
     * roads between 2.5 and 0.1 m (Bogren, Gustavsson and Karlsson 2001), 2.2 K in the mean between 5 ft and 3 in
     * (Fairbanks Museum), at most some 10 K over snow (Brugge 2011).
     */
    private static final double INVERSION = 3;

    private static final double LOWEST = 0.1;
    private static final double HIGHEST = 10;

    /** Wind in m/s at 2 m that halves the night's layering; common practice, no source. */
    private static final double CALM = 1.5;

    /** A cold pool keeps its full depth of cold up to this height, m, where it is stated. */
    private static final double POOL_STATED_AT = 0.5;

    /** Height in m over which a cold pool thins to 1/e; stable layers of small basins, common practice, no source. */
    private static final double POOL_THINS_OVER = 1.2;

    /** Distance in m over which a wall's warmth falls to 1/e; common practice, no source. */
    private static final double WALL_REACH = 0.4;

    /** Height in m up to which a vent's plume is as warm as stated, and over which it then thins. */
    private static final double PLUME_TOP = 2.5;

    private static final double PLUME_THINS_OVER = 1;

    private final Yard yard;
    private final List<Hollow> hollows;
    private final List<Vent> vents;
    private final float[] cooling;
    private final float[] heating;
    private final float[] venting;

    private LocalClimate(Yard yard, Scenario scenario) {
        this.yard = yard;
        hollows = scenario.yard().hollows();
        vents = scenario.yard().vents();
        cooling = new float[yard.cells()];
        heating = new float[yard.cells()];
        venting = new float[yard.cells()];
        for (int i = 0; i < yard.cells(); i++) {
            if (!yard.builtOver(i)) {
                double x = yard.x(i);
                double y = yard.y(i);
                Wall wall = yard.nearestWall(x, y);
                cooling[i] = (float) (inversion(MAP_HEIGHT, yard.skyView(i)) + pool(x, y, MAP_HEIGHT));
                heating[i] = wall != null && wall.heated() ? (float) nearness(wall, MAP_HEIGHT) : 0;
                venting[i] = (float) vent(x, y, MAP_HEIGHT);
            }
        }
    }

    /** The local climate of a yard. */
    public static LocalClimate of(Yard yard, Scenario scenario) {
        return new LocalClimate(yard, scenario);
    }

    /** The climate at a place, ready to be asked each minute. */
    public Spot at(double x, double y, double h) {
        return new Spot(this, yard, x, y, h);
    }

    /**
     * Air temperature in °C at 0.1 m over a cell, without the heat stored in walls.
     *
     * <p>For maps: three numbers per cell, two per minute.
     */
    public double coldAt(int cell, Weather w) {
        return coldAt(cell, w.air(), stillness(w), heatedWalls(w.air(), w.wind()));
    }

    /** {@link #coldAt} of all cells. */
    public float[] cold(Weather w) {
        float[] out = new float[cooling.length];
        double still = stillness(w);
        double walls = heatedWalls(w.air(), w.wind());
        for (int i = 0; i < out.length; i++) {
            out[i] = (float) coldAt(i, w.air(), still, walls);
        }
        return out;
    }

    private double coldAt(int cell, double air, double still, double walls) {
        return air - still * cooling[cell] + walls * heating[cell] + venting[cell];
    }

    /**
     * How far the night lets the air lie in layers: clear sky x calm x night, 0 to 1.
     *
     * <p>(1 - cloud) / (1 + (wind / 1.5)2), by day 0; layers begin when the sun is 5 degrees high and are full when it
     * is 3 degrees down. Common practice, no source.
     */
    public static double stillness(Weather w) {
        double night = clamp((5 - w.sunAltitude()) / 8);
        if (night == 0) {
            return 0;
        }
        double windy = w.wind() / CALM;
        return night * clamp(1 - w.cloud()) / (1 + windy * windy);
    }

    /**
     * K by which the air at a height is colder than at 2 m on a fully clear and calm night (negative above 2 m): linear
     * in the logarithm of height between 0.1 and 10 m, and below 2 m in proportion to the ground's view of the sky.
     */
    static double inversion(double h, double groundSkyView) {
        double height = Math.max(LOWEST, Math.min(HIGHEST, h));
        double coldness = INVERSION * Deterministic.log(SCREEN / height) / Deterministic.log(SCREEN / LOWEST);
        return coldness > 0 ? coldness * groundSkyView : coldness;
    }

    /** K by which hollows cool the air at a point on a fully clear and calm night: the deepest counts. */
    double pool(double x, double y, double h) {
        double most = 0;
        for (Hollow hollow : hollows) {
            double dx = x - hollow.at().x();
            double dy = y - hollow.at().y();
            double apart = (dx * dx + dy * dy) / Math.max(1e-9, hollow.reach() * hollow.reach());
            most = Math.max(most, hollow.colder() * Math.max(0, 1 - apart));
        }
        return most * Deterministic.exp(-Math.max(0, h - POOL_STATED_AT) / POOL_THINS_OVER);
    }

    /** K that vents add at a point: linear from the mouth to nothing at the reach. */
    double vent(double x, double y, double h) {
        double sum = 0;
        for (Vent vent : vents) {
            double dx = x - vent.at().x();
            double dy = y - vent.at().y();
            double apart = Math.sqrt(dx * dx + dy * dy) / Math.max(1e-9, vent.reach());
            sum += vent.adds() * Math.max(0, 1 - apart);
        }
        return sum * Deterministic.exp(-Math.max(0, h - PLUME_TOP) / PLUME_THINS_OVER);
    }

    /** Share of a wall's warmth that reaches a point: 1 at the wall, 1/e at 0.4 m from it or above its top. */
    static double nearness(Wall wall, double h) {
        double above = Math.max(0, h - wall.height());
        return Deterministic.exp(-(wall.distance() + above) / WALL_REACH);
    }

    /**
     * K that a heated building adds to the air at its wall: 1 K when it is 20 K colder outside than an 18 °C room, less
     * in mild weather, mixed away by the wind. Common practice, no source.
     */
    static double heatedWalls(double air, double wind) {
        return clamp((18 - air) / 20) * unmixed(wind);
    }

    /** Share of a wall's warmth that wind (m/s at 2 m) leaves at it: half at 2 m/s. Common practice, no source. */
    static double unmixed(double wind) {
        return 1 / (1 + wind * wind / 4);
    }

    private static double clamp(double share) {
        return Math.max(0, Math.min(1, share));
    }
}
