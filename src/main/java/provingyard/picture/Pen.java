package provingyard.picture;

/**
 * How a line is drawn.
 *
 * @param width in the surface's current units
 * @param dash lengths on and off, empty for a solid line
 * @param phase where in the dash the line begins
 */
public record Pen(Colour colour, double width, Cap cap, Join join, double[] dash, double phase) {

    private static final double[] SOLID = {};

    /** A line's end. */
    public enum Cap {
        BUTT,
        ROUND
    }

    /** A line's corner. */
    public enum Join {
        MITER,
        ROUND
    }

    /** A solid line with plain ends and round corners. */
    public static Pen of(Colour colour, double width) {
        return new Pen(colour, width, Cap.BUTT, Join.ROUND, SOLID, 0);
    }

    /** The same with round ends. */
    public Pen round() {
        return new Pen(colour, width, Cap.ROUND, Join.ROUND, dash, phase);
    }

    /** The same with sharp corners. */
    public Pen sharp() {
        return new Pen(colour, width, cap, Join.MITER, dash, phase);
    }

    /** The same, dashed. */
    public Pen dashed(double... lengths) {
        return new Pen(colour, width, cap, join, lengths.clone(), phase);
    }

    /** The same with another phase. */
    public Pen shifted(double newPhase) {
        return new Pen(colour, width, cap, join, dash, newPhase);
    }
}
