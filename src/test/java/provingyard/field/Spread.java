package provingyard.field;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/** A number over the seeds. */
record Spread(double mean, double least, double most) {

    static Spread of(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return new Spread(Arrays.stream(values).sum() / values.length, sorted[0], sorted[sorted.length - 1]);
    }

    /** Of several numbers with the same seeds, the mean of each seed. */
    static Spread ofMeans(List<double[]> values) {
        return of(IntStream.range(0, values.get(0).length)
                .mapToDouble(
                        i -> values.stream().mapToDouble(v -> v[i]).average().orElseThrow())
                .toArray());
    }

    /** Whether the mean lies between, both ends included. */
    boolean within(double from, double to) {
        return mean >= from && mean <= to;
    }

    /** Mean, and least to most. */
    String text(String unit) {
        return String.format(Locale.ROOT, "%.1f%s (%.1f to %.1f)", mean, unit, least, most);
    }
}
