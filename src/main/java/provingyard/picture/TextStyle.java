package provingyard.picture;

/**
 * How a text is drawn. The point given with it lies on the base line.
 *
 * @param size px
 * @param halo drawn around the letters first; null for none
 * @param haloWidth px
 */
public record TextStyle(FontRole role, double size, Colour colour, Anchor anchor, Colour halo, double haloWidth) {

    /** Which part of the text its point is. */
    public enum Anchor {
        START,
        MIDDLE,
        END
    }

    /** A text without halo that starts at its point. */
    public static TextStyle of(FontRole role, double size, Colour colour) {
        return new TextStyle(role, size, colour, Anchor.START, null, 0);
    }

    /** The same, centred on its point. */
    public TextStyle middle() {
        return new TextStyle(role, size, colour, Anchor.MIDDLE, halo, haloWidth);
    }

    /** The same, ending at its point. */
    public TextStyle end() {
        return new TextStyle(role, size, colour, Anchor.END, halo, haloWidth);
    }

    /** The same with a halo. */
    public TextStyle halo(Colour around, double width) {
        return new TextStyle(role, size, colour, anchor, around, width);
    }
}
