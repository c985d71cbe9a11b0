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

    /** Fewest and most draws of a search, and the cells times days that are lived for one search's candidate. */
    static final int FEWEST = 12;

    static final int MOST = 36;
    private static final double CELL_DAYS = 2.1e6;

    private Draws() {}

    /** The draws of a search: more of them where a season of the site is quick to live, 12 to 36. */
    static List<Integer> search(Scenario scenario) {
        Point size = scenario.yard().size();
        double cell = scenario.yard().cell();
        double cells = size.x() * size.y() / (cell * cell);
        double fit = CELL_DAYS / (cells * scenario.season().days());
        return from(1, (int) Math.max(FEWEST, Math.min(MOST, fit)));
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
