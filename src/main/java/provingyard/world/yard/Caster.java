package provingyard.world.yard;

import java.util.List;
import provingyard.scenario.Point;
import provingyard.scenario.YardPlan.Structure;
import provingyard.scenario.YardPlan.StructureKind;
import provingyard.scenario.YardPlan.Tree;

/** A thing on the yard that takes sky, sun, rain and wind from the places around it. Lengths in m. */
abstract class Caster {

    /** Height of its top. */
    final double height;

    /** Share of openings that the wind sees: 0 for a solid thing. */
    final double porosity;

    private final double centreX;
    private final double centreY;
    private final double radius;

    private Caster(double height, double porosity, double centreX, double centreY, double radius) {
        this.height = height;
        this.porosity = porosity;
        this.centreX = centreX;
        this.centreY = centreY;
        this.radius = radius;
    }

    /** Adds its bands to what stands in the way of a ray from (ox, oy, h) along a direction of length 1. */
    abstract void cast(double ox, double oy, double h, double dx, double dy, Sight sight, double[] scratch);

    /** Distance along a ray at which the wind meets it, 0 inside it, infinite where the ray misses it. */
    abstract double meets(double ox, double oy, double dx, double dy, double[] scratch);

    /** How much of its shelter from wind it gives at a height: all below 0.8 of its own, nothing above 1.4 of it. */
    double sheltersAt(double h) {
        return height <= 0 ? 0 : Math.max(0, Math.min(1, (1.4 * height - h) / (0.6 * height)));
    }

    /** Most crossings a ray can have with one outline. */
    int edges() {
        return 2;
    }

    /** Whether a ray surely misses the thing: a quick check by its circle. */
    boolean misses(double ox, double oy, double dx, double dy) {
        double ex = centreX - ox;
        double ey = centreY - oy;
        double along = ex * dx + ey * dy;
        double across = ex * dy - ey * dx;
        return Math.abs(across) > radius || along < -radius;
    }

    /** A building or canopy, a wall or a fence. */
    static Caster of(Structure s) {
        boolean roofed = s.kind() == StructureKind.BUILDING || s.kind() == StructureKind.CANOPY;
        return roofed ? new Roofed(s, circle(s.outline(), s.eave())) : new Barrier(s, circle(s.outline(), 0));
    }

    /**
     * A tree.
     *
     * @param leaves share of its leaves, 0 bare to 1
     */
    static Caster of(Tree tree, double leaves) {
        return new Crown(tree, tree.evergreen() ? 1 : leaves);
    }

    /** Casters of structures, then trees, in their order. */
    static Caster[] all(List<Structure> structures, List<Tree> trees, double leaves) {
        Caster[] all = new Caster[structures.size() + trees.size()];
        for (int i = 0; i < structures.size(); i++) {
            all[i] = of(structures.get(i));
        }
        for (int i = 0; i < trees.size(); i++) {
            all[structures.size() + i] = of(trees.get(i), leaves);
        }
        return all;
    }

    /** Centre x, centre y and radius of a circle around the corners, widened by an eave. */
    private static double[] circle(List<Point> corners, double eave) {
        double west = Double.POSITIVE_INFINITY;
        double south = west;
        double east = Double.NEGATIVE_INFINITY;
        double north = east;
        for (Point p : corners) {
            west = Math.min(west, p.x());
            east = Math.max(east, p.x());
            south = Math.min(south, p.y());
            north = Math.max(north, p.y());
        }
        if (corners.isEmpty()) {
            return new double[] {0, 0, -1};
        }
        double rx = (east - west) / 2;
        double ry = (north - south) / 2;
        return new double[] {(west + east) / 2, (south + north) / 2, Math.sqrt(rx * rx + ry * ry) + 3 * eave + 1e-6};
    }

    /** Walls below a flat roof at eave height that reaches out by the eave; a canopy has no walls. */
    static final class Roofed extends Caster {

        final Polygon walls;
        final Polygon roof;
        private final boolean solid;

        private Roofed(Structure s, double[] circle) {
            super(s.height(), 0, circle[0], circle[1], circle[2]);
            walls = Polygon.of(s.outline());
            roof = walls.grown(s.eave());
            solid = s.kind() == StructureKind.BUILDING;
        }

        boolean solid() {
            return solid;
        }

        @Override
        int edges() {
            return walls.corners();
        }

        @Override
        void cast(double ox, double oy, double h, double dx, double dy, Sight sight, double[] scratch) {
            double up = height - h;
            if (up <= 0) {
                return;
            }
            int n = roof.crossings(ox, oy, dx, dy, scratch);
            for (int k = n % 2 == 1 ? -1 : 0; k < n; k += 2) {
                double from = k < 0 ? 0 : scratch[k];
                sight.add(up / scratch[k + 1], from == 0 ? Double.POSITIVE_INFINITY : up / from, 0, 0);
            }
            if (solid) {
                int m = walls.crossings(ox, oy, dx, dy, scratch);
                if (m > 0) {
                    sight.add(0, m % 2 == 1 ? Double.POSITIVE_INFINITY : up / scratch[0], 0, 0);
                }
            }
        }

