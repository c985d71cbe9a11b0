package provingyard.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The temperatures of a night in which a walk froze: air and paving as lines, what the freeze sensor read dashed, 0 °C and
 * the set point across, the time in which the walk carried ice tinted, and below the runs of zones.
 *
 * @param lines the courses of temperature, °C, all equally long
 * @param limit set point of the freeze sensor, °C; NaN without one
 * @param iced from and until, in steps of the lines
 * @param runs from and until of each run of a zone, in steps of the lines
 * @param words what stands on it
 */
public record NightPlot(List<Line> lines, double limit, double[] iced, List<double[]> runs, Words words) {

    /** Height in px. */
    public static final double HEIGHT = 196;

    /**
     * A course of temperature.
     *
     * @param name stands at its end
     * @param celsius one value a step; NaN where there is none; readers must not change it
     */
    public record Line(String name, float[] celsius, Kind kind) {}

    /** What a line is. */
    public enum Kind {
        AIR,
        PAVING,
        SENSOR
    }

    /**
     * Ready-made texts.
     *
     * @param zero 0 °C in the reader's unit
     * @param limit the set point; empty without one
     * @param iced over the tinted time
     * @param runs name of the lane of runs
     * @param first time at the left end
     * @param last time at the right end
     */
    public record Words(String zero, String limit, String iced, String runs, String first, String last) {}

    private static final double LEFT = 64;
    private static final double TOP = 22;
    private static final double BOTTOM = HEIGHT - 44;
    private static final double LANE = 9;
    private static final double ROW = 15;

    public NightPlot {
        lines = List.copyOf(lines);
        runs = List.copyOf(runs);
    }

    /** Draws the plot in a width, from the surface's origin; gives the height taken. */
    public double draw(Surface s, double width, Theme theme) {
        double right = width - names(s);
        int steps = lines.get(0).celsius().length;
        double step = (right - LEFT) / Math.max(1, steps - 1);
        double low = Math.min(-1, least());
        double high = Math.max(Double.isNaN(limit) ? 1 : limit + 0.5, most());
        double k = (BOTTOM - TOP) / (high - low);
        iced(s, step, theme);
        across(s, BOTTOM - (0 - low) * k, right, words.zero(), Tone.ICE, theme);
        if (!Double.isNaN(limit)) {
            across(s, BOTTOM - (limit - low) * k, right, words.limit(), Tone.ACCENT, theme);
        }
        for (Line line : lines) {
            s.stroke(path(line.celsius(), step, low, k), pen(line.kind(), theme));
        }
        ends(s, right, low, k, theme);
        runs(s, step, right, theme);
        TextStyle axis = TextStyle.of(FontRole.TEXT, 12, theme.at(Tone.INK_3));
        s.text(words.first(), LEFT, HEIGHT - 6, axis);
        s.text(words.last(), right, HEIGHT - 6, axis.end());
        return HEIGHT;
    }

    private double names(Surface s) {
        double widest = 0;
        for (Line line : lines) {
            widest = Math.max(widest, s.textWidth(line.name(), FontRole.STRONG, 12));
        }
        return widest + 14;
    }

    private double least() {
        double least = Double.POSITIVE_INFINITY;
        for (Line line : lines) {
            for (float t : line.celsius()) {
                least = Float.isNaN(t) ? least : Math.min(least, t);
            }
        }
        return least;
    }

    private double most() {
        double most = Double.NEGATIVE_INFINITY;
        for (Line line : lines) {
            for (float t : line.celsius()) {
                most = Float.isNaN(t) ? most : Math.max(most, t);
            }
        }
        return most;
    }

    private void iced(Surface s, double step, Theme theme) {
        double from = LEFT + iced[0] * step;
        double until = LEFT + iced[1] * step;
        s.fill(Path.rectangle(from, TOP - 18, until - from, BOTTOM - TOP + 18), theme.at(Tone.ICE_SOFT));
        TextStyle style = TextStyle.of(FontRole.STRONG, 12, theme.at(Tone.ICE));
        s.text(words.iced(), from + 5, TOP - 6, style);
    }

    private static void across(Surface s, double y, double right, String text, Tone tone, Theme theme) {
        s.stroke(Path.segment(LEFT, y, right, y), Pen.of(theme.at(tone), 1.4).dashed(tone == Tone.ICE ? 5 : 1, 4));
        s.text(
                text,
                LEFT - 8,
                y + 4,
                TextStyle.of(FontRole.STRONG, 12, theme.at(tone)).end());
    }

    private static Pen pen(Kind kind, Theme theme) {
        return switch (kind) {
            case AIR -> Pen.of(theme.at(Tone.INK), 1.8);
            case PAVING -> Pen.of(theme.at(Tone.INK_3), 2.2);
            case SENSOR -> Pen.of(theme.at(Tone.ACCENT), 2).dashed(6, 4);
        };
    }

    private Path path(float[] values, double step, double low, double k) {
        Path.Builder b = Path.builder();
        boolean drawing = false;
        for (int i = 0; i < values.length; i++) {
            if (Float.isNaN(values[i])) {
                drawing = false;
                continue;
            }
            double x = LEFT + i * step;
            double y = BOTTOM - (values[i] - low) * k;
            if (drawing) {
                b.lineTo(x, y);
            } else {
                b.moveTo(x, y);
            }
            drawing = true;
        }
        return b.build();
    }

    /** Names at the lines' ends, moved apart where they would meet. */
    private void ends(Surface s, double right, double low, double k, Theme theme) {
        List<Line> order = new ArrayList<>(lines);
        order.sort(Comparator.comparingDouble(l -> -end(l.celsius())));
        double before = Double.NEGATIVE_INFINITY;
        for (Line line : order) {
            double y = Math.max(before + ROW, BOTTOM - (end(line.celsius()) - low) * k + 4);
            before = y;
            Tone tone =
                    switch (line.kind()) {
                        case AIR -> Tone.INK;
                        case PAVING -> Tone.INK_3;
                        case SENSOR -> Tone.ACCENT;
                    };
            s.text(line.name(), right + 8, y, TextStyle.of(FontRole.STRONG, 12, theme.at(tone)));
        }
    }

    private static double end(float[] values) {
        for (int i = values.length - 1; i >= 0; i--) {
            if (!Float.isNaN(values[i])) {
                return values[i];
            }
        }
        return 0;
    }

    private void runs(Surface s, double step, double right, Theme theme) {
        double y = BOTTOM + 8;
        s.text(
                words.runs(),
                LEFT - 8,
                y + LANE,
                TextStyle.of(FontRole.TEXT, 12, theme.at(Tone.INK_3)).end());
        s.stroke(Path.segment(LEFT, y + LANE / 2, right, y + LANE / 2), Pen.of(theme.at(Tone.HAIRLINE), 1));
        for (double[] run : runs) {
            double from = LEFT + Math.max(0, run[0]) * step;
            double until = Math.min(right, LEFT + run[1] * step);
            if (until > from) {
                s.fill(Path.rectangle(from, y, Math.max(1.5, until - from), LANE), theme.at(Tone.ZONE_RUN));
            }
        }
    }
}
