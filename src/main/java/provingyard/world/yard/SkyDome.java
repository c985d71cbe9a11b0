package provingyard.world.yard;

import provingyard.numeric.Deterministic;

/**
 * Sky, sun and rain at any point and height, by rays along 64 bearings against the things of the yard.
 *
 * <p>Sky view is the share of a flat plate's diffuse radiation that comes from open sky: the open part of each bearing
 * weighted by the cosine of the angle from the zenith, so that a horizon at height angle a leaves cos2(a) of its
 * bearing (Oke 1987, Boundary Layer Climates, from memory). Roofs are flat at eave height.
 */
final class SkyDome {

    /** Bearings looked at; their middles lie symmetric about the axes. */
    static final int BEARINGS = 64;

    /** Sectors that bearings are gathered in. */
    static final int SECTORS = 16;

    private static final double[] EAST = new double[BEARINGS];
    private static final double[] NORTH = new double[BEARINGS];

    static {
        for (int i = 0; i < BEARINGS; i++) {
            double bearing = (i + 0.5) * 2 * Math.PI / BEARINGS;
            EAST[i] = Deterministic.sin(bearing);
            NORTH[i] = Deterministic.cos(bearing);
        }
    }

    private final Caster[] casters;
    private final int edges;

    SkyDome(Caster[] casters) {
        this.casters = casters;
        int most = 2;
        for (Caster c : casters) {
            most = Math.max(most, c.edges());
        }
        edges = most;
    }

    /**
     * Share of the rain that falls at a height angle above the one whose tangent is u.
     *
     * <p>Rain comes from all bearings alike, with slopes t (horizontal way per fall, wind over fall speed) between 0
     * and 1, the steeper the likelier: density 2 (1 - t), a mean slant of 18 degrees and none beyond 45. Common
     * practice, no source; drops of 1 to 3 mm fall at 4 to 8 m/s (Gunn and Kinzer 1949, from memory).
     */
    static double rainSteeperThan(double u) {
        if (u <= 1) {
            return 1;
        }
        double t = 1 / u;
        return t * (2 - t);
    }

    /** A scratch array long enough for any caster of the yard. */
    double[] scratch() {
        return new double[edges];
    }

    /**
     * Open sky and arriving rain at a point, both 0 to 1, into {@code out[0]} and {@code out[1]}.
     *
     * @param horizon is given the mean height of the horizon in degrees for each of {@value #SECTORS} sectors
     * @param at index of the first of them
     */
    void look(double x, double y, double h, Sight sight, double[] scratch, double[] out, double[] horizon, int at) {
        double sky = 0;
        double rain = 0;
        for (int i = 0; i < BEARINGS; i++) {
            along(x, y, h, EAST[i], NORTH[i], sight, scratch);
            if (sight.open()) {
                sky += 1;
                rain += 1;
            } else {
                double open = sight.openSky();
                sky += open;
                rain += sight.openRain();
                horizon[at + i * SECTORS / BEARINGS] += height(open) * SECTORS / BEARINGS;
            }
        }
        out[0] = sky / BEARINGS;
        out[1] = rain / BEARINGS;
    }

    /** For each bearing the height angle in degrees of a plain horizon that would leave as much sky. */
    double[] horizon(double x, double y, double h) {
        Sight sight = new Sight();
        double[] scratch = scratch();
        double[] degrees = new double[BEARINGS];
        for (int i = 0; i < BEARINGS; i++) {
            along(x, y, h, EAST[i], NORTH[i], sight, scratch);
            degrees[i] = height(sight.openSky());
        }
        return degrees;
    }

    private static double height(double openSky) {
        double taken = Math.max(0, Math.min(1, 1 - openSky));
        return Math.toDegrees(Deterministic.asin(Math.sqrt(taken)));
    }

    /** Share of the sun's beam that arrives, angles in degrees; 0 by night. */
    double sunlit(double x, double y, double h, double altitude, double bearing) {
        if (altitude <= 0) {
            return 0;
        }
        if (altitude >= 89.9) {
            return sunlit(x, y, h, 89.8, bearing);
        }
        double b = Math.toRadians(bearing);
        Sight sight = new Sight();
        along(x, y, h, Deterministic.sin(b), Deterministic.cos(b), sight, scratch());
        return sight.through(Deterministic.tan(Math.toRadians(altitude)));
    }

    private void along(double x, double y, double h, double dx, double dy, Sight sight, double[] scratch) {
        sight.clear();
        for (Caster c : casters) {
            if (!c.misses(x, y, dx, dy)) {
                c.cast(x, y, h, dx, dy, sight, scratch);
            }
        }
    }
}
