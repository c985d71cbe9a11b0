package provingyard.world.hydraulics;

import java.util.Arrays;

/**
 * The symmetric system of equations for the change of the heads: collected link by link and outlet by outlet, factored
 * as L D L^T in the order of {@link Elimination}, and solved. Only slots joined to a source take part. By slot, a
 * conductance in m3/s per m, a right side in m3/s, a change of head in m.
 *
 * <p>Instead of the diagonal it keeps each row's excess over the off-diagonal entries, so that nothing is ever
 * subtracted and a region that hangs on a nearly shut link keeps its full accuracy (the idea of Grassmann, Taksar and
 * Heyman 1985 for such matrices).
 */
final class HeadSystem {

    private final Elimination elimination;
    private final LiveParts live;
    private final double[] excess;
    /** Entries right of the diagonal, zero or less; after {@link #factor} those of L. */
    private final double[] off;

    private final double[] inversePivot;
    private final double[] right;
    /** Work of {@link #strengthen}, zero outside it. */
    private final double[] update;

    private boolean factored;

    /** Change of the heads by slot, m, from the last {@link #moveHeads}; zero at sources. */
    final double[] change;
    /** Largest size of a change, m. */
    double largestChange;

    HeadSystem(Network network, LiveParts live) {
        elimination = network.elimination;
        this.live = live;
        int nodes = network.nodeCount();
        excess = new double[nodes];
        off = new double[elimination.row.length];
        inversePivot = new double[nodes];
        right = new double[nodes];
        update = new double[nodes];
        change = new double[nodes];
    }

    /** Whether the matrix is there as factors, so that other right sides can be solved for. */
    boolean isFactored() {
        return factored;
    }

    /** Starts a new system. */
    void clear() {
        Arrays.fill(excess, 0);
        Arrays.fill(off, 0);
        Arrays.fill(right, 0);
        factored = false;
    }

    /** Starts a new right side for the matrix as it is factored. */
    void clearRight() {
        Arrays.fill(right, 0);
    }

    /**
     * Adds a conductance to a slot's diagonal after the factors were found, which changes them in the slot and in those
     * that depend on it, from one to the next: on a tree the way to the source (method C1 of Gill, Golub, Murray and
     * Saunders 1974, from memory).
     */
    void strengthen(int slot, double conductance) {
        double[] w = update;
        double weight = conductance;
        w[slot] = 1;
        int column = slot;
        while (column >= 0) {
            double p = w[column];
            w[column] = 0;
            double pivot = 1 / inversePivot[column];
            double inverse = 1 / (pivot + weight * p * p);
            double share = weight * p * inverse;
            weight *= pivot * inverse;
            inversePivot[column] = inverse;
            int next = -1;
            for (int i = elimination.start[column + 1] - 1; i >= elimination.start[column]; i--) {
                if (off[i] != 0) {
                    next = elimination.row[i];
                    w[next] -= p * off[i];
                    off[i] += share * w[next];
                }
            }
            column = next;
        }
    }

    /** Adds an inflow at a slot to the right side. */
    void addInflow(int slot, double inflow) {
        right[slot] += inflow;
    }

    /** Adds an outlet's conductance at a slot, and what would flow in there if the head stayed. */
    void addOutlet(int slot, double conductance, double inflow) {
        excess[slot] += conductance;
        right[slot] += inflow;
    }

    /**
     * Adds a link between two slots.
     *
     * @param entry the matrix entry that joins them, -1 where one is a source
     * @param flow what would flow through it if the heads stayed
     */
    void addLink(int entry, int from, int to, double conductance, double flow) {
        if (entry >= 0) {
            off[entry] -= conductance;
        } else {
            excess[from] += conductance;
            excess[to] += conductance;
        }
        right[from] -= flow;
        right[to] += flow;
    }

    /** Adds a regulator that holds the head of its end by a stiff conductance, and passes a flow from its first slot. */
    void hold(int from, int to, double stiffness, double missing, double flow) {
        excess[to] += stiffness;
        right[to] += stiffness * missing + flow;
        right[from] -= flow;
    }

    /** L D L^T in place, with the forward sweep of the right side. */
    void factor() {
        int[] start = elimination.start;
        int[] rows = elimination.row;
        for (int a = 0; a < live.slotCount; a++) {
            int column = live.slots[a];
            int begin = start[column];
            int end = start[column + 1];
            double pivot = excess[column];
            for (int i = begin; i < end; i++) {
                pivot -= off[i];
            }
            double inverse = 1 / pivot;
            inversePivot[column] = inverse;
            if (end - begin == 1) {
                // Nearly all columns: those of a tree touch one later node only, and leave no fill.
                double factor = off[begin] * inverse;
                int row = rows[begin];
                excess[row] -= excess[column] * factor;
                right[row] -= right[column] * factor;
                off[begin] = factor;
            } else {
                eliminate(column, inverse);
            }
        }
        factored = true;
    }

    private void eliminate(int column, double inverse) {
        int[] rows = elimination.row;
        int end = elimination.start[column + 1];
        int pair = elimination.pairStart[column];
        for (int i = elimination.start[column]; i < end; i++) {
            double factor = off[i] * inverse;
            excess[rows[i]] -= excess[column] * factor;
            right[rows[i]] -= right[column] * factor;
            for (int j = i + 1; j < end; j++) {
                off[elimination.pairTarget[pair++]] -= factor * off[j];
            }
            off[i] = factor;
        }
    }

    /** The forward sweep alone, of a right side that came after the factors. */
    void sweep() {
        int[] start = elimination.start;
        int[] rows = elimination.row;
        for (int a = 0; a < live.slotCount; a++) {
            int column = live.slots[a];
            for (int i = start[column]; i < start[column + 1]; i++) {
                right[rows[i]] -= right[column] * off[i];
            }
        }
    }

    /** Back substitution: adds the change to the heads and returns it by slot; zero at sources. */
    double[] moveHeads(double[] head) {
        int[] start = elimination.start;
        int[] rows = elimination.row;
        double largest = 0;
        for (int a = live.slotCount - 1; a >= 0; a--) {
            int column = live.slots[a];
            int begin = start[column];
            int end = start[column + 1];
            double x = right[column] * inversePivot[column];
            if (end - begin == 1) {
                x -= off[begin] * change[rows[begin]];
            } else {
                for (int i = begin; i < end; i++) {
                    x -= off[i] * change[rows[i]];
                }
            }
            change[column] = x;
            head[column] += x;
            double size = Math.abs(x);
            if (size > largest) {
                largest = size;
            }
        }
        largestChange = largest;
        return change;
    }
}