        @Override
        double meets(double ox, double oy, double dx, double dy, double[] scratch) {
            int n = solid ? walls.crossings(ox, oy, dx, dy, scratch) : 0;
            if (n == 0) {
                return Double.POSITIVE_INFINITY;
            }
            return n % 2 == 1 ? 0 : scratch[0];
        }
    }

    /** A free wall, or a fence that lets a part through. */
    static final class Barrier extends Caster {

        /** Openings of a garden fence of boards or pickets; common practice, no source. */
        private static final double FENCE_OPENINGS = 0.4;

        final List<Point> line;
        private final double through;

        private Barrier(Structure s, double[] circle) {
            super(s.height(), openings(s), circle[0], circle[1], circle[2]);
            line = s.outline();
            through = openings(s);
        }

        private static double openings(Structure s) {
            return s.kind() == StructureKind.FENCE ? FENCE_OPENINGS : 0;
        }

        @Override
        void cast(double ox, double oy, double h, double dx, double dy, Sight sight, double[] scratch) {
            double distance = meets(ox, oy, dx, dy, scratch);
            if (height > h && distance < Double.POSITIVE_INFINITY) {
                sight.add(0, (height - h) / distance, through, through);
            }
        }

        @Override
        double meets(double ox, double oy, double dx, double dy, double[] scratch) {
            double nearest = Double.POSITIVE_INFINITY;
            for (int i = 1; i < line.size(); i++) {
                Point a = line.get(i - 1);
                Point b = line.get(i);
                double d = Polygon.crossing(ox, oy, dx, dy, a.x(), a.y(), b.x(), b.y());
                if (d > 0 && d < nearest) {
                    nearest = d;
                }
            }
            return nearest;
        }
    }

    /**
     * A tree's crown: an upright cylinder from 0.3 of the tree's height to its top (common practice, no source).
     *
     * <p>Light through a crown: 0.15 in leaf, 0.6 bare, the order of measured single trees (Heisler 1986, from
     * memory). Rain through a crown: 0.75 in leaf, 0.9 bare, the order of measured interception by urban trees (15 to
     * 27 % of the rain; Xiao et al. 2000, from memory). Wind: openings 0.45 in leaf, 0.85 bare, after belts of trees
     * that took some 60 % of the wind in leaf and 10 to 20 % bare (windbreaks of Southern Moravia, Contributions to
     * Geophysics and Geodesy, abstract); half that shelter below the crown, where air passes the trunk
     * (MIL-HDBK-1011/2, 4.3.2.3, in kind).
     */
    static final class Crown extends Caster {

        private static final double CLEAR_TRUNK = 0.3;

        private final double x;
        private final double y;
        private final double squared;
        private final double base;
        private final double light;
        private final double rain;

        private Crown(Tree tree, double leaves) {
            super(tree.height(), 0.85 - 0.4 * leaves, tree.at().x(), tree.at().y(), tree.canopy() / 2);
            x = tree.at().x();
            y = tree.at().y();
            squared = tree.canopy() * tree.canopy() / 4;
            base = CLEAR_TRUNK * tree.height();
            light = 0.6 - 0.45 * leaves;
            rain = 0.9 - 0.15 * leaves;
        }

        @Override
        void cast(double ox, double oy, double h, double dx, double dy, Sight sight, double[] scratch) {
            if (h >= height || !chord(ox, oy, dx, dy, scratch)) {
                return;
            }
            double far = scratch[1];
            double near = scratch[0];
            double low = base > h ? (base - h) / far : 0;
            double high = near <= 0 ? Double.POSITIVE_INFINITY : (height - h) / near;
            sight.add(low, high, light, rain);
        }

        @Override
        double meets(double ox, double oy, double dx, double dy, double[] scratch) {
            return chord(ox, oy, dx, dy, scratch) ? Math.max(0, scratch[0]) : Double.POSITIVE_INFINITY;
        }

        @Override
        double sheltersAt(double h) {
            return h < base ? 0.5 : super.sheltersAt(h);
        }

        /** Entry and exit of a ray; entry is negative when it begins inside. */
        private boolean chord(double ox, double oy, double dx, double dy, double[] scratch) {
            double along = (x - ox) * dx + (y - oy) * dy;
            double across = (x - ox) * dy - (y - oy) * dx;
            double half = squared - across * across;
            if (half <= 0) {
                return false;
            }
            double root = Math.sqrt(half);
            scratch[0] = along - root;
            scratch[1] = along + root;
            return scratch[1] > 0;
        }
    }
}
