package provingyard.scenario;

import java.util.List;

/**
 * What the site teaches.
 *
 * @param about the sensors that the lesson is about
 * @param goal one measurable goal
 * @param brief who the owner is, what hurts
 * @param onTheRealYard one closing question about a real site
 * @param objectives skills trained
 * @param mastery when the lesson counts as mastered
 */
public record Lesson(
        List<SensorKind> about,
        Text goal,
        Text brief,
        Text onTheRealYard,
        List<Objective> objectives,
        Mastery mastery) {

    /** A skill ({@code K1} to {@code K10}) and what is wanted of it. */
    public record Objective(String skill, Text text) {}

    /** Mastered when {@code need} of the last {@code ofLast} runs scored at least {@code score}. */
    public record Mastery(int score, int need, int ofLast) {}
}
