package provingyard.world.hydraulics;

import java.util.ArrayList;
import java.util.List;
import provingyard.scenario.Plumbing;
import provingyard.scenario.Point;

/**
 * The drawn way of a pipe from its first end to its second, measured in hydraulic metres: where an author gives a
 * length, distances along the way are scaled to it.
 */
public final class PipePath {

    private final List<Point> points;
    private final double[] at;
    private final double scale;
    private final double length;

    private PipePath(List<Point> points, Double given) {
        this.points = List.copyOf(points);
        at = new double[points.size()];
        for (int i = 1; i < at.length; i++) {
            at[i] = at[i - 1] + points.get(i - 1).distance(points.get(i));
        }
        double drawn = at[at.length - 1];
        length = given != null ? given : drawn;
        scale = drawn > 0 ? length / drawn : 1;
    }

    /** The way of a pipe between its junctions. */
    public static PipePath of(Plumbing.Pipe pipe, Point from, Point to) {
        List<Point> points = new ArrayList<>();
        points.add(from);
        points.addAll(pipe.via());
        points.add(to);
        return new PipePath(points, pipe.length());
    }

    /** Length in m. */
    public double length() {
        return length;
    }

    /** The corners of the way, ends included. */
    public List<Point> points() {
        return points;
    }

    /** The place {@code along} m from the first end, kept between the ends. */
    public Point pointAt(double along) {
        double drawn = Math.max(0, Math.min(along, length)) / scale;
        int i = 1;
        while (i < at.length - 1 && at[i] < drawn) {
            i++;
        }
        double part = at[i] - at[i - 1];
        double share = part > 0 ? (drawn - at[i - 1]) / part : 0;
        Point a = points.get(i - 1);
        Point b = points.get(i);
        return new Point(a.x() + share * (b.x() - a.x()), a.y() + share * (b.y() - a.y()));
    }

    /** Distances in m along the pipe at which it turns a corner. */
    public List<Double> corners() {
        List<Double> corners = new ArrayList<>();
        for (int i = 1; i < at.length - 1; i++) {
            corners.add(at[i] * scale);
        }
        return corners;
    }

    /** The nearest place on the way to a point. */
    public Nearest nearest(Point p) {
        Nearest best = new Nearest(Double.POSITIVE_INFINITY, 0);
        for (int i = 1; i < at.length; i++) {
            Point a = points.get(i - 1);
            Point b = points.get(i);
            double dx = b.x() - a.x();
            double dy = b.y() - a.y();
            double square = dx * dx + dy * dy;
            double t = square > 0 ? ((p.x() - a.x()) * dx + (p.y() - a.y()) * dy) / square : 0;
            t = Math.max(0, Math.min(1, t));
            double distance = p.distance(new Point(a.x() + t * dx, a.y() + t * dy));
            if (distance < best.distance() - 1e-9) {
                best = new Nearest(distance, (at[i - 1] + t * (at[i] - at[i - 1])) * scale);
            }
        }
        return best;
    }

    /** Distance from the point in m, and m along the pipe. */
    public record Nearest(double distance, double along) {}
}
