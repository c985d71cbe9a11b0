package provingyard.report;

import provingyard.quantity.UnitSystem;

/** Sizes of paper. */
public enum Paper {
    A4("A4"),
    LETTER("letter");

    private final String css;

    Paper(String css) {
        this.css = css;
    }

    /** The size's name in style sheets. */
    String css() {
        return css;
    }

    /** The paper that goes with a system of units. */
    public static Paper of(UnitSystem units) {
        return units == UnitSystem.US ? LETTER : A4;
    }
}
