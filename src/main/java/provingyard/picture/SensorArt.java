package provingyard.picture;

import java.util.List;
import provingyard.numeric.Deterministic;
import provingyard.scenario.Point;
import provingyard.scenario.SensorKind;
import provingyard.season.Snapshot;
import provingyard.setup.Placement;
import provingyard.setup.SetUp;

/** Sensors: a disc on a short stake whose foot is the exact place. px. */
public final class SensorArt {

    private final YardShapes shapes;
    private final View view;
    private final Theme theme;
    private final Live live;

    SensorArt(YardShapes shapes, View view, Live live) {
        this.shapes = shapes;
        this.view = view;
        this.theme = view.theme();
        this.live = live;
    }

    /** How a sensor looks. */
    public enum State {
        REST,
        HOVER,
        SELECTED,
        GHOST,
        FITS,
        DOES_NOT_FIT
    }

    void draw(Surface s, SetUp setUp) {
        Marks marks = view.marks();
        for (Placement p : marks.ghosts()) {
            at(s, p, State.GHOST);
        }
        for (Placement p : setUp.sensors()) {
            if (!p.id().equals(marks.selected())) {
                at(s, p, p.id().equals(marks.hovered()) ? State.HOVER : State.REST);
            }
        }
        setUp.sensors().stream().filter(p -> p.id().equals(marks.selected())).forEach(p -> at(s, p, State.SELECTED));
        if (marks.drag() != null) {
            Marks.Drag d = marks.drag();
            double x = view.x(d.at().x());
            double y = view.y(d.at().y());
            marker(s, x, y, d.kind(), d.fits() ? State.FITS : State.DOES_NOT_FIT, theme);
        }
    }

    private void at(Surface s, Placement p, State state) {
        Point place = place(shapes, p);
        if (place == null) {
            return;
        }
        double x = view.x(place.x());
        double y = view.y(place.y());
        Marks.SkyRing sky = view.marks().sky();
        if (sky != null && sky.sensor().equals(p.id())) {
            skyRing(s, x, y - rise(theme), sky.open(), theme);
        }
        marker(s, x, y, p.kind(), state, theme);
        Snapshot.Sensor shown = live.sensor(p.id());
        if (state != State.GHOST && shown != null && shown.tripped()) {
            pill(s, x, y - rise(theme), Words.tripped(p.kind(), view));
        }
        if (view.marks().faulty().contains(p.id())) {
            warning(s, x + radius(theme) * 0.72, y - rise(theme) - radius(theme) * 0.72);
        }
    }

    /** Where a sensor stands, in m; null when its pipe is unknown. */
    static Point place(YardShapes shapes, Placement p) {
        if (p instanceof Placement.Rain r) {
            return r.at();
        } else if (p instanceof Placement.Wind w) {
            return w.at();
        } else if (p instanceof Placement.Freeze f) {
            return f.at();
        } else if (p instanceof Placement.Soil o) {
            return o.at();
        }
        Placement.Flow flow = (Placement.Flow) p;
        List<Point> way = shapes.pipes().ways().get(flow.on());
        return way == null ? null : Polygons.along(way, flow.along());
    }

    static double radius(Theme theme) {
        return theme.marker() / 2;
    }

    /** How far the disc's middle stands over the foot, px. */
    static double rise(Theme theme) {
        return radius(theme) + 7;
    }

    /** One marker with its foot at x, y; also for lists and legends. */
    public static void marker(Surface s, double x, double y, SensorKind kind, State state, Theme theme) {
        double r = radius(theme);
        double cy = y - rise(theme);
        double icon = theme.marker() * 0.6;
        if (state == State.GHOST) {
            ghost(s, x, y, cy, r, kind, theme);
            return;
        }
        boolean chosen = state == State.SELECTED;
        Colour halo = theme.at(Tone.HALO);
        Colour stake = theme.at(chosen ? Tone.SELECTED : Tone.STAKE);
        s.fill(Path.ellipse(x + 4, y - 1, 7, 2.6), Colour.BLACK.fade(0.18));
        if (chosen) {
            s.stroke(Path.circle(x, cy, r + 5), Pen.of(halo.fade(0.9), 5));
            s.stroke(Path.circle(x, cy, r + 4.5), Pen.of(theme.at(Tone.SELECTED), 2.5));
        }
        ring(s, x, cy, r, state, theme);
        s.stroke(Path.segment(x, cy + r - 1, x, y), Pen.of(halo, 5));
        s.stroke(Path.segment(x, cy + r - 1, x, y), Pen.of(stake, 2.2));
        s.fill(Path.circle(x, y, 2.6), stake);
        s.stroke(Path.circle(x, y, 2.6), Pen.of(halo, 1));
        Path disc = Path.circle(x, cy, r);
        s.fill(disc, theme.at(chosen ? Tone.SELECTED : Tone.DISC));
        double line = theme.px(state == State.HOVER ? 3 : 1.8);
        s.stroke(disc, Pen.of(chosen ? halo : theme.at(Tone.ON_DISC), line));
        Icons.of(kind).draw(s, x, cy, icon, theme.at(chosen ? Tone.ON_SELECTED : Tone.ON_DISC));
    }

