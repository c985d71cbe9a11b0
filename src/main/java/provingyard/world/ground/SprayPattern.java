package provingyard.world.ground;

import java.util.Arrays;
import java.util.List;
import provingyard.numeric.Deterministic;
import provingyard.scenario.Catalogue.Profile;

/**
 * The ground that one head wets, as small parcels on rings; wind carries each parcel downwind.
 *
 * @param x east in m
 * @param y north in m
 * @param radius throw in calm air in m
 * @param from bearing in degrees where the arc begins
 * @param sweep degrees clockwise
 * @param profile shape along the throw
 * @param points relative application at equal steps from head to radius; measured profiles only
 * @param drop mean drop diameter in m
 */
record SprayPattern(
        double x,
        double y,
        double radius,
        double from,
        double sweep,
        Profile profile,
        List<Double> points,
        double drop) {

    private static final int RINGS = 48;
    private static final double DEGREES_EACH = 2.5;

    /** Share by which the throw against the wind is carried further than the throw across it (common practice). */
    private static final double SKEW = 0.25;

    /** Relative depth at a share of the throw, 0 to 1. */
    double depth(double along) {
        if (profile == Profile.UNIFORM) {
            return 1;
        }
        if (profile == Profile.TRIANGULAR) {
            return 1 - along;
        }
        double place = along * (points.size() - 1);
        int i = Math.min(points.size() - 2, (int) place);
        return points.get(i) + (place - i) * (points.get(i + 1) - points.get(i));
    }

    /**
     * How far wind carries drops of the far edge, in m. A drop flies for t = 2 sqrt(2 apex / g) with its apex at 0.14 of
     * the throw (25 to 30 degrees); it takes the wind's speed with the time constant v/g of its fall speed v; the wind at
     * half a metre is 0.69 of that at 2 m (FAO-56 eq. 47). Fall speed by Atlas et al. 1973 (from memory). The whole is a
     * ballistic estimate: common practice, no source.
     */
    static double edgeDrift(double radius, double drop, double wind) {
        double flight = 2 * Math.sqrt(2 * 0.14 * radius / 9.81);
        double lag = fallSpeed(drop) / 9.81;
        double carried = flight - lag * (1 - Deterministic.exp(-flight / lag));
        return 0.69 * wind * carried;
    }

    /** Fall speed in m/s of a drop of a diameter in m: 9.65 - 10.3 exp(-0.6 d), d in mm. Atlas et al. 1973 (memory). */
    static double fallSpeed(double drop) {
        return Math.max(0.2, 9.65 - 10.3 * Deterministic.exp(-600 * drop));
    }

    /**
     * Share of its throw that a pattern keeps across the wind: 2.5 % less for each 1.6 km/h over 4.8 km/h, at least 0.5.
     * Source: Keller and Bliesner 1990, their rule for the wetted diameter in wind (from memory).
     */
    static double across(double wind) {
        return Math.max(0.5, 1 - 0.025 * Math.max(0, 3.6 * wind - 4.8) / 1.6);
    }

    /**
     * The kernel in a wind (m/s at 2 m) from a bearing. Along the wind, drift grows with the square of the way along the
     * throw; across it, the pattern narrows.
     */
    SprayKernel kernel(GroundCells ground, double wind, double windFrom) {
        double toward = Math.toRadians(windFrom + 180);
        double windEast = Deterministic.sin(toward);
        double windNorth = Deterministic.cos(toward);
        double edge = edgeDrift(radius, drop, wind);
        double narrows = 1 - across(wind);
        double[] weight = new double[ground.count()];
        double off = 0;
        int spokes = Math.max(12, (int) Math.ceil(sweep / DEGREES_EACH));
        for (int a = 0; a < spokes; a++) {
            double bearing = Math.toRadians(from + sweep * (a + 0.5) / spokes);
            double east = Deterministic.sin(bearing);
            double north = Deterministic.cos(bearing);
            double withWind = east * windEast + north * windNorth;
            double carried = edge * (1 - SKEW * withWind);
            double throwEast = east - narrows * (east - withWind * windEast);
            double throwNorth = north - narrows * (north - withWind * windNorth);
            for (int r = 0; r < RINGS; r++) {
                double along = (r + 0.5) / RINGS;
                double drift = carried * along * along;
                double atX = x + throwEast * along * radius + windEast * drift;
                double atY = y + throwNorth * along * radius + windNorth * drift;
                double water = depth(along) * along;
                int cell = cellAt(ground, atX, atY);
                if (cell < 0) {
                    off += water;
                } else {
                    weight[cell] += water;
                }
            }
        }
        return normalised(weight, off);
    }

    static int cellAt(GroundCells ground, double x, double y) {
        int column = (int) Math.floor(x / ground.cellSize());
        int row = (int) Math.floor(y / ground.cellSize());
        boolean inside = column >= 0 && row >= 0 && column < ground.nx() && row < ground.ny();
        return inside ? row * ground.nx() + column : -1;
    }

    static SprayKernel normalised(double[] weight, double off) {
        int[] cells = new int[weight.length];
        int n = 0;
        double all = off;
        for (int c = 0; c < weight.length; c++) {
            if (weight[c] > 0) {
                cells[n++] = c;
                all += weight[c];
            }
        }
        double[] shares = new double[n];
        double landed = 0;
        for (int i = 0; i < n; i++) {
            shares[i] = weight[cells[i]] / all;
            landed += shares[i];
        }
        return new SprayKernel(Arrays.copyOf(cells, n), shares, off > 0 ? Math.max(0, 1 - landed) : 0);
    }
}
