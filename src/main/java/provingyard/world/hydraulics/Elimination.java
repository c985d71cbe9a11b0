package provingyard.world.hydraulics;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;

/**
 * Order and fill pattern for factoring the symmetric node matrix as L D L^T, found once per topology.
 *
 * <p>Order: nodes with one neighbour first, in the order they turn up (the branches of a yard fall away without fill),
 * then minimum degree (Tinney and Walker 1967), ties by index. The node eliminated k-th has slot k; each column lists
 * the later slots it touches, and for every pair of these where the update goes.
 */
final class Elimination {

    /** Number of unknown nodes. */
    final int size;
    /** Node index by slot. */
    final int[] nodeOf;
    /** First entry of each column, length size + 1. */
    final int[] start;
    /** Row slot of each entry, rising within a column. */
    final int[] row;
    /** First pair of each column, length size + 1. */
    final int[] pairStart;
    /** Entry that the pair (a, b), a before b in the column, updates. */
    final int[] pairTarget;

    private Elimination(int size, int[] nodeOf, List<int[]> columns) {
        this.size = size;
        this.nodeOf = nodeOf;
        start = new int[size + 1];
        pairStart = new int[size + 1];
        for (int k = 0; k < size; k++) {
            int entries = columns.get(k).length;
            start[k + 1] = start[k] + entries;
            pairStart[k + 1] = pairStart[k] + entries * (entries - 1) / 2;
        }
        row = new int[start[size]];
        pairTarget = new int[pairStart[size]];
        for (int k = 0; k < size; k++) {
            System.arraycopy(columns.get(k), 0, row, start[k], columns.get(k).length);
        }
        fillTargets();
    }

    private void fillTargets() {
        for (int k = 0; k < size; k++) {
            int pair = pairStart[k];
            for (int a = start[k]; a < start[k + 1]; a++) {
                for (int b = a + 1; b < start[k + 1]; b++) {
                    pairTarget[pair++] = entry(row[a], row[b]);
                }
            }
        }
    }

    /** The entry of two different slots, or -1 where the pattern has none. */
    int entry(int slotA, int slotB) {
        int column = Math.min(slotA, slotB);
        int found = Arrays.binarySearch(row, start[column], start[column + 1], Math.max(slotA, slotB));
        return found < 0 ? -1 : found;
    }

    /**
     * Finds order and pattern.
     *
     * @param size number of unknown nodes, 0 to size - 1
     * @param ends pairs of nodes joined by a link
     */
    static Elimination of(int size, List<int[]> ends) {
        List<TreeSet<Integer>> neighbours = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            neighbours.add(new TreeSet<>());
        }
        for (int[] pair : ends) {
            if (pair[0] != pair[1]) {
                neighbours.get(pair[0]).add(pair[1]);
                neighbours.get(pair[1]).add(pair[0]);
            }
        }
        int[] nodeOf = new int[size];
        int[] slotOf = new int[size];
        Arrays.fill(slotOf, -1);
        List<TreeSet<Integer>> touched = new ArrayList<>();
        ArrayDeque<Integer> leaves = new ArrayDeque<>();
        for (int i = 0; i < size; i++) {
            if (neighbours.get(i).size() <= 1) {
                leaves.add(i);
            }
        }
        for (int k = 0; k < size; k++) {
            int node = next(neighbours, slotOf, leaves);
            nodeOf[k] = node;
            slotOf[node] = k;
            touched.add(neighbours.get(node));
            eliminate(node, neighbours, leaves);
        }
        List<int[]> columns = new ArrayList<>();
        for (TreeSet<Integer> column : touched) {
            columns.add(column.stream().mapToInt(n -> slotOf[n]).sorted().toArray());
        }
        return new Elimination(size, nodeOf, columns);
    }

    private static int next(List<TreeSet<Integer>> neighbours, int[] slotOf, ArrayDeque<Integer> leaves) {
        while (!leaves.isEmpty()) {
            int leaf = leaves.poll();
            if (slotOf[leaf] < 0) {
                return leaf;
            }
        }
        int best = -1;
        for (int i = 0; i < slotOf.length; i++) {
            if (slotOf[i] < 0
                    && (best < 0
                            || neighbours.get(i).size() < neighbours.get(best).size())) {
                best = i;
            }
        }
        return best;
    }

    private static void eliminate(int node, List<TreeSet<Integer>> neighbours, ArrayDeque<Integer> leaves) {
        for (int a : neighbours.get(node)) {
            TreeSet<Integer> own = neighbours.get(a);
            own.remove(node);
            for (int b : neighbours.get(node)) {
                if (a != b) {
                    own.add(b);
                }
            }
        }
        for (int a : neighbours.get(node)) {
            if (neighbours.get(a).size() <= 1) {
                leaves.add(a);
            }
        }
    }
}
