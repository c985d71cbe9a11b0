package provingyard.world.yard;

import java.util.Arrays;
import java.util.PriorityQueue;

/**
 * The way of runoff: each open cell passes it to the neighbour, of eight, with the steepest fall (D8, O'Callaghan and
 * Mark 1984) over ground whose pits are filled to their spill point with a least fall kept (priority flood, Barnes,
 * Lehman and Mulla 2014). Water so always leaves at a way out, and no way runs in a circle.
 */
final class Drainage {

    /** Fall in m that a filled pit keeps from cell to cell, so that its surface has a direction. */
    private static final double LEAST_FALL = 1e-6;

    private final int nx;
    private final int ny;
    private final double[] ground;
    private final boolean[] closed;
    private final boolean[] wayOut;
    private final double[] level;
    private final int[] steps;

    private Drainage(int nx, int ny, double[] ground, boolean[] closed, boolean[] wayOut) {
        this.nx = nx;
        this.ny = ny;
        this.ground = ground;
        this.closed = closed;
        this.wayOut = wayOut;
        level = new double[nx * ny];
        steps = new int[nx * ny];
        Arrays.fill(level, Double.NaN);
    }

    /**
     * Neighbour by cell that takes its runoff; -1 where it leaves the site, and for closed cells.
     *
     * @param ground height in m
     * @param closed cells without ground (inside buildings)
     * @param wayOut cells from which water leaves the site; ground that reaches none gets a drain at its lowest cell
     * @param orderOut receives the open cells, uphill first, then the closed ones
     */
    static int[] downhill(int nx, int ny, double[] ground, boolean[] closed, boolean[] wayOut, int[] orderOut) {
        Drainage d = new Drainage(nx, ny, ground, closed, wayOut.clone());
        d.flood();
        int[] to = new int[nx * ny];
        for (int i = 0; i < to.length; i++) {
            to[i] = d.steepest(i);
        }
        d.order(orderOut);
        return to;
    }

    private record Front(double level, int steps, int cell) implements Comparable<Front> {
        @Override
        public int compareTo(Front o) {
            int byLevel = Double.compare(level, o.level);
            int bySteps = byLevel != 0 ? byLevel : Integer.compare(steps, o.steps);
            return bySteps != 0 ? bySteps : Integer.compare(cell, o.cell);
        }
    }

    private void flood() {
        PriorityQueue<Front> front = new PriorityQueue<>();
        for (int i = 0; i < ground.length; i++) {
            if (wayOut[i] && !closed[i]) {
                reach(front, i, ground[i], 0);
            }
        }
        spread(front);
        for (int i = lowestUnreached(); i >= 0; i = lowestUnreached()) {
            wayOut[i] = true;
            reach(front, i, ground[i], 0);
            spread(front);
        }
    }

    private void reach(PriorityQueue<Front> front, int cell, double at, int count) {
        level[cell] = at;
        steps[cell] = count;
        front.add(new Front(at, count, cell));
    }

    private void spread(PriorityQueue<Front> front) {
        while (!front.isEmpty()) {
            Front f = front.poll();
            for (int k = 0; k < 8; k++) {
                int n = neighbour(f.cell, k);
                if (n >= 0 && !closed[n] && Double.isNaN(level[n])) {
                    reach(front, n, Math.max(ground[n], f.level + LEAST_FALL), f.steps + 1);
                }
            }
        }
    }

    private int lowestUnreached() {
        int lowest = -1;
        for (int i = 0; i < ground.length; i++) {
            if (!closed[i] && Double.isNaN(level[i]) && (lowest < 0 || ground[i] < ground[lowest])) {
                lowest = i;
            }
        }
        return lowest;
    }

    private int steepest(int cell) {
        if (closed[cell] || wayOut[cell]) {
            return -1;
        }
        int best = -1;
        double bestFall = 0;
        for (int k = 0; k < 8; k++) {
            int n = neighbour(cell, k);
            if (n >= 0 && !closed[n]) {
                double fall = (level[cell] - level[n]) / (k < 4 ? 1 : Math.sqrt(2));
                if (fall > bestFall) {
                    bestFall = fall;
                    best = n;
                }
            }
        }
        return best;
    }

    /** Neighbour k of a cell, the four sides first; -1 beyond the edge. */
    private int neighbour(int cell, int k) {
        int column = cell % nx + EAST[k];
        int row = cell / nx + NORTH[k];
        return column < 0 || column >= nx || row < 0 || row >= ny ? -1 : row * nx + column;
    }

    private static final int[] EAST = {0, 1, 0, -1, 1, 1, -1, -1};
    private static final int[] NORTH = {1, 0, -1, 0, 1, -1, -1, 1};

    private void order(int[] out) {
        Integer[] cells = new Integer[level.length];
        Arrays.setAll(cells, i -> i);
        Arrays.sort(cells, (a, b) -> {
            if (closed[a] || closed[b]) {
                return Boolean.compare(closed[a], closed[b]);
            }
            return Double.compare(level[b], level[a]);
        });
        for (int i = 0; i < out.length; i++) {
            out[i] = cells[i];
        }
    }
}
