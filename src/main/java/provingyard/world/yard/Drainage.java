package provingyard.world.yard;

import java.util.PriorityQueue;

/**
 * The way of runoff: each open cell passes it to one of its eight neighbours.
 *
 * <p>Ground is searched from the ways out, lowest cell first, and water takes the search's way back (least-cost
 * drainage paths: Metz, Mitasova and Harmon 2011, Hydrol. Earth Syst. Sci. 15), or the steepest fall (D8: O'Callaghan
 * and Mark 1984) where that leads to a cell found earlier. So water gathers at the bottom of a hollow, leaves it by one
 * way over its lowest rim, always reaches a way out, and never runs in a circle.
 */
final class Drainage {

    private static final int[] EAST = {0, 1, 0, -1, 1, 1, -1, -1};
    private static final int[] NORTH = {1, 0, -1, 0, 1, -1, -1, 1};

    private final int nx;
    private final int ny;
    private final double[] ground;
    private final boolean[] closed;
    private final boolean[] wayOut;
    private final boolean[] reached;
    private final int[] back;
    private final int[] found;
    private int count;

    private Drainage(int nx, int ny, double[] ground, boolean[] closed) {
        this.nx = nx;
        this.ny = ny;
        this.ground = ground;
        this.closed = closed;
        wayOut = new boolean[nx * ny];
        reached = new boolean[nx * ny];
        back = new int[nx * ny];
        found = new int[nx * ny];
    }

    /**
     * Neighbour by cell that takes its runoff; -1 where it leaves the site, and for closed cells.
     *
     * @param ground height in m
     * @param closed cells without ground (inside buildings)
     * @param drained cells with a drain; water also leaves over the edge where that is the steepest way, and ground
     *     from which no way out is found gets a drain at its lowest cell
     */
    static int[] downhill(int nx, int ny, double[] ground, boolean[] closed, boolean[] drained) {
        Drainage d = new Drainage(nx, ny, ground, closed);
        for (int i = 0; i < ground.length; i++) {
            d.wayOut[i] = !closed[i] && (drained[i] || d.fallsOverEdge(i));
        }
        d.search();
        int[] to = new int[nx * ny];
        for (int i = 0; i < to.length; i++) {
            to[i] = d.next(i);
        }
        return to;
    }

    /** The ground beyond the edge goes on as it comes: is the way over the edge at least as steep as any within? */
    private boolean fallsOverEdge(int cell) {
        double steepest = 0;
        double outward = Double.NEGATIVE_INFINITY;
        for (int k = 0; k < 8; k++) {
            int n = neighbour(cell, k);
            int opposite = neighbour(cell, k ^ 2);
            if (n >= 0 && !closed[n]) {
                steepest = Math.max(steepest, fall(cell, n, k));
            } else if (n < 0 && k < 4) {
                outward = Math.max(outward, opposite < 0 ? 0 : ground[opposite] - ground[cell]);
            }
        }
        return outward >= steepest - 1e-9;
    }

    private double fall(int from, int to, int direction) {
        return (ground[from] - ground[to]) / (direction < 4 ? 1 : Math.sqrt(2));
    }

    private record Front(double height, int steps, int cell) implements Comparable<Front> {
        @Override
        public int compareTo(Front o) {
            int byHeight = Double.compare(height, o.height);
            int bySteps = byHeight != 0 ? byHeight : Integer.compare(steps, o.steps);
            return bySteps != 0 ? bySteps : Integer.compare(cell, o.cell);
        }
    }

    private void search() {
        PriorityQueue<Front> front = new PriorityQueue<>();
        for (int i = 0; i < ground.length; i++) {
            if (wayOut[i]) {
                reach(front, i, -1, 0);
            }
        }
        spread(front);
        for (int i = lowestUnreached(); i >= 0; i = lowestUnreached()) {
            wayOut[i] = true;
            reach(front, i, -1, 0);
            spread(front);
        }
    }

    private void reach(PriorityQueue<Front> front, int cell, int from, int steps) {
        reached[cell] = true;
        back[cell] = from;
        front.add(new Front(ground[cell], steps, cell));
    }

    private void spread(PriorityQueue<Front> front) {
        while (!front.isEmpty()) {
            Front f = front.poll();
            found[f.cell] = count++;
            for (int k = 0; k < 8; k++) {
                int n = neighbour(f.cell, k);
                if (n >= 0 && !closed[n] && !reached[n]) {
                    reach(front, n, f.cell, f.steps + 1);
                }
            }
        }
    }

    private int lowestUnreached() {
        int lowest = -1;
        for (int i = 0; i < ground.length; i++) {
            if (!closed[i] && !reached[i] && (lowest < 0 || ground[i] < ground[lowest])) {
                lowest = i;
            }
        }
        return lowest;
    }

    private int next(int cell) {
        if (closed[cell] || wayOut[cell]) {
            return -1;
        }
        int best = back[cell];
        double most = 0;
        for (int k = 0; k < 8; k++) {
            int n = neighbour(cell, k);
            if (n >= 0 && !closed[n] && found[n] < found[cell] && fall(cell, n, k) > most + 1e-9) {
                most = fall(cell, n, k);
                best = n;
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
}
