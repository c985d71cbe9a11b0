package provingyard.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.IntToDoubleFunction;
import provingyard.picture.FontRole;
import provingyard.picture.Path;
import provingyard.picture.Pen;
import provingyard.picture.Surface;
import provingyard.picture.TextStyle;
import provingyard.picture.Theme;
import provingyard.picture.Tone;
import provingyard.quantity.Show;

/**
 * The temperatures of one night: the walk's surface bold, the air thin, the freeze sensor dashed, the line of 0 °C, and
 * below when water fell on the walk and when it was iced. Every line has its name at its end.
 */
final class NightPlot {

    private static final double LEFT = 56;
    private static final double TOP = 14;
    private static final double PLOT = 150;
    private static final double LANE = 12;
    private static final double LETTERS = 13;
    private static final double LINE = 16;
    private static final int HOUR = 60;

    private final Icing.Night night;
    private final PageWords words;
    private final double width;
    private final double right;
    private final Theme theme;
    private double low;
    private double high;

    private NightPlot(Icing.Night night, PageWords words, Surface s, double width, Theme theme) {
        this.night = night;
        this.words = words;
        this.width = width;
        this.theme = theme;
        double names = 0;
        for (String key : new String[] {"ice.air", "ice.surface", "ice.sensor"}) {
            names = Math.max(names, s.textWidth(words.say(key), FontRole.STRONG, LETTERS));
        }
        right = width - names - 8;
        range();
    }

    /** Draws the plot in a width, from the surface's origin; gives the height taken. */
    static double draw(Icing.Night night, PageWords words, Surface s, double width, Theme theme) {
        return new NightPlot(night, words, s, width, theme).draw(s);
    }

    private void range() {
        low = 0;
        high = 0;
        for (double[] line : new double[][] {night.air(), night.surface(), night.sensor(), {night.trip()}}) {
            for (double v : line) {
                low = Double.isFinite(v) ? Math.min(low, v) : low;
                high = Double.isFinite(v) ? Math.max(high, v) : high;
            }
        }
        low -= 0.5;
        high += 0.5;
    }

    private double draw(Surface s) {
        axis(s);
        lanes(s);
        line(s, night.air(), Pen.of(theme.at(Tone.INK_2), 1.4));
        if (night.sensor().length > 0) {
            line(s, night.sensor(), Pen.of(theme.at(Tone.INK), 2).dashed(6, 4));
        }
        line(s, night.surface(), Pen.of(theme.at(Tone.ICE), 3));
        trip(s);
        names(s);
        return TOP + PLOT + 2 * (LANE + 8) + 2 * LINE;
    }

    private double x(double tick) {
        double most = night.air().length * (double) night.step();
        return LEFT + (tick - night.from()) / most * (right - LEFT);
    }

    private double y(double celsius) {
        return TOP + (high - celsius) / (high - low) * PLOT;
    }

    private void axis(Surface s) {
        TextStyle small = TextStyle.of(FontRole.TEXT, 12, theme.at(Tone.INK_2));
        double zero = y(0);
        s.stroke(Path.segment(LEFT, zero, right, zero), Pen.of(theme.at(Tone.INK), 1.6));
        s.text(words.text(Show.TEMPERATURE, 0), LEFT - 6, zero + 4, small.end());
        if (Double.isFinite(night.trip())) {
            double y = y(night.trip());
            s.stroke(
                    Path.segment(LEFT, y, right, y),
                    Pen.of(theme.at(Tone.INK_3), 1).dashed(2, 3));
        }
        ends(s, small, zero);
        hours(s, small);
    }

    private void trip(Surface s) {
        if (Double.isFinite(night.trip())) {
            String says = words.say("ice.trips", words.text(Show.TEMPERATURE, night.trip()));
            TextStyle style = TextStyle.of(FontRole.TEXT, 12, theme.at(Tone.INK_2))
                    .halo(theme.at(Tone.SHEET).fade(0.9), 3);
            s.text(says, LEFT + 4, y(night.trip()) - 4, style);
        }
    }

    /** The highest and the lowest value, where they do not meet the line of 0 °C. */
    private void ends(Surface s, TextStyle small, double zero) {
        for (double end : new double[] {high - 0.5, low + 0.5}) {
            if (Math.abs(y(end) - zero) > LINE) {
                s.text(words.text(Show.TEMPERATURE, end), LEFT - 6, y(end) + 4, small.end());
            }
        }
    }

