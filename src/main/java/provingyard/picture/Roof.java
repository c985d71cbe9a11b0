package provingyard.picture;

import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import provingyard.numeric.Deterministic;
import provingyard.scenario.Point;

/**
 * A hip roof over an outline: one facet per eave, all of one pitch. For outlines with right angles the roof is the
 * highest of the hip roofs over all largest rectangles within, which is their straight skeleton; for other convex
 * outlines each facet is what lies nearest to its eave; any other outline gets a flat roof.
 *
 * @param eave outline of the roof
 * @param wall outline of the walls below
 * @param facets slopes
 */
record Roof(List<Point> eave, List<Point> wall, List<Facet> facets) {

    private static final double STRAIGHT = 0.02;

    /** A slope: its outline and the direction it faces, as a unit vector. */
    record Facet(Path path, double faceX, double faceY) {

        /** Whether all corners of a rectangle lie on the slope, which may be of several pieces. */
        boolean holds(double x, double y, double width, double height) {
            List<List<Point>> pieces = pieces();
            return holds(pieces, x, y)
                    && holds(pieces, x + width, y)
                    && holds(pieces, x, y + height)
                    && holds(pieces, x + width, y + height);
        }

        private static boolean holds(List<List<Point>> pieces, double x, double y) {
            return pieces.stream().filter(p -> Polygons.contains(p, x, y)).count() % 2 == 1;
        }

        private List<List<Point>> pieces() {
            List<List<Point>> pieces = new ArrayList<>();
            path.walk(new LineWalker() {
                @Override
                public void moveTo(double x, double y) {
                    pieces.add(new ArrayList<>(List.of(new Point(x, y))));
                }

                @Override
                public void lineTo(double x, double y) {
                    pieces.get(pieces.size() - 1).add(new Point(x, y));
                }

                @Override
                public void close() {
                    // Each piece is taken as closed.
                }
            });
            return pieces;
        }
    }

    static Roof over(List<Point> wall, double overhang) {
        List<Point> eave = Polygons.offset(wall, overhang);
        double turn = Polygons.direction(eave);
        List<Point> local = Polygons.turned(eave, -turn);
        List<Facet> facets;
        if (rightAngled(local)) {
            facets = hips(local);
        } else if (convex(local)) {
            facets = nearest(local);
        } else {
            facets = List.of();
        }
        return new Roof(eave, wall, facets.stream().map(f -> turned(f, turn)).toList());
    }

    private static boolean rightAngled(List<Point> p) {
        for (int i = 0; i < p.size(); i++) {
            Point a = p.get(i);
            Point b = Polygons.next(p, i);
            if (Math.min(Math.abs(a.x() - b.x()), Math.abs(a.y() - b.y())) > STRAIGHT * a.distance(b) + 0.01) {
                return false;
            }
        }
        return true;
    }

    private static boolean convex(List<Point> p) {
        for (int i = 0; i < p.size(); i++) {
            Point a = p.get(i);
            Point b = Polygons.next(p, i);
            Point c = Polygons.next(p, (i + 1) % p.size());
            if ((b.x() - a.x()) * (c.y() - b.y()) - (b.y() - a.y()) * (c.x() - b.x()) < -1e-6) {
                return false;
            }
        }
        return true;
    }

    /** A rectangle's four sides as west, south, east, north. */
    private record Box(double w, double s, double e, double n) {

        /** Height over a place under one side's slope. */
        static double under(int side, double[] b, double x, double y) {
            return switch (side) {
                case 0 -> x - b[0];
                case 1 -> y - b[1];
                case 2 -> b[2] - x;
                default -> b[3] - y;
            };
        }

        double[] sides() {
            return new double[] {w, s, e, n};
        }

        List<Point> corners() {
            return List.of(new Point(w, s), new Point(e, s), new Point(e, n), new Point(w, n));
        }

        boolean within(Box o) {
            return w >= o.w - 1e-9 && s >= o.s - 1e-9 && e <= o.e + 1e-9 && n <= o.n + 1e-9;
        }
    }

    private static List<Facet> hips(List<Point> p) {
        List<Box> boxes = boxes(p);
        Map<String, Area> merged = new LinkedHashMap<>();
        for (Box box : boxes) {
            for (int side = 0; side < 4; side++) {
                Area facet = area(slope(box, side));
                for (Box other : boxes) {
                    // Under one and the same slope neither roof is the higher one.
                    boolean same = Math.abs(other.sides()[side] - box.sides()[side]) < 1e-6;
                    if (other != box && !same) {
                        facet.subtract(area(higher(other, box, side)));
                    }
                }
                String plane = side + ":" + Math.round(box.sides()[side] * 50);
                merged.computeIfAbsent(plane, k -> new Area()).add(facet);
            }
        }
        int[][] face = {{-1, 0}, {0, -1}, {1, 0}, {0, 1}};
        List<Facet> facets = new ArrayList<>();
        merged.forEach((plane, area) -> {
            int[] f = face[plane.charAt(0) - '0'];
            if (!area.isEmpty()) {
                facets.add(new Facet(path(area), f[0], f[1]));
            }
        });
        return facets;
    }

