package provingyard.picture;

import provingyard.numeric.RandomStreams;

/** Value noise as a tile that repeats without a seam: lattices of 4, 2 and 1 px. */
final class Grain {

    private static final int SIDE = 256;

    /** Lawn: dark green specks. */
    static final Pixels LAWN = tile("lawn", 0x293D14, 0.36, 3);

    /** Paving: fine grey specks. */
    static final Pixels PAVING = tile("paving", 0x333024, 0.45, 2);

    private Grain() {}

    private static Pixels tile(String name, int rgb, double floor, int octaves) {
        double[] sum = new double[SIDE * SIDE];
        long key = new RandomStreams(0).key("grain " + name);
        for (int o = 0; o < octaves; o++) {
            add(sum, key + o, (octaves == 3 ? 4 : 2) >> o, 1.0 / octaves);
        }
        int[] argb = new int[sum.length];
        for (int i = 0; i < sum.length; i++) {
            double a = Math.max(0, Math.min(1, (sum[i] - floor) * 2.2));
            argb[i] = (int) Math.round(a * 255) << 24 | rgb;
        }
        return new Pixels(SIDE, SIDE, argb);
    }

    private static void add(double[] sum, long key, int step, double weight) {
        int n = SIDE / step;
        for (int y = 0; y < SIDE; y++) {
            int y0 = y / step;
            double v = (double) (y % step) / step;
            for (int x = 0; x < SIDE; x++) {
                int x0 = x / step;
                double u = (double) (x % step) / step;
                double low = mix(at(key, n, x0, y0), at(key, n, x0 + 1, y0), u);
                double high = mix(at(key, n, x0, y0 + 1), at(key, n, x0 + 1, y0 + 1), u);
                sum[y * SIDE + x] += weight * mix(low, high, v);
            }
        }
    }

    private static double at(long key, int n, int x, int y) {
        return RandomStreams.uniform(key, (long) (y % n) * n + x % n);
    }

    private static double mix(double a, double b, double t) {
        double smooth = t * t * (3 - 2 * t);
        return a + (b - a) * smooth;
    }
}
