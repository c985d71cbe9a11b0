package provingyard.world.electric;

import provingyard.numeric.Deterministic;

/**
 * A wire joint in a valve box.
 *
 * <p>Its series resistance goes from dry to wet by equal ratios, R(w) = dry (wet / dry)^w (a choice without source: a
 * corroded joint's resistance changes by orders of magnitude). It leaks to earth as {@link Conditions#leak} says, from the
 * side toward the controller.
 *
 * @param dryOhms series resistance in dry soil in ohm, above 0
 * @param wetOhms series resistance in saturated soil in ohm, above 0
 * @param leakOhms to earth in saturated soil in ohm; infinite for a sealed joint
 */
public record Splice(double dryOhms, double wetOhms, double leakOhms) {

    /** A sealed joint: 0.01 ohm (common practice, no source). */
    public static final Splice SOUND = new Splice(0.01, 0.01, Double.POSITIVE_INFINITY);

    public Splice {
        Conditions.above(dryOhms, "dryOhms");
        Conditions.above(wetOhms, "wetOhms");
        Conditions.above(leakOhms, "leakOhms");
    }

    /** Series resistance in ohm at a wetness from 0 to 1. */
    double ohms(double wetness) {
        return dryOhms * Deterministic.pow(wetOhms / dryOhms, wetness);
    }
}
