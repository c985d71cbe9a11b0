package provingyard.report;

/**
 * A cell of a table.
 *
 * @param text what it says
 * @param small a quiet line below; empty for none
 * @param look its class for the style sheets; empty for none
 * @param icon PNG of a sign at its left, or null
 */
record Cell(String text, String small, String look, byte[] icon) {

    /** Whether it stands at the right. */
    boolean isNumber() {
        return look.equals("n") || look.startsWith("n ");
    }

    /** Words. */
    static Cell text(String text) {
        return new Cell(text, "", "", null);
    }

    /** A number, at the right. */
    static Cell number(String text) {
        return new Cell(text, "", "n", null);
    }

    /** A name that stays on one line. */
    static Cell name(String text) {
        return new Cell(text, "", "who", null);
    }

    /** The same with a quiet line below. */
    Cell below(String line) {
        return new Cell(text, line, look, icon);
    }

    /** The same with a sign at its left. */
    Cell with(byte[] png) {
        return new Cell(text, small, look, png);
    }

    /** The same in another look beside its own. */
    Cell look(String other) {
        return new Cell(text, small, look.isEmpty() ? other : look + " " + other, icon);
    }
}
