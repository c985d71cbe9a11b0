package provingyard.picture;

import java.util.List;
import provingyard.numeric.Deterministic;
import provingyard.scenario.Point;
import provingyard.scenario.YardPlan.Furnishing;
import provingyard.scenario.YardPlan.FurnishingKind;
import provingyard.scenario.YardPlan.Structure;
import provingyard.scenario.YardPlan.StructureKind;
import provingyard.scenario.YardPlan.Tree;

/**
 * Shadows: the drawn ones by convention from the south-west, and the true shade of a sun. Every caster is swept along;
 * all of them are one shape in one colour, so overlaps never double.
 */
final class ShadowArt {

    /** Direction of the drawn shadows per m of length: light comes from the south-west at every hour. */
    static final double X = 0.62;

    static final double Y = 0.38;

    private final YardShapes shapes;
    private final View view;

    ShadowArt(YardShapes shapes, View view) {
        this.shapes = shapes;
        this.view = view;
    }

    /** The drawn shadows. Metres, north up. */
    void convention(Surface s) {
        Theme theme = view.theme();
        if (theme.shadow() <= 0) {
            return;
        }
        Colour colour = theme.at(Tone.SHADOW);
        s.layer(theme.shadow(), 0.3, l -> {
            for (Structure b : shapes.yard().structures()) {
                double reach = Math.min(4.2, b.height() * 0.85);
                structure(l, b, X * reach, Y * reach, colour);
            }
            for (Tree t : shapes.yard().trees()) {
                double reach = t.height() * 0.34;
                tree(l, t, X * reach, Y * reach, colour);
            }
            for (YardShapes.Shrub b : shapes.shrubs()) {
                l.fill(Path.circle(b.x() + 0.24, b.y() + 0.15, b.radius()), colour);
            }
            furnishings(l, colour);
        });
    }

    private void furnishings(Surface l, Colour colour) {
        for (Furnishing f : shapes.yard().furnishings()) {
            if (f.kind() == FurnishingKind.CAR || f.kind() == FurnishingKind.BENCH) {
                boolean car = f.kind() == FurnishingKind.CAR;
                l.save();
                l.translate(f.at().x() + (car ? 0.25 : 0.15), f.at().y() + (car ? 0.15 : 0.1));
                l.rotate(90 - f.heading());
                l.fill(car ? Path.rounded(-2.25, -0.95, 4.5, 1.9, 0.5) : Path.rectangle(-0.8, -0.25, 1.6, 0.5), colour);
                l.restore();
            }
        }
    }

    /** The true shade of a sun at an altitude and bearing in degrees, as one soft layer. Metres, north up. */
    void shade(Surface s, double altitude, double bearing) {
        if (altitude < 1) {
            return;
        }
        double reach = 1 / Deterministic.tan(Math.toRadians(altitude));
        double dx = -Deterministic.sin(Math.toRadians(bearing)) * reach;
        double dy = -Deterministic.cos(Math.toRadians(bearing)) * reach;
        Point size = shapes.size();
        s.save();
        s.clip(Path.rectangle(0, 0, size.x(), size.y()));
        s.layer(view.theme().dark() ? 0.5 : 0.38, 0.12, l -> {
            Colour colour = Colour.of("#16213A");
            for (Structure b : shapes.yard().structures()) {
                structure(l, b, dx * b.height(), dy * b.height(), colour);
            }
            for (Tree t : shapes.yard().trees()) {
                crown(l, t, dx * t.height(), dy * t.height(), colour);
            }
        });
        s.restore();
    }

    private void structure(Surface l, Structure b, double dx, double dy, Colour colour) {
        if (b.kind() == StructureKind.BUILDING || b.kind() == StructureKind.CANOPY) {
            Roof roof = shapes.roofs().get(b.id());
            sweep(l, roof == null ? b.outline() : roof.eave(), dx, dy, colour, true);
        } else {
            sweep(l, b.outline(), dx * 0.6, dy * 0.6, colour, false);
        }
    }

    /** The area that an outline passes over while it moves. */
    private static void sweep(Surface l, List<Point> p, double dx, double dy, Colour colour, boolean closed) {
        if (closed) {
            l.fill(Path.polygon(p), colour);
            l.fill(Path.polygon(p).moved(dx, dy), colour);
        }
        for (int i = 0; i < p.size() - (closed ? 0 : 1); i++) {
            Point a = p.get(i);
            Point b = Polygons.next(p, i);
            List<Point> quad = List.of(
                    a, b, new Point(b.x() + dx, b.y() + dy), new Point(a.x() + dx, a.y() + dy));
            l.fill(Path.polygon(quad), colour);
        }
    }

    /** A crown begins above the trunk, so its shade lies off the tree's foot when the sun is low. */
    private static void crown(Surface l, Tree t, double dx, double dy, Colour colour) {
        double x = t.at().x() + dx * 0.25;
        double y = t.at().y() + dy * 0.25;
        Path way = Path.segment(x, y, x + dx * 0.65, y + dy * 0.65);
        l.stroke(way, Pen.of(colour, t.canopy() * 0.95).round());
        Path trunk = Path.segment(t.at().x(), t.at().y(), x, y);
        l.stroke(trunk, Pen.of(colour, 0.3));
    }

    private static void tree(Surface l, Tree t, double dx, double dy, Colour colour) {
        Path way = Path.segment(t.at().x(), t.at().y(), t.at().x() + dx, t.at().y() + dy);
        l.stroke(way, Pen.of(colour, t.canopy() * 0.95).round());
    }
}
