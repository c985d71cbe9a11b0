package provingyard.picture;

import java.util.Arrays;
import java.util.List;
import provingyard.scenario.Point;
import provingyard.scenario.YardPlan;

/**
 * Which cells are planted, as the last outline over each says; row by row from the south-west.
 *
 * @param nx cells east
 * @param ny cells north
 * @param cells by cell
 * @param fine {@link #FINER} times as fine
 */
record PlantedCells(int nx, int ny, boolean[] cells, boolean[] fine) {

    /** Parts of a cell's side. */
    static final int FINER = 3;

    static PlantedCells of(YardPlan yard, boolean base) {
        double cell = yard.cell() > 0 ? yard.cell() : 1;
        int nx = Math.max(1, (int) Math.round(yard.size().x() / cell));
        int ny = Math.max(1, (int) Math.round(yard.size().y() / cell));
        return of(yard, nx, ny, base);
    }

    static PlantedCells of(YardPlan yard, int nx, int ny, boolean base) {
        return new PlantedCells(nx, ny, mask(yard, nx, ny, base), mask(yard, nx * FINER, ny * FINER, base));
    }

    private static boolean[] mask(YardPlan yard, int w, int h, boolean base) {
        boolean[] mask = new boolean[w * h];
        Arrays.fill(mask, base);
        for (YardPlan.Surface s : yard.surfaces()) {
            if (s.outline().size() > 2) {
                mark(mask, w, h, yard.size(), s.outline(), s.kind().planted());
            }
        }
        return mask;
    }

    private static void mark(boolean[] mask, int w, int h, Point size, List<Point> outline, boolean planted) {
        double[] b = Polygons.bounds(outline);
        int c0 = Math.max(0, (int) Math.floor(b[0] / size.x() * w));
        int c1 = Math.min(w, (int) Math.ceil(b[2] / size.x() * w));
        int r0 = Math.max(0, (int) Math.floor(b[1] / size.y() * h));
        int r1 = Math.min(h, (int) Math.ceil(b[3] / size.y() * h));
        for (int r = r0; r < r1; r++) {
            for (int c = c0; c < c1; c++) {
                if (Polygons.contains(outline, (c + 0.5) / w * size.x(), (r + 0.5) / h * size.y())) {
                    mask[r * w + c] = planted;
                }
            }
        }
    }
}
