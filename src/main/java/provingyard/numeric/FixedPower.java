package provingyard.numeric;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * A power function x^a with a fixed exponent a: the same bits on every machine, no allocation, a few nanoseconds.
 *
 * <p>Method: x = 2^e c (1 + t) with c the middle of one of 256 equal parts of [1, 2), so |t| is below 2^-9; then x^a =
 * (2^e)^a c^a (1 + t)^a. The first two factors come from tables built once by {@code StrictMath.pow}, the third from
 * the binomial series to the fifth power of t, to the tenth for |a| above 2 (a common table-driven scheme; Tang 1989
 * describes its kind). The relative error against {@code StrictMath.pow} is below 2e-15 for |a| up to 20 (tested).
 */
public final class FixedPower {

    private static final int PARTS_BITS = 8;
    private static final int PARTS = 1 << PARTS_BITS;
    private static final int EXPONENTS = 2047;
    private static final double SHORT_SERIES = 2;
    private static final long WITHIN_PART_MASK = (1L << (52 - PARTS_BITS)) - 1;
    private static final long ONE_BITS = 0x3ff0000000000000L;
    private static final double FIRST_MIDDLE = 1 + 0.5 / PARTS;
    private static final Map<Double, FixedPower> MADE = new ConcurrentHashMap<>();

    private static final double[] INVERSE_MIDDLE = new double[PARTS];

    static {
        for (int i = 0; i < PARTS; i++) {
            INVERSE_MIDDLE[i] = 1.0 / middle(i);
        }
    }

    private final double exponent;
    private final boolean isSteep;
    private final double[] ofPowerOfTwo = new double[EXPONENTS];
    private final double[] ofMiddle = new double[PARTS];
    private final double c2;
    private final double c3;
    private final double c4;
    private final double c5;
    private final double c6;
    private final double c7;
    private final double c8;
    private final double c9;
    private final double c10;

    private FixedPower(double exponent) {
        this.exponent = exponent;
        for (int e = 1; e < EXPONENTS; e++) {
            ofPowerOfTwo[e] = StrictMath.pow(Double.longBitsToDouble((long) e << 52), exponent);
        }
        for (int i = 0; i < PARTS; i++) {
            ofMiddle[i] = StrictMath.pow(middle(i), exponent);
        }
        c2 = exponent * (exponent - 1) / 2;
        c3 = c2 * (exponent - 2) / 3;
        c4 = c3 * (exponent - 3) / 4;
        c5 = c4 * (exponent - 4) / 5;
        c6 = c5 * (exponent - 5) / 6;
        c7 = c6 * (exponent - 6) / 7;
        c8 = c7 * (exponent - 7) / 8;
        c9 = c8 * (exponent - 8) / 9;
        c10 = c9 * (exponent - 9) / 10;
        isSteep = Math.abs(exponent) > SHORT_SERIES;
    }

    private static double middle(int part) {
        return 1.0 + (part + 0.5) / PARTS;
    }

    /** The function for an exponent of -20 to 20; made once and kept, about 18 kB each. */
    public static FixedPower withExponent(double exponent) {
        if (!(Math.abs(exponent) <= 20)) {
            throw new IllegalArgumentException("exponent " + exponent + " is outside -20 to 20");
        }
        return MADE.computeIfAbsent(exponent, FixedPower::new);
    }

    /** The exponent a. */
    public double exponent() {
        return exponent;
    }

    /** x^a. Zero, negative, subnormal and non-finite x give what {@code StrictMath.pow} gives. */
    public double of(double x) {
        long bits = Double.doubleToRawLongBits(x);
        int e = (int) (bits >>> 52);
        if (e == 0 || e >= EXPONENTS) {
            return StrictMath.pow(x, exponent);
        }
        int part = (int) (bits >>> (52 - PARTS_BITS)) & (PARTS - 1);
        // The distance from the part's middle is the same in the first part, where it is exact too.
        double inFirstPart = Double.longBitsToDouble((bits & WITHIN_PART_MASK) | ONE_BITS);
        double t = (inFirstPart - FIRST_MIDDLE) * INVERSE_MIDDLE[part];
        double high = isSteep ? c5 + t * (c6 + t * (c7 + t * (c8 + t * (c9 + t * c10)))) : c5;
        // In pairs (Estrin 1960), so that the processor need not wait for each term in turn.
        double tt = t * t;
        double series = t * ((exponent + t * c2) + tt * ((c3 + t * c4) + tt * high));
        double middle = ofMiddle[part];
        return ofPowerOfTwo[e] * (middle + middle * series);
    }
}
