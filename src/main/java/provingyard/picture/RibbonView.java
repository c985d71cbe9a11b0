package provingyard.picture;

import provingyard.quantity.UnitSystem;

/**
 * What part of the ribbon is seen, and how.
 *
 * @param width px
 * @param height px
 * @param from first tick seen
 * @param to tick at the right end
 * @param head tick of the scrub head
 * @param language {@code en} or {@code es}
 */
public record RibbonView(
        int width, int height, long from, long to, long head, Theme theme, String language, UnitSystem units) {

    /** px at the left for the lanes' names. */
    public static final double GUTTER = 92;

    /** px at the right. */
    public static final double MARGIN = 14;

    public RibbonView {
        if (to <= from) {
            throw new IllegalArgumentException("a ribbon needs time: " + from + " to " + to);
        }
    }

    /** px of a tick. */
    public double x(double tick) {
        return GUTTER + (tick - from) * perTick();
    }

    /** px that a minute takes. */
    public double perTick() {
        return (width - GUTTER - MARGIN) / (to - from);
    }

    /** The tick under a pixel, held within what is seen. */
    public long tick(double px) {
        long t = Math.round(from + (px - GUTTER) / perTick());
        return Math.max(from, Math.min(to, t));
    }

    /** px of the right end. */
    public double end() {
        return width - MARGIN;
    }
}
