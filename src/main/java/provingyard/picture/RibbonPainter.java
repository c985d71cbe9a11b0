package provingyard.picture;

import java.util.Arrays;
import java.util.List;
import provingyard.quantity.UnitSystem;
import provingyard.scenario.SensorKind;

/**
 * Draws the weather ribbon: time to the right; rain hangs from the top, air is a line over a dashed 0 °C, wind a comb,
 * each zone a thin lane, sensor holds a disc and a bar, ice and alarms signs with a word. What is not lived is empty.
 */
public final class RibbonPainter {

    private static final double TOP = 18;
    private static final double SKY = 37;
    private static final double SUN = 9;
    private static final double COMB = 10;
    private static final double EXTRA = 20;
    private static final double LEAST_HEIGHT = 139;
    /** W/m2 that fill the sun's lane at the least: a pale noon in winter. */
    private static final double PALE_SUN = 400;

    private final RibbonData data;
    private final RibbonView view;
    private final RibbonWords words;
    private final Theme theme;
    private final double lane;
    private final double sun;
    private final double wind;
    private final double zones;
    private final double flow;
    private final double soil;
    private final double signs;
    private final double zero;
    private final double degree;

    private RibbonPainter(RibbonData data, RibbonView view) {
        this.data = data;
        this.view = view;
        this.theme = view.theme();
        this.words = RibbonWords.of(view.language());
        this.lane = laneHeight(data);
        this.sun = TOP + SKY + 3;
        this.wind = sun + SUN + 3;
        this.zones = wind + COMB + 4;
        this.flow = zones + data.lanes().size() * lane + 4;
        this.soil = flow + (data.flow() == null ? 0 : EXTRA);
        this.signs = soil + (data.soil() == null ? 0 : EXTRA);
        double low = -4;
        double high = 12;
        for (double v : data.air()) {
            if (Double.isFinite(v)) {
                low = Math.min(low, v - 1);
                high = Math.max(high, v + 1);
            }
        }
        this.degree = SKY / (high - low);
        this.zero = TOP + SKY + low * degree;
    }

    private static double laneHeight(RibbonData data) {
        return data.lanes().size() > 8 ? 3.6 : data.lanes().size() > 5 ? 4.6 : 5.4;
    }

    /** Height in px that a ribbon needs. */
    public static int height(RibbonData data) {
        double extra = (data.flow() == null ? 0 : EXTRA) + (data.soil() == null ? 0 : EXTRA);
        double lanes = data.lanes().size() * laneHeight(data);
        double marks = RibbonMarks.rows(data) * RibbonMarks.ROW;
        return (int) Math.ceil(Math.max(LEAST_HEIGHT, TOP + SKY + SUN + COMB + 17 + lanes + extra + marks));
    }

    /** Draws on a surface that begins at the ribbon's upper left corner. */
    public static void draw(Surface s, RibbonData data, RibbonView view) {
        new RibbonPainter(data, view).draw(s);
    }

    private void draw(Surface s) {
        double w = view.width();
        s.fill(Path.rectangle(0, 0, w, view.height()), theme.at(Tone.SHEET));
        s.save();
        s.clip(Path.rectangle(RibbonView.GUTTER, 0, view.end() - RibbonView.GUTTER, view.height()));
        nights(s);
        future(s);
        days(s);
        s.save();
        s.clip(Path.rectangle(RibbonView.GUTTER, 0, Math.max(0, now() - RibbonView.GUTTER), view.height()));
        rain(s, false);
        air(s);
        sun(s);
        comb(s);
        lines(s);
        s.restore();
        rain(s, true);
        lanes(s);
        marks(s);
        s.restore();
        names(s);
        head(s);
    }

    private double now() {
        return Math.min(view.end(), view.x(data.livedUntil()));
    }

    private void nights(Surface s) {
        for (RibbonData.Span n : data.nights()) {
            double a = Math.max(RibbonView.GUTTER, view.x(n.from()));
            double b = Math.min(view.end(), view.x(n.to()));
            if (b > a) {
                s.fill(Path.rectangle(a, TOP - 2, b - a, view.height() - TOP), theme.at(Tone.NIGHT));
            }
        }
    }

