package provingyard.diagnosis;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * Everything that may be wrong in a service call, in a fixed order, with the prior: probability in proportion to base
 * rate times exposure. Base rates are common practice without a source; they belong to the scenario.
 */
public final class Hypotheses {

    /**
     * A hypothesis with its weight before any test.
     *
     * @param baseRate relative frequency per item or per unit of exposure, above 0
     * @param exposure number of items, metres of pipe, age factor: whatever the base rate is per; above 0
     */
    public record Weighted(Hypothesis hypothesis, double baseRate, double exposure) {

        public Weighted {
            if (!(baseRate > 0 && exposure > 0 && Double.isFinite(baseRate * exposure))) {
                throw new IllegalArgumentException("weights must be above 0: " + hypothesis);
            }
        }

        double weight() {
            return baseRate * exposure;
        }
    }

    private final List<Weighted> weighted;
    private final List<String> classes;
    private final int[] classOf;
    private final double[] prior;

    private Hypotheses(List<Weighted> weighted) {
        if (weighted.isEmpty()) {
            throw new IllegalArgumentException("no hypothesis");
        }
        this.weighted = List.copyOf(weighted);
        List<String> found = new ArrayList<>();
        classOf = new int[weighted.size()];
        prior = new double[weighted.size()];
        double sum = 0;
        for (int h = 0; h < classOf.length; h++) {
            String name = weighted.get(h).hypothesis().repairClass();
            if (!found.contains(name)) {
                found.add(name);
            }
            classOf[h] = found.indexOf(name);
            prior[h] = weighted.get(h).weight();
            sum += prior[h];
        }
        for (int h = 0; h < prior.length; h++) {
            prior[h] /= sum;
        }
        classes = List.copyOf(found);
    }

    /** Hypotheses in the order given. */
    public static Hypotheses of(List<Weighted> weighted) {
        return new Hypotheses(weighted);
    }

    /** The same with changed weights: what a check of the priors' influence halves and doubles. */
    public Hypotheses reweighted(UnaryOperator<Weighted> change) {
        return new Hypotheses(weighted.stream().map(change).toList());
    }

    /** How many. */
    public int size() {
        return classOf.length;
    }

    /** One of them. */
    public Hypothesis get(int h) {
        return weighted.get(h).hypothesis();
    }

    /** Repair classes, in order of first appearance. */
    public List<String> classes() {
        return classes;
    }

    /** Index of the repair class of a hypothesis. */
    public int classOf(int h) {
        return classOf[h];
    }

    /** Prior probability of a hypothesis. */
    public double prior(int h) {
        return prior[h];
    }
}
