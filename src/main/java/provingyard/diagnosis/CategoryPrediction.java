package provingyard.diagnosis;

import java.util.Arrays;

/**
 * Probability of each category under each hypothesis.
 *
 * <p>Immutable: the table is copied.
 */
public final class CategoryPrediction implements Prediction {

    private static final double ROUNDING = 1e-9;

    /**
     * Greatest share of outliers of direct sight (design, no source). A broken pipe in an open pit is no reading: who stands
     * before it is not wrong one time in two hundred. What remains is the wrong stretch dug up, or wet ground taken for a
     * leak.
     */
    public static final double SIGHT = 1e-4;

    private final int categories;
    private final double[] table;
    private final double mostOutliers;

    /**
     * A prediction.
     *
     * @param rows one row per hypothesis, one probability per category, each row adding up to 1
     */
    public CategoryPrediction(double[][] rows) {
        this(rows, 1);
    }

    /** A prediction of what is seen with one's own eyes, which has fewer outliers than an instrument: {@link #SIGHT}. */
    public static CategoryPrediction ofSight(double[][] rows) {
        return new CategoryPrediction(rows, SIGHT);
    }

    private CategoryPrediction(double[][] rows, double mostOutliers) {
        this.mostOutliers = mostOutliers;
        categories = rows[0].length;
        table = new double[rows.length * categories];
        for (int h = 0; h < rows.length; h++) {
            double sum = Arrays.stream(rows[h]).sum();
            boolean negative = Arrays.stream(rows[h]).anyMatch(p -> !(p >= 0));
            if (rows[h].length != categories || negative || Math.abs(sum - 1) > ROUNDING) {
                throw new IllegalArgumentException(
                        "row " + h + " holds no probabilities of " + categories + " categories");
            }
            System.arraycopy(rows[h], 0, table, h * categories, categories);
        }
    }

    @Override
    public int size() {
        return table.length / categories;
    }

    /** Number of categories. */
    public int categories() {
        return categories;
    }

    /** Probability of a category under a hypothesis, as predicted. */
    public double probability(int hypothesis, int category) {
        return table[hypothesis * categories + category];
    }

    /** The same for some of its hypotheses, in the order given. */
    CategoryPrediction of(int... hypotheses) {
        double[][] rows = new double[hypotheses.length][];
        for (int i = 0; i < rows.length; i++) {
            rows[i] = Arrays.copyOfRange(table, hypotheses[i] * categories, (hypotheses[i] + 1) * categories);
        }
        return new CategoryPrediction(rows, mostOutliers);
    }

    /** Share of its answers that have nothing to do with the truth. */
    double outliers(Trust trust) {
        return Math.min(trust.outliers(), mostOutliers);
    }

    /** Likelihood of a category under a hypothesis. */
    double likelihood(int hypothesis, int category, Trust trust) {
        return Likelihood.category(probability(hypothesis, category), categories, outliers(trust));
    }

    @Override
    public double logLikelihood(int hypothesis, Reading reading, Trust trust) {
        if (!(reading instanceof Reading.Seen seen) || seen.category() < 0 || seen.category() >= categories) {
            throw new IllegalArgumentException("one of " + categories + " categories was predicted");
        }
        return Likelihood.log(likelihood(hypothesis, seen.category(), trust));
    }
}