    /** All rectangles within that no other one holds. */
    private static List<Box> boxes(List<Point> p) {
        List<Double> xs = steps(p.stream().map(Point::x).toList());
        List<Double> ys = steps(p.stream().map(Point::y).toList());
        List<Box> found = new ArrayList<>();
        for (int a = 0; a < xs.size(); a++) {
            for (int b = xs.size() - 1; b > a; b--) {
                for (int c = 0; c < ys.size(); c++) {
                    for (int d = ys.size() - 1; d > c; d--) {
                        Box box = new Box(xs.get(a), ys.get(c), xs.get(b), ys.get(d));
                        if (inside(p, xs, ys, a, b, c, d) && found.stream().noneMatch(box::within)) {
                            found.removeIf(o -> o.within(box));
                            found.add(box);
                        }
                    }
                }
            }
        }
        return found;
    }

    private static boolean inside(List<Point> p, List<Double> xs, List<Double> ys, int a, int b, int c, int d) {
        for (int i = a; i < b; i++) {
            for (int j = c; j < d; j++) {
                if (!Polygons.contains(p, (xs.get(i) + xs.get(i + 1)) / 2, (ys.get(j) + ys.get(j + 1)) / 2)) {
                    return false;
                }
            }
        }
        return true;
    }

    private static List<Double> steps(List<Double> values) {
        List<Double> out = new ArrayList<>();
        for (double v : new TreeSet<>(values)) {
            if (out.isEmpty() || v - out.get(out.size() - 1) > 0.05) {
                out.add(v);
            }
        }
        return out;
    }

    /** The part of a box that drains over one side. */
    private static List<Point> slope(Box box, int side) {
        List<Point> part = box.corners();
        double[] b = box.sides();
        for (int o = 0; o < 4; o++) {
            if (o != side) {
                int other = o;
                part = cut(part, q -> Box.under(other, b, q.x(), q.y()) - Box.under(side, b, q.x(), q.y()));
            }
        }
        return part;
    }

    /** The part of another box whose roof lies over this side's slope. */
    private static List<Point> higher(Box other, Box box, int side) {
        List<Point> part = other.corners();
        double[] b = box.sides();
        double[] c = other.sides();
        for (int o = 0; o < 4; o++) {
            int s = o;
            part = cut(part, q -> Box.under(s, c, q.x(), q.y()) - Box.under(side, b, q.x(), q.y()) + 1e-6);
        }
        return part;
    }

    private static List<Facet> nearest(List<Point> p) {
        List<Facet> facets = new ArrayList<>();
        for (int i = 0; i < p.size(); i++) {
            List<Point> part = p;
            int own = i;
            for (int j = 0; j < p.size(); j++) {
                if (j != i) {
                    int other = j;
                    part = cut(part, q -> height(p, other, q) - height(p, own, q));
                }
            }
            Point a = p.get(i);
            Point b = Polygons.next(p, i);
            double l = Math.max(1e-9, a.distance(b));
            if (part.size() > 2) {
                facets.add(new Facet(Path.polygon(part), (b.y() - a.y()) / l, -(b.x() - a.x()) / l));
            }
        }
        return facets;
    }

    private static double height(List<Point> p, int side, Point q) {
        Point a = p.get(side);
        Point b = Polygons.next(p, side);
        double l = Math.max(1e-9, a.distance(b));
        return ((b.x() - a.x()) * (q.y() - a.y()) - (b.y() - a.y()) * (q.x() - a.x())) / l;
    }

    private interface Keep {
        double value(Point q);
    }

    /** A convex outline cut to where a linear value is not negative. */
    private static List<Point> cut(List<Point> p, Keep keep) {
        List<Point> out = new ArrayList<>();
        for (int i = 0; i < p.size(); i++) {
            Point a = p.get(i);
            Point b = Polygons.next(p, i);
            double va = keep.value(a);
            double vb = keep.value(b);
            if (va >= 0) {
                out.add(a);
            }
            if (va >= 0 != vb >= 0) {
                double t = va / (va - vb);
                out.add(new Point(a.x() + (b.x() - a.x()) * t, a.y() + (b.y() - a.y()) * t));
            }
        }
        return out;
    }

    private static Area area(List<Point> p) {
        Path2D.Double path = new Path2D.Double();
        for (int i = 0; i < p.size(); i++) {
            if (i == 0) {
                path.moveTo(p.get(i).x(), p.get(i).y());
            } else {
                path.lineTo(p.get(i).x(), p.get(i).y());
            }
        }
        if (!p.isEmpty()) {
            path.closePath();
        }
        return new Area(path);
    }

    private static Path path(Area area) {
        Path.Builder b = Path.builder();
        double[] c = new double[6];
        for (PathIterator i = area.getPathIterator(null); !i.isDone(); i.next()) {
            switch (i.currentSegment(c)) {
                case PathIterator.SEG_MOVETO -> b.moveTo(c[0], c[1]);
                case PathIterator.SEG_LINETO -> b.lineTo(c[0], c[1]);
                default -> b.close();
            }
        }
        return b.build();
    }

    private static Facet turned(Facet f, double angle) {
        double c = Deterministic.cos(angle);
        double s = Deterministic.sin(angle);
        Path.Builder b = Path.builder();
        f.path().walk(new LineWalker() {
            @Override
            public void moveTo(double x, double y) {
                b.moveTo(x * c - y * s, x * s + y * c);
            }

            @Override
            public void lineTo(double x, double y) {
                b.lineTo(x * c - y * s, x * s + y * c);
            }

            @Override
            public void close() {
                b.close();
            }
        });
        return new Facet(b.build(), f.faceX * c - f.faceY * s, f.faceX * s + f.faceY * c);
    }
}
