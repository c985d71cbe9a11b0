package provingyard.world.yard;

import java.util.List;
import provingyard.numeric.Deterministic;
import provingyard.scenario.Point;
import provingyard.scenario.YardPlan;
import provingyard.scenario.YardPlan.Structure;
import provingyard.scenario.YardPlan.StructureKind;

/** The yard's standing things and questions about points among them. */
final class Geometry {

    /** A wall-mounted thing hangs so far in front of its wall, m. */
    private static final double OFF_THE_WALL = 0.1;

    /** A point may be drawn so deep in a wall and still means its outside, m. */
    private static final double INTO_THE_WALL = 0.3;

    final SkyDome dome;
    final Shelter shelter;
    private final List<Structure> structures;
    private final Caster[] casters;

    /**
     * Geometry of a plan.
     *
     * @param leaves share of the leaves on deciduous trees
     */
    Geometry(YardPlan plan, double leaves) {
        structures = plan.structures();
        casters = Caster.all(structures, plan.trees(), leaves);
        dome = new SkyDome(casters);
        shelter = new Shelter(casters, dome);
    }

    boolean insideBuilding(double x, double y) {
        for (int i = 0; i < structures.size(); i++) {
            if (walls(i) != null && walls(i).contains(x, y)) {
                return true;
            }
        }
        return false;
    }

    /** Outline of a building's walls; null for other structures. */
    private Polygon walls(int structure) {
        return casters[structure] instanceof Caster.Roofed r && r.solid() ? r.walls : null;
    }

    double[] look(double x, double y, double h) {
        double[] p = outdoors(x, y, h);
        double[] out = new double[2];
        dome.look(p[0], p[1], h, new Sight(), dome.scratch(), out, new double[SkyDome.SECTORS], 0);
        return out;
    }

    /** The point itself, or the point in front of the wall that it lies on. */
    double[] outdoors(double x, double y, double h) {
        for (int i = 0; i < structures.size(); i++) {
            Polygon walls = walls(i);
            if (walls != null && walls.corners() > 0 && h < casters[i].height) {
                int edge = walls.nearestEdge(x, y);
                double distance = walls.distance(x, y, edge);
                if (distance < (walls.contains(x, y) ? INTO_THE_WALL : OFF_THE_WALL)) {
                    return inFront(walls, edge, x, y);
                }
            }
        }
        return new double[] {x, y};
    }

    private static double[] inFront(Polygon walls, int edge, double x, double y) {
        double ax = walls.x(edge);
        double ay = walls.y(edge);
        double bx = walls.x(edge + 1);
        double by = walls.y(edge + 1);
        double along = Polygon.along(x, y, ax, ay, bx, by);
        return new double[] {
            ax + along * (bx - ax) + OFF_THE_WALL * walls.normalX(edge),
            ay + along * (by - ay) + OFF_THE_WALL * walls.normalY(edge)
        };
    }

    Wall nearestWall(double x, double y) {
        Wall nearest = null;
        for (int i = 0; i < structures.size(); i++) {
            Structure s = structures.get(i);
            Wall wall = walls(i) != null ? buildingWall(i, x, y) : null;
            if (s.kind() == StructureKind.WALL) {
                wall = freeWall(i, x, y);
            }
            if (wall != null && (nearest == null || wall.distance() < nearest.distance())) {
                nearest = wall;
            }
        }
        return nearest;
    }

    private Wall buildingWall(int structure, double x, double y) {
        Polygon walls = walls(structure);
        if (walls.corners() == 0) {
            return null;
        }
        int edge = walls.nearestEdge(x, y);
        Structure s = structures.get(structure);
        double faces = bearing(walls.normalX(edge), walls.normalY(edge));
        return new Wall(structure, walls.distance(x, y, edge), faces, s.height(), s.heated());
    }

    private Wall freeWall(int structure, double x, double y) {
        Structure s = structures.get(structure);
        Wall nearest = null;
        for (int i = 1; i < s.outline().size(); i++) {
            Point a = s.outline().get(i - 1);
            Point b = s.outline().get(i);
            double distance = Polygon.distance(x, y, a.x(), a.y(), b.x(), b.y());
            if (a.distance(b) > 0 && (nearest == null || distance < nearest.distance())) {
                double nx = b.y() - a.y();
                double ny = a.x() - b.x();
                double side = nx * (x - a.x()) + ny * (y - a.y()) < 0 ? -1 : 1;
                nearest = new Wall(structure, distance, bearing(side * nx, side * ny), s.height(), false);
            }
        }
        return nearest;
    }

    private static double bearing(double east, double north) {
        double degrees = Math.toDegrees(Deterministic.atan2(east, north));
        return degrees < 0 ? degrees + 360 : degrees;
    }
}
