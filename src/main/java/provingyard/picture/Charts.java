package provingyard.picture;

import java.util.List;
import provingyard.scenario.SensorKind;

/**
 * Small charts for reports and the result screen. All in px from the surface's origin; texts come ready made, so numbers
 * carry their units in the reader's language. Every chart returns the height it took.
 */
public final class Charts {

    private Charts() {}

    /** A place on the score bar: its share from the clock (0) to the mark (1), a name and a line below. */
    public record ScoreMark(double share, String name, String line) {}

    /**
     * The score between the clock alone and the mark.
     *
     * @param clock at the left end
     * @param you the trainee, share held to 0 to 1 for drawing
     * @param mark at the right end
     * @param best the best for just this weather, with a share over 1, or null
     */
    public record Score(ScoreMark clock, ScoreMark you, ScoreMark mark, ScoreMark best) {}

    /** Draws the score bar in a width. */
    public static double score(Surface s, double width, Score score, Theme theme) {
        double reach = score.best() == null
                ? 1
                : Math.max(1.02, Math.min(1.25, score.best().share()));
        double half = Math.max(40, widest(s, score.mark()) / 2);
        double right = score.best() == null ? width - half : width - Math.max(half, 14 + widest(s, score.best()));
        double unit = right / reach;
        double y = 12;
        double you = unit * Math.max(0, Math.min(1, score.you().share()));
        s.fill(Path.rounded(0, y - 5, unit, 10, 5), theme.at(Tone.SUNK));
        s.fill(Path.rounded(0, y - 5, you, 10, 5), theme.at(Tone.ACCENT));
        Pen zero = Pen.of(theme.at(Tone.INK), 2.2);
        s.stroke(Path.segment(1, y - 12, 1, y + 12), zero);
        s.stroke(Path.segment(unit, y - 12, unit, y + 12), zero);
        if (score.best() != null) {
            Colour c = theme.at(Tone.INK_3);
            s.stroke(Path.segment(unit + 4, y, right, y), Pen.of(c, 1.6).dashed(2, 3));
            s.stroke(Path.segment(right, y - 6, right, y + 6), Pen.of(c, 1.6));
            s.text(score.best().name(), right + 9, y - 2, TextStyle.of(FontRole.TEXT, 12, c));
            s.text(score.best().line(), right + 9, y + 12, TextStyle.of(FontRole.TEXT, 12, c));
        }
        s.fill(Path.circle(you, y, 9.5), theme.at(Tone.ACCENT));
        s.stroke(Path.circle(you, y, 9.5), Pen.of(theme.at(Tone.PAPER), 2.5));
        marks(s, score, you, unit, y + 32, theme);
        return y + 56;
    }

    /** Names below the bar; the trainee's moves aside or a step down where it would meet an end's. */
    private static void marks(Surface s, Score score, double you, double unit, double y, Theme theme) {
        TextStyle name = TextStyle.of(FontRole.STRONG, 14, theme.at(Tone.INK));
        TextStyle line = TextStyle.of(FontRole.TEXT, 14, theme.at(Tone.INK_2));
        double left = widest(s, score.clock());
        double own = widest(s, score.you());
        double right = widest(s, score.mark());
        s.text(score.clock().name(), 0, y, name);
        s.text(score.clock().line(), 0, y + 18, line);
        double markAt = Math.max(unit, left + right / 2 + 12);
        s.text(score.mark().name(), markAt, y, name.middle());
        s.text(score.mark().line(), markAt, y + 18, line.middle());
        double low = left + 12 + own / 2;
        double high = markAt - right / 2 - 12 - own / 2;
        TextStyle accent =
                TextStyle.of(FontRole.BOLD, 14, theme.at(Tone.ACCENT)).middle();
        if (low <= high) {
            double at = Math.max(low, Math.min(high, you));
            s.text(score.you().name(), at, y, accent);
            s.text(score.you().line(), at, y + 18, line.middle());
        }
    }

    private static double widest(Surface s, ScoreMark m) {
        return Math.max(s.textWidth(m.name(), FontRole.BOLD, 14), s.textWidth(m.line(), FontRole.TEXT, 14));
    }

    /**
     * A row of water bars.
     *
     * @param own the trainee's row, written bold
     * @param kept what the plants kept
     * @param wasted in the order of {@link Waste}; negative shares count as nothing
     */
    public record WaterRow(
            String name, boolean own, double kept, String keptText, double[] wasted, String wastedText) {}

    /** Where the water went: kept to the left of one zero line, wasted to its right, on the same scale. */
    public static double water(
            Surface s,
            double width,
            List<WaterRow> rows,
            String keptTitle,
            String wastedTitle,
            Theme theme,
            String language) {
        double names = 0;
        double kept = 1e-9;
        double wasted = 1e-9;
        double value = 0;
        for (WaterRow r : rows) {
            names = Math.max(names, s.textWidth(r.name(), FontRole.BOLD, 15));
            kept = Math.max(kept, r.kept());
            wasted = Math.max(wasted, sum(r.wasted()));
            value = Math.max(value, s.textWidth(r.wastedText(), FontRole.BOLD, 15));
        }
        double left = names + 18;
        double room = Math.max(0, width - left - value - 10);
        double scale = room / (kept + wasted);
        double zero = left + kept * scale;
        double titled = s.textWidth(keptTitle, FontRole.STRONG, 13) + 8;
        if (zero < titled) {
            // Little is kept: its title still needs its place.
            zero = Math.min(titled, left + room);
            scale = Math.max(0, left + room - zero) / wasted;
        }
        TextStyle title = TextStyle.of(FontRole.STRONG, 13, theme.at(Tone.INK_2));
        s.text(keptTitle, zero - 8, 12, title.end());
        s.text(wastedTitle, zero + 8, 12, title);
        double y = 22;
        for (WaterRow r : rows) {
            waterRow(s, r, zero, scale, y, theme);
            y += 41;
        }
        s.stroke(Path.segment(zero, 0, zero, y - 8), Pen.of(theme.at(Tone.INK), 1.6));
        return y + legend(s, left, y + 4, width - left, theme, language);
    }

