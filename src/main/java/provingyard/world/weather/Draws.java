package provingyard.world.weather;

import org.apache.commons.rng.UniformRandomProvider;
import provingyard.numeric.Deterministic;

/** Random numbers of the shapes the weather needs, from a sequential generator. */
final class Draws {

    private Draws() {}

    /** Standard normal number; Box and Muller 1958, the cosine half. */
    static double gaussian(UniformRandomProvider random) {
        double u = 1.0 - random.nextDouble();
        double v = random.nextDouble();
        return Math.sqrt(-2.0 * Deterministic.log(u)) * Deterministic.cos(2.0 * Math.PI * v);
    }

    /** Exponential number of this mean. */
    static double exponential(UniformRandomProvider random, double mean) {
        return -mean * Deterministic.log(1.0 - random.nextDouble());
    }

    /** Gamma number of shape alpha and scale beta (mean alpha times beta); Marsaglia and Tsang 2000. */
    static double gamma(UniformRandomProvider random, double alpha, double beta) {
        if (alpha < 1.0) {
            double boost = Deterministic.pow(1.0 - random.nextDouble(), 1.0 / alpha);
            return gamma(random, alpha + 1.0, beta) * boost;
        }
        double d = alpha - 1.0 / 3.0;
        double c = 1.0 / Math.sqrt(9.0 * d);
        while (true) {
            double x = gaussian(random);
            double v = 1.0 + c * x;
            if (v <= 0.0) {
                continue;
            }
            double cube = v * v * v;
            double u = 1.0 - random.nextDouble();
            if (Deterministic.log(u) < 0.5 * x * x + d - d * cube + d * Deterministic.log(cube)) {
                return d * cube * beta;
            }
        }
    }
}
