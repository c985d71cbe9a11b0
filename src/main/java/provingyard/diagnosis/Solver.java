package provingyard.diagnosis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The reference: takes the five tests with the most bits per minute and looks one test further ahead for each, then
 * takes the one with the most bits per minute over one or both: an outcome is followed up where that raises the rate.
 * Declares at a probability of 0.95, or when no test tells anything more.
 *
 * <p>One-step choice by expected entropy after de Kleer and Williams (1987), see {@link Expectation}; a rate that may
 * stop at any time is the index of J. C. Gittins, Bandit processes and dynamic allocation indices, Journal of the Royal
 * Statistical Society B 41 (1979) 148-177, here cut after two tests. The five and the threshold are design. Composite
 * tests are actions with several legs.
 */
public final class Solver implements Policy {

    /** Probability of a repair class at which the evidence is enough. */
    public static final double ENOUGH = 0.95;

    /** Bits below which a test tells nothing worth doing: where all are redundant, going on would be held against anyone. */
    static final double NOTHING = Step.REDUNDANT;

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

    private double rateOverTwo(Inquiry inquiry, Ranked first) {
        List<Ranked> followers = new ArrayList<>();
        Prediction prediction = ranking.premises().predict(first.action(), inquiry.state());
        for (Forks.Fork fork : Forks.of(inquiry.belief(), prediction, ranking.trust())) {
            Inquiry then = inquiry.after(first.action(), fork.reading(), ranking.premises(), ranking.trust());
            if (!isEnough(then.belief())) {
                ranking.of(then).stream()
                        .limit(1)
                        .map(r ->
                                new Ranked(r.action(), fork.probability() * r.gain(), fork.probability() * r.minutes()))
                        .forEach(followers::add);
            }
        }
        followers.sort(Comparator.comparingDouble(Ranked::rate).reversed());
        double gain = first.gain();
        double minutes = first.minutes();
        for (Ranked follower : followers) {
            if (follower.rate() * minutes > gain) {
                gain += follower.gain();
                minutes += follower.minutes();
            }
        }
        return gain / minutes;
    }

    static boolean isEnough(Belief belief) {
        return belief.ofClass(belief.leadingClass()) >= ENOUGH;
    }
}
