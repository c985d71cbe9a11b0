package provingyard.world.ground;

import java.util.Arrays;

/** How evenly a zone is watered, from the depths on its cells or in catch cans. */
public final class Uniformity {

    private Uniformity() {}

    /**
     * Distribution uniformity of the lower quarter: mean of the driest quarter over the mean (0 to 1; NaN when nothing
     * landed). The quarter has n/4 places, the last one in part. Source: Merriam and Keller 1978; trade standard.
     */
    public static double lowerQuarter(double[] depths) {
        double[] sorted = depths.clone();
        Arrays.sort(sorted);
        double quarter = sorted.length / 4.0;
        int whole = (int) quarter;
        double low = 0;
        for (int i = 0; i < whole; i++) {
            low += sorted[i];
        }
        if (whole < sorted.length) {
            low += (quarter - whole) * sorted[whole];
        }
        return low / quarter / mean(sorted);
    }

    /** Christiansen's coefficient: 1 - mean absolute deviation / mean (NaN when nothing landed). Christiansen 1942. */
    public static double christiansen(double[] depths) {
        double mean = mean(depths);
        double off = 0;
        for (double depth : depths) {
            off += Math.abs(depth - mean);
        }
        return 1 - off / depths.length / mean;
    }

    private static double mean(double[] depths) {
        double sum = 0;
        for (double depth : depths) {
            sum += depth;
        }
        return sum / depths.length;
    }
}
