package provingyard.picture;

import java.util.ArrayList;
import java.util.List;
import provingyard.numeric.Deterministic;
import provingyard.scenario.Plumbing;
import provingyard.scenario.Point;
import provingyard.scenario.YardPlan;
import provingyard.scenario.YardPlan.Structure;
import provingyard.scenario.YardPlan.StructureKind;
import provingyard.setup.Placement;
import provingyard.setup.SetUp;

/** What lies under a pixel, front-most first. */
public final class HitTest {

    /** How near a small thing must be, px. */
    public static final double PICK = 16;

    private HitTest() {}

    /** Kinds of thing, front-most first. */
    public enum Kind {
        SENSOR,
        FITTING,
        HEAD,
        PIPE,
        DRIP_LINE,
        STRUCTURE,
        TREE,
        VENT,
        SURFACE,
        OFF_SITE
    }

    /**
     * What was hit.
     *
     * @param id id of the thing; empty off the site
     * @param at the place in m; on pipes the nearest place of the pipe
     * @param along m from the pipe's {@code from} end (pipes only, else 0)
     * @param bearing degrees in which the pipe runs there (pipes only, else 0)
     */
    public record Hit(Kind kind, String id, Point at, double along, double bearing) {

        Hit(Kind kind, String id, Point at, double along) {
            this(kind, id, at, along, 0);
        }
    }

    /** Every thing of the yard but its sensors, kind by kind, each where it is best pointed at. */
    public static List<Hit> things(YardShapes shapes) {
        List<Hit> all = new ArrayList<>();
        Plumbing plumbing = shapes.scenario().plumbing();
        for (PipeMap.Place f : shapes.pipes().fittings().values()) {
            all.add(new Hit(Kind.FITTING, f.fitting().id(), f.at(), f.fitting().along()));
        }
        plumbing.heads().forEach(h -> all.add(new Hit(Kind.HEAD, h.id(), h.at(), 0)));
        shapes.pipes().ways().forEach((id, way) -> {
            double half = Polygons.length(way) / 2;
            Point at = Polygons.along(way, half);
            all.add(new Hit(Kind.PIPE, id, at, half, bearing(Polygons.along(way, half - 0.05), at)));
        });
        plumbing.drips()
                .forEach(d -> all.add(
                        new Hit(Kind.DRIP_LINE, d.id(), Polygons.along(d.way(), Polygons.length(d.way()) / 2), 0)));
        YardPlan yard = shapes.yard();
        yard.structures()
                .forEach(s -> all.add(new Hit(
                        Kind.STRUCTURE,
                        s.id(),
                        s.kind() == StructureKind.BUILDING || s.kind() == StructureKind.CANOPY
                                ? Polygons.inside(s.outline())
                                : Polygons.along(s.outline(), Polygons.length(s.outline()) / 2),
                        0)));
        yard.trees().forEach(t -> all.add(new Hit(Kind.TREE, t.id(), t.at(), 0)));
        yard.vents().forEach(v -> all.add(new Hit(Kind.VENT, v.id(), v.at(), 0)));
        yard.surfaces().stream()
                .filter(s -> s.outline().size() > 2)
                .forEach(s -> all.add(new Hit(Kind.SURFACE, s.id(), Polygons.inside(s.outline()), 0)));
        return all;
    }

    private static double bearing(Point from, Point to) {
        double degrees = Math.toDegrees(Deterministic.atan2(to.x() - from.x(), to.y() - from.y()));
        return degrees < 0 ? degrees + 360 : degrees;
    }

    /** What lies under a pixel. */
    public static Hit at(YardShapes shapes, SetUp setUp, View view, double px, double py) {
        Point p = view.yard(px, py);
        Hit hit = sensor(shapes, setUp, view, px, py);
        hit = hit != null || !view.shows(Layer.PIPES) ? hit : fitting(shapes, view, p);
        hit = hit != null || !view.shows(Layer.PIPES) ? hit : head(shapes, view, p);
        hit = hit != null || !view.shows(Layer.PIPES) ? hit : pipe(shapes, view, p, PICK / 2);
        return hit != null ? hit : ground(shapes, view, p);
    }