    /** What is not lived yet is hatched and empty. */
    private void future(Surface s) {
        double a = Math.max(RibbonView.GUTTER, now());
        double w = view.end() - a;
        if (w <= 0) {
            return;
        }
        s.fill(Path.rectangle(a, TOP - 2, w, view.height() - TOP), theme.at(Tone.FUTURE));
        double h = view.height() - TOP;
        s.save();
        s.clip(Path.rectangle(a, TOP - 2, w, h));
        s.stroke(hatch(a, TOP - 2, w, h, 8.5, false), Pen.of(theme.at(Tone.HAIRLINE), 1.2));
        s.restore();
    }

    private static Path hatch(double x, double y, double w, double h, double step, boolean falling) {
        Path.Builder b = Path.builder();
        for (double d = Math.floor((x - h) / step) * step; d < x + w + h; d += step) {
            b.moveTo(falling ? d : d + h, y);
            b.lineTo(falling ? d + h : d, y + h);
        }
        return b.build();
    }

    private void days(Surface s) {
        double day = 1440 * view.perTick();
        int every = day > 52 ? 1 : day > 26 ? 2 : 7;
        long first = Math.floorDiv(view.from() + offset(), 1440);
        TextStyle style = TextStyle.of(FontRole.TEXT, 12, theme.at(Tone.INK_3)).middle();
        TextStyle today = TextStyle.of(FontRole.BOLD, 12, theme.at(Tone.INK)).middle();
        for (long d = first; d * 1440 - offset() < view.to(); d++) {
            long tick = d * 1440 - offset();
            double x = view.x(tick);
            if (x > RibbonView.GUTTER + 1 && (every < 7 || d % 7 == 0)) {
                s.stroke(Path.segment(x, TOP - 2, x, view.height() - 2), Pen.of(theme.at(Tone.HAIRLINE), 1));
            }
            double mid = every == 1 ? x + day / 2 : x + day * every / 2;
            boolean clear = Math.abs(mid - view.x(view.head())) > 56;
            if (d % every == 0 && mid > RibbonView.GUTTER + 20 && mid < view.end() - 20 && clear) {
                boolean on = data.livedUntil() >= tick && data.livedUntil() < tick + 1440;
                s.text(words.day(data.start(), d, every > 1), mid, 12, on ? today : style);
            }
        }
    }

    /** Minutes from midnight to tick 0. */
    private long offset() {
        return data.start().getHour() * 60L + data.start().getMinute();
    }

    /** Mean of an array from tick to tick, over what was lived; NaN when nothing. */
    private double mean(double[] v, int step, double from, double to) {
        double total = 0;
        int n = 0;
        int a = (int) Math.max(0, Math.floor(from / step));
        int b = (int) Math.min(v.length, Math.max(Math.ceil(to / step), a + 1));
        for (int i = a; i < b && (long) i * step <= data.livedUntil(); i++) {
            if (Double.isFinite(v[i])) {
                total += v[i];
                n++;
            }
        }
        return n == 0 ? Double.NaN : total / n;
    }

    /**
     * Bars from the top, as long as the root of the rain rate, so that drizzle shows beside a storm; or the depths of
     * what belongs together, which lie over the line of the air.
     */
    private void rain(Surface s, boolean depths) {
        double bin = Math.max(data.step(), Math.ceil(3 / view.perTick() / data.step()) * data.step());
        Colour c = theme.at(Tone.SHEET).mix(theme.at(Tone.WATER), 0.82);
        double total = 0;
        double last = -1e9;
        double start = 0;
        for (double t = Math.floor(view.from() / bin) * bin; t < Math.min(view.to(), data.livedUntil()); t += bin) {
            double mm = mean(data.rain(), data.step(), t, t + bin) * bin / data.step();
            if (mm > 0.01) {
                if (t - last > 360) {
                    depth(s, depths ? total : 0, start, last + bin);
                    total = 0;
                    start = t;
                }
                total += mm;
                last = t;
                double h = Math.min(SKY - 8, 3 + 8 * Math.sqrt(mm * 60 / bin));
                if (!depths) {
                    s.fill(Path.rectangle(view.x(t), TOP - 2, Math.max(2.4, bin * view.perTick() + 0.3), h), c);
                }
            }
        }
        depth(s, depths ? total : 0, start, last + bin);
    }

