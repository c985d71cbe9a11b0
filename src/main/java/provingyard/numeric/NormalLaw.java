package provingyard.numeric;

/**
 * The normal distribution with mean 0 and variance 1, the same bits on every machine.
 *
 * <p>The error function follows the rational Chebyshev approximations of W. J. Cody, Rational Chebyshev approximations
 * for the error function, Mathematics of Computation 23 (1969) 631-637, whose relative error is below 1e-15; tests hold
 * it to Abramowitz and Stegun, Handbook of Mathematical Functions (1964), table 26.1.
 */
public final class NormalLaw {

    private static final double ROOT_HALF = Math.sqrt(0.5);
    private static final double ONE_BY_ROOT_PI = 0.56418958354775628695;
    private static final double ONE_BY_ROOT_TWO_PI = 0.39894228040143267794;

    /** Below this |x| the error function itself is approximated, above it its complement. */
    private static final double NEAR = 0.46875;

    /** Below this x the complement is exp(-x2) times one fraction, above it another one. */
    private static final double MIDDLE = 4;

    /** From here on the complement is smaller than the smallest double. */
    private static final double FAR = 26.6;

    private static final double[] NEAR_ABOVE = {
        1.85777706184603153e-1,
        3.16112374387056560e0,
        1.13864154151050156e2,
        3.77485237685302021e2,
        3.20937758913846947e3
    };
    private static final double[] NEAR_BELOW = {
        1, 2.36012909523441209e1, 2.44024637934444173e2, 1.28261652607737228e3, 2.84423683343917062e3
    };
    private static final double[] MIDDLE_ABOVE = {
        2.15311535474403846e-8,
        5.64188496988670089e-1,
        8.88314979438837594e0,
        6.61191906371416295e1,
        2.98635138197400131e2,
        8.81952221241769090e2,
        1.71204761263407058e3,
        2.05107837782607147e3,
        1.23033935479799725e3
    };
    private static final double[] MIDDLE_BELOW = {
        1,
        1.57449261107098347e1,
        1.17693950891312499e2,
        5.37181101862009858e2,
        1.62138957456669019e3,
        3.29079923573345963e3,
        4.36261909014324716e3,
        3.43936767414372164e3,
        1.23033935480374942e3
    };
    private static final double[] FAR_ABOVE = {
        1.63153871373020978e-2,
        3.05326634961232344e-1,
        3.60344899949804439e-1,
        1.25781726111229246e-1,
        1.60837851487422766e-2,
        6.58749161529837803e-4
    };
    private static final double[] FAR_BELOW = {
        1,
        2.56852019228982242e0,
        1.87295284992346725e0,
        5.27905102951428412e-1,
        6.05183413124413191e-2,
        2.33520497626869185e-3
    };

    private NormalLaw() {}

    /** Density at z. */
    public static double density(double z) {
        return ONE_BY_ROOT_TWO_PI * Deterministic.exp(-0.5 * z * z);
    }

    /** Probability of a number below z; relative error below 1e-13 also far out on the left. */
    public static double below(double z) {
        return 0.5 * complement(-z * ROOT_HALF);
    }

    /**
     * Probability of a number between two bounds, without the loss of digits that a difference of two numbers near 1
     * has.
     *
     * @param low lower bound, may be minus infinity
     * @param high upper bound, not below the lower one, may be infinity
     */
    public static double between(double low, double high) {
        return low > 0 ? below(-low) - below(-high) : below(high) - below(low);
    }

    /** Complementary error function: 2/sqrt(pi) times the integral of exp(-t2) from x to infinity. */
    static double complement(double x) {
        double size = Math.abs(x);
        if (size <= NEAR) {
            return 1 - x * fraction(NEAR_ABOVE, NEAR_BELOW, x * x);
        }
        double tail = size >= FAR ? 0 : tail(size);
        return x < 0 ? 2 - tail : tail;
    }

    private static double tail(double x) {
        double bell = Deterministic.exp(-x * x);
        if (x <= MIDDLE) {
            return bell * fraction(MIDDLE_ABOVE, MIDDLE_BELOW, x);
        }
        double inverse = 1 / (x * x);
        return bell / x * (ONE_BY_ROOT_PI - inverse * fraction(FAR_ABOVE, FAR_BELOW, inverse));
    }

    /** A fraction of two polynomials, coefficients from the highest power down. */
    private static double fraction(double[] above, double[] below, double x) {
        return polynomial(above, x) / polynomial(below, x);
    }

    private static double polynomial(double[] coefficients, double x) {
        double sum = 0;
        for (double c : coefficients) {
            sum = sum * x + c;
        }
        return sum;
    }
}
