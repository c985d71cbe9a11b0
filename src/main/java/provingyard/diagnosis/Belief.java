package provingyard.diagnosis;

import java.util.Collections;
import java.util.SortedSet;
import java.util.TreeSet;
import provingyard.numeric.Deterministic;

/**
 * What the evidence so far says: a probability for each hypothesis and each repair class, by Bayes' rule in log space,
 * {@code log p(h) = log prior(h) + sum of log L(y|h)}, normalised.
 *
 * <p>No hypothesis is shown with less than {@link #FLOOR} (design). The sums themselves are kept without a floor, so
 * that the order of independent tests makes no difference.
 */
public final class Belief {

    /** Least probability of a hypothesis. */
    public static final double FLOOR = 1e-9;

    private static final double LOG_2 = Deterministic.log(2);

    private final Hypotheses hypotheses;
    private final double[] evidence;
    private final double[] probabilities;
    private final double[] byClass;
    private final SortedSet<String> answered;

    private Belief(Hypotheses hypotheses, double[] evidence, SortedSet<String> answered) {
        this.hypotheses = hypotheses;
        this.evidence = evidence;
        this.answered = answered;
        probabilities = normalised(evidence);
        byClass = new double[hypotheses.classes().size()];
        for (int h = 0; h < probabilities.length; h++) {
            byClass[hypotheses.classOf(h)] += probabilities[h];
        }
    }

    /** The belief before any test. */
    public static Belief before(Hypotheses hypotheses) {
        double[] evidence = new double[hypotheses.size()];
        for (int h = 0; h < evidence.length; h++) {
            evidence[h] = Deterministic.log(hypotheses.prior(h));
        }
        return new Belief(hypotheses, evidence, Collections.emptySortedSet());
    }

    private static double[] normalised(double[] evidence) {
        double greatest = evidence[0];
        for (double e : evidence) {
            greatest = Math.max(greatest, e);
        }
        double[] p = new double[evidence.length];
        double sum = 0;
        for (int h = 0; h < p.length; h++) {
            p[h] = Deterministic.exp(evidence[h] - greatest);
            sum += p[h];
        }
        double floored = 0;
        for (int h = 0; h < p.length; h++) {
            p[h] = Math.max(p[h] / sum, FLOOR);
            floored += p[h];
        }
        for (int h = 0; h < p.length; h++) {
            p[h] /= floored;
        }
        return p;
    }

    /** The belief after a reading with noise of its own. */
    public Belief after(Prediction prediction, Reading reading, Trust trust) {
        if (prediction.size() != evidence.length) {
            throw new IllegalArgumentException("a prediction for other hypotheses");
        }
        double[] next = evidence.clone();
        double greatest = Double.NEGATIVE_INFINITY;
        for (int h = 0; h < next.length; h++) {
            next[h] += prediction.logLikelihood(h, reading, trust);
            greatest = Math.max(greatest, next[h]);
        }
        for (int h = 0; h < next.length; h++) {
            next[h] -= greatest;
        }
        return new Belief(hypotheses, next, answered);
    }

    /** The belief after an answer that nature drew once; the same one again if it was given before. */
    public Belief after(String latentKey, Prediction prediction, Reading reading, Trust trust) {
        if (answered.contains(latentKey)) {
            return this;
        }
        SortedSet<String> keys = new TreeSet<>(answered);
        keys.add(latentKey);
        return new Belief(hypotheses, after(prediction, reading, trust).evidence, keys);
    }

    /** Whether this answer was given before. */
    public boolean answered(String latentKey) {
        return answered.contains(latentKey);
    }

    /** What it is a belief about. */
    public Hypotheses hypotheses() {
        return hypotheses;
    }

    /** Probability of a hypothesis. */
    public double probability(int hypothesis) {
        return probabilities[hypothesis];
    }

    /** Probability of a repair class by its index. */
    public double ofClass(int repairClass) {
        return byClass[repairClass];
    }

    /** Probability of a repair class by its name; 0 for one that is not among the hypotheses. */
    public double ofClass(String repairClass) {
        int index = hypotheses.classes().indexOf(repairClass);
        return index < 0 ? 0 : byClass[index];
    }

    /** Index of the most probable repair class, the first of equal ones. */
    public int leadingClass() {
        return greatest(-1);
    }

    /** Index of the second most probable repair class; -1 where there is only one. */
    public int rivalClass() {
        return greatest(leadingClass());
    }

    private int greatest(int without) {
        int best = -1;
        for (int c = 0; c < byClass.length; c++) {
            if (c != without && (best < 0 || byClass[c] > byClass[best])) {
                best = c;
            }
        }
        return best;
    }

    /** Index of the most probable hypothesis of a repair class. */
    int leadingIn(int repairClass) {
        int best = -1;
        for (int h = 0; h < probabilities.length; h++) {
            if (hypotheses.classOf(h) == repairClass && (best < 0 || probabilities[h] > probabilities[best])) {
                best = h;
            }
        }
        return best;
    }

    /** Name of the most probable repair class. */
    public String leading() {
        return hypotheses.classes().get(leadingClass());
    }

    /** Entropy over repair classes, bits: {@code H = - sum P log2 P} (Shannon 1948). */
    public double entropy() {
        double sum = 0;
        for (double p : byClass) {
            sum -= p > 0 ? p * bits(p) : 0;
        }
        return Math.max(0, sum);
    }

    static double bits(double p) {
        return Deterministic.log(p) / LOG_2;
    }
}
