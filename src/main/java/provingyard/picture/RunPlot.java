package provingyard.picture;

/**
 * The small plot of a zone's last run: flow minute by minute, the expected flow, and the limits that hold once the zone
 * has settled.
 *
 * @param flow one a minute, m3/s
 * @param expected m3/s, NaN where not known
 * @param high share of the expected flow over which it is too high
 * @param low share under which it is too low, 0 for none
 * @param settled minutes in which flow is not judged
 * @param words what is written
 */
public record RunPlot(double[] flow, double expected, double high, double low, double settled, Words words) {

    /** Height in px. */
    public static final double HEIGHT = 92;

    private static final double BOTTOM = HEIGHT - 16;
    private static final double TOP = 6;
    private static final double BELOW = 13;

    /** Texts: at the three lines, in the settling time, and at the first and last minute. */
    public record Words(String high, String expected, String low, String settling, String first, String last) {}

    /** Draws the plot in a width, from the surface's origin. */
    public void draw(Surface s, double width, Theme theme) {
        double most = Double.isNaN(expected) ? 0 : expected * high;
        for (double f : flow) {
            most = Math.max(most, f);
        }
        double k = (BOTTOM - TOP - 6) / Math.max(1e-12, most * 1.04);
        double step = width / Math.max(1, flow.length);
        settling(s, Math.min(width, settled * step), theme);
        s.stroke(Path.segment(0, BOTTOM, width, BOTTOM), Pen.of(theme.at(Tone.INK), 1.6));
        trace(s, step, k, theme);
        if (!Double.isNaN(expected)) {
            line(s, width, BOTTOM - expected * k, words.expected(), theme.at(Tone.INK), false, theme);
            line(s, width, BOTTOM - expected * high * k, words.high(), theme.at(Tone.ALARM), true, theme);
            if (low > 0) {
                line(s, width, BOTTOM - expected * low * k, words.low(), theme.at(Tone.ALARM), true, theme);
            }
        }
        TextStyle axis = TextStyle.of(FontRole.TEXT, 12, theme.at(Tone.INK_3));
        s.text(words.first(), 0, HEIGHT - 2, axis);
        s.text(words.last(), width, HEIGHT - 2, axis.end());
    }

    private void settling(Surface s, double width, Theme theme) {
        if (width <= 0) {
            return;
        }
        Path box = Path.rectangle(0, TOP, width, BOTTOM - TOP);
        s.fill(box, theme.at(Tone.SUNK));
        s.stroke(
                Path.segment(width, TOP, width, BOTTOM),
                Pen.of(theme.at(Tone.INK_3), 1).dashed(3, 3));
        if (s.textWidth(words.settling(), FontRole.TEXT, 12) < width - 6) {
            s.text(words.settling(), 4, BOTTOM - 5, TextStyle.of(FontRole.TEXT, 12, theme.at(Tone.INK_3)));
        }
    }

    private void trace(Surface s, double step, double k, Theme theme) {
        Path.Builder way = Path.builder();
        for (int i = 0; i < flow.length; i++) {
            double y = BOTTOM - flow[i] * k;
            if (i == 0) {
                way.moveTo(0, y);
            } else {
                way.lineTo(i * step, y);
            }
            way.lineTo((i + 1) * step, y);
        }
        s.stroke(way.build(), Pen.of(theme.at(Tone.WATER), 2.2));
    }

    private static void line(
            Surface s, double width, double y, String text, Colour colour, boolean dashed, Theme theme) {
        Pen pen = Pen.of(colour, 1.4);
        s.stroke(Path.segment(0, y, width, y), dashed ? pen.dashed(5, 3) : pen);
        TextStyle style = TextStyle.of(FontRole.STRONG, 12, colour)
                .halo(theme.at(Tone.SHEET).fade(0.9), 3)
                .end();
        s.text(text, width, dashed ? y - 3 : y + BELOW, style);
    }
}