    private void depth(Surface s, double mm, double from, double to) {
        boolean room = (to - from) * view.perTick() > 8 || view.perTick() * 1440 > 70;
        if (mm >= 1 && room) {
            String text = words.depth(mm, view.units());
            TextStyle style = TextStyle.of(FontRole.STRONG, 12, theme.at(Tone.WATER))
                    .halo(theme.at(Tone.SHEET).fade(0.85), 3);
            s.text(text, view.x(to) + 4, TOP + 9, style);
        }
    }

    private void air(Surface s) {
        double base = zero;
        double k = degree;
        Colour ice = theme.at(Tone.ICE);
        s.stroke(
                Path.segment(RibbonView.GUTTER, base, now(), base),
                Pen.of(ice, 1).dashed(3, 3));
        Path.Builder line = Path.builder();
        Path.Builder under = Path.builder();
        double bin = bin(data.step());
        boolean open = false;
        double x = 0;
        under.moveTo(RibbonView.GUTTER - 5, base);
        for (double t = Math.floor(view.from() / bin) * bin;
                t <= Math.min(view.to() + bin, data.livedUntil());
                t += bin) {
            double v = mean(data.air(), data.step(), t, t + bin);
            if (Double.isFinite(v)) {
                x = view.x(t);
                double y = base - v * k;
                if (open) {
                    line.lineTo(x, y);
                } else {
                    line.moveTo(x, y);
                }
                under.lineTo(x, Math.max(base, y));
                open = true;
            }
        }
        under.lineTo(x, base);
        under.close();
        Path frost = under.build();
        s.fill(frost, ice.fade(0.22));
        s.save();
        s.clip(frost);
        double depth = TOP + SKY - base;
        s.stroke(hatch(RibbonView.GUTTER, base, now() - RibbonView.GUTTER, depth + 2, 5.6, true), Pen.of(ice, 1.3));
        s.restore();
        s.stroke(line.build(), Pen.of(theme.at(Tone.INK), 1.7));
    }

    /** Sunshine as a filled hill a day. */
    private void sun(Surface s) {
        double bin = bin(data.step());
        double base = sun + SUN;
        double full = Math.max(PALE_SUN, Arrays.stream(data.sun()).max().orElse(0));
        Path.Builder hill = Path.builder();
        double x = Math.max(RibbonView.GUTTER, view.x(0));
        hill.moveTo(x, base);
        for (double t = Math.floor(view.from() / bin) * bin; t < Math.min(view.to(), data.livedUntil()); t += bin) {
            double watts = mean(data.sun(), data.step(), t, t + bin);
            if (Double.isFinite(watts)) {
                x = view.x(t + bin / 2);
                hill.lineTo(x, base - SUN * Math.min(1, watts / full));
            }
        }
        hill.lineTo(x, base);
        hill.close();
        s.fill(hill.build(), theme.at(Tone.INK_3).fade(0.42));
    }

    /** Minutes joined into one point of a line. */
    private double bin(int step) {
        return Math.max(step, Math.ceil(1.5 / view.perTick() / step) * step);
    }

    private void comb(Surface s) {
        double[] steps = {10, 30, 60, 120, 180, 360, 720, 1440};
        double step = steps[steps.length - 1];
        for (int i = steps.length - 1; i >= 0; i--) {
            if (steps[i] * view.perTick() >= 7) {
                step = steps[i];
            }
        }
        for (double t = Math.ceil(view.from() / step) * step; t < data.livedUntil(); t += step) {
            double v = mean(data.wind(), data.step(), t, t + step);
            if (v > 0.1) {
                boolean strong = v > 5;
                double h = Math.min(COMB, v * 1.35);
                double x = view.x(t + step / 2);
                Colour c = strong ? theme.at(Tone.INK) : theme.at(Tone.INK_3).fade(0.75);
                s.stroke(Path.segment(x, wind + COMB, x, wind + COMB - h), Pen.of(c, strong ? 2.2 : 1.2));
            }
        }
    }

    private void lanes(Surface s) {
        for (int i = 0; i < data.lanes().size(); i++) {
            double y = zones + i * lane;
            Path base = Path.segment(RibbonView.GUTTER, y + lane / 2, view.end(), y + lane / 2);
            s.stroke(base, Pen.of(theme.at(Tone.HAIRLINE), 0.8));
            for (RibbonData.Run r : data.lanes().get(i).runs()) {
                run(s, r, y);
            }
        }
    }

