package provingyard.diagnosis;

import java.util.List;

/**
 * The reference: takes the five tests with the most bits per minute and looks one test further ahead for each, then takes the
 * one with the most bits per minute over both. Declares at a probability of 0.95, or when no test tells anything more.
 *
 * <p>One-step choice by expected entropy after de Kleer and Williams (1987), see {@link Expectation}; the second step, the
 * five and the threshold are design. Composite tests are actions with several legs.
 */
public final class Solver implements Policy {

    /** Probability of a repair class at which the evidence is enough. */
    public static final double ENOUGH = 0.95;

    /** Bits below which a test tells nothing worth doing. */
    static final double NOTHING = 0.001;

    private static final int BEST = 5;

    private final Ranking ranking;

    /** A solver for some premises. */
    public Solver(Premises premises, Trust trust) {
        ranking = new Ranking(premises, trust);
    }

    @Override
    public String name() {
        return "reference";
    }

    @Override
    public Move next(Inquiry inquiry) {
        List<Ranked> ranked = ranking.of(inquiry).stream()
                .filter(r -> r.gain() >= NOTHING)
                .limit(BEST)
                .toList();
        if (ranked.isEmpty() || isEnough(inquiry.belief())) {
            return new Move.Declare(inquiry.belief().leading());
        }
        return new Move.Do(bestOverTwo(inquiry, ranked).action());
    }

    private Ranked bestOverTwo(Inquiry inquiry, List<Ranked> ranked) {
        Ranked best = null;
        double bestRate = 0;
        for (Ranked first : ranked) {
            double rate = rateOverTwo(inquiry, first);
            // The first of equals is the one that ranks higher.
            if (best == null || rate > bestRate) {
                best = first;
                bestRate = rate;
            }
        }
        return best;
    }

    static boolean isEnough(Belief belief) {
        return belief.ofClass(belief.leadingClass()) >= ENOUGH;
    }

    private double rateOverTwo(Inquiry inquiry, Ranked first) {
        double gain = first.gain();
        double minutes = first.minutes();
        Prediction prediction = ranking.premises().predict(first.action(), inquiry.state());
        for (Forks.Fork fork : Forks.of(inquiry.belief(), prediction, ranking.trust())) {
            Inquiry then = inquiry.after(first.action(), fork.reading(), ranking.premises(), ranking.trust());
            List<Ranked> next = isEnough(then.belief()) ? List.of() : ranking.of(then);
            if (!next.isEmpty()) {
                gain += fork.probability() * next.get(0).gain();
                minutes += fork.probability() * next.get(0).minutes();
            }
        }
        return gain / minutes;
    }
}
