package provingyard.study;

import java.util.List;
import java.util.stream.IntStream;
import provingyard.scenario.Point;
import provingyard.scenario.Scenario;

/**
 * Which draws of a site's climate serve for what; the one place that says so. No two purposes share a draw, so that
 * nothing is judged by the weather that it was chosen on.
 *
 * <ul>
 *   <li>0: the site's own season as the author wrote it;
 *   <li>1 to 100: the search for the mark, as many as {@link #search} says;
 *   <li>201 to 224: the trial of challengers;
 *   <li>301 to 400: the study of the shipped marks, which the tests run;
 *   <li>401 and up: the worth of each kind of sensor.
 * </ul>
 */
public final class Draws {

    /** Stands for the site's own season among draws. */
    public static final int OWN = 0;

    /** First draw of the study of shipped marks. */
    public static final int STUDY_FROM = 301;

    /** First draw of the worth of each kind. */
    public static final int WORTH_FROM = 401;

    /** First draw of a challenger's trial. */
    static final int TRIAL_FROM = 201;

    /** How many draws a challenger's trial has. */
    static final int TRIAL = 24;

    /** Fewest draws of a search. */
    static final int FEWEST = 12;

    /** Most draws of a search. */
    static final int MOST = 36;

    /** Work of a search over all its draws that two cores do within a minute, in the measure of {@link #work}. */
    private static final double A_MINUTE = 6.6e7;

    /** As many cells take as long as all else that a season's minute asks for. */
    private static final double CELLS_OF_A_MINUTE = 1500;

    /** An open schedule has as many dials as so many kinds of sensor. */
    private static final int SCHEDULE_AS_KINDS = 2;

    private Draws() {}

    /** The draws of a search: more of them where it is done quickly, 12 to 36. */
    static List<Integer> search(Scenario scenario) {
        return from(1, (int) Math.max(FEWEST, Math.min(MOST, A_MINUTE / work(scenario))));
    }

    /**
     * How much a search has to do for each draw, by what searches of the shipped sites took: days times cells of a season,
     * and the square of the kinds that are open, since each is tried with each other.
     */
    private static double work(Scenario scenario) {
        Point size = scenario.yard().size();
        double cell = scenario.yard().cell();
        double cells = size.x() * size.y() / (cell * cell);
        int kinds = new Limits(scenario).kinds().size() + (scenario.locks().schedule() ? 0 : SCHEDULE_AS_KINDS);
        return scenario.season().days() * (cells + CELLS_OF_A_MINUTE) * kinds * kinds;
    }

    /** The draws of a challenger's trial, which no search uses. */
    static List<Integer> trial() {
        return from(TRIAL_FROM, TRIAL);
    }

    /** So many draws from a first one on. */
    static List<Integer> from(int first, int count) {
        return IntStream.range(first, first + count).boxed().toList();
    }
}