    private void run(Surface s, RibbonData.Run r, double y) {
        double x = view.x(r.from());
        double w = Math.max(3.5, (r.to() - r.from()) * view.perTick());
        Path full = Path.rounded(x, y + 0.2, w, lane - 0.4, 1);
        Path hollow = Path.rounded(x + 0.5, y + 0.7, w, lane - 1.4, 1);
        Colour line = theme.at(Tone.INK_3);
        switch (r.state()) {
            case RAN -> s.fill(full, theme.at(Tone.ZONE_RUN));
            case RUNNING -> s.fill(full, theme.at(Tone.ACCENT));
            case SKIPPED -> {
                s.fill(hollow, theme.at(Tone.SHEET));
                s.stroke(hollow, Pen.of(line, 1));
            }
            case PLANNED -> s.stroke(hollow, Pen.of(line, 1).dashed(2, 1.5));
        }
    }

    /** The optional lanes: flow with its bands, soil between its dry and wet points. */
    private void lines(Surface s) {
        if (data.flow() != null) {
            flow(s, data.flow());
        }
        if (data.soil() != null) {
            soil(s, data.soil());
        }
    }

    private void flow(Surface s, RibbonData.Flow lane) {
        double most = 1e-9;
        for (double v : lane.reading()) {
            most = Double.isFinite(v) ? Math.max(most, v) : most;
        }
        for (RibbonData.Band b : lane.bands()) {
            most = Math.max(most, b.high());
        }
        double k = (EXTRA - 6) / most;
        double base = flow + EXTRA - 3;
        for (RibbonData.Band b : lane.bands()) {
            double w = Math.max(3, (b.to() - b.from()) * view.perTick());
            double x = view.x(b.from());
            s.fill(
                    Path.rectangle(x, base - b.high() * k, w, (b.high() - b.low()) * k),
                    theme.at(Tone.KEPT).fade(0.6));
            double y = base - b.expected() * k;
            s.stroke(Path.segment(x, y, x + w, y), Pen.of(theme.at(Tone.GOOD), 1.2));
        }
        s.stroke(Path.segment(RibbonView.GUTTER, base, now(), base), Pen.of(theme.at(Tone.HAIRLINE), 0.8));
        s.stroke(line(lane.reading(), lane.step(), base, k, 0), Pen.of(theme.at(Tone.WATER), 1.5));
    }

    private void soil(Surface s, RibbonData.Soil lane) {
        double low = lane.dry() - 0.03;
        double high = lane.wet() + 0.03;
        for (double v : lane.reading()) {
            low = Double.isFinite(v) ? Math.min(low, v) : low;
            high = Double.isFinite(v) ? Math.max(high, v) : high;
        }
        double k = (EXTRA - 5) / Math.max(0.02, high - low);
        double base = soil + EXTRA - 2;
        double wet = base - (lane.wet() - low) * k;
        double dry = base - (lane.dry() - low) * k;
        double w = Math.max(0, now() - RibbonView.GUTTER);
        s.fill(
                Path.rectangle(RibbonView.GUTTER, wet, w, dry - wet),
                theme.at(Tone.KEPT).fade(0.35));
        Pen point = Pen.of(theme.at(Tone.GOOD), 1).dashed(4, 3);
        s.stroke(Path.segment(RibbonView.GUTTER, wet, RibbonView.GUTTER + w, wet), point);
        s.stroke(Path.segment(RibbonView.GUTTER, dry, RibbonView.GUTTER + w, dry), point);
        s.stroke(line(lane.reading(), lane.step(), base, k, low), Pen.of(theme.at(Tone.INK), 1.5));
    }

    private Path line(double[] v, int step, double base, double k, double low) {
        Path.Builder b = Path.builder();
        double bin = bin(step);
        boolean open = false;
        for (double t = Math.floor(view.from() / bin) * bin;
                t <= Math.min(view.to() + bin, data.livedUntil());
                t += bin) {
            double m = mean(v, step, t, t + bin);
            if (!Double.isFinite(m)) {
                open = false;
            } else if (open) {
                b.lineTo(view.x(t), base - (m - low) * k);
            } else {
                b.moveTo(view.x(t), base - (m - low) * k);
                open = true;
            }
        }
        return b.build();
    }

