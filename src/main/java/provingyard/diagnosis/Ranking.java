package provingyard.diagnosis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Possible next tests by bits per minute, ties by id. What {@link SafetyGates} would object to is not ranked. Keeps
 * working arrays: one thread only.
 */
public final class Ranking {

    private static final Comparator<Ranked> BY_RATE = Comparator.comparingDouble(Ranked::rate)
            .reversed()
            .thenComparing(r -> r.action().id());

    private final Premises premises;
    private final Expectation expectation;

    /** A ranking of what can be done at some premises. */
    public Ranking(Premises premises, Trust trust) {
        this.premises = premises;
        this.expectation = new Expectation(trust);
    }

    /** All judged actions that are possible and safe, best first. */
    public List<Ranked> of(Inquiry inquiry) {
        List<Ranked> ranked = new ArrayList<>();
        for (Action action : premises.actions()) {
            if (action.kind().judged() && isOpen(action, inquiry.state())) {
                ranked.add(worth(inquiry, action));
            }
        }
        ranked.sort(BY_RATE);
        return ranked;
    }

    /** Whether an action is possible and safe. */
    public static boolean isOpen(Action action, SiteState state) {
        return action.possible(state) && SafetyGates.breaches(action, state).isEmpty();
    }

    /** What one action is worth now. */
    public Ranked worth(Inquiry inquiry, Action action) {
        double minutes = action.minutes(inquiry.state(), premises::walk);
        return new Ranked(action, gain(inquiry, action), minutes);
    }

    private double gain(Inquiry inquiry, Action action) {
        boolean known = action.latentKey(inquiry.state())
                .map(inquiry.belief()::answered)
                .orElse(false);
        return known ? 0 : expectation.gain(inquiry.belief(), premises.predict(action, inquiry.state()));
    }

    /**
     * Bits that an action would tell between two hypotheses held for equally likely; 1 if it tells them apart for sure.
     */
    double tellsApart(Inquiry inquiry, Action action, int one, int other) {
        Hypotheses all = inquiry.belief().hypotheses();
        List<Hypotheses.Weighted> two =
                List.of(new Hypotheses.Weighted(all.get(one), 1, 1), new Hypotheses.Weighted(all.get(other), 1, 1));
        Prediction prediction = premises.predict(action, inquiry.state());
        return expectation.gain(Belief.before(Hypotheses.of(two)), pair(prediction, one, other));
    }

    private static Prediction pair(Prediction prediction, int one, int other) {
        if (prediction instanceof NumericPrediction numeric) {
            double[] means = {numeric.mean(one), numeric.mean(other)};
            double[] spreads = {numeric.spread(one), numeric.spread(other)};
            return new NumericPrediction(means, spreads, numeric.instrument(), numeric.supplySigma());
        }
        return ((CategoryPrediction) prediction).of(one, other);
    }

    Trust trust() {
        return expectation.trust();
    }

    Premises premises() {
        return premises;
    }
}
