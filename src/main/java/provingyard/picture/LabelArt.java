package provingyard.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import provingyard.numeric.Deterministic;
import provingyard.quantity.UnitSystem;
import provingyard.scenario.Point;
import provingyard.scenario.Text;
import provingyard.scenario.YardPlan;
import provingyard.scenario.YardPlan.Structure;
import provingyard.season.Snapshot;
import provingyard.setup.Placement;
import provingyard.setup.SetUp;

/** Names on the plan, scale bar, north, wind and rain. px. */
final class LabelArt {

    /** How much of the halo covers the ground behind a name. */
    static final double HALO = 0.85;

    private final YardShapes shapes;
    private final View view;
    private final Theme theme;
    private final List<double[]> taken = new ArrayList<>();

    LabelArt(YardShapes shapes, View view) {
        this.shapes = shapes;
        this.view = view;
        this.theme = view.theme();
    }

    void draw(Surface s, SetUp setUp) {
        reserve(setUp);
        for (Structure b : shapes.yard().structures()) {
            if (b.label() != null && b.outline().size() > 2) {
                name(s, b.label(), b.outline(), FontRole.STRONG, view.letters(theme.letters() + 2));
            }
        }
        List<YardPlan.Surface> surfaces = new ArrayList<>(shapes.yard().surfaces());
        // The larger a surface, the more its name is worth.
        surfaces.sort(Comparator.comparingDouble(g -> -Math.abs(Polygons.area(g.outline()))));
        for (YardPlan.Surface g : surfaces) {
            if (g.label() != null && g.outline().size() > 2) {
                name(s, g.label(), g.outline(), FontRole.TEXT, view.letters(theme.letters() + 0.5));
            }
        }
        frame(s);
    }

    /** Places that no name may cover: sensors, notes, and the corner of the scale bar. */
    private void reserve(SetUp setUp) {
        for (Placement p : setUp.sensors()) {
            double r = SensorArt.radius(theme) + (p.id().equals(view.marks().selected()) ? 20 : 6);
            Point at = SensorArt.place(shapes, p);
            if (at != null) {
                double x = view.x(at.x());
                double y = view.y(at.y());
                taken.add(new double[] {x - r, y - SensorArt.rise(theme) - r, x + r, y + 4});
            }
        }
        if (view.shows(Layer.PIPES)) {
            shapes.pipes().fittings().values().forEach(f -> spot(f.at(), 9));
        }
        if (view.shows(Layer.PIPES) || view.shows(Layer.SPRAY)) {
            shapes.scenario().plumbing().heads().forEach(h -> spot(h.at(), 4.5));
        }
        for (Marks.Note n : view.marks().notes()) {
            double x = view.x(n.at().x()) + n.dx();
            double y = view.y(n.at().y()) + n.dy();
            taken.add(new double[] {x, y, x + 160, y + 40});
        }
        double bottom = view.height() - view.free().bottom();
        taken.add(new double[] {view.free().left(), bottom - 46, view.free().left() + 330, bottom});
        for (YardPlan.Furnishing f : shapes.yard().furnishings()) {
            if (f.kind() == YardPlan.FurnishingKind.CAR) {
                double x = view.x(f.at().x());
                double y = view.y(f.at().y());
                double reach = 2.4 * view.scale();
                double along = Math.abs(Deterministic.sin(Math.toRadians(f.heading())));
                double wide = reach * Math.max(0.5, along);
                double high = reach * Math.max(0.5, 1 - along);
                taken.add(new double[] {x - wide, y - high, x + wide, y + high});
            }
        }
    }

    private void spot(Point p, double half) {
        double x = view.x(p.x());
        double y = view.y(p.y());
        taken.add(new double[] {x - half, y - half, x + half, y + half});
    }

    /** Writes a name where it fits best: candidates along the shape, the roomiest first. */
    private void name(Surface s, Text label, List<Point> outline, FontRole role, double size) {
        String text = label.in(view.language());
        double w = s.textWidth(text, role, size) + 6;
        double h = size + 4;
        Point best = null;
        double most = Double.NEGATIVE_INFINITY;
        for (Point p : candidates(outline)) {
            double x = view.x(p.x());
            double y = view.y(p.y());
            double[] box = {x - w / 2, y - h / 2, x + w / 2, y + h / 2};
            if (free(box)) {
                double value = Math.min(3, Polygons.edgeDistance(outline, p.x(), p.y()))
                        - treesOver(p) * 3
                        - spilling(outline, box) * 0.8
                        - Math.abs(p.x() - middle(outline)) * 0.01;
                if (value > most + 1e-9) {
                    most = value;
                    best = p;
                }
            }
        }
        double[] b = Polygons.bounds(outline);
        boolean room = (b[2] - b[0]) * view.scale() > w * 0.8 && (b[3] - b[1]) * view.scale() > h * 0.8;
        if (best != null && room) {
            double x = view.x(best.x());
            double y = view.y(best.y());
            taken.add(new double[] {x - w / 2, y - h / 2, x + w / 2, y + h / 2});
            s.text(text, x, y + size * 0.34, halo(role, size).middle());
        }
    }

    private static double middle(List<Point> outline) {
        double[] b = Polygons.bounds(outline);
        return (b[0] + b[2]) / 2;
    }

    /** How many of six places on a box in px lie outside an outline in m. */
    private int spilling(List<Point> outline, double[] box) {
        int out = 0;
        for (double x : new double[] {box[0], (box[0] + box[2]) / 2, box[2]}) {
            for (double y : new double[] {box[1] + 2, box[3] - 2}) {
                Point p = view.yard(x, y);
                out += Polygons.contains(outline, p.x(), p.y()) ? 0 : 1;
            }
        }
        return out;
    }

