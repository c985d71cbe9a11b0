package provingyard.diagnosis;

import java.util.Arrays;
import provingyard.numeric.Deterministic;

/**
 * Points at which the density of a number is looked at, with the weights of Simpson's rule: over four standard
 * deviations on either side of every mean, and only there, 65 to 241 of them.
 *
 * <p>The points lie evenly in {@code u = asinh(k y / a) / k}, with {@code sigma2(y) = a2 + k2 y2}: in u every
 * hypothesis is about equally wide (a variance-stabilising transform, textbook statistics), so that a meter that tells
 * 0 from 1 L/min and 300 from 400 is served by one grid. Where the noise hardly grows with the reading and the means
 * are far apart, points are added so that steps stay narrower than {@link #WIDEST}.
 */
final class ReadingGrid {

    private static final double REACH = 4;
    private static final int FEWEST = 65;
    private static final int MOST = 241;

    /** Usual and widest step, in standard deviations. */
    private static final double USUAL = 0.4;

    private static final double WIDEST = 0.6;

    /** Below this k the transform is a straight line. */
    private static final double NO_GROWTH = 1e-6;

    private double fixed;
    private double growth;
    private int count;
    private double[] points = new double[MOST];
    private double[] weights = new double[MOST];
    private double[] from = new double[0];
    private double[] to = new double[0];
    private int stretches;

    int count() {
        return count;
    }

    double point(int i) {
        return points[i];
    }

    double[] weights() {
        return weights;
    }

    /**
     * Lays the points.
     *
     * @param sorted means, rising, of which the first {@code means} count
     * @param sigmas their standard deviations, where they are wider than the formula's
     * @param fixedVariance a2, above 0
     * @param relativeVariance k2
     */
    void lay(
            double[] sorted,
            double[] sigmas,
            int means,
            double fixedVariance,
            double relativeVariance,
            double low,
            double high) {
        fixed = Math.sqrt(fixedVariance);
        growth = Math.sqrt(relativeVariance);
        if (from.length < means) {
            from = new double[means];
            to = new double[means];
        }
        stretches = 0;
        for (int i = 0; i < means; i++) {
            double reach = REACH * Math.max(sigmas[i], deviation(sorted[i]));
            double start = toEven(Math.max(low, Math.min(high, sorted[i] - reach)));
            double end = toEven(Math.max(low, Math.min(high, sorted[i] + reach)));
            join(start, end);
        }
        double length = 0;
        for (int s = 0; s < stretches; s++) {
            length += to[s] - from[s];
        }
        place(step(length));
    }

    /** Adds a stretch; a wide one may swallow several before it. */
    private void join(double start, double end) {
        double first = start;
        double last = end;
        while (stretches > 0 && first <= to[stretches - 1]) {
            stretches--;
            first = Math.min(first, from[stretches]);
            last = Math.max(last, to[stretches]);
        }
        from[stretches] = first;
        to[stretches++] = last;
    }

    private static double step(double length) {
        double wanted = Math.max(FEWEST, Math.min(MOST, length / USUAL));
        return Math.min(WIDEST, length / wanted);
    }

    private void place(double step) {
        count = 0;
        for (int s = 0; s < stretches; s++) {
            double length = to[s] - from[s];
            if (length > 0) {
                // Simpson's rule takes pairs of steps.
                int pairs = Math.max(1, (int) Math.ceil(length / (2 * step)));
                placeStretch(from[s], length / (2 * pairs), 2 * pairs);
            }
        }
    }

    private void placeStretch(double start, double step, int steps) {
        if (points.length < count + steps + 1) {
            points = Arrays.copyOf(points, 2 * (count + steps + 1));
            weights = Arrays.copyOf(weights, points.length);
        }
        for (int i = 0; i <= steps; i++) {
            double y = fromEven(start + i * step);
            double simpson = i == 0 || i == steps ? 1 : i % 2 == 1 ? 4 : 2;
            points[count] = y;
            weights[count++] = simpson * step / 3 * deviation(y);
        }
    }

    private double deviation(double y) {
        return Math.sqrt(fixed * fixed + growth * growth * y * y);
    }

    private double toEven(double y) {
        if (growth < NO_GROWTH) {
            return y / fixed;
        }
        double x = Math.abs(growth * y / fixed);
        return Math.copySign(Deterministic.log(x + Math.sqrt(x * x + 1)) / growth, y);
    }

    private double fromEven(double u) {
        if (growth < NO_GROWTH) {
            return u * fixed;
        }
        double e = Deterministic.exp(Math.abs(u) * growth);
        return Math.copySign(fixed / growth * (e - 1 / e) / 2, u);
    }
}
