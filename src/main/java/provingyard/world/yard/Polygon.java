package provingyard.world.yard;

import java.util.ArrayList;
import java.util.List;
import provingyard.scenario.Point;

/** A closed outline in the plan, in m, counter-clockwise; with fewer than three corners it holds nothing. */
final class Polygon {

    /** A corner moves outward by at most this many times the offset, so that sharp corners do not run away. */
    private static final double LONGEST_MITRE = 3;

    private final double[] xs;
    private final double[] ys;

    private Polygon(double[] xs, double[] ys) {
        this.xs = xs;
        this.ys = ys;
    }

    /** The outline through these corners; equal neighbours are taken once. */
    static Polygon of(List<Point> corners) {
        List<Point> kept = new ArrayList<>();
        for (Point p : corners) {
            if (kept.isEmpty() || kept.get(kept.size() - 1).distance(p) > 1e-6) {
                kept.add(p);
            }
        }
        if (kept.size() > 1 && kept.get(0).distance(kept.get(kept.size() - 1)) <= 1e-6) {
            kept.remove(kept.size() - 1);
        }
        int n = kept.size() < 3 ? 0 : kept.size();
        double[] xs = new double[n];
        double[] ys = new double[n];
        boolean clockwise = signedArea(kept) < 0;
        for (int i = 0; i < n; i++) {
            Point p = kept.get(clockwise ? n - 1 - i : i);
            xs[i] = p.x();
            ys[i] = p.y();
        }
        return new Polygon(xs, ys);
    }

    private static double signedArea(List<Point> corners) {
        double twice = 0;
        for (int i = 0; i < corners.size(); i++) {
            Point a = corners.get(i);
            Point b = corners.get((i + 1) % corners.size());
            twice += a.x() * b.y() - b.x() * a.y();
        }
        return twice / 2;
    }

    int corners() {
        return xs.length;
    }

    double x(int corner) {
        return xs[corner % xs.length];
    }

    double y(int corner) {
        return ys[corner % ys.length];
    }

    /** Outward normal of the edge that begins at a corner, east component (length 1). */
    double normalX(int edge) {
        return (y(edge + 1) - y(edge)) / length(edge);
    }

    /** Outward normal of the edge that begins at a corner, north component (length 1). */
    double normalY(int edge) {
        return (x(edge) - x(edge + 1)) / length(edge);
    }

    private double length(int edge) {
        double dx = x(edge + 1) - x(edge);
        double dy = y(edge + 1) - y(edge);
        return Math.sqrt(dx * dx + dy * dy);
    }

    /** The outline with each edge moved outward by a distance in m (eaves). */
    Polygon grown(double by) {
        int n = xs.length;
        if (by <= 0 || n == 0) {
            return this;
        }
        double[] gx = new double[n];
        double[] gy = new double[n];
        for (int i = 0; i < n; i++) {
            int before = (i + n - 1) % n;
            double sx = normalX(before) + normalX(i);
            double sy = normalY(before) + normalY(i);
            double square = Math.max(sx * sx + sy * sy, 4 / (LONGEST_MITRE * LONGEST_MITRE));
            gx[i] = xs[i] + by * 2 * sx / square;
            gy[i] = ys[i] + by * 2 * sy / square;
        }
        return new Polygon(gx, gy);
    }

    /** Whether a point lies inside (even-odd rule; the border belongs to one side only). */
    boolean contains(double px, double py) {
        boolean inside = false;
        int n = xs.length;
        for (int i = 0, j = n - 1; i < n; j = i++) {
            if ((ys[i] > py) != (ys[j] > py) && px < (xs[j] - xs[i]) * (py - ys[i]) / (ys[j] - ys[i]) + xs[i]) {
                inside = !inside;
            }
        }
        return inside;
    }

    /**
     * Distances in m along a ray at which it crosses the outline, ascending; an odd count means that the ray begins
     * inside.
     *
     * @param out receives the distances; at least as long as the outline has corners
     * @return how many
     */
    int crossings(double ox, double oy, double dx, double dy, double[] out) {
        int n = xs.length;
        int count = 0;
        for (int i = 0, j = n - 1; i < n; j = i++) {
            double distance = crossing(ox, oy, dx, dy, xs[j], ys[j], xs[i], ys[i]);
            if (distance > 0) {
                int k = count++;
                for (; k > 0 && out[k - 1] > distance; k--) {
                    out[k] = out[k - 1];
                }
                out[k] = distance;
            }
        }
        return count;
    }

    /** Distance in m along a ray (direction of length 1) to a segment a-b; not above 0 where they do not meet. */
    static double crossing(double ox, double oy, double dx, double dy, double ax, double ay, double bx, double by) {
        double sideA = dx * (ay - oy) - dy * (ax - ox);
        double sideB = dx * (by - oy) - dy * (bx - ox);
        if (sideA > 0 == sideB > 0) {
            return -1;
        }
        double along = sideA / (sideA - sideB);
        return dx * (ax - ox + along * (bx - ax)) + dy * (ay - oy + along * (by - ay));
    }

    /** The edge nearest to a point, by the index of its first corner; -1 without edges. */
    int nearestEdge(double px, double py) {
        int nearest = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < xs.length; i++) {
            double d = distance(px, py, x(i), y(i), x(i + 1), y(i + 1));
            if (d < least) {
                least = d;
                nearest = i;
            }
        }
        return nearest;
    }

    /** Distance in m from a point to one edge. */
    double distance(double px, double py, int edge) {
        return distance(px, py, x(edge), y(edge), x(edge + 1), y(edge + 1));
    }

    /** Distance in m from a point to the outline; infinite without edges. */
    double distance(double px, double py) {
        int edge = nearestEdge(px, py);
        return edge < 0 ? Double.POSITIVE_INFINITY : distance(px, py, edge);
    }

    /** Distance in m from a point to a segment a-b. */
    static double distance(double px, double py, double ax, double ay, double bx, double by) {
        double along = along(px, py, ax, ay, bx, by);
        double ex = ax + along * (bx - ax) - px;
        double ey = ay + along * (by - ay) - py;
        return Math.sqrt(ex * ex + ey * ey);
    }

    /** Share of the way from a to b at which the segment is nearest to a point. */
    static double along(double px, double py, double ax, double ay, double bx, double by) {
        double dx = bx - ax;
        double dy = by - ay;
        double square = dx * dx + dy * dy;
        double along = square == 0 ? 0 : ((px - ax) * dx + (py - ay) * dy) / square;
        return Math.max(0, Math.min(1, along));
    }
}
