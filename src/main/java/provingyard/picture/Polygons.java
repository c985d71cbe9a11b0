package provingyard.picture;

import java.util.ArrayList;
import java.util.List;
import provingyard.numeric.Deterministic;
import provingyard.scenario.Point;

/** Plane geometry of outlines; corners in m, the last joined to the first. */
final class Polygons {

    private Polygons() {}

    /** Signed area: positive when the corners run against the clock, seen with north up. */
    static double area(List<Point> p) {
        double twice = 0;
        for (int i = 0; i < p.size(); i++) {
            Point a = p.get(i);
            Point b = next(p, i);
            twice += a.x() * b.y() - b.x() * a.y();
        }
        return twice / 2;
    }

    static Point next(List<Point> p, int i) {
        return p.get((i + 1) % p.size());
    }

    /** The same outline running against the clock. */
    static List<Point> counterClockwise(List<Point> p) {
        List<Point> to = new ArrayList<>(p);
        if (area(p) < 0) {
            java.util.Collections.reverse(to);
        }
        return to;
    }

    static boolean contains(List<Point> p, double x, double y) {
        boolean in = false;
        for (int i = 0; i < p.size(); i++) {
            Point a = p.get(i);
            Point b = next(p, i);
            if (a.y() > y != b.y() > y && x < (b.x() - a.x()) * (y - a.y()) / (b.y() - a.y()) + a.x()) {
                in = !in;
            }
        }
        return in;
    }

    /** Distance from a point to a segment. */
    static double distance(double x, double y, Point a, Point b) {
        Point n = nearest(x, y, a, b);
        return Deterministic.hypot(n.x() - x, n.y() - y);
    }

    /** The point of a segment nearest to a place. */
    static Point nearest(double x, double y, Point a, Point b) {
        double dx = b.x() - a.x();
        double dy = b.y() - a.y();
        double l2 = dx * dx + dy * dy;
        double t = l2 == 0 ? 0 : Math.max(0, Math.min(1, ((x - a.x()) * dx + (y - a.y()) * dy) / l2));
        return new Point(a.x() + t * dx, a.y() + t * dy);
    }

