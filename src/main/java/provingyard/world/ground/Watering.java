package provingyard.world.ground;

/** Irrigation that landed within one minute: its depth on each cell, and which places of the runoff's way it reached. */
public final class Watering {

    private final double[] depth;
    /** One bit for each place, 64 in a word; null where it may have landed anywhere. */
    private final long[] places;

    private Watering(double[] depth, long[] places) {
        this.depth = depth;
        this.places = places;
    }

    /** No water yet, on so many cells. */
    public static Watering none(int cells) {
        return new Watering(new double[cells], new long[words(cells)]);
    }

    /** Depths in m on each cell. */
    public static Watering of(double[] depth) {
        return new Watering(depth, null);
    }

    /** Words that hold a bit for each of so many places. */
    static int words(int places) {
        return places + 63 >> 6;
    }

    /** Adds a volume (m3) that lands by a kernel on cells of an area (m2), which reach the given places. */
    void add(SprayKernel kernel, double volume, double cellArea, long[] reached) {
        kernel.addTo(depth, volume, cellArea);
        for (int w = 0; w < reached.length; w++) {
            places[w] |= reached[w];
        }
    }

    /** Depth on a cell in m. */
    public double depth(int cell) {
        return depth[cell];
    }

    /** Bits of the places reached; null where it may have landed anywhere. */
    long[] places() {
        return places;
    }
}