    private void hours(Surface s, TextStyle small) {
        double foot = TOP + PLOT + 2 * (LANE + 8);
        long until = night.from() + (long) night.air().length * night.step();
        long first = Math.floorDiv(night.from() + HOUR - 1, HOUR) * HOUR;
        int every = (right - LEFT) / Math.max(1, (until - first) / HOUR) < 44 ? 2 : 1;
        for (long t = first; t <= until; t += (long) every * HOUR) {
            s.stroke(Path.segment(x(t), foot, x(t), foot + 4), Pen.of(theme.at(Tone.INK_3), 1));
            String hour = String.format(Locale.ROOT, "%02d:00", t / HOUR % 24);
            s.text(hour, x(t), foot + 17, small.middle());
        }
    }

    private void lanes(Surface s) {
        double y = TOP + PLOT + 6;
        TextStyle name = TextStyle.of(FontRole.TEXT, 12, theme.at(Tone.INK_2));
        lane(s, night.watered(), y, Tone.WATER, false);
        s.text(words.say("ice.watered"), right + 8, y + LANE - 1, name);
        lane(s, night.iced(), y + LANE + 5, Tone.ICE, true);
        s.text(words.say("ice.frozen"), right + 8, y + 2 * LANE + 4, name);
    }

    private void lane(Surface s, List<Icing.Stretch> stretches, double y, Tone tone, boolean hatched) {
        s.stroke(Path.segment(LEFT, y + LANE / 2, right, y + LANE / 2), Pen.of(theme.at(Tone.HAIRLINE), 1));
        for (Icing.Stretch stretch : stretches) {
            double from = Math.max(LEFT, x(stretch.from()));
            double to = Math.min(right, x(stretch.to()));
            if (to <= from) {
                continue;
            }
            Path box = Path.rectangle(from, y, Math.max(1.5, to - from), LANE);
            s.fill(box, theme.at(tone));
            if (hatched) {
                hatch(s, box, from, to, y);
            }
        }
    }

    private void hatch(Surface s, Path box, double from, double to, double y) {
        s.save();
        s.clip(box);
        for (double x = from - LANE; x < to + LANE; x += 6) {
            s.stroke(
                    Path.segment(x, y, x + LANE, y + LANE),
                    Pen.of(theme.at(Tone.PAPER).fade(0.8), 1.6));
        }
        s.restore();
    }

    private void line(Surface s, double[] values, Pen pen) {
        Path.Builder b = Path.builder();
        boolean begun = false;
        for (int i = 0; i < values.length; i++) {
            if (!Double.isFinite(values[i])) {
                begun = false;
                continue;
            }
            double x = x(night.from() + (i + 0.5) * night.step());
            if (begun) {
                b.lineTo(x, y(values[i]));
            } else {
                b.moveTo(x, y(values[i]));
            }
            begun = true;
        }
        s.stroke(b.build(), pen);
    }

    /** The lines' names at their ends, moved apart where they would meet. */
    private void names(Surface s) {
        record Name(String word, double at, Tone tone) {}
        List<Name> names = new ArrayList<>();
        names.add(new Name(words.say("ice.air"), y(last(night.air())), Tone.INK_2));
        names.add(new Name(words.say("ice.surface"), y(last(night.surface())), Tone.ICE));
        if (night.sensor().length > 0) {
            names.add(new Name(words.say("ice.sensor"), y(last(night.sensor())), Tone.INK));
        }
        names.sort(Comparator.comparingDouble(Name::at));
        IntToDoubleFunction lowest = i -> TOP + PLOT - (names.size() - 1 - i) * LINE;
        double free = TOP;
        for (int i = 0; i < names.size(); i++) {
            double at = Math.min(
                    lowest.applyAsDouble(i), Math.max(free, names.get(i).at() + 4));
            s.text(
                    names.get(i).word(),
                    right + 8,
                    at,
                    TextStyle.of(FontRole.STRONG, LETTERS, theme.at(names.get(i).tone())));
            free = at + LINE;
        }
    }

    private static double last(double[] values) {
        for (int i = values.length - 1; i >= 0; i--) {
            if (Double.isFinite(values[i])) {
                return values[i];
            }
        }
        return 0;
    }
}
