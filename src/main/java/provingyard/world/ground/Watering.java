package provingyard.world.ground;

import java.util.Arrays;
import java.util.BitSet;

/** Irrigation that landed within one minute: its depth on each cell, and which places of the runoff's way it reached. */
public final class Watering {

    private final double[] depth;
    /** Places reached; null where it may have landed anywhere. */
    private final BitSet places;

    private Watering(double[] depth, BitSet places) {
        this.depth = depth;
        this.places = places;
    }

    /** No water yet, on so many cells. */
    public static Watering none(int cells) {
        return new Watering(new double[cells], new BitSet(cells));
    }

    /** Depths in m on each cell. */
    public static Watering of(double[] depth) {
        return new Watering(depth, null);
    }

    /** Takes all water away, so that another minute's may land here; of what was made by {@link #none} alone. */
    public void clear() {
        Arrays.fill(depth, 0);
        places.clear();
    }

    /** Adds a volume (m3) that lands by a kernel on cells of an area (m2), which reach the given places. */
    void add(SprayKernel kernel, double volume, double cellArea, BitSet reached) {
        kernel.addTo(depth, volume, cellArea);
        places.or(reached);
    }

    /** Depth on a cell in m. */
    public double depth(int cell) {
        return depth[cell];
    }

    /** Places reached; null where it may have landed anywhere. */
    BitSet places() {
        return places;
    }
}
