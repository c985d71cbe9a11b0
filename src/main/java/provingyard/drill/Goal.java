package provingyard.drill;

import provingyard.diagnosis.CaseScore;
import provingyard.diagnosis.Declaration;

/**
 * What a card asks for: the right finding, in {@link #EASE} times the reference's minutes, with the evidence that a finding
 * needs or, where no test gives so much, with what they can give (design).
 *
 * @param minutes of tests at most
 * @param evidence probability at least that the readings give what is stated
 */
public record Goal(double minutes, double evidence) {

    /** Minutes by the reference's mean minutes. */
    public static final double EASE = 1.25;

    /**
     * The goal of a card.
     *
     * @param reachable evidence that the tests can give
     */
    public static Goal of(double referenceMinutes, double reachable) {
        return new Goal(EASE * referenceMinutes, Math.min(CaseScore.SUPPORTED, reachable));
    }

    /** Whether a finding after some minutes of tests meets it; an unsafe act never does. */
    public boolean met(Declaration declaration, CaseScore score) {
        return declaration.hit() == Declaration.Hit.RIGHT
                && declaration.probability() >= evidence
                && score.minutes() <= minutes
                && score.unsafe().isEmpty();
    }
}
