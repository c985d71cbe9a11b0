package provingyard.season;

import java.util.ArrayList;
import java.util.List;
import provingyard.scenario.Point;
import provingyard.scenario.YardPlan;
import provingyard.world.yard.Yard;

/** The middle cell of each walk of a site: the one nearest to the mean of its cells. Immutable. */
final class WalkMiddles {

    /** m2 that water must reach for a walk to count as watered: what an iced walk needs. */
    private static final double WATERED = IceLog.LEAST_AREA;

    private final Yard yard;
    private final int[] cells;
    private final int[] walks;
    private final Point coldest;

    WalkMiddles(Site site) {
        yard = site.yard();
        List<YardPlan.Surface> surfaces = site.scenario().yard().surfaces();
        cells = new int[surfaces.size()];
        float[] cold = site.climate().cold(Needs.NIGHT);
        List<Integer> found = new ArrayList<>();
        double least = Double.POSITIVE_INFINITY;
        Point best = null;
        for (int s = 0; s < cells.length; s++) {
            boolean walk = surfaces.get(s).kind() == YardPlan.SurfaceKind.WALK;
            List<Integer> own = walk ? cellsOf(site, s) : List.of();
            cells[s] = own.isEmpty() ? -1 : middle(own);
            if (!own.isEmpty()) {
                found.add(s);
                double mean = own.stream().mapToDouble(c -> cold[c]).sum() / own.size();
                if (watered(site, own) && mean < least) {
                    least = mean;
                    best = point(s);
                }
            }
        }
        walks = found.stream().mapToInt(Integer::intValue).toArray();
        coldest = best;
    }

    private static List<Integer> cellsOf(Site site, int surface) {
        List<Integer> own = new ArrayList<>();
        for (int c = 0; c < site.cells().count(); c++) {
            if (site.cells().paved(c) && site.cells().surface()[c] == surface) {
                own.add(c);
            }
        }
        return own;
    }

    private boolean watered(Site site, List<Integer> own) {
        long reached = own.stream()
                .filter(c -> site.sprayed(new Point(yard.x(c), yard.y(c))))
                .count();
        return reached * yard.cellArea() >= WATERED;
    }

    private int middle(List<Integer> own) {
        Point mean = new Point(
                own.stream().mapToDouble(yard::x).sum() / own.size(),
                own.stream().mapToDouble(yard::y).sum() / own.size());
        int best = own.get(0);
        for (int c : own) {
            best = at(c).distance(mean) < at(best).distance(mean) ? c : best;
        }
        return best;
    }

    private Point at(int cell) {
        return new Point(yard.x(cell), yard.y(cell));
    }

    /** Indices of the walks among the plan's surfaces. */
    int[] walks() {
        return walks;
    }

    /** The middle cell of a walk. */
    int cell(int surface) {
        return cells[surface];
    }

    /** The middle of a walk. */
    Point point(int surface) {
        return at(cells[surface]);
    }

    /** The middle of the coldest walk that sprinklers reach, by the mean of its cells in a clear, calm night; or null. */
    Point coldest() {
        return coldest;
    }
}
