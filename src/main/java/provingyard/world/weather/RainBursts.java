package provingyard.world.weather;

import org.apache.commons.rng.UniformRandomProvider;
import provingyard.numeric.Deterministic;

/**
 * Rain of a day as seeded bursts with minute intensities; the depth is kept to the last bit.
 *
 * <p>A day has one burst and one more for about each 6 mm, at most six, each of 20 to 120 min with gaps of 40 min in
 * the mean, the whole anywhere in the day. A burst rises to a peak in its first part and falls, roughened by
 * lognormal noise (Huff 1967: most of a storm's rain falls early; the numbers are an own choice, no source).
 */
final class RainBursts {

    private static final int MOST_BURSTS = 6;
    private static final double DEPTH_PER_BURST = 0.006;
    private static final double MEAN_GAP = 40.0;
    private static final double FLOOR = 0.1;
    private static final double ROUGHNESS = 0.5;

    private RainBursts() {}

    /** Adds a day's depth in m to the minutes from {@code dayStart}. */
    static void fillDay(double[] rain, int dayStart, double depth, UniformRandomProvider random) {
        int bursts = 1 + Math.min(MOST_BURSTS - 1, (int) (depth / DEPTH_PER_BURST + random.nextDouble()));
        double[] length = new double[bursts];
        double[] gap = new double[bursts];
        double total = 0.0;
        for (int i = 0; i < bursts; i++) {
            length[i] = 20.0 + 100.0 * random.nextDouble();
            gap[i] = i == 0 ? 0.0 : Draws.exponential(random, MEAN_GAP);
            total += length[i] + gap[i];
        }
        double scale = Math.min(1.0, (SeasonSun.MINUTES - bursts) / total);
        double[] weight = new double[SeasonSun.MINUTES];
        double at = Math.floor((SeasonSun.MINUTES - total * scale) * random.nextDouble());
        for (int i = 0; i < bursts; i++) {
            at += gap[i] * scale;
            double strength = 0.5 + random.nextDouble();
            burst(weight, (int) at, (int) (length[i] * scale), strength, random);
            at += length[i] * scale;
        }
        spread(rain, dayStart, weight, depth);
    }

    /** Lets {@code depth} m fall as one burst in the minutes from {@code start}, cut at the end of the series. */
    static void fillSpell(double[] rain, int start, int minutes, double depth, UniformRandomProvider random) {
        int length = Math.min(minutes, rain.length - start);
        if (length > 0 && depth > 0.0) {
            double[] weight = new double[length];
            burst(weight, 0, length, 1.0, random);
            spread(rain, start, weight, depth);
        }
    }

    private static void burst(double[] weight, int start, int minutes, double strength, UniformRandomProvider random) {
        double peak = 0.1 + 0.4 * random.nextDouble();
        for (int i = 0; i < minutes && start + i < weight.length; i++) {
            double x = (i + 0.5) / minutes;
            double shape = x < peak ? x / peak : (1.0 - x) / (1.0 - peak);
            double rough = Deterministic.exp(ROUGHNESS * Draws.gaussian(random));
            weight[start + i] = strength * (FLOOR + shape) * rough;
        }
    }

    /** The last wet minute takes what rounding left, so that the sum in time order is the depth exactly. */
    private static void spread(double[] rain, int start, double[] weight, double depth) {
        double sum = 0.0;
        int last = 0;
        for (int i = 0; i < weight.length; i++) {
            sum += weight[i];
            last = weight[i] > 0.0 ? i : last;
        }
        double fallen = 0.0;
        for (int i = 0; i < last; i++) {
            double part = depth * (weight[i] / sum);
            rain[start + i] += part;
            fallen += part;
        }
        rain[start + last] += Math.max(0.0, depth - fallen);
    }
}
