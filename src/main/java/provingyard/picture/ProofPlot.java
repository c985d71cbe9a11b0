package provingyard.picture;

import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import provingyard.season.Proof;

/**
 * The small plot of a test: the reference dashed, the reading as a line, the set point across, the time in which it was
 * tripped tinted, and below the zone's valve, filled while it was open.
 *
 * @param proof what was tested
 * @param limitText the set point with its unit; empty for none
 * @param low text at the lower end
 * @param high text at the upper end
 * @param valve name of the valve's lane
 * @param last text at the last minute
 */
public record ProofPlot(Proof proof, String limitText, String low, String high, String valve, String last) {

    /** Height in px. */
    public static final double HEIGHT = 180;

    private static final double LEFT = 78;
    private static final double TOP = 26;
    private static final double BOTTOM = HEIGHT - 46;
    private static final double LANE = 9;
    /** Volume share beyond what soil showed, so that noise alone does not fill the plot. */
    private static final double AROUND_SOIL = 0.03;

    /** The least value that is plotted, in the reading's unit. */
    public static double least(Proof proof) {
        double least = Double.isFinite(limit(proof)) ? limit(proof) : Double.POSITIVE_INFINITY;
        for (Proof.Minute m : proof.minutes()) {
            least = Math.min(least, Math.min(m.reading(), m.reference()));
        }
        return switch (proof.test()) {
            case COOL -> least;
            case CORE -> Math.max(0, least - AROUND_SOIL);
            default -> 0;
        };
    }

    /** The greatest value that is plotted, in the reading's unit. */
    public static double most(Proof proof) {
        double most = Double.isFinite(limit(proof)) ? limit(proof) : Double.NEGATIVE_INFINITY;
        for (Proof.Minute m : proof.minutes()) {
            most = Math.max(most, Math.max(m.reading(), m.reference()));
        }
        return proof.test() == Proof.Test.CORE ? most + AROUND_SOIL : most;
    }

    private static double limit(Proof proof) {
        return proof.verdict().setPoint();
    }

    /** Draws the plot in a width, from the surface's origin. */
    public void draw(Surface s, double width, Theme theme) {
        double step = (width - LEFT - 4) / Math.max(1, proof.minutes().size());
        double low = least(proof);
        double k = (BOTTOM - TOP) / Math.max(1e-12, most(proof) - low);
        tripped(s, step, theme);
        s.stroke(Path.segment(LEFT, BOTTOM, width - 4, BOTTOM), Pen.of(theme.at(Tone.HAIRLINE), 1));
        s.stroke(
                line(Proof.Minute::reference, step, low, k),
                Pen.of(theme.at(Tone.INK_2), 1.6).dashed(5, 4));
        s.stroke(line(Proof.Minute::reading, step, low, k), Pen.of(theme.at(Tone.WATER), 2.2));
        if (!limitText.isEmpty()) {
            double y = BOTTOM - (limit(proof) - low) * k;
            s.stroke(Path.segment(LEFT, y, width - 4, y), Pen.of(theme.at(Tone.ACCENT), 1.6));
            TextStyle style = TextStyle.of(FontRole.STRONG, 12, theme.at(Tone.ACCENT))
                    .halo(theme.at(Tone.SHEET).fade(0.9), 3);
            s.text(limitText, width - 6, y - 5, style.end());
        }
        axes(s, width, theme);
        valve(s, step, theme);
    }

    private void axes(Surface s, double width, Theme theme) {
        TextStyle axis = TextStyle.of(FontRole.TEXT, 12, theme.at(Tone.INK_3));
        s.text(high, LEFT - 8, TOP + 5, axis.end());
        s.text(low, LEFT - 8, BOTTOM + 4, axis.end());
        s.text(valve, LEFT - 8, BOTTOM + 18, axis.end());
        s.text("0", LEFT, HEIGHT - 6, axis);
        s.text(last, width - 4, HEIGHT - 6, axis.end());
    }

    private void tripped(Surface s, double step, Theme theme) {
        stretches(Proof.Minute::tripped, (from, to) -> {
            double w = (to - from) * step;
            s.fill(Path.rectangle(LEFT + from * step, TOP - 18, w, BOTTOM - TOP + 18), theme.at(Tone.ACCENT_SOFT));
        });
    }

    private void valve(Surface s, double step, Theme theme) {
        double y = BOTTOM + 10;
        Path base = Path.segment(LEFT, y + LANE / 2, LEFT + proof.minutes().size() * step, y + LANE / 2);
        s.stroke(base, Pen.of(theme.at(Tone.INK_3), 1));
        stretches(
                m -> m.valve() == Proof.Valve.OPEN,
                (from, to) -> s.fill(
                        Path.rectangle(LEFT + from * step, y, (to - from) * step, LANE), theme.at(Tone.ZONE_RUN)));
    }

    /** From a minute to a minute. */
    private interface Stretch {
        void draw(int from, int to);
    }

    private void stretches(Predicate<Proof.Minute> holds, Stretch each) {
        int from = -1;
        for (int m = 0; m <= proof.minutes().size(); m++) {
            boolean on =
                    m < proof.minutes().size() && holds.test(proof.minutes().get(m));
            if (on && from < 0) {
                from = m;
            } else if (!on && from >= 0) {
                each.draw(from, m);
                from = -1;
            }
        }
    }

    private Path line(ToDoubleFunction<Proof.Minute> value, double step, double low, double k) {
        Path.Builder b = Path.builder();
        List<Proof.Minute> all = proof.minutes();
        for (int m = 0; m < all.size(); m++) {
            double x = LEFT + (m + 0.5) * step;
            double y = BOTTOM - (value.applyAsDouble(all.get(m)) - low) * k;
            if (m == 0) {
                b.moveTo(x, y);
            } else {
                b.lineTo(x, y);
            }
        }
        return b.build();
    }
}
