package provingyard.world.yard;

import java.util.Arrays;

/**
 * What stands in the way along one bearing: bands of height angle, each letting a share of the light and a share of the
 * rain through. Bands are kept by the tangent of the height angle, so no trigonometry is needed to build them.
 */
final class Sight {

    private double[] low = new double[16];
    private double[] high = new double[16];
    private double[] light = new double[16];
    private double[] rain = new double[16];
    private double[] scratch = new double[34];
    private int count;

    /** Begins a new bearing. */
    void clear() {
        count = 0;
    }

    /** Whether nothing stands in the way. */
    boolean open() {
        return count == 0;
    }

    /**
     * A band in the way.
     *
     * @param from tangent of its lower height angle, 0 at the horizon
     * @param to tangent of its upper height angle; infinite overhead
     * @param lightThrough share of light that passes
     * @param rainThrough share of rain that passes
     */
    void add(double from, double to, double lightThrough, double rainThrough) {
        if (!(to > from)) {
            return;
        }
        if (count == low.length) {
            grow();
        }
        low[count] = from;
        high[count] = to;
        light[count] = lightThrough;
        rain[count] = rainThrough;
        count++;
    }

    private void grow() {
        int n = 2 * count;
        low = Arrays.copyOf(low, n);
        high = Arrays.copyOf(high, n);
        light = Arrays.copyOf(light, n);
        rain = Arrays.copyOf(rain, n);
        scratch = new double[2 * n + 2];
    }

    /** Share of light that comes through at one height angle, given by its tangent. */
    double through(double tangent) {
        double share = 1;
        for (int i = 0; i < count; i++) {
            if (tangent >= low[i] && tangent < high[i]) {
                share *= light[i];
            }
        }
        return share;
    }

    /** Open share of this bearing's sky, weighted by the cosine of the angle from the zenith. */
    double openSky() {
        return open(true);
    }

    /** Share of the rain from this bearing that arrives. */
    double openRain() {
        return open(false);
    }

    private double open(boolean forLight) {
        if (count == 0) {
            return 1;
        }
        double[] by = forLight ? light : rain;
        int n = 0;
        for (int i = 0; i < count; i++) {
            n = insert(weight(low[i], forLight), n);
            n = insert(weight(high[i], forLight), n);
        }
        double sum = scratch[0] + 1 - scratch[n - 1];
        for (int k = 1; k < n; k++) {
            double width = scratch[k] - scratch[k - 1];
            if (width > 0) {
                sum += width * through(scratch[k - 1] + 0.5 * width, by, forLight);
            }
        }
        return sum;
    }

    private double through(double at, double[] by, boolean forLight) {
        double share = 1;
        for (int i = 0; i < count; i++) {
            if (at > weight(low[i], forLight) && at < weight(high[i], forLight)) {
                share *= by[i];
            }
        }
        return share;
    }

    private int insert(double value, int n) {
        int k = n;
        for (; k > 0 && scratch[k - 1] > value; k--) {
            scratch[k] = scratch[k - 1];
        }
        scratch[k] = value;
        return n + 1;
    }

    /** Share of all light, or of all rain, that arrives below a height angle given by its tangent u. */
    private static double weight(double u, boolean forLight) {
        if (u == Double.POSITIVE_INFINITY) {
            return 1;
        }
        return forLight ? u * u / (1 + u * u) : 1 - SkyDome.rainSteeperThan(u);
    }
}
