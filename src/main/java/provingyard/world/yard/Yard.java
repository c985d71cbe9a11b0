package provingyard.world.yard;

import provingyard.scenario.Scenario;
import provingyard.scenario.YardPlan;
import provingyard.scenario.YardPlan.SurfaceKind;

/**
 * A site as cells and geometry. x runs east and y north in m; cell index = row * nx + column, row 0 in the south.
 *
 * <p>Immutable and safe to share. Angles are compass bearings in degrees. The yard wears its trees' leaves as their
 * mean over the season (months of leaf: common practice, no source). Roofs are flat at eave height. A point on a
 * building's wall, or in it by less than 0.3 m, is taken 0.1 m in front of the wall, where a wall-mounted thing hangs.
 */
public final class Yard {

    /** Bearings that a horizon is given for. */
    public static final int BEARINGS = SkyDome.BEARINGS;

    /** Sectors that a cell's horizon is given for. */
    public static final int SECTORS = SkyDome.SECTORS;

    private final YardPlan plan;
    private final Cells cells;
    private final Geometry geometry;
    private final double[] skyView;
    private final double[] rainShare;
    private final double[] horizons;

    private Yard(Scenario scenario) {
        plan = scenario.yard();
        geometry = new Geometry(
                plan, Leaves.over(scenario.season(), scenario.place().latitude()));
        cells = new Cells(plan, scenario.catalogue(), geometry);
        skyView = new double[cells.count()];
        rainShare = new double[cells.count()];
        horizons = new double[cells.count() * SECTORS];
        Sight sight = new Sight();
        double[] scratch = geometry.dome.scratch();
        double[] look = new double[2];
        for (int i = 0; i < cells.count(); i++) {
            if (!cells.builtOver[i]) {
                geometry.dome.look(x(i), y(i), 0, sight, scratch, look, horizons, i * SECTORS);
                skyView[i] = look[0];
                rainShare[i] = look[1];
            }
        }
    }

    /** The yard of a scenario that has passed its check. */
    public static Yard of(Scenario scenario) {
        return new Yard(scenario);
    }

    /** The plan that the yard was made from. */
    public YardPlan plan() {
        return plan;
    }

    /** Cells from west to east. */
    public int nx() {
        return cells.nx;
    }

    /** Cells from south to north. */
    public int ny() {
        return cells.ny;
    }

    /** Number of cells. */
    public int cells() {
        return cells.count();
    }

    /** Side of a cell in m. */
    public double cellSize() {
        return plan.cell();
    }

    /** Area of a cell in m2. */
    public double cellArea() {
        return plan.cell() * plan.cell();
    }

    /** The cell at a point, -1 outside the yard. */
    public int cellAt(double x, double y) {
        return cells.at(x, y);
    }

    /** East coordinate of a cell's middle in m. */
    public double x(int cell) {
        return cells.x(cell);
    }

    /** North coordinate of a cell's middle in m. */
    public double y(int cell) {
        return cells.y(cell);
    }

    /** Index of the cell's surface in the plan's surfaces; later outlines lie over earlier ones. */
    public int surface(int cell) {
        return cells.surface[cell];
    }

    /** What the cell's surface is. */
    public SurfaceKind kind(int cell) {
        return plan.surfaces().get(cells.surface[cell]).kind();
    }

    /** Plants grow there, and no building stands there. */
    public boolean planted(int cell) {
        return !cells.builtOver[cell] && kind(cell).planted();
    }

    /** It is paved, and no building stands there. */
    public boolean paved(int cell) {
        return !cells.builtOver[cell] && !kind(cell).planted();
    }

    /** The cell's middle lies inside a building: no ground is computed there. */
    public boolean builtOver(int cell) {
        return cells.builtOver[cell];
    }

    /** Index of the surface's soil in the catalogue, -1 for none. */
    public int soil(int cell) {
        return cells.soil[cells.surface[cell]];
    }

    /** Index of the surface's plant in the catalogue, -1 for none. */
    public int plant(int cell) {
        return cells.plant[cells.surface[cell]];
    }

    /** Index of the surface's paving in the catalogue, -1 for none. */
    public int paving(int cell) {
        return cells.paving[cells.surface[cell]];
    }

    /** Indices into the plan's surfaces of those that are walks, in their order. */
    public int[] walks() {
        return cells.walks.clone();
    }

    /** Index of the cell's walk in {@link #walks()}, -1 off the walks and under buildings. */
    public int walk(int cell) {
        return cells.builtOver[cell] ? -1 : cells.walkOf[cells.surface[cell]];
    }

    /** Ground area in m2 of the cells of a surface, buildings left out. */
    public double area(int surface) {
        return cells.countOf[surface] * cellArea();
    }

    /** Share of the open rain that reaches the cell's ground: 0 inside buildings, little below eaves and canopies. */
    public double rainShare(int cell) {
        return rainShare[cell];
    }

    /** Sky view at the cell's ground, 0 to 1; 0 inside buildings. */
    public double skyView(int cell) {
        return skyView[cell];
    }

    /** Elevation of the cell's ground in m over the yard's mean, from the surfaces' falls and the hollows. */
    public double elevation(int cell) {
        return cells.elevation[cell];
    }

    /**
     * The neighbour (of eight) that takes the cell's runoff; -1 where it leaves the site: at the yard's edge, on
     * streets and drives (they have drains), and for cells inside buildings. Following it always ends.
     */
    public int downhill(int cell) {
        return cells.downhill[cell];
    }

    /** Share of passing runoff that the cell holds back because it lies in a hollow, 0 to 1. */
    public double hollow(int cell) {
        return cells.hollow[cell];
    }

    /** Sky view of an upward-facing plate, 0 to 1, weighted by the cosine from the zenith. */
    public double skyView(double x, double y, double h) {
        return geometry.look(x, y, h)[0];
    }

    /**
     * Height angles in degrees of the horizon along {@link #BEARINGS} bearings; entry i looks toward the bearing
     * (i + 0.5) 360 / 64. Where roofs hang overhead or crowns let light through, the plain horizon that would leave as
     * much sky.
     */
    public double[] horizon(double x, double y, double h) {
        double[] p = geometry.outdoors(x, y, h);
        return geometry.dome.horizon(p[0], p[1], h);
    }

    /** Mean height in degrees of a cell's horizon in a sector, which looks toward the bearing (sector + 0.5) 360 / 16. */
    public double horizon(int cell, int sector) {
        return horizons[cell * SECTORS + sector];
    }

    /** Share of the sun's beam that arrives, 0 to 1; crowns let a part through. 0 by night. Angles in degrees. */
    public double sunlit(double x, double y, double h, double sunAltitude, double sunBearing) {
        double[] p = geometry.outdoors(x, y, h);
        return geometry.dome.sunlit(p[0], p[1], h, sunAltitude, sunBearing);
    }

    /** Share of the open rain that reaches a catcher, 0 to 1; drip from eaves is left out. */
    public double rainShare(double x, double y, double h) {
        return geometry.look(x, y, h)[1];
    }

    /** Wind as a share of the open wind at the same height: below 1 in the lee, above 1 at roof edges. */
    public double shelter(double x, double y, double h, double windFrom) {
        double[] p = geometry.outdoors(x, y, h);
        return geometry.shelter.factor(p[0], p[1], h, windFrom);
    }

    /** The nearest wall of a building or free wall, by the side at the point; null where the yard has none. */
    public Wall nearestWall(double x, double y) {
        return geometry.nearestWall(x, y);
    }

    /** Whether a point lies inside a building's walls. */
    public boolean insideBuilding(double x, double y) {
        return geometry.insideBuilding(x, y);
    }
}
