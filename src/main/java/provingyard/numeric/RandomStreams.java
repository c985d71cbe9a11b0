package provingyard.numeric;

import java.nio.charset.StandardCharsets;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;

/**
 * Named random streams of one season: each stream is derived from (seed, stable name) alone, so adding a sensor never
 * shifts the weather or another sensor's noise.
 *
 * <p>Two forms: a sequential generator for things drawn once in order (the weather), and keyed numbers that depend on
 * (seed, name, n) only, so that a replay from any tick needs no generator state (sensor noise by tick).
 *
 * <p>Sources: xoshiro256++ (Blackman and Vigna 2021) as in Apache Commons RNG; keyed numbers are the n-th output of
 * SplitMix64 (Steele, Lea and Flood 2014); names are hashed by 64-bit FNV-1a (Fowler, Noll, Vo).
 */
public final class RandomStreams {

    private static final long FNV_OFFSET = 0xcbf29ce484222325L;
    private static final long FNV_PRIME = 0x100000001b3L;
    private static final long GOLDEN_GAMMA = 0x9e3779b97f4a7c15L;

    private final long seed;

    /** Streams of one season; the same seed gives the same streams for ever. */
    public RandomStreams(long seed) {
        this.seed = seed;
    }

    /** The season's seed. */
    public long seed() {
        return seed;
    }

    /** A fresh sequential generator for the named stream, for example {@code weather.rain}. */
    public UniformRandomProvider sequence(String name) {
        return RandomSource.XO_SHI_RO_256_PP.create(key(name));
    }

    /** A key for keyed numbers; compute it once per stream and keep it. */
    public long key(String name) {
        long hash = FNV_OFFSET;
        for (byte b : name.getBytes(StandardCharsets.UTF_8)) {
            hash = (hash ^ (b & 0xff)) * FNV_PRIME;
        }
        return mix(hash + mix(seed + GOLDEN_GAMMA));
    }

    /** Uniform number in [0, 1) that depends on the key and n only. */
    public static double uniform(long key, long n) {
        return (bits(key, n) >>> 11) * 0x1.0p-53;
    }

    /** Standard normal number (mean 0, variance 1) that depends on the key and n only (Box and Muller 1958). */
    public static double gaussian(long key, long n) {
        double u = 1.0 - uniform(key, 2 * n);
        double v = uniform(key, 2 * n + 1);
        return Math.sqrt(-2.0 * Deterministic.log(u)) * Deterministic.cos(2.0 * Math.PI * v);
    }

    /**
     * Another number of the same law that depends on the key and n only, for what is drawn each minute: it costs a
     * fraction (the ziggurat of Marsaglia and Tsang 2000). What is drawn once, such as a unit's quirks, keeps
     * {@link #gaussian}, so that the units of a known site stay what they are.
     */
    public static double noise(long key, long n) {
        return Ziggurat.normal(bits(key, n));
    }

    /** Random bits that depend on the key and n only. */
    static long bits(long key, long n) {
        return mix(key + (n + 1) * GOLDEN_GAMMA);
    }

    private static long mix(long z) {
        long x = (z ^ (z >>> 30)) * 0xbf58476d1ce4e5b9L;
        x = (x ^ (x >>> 27)) * 0x94d049bb133111ebL;
        return x ^ (x >>> 31);
    }
}
