package provingyard.diagnosis;

import provingyard.numeric.NormalLaw;

/**
 * Bits that a test is expected to tell about what has to be repaired, before it is made:
 * {@code EIG(a) = H(P_R) - sum over y of P(y) H(P_R | y)}, the mutual information of repair class and reading.
 *
 * <p>Choosing measurements by expected entropy: J. de Kleer and B. C. Williams, Diagnosing multiple faults, Artificial
 * Intelligence 32 (1987) 97-130. Entropy over repair classes, and the division by minutes, are design.
 *
 * <p>A number that falls into few steps of its instrument is summed over them exactly; one with many steps is
 * integrated over its density, whose variance is increased by delta2/12 for the rounding (common practice in
 * measurement), with what lies beyond the ends of the range as two readings of their own. Hypotheses of a probability
 * below 1e-8 are left out.
 *
 * <p>Keeps working arrays: one thread only.
 */
public final class Expectation {

    /** As many steps of an instrument are summed one by one. */
    private static final int MOST_STEPS = 241;

    private static final double REACH = 4;
    private static final double FULL_REACH = 6;
    private static final double NEGLIGIBLE = 1e-8;

    private final Trust trust;
    private final Masses masses = new Masses();
    private final Masses ends = new Masses();
    private final ReadingGrid grid = new ReadingGrid();
    private int[] active = new int[0];
    private double[] means = new double[0];
    private double[] sigmas = new double[0];
    private int count;

    /** What the last mean adds to which cells: many hypotheses predict the same reading. */
    private double[] shape = new double[0];

    private int shapeFrom;
    private int shapeTo;

    /** Expectations under some trust in predictions and readings. */
    public Expectation(Trust trust) {
        this.trust = trust;
    }

    /** How predictions and readings are trusted. */
    public Trust trust() {
        return trust;
    }

    /** Expected bits, 0 or more and not above the belief's entropy. */
    public double gain(Belief belief, Prediction prediction) {
        if (prediction.size() != belief.hypotheses().size()) {
            throw new IllegalArgumentException("a prediction for other hypotheses");
        }
        double gain;
        if (prediction instanceof NumericPrediction numeric) {
            gain = ofNumber(belief, numeric);
        } else {
            gain = ofCategories(belief, (CategoryPrediction) prediction);
        }
        return Math.max(0, Math.min(gain, belief.entropy()));
    }

    private double ofCategories(Belief belief, CategoryPrediction prediction) {
        int categories = prediction.categories();
        masses.clear(belief.hypotheses().classes().size(), categories);
        for (int h = 0; h < prediction.size(); h++) {
            int repairClass = belief.hypotheses().classOf(h);
            double p = belief.probability(h);
            for (int y = 0; y < categories; y++) {
                masses.add(repairClass, y, p * prediction.probability(h, y));
            }
        }
        double outliers = prediction.outliers(trust);
        return masses.bits(null, belief, 1 - outliers, outliers / categories);
    }

