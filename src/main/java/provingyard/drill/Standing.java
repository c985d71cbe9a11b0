package provingyard.drill;

import java.util.ArrayList;
import java.util.List;

/**
 * How far a learner came with a family.
 *
 * @param support whether readings are explained
 * @param results what came of its cards, the oldest first; the last {@link #KEPT}
 */
public record Standing(Support support, List<Result> results) {

    /** Results that are kept. */
    public static final int KEPT = 12;

    /** Points from which a card counts towards mastery. */
    public static final int GOOD = 80;

    /** Cards that mastery is looked for in, and how many of them have to be good. */
    public static final int LAST = 3;

    public static final int ENOUGH = 2;

    /** Nothing done yet. */
    public static final Standing NONE = new Standing(Support.FIRST, List.of());

    public Standing {
        results = List.copyOf(results.subList(Math.max(0, results.size() - KEPT), results.size()));
    }

    /** After one more card. */
    Standing after(Result result) {
        List<Result> more = new ArrayList<>(results);
        more.add(result);
        return new Standing(result.form() == Form.EXAMPLE ? support : support.after(result.met()), more);
    }

    Standing choosing(boolean explained) {
        return new Standing(support.chosen(explained), results);
    }

    /** The form in which its next card comes. */
    public Form next() {
        if (results.isEmpty()) {
            return Form.EXAMPLE;
        }
        return results.stream().allMatch(r -> r.form() == Form.EXAMPLE) ? Form.HALF : Form.WHOLE;
    }

    /** The last whole cards, at most {@link #LAST}, the oldest first. */
    public List<Result> lastWhole() {
        List<Result> whole =
                results.stream().filter(r -> r.form() == Form.WHOLE).toList();
        return whole.subList(Math.max(0, whole.size() - LAST), whole.size());
    }

    /** How many of the last whole cards were good. */
    public int good() {
        return (int) lastWhole().stream().filter(r -> r.points() >= GOOD).count();
    }

    /** Whether it is mastered: two of the last three whole cards at 80 points or more. */
    public boolean mastered() {
        return good() >= ENOUGH;
    }

    /** The session in which it came last; 0 for never. */
    public int lastSession() {
        return results.isEmpty() ? 0 : results.get(results.size() - 1).session();
    }
}
