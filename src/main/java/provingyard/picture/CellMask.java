package provingyard.picture;

import java.util.Arrays;
import java.util.List;
import provingyard.scenario.Point;
import provingyard.scenario.YardPlan;

/** Which cells are planted; as the last outline over each says. */
final class CellMask {

    private CellMask() {}

    /** Cell by cell from the south-west, {@code finer} times as fine as nx by ny. */
    static boolean[] planted(YardShapes shapes, int nx, int ny, int finer) {
        int w = nx * finer;
        int h = ny * finer;
        boolean[] mask = new boolean[w * h];
        Arrays.fill(mask, shapes.base().planted());
        Point size = shapes.size();
        for (YardPlan.Surface s : shapes.yard().surfaces()) {
            if (s.outline().size() > 2) {
                mark(mask, w, h, size, s.outline(), s.kind().planted());
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
