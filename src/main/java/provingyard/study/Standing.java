package provingyard.study;

import java.util.Optional;
import provingyard.scenario.Costs;
import provingyard.score.Loss;
import provingyard.score.Score;

/**
 * A lived season beside the clock alone and the mark on the same weather.
 *
 * @param clock loss of the clock alone
 * @param trainee loss of the set-up lived
 * @param mark loss of the mark, or empty where it is not known
 * @param score points, or the reason why there are none
 */
public record Standing(Loss clock, Loss trainee, Optional<Loss> mark, Score score) {

    /**
     * Compares.
     *
     * @param meanGap mean gap of the mark over its draws, USD; ignored where the mark is not known
     * @param overBudget the sensors cost more than the kit's budget
     * @param ownSeason the site's own season was lived, from its first minute to its last
     */
    static Standing of(
            Loss clock,
            Loss trainee,
            Optional<Loss> mark,
            double meanGap,
            boolean overBudget,
            boolean ownSeason,
            Costs costs) {
        Score score;
        if (overBudget) {
            score = Score.none(Score.Reason.OVER_BUDGET);
        } else if (!ownSeason) {
            score = Score.none(Score.Reason.NOT_LIVED);
        } else if (mark.isEmpty()) {
            score = Score.none(Score.Reason.MARK_NOT_KNOWN);
        } else {
            score = Score.of(clock.total(), trainee.total(), mark.get().total(), meanGap, costs.leastGap());
        }
        return new Standing(clock, trainee, mark, score);
    }
}