    /** Distance to the outline, from inside or outside. */
    static double edgeDistance(List<Point> p, double x, double y) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < p.size(); i++) {
            least = Math.min(least, distance(x, y, p.get(i), next(p, i)));
        }
        return least;
    }

    /** West, south, east, north. */
    static double[] bounds(List<Point> p) {
        double[] b = {Double.MAX_VALUE, Double.MAX_VALUE, -Double.MAX_VALUE, -Double.MAX_VALUE};
        for (Point q : p) {
            b[0] = Math.min(b[0], q.x());
            b[1] = Math.min(b[1], q.y());
            b[2] = Math.max(b[2], q.x());
            b[3] = Math.max(b[3], q.y());
        }
        return b;
    }

    /** Whether the outline fills its bounds: a rectangle along the axes. */
    static boolean upright(List<Point> p) {
        double[] b = bounds(p);
        return Math.abs(area(p)) > 0.98 * (b[2] - b[0]) * (b[3] - b[1]);
    }

    /** Direction of the longest edge in radians, from east toward north. */
    static double direction(List<Point> p) {
        double longest = -1;
        double angle = 0;
        for (int i = 0; i < p.size(); i++) {
            Point a = p.get(i);
            Point b = next(p, i);
            double l = a.distance(b);
            if (l > longest + 1e-9) {
                longest = l;
                angle = Deterministic.atan2(b.y() - a.y(), b.x() - a.x());
            }
        }
        return angle;
    }

    /** Turned about the origin by radians, from east toward north. */
    static List<Point> turned(List<Point> p, double angle) {
        double c = Deterministic.cos(angle);
        double s = Deterministic.sin(angle);
        return p.stream()
                .map(q -> new Point(q.x() * c - q.y() * s, q.x() * s + q.y() * c))
                .toList();
    }

    /** The outline moved outward by a distance (inward if negative), corners mitred. */
    static List<Point> offset(List<Point> outline, double by) {
        List<Point> p = counterClockwise(outline);
        List<Point> to = new ArrayList<>();
        int n = p.size();
        for (int i = 0; i < n; i++) {
            Point a = p.get((i + n - 1) % n);
            Point b = p.get(i);
            Point c = next(p, i);
            double la = Math.max(1e-9, a.distance(b));
            double lb = Math.max(1e-9, b.distance(c));
            double ax = (b.y() - a.y()) / la;
            double ay = -(b.x() - a.x()) / la;
            double bx = (c.y() - b.y()) / lb;
            double by2 = -(c.x() - b.x()) / lb;
            double k = by / Math.max(0.2, 1 + ax * bx + ay * by2);
            to.add(new Point(b.x() + (ax + bx) * k, b.y() + (ay + by2) * k));
        }
        return to;
    }

    /** A place well inside: of a grid of candidates the one farthest from the edge. */
    static Point inside(List<Point> p) {
        double[] b = bounds(p);
        Point best = new Point((b[0] + b[2]) / 2, (b[1] + b[3]) / 2);
        double most = contains(p, best.x(), best.y()) ? edgeDistance(p, best.x(), best.y()) * 1.15 : -1;
        for (int i = 1; i < 24; i++) {
            for (int j = 1; j < 24; j++) {
                double x = b[0] + (b[2] - b[0]) * i / 24;
                double y = b[1] + (b[3] - b[1]) * j / 24;
                double d = contains(p, x, y) ? edgeDistance(p, x, y) : -1;
                if (d > most + 1e-9) {
                    most = d;
                    best = new Point(x, y);
                }
            }
        }
        return best;
    }

    /** Length of an open way. */
    static double length(List<Point> way) {
        double sum = 0;
        for (int i = 1; i < way.size(); i++) {
            sum += way.get(i - 1).distance(way.get(i));
        }
        return sum;
    }

    /** The place at a distance along an open way, held at its ends. */
    static Point along(List<Point> way, double distance) {
        double left = Math.max(0, distance);
        for (int i = 1; i < way.size(); i++) {
            Point a = way.get(i - 1);
            Point b = way.get(i);
            double l = a.distance(b);
            if (left <= l && l > 0) {
                return new Point(a.x() + (b.x() - a.x()) * left / l, a.y() + (b.y() - a.y()) * left / l);
            }
            left -= l;
        }
        return way.get(way.size() - 1);
    }

    /** The part of an open way between two distances. */
    static List<Point> part(List<Point> way, double from, double to) {
        List<Point> out = new ArrayList<>();
        out.add(along(way, from));
        double at = 0;
        for (int i = 1; i < way.size() - 1; i++) {
            at += way.get(i - 1).distance(way.get(i));
            if (at > from + 1e-9 && at < to - 1e-9) {
                out.add(way.get(i));
            }
        }
        out.add(along(way, to));
        return out;
    }

    /** An outline as a closed, smooth line that waves by up to {@code wave} m. */
    static Path wavy(List<Point> outline, double wave, Dice dice) {
        List<Point> p = new ArrayList<>();
        List<Point> soft = rounded(rounded(outline));
        for (int i = 0; i < soft.size(); i++) {
            Point a = soft.get(i);
            Point b = next(soft, i);
            double l = Math.max(1e-9, a.distance(b));
            int n = Math.max(1, (int) Math.round(l / 1.3));
            for (int k = 0; k < n; k++) {
                double t = (double) k / n;
                double off = k == 0 ? 0 : dice.between(-wave, wave);
                p.add(new Point(
                        a.x() + (b.x() - a.x()) * t - (b.y() - a.y()) / l * off,
                        a.y() + (b.y() - a.y()) * t + (b.x() - a.x()) / l * off));
            }
        }
        return smooth(p);
    }

    /** Blunt corners cut off; right and sharp ones stay. */
    private static List<Point> rounded(List<Point> p) {
        List<Point> out = new ArrayList<>();
        for (int i = 0; i < p.size(); i++) {
            Point a = p.get((i + p.size() - 1) % p.size());
            Point b = p.get(i);
            Point c = next(p, i);
            double turn = (b.x() - a.x()) * (c.x() - b.x()) + (b.y() - a.y()) * (c.y() - b.y());
            if (turn > 0.17 * a.distance(b) * b.distance(c)) {
                out.add(new Point(b.x() + (a.x() - b.x()) * 0.27, b.y() + (a.y() - b.y()) * 0.27));
                out.add(new Point(b.x() + (c.x() - b.x()) * 0.27, b.y() + (c.y() - b.y()) * 0.27));
            } else {
                out.add(b);
            }
        }
        return out;
    }

    /** A closed line through the middles of the sides, curved at each corner. */
    static Path smooth(List<Point> p) {
        Path.Builder b = Path.builder();
        for (int i = 0; i <= p.size(); i++) {
            Point c = p.get(i % p.size());
            Point d = next(p, i % p.size());
            double mx = (c.x() + d.x()) / 2;
            double my = (c.y() + d.y()) / 2;
            if (i == 0) {
                b.moveTo(mx, my);
            } else {
                b.quadTo(c.x(), c.y(), mx, my);
            }
        }
        b.close();
        return b.build();
    }
}
