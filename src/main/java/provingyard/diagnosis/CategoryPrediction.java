package provingyard.diagnosis;

import java.util.Arrays;

/**
 * Probability of each category under each hypothesis.
 *
 * <p>Immutable: the table is copied.
 */
public final class CategoryPrediction implements Prediction {

    private static final double ROUNDING = 1e-9;

    private final int categories;
    private final double[] table;

    /**
     * A prediction.
     *
     * @param rows one row per hypothesis, one probability per category, each row adding up to 1
     */
    public CategoryPrediction(double[][] rows) {
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

    @Override
    public double logLikelihood(int hypothesis, Reading reading, Trust trust) {
        if (!(reading instanceof Reading.Seen seen) || seen.category() < 0 || seen.category() >= categories) {
            throw new IllegalArgumentException("one of " + categories + " categories was predicted");
        }
        return Likelihood.log(Likelihood.category(probability(hypothesis, seen.category()), categories, trust));
    }
}
