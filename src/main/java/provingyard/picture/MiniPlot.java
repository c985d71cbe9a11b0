package provingyard.picture;

/**
 * The small plot under a setting: one value a day, and which of them would have tripped it.
 *
 * @param values one a day
 * @param tripped for each day, whether it would have tripped
 * @param limit the set point, in the values' unit
 * @param dots dots instead of bars
 * @param limitText the set point with its unit
 * @param first words at the first day
 * @param last words at the last day
 */
public record MiniPlot(
        double[] values, boolean[] tripped, double limit, boolean dots, String limitText, String first, String last) {

    /** Height in px. */
    public static final double HEIGHT = 66;

    /** A plot whose days trip above the limit, or below it. */
    public static MiniPlot of(
            double[] values, double limit, boolean below, boolean dots, String limitText, String first, String last) {
        boolean[] tripped = new boolean[values.length];
        for (int i = 0; i < values.length; i++) {
            tripped[i] = below ? values[i] < limit : values[i] > limit;
        }
        return new MiniPlot(values, tripped, limit, dots, limitText, first, last);
    }

    /** How many days would have tripped it. */
    public int trips() {
        int n = 0;
        for (boolean trip : tripped) {
            n += trip ? 1 : 0;
        }
        return n;
    }

    /** Draws the plot in a width, from the surface's origin. */
    public void draw(Surface s, double width, Theme theme) {
        double low = dots ? limit : 0;
        double high = limit;
        for (double v : values) {
            if (Double.isFinite(v)) {
                low = Math.min(low, v);
                high = Math.max(high, v);
            }
        }
        double span = Math.max(1e-9, high - low);
        double bottom = HEIGHT - 16;
        double k = (bottom - 10) / span;
        double step = (width - 4) / Math.max(1, values.length);
        for (int i = 0; i < values.length; i++) {
            if (Double.isFinite(values[i])) {
                day(s, 2 + i * step, step, bottom - (values[i] - low) * k, bottom, tripped[i], theme);
            }
        }
        double y = bottom - (limit - low) * k;
        s.stroke(Path.segment(0, y, width, y), Pen.of(theme.at(Tone.ACCENT), 1.8));
        limitText(s, width, y, step, k, low, bottom, theme);
        TextStyle axis = TextStyle.of(FontRole.TEXT, 12, theme.at(Tone.INK_3));
        s.text(first, 0, HEIGHT - 2, axis);
        s.text(last, width, HEIGHT - 2, axis.end());
    }

    private void day(Surface s, double x, double step, double y, double bottom, boolean trips, Theme theme) {
        double mid = x + step / 2;
        if (dots) {
            Path mark = trips ? Path.svg("M0 -4.5L4.5 0L0 4.5L-4.5 0Z").moved(mid, y) : Path.circle(mid, y, 2.4);
            s.fill(mark, theme.at(trips ? Tone.ICE : Tone.INK_3));
            return;
        }
        double w = Math.max(2, step * 0.74);
        Colour idle = theme.at(Tone.HAIRLINE).mix(theme.at(Tone.INK_3), 0.2);
        double top = Math.min(y, bottom - 1);
        s.fill(Path.rounded(mid - w / 2, top, w, bottom - top, 1), trips ? theme.at(Tone.WATER) : idle);
        if (trips) {
            s.fill(Path.circle(mid, y - 5, 2.1), theme.at(Tone.INK));
        }
    }

    /** The set point's text stands over its line where the most days in a row lie low. */
    private void limitText(
            Surface s, double width, double y, double step, double k, double low, double bottom, Theme theme) {
        double w = s.textWidth(limitText, FontRole.STRONG, 12);
        int need = (int) Math.ceil((w + 6) / step);
        double best = 2;
        double least = Double.MAX_VALUE;
        for (int i = 0; i + need <= values.length; i++) {
            double nearest = 0;
            for (int j = i; j < i + need; j++) {
                double at = bottom - (values[j] - low) * k;
                boolean meets = dots ? Math.abs(at - (y - 6)) < 11 : at < y - 1;
                nearest += meets ? 1 : 0;
            }
            if (nearest < least) {
                least = nearest;
                best = 2 + i * step + 3;
            }
        }
        TextStyle style = TextStyle.of(FontRole.STRONG, 12, theme.at(Tone.ACCENT))
                .halo(theme.at(Tone.SHEET).fade(0.9), 3);
        s.text(limitText, Math.min(best, width - w), y - 4, style);
    }
}