    private static void ring(Surface s, double x, double cy, double r, State state, Theme theme) {
        if (state != State.FITS && state != State.DOES_NOT_FIT) {
            return;
        }
        boolean fits = state == State.FITS;
        Colour c = theme.at(fits ? Tone.GOOD : Tone.ALARM);
        Pen pen = Pen.of(c, 3);
        s.stroke(Path.circle(x, cy, r + 5), Pen.of(theme.at(Tone.HALO).fade(0.9), 5));
        s.stroke(Path.circle(x, cy, r + 5), fits ? pen : pen.dashed(6, 4));
        double bx = x + r * 0.85;
        double by = cy - r * 0.85;
        s.fill(Path.circle(bx, by, 9), c);
        s.stroke(Path.circle(bx, by, 9), Pen.of(theme.at(Tone.HALO), 1.5));
        Icons.get(fits ? "ok" : "cross").draw(s, bx, by, 12, theme.at(Tone.SHEET));
    }

    private static void ghost(Surface s, double x, double y, double cy, double r, SensorKind kind, Theme theme) {
        Colour c = theme.at(Tone.LABEL);
        s.stroke(Path.segment(x, cy + r, x, y), Pen.of(c, 1.6).dashed(2, 2));
        s.fill(Path.circle(x, y, 2.4), c);
        Path disc = Path.circle(x, cy, r);
        s.fill(disc, theme.at(Tone.HALO).fade(0.78));
        s.stroke(disc, Pen.of(c, 1.6).dashed(4, 3));
        Icons.of(kind).draw(s, x, cy, theme.marker() * 0.56, c);
    }

    private void pill(Surface s, double x, double cy, String word) {
        double r = radius(theme);
        double w = s.textWidth(word, FontRole.BOLD, view.letters(12)) + 13;
        double h = view.letters(17);
        double foot = cy - r + 12;
        Path pill = Path.rounded(x + r - 4, foot - h, w, h, h / 2);
        s.fill(pill, theme.at(Tone.LABEL));
        s.stroke(pill, Pen.of(theme.at(Tone.HALO), 1.5));
        s.text(
                word,
                x + r + 2.5,
                foot - view.letters(4.4),
                TextStyle.of(FontRole.BOLD, view.letters(12), theme.at(Tone.HALO)));
    }

    private void warning(Surface s, double x, double y) {
        s.save();
        s.translate(x, y);
        Path triangle = Path.svg("M0 -8L9 7H-9Z");
        s.stroke(triangle, Pen.of(theme.at(Tone.HALO), 3));
        s.fill(triangle, theme.at(Tone.ALARM));
        s.stroke(Path.segment(0, -3.2, 0, 2), Pen.of(theme.at(Tone.SHEET), 1.8));
        s.fill(Path.circle(0, 4.6, 1.1), theme.at(Tone.SHEET));
        s.restore();
    }

    /** The sky that a sensor sees: accent where open, ink hatch at blocked bearings. */
    static void skyRing(Surface s, double x, double y, double[] open, Theme theme) {
        double r = radius(theme) + 14;
        s.stroke(Path.circle(x, y, r), Pen.of(theme.at(Tone.HALO).fade(0.75), 7));
        int n = open.length;
        Path.Builder clear = Path.builder();
        Path.Builder shut = Path.builder();
        for (int i = 0; i < n; i++) {
            double a = 2 * Math.PI * (i - 0.5) / n - Math.PI / 2;
            Path.Builder to = open[i] >= 0.5 ? clear : shut;
            to.moveTo(x + Deterministic.cos(a) * r, y + Deterministic.sin(a) * r);
            to.arc(x, y, r, a, 2 * Math.PI / n);
        }
        s.stroke(clear.build(), Pen.of(theme.at(Tone.SELECTED), 3));
        hatch(s, x, y, r, open, theme);
    }

    private static void hatch(Surface s, double x, double y, double r, double[] open, Theme theme) {
        Path.Builder ticks = Path.builder();
        int steps = 46;
        for (int k = 0; k < steps; k++) {
            double turn = (double) k / steps;
            int i = (int) Math.round(turn * open.length) % open.length;
            if (open[i] < 0.5) {
                double a = 2 * Math.PI * turn - Math.PI / 2;
                double c = Deterministic.cos(a);
                double q = Deterministic.sin(a);
                ticks.append(Path.segment(x + c * (r - 2.5), y + q * (r - 2.5), x + c * (r + 2.5), y + q * (r + 2.5)));
            }
        }
        s.stroke(ticks.build(), Pen.of(theme.at(Tone.LABEL), 2));
    }
}
