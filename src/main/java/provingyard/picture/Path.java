package provingyard.picture;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import provingyard.numeric.Deterministic;
import provingyard.scenario.Point;

/** An immutable outline of lines and Bézier curves; arcs are kept as cubic curves. */
public final class Path {

    private static final byte MOVE = 0;
    private static final byte LINE = 1;
    private static final byte QUAD = 2;
    private static final byte CUBIC = 3;
    private static final byte CLOSE = 4;

    private final byte[] ops;
    private final double[] xy;

    private Path(byte[] ops, double[] xy) {
        this.ops = ops;
        this.xy = xy;
    }

    /** Who walks a path's pieces; a back end has one. */
    public interface Walker {
        void moveTo(double x, double y);

        void lineTo(double x, double y);

        void quadTo(double cx, double cy, double x, double y);

        void cubicTo(double ax, double ay, double bx, double by, double x, double y);

        void close();
    }

    /** A new, empty builder. */
    public static Builder builder() {
        return new Builder();
    }

    /** An SVG path string's outline. */
    public static Path svg(String d) {
        return SvgPath.parse(d);
    }

    /** A closed polygon. */
    public static Path polygon(List<Point> corners) {
        return line(corners, true);
    }

    /** An open line through points. */
    public static Path polyline(List<Point> points) {
        return line(points, false);
    }

    private static Path line(List<Point> points, boolean closed) {
        Builder b = builder();
        for (int i = 0; i < points.size(); i++) {
            Point p = points.get(i);
            if (i == 0) {
                b.moveTo(p.x(), p.y());
            } else {
                b.lineTo(p.x(), p.y());
            }
        }
        if (closed && !points.isEmpty()) {
            b.close();
        }
        return b.build();
    }

    /** A rectangle. */
    public static Path rectangle(double x, double y, double width, double height) {
        return builder().rectangle(x, y, width, height).build();
    }

    /** A rectangle with round corners. */
    public static Path rounded(double x, double y, double width, double height, double radius) {
        return builder().rounded(x, y, width, height, radius).build();
    }

    /** A circle. */
    public static Path circle(double x, double y, double radius) {
        return builder().circle(x, y, radius).build();
    }

    /** An ellipse with axes along x and y. */
    public static Path ellipse(double x, double y, double rx, double ry) {
        return circle(0, 0, 1).mapped(rx, ry, x, y);
    }

    /** One straight line. */
    public static Path segment(double ax, double ay, double bx, double by) {
        Builder b = builder();
        b.moveTo(ax, ay);
        b.lineTo(bx, by);
        return b.build();
    }

    public boolean isEmpty() {
        return ops.length == 0;
    }

    /** Hands every piece to a walker, in order. */
    public void walk(Walker w) {
        int k = 0;
        for (byte op : ops) {
            switch (op) {
                case MOVE -> w.moveTo(xy[k], xy[k + 1]);
                case LINE -> w.lineTo(xy[k], xy[k + 1]);
                case QUAD -> w.quadTo(xy[k], xy[k + 1], xy[k + 2], xy[k + 3]);
                case CUBIC -> w.cubicTo(xy[k], xy[k + 1], xy[k + 2], xy[k + 3], xy[k + 4], xy[k + 5]);
                default -> w.close();
            }
            k += coordinates(op);
        }
    }

    private static int coordinates(byte op) {
        return switch (op) {
            case MOVE, LINE -> 2;
            case QUAD -> 4;
            case CUBIC -> 6;
            default -> 0;
        };
    }

    /** The path scaled, then moved. */
    public Path mapped(double sx, double sy, double dx, double dy) {
        double[] to = new double[xy.length];
        for (int i = 0; i < xy.length; i += 2) {
            to[i] = xy[i] * sx + dx;
            to[i + 1] = xy[i + 1] * sy + dy;
        }
        return new Path(ops, to);
    }

    /** The path moved. */
    public Path moved(double dx, double dy) {
        return mapped(1, 1, dx, dy);
    }

