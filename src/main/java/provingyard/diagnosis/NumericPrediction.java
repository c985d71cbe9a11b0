package provingyard.diagnosis;

import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * Predicted numbers without noise.
 *
 * <p>Immutable: the means are copied.
 */
public final class NumericPrediction implements Prediction {

    private final double[] means;
    private final Instrument instrument;
    private final double supplySigma;
    private final double[] spreads;
    private final int[] rising;

    /**
     * A prediction.
     *
     * @param means reading under each hypothesis without noise, in the instrument's unit
     * @param instrument what it is read with
     * @param supplySigma standard deviation that the supply's drift adds, in the same unit
     */
    public NumericPrediction(double[] means, Instrument instrument, double supplySigma) {
        this(means, new double[means.length], instrument, supplySigma);
    }

    /**
     * The same for hypotheses that stand for a range of sizes.
     *
     * @param spreads standard deviation of the reading over the sizes that each hypothesis stands for, same unit
     */
    public NumericPrediction(double[] means, double[] spreads, Instrument instrument, double supplySigma) {
        for (double mean : means) {
            if (!Double.isFinite(mean)) {
                throw new IllegalArgumentException("a predicted reading is no number");
            }
        }
        if (!(supplySigma >= 0)) {
            throw new IllegalArgumentException("the supply's drift must not be negative");
        }
        for (double spread : spreads) {
            if (!(spread >= 0 && Double.isFinite(spread))) {
                throw new IllegalArgumentException("a spread must be a number of 0 or more");
            }
        }
        if (spreads.length != means.length) {
            throw new IllegalArgumentException("each mean needs a spread");
        }
        this.means = means.clone();
        this.spreads = spreads.clone();
        this.instrument = instrument;
        this.supplySigma = supplySigma;
        rising = IntStream.range(0, means.length)
                .boxed()
                .sorted(Comparator.comparingDouble(h -> means[h]))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    /** The hypothesis with the i-th lowest mean; equal ones in their own order. */
    int rising(int i) {
        return rising[i];
    }

    @Override
    public int size() {
        return means.length;
    }

    /** Reading without noise under a hypothesis. */
    public double mean(int hypothesis) {
        return means[hypothesis];
    }

    /** Standard deviation over the sizes that a hypothesis stands for. */
    public double spread(int hypothesis) {
        return spreads[hypothesis];
    }

    /** What it is read with. */
    public Instrument instrument() {
        return instrument;
    }

    /** Standard deviation that the supply adds. */
    public double supplySigma() {
        return supplySigma;
    }

    /** Standard deviation of the reading about its mean under a hypothesis: what an expected band is drawn from. */
    public double sigma(int hypothesis, Trust trust) {
        double known = Likelihood.sigma(means[hypothesis], instrument, supplySigma, trust);
        double spread = spreads[hypothesis];
        return spread == 0 ? known : Math.sqrt(known * known + spread * spread);
    }

    @Override
    public double logLikelihood(int hypothesis, Reading reading, Trust trust) {
        if (!(reading instanceof Reading.Shown shown)) {
            throw new IllegalArgumentException("a number was predicted");
        }
        double sigma = sigma(hypothesis, trust);
        return Likelihood.log(Likelihood.numeric(shown.value(), means[hypothesis], sigma, instrument, trust));
    }
}
