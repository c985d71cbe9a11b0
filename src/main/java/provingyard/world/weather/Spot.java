package provingyard.world.weather;

import java.util.Arrays;
import provingyard.numeric.Deterministic;
import provingyard.world.yard.Wall;
import provingyard.world.yard.Yard;

/**
 * The climate at one place: geometry is asked once, so that each minute costs little.
 *
 * <p>Readings of the true air, without any sensor's noise or lag. Holds a cache of sun and shade, which any thread may
 * fill with the same numbers.
 */
public final class Spot {

    private static final int WIND_BEARINGS = 36;
    private static final int SUN_STEP = 2;

    /**
     * Share of a wall's surplus temperature that the air right at it takes: 10 K of a sunny wall give 2.5 K; common
     * practice, no source.
     */
    private static final double AIR_AT_WALL = 0.25;

    /**
     * K per W/m2 by which a small unshielded body in still air is over the air: 4.8 K in 800 W/m2, less in wind;
     * common practice, no source.
     */
    private static final double SUN_WARMING = 0.006;

    /** Share of drying that goes with radiation by day, the rest goes with wind; common practice, no source. */
    private static final double DRYING_BY_SUN = 0.7;

    /** Faster drying per K of local warmth, as saturation pressure grows (Clausius-Clapeyron near 10 °C). */
    private static final double DRYING_BY_WARMTH = 0.065;

    private final Yard yard;
    private final double x;
    private final double y;
    private final double h;
    private final double skyView;
    private final double rainShare;
    private final double layering;
    private final double ventWarmth;
    private final double wallNearness;
    private final StoredHeat.Facing wallFaces;
    private final boolean wallHeated;
    private final double profile;
    private final double[] shelter = new double[WIND_BEARINGS];
    private final float[] sunlit = new float[(360 / SUN_STEP) * (90 / SUN_STEP)];

    Spot(LocalClimate climate, Yard yard, double x, double y, double h) {
        this.yard = yard;
        this.x = x;
        this.y = y;
        this.h = h;
        skyView = yard.skyView(x, y, h);
        rainShare = yard.rainShare(x, y, h);
        layering = LocalClimate.inversion(h, yard.skyView(x, y, 0)) + climate.pool(x, y, h);
        ventWarmth = climate.vent(x, y, h);
        Wall wall = yard.nearestWall(x, y);
        wallNearness = wall == null ? 0 : LocalClimate.nearness(wall, h);
        wallFaces = StoredHeat.Facing.of(wall == null ? 0 : wall.faces());
        wallHeated = wall != null && wall.heated();
        profile = profile(h);
        for (int i = 0; i < WIND_BEARINGS; i++) {
            shelter[i] = yard.shelter(x, y, h, i * 360.0 / WIND_BEARINGS);
        }
        Arrays.fill(sunlit, Float.NaN);
    }

    /** Wind at a height as a share of the wind at 2 m over short grass, 0.1 m at least (FAO-56 eq. 47). */
    static double profile(double h) {
        return Deterministic.log(67.8 * Math.max(0.1, h) - 5.42) / 4.87;
    }

    /** Air temperature in °C. */
    public double air(Weather w, StoredHeat stored) {
        return w.air() - LocalClimate.stillness(w) * layering + warmth(w, stored);
    }

    /** Temperature in °C of a small body without a radiation shield: the air, and the sun upon it. */
    public double unshielded(Weather w, StoredHeat stored) {
        return air(w, stored) + SUN_WARMING * sun(w) / (1 + wind(w));
    }

    /** K that walls and vents add to the air. */
    public double warmth(Weather w, StoredHeat stored) {
        double wind = w.wind() * shelter(w.windFrom());
        double heated = wallHeated ? LocalClimate.heatedWalls(w.air(), wind) : 0;
        double sunned = AIR_AT_WALL * stored.facing(wallFaces) * LocalClimate.unmixed(wind);
        return wallNearness * (heated + sunned) + ventWarmth;
    }

    /** Wind in m/s: the profile over height, and shelter or speed-up by what stands around. */
    public double wind(Weather w) {
        return w.wind() * profile * shelter(w.windFrom());
    }

    /** Rain of this minute in m that reaches the place. */
    public double rain(Weather w) {
        return w.rain() * rainShare;
    }

    /** Radiation in W/m2 on a flat plate: the beam if the sun is not hidden, and the sky's share by sky view. */
    public double sun(Weather w) {
        if (w.sun() <= 0) {
            return 0;
        }
        double diffuse = StoredHeat.diffuseShare(w);
        return w.sun() * ((1 - diffuse) * sunlit(w) + diffuse * skyView);
    }

    /**
     * Depth in m that a wetted flat disc could lose in this minute: reference evapotranspiration, its radiation part in
     * proportion to the local sun, its wind part to the local wind, and faster by walls and vents. Common practice, no
     * source.
     */
    public double evaporation(Weather w, StoredHeat stored) {
        if (w.reference() == 0) {
            return 0;
        }
        double bySun = w.sun() > 5 ? DRYING_BY_SUN : 0;
        double sunShare = bySun > 0 ? sun(w) / w.sun() : 0;
        double windShare = profile * shelter(w.windFrom());
        double share = bySun * sunShare + (1 - bySun) * windShare;
        return w.reference() * share * (1 + DRYING_BY_WARMTH * warmth(w, stored));
    }

    private double shelter(double from) {
        double steps = StoredHeat.turned(from) / (360.0 / WIND_BEARINGS);
        int first = (int) steps % WIND_BEARINGS;
        double share = steps - Math.floor(steps);
        return (1 - share) * shelter[first] + share * shelter[(first + 1) % WIND_BEARINGS];
    }

    /** Share of the beam that arrives, looked up in steps of 2 degrees. */
    private double sunlit(Weather w) {
        if (w.sunAltitude() <= 0) {
            return 0;
        }
        int up = Math.min(90 / SUN_STEP - 1, (int) (w.sunAltitude() / SUN_STEP));
        int around = (int) (StoredHeat.turned(w.sunBearing()) / SUN_STEP) % (360 / SUN_STEP);
        int at = up * (360 / SUN_STEP) + around;
        if (Float.isNaN(sunlit[at])) {
            sunlit[at] = (float) yard.sunlit(x, y, h, (up + 0.5) * SUN_STEP, (around + 0.5) * SUN_STEP);
        }
        return sunlit[at];
    }
}