    private static void waterRow(Surface s, WaterRow r, double zero, double scale, double y, Theme theme) {
        FontRole role = r.own() ? FontRole.BOLD : FontRole.TEXT;
        double w = Math.max(0, r.kept()) * scale;
        s.text(r.name(), 0, y + 20, TextStyle.of(role, 15, theme.at(Tone.INK)));
        s.fill(Path.rectangle(zero - w, y, w, 29), theme.at(Tone.KEPT));
        double room = s.textWidth(r.keptText(), role, 14) + 14;
        if (w > room) {
            s.text(r.keptText(), zero - w + 9, y + 19.5, TextStyle.of(role, 14, theme.at(Tone.ON_KEPT)));
        }
        double x = zero;
        for (Waste kind : Waste.values()) {
            double part = Math.max(0, r.wasted()[kind.ordinal()]) * scale;
            kind.fill(s, x, y, part, 29, theme);
            x += part;
        }
        s.text(r.wastedText(), x + 8, y + 20, TextStyle.of(FontRole.BOLD, 15, theme.at(Tone.INK)));
    }

    private static double sum(double[] parts) {
        double all = 0;
        for (double p : parts) {
            all += Math.max(0, p);
        }
        return all;
    }

    /** What each pattern means, wrapped to a width; returns the height taken. */
    public static double legend(Surface s, double x, double y, double width, Theme theme, String language) {
        double at = 0;
        double row = y;
        TextStyle style = TextStyle.of(FontRole.TEXT, 13, theme.at(Tone.INK_2));
        for (Waste kind : Waste.values()) {
            double w = 20 + s.textWidth(kind.word(language), FontRole.TEXT, 13) + 24;
            if (at > 0 && at + w - 24 > width) {
                at = 0;
                row += 22;
            }
            kind.fill(s, x + at, row, 14, 14, theme);
            s.text(kind.word(language), x + at + 20, row + 12, style);
            at += w;
        }
        return row - y + 24;
    }

    /**
     * A decision's share: signed money against the mark (negative is a loss), its text, and why in words.
     *
     * @param kind the sensor; null for the schedule
     */
    public record Share(SensorKind kind, String name, double value, String valueText, String why) {}

    /** What each decision cost or gained, around one zero line, on the same scale both ways. */
    public static double shares(
            Surface s, double width, List<Share> rows, String costTitle, String gainTitle, Theme theme) {
        double loss = 1e-9;
        double gain = 1e-9;
        double words = 0;
        double names = 0;
        for (Share r : rows) {
            loss = Math.max(loss, -r.value());
            gain = Math.max(gain, r.value());
            double text = s.textWidth(r.valueText(), FontRole.BOLD, 14) + s.textWidth(r.why(), FontRole.TEXT, 14) + 24;
            words = r.value() > 0 ? Math.max(words, text) : words;
            names = Math.max(names, s.textWidth(r.name(), FontRole.STRONG, 15));
        }
        double left = names + 46;
        double zero = left + (width - left) * 0.42;
        double scale = Math.min((zero - left - 64) / loss, Math.max(20, width - zero - words) / gain);
        TextStyle title = TextStyle.of(FontRole.TEXT, 13, theme.at(Tone.INK_2));
        s.text(costTitle, zero - 8, 12, title.end());
        s.text(gainTitle, zero + 8, 12, title);
        double y = 20;
        for (Share r : rows) {
            if (y > 20) {
                s.stroke(Path.segment(0, y, width, y), Pen.of(theme.at(Tone.HAIRLINE), 1));
            }
            shareRow(s, r, zero, scale, y, theme);
            y += 42;
        }
        s.stroke(Path.segment(zero, 20, zero, y), Pen.of(theme.at(Tone.INK), 1.6));
        return y;
    }

    private static void shareRow(Surface s, Share r, double zero, double scale, double y, Theme theme) {
        double mid = y + 21;
        Icons.Icon icon = r.kind() == null ? Icons.get("clock") : Icons.of(r.kind());
        icon.draw(s, 11, mid, 20, theme.at(Tone.INK));
        s.text(r.name(), 30, mid + 5, TextStyle.of(FontRole.STRONG, 15, theme.at(Tone.INK)));
        double w = Math.abs(r.value()) * scale;
        TextStyle why = TextStyle.of(FontRole.TEXT, 14, theme.at(Tone.INK_2));
        if (r.value() > 0) {
            double bar = Math.max(3, w);
            s.stroke(
                    Path.rectangle(zero + 1, mid - 7.5, bar, 15),
                    Pen.of(theme.at(Tone.GOOD), 2).sharp());
            s.text(r.valueText(), zero + bar + 9, mid + 5, TextStyle.of(FontRole.BOLD, 14, theme.at(Tone.GOOD)));
            double after = zero + bar + 18 + s.textWidth(r.valueText(), FontRole.BOLD, 14);
            s.text(r.why(), after, mid + 5, why);
            return;
        }
        s.fill(Path.rectangle(zero - w, mid - 7.5, w, 15), theme.at(Tone.ALARM));
        Colour c = theme.at(r.value() < 0 ? Tone.ALARM : Tone.INK_2);
        s.text(
                r.valueText(),
                zero - w - 8,
                mid + 5,
                TextStyle.of(FontRole.BOLD, 14, c).end());
        s.text(r.why(), zero + 9, mid + 5, why);
    }
}
