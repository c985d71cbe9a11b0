package provingyard.drill;

/**
 * Whether what each reading says is explained after it. It is at first; it folds away after {@link #ROW} cards in a row whose
 * goal was met, and comes back after as many in a row that missed it, or when it is asked for (contingent fading; the
 * numbers are design).
 *
 * @param explains whether it is explained
 * @param row cards in a row that speak for a change: met ones while it is explained, missed ones while it is not
 */
public record Support(boolean explains, int row) {

    /** So many in a row change it. */
    static final int ROW = 2;

    /** As it is at first. */
    public static final Support FIRST = new Support(true, 0);

    /** After one more card. */
    public Support after(boolean met) {
        if (met != explains) {
            return new Support(explains, 0);
        }
        return row + 1 >= ROW ? new Support(!explains, 0) : new Support(explains, row + 1);
    }

    /** After the trainee asked for it, or did without. */
    public Support chosen(boolean wanted) {
        return wanted == explains ? this : new Support(wanted, 0);
    }
}