    /** Least x, least y, greatest x, greatest y of all control points; zeros for an empty path. */
    public double[] bounds() {
        if (xy.length == 0) {
            return new double[4];
        }
        double[] b = {xy[0], xy[1], xy[0], xy[1]};
        for (int i = 0; i < xy.length; i += 2) {
            b[0] = Math.min(b[0], xy[i]);
            b[1] = Math.min(b[1], xy[i + 1]);
            b[2] = Math.max(b[2], xy[i]);
            b[3] = Math.max(b[3], xy[i + 1]);
        }
        return b;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Path p && Arrays.equals(ops, p.ops) && Arrays.equals(xy, p.xy);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(ops) + Arrays.hashCode(xy);
    }

    /** Builds a path, piece by piece. */
    public static final class Builder implements Walker {

        private final List<Byte> ops = new ArrayList<>();
        private double[] xy = new double[64];
        private int used;

        private Builder add(byte op, double... values) {
            ops.add(op);
            if (used + values.length > xy.length) {
                xy = Arrays.copyOf(xy, xy.length * 2 + values.length);
            }
            System.arraycopy(values, 0, xy, used, values.length);
            used += values.length;
            return this;
        }

        @Override
        public void quadTo(double cx, double cy, double x, double y) {
            add(QUAD, cx, cy, x, y);
        }

        @Override
        public void cubicTo(double ax, double ay, double bx, double by, double x, double y) {
            add(CUBIC, ax, ay, bx, by, x, y);
        }

        @Override
        public void close() {
            add(CLOSE);
        }

        /** Adds all of another path. */
        public Builder append(Path path) {
            path.walk(this);
            return this;
        }

        public Builder rectangle(double x, double y, double width, double height) {
            moveTo(x, y);
            lineTo(x + width, y);
            lineTo(x + width, y + height);
            lineTo(x, y + height);
            return add(CLOSE);
        }

        public Builder rounded(double x, double y, double width, double height, double radius) {
            double r = Math.min(radius, Math.min(width, height) / 2);
            double quarter = Math.PI / 2;
            moveTo(x + r, y);
            lineTo(x + width - r, y);
            arc(x + width - r, y + r, r, -quarter, quarter);
            lineTo(x + width, y + height - r);
            arc(x + width - r, y + height - r, r, 0, quarter);
            lineTo(x + r, y + height);
            arc(x + r, y + height - r, r, quarter, quarter);
            lineTo(x, y + r);
            arc(x + r, y + r, r, 2 * quarter, quarter);
            return add(CLOSE);
        }

        public Builder circle(double x, double y, double radius) {
            moveTo(x + radius, y);
            arc(x, y, radius, 0, 2 * Math.PI);
            return add(CLOSE);
        }

        /**
         * A circle's arc from where the path stands, which must be the arc's start.
         *
         * @param from angle of the start in radians, from x toward y
         * @param sweep radians, negative for the other way round
         */
        public Builder arc(double x, double y, double radius, double from, double sweep) {
            int n = Math.max(1, (int) Math.ceil(Math.abs(sweep) / (Math.PI / 2) - 1e-9));
            double step = sweep / n;
            double k = 4.0 / 3 * Deterministic.tan(step / 4) * radius;
            for (int i = 0; i < n; i++) {
                double a = from + i * step;
                double b = a + step;
                double ca = Deterministic.cos(a);
                double sa = Deterministic.sin(a);
                double cb = Deterministic.cos(b);
                double sb = Deterministic.sin(b);
                cubicTo(
                        x + radius * ca - k * sa,
                        y + radius * sa + k * ca,
                        x + radius * cb + k * sb,
                        y + radius * sb - k * cb,
                        x + radius * cb,
                        y + radius * sb);
            }
            return this;
        }

        @Override
        public void moveTo(double x, double y) {
            add(MOVE, x, y);
        }

        @Override
        public void lineTo(double x, double y) {
            add(LINE, x, y);
        }

        public Path build() {
            byte[] o = new byte[ops.size()];
            for (int i = 0; i < o.length; i++) {
                o[i] = ops.get(i);
            }
            return new Path(o, Arrays.copyOf(xy, used));
        }
    }
}