    /** The nearest pipe within a reach in px, for placing what sits on pipes; null when none. */
    public static Hit pipe(YardShapes shapes, View view, Point p, double reach) {
        Hit best = null;
        double least = reach / view.scale();
        for (var e : shapes.pipes().ways().entrySet()) {
            List<Point> way = e.getValue();
            double along = 0;
            for (int i = 1; i < way.size(); i++) {
                Point q = Polygons.nearest(p.x(), p.y(), way.get(i - 1), way.get(i));
                if (q.distance(p) < least) {
                    least = q.distance(p);
                    best = new Hit(
                            Kind.PIPE,
                            e.getKey(),
                            q,
                            along + way.get(i - 1).distance(q),
                            bearing(way.get(i - 1), way.get(i)));
                }
                along += way.get(i - 1).distance(way.get(i));
            }
        }
        return best;
    }

    private static Hit sensor(YardShapes shapes, SetUp setUp, View view, double px, double py) {
        Hit best = null;
        double least = Math.max(PICK, SensorArt.radius(view.theme()) + 2);
        for (Placement s : setUp.sensors()) {
            Point at = SensorArt.place(shapes, s);
            if (at != null) {
                double x = view.x(at.x()) - px;
                double y = view.y(at.y()) - py;
                // The disc, or the foot of its stake.
                double d = Math.min(
                        Deterministic.hypot(x, y - SensorArt.rise(view.theme())), Deterministic.hypot(x, y) * 2);
                if (d < least) {
                    least = d;
                    best = new Hit(Kind.SENSOR, s.id(), at, 0);
                }
            }
        }
        return best;
    }

    private static Hit fitting(YardShapes shapes, View view, Point p) {
        Hit best = null;
        double least = PICK / view.scale();
        for (PipeMap.Place f : shapes.pipes().fittings().values()) {
            if (f.at().distance(p) < least) {
                least = f.at().distance(p);
                best = new Hit(
                        Kind.FITTING, f.fitting().id(), f.at(), f.fitting().along());
            }
        }
        return best;
    }

    private static Hit head(YardShapes shapes, View view, Point p) {
        Hit best = null;
        double least = PICK * 0.75 / view.scale();
        for (Plumbing.Head h : shapes.scenario().plumbing().heads()) {
            if (h.at().distance(p) < least) {
                least = h.at().distance(p);
                best = new Hit(Kind.HEAD, h.id(), h.at(), 0);
            }
        }
        return best;
    }

    private static Hit ground(YardShapes shapes, View view, Point p) {
        YardPlan yard = shapes.yard();
        for (YardPlan.Vent v : yard.vents()) {
            if (v.at().distance(p) < PICK * 0.75 / view.scale()) {
                return new Hit(Kind.VENT, v.id(), v.at(), 0);
            }
        }
        Structure over = structure(shapes, p);
        if (over != null) {
            return new Hit(Kind.STRUCTURE, over.id(), p, 0);
        }
        for (YardPlan.Tree t : yard.trees()) {
            if (t.at().distance(p) < t.canopy() / 2) {
                return new Hit(Kind.TREE, t.id(), p, 0);
            }
        }
        for (Plumbing.DripLine d : shapes.scenario().plumbing().drips()) {
            for (int i = 1; i < d.way().size(); i++) {
                if (Polygons.distance(p.x(), p.y(), d.way().get(i - 1), d.way().get(i)) < PICK / 2 / view.scale()) {
                    return new Hit(Kind.DRIP_LINE, d.id(), p, 0);
                }
            }
        }
        boolean on = p.x() >= 0
                && p.y() >= 0
                && p.x() <= shapes.size().x()
                && p.y() <= shapes.size().y();
        return on ? new Hit(Kind.SURFACE, surface(yard, p), p, 0) : new Hit(Kind.OFF_SITE, "", p, 0);
    }

    private static Structure structure(YardShapes shapes, Point p) {
        Structure found = null;
        for (Structure s : shapes.yard().structures()) {
            Roof roof = shapes.roofs().get(s.id());
            boolean area = s.kind() == StructureKind.BUILDING || s.kind() == StructureKind.CANOPY;
            boolean in = area && s.outline().size() > 2
                    ? Polygons.contains(roof == null ? s.outline() : roof.eave(), p.x(), p.y())
                    : near(s.outline(), p);
            found = in ? s : found;
        }
        return found;
    }

    private static boolean near(List<Point> line, Point p) {
        for (int i = 1; i < line.size(); i++) {
            if (Polygons.distance(p.x(), p.y(), line.get(i - 1), line.get(i)) < 0.4) {
                return true;
            }
        }
        return false;
    }

    private static String surface(YardPlan yard, Point p) {
        String id = yard.base();
        for (YardPlan.Surface s : yard.surfaces()) {
            if (s.outline().size() > 2 && Polygons.contains(s.outline(), p.x(), p.y())) {
                id = s.id();
            }
        }
        return id;
    }
}
