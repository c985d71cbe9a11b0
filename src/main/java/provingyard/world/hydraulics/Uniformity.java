package provingyard.world.hydraulics;

import java.util.Arrays;

/** How evenly water falls, from catches of equal areas (cans or cells), as shares from 0 to 1. */
public final class Uniformity {

    private Uniformity() {}

    /**
     * Lower-quarter distribution uniformity DU: mean of the lowest quarter over the mean of all (Merriam and Keller
     * 1978). Where a quarter is no whole number of catches, the next catch counts by the part needed.
     *
     * @param catches depths or volumes, zero or more, at least one, not all zero; otherwise NaN
     */
    public static double lowerQuarter(double[] catches) {
        double[] sorted = catches.clone();
        Arrays.sort(sorted);
        double quarter = sorted.length / 4.0;
        double low = 0;
        for (int i = 0; i < sorted.length && i < quarter; i++) {
            low += sorted[i] * Math.min(1, quarter - i);
        }
        return low / quarter / mean(catches);
    }

    /** Christiansen's coefficient CU: 1 - sum |x - mean| / sum x (Christiansen 1942); input as {@link #lowerQuarter}. */
    public static double christiansen(double[] catches) {
        double mean = mean(catches);
        double deviation = 0;
        for (double x : catches) {
            deviation += Math.abs(x - mean);
        }
        return 1 - deviation / (mean * catches.length);
    }

    private static double mean(double[] catches) {
        double sum = 0;
        for (double x : catches) {
            sum += x;
        }
        return sum / catches.length;
    }
}
