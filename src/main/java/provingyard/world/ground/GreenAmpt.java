package provingyard.world.ground;

import provingyard.numeric.Deterministic;

/**
 * Infiltration by Green and Ampt.
 *
 * <p>Sources: Green and Ampt 1911; ponding by Mein and Larson 1973; the explicit quadratic by Li, Stevens and Simons
 * 1976 (formula from memory). Lengths and times are in any consistent units (m and s in the simulator). {@code moisture}
 * is suction head at the front times the content the front fills: M = psi (theta_s - theta_i); with water of depth h
 * standing on the soil M = (psi + h) (theta_s - theta_i).
 */
public final class GreenAmpt {

    private GreenAmpt() {}

    /** Infiltration capacity f = K (1 + M / F) after F infiltrated; infinite while F is 0. */
    public static double capacity(double conductivity, double moisture, double infiltrated) {
        return infiltrated <= 0 ? Double.POSITIVE_INFINITY : conductivity * (1 + moisture / infiltrated);
    }

    /** Infiltrated depth at which a steady rate begins to pond, Fp = K M / (i - K); infinite when i is not over K. */
    public static double pondingDepth(double conductivity, double moisture, double rate) {
        return rate <= conductivity ? Double.POSITIVE_INFINITY : conductivity * moisture / (rate - conductivity);
    }

    /** Time at which a steady rate on fresh soil begins to pond, tp = Fp / i (Mein and Larson). */
    public static double pondingTime(double conductivity, double moisture, double rate) {
        return pondingDepth(conductivity, moisture, rate) / rate;
    }

    /** Time in which a ponded soil takes in F from dry: t = (F - M ln(1 + F/M)) / K. */
    public static double time(double conductivity, double moisture, double infiltrated) {
        return (infiltrated - moisture * Deterministic.log(1 + infiltrated / moisture)) / conductivity;
    }

    /**
     * Infiltrated depth of a ponded soil after a time step: the F that solves F - F0 - M ln((F + M) / (F0 + M)) = K t, by
     * Newton's method.
     */
    public static double ponded(double conductivity, double moisture, double before, double time) {
        double target = conductivity * time;
        double start = before + moisture;
        double f = before + quadratic(conductivity, moisture, before, time);
        for (int i = 0; i < 30; i++) {
            double error = f - before - moisture * Deterministic.log((f + moisture) / start) - target;
            double change = error * (f + moisture) / f;
            f -= change;
            if (Math.abs(change) <= 1e-14 * f) {
                break;
            }
        }
        return f;
    }

    /** Infiltrated depth after a step under a steady rate, ponding where it comes within the step. */
    public static double after(double conductivity, double moisture, double before, double rate, double time) {
        double pondsAt = pondingDepth(conductivity, moisture, rate);
        double unponded = before + rate * time;
        if (unponded <= pondsAt) {
            return unponded;
        }
        double untilPonding = Math.max(0, (pondsAt - before) / rate);
        double from = Math.max(before, pondsAt);
        return ponded(conductivity, moisture, from, time - untilPonding);
    }

    /**
     * Depth that a ponded soil takes in within a step, by the explicit quadratic of Li et al. 1976: one square root, no
     * logarithm. Against {@link #ponded}: too little by 3.6 % (0.32 mm) in the first minute on fresh sand, by at most 0.6 %
     * on loam and finer soils; in a chain of one-minute steps the error falls from there (tested).
     */
    public static double quadratic(double conductivity, double moisture, double before, double time) {
        double linear = conductivity * time - 2 * before;
        double root = Math.sqrt(linear * linear + 8 * conductivity * time * (moisture + before));
        return 0.5 * (linear + root);
    }
}
