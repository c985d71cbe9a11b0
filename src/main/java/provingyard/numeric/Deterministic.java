package provingyard.numeric;

/**
 * Transcendental functions that give the same bits on every machine, so that a season replays exactly.
 *
 * <p>The core calls these and never {@code Math.exp, pow, log, sin}, whose last bits may differ between processors
 * and compilers. Angles are in radians.
 */
public final class Deterministic {

    private Deterministic() {}

    /** e to the x. */
    public static double exp(double x) {
        return StrictMath.exp(x);
    }

    /** Natural logarithm of x. */
    public static double log(double x) {
        return StrictMath.log(x);
    }

    /** Common logarithm of x. */
    public static double log10(double x) {
        return StrictMath.log10(x);
    }

    /** x to the y. */
    public static double pow(double x, double y) {
        return StrictMath.pow(x, y);
    }

    /** Sine of an angle in radians. */
    public static double sin(double radians) {
        return StrictMath.sin(radians);
    }

    /** Cosine of an angle in radians. */
    public static double cos(double radians) {
        return StrictMath.cos(radians);
    }

    /** Tangent of an angle in radians. */
    public static double tan(double radians) {
        return StrictMath.tan(radians);
    }

    /** Angle whose sine is x, in radians. */
    public static double asin(double x) {
        return StrictMath.asin(x);
    }

    /** Angle whose cosine is x, in radians. */
    public static double acos(double x) {
        return StrictMath.acos(x);
    }

    /** Angle whose tangent is x, in radians. */
    public static double atan(double x) {
        return StrictMath.atan(x);
    }

    /** Angle of the point (x, y) from the x axis, in radians, -pi to pi. */
    public static double atan2(double y, double x) {
        return StrictMath.atan2(y, x);
    }

    /** Length of the hypotenuse. */
    public static double hypot(double x, double y) {
        return StrictMath.hypot(x, y);
    }

    /** Hyperbolic tangent of x. */
    public static double tanh(double x) {
        return StrictMath.tanh(x);
    }
}