    private void marks(Surface s) {
        RibbonMarks layout = new RibbonMarks(view, words, w -> s.textWidth(w, FontRole.STRONG, 12));
        List<RibbonMarks.Mark> marks = layout.lay(data);
        for (RibbonMarks.Mark m : marks) {
            double y = row(m);
            for (double[] bar : m.bars()) {
                Path path = Path.rounded(bar[0], y - 1.5, Math.max(2, bar[1] - bar[0]), 3, 1.5);
                s.fill(path, theme.at(Tone.INK_2));
            }
        }
        for (RibbonMarks.Mark m : marks) {
            Colour c = theme.at(tone(m));
            if (m.sign() == null) {
                disc(s, m.x(), row(m), m.kind());
            } else {
                Icons.get(icon(m.sign())).draw(s, m.x(), row(m), 15, c);
            }
            TextStyle style = TextStyle.of(FontRole.STRONG, 12, c)
                    .halo(theme.at(Tone.SHEET).fade(0.9), 3);
            s.text(m.word(), m.wordAt(), row(m) + 4, style);
        }
    }

    private double row(RibbonMarks.Mark mark) {
        return signs + (mark.row() + 0.5) * RibbonMarks.ROW;
    }

    private static Tone tone(RibbonMarks.Mark mark) {
        if (mark.sign() == null) {
            return Tone.INK_2;
        }
        return mark.sign() == RibbonData.SignKind.ICE ? Tone.ICE : Tone.ALARM;
    }

    private static String icon(RibbonData.SignKind kind) {
        return switch (kind) {
            case ICE -> "ice";
            case LEAK -> "leak";
            case ALARM -> "alarm";
        };
    }

    private void disc(Surface s, double x, double y, SensorKind kind) {
        s.fill(Path.circle(x, y, 7.5), theme.at(Tone.SHEET));
        s.stroke(Path.circle(x, y, 7.5), Pen.of(theme.at(Tone.INK_2), 1.3));
        Icons.of(kind).draw(s, x, y, 10.5, theme.at(Tone.INK));
    }

    private void names(Surface s) {
        int n = data.lanes().size();
        name(s, words.lane("rain"), TOP + 10);
        name(s, words.air(view.units()), TOP + 33);
        String freezing = view.units() == UnitSystem.US ? "32°" : "0°";
        TextStyle ice = TextStyle.of(FontRole.STRONG, 12, theme.at(Tone.ICE)).end();
        s.text(freezing, RibbonView.GUTTER - 6, zero + 4, ice);
        name(s, words.lane("sun"), sun + SUN - 1);
        name(s, words.lane("wind"), wind + COMB);
        if (n > 0) {
            name(s, words.zones(n), zones + n * lane / 2 + 4);
        }
        if (data.flow() != null) {
            name(s, words.lane("flow"), flow + EXTRA / 2 + 4);
        }
        if (data.soil() != null) {
            name(s, words.lane("soil"), soil + EXTRA / 2 + 4);
        }
        name(s, words.lane("sensors"), signs + RibbonMarks.rows(data) * RibbonMarks.ROW / 2 + 4);
    }

    private void name(Surface s, String name, double y) {
        s.text(name, 16, y, TextStyle.of(FontRole.TEXT, 12, theme.at(Tone.INK_3)));
    }

    /** The scrub head: a line with the clock on top. */
    private void head(Surface s) {
        double x = Math.max(RibbonView.GUTTER, Math.min(view.end(), view.x(view.head())));
        Colour c = theme.at(Tone.ACCENT);
        s.stroke(Path.segment(x, 15, x, view.height()), Pen.of(c, 2.2));
        double left = Math.max(-x + 32, Math.min(0, view.width() - x - 32));
        Path flag = Path.builder()
                .append(Path.rounded(x - 30 + left, 0, 60, 16, 5))
                .append(Path.svg("M-6 15.5H6L0 22Z").moved(x, 0))
                .build();
        s.fill(flag, c);
        String clock = RibbonWords.clock(data.start(), view.head());
        s.text(
                clock,
                x + left,
                12.4,
                TextStyle.of(FontRole.BOLD, 12.5, theme.at(Tone.ON_ACCENT)).middle());
    }
}
