package provingyard.call;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import provingyard.diagnosis.Belief;
import provingyard.diagnosis.CategoryPrediction;
import provingyard.diagnosis.NumericPrediction;
import provingyard.diagnosis.Prediction;
import provingyard.diagnosis.Trust;
import provingyard.numeric.Deterministic;
import provingyard.numeric.NormalLaw;

/**
 * How a test divides what is left: the probability of each answer, or of a number below and above the value that tells
 * most about what is to be repaired.
 *
 * @param threshold the value that divides, SI; NaN where there are answers
 * @param shares probability of each answer in their order, or of below and above; they add up to 1
 */
public record TestSplit(double threshold, List<Double> shares) {

    /** Values tried between the lowest and the highest that is expected. */
    private static final int TRIED = 60;

    /** Hypotheses held for less are left out. */
    private static final double NEGLIGIBLE = 1e-6;

    public TestSplit {
        shares = List.copyOf(shares);
    }

    /** How a test with a prediction divides a belief. */
    static TestSplit of(Belief belief, Prediction prediction, Trust trust) {
        return prediction instanceof NumericPrediction numeric
                ? ofNumber(belief, numeric, trust)
                : ofAnswers(belief, (CategoryPrediction) prediction);
    }

    private static TestSplit ofAnswers(Belief belief, CategoryPrediction prediction) {
        List<Double> shares = new ArrayList<>();
        for (int y = 0; y < prediction.categories(); y++) {
            double sum = 0;
            for (int h = 0; h < prediction.size(); h++) {
                sum += belief.probability(h) * prediction.probability(h, y);
            }
            shares.add(sum);
        }
        return new TestSplit(Double.NaN, shares);
    }

    private static TestSplit ofNumber(Belief belief, NumericPrediction prediction, Trust trust) {
        double[] means = IntStream.range(0, prediction.size())
                .filter(h -> belief.probability(h) > NEGLIGIBLE)
                .mapToDouble(prediction::mean)
                .sorted()
                .distinct()
                .toArray();
        double best = -1;
        double threshold = means[0];
        // Between neighbours where they are few, at even ranks where they are many.
        int steps = Math.min(TRIED, Math.max(1, means.length - 1));
        for (int i = 0; i < steps; i++) {
            int at = (int) ((long) i * Math.max(0, means.length - 1) / steps);
            double middle = means.length == 1 ? means[0] : (means[at] + means[at + 1]) / 2;
            double bits = bits(belief, prediction, middle, trust);
            if (bits > best) {
                best = bits;
                threshold = middle;
            }
        }
        double below = 0;
        for (int h = 0; h < prediction.size(); h++) {
            below += belief.probability(h) * below(prediction, h, threshold, trust);
        }
        return new TestSplit(threshold, List.of(below, 1 - below));
    }

    private static double below(NumericPrediction prediction, int h, double threshold, Trust trust) {
        return NormalLaw.below((threshold - prediction.mean(h)) / prediction.sigma(h, trust));
    }

    /** Bits about the repair class that are in knowing on which side of a value the number lies. */
    private static double bits(Belief belief, NumericPrediction prediction, double threshold, Trust trust) {
        double[] below = new double[belief.hypotheses().classes().size()];
        double all = 0;
        for (int h = 0; h < prediction.size(); h++) {
            if (belief.probability(h) > NEGLIGIBLE) {
                double part = belief.probability(h) * below(prediction, h, threshold, trust);
                below[belief.hypotheses().classOf(h)] += part;
                all += part;
            }
        }
        double left = 0;
        for (int c = 0; c < below.length; c++) {
            double p = belief.ofClass(c);
            left += p * binary(p > 0 ? below[c] / p : 0);
        }
        return binary(all) - left;
    }

    private static double binary(double p) {
        return p <= 0 || p >= 1
                ? 0
                : -(p * Deterministic.log(p) + (1 - p) * Deterministic.log(1 - p)) / Deterministic.log(2);
    }
}
