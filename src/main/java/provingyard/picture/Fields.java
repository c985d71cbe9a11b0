package provingyard.picture;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import provingyard.scenario.Point;

/** Smooth pictures and contour lines of values that are given per cell. */
final class Fields {

    private Fields() {}

    /** Weights of a quadratic B-spline at u (0 to 1) from a cell's low edge, for the cell before, itself and after. */
    private static double[] spline(double u) {
        return new double[] {(1 - u) * (1 - u) / 2, 0.5 + u * (1 - u), u * u / 2};
    }

    /** The smoothed value at a place in cells from the south-west corner; cells that do not count are left out. */
    static double smooth(CellField f, boolean[] counts, double x, double y) {
        int cx = (int) Math.floor(x);
        int cy = (int) Math.floor(y);
        double[] wx = spline(x - cx);
        double[] wy = spline(y - cy);
        double sum = 0;
        double weight = 0;
        for (int j = -1; j <= 1; j++) {
            for (int i = -1; i <= 1; i++) {
                int col = Math.max(0, Math.min(f.nx() - 1, cx + i));
                int row = Math.max(0, Math.min(f.ny() - 1, cy + j));
                if (counts == null || counts[row * f.nx() + col]) {
                    double w = wx[i + 1] * wy[j + 1];
                    sum += w * f.at(col, row);
                    weight += w;
                }
            }
        }
        return weight < 1e-9 ? 0 : sum / weight;
    }

    /** The field at {@code finer} times its resolution. */
    static CellField finer(CellField f, int finer) {
        float[] v = new float[f.nx() * f.ny() * finer * finer];
        int n = f.nx() * finer;
        for (int y = 0; y < f.ny() * finer; y++) {
            for (int x = 0; x < n; x++) {
                v[y * n + x] = (float) smooth(f, null, (x + 0.5) / finer, (y + 0.5) / finer);
            }
        }
        return new CellField(n, f.ny() * finer, v);
    }

    /**
     * Closed lines around where a field lies under a level, in cells from the south-west corner. Lines that would leave
     * the field are closed along its edge.
     */
    static List<List<Point>> under(CellField f, double level) {
        Map<Long, long[]> next = new LinkedHashMap<>();
        Map<Long, Point> places = new LinkedHashMap<>();
        for (int y = -1; y < f.ny(); y++) {
            for (int x = -1; x < f.nx(); x++) {
                cell(f, level, x, y, next, places);
            }
        }
        return rings(next, places);
    }

    private static double value(CellField f, double level, int x, int y) {
        boolean beyond = x < 0 || y < 0 || x >= f.nx() || y >= f.ny();
        // Just above the level, so that the line runs halfway to the edge.
        return beyond ? level + 1e-3 + Math.abs(f.at(x, y) - level) : f.at(x, y);
    }

    private static void cell(
            CellField f, double level, int x, int y, Map<Long, long[]> next, Map<Long, Point> places) {
        double[] v = {
            value(f, level, x, y), value(f, level, x + 1, y), value(f, level, x + 1, y + 1), value(f, level, x, y + 1)
        };
        int mask = 0;
        for (int i = 0; i < 4; i++) {
            mask |= v[i] < level ? 1 << i : 0;
        }
        // Edges: 0 south, 1 east, 2 north, 3 west. Each pair leaves the low ground to its left.
        int[] pairs = PAIRS[mask];
        for (int i = 0; i < pairs.length; i += 2) {
            long a = crossing(x, y, pairs[i], v, level, places);
            long b = crossing(x, y, pairs[i + 1], v, level, places);
            next.put(a, new long[] {b});
        }
    }

    private static final int[][] PAIRS = {
        {}, {0, 3}, {1, 0}, {1, 3}, {2, 1}, {0, 3, 2, 1}, {2, 0}, {2, 3}, {3, 2}, {0, 2}, {1, 0, 3, 2}, {1, 2}, {3, 1},
        {0, 1}, {3, 0}, {}
    };

    private static long crossing(int x, int y, int edge, double[] v, double level, Map<Long, Point> places) {
        int a = edge;
        int b = (edge + 1) % 4;
        double t = Math.max(0, Math.min(1, (level - v[a]) / (v[b] - v[a])));
        double[] cx = {0, 1, 1, 0};
        double[] cy = {0, 0, 1, 1};
        int ex = edge == 1 ? x + 1 : x;
        int ey = edge == 2 ? y + 1 : y;
        long key = ((ey + 2L) << 24 | ex + 2L) << 1 | (edge % 2);
        places.putIfAbsent(
                key,
                new Point(x + 0.5 + cx[a] + (cx[b] - cx[a]) * t, y + 0.5 + cy[a] + (cy[b] - cy[a]) * t));
        return key;
    }

    private static List<List<Point>> rings(Map<Long, long[]> next, Map<Long, Point> places) {
        List<List<Point>> rings = new ArrayList<>();
        while (!next.isEmpty()) {
            List<Point> ring = new ArrayList<>();
            long at = next.keySet().iterator().next();
            long[] to = next.remove(at);
            while (to != null) {
                ring.add(places.get(at));
                at = to[0];
                to = next.remove(at);
            }
            if (ring.size() > 2) {
                rings.add(ring);
            }
        }
        return rings;
    }
}
