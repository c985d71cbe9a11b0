package provingyard.picture;

import java.util.List;
import provingyard.numeric.Deterministic;
import provingyard.scenario.Point;

/** The joints of a paved walk: across it where it is a strip, a grid where it is a place. */
final class Joints {

    private static final double STEP = 1.5;

    private Joints() {}

    static Path of(List<Point> outline) {
        Path ladder = outline.size() >= 8 ? ladder(outline) : null;
        return ladder != null ? ladder : grid(outline);
    }

    /**
     * Joints of a bent strip whose outline runs up one side and back down the other: rungs between opposite corners.
     * Null where the outline is no such strip.
     */
    private static Path ladder(List<Point> p) {
        int n = p.size();
        for (int shift = 0; shift < n; shift++) {
            double least = Double.MAX_VALUE;
            double most = 0;
            double length = 0;
            for (int i = 0; i < n / 2; i++) {
                Point a = p.get((shift + i) % n);
                double rung = a.distance(p.get((shift + n - 1 - i) % n));
                least = Math.min(least, rung);
                most = Math.max(most, rung);
                length += i == 0 ? 0 : a.distance(p.get((shift + i - 1) % n));
            }
            if (n % 2 == 0 && most < 2.2 * least && length > 2.5 * most) {
                return rungs(p, shift);
            }
        }
        return null;
    }

    private static Path rungs(List<Point> p, int shift) {
        int n = p.size();
        Path.Builder b = Path.builder();
        double until = STEP / 2;
        for (int i = 1; i < n / 2; i++) {
            Point a0 = p.get((shift + i - 1) % n);
            Point a1 = p.get((shift + i) % n);
            Point b0 = p.get((shift + n - i) % n);
            Point b1 = p.get((shift + n - 1 - i) % n);
            double l = (a0.distance(a1) + b0.distance(b1)) / 2;
            double at = until;
            for (; at < l; at += STEP) {
                double t = at / l;
                b.moveTo(a0.x() + (a1.x() - a0.x()) * t, a0.y() + (a1.y() - a0.y()) * t);
                b.lineTo(b0.x() + (b1.x() - b0.x()) * t, b0.y() + (b1.y() - b0.y()) * t);
            }
            until = at - l;
        }
        return b.build();
    }

    private static Path grid(List<Point> outline) {
        double turn = Polygons.direction(outline);
        double c = Deterministic.cos(turn);
        double s = Deterministic.sin(turn);
        double[] b = Polygons.bounds(Polygons.turned(outline, -turn));
        Path.Builder out = Path.builder();
        double width = b[2] - b[0];
        double depth = b[3] - b[1];
        lines(out, b, width / Math.max(1, Math.round(width / STEP)), c, s, true);
        if (depth > 2.6) {
            lines(out, b, depth / Math.max(1, Math.round(depth / STEP)), c, s, false);
        }
        return out.build();
    }

    private static void lines(Path.Builder out, double[] b, double step, double c, double s, boolean across) {
        int axis = across ? 0 : 1;
        for (double v = b[axis] + step; v < b[axis + 2] - 0.2; v += step) {
            double ax = across ? v : b[0];
            double ay = across ? b[1] : v;
            double bx = across ? v : b[2];
            double by = across ? b[3] : v;
            out.moveTo(ax * c - ay * s, ax * s + ay * c);
            out.lineTo(bx * c - by * s, bx * s + by * c);
        }
    }
}
