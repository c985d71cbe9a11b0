package provingyard.diagnosis;

import provingyard.numeric.Deterministic;
import provingyard.numeric.NormalLaw;

/**
 * How probable a reading is under a hypothesis.
 *
 * <p>Symbols: y reading as shown, mu predicted reading without noise, delta resolution, k model error, epsilon share of
 * outliers, Phi the normal distribution. A normal law with rounding is textbook statistics; k, epsilon and the floor
 * are design.
 */
public final class Likelihood {

    /** No likelihood is taken for less, so that its logarithm stays a number where outliers are switched off. */
    static final double LEAST = 1e-30;

    private Likelihood() {}

    /**
     * Standard deviation of a reading: {@code sigma2 = sigma_instrument2 + (k |mu|)2 + sigma_supply2}, where the
     * instrument's part is its fixed and its relative share in quadrature. In the reading's unit.
     */
    public static double sigma(double mean, Instrument instrument, double supplySigma, Trust trust) {
        return Math.sqrt(fixedVariance(instrument, supplySigma) + relativeVariance(instrument, trust) * mean * mean);
    }

    static double fixedVariance(Instrument instrument, double supplySigma) {
        return instrument.sigma() * instrument.sigma() + supplySigma * supplySigma;
    }

    static double relativeVariance(Instrument instrument, Trust trust) {
        return instrument.relative() * instrument.relative() + trust.modelError() * trust.modelError();
    }

    /**
     * Likelihood of a number shown in steps: {@code L = (1 - epsilon) [Phi((y + delta/2 - mu)/sigma) - Phi((y - delta/2
     * - mu)/sigma)] + epsilon delta/range}. At either end of the range the step reaches to infinity, since the
     * instrument shows its end for all that is beyond.
     */
    public static double numeric(double shown, double mean, double sigma, Instrument instrument, Trust trust) {
        double half = instrument.resolution() / 2;
        double low = shown <= instrument.low() ? Double.NEGATIVE_INFINITY : shown - half - mean;
        double high = shown >= instrument.high() ? Double.POSITIVE_INFINITY : shown + half - mean;
        double step = sigma > 0 ? NormalLaw.between(low / sigma, high / sigma) : low <= 0 && high > 0 ? 1 : 0;
        return (1 - trust.outliers()) * step + trust.outliers() * instrument.resolution() / instrument.range();
    }

    /**
     * Likelihood of a category: {@code L = (1 - epsilon) p + epsilon / categories}.
     *
     * @param outliers epsilon; less for direct sight than for instruments
     */
    public static double category(double probability, int categories, double outliers) {
        return (1 - outliers) * probability + outliers / categories;
    }

    /** Natural logarithm of a likelihood, floored. */
    static double log(double likelihood) {
        return Deterministic.log(Math.max(likelihood, LEAST));
    }
}