    private List<Point> candidates(List<Point> outline) {
        List<Point> all = new ArrayList<>();
        all.add(Polygons.inside(outline));
        double[] b = Polygons.bounds(outline);
        for (int i = 1; i < 16; i++) {
            for (int j = 1; j < 6; j++) {
                double x = b[0] + (b[2] - b[0]) * i / 16;
                double y = b[1] + (b[3] - b[1]) * j / 6;
                if (Polygons.contains(outline, x, y)) {
                    all.add(new Point(x, y));
                }
            }
        }
        return all;
    }

    /** How deep a place lies under canopies, 0 to 1 each. */
    private double treesOver(Point p) {
        return shapes.yard().trees().stream()
                .mapToDouble(t -> Math.max(0, 1 - t.at().distance(p) / (t.canopy() / 2 + 1.6)))
                .sum();
    }

    private boolean free(double[] box) {
        if (box[0] < view.free().left() + 4
                || box[2] > view.width() - view.free().right() - 4
                || box[1] < view.free().top() + 2
                || box[3] > view.height() - view.free().bottom() - 2) {
            return false;
        }
        return taken.stream().noneMatch(t -> box[0] < t[2] && box[2] > t[0] && box[1] < t[3] && box[3] > t[1]);
    }

    private TextStyle halo(FontRole role, double size) {
        return TextStyle.of(role, size, theme.at(Tone.LABEL))
                .halo(theme.at(Tone.HALO).fade(HALO), 3.2);
    }

    /** Scale bar and north in the free part's lower left corner. */
    private void frame(Surface s) {
        boolean us = view.units() == UnitSystem.US;
        double unit = us ? 0.3048 : 1;
        double half = half(unit);
        double px = half * unit * view.scale();
        double x = frameX();
        double y = frameY();
        Colour ink = theme.at(Tone.LABEL);
        Path bar = Path.builder()
                .append(Path.svg("M0 -6V0H1V-6").mapped(2 * px, 1, x, y))
                .append(Path.segment(x + px, y, x + px, y - 4))
                .build();
        s.stroke(bar, Pen.of(theme.at(Tone.HALO).fade(0.8), 4.2).sharp());
        s.stroke(bar, Pen.of(ink, theme.px(1.6)).sharp());
        TextStyle style = halo(FontRole.STRONG, view.letters(theme.letters())).middle();
        double base = y + view.letters(theme.letters()) + 2.5;
        s.text("0", x, base, style);
        s.text(number(half), x + px, base, style);
        s.text(number(2 * half) + (us ? " ft" : " m"), x + 2 * px, base, style);
        north(s, northX(s), y, style);
    }

    private double frameX() {
        return view.free().left() + 24;
    }

    private double frameY() {
        return view.height() - view.free().bottom() - view.letters(theme.letters()) - 12;
    }

    private double northX(Surface s) {
        double unit = view.units() == UnitSystem.US ? 0.3048 : 1;
        double bar = 2 * half(unit) * unit * view.scale();
        return frameX() + bar + s.textWidth("10 m", FontRole.STRONG, view.letters(theme.letters())) / 2 + 24;
    }

    private double half(double unit) {
        double[] steps = {1, 2, 5, 10, 20, 25, 50, 100, 250, 500, 1000};
        for (double step : steps) {
            if (step * unit * view.scale() >= 60) {
                return step;
            }
        }
        return steps[steps.length - 1];
    }

    private static String number(double v) {
        return Long.toString(Math.round(v));
    }

    private void north(Surface s, double x, double y, TextStyle style) {
        Path arrow = Path.svg("M0 -14L6 6L0 2L-6 6Z").moved(x, y - 2);
        s.stroke(arrow, Pen.of(theme.at(Tone.HALO).fade(0.8), 3));
        s.fill(arrow, theme.at(Tone.LABEL));
        s.text("N", x, y + view.letters(theme.letters()) + 2.5, style);
    }

    /** The weather that acts now, right of north. */
    void weather(Surface s, Snapshot.Sky sky) {
        double y = frameY() - 2;
        double at = northX(s) + 28;
        if (sky.wind() >= 0.3) {
            Path arrow = Path.svg("M-17 -2.6H13M-17 2.6H13M7 -7L17 0L7 7");
            s.save();
            s.translate(at + 18, y - 2);
            s.rotate(sky.windFrom() + 90);
            s.stroke(arrow, Pen.of(theme.at(Tone.HALO).fade(0.8), 5).round());
            s.stroke(arrow, Pen.of(theme.at(Tone.LABEL), theme.px(2.2)).round());
            s.restore();
            at = text(s, at + 44, y, Words.speed(sky.wind(), view));
        }
        if (sky.rainRate() > 0.05) {
            Path disc = Path.circle(at + 9, y - 2, 9);
            s.fill(disc, theme.at(Tone.HALO).fade(0.85));
            Icons.get("drop").draw(s, at + 9, y - 2, 15, theme.at(Tone.WATER));
            text(s, at + 22, y, Words.rainRate(sky.rainRate(), view));
        }
    }

    private double text(Surface s, double x, double y, String text) {
        s.text(text, x, y + 2.5, halo(FontRole.STRONG, view.letters(theme.letters())));
        return x + s.textWidth(text, FontRole.STRONG, view.letters(theme.letters())) + 16;
    }
}
