package provingyard.study;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import provingyard.score.Loss;
import provingyard.season.Site;
import provingyard.setup.SetUp;

/**
 * A trainee's set-up that lost less than the mark in its season may have been lucky with the weather. So both are tried
 * on draws that no search uses ({@link Draws#trial}), and the mark gives way only to a set-up that is clearly better
 * there on average. What wins is kept as a mark of this machine ({@link MarkStore#keepChallenger}); classes go on grading
 * against the shipped one.
 *
 * @param meanMark mean loss of the mark over the trial, USD
 * @param meanChallenger mean loss of the challenger over the trial, USD
 * @param needed how much less the challenger has to lose on average, USD
 * @param won the challenger as a mark, with its means over the trial; empty when the mark stays
 */
public record Challenger(double meanMark, double meanChallenger, double needed, Optional<Mark> won) {

    /** How much better, in points of the mark's mean gap over the trial. */
    static final double POINTS = 1;

    /** And in standard errors of the mean difference, so that chance alone seldom wins (common practice, no source). */
    static final double ERRORS = 2;

    /**
     * Tries a set-up on all cores.
     *
     * @throws CancellationException when the progress asks to stop
     */
    public static Challenger of(Site site, Mark mark, SetUp setUp, Progress progress) {
        try (Trials trials = new Trials(site, progress)) {
            return of(site, mark, setUp, trials, Draws.trial());
        }
    }

    static Challenger of(Site site, Mark mark, SetUp setUp, Trials trials, List<Integer> draws) {
        trials.expect(3 * draws.size() + 2);
        double[] gains = gains(trials.losses(mark.setUp(), draws), trials.losses(setUp, draws));
        double meanMark = trials.mean(mark.setUp(), draws);
        double meanChallenger = trials.mean(setUp, draws);
        double gap = Math.max(0, trials.mean(SetUp.CLOCK_ALONE, draws) - meanMark);
        double needed = Math.max(POINTS / 100 * gap, ERRORS * standardError(gains));
        boolean wins = new Limits(site.scenario()).keeps(setUp) && meanMark - meanChallenger > needed;
        Optional<Mark> won = wins ? Optional.of(MarkSearch.of(site, setUp, trials, draws)) : Optional.empty();
        return new Challenger(meanMark, meanChallenger, needed, won);
    }

    /** Whether the challenger is the better one. */
    public boolean wins() {
        return won.isPresent();
    }

    private static double[] gains(List<Loss> mark, List<Loss> challenger) {
        double[] gains = new double[mark.size()];
        for (int i = 0; i < gains.length; i++) {
            gains[i] = mark.get(i).total() - challenger.get(i).total();
        }
        return gains;
    }

    /** Standard error of a mean: s / sqrt(n), with the sample's standard deviation s. */
    static double standardError(double[] values) {
        int n = values.length;
        double mean = 0;
        for (double value : values) {
            mean += value / n;
        }
        double squares = 0;
        for (double value : values) {
            squares += (value - mean) * (value - mean);
        }
        return n < 2 ? Double.POSITIVE_INFINITY : Math.sqrt(squares / (n - 1) / n);
    }
}
