package provingyard.picture;

import java.util.ArrayList;
import java.util.List;
import provingyard.scenario.Point;
import provingyard.season.Needs;

/**
 * What the plan shows while a sensor is carried: where its kind would read true and where it would not. Good places stay
 * as they are; what spoils a reading is hatched or veiled, so that no colour stands alone.
 */
public final class PlacingArt {

    /** Share of the open rain from which a catcher counts as open (common practice, no source). */
    private static final double OPEN_RAIN = 0.9;

    /** Share of the open wind from which a place counts as open (common practice, no source). */
    private static final double OPEN_WIND = 0.75;

    /** How well a place speaks for its zone from which it is outlined (common practice, no source). */
    private static final double SPEAKS = 0.5;

    /** Parts of a cell's side in which lines run. */
    private static final int FINER = 2;

    /** Smallest patch drawn, m2. */
    private static final double LEAST_AREA = 2;

    private static final double COLD_STEP = 0.5;
    private static final double COLDEST = 4;

    private final YardShapes shapes;
    private final View view;
    private final Theme theme;

    private PlacingArt(YardShapes shapes, View view) {
        this.shapes = shapes;
        this.view = view;
        this.theme = view.theme();
    }

    /** How a part of the map is drawn, for its legend. */
    public enum Mark {
        RAIN_KEPT_OFF,
        SPRAYED,
        WIND_KEPT_OFF,
        HEAT,
        COLD,
        STRAIGHT,
        SPEAKS,
        OTHERWISE
    }

    /** The marks that a kind's map uses, in the legend's order. */
    public static List<Mark> marks(Needs needs) {
        if (needs instanceof Needs.OfRain) {
            return List.of(Mark.RAIN_KEPT_OFF, Mark.SPRAYED);
        }
        if (needs instanceof Needs.OfWind) {
            return List.of(Mark.WIND_KEPT_OFF);
        }
        if (needs instanceof Needs.OfFreeze) {
            return List.of(Mark.HEAT, Mark.COLD);
        }
        return needs instanceof Needs.OfFlow ? List.of(Mark.STRAIGHT) : List.of(Mark.SPEAKS, Mark.OTHERWISE);
    }

    /** Draws the map of a kind's needs over the ground, below canopies and roofs. */
    public static void map(Surface s, YardShapes shapes, View view, Needs needs) {
        PlacingArt art = new PlacingArt(shapes, view);
        s.save();
        view.toMetres(s);
        if (needs instanceof Needs.OfRain rain) {
            art.rain(s, rain);
        } else if (needs instanceof Needs.OfWind wind) {
            art.wind(s, wind);
        } else if (needs instanceof Needs.OfFreeze freeze) {
            art.freeze(s, freeze);
        } else if (needs instanceof Needs.OfFlow flow) {
            art.flow(s, flow);
        } else {
            art.soil(s, (Needs.OfSoil) needs);
        }
        s.restore();
    }

    /** The sky ring around the disc of a sensor that stands at a place: open bearings plum, blocked ones hatched. */
    public static void skyRing(Surface s, View view, Point at, double[] open) {
        Theme theme = view.theme();
        SensorArt.skyRing(s, view.x(at.x()), view.y(at.y()) - SensorArt.rise(theme), open, theme);
    }

    /** A legend's swatch, so many px wide and high. */
    public static void swatch(Surface s, Mark mark, double width, double height, Theme theme) {
        Path box = Path.rounded(0.5, 0.5, width - 1, height - 1, 3);
        s.save();
        s.clip(box);
        s.fill(box, theme.at(Tone.LAWN));
        switch (mark) {
            case RAIN_KEPT_OFF -> lines(s, width, height, theme.at(Tone.LABEL), true);
            case SPRAYED -> lines(s, width, height, theme.at(Tone.SPRAY_EDGE), false);
            case WIND_KEPT_OFF -> s.fill(box, theme.at(Tone.BELIEF).fade(0.55));
            case HEAT -> lines(s, width, height, theme.at(Tone.CAUTION), true);
            case COLD -> s.fill(box, theme.at(Tone.COLD_FILL).fade(0.45));
            case STRAIGHT -> s.stroke(Path.segment(0, height / 2, width, height / 2), Pen.of(theme.at(Tone.GOOD), 6));
            case SPEAKS -> s.stroke(box, Pen.of(theme.at(Tone.GOOD), 4));
            case OTHERWISE -> s.fill(box, theme.at(Tone.SHADOW).fade(0.5));
        }
        s.restore();
        s.stroke(box, Pen.of(theme.at(Tone.INK_3), 1));
    }

    private static void lines(Surface s, double width, double height, Colour colour, boolean rising) {
        Path.Builder b = Path.builder();
        for (double u = -height; u < width + height; u += 5) {
            b.append(rising ? Path.segment(u, height, u + height, 0) : Path.segment(u, 0, u + height, height));
        }
        s.stroke(b.build(), Pen.of(colour, 1.6));
    }

    private void rain(Surface s, Needs.OfRain needs) {
        float[] dry = new float[needs.sprayed().length];
        for (int i = 0; i < dry.length; i++) {
            dry[i] = needs.sprayed()[i] ? 0 : 1;
        }
        area(s, under(needs, dry, 0.5), Tone.SPRAY_EDGE, false);
        area(s, under(needs, orElse(needs.rainShare(), 0), OPEN_RAIN), Tone.LABEL, true);
    }

