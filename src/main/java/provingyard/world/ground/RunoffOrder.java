package provingyard.world.ground;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;

/**
 * An order of cells, each before the one that takes its runoff, in which cells of one kind follow each other in as few and
 * as long stretches as a plain search finds: water then moves over a stretch in one loop.
 */
final class RunoffOrder {

    private final int[] downhill;
    private final int[] kind;
    /** Cells above each that have not been placed yet. */
    private final int[] waitsFor;

    private final List<Queue<Integer>> ready = new ArrayList<>();
    private final int[] order;
    private int placed;

    private RunoffOrder(int[] downhill, int[] kind, int kinds) {
        this.downhill = downhill;
        this.kind = kind;
        waitsFor = new int[kind.length];
        order = new int[kind.length];
        for (int below : downhill) {
            if (below >= 0) {
                waitsFor[below]++;
            }
        }
        for (int k = 0; k < kinds; k++) {
            ready.add(new ArrayDeque<>());
        }
    }

    /**
     * The cells by kind where runoff lets them.
     *
     * @param downhill cell that takes each cell's runoff; -1 off the site; no rings
     * @param kind of each cell, from 0 to {@code kinds} - 1
     */
    static int[] grouped(int[] downhill, int[] kind, int kinds) {
        RunoffOrder search = new RunoffOrder(downhill, kind, kinds);
        for (int c = 0; c < kind.length; c++) {
            if (search.waitsFor[c] == 0) {
                search.ready.get(kind[c]).add(c);
            }
        }
        for (int k = 0; search.placed < kind.length; k = (k + 1) % kinds) {
            search.placeAll(search.ready.get(k));
        }
        return search.order;
    }

    private void placeAll(Queue<Integer> cells) {
        while (!cells.isEmpty()) {
            int cell = cells.remove();
            order[placed++] = cell;
            int below = downhill[cell];
            if (below >= 0 && --waitsFor[below] == 0) {
                ready.get(kind[below]).add(below);
            }
        }
    }
}