    private double ofNumber(Belief belief, NumericPrediction prediction) {
        take(belief, prediction);
        Instrument instrument = prediction.instrument();
        double least = Double.POSITIVE_INFINITY;
        double greatest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < count; i++) {
            least = Math.min(least, means[i] - REACH * sigmas[i]);
            greatest = Math.max(greatest, means[i] + REACH * sigmas[i]);
        }
        double first = instrument.shown(least);
        double steps = Math.rint((instrument.shown(greatest) - first) / instrument.resolution()) + 1;
        return steps <= MOST_STEPS
                ? overSteps(belief, instrument, first, (int) steps)
                : overDensity(belief, prediction);
    }

    private void take(Belief belief, NumericPrediction prediction) {
        int size = prediction.size();
        if (active.length < size) {
            active = new int[size];
            means = new double[size];
            sigmas = new double[size];
        }
        count = 0;
        for (int i = 0; i < size; i++) {
            int h = prediction.rising(i);
            if (belief.probability(h) > NEGLIGIBLE) {
                active[count] = h;
                means[count] = prediction.mean(h);
                sigmas[count++] = prediction.sigma(h, trust);
            }
        }
    }

    private double overSteps(Belief belief, Instrument instrument, double first, int steps) {
        masses.clear(belief.hypotheses().classes().size(), steps);
        ready(steps);
        for (int i = 0; i < count; i++) {
            if (isNew(i)) {
                shapeSteps(i, instrument.resolution(), first, steps);
            }
            addShape(belief, active[i]);
        }
        double floor = trust.outliers() * instrument.resolution() / instrument.range();
        return masses.bits(null, belief, 1 - trust.outliers(), floor);
    }

    private void ready(int cells) {
        if (shape.length < cells) {
            shape = new double[cells];
        }
    }

    /** Whether a hypothesis predicts another reading than the one before it. */
    private boolean isNew(int i) {
        return i == 0 || means[i] != means[i - 1] || sigmas[i] != sigmas[i - 1];
    }

    private void addShape(Belief belief, int hypothesis) {
        int repairClass = belief.hypotheses().classOf(hypothesis);
        double p = belief.probability(hypothesis);
        for (int cell = shapeFrom; cell < shapeTo; cell++) {
            masses.add(repairClass, cell, p * shape[cell]);
        }
    }

    private void shapeSteps(int i, double delta, double first, int steps) {
        shapeFrom = cell((means[i] - FULL_REACH * sigmas[i] - first) / delta, steps);
        shapeTo = cell((means[i] + FULL_REACH * sigmas[i] - first) / delta, steps) + 1;
        double below = 0;
        for (int cell = shapeFrom; cell < shapeTo; cell++) {
            boolean last = cell == shapeTo - 1;
            double upTo = last ? 1 : cumulative(first + (cell + 0.5) * delta - means[i], sigmas[i]);
            shape[cell] = upTo - below;
            below = upTo;
        }
    }

    private static int cell(double position, int cells) {
        return (int) Math.max(0, Math.min(cells - 1, Math.rint(position)));
    }

    private static double cumulative(double distance, double sigma) {
        return sigma > 0 ? NormalLaw.below(distance / sigma) : distance >= 0 ? 1 : 0;
    }

    private double overDensity(Belief belief, NumericPrediction prediction) {
        Instrument instrument = prediction.instrument();
        double rounding = instrument.resolution() * instrument.resolution() / 12;
        grid.lay(
                means,
                sigmas,
                count,
                Likelihood.fixedVariance(instrument, prediction.supplySigma()) + rounding,
                Likelihood.relativeVariance(instrument, trust),
                instrument.low(),
                instrument.high());
        int classes = belief.hypotheses().classes().size();
        masses.clear(classes, grid.count());
        ends.clear(classes, 2);
        ready(grid.count());
        double atLow = 0;
        double atHigh = 0;
        for (int i = 0; i < count; i++) {
            if (isNew(i)) {
                double sigma = Math.sqrt(sigmas[i] * sigmas[i] + rounding);
                shapeDensity(means[i], sigma);
                atLow = NormalLaw.below((instrument.low() - means[i]) / sigma);
                atHigh = NormalLaw.below((means[i] - instrument.high()) / sigma);
            }
            addShape(belief, active[i]);
            int repairClass = belief.hypotheses().classOf(active[i]);
            ends.add(repairClass, 0, belief.probability(active[i]) * atLow);
            ends.add(repairClass, 1, belief.probability(active[i]) * atHigh);
        }
        double keep = 1 - trust.outliers();
        return masses.bits(grid.weights(), belief, keep, trust.outliers() / instrument.range())
                + ends.bits(null, belief, keep, 0);
    }

    private void shapeDensity(double mean, double sigma) {
        shapeFrom = firstFrom(mean - FULL_REACH * sigma);
        shapeTo = firstFrom(mean + FULL_REACH * sigma);
        for (int cell = shapeFrom; cell < shapeTo; cell++) {
            shape[cell] = NormalLaw.density((grid.point(cell) - mean) / sigma) / sigma;
        }
    }

    /** The first point of the grid that is not below a value. */
    private int firstFrom(double y) {
        int low = 0;
        int high = grid.count();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (grid.point(middle) < y) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