    private void wind(Surface s, Needs.OfWind needs) {
        float[] share = orElse(needs.share(), 0);
        veil(s, needs, share, theme.at(Tone.BELIEF), 0.7);
        outline(s, under(needs, share, OPEN_WIND), Tone.BELIEF, true);
    }

    private void freeze(Surface s, Needs.OfFreeze needs) {
        float[] warmth = new float[needs.colder().length];
        float[] cold = orElse(needs.colder(), -1);
        for (int i = 0; i < warmth.length; i++) {
            warmth[i] = needs.warmWalls()[i] ? 0 : 1;
            cold[i] = -cold[i];
        }
        for (double k = COLD_STEP; k <= COLDEST; k += COLD_STEP) {
            Path pool = under(needs, cold, -k);
            if (!pool.isEmpty()) {
                s.fill(pool, theme.at(Tone.COLD_FILL).fade(0.16));
                outline(s, pool, Tone.COLD_LINE, true);
            }
        }
        area(s, under(needs, warmth, 0.5), Tone.CAUTION, true);
        for (Needs.Vent vent : needs.vents()) {
            area(s, Path.circle(vent.at().x(), vent.at().y(), vent.reach()), Tone.CAUTION, true);
        }
    }

    private void flow(Surface s, Needs.OfFlow needs) {
        double px = view.px();
        for (List<Point> stretch : needs.stretches()) {
            s.stroke(
                    Path.polyline(stretch),
                    Pen.of(theme.at(Tone.HALO).fade(0.9), 10 * px).round());
            s.stroke(Path.polyline(stretch), Pen.of(theme.at(Tone.GOOD), 6 * px).round());
        }
    }

    private void soil(Surface s, Needs.OfSoil needs) {
        veil(s, needs, orElse(needs.speaks(), 1), theme.at(Tone.SHADOW), 0.42);
        float[] not = orElse(needs.speaks(), 0);
        for (int i = 0; i < not.length; i++) {
            not[i] = -not[i];
        }
        outline(s, under(needs, not, -SPEAKS), Tone.GOOD, false);
    }

    private static float[] orElse(float[] values, float missing) {
        float[] all = values.clone();
        for (int i = 0; i < all.length; i++) {
            all[i] = Float.isNaN(all[i]) ? missing : all[i];
        }
        return all;
    }

    /** Where values lie under a level, in metres. */
    private Path under(Needs needs, float[] values, double level) {
        CellField fine = Fields.finer(new CellField(needs.nx(), needs.ny(), values), null, FINER);
        double cell = shapes.yard().cell() / FINER;
        Path.Builder all = Path.builder();
        for (List<Point> ring : Fields.under(fine, level)) {
            List<Point> metres = new ArrayList<>();
            ring.forEach(p -> metres.add(new Point(p.x() * cell, p.y() * cell)));
            if (Math.abs(Polygons.area(metres)) > LEAST_AREA) {
                all.append(Polygons.smooth(metres));
            }
        }
        return all.build();
    }

    private void area(Surface s, Path area, Tone tone, boolean rising) {
        if (area.isEmpty()) {
            return;
        }
        Colour colour = theme.at(tone);
        s.save();
        s.clip(area);
        s.fill(area, colour.fade(0.08));
        s.stroke(hatch(area.bounds(), rising), Pen.of(colour.fade(0.55), 1.2 * view.px()));
        s.restore();
        s.stroke(area, Pen.of(colour.fade(0.8), 1.4 * view.px()));
    }

    private Path hatch(double[] bounds, boolean rising) {
        double step = 11 * view.px();
        double height = bounds[3] - bounds[1];
        Path.Builder b = Path.builder();
        double from = Math.floor((bounds[0] - height) / step) * step;
        for (double u = from; u < bounds[2] + height; u += step) {
            double low = rising ? u : u + height;
            double high = rising ? u + height : u;
            b.append(Path.segment(low, bounds[1], high, bounds[3]));
        }
        return b.build();
    }

    private void outline(Surface s, Path area, Tone tone, boolean dashed) {
        Pen pen = Pen.of(theme.at(tone), 1.8 * view.px());
        s.stroke(area, dashed ? pen.dashed(5 * view.px(), 4 * view.px()) : pen);
    }

    /** Darkens a place the more, the less its value is; the lowest counts as 0. */
    private void veil(Surface s, Needs needs, float[] values, Colour colour, double most) {
        CellField fine = Fields.finer(new CellField(needs.nx(), needs.ny(), values), null, FINER);
        int[] argb = new int[fine.values().length];
        int rgb = colour.argb() & 0xFFFFFF;
        for (int row = 0; row < fine.ny(); row++) {
            for (int col = 0; col < fine.nx(); col++) {
                double off = Math.max(0, Math.min(1, 1 - fine.at(col, row)));
                argb[(fine.ny() - 1 - row) * fine.nx() + col] = (int) Math.round(255 * most * off) << 24 | rgb;
            }
        }
        double cell = shapes.yard().cell();
        s.save();
        s.translate(0, needs.ny() * cell);
        s.scale(1, -1);
        s.image(new Pixels(fine.nx(), fine.ny(), argb), 0, 0, needs.nx() * cell, needs.ny() * cell);
        s.restore();
    }
}
