package provingyard.picture;

import java.util.Arrays;

/**
 * A blur close to Gaussian: three box blurs in a row. Box width d = floor(3 sigma sqrt(2 pi) / 4 + 0.5), as the SVG
 * filter specification gives for feGaussianBlur (from memory).
 */
final class Blur {

    private Blur() {}

    /** How far a blur of sigma px reaches, px. */
    static int reach(double sigma) {
        return box(sigma) * 3 / 2 + 2;
    }

    private static int box(double sigma) {
        return (int) Math.floor(sigma * 3 * Math.sqrt(2 * Math.PI) / 4 + 0.5);
    }

    /** Blurs premultiplied ARGB pixels of w by h; sigma in px. Returns the blurred pixels, perhaps the same array. */
    static int[] gaussian(int[] px, int w, int h, double sigma) {
        int box = box(sigma);
        if (box < 2) {
            return px;
        }
        int[] a = px;
        int[] b = new int[px.length];
        for (int pass = 0; pass < 3; pass++) {
            // An even box lies half a pixel off: the passes lean left and right in turn.
            int lead = box % 2 == 0 && pass == 1 ? box / 2 - 1 : box / 2;
            rows(a, b, w, h, box, lead);
            columns(b, a, w, h, box, lead);
        }
        return a;
    }

    private static void rows(int[] from, int[] to, int w, int h, int box, int lead) {
        float part = 1f / box + 1e-7f;
        for (int y = 0; y < h; y++) {
            int row = y * w;
            int a = 0;
            int r = 0;
            int g = 0;
            int b = 0;
            for (int i = -box; i < w; i++) {
                int in = i + box - lead - 1;
                if (in >= 0 && in < w) {
                    int p = from[row + in];
                    a += p >>> 24;
                    r += p >> 16 & 0xFF;
                    g += p >> 8 & 0xFF;
                    b += p & 0xFF;
                }
                if (i >= 0) {
                    to[row + i] = pack(a, r, g, b, part);
                }
                int out = i - lead;
                if (out >= 0 && out < w) {
                    int p = from[row + out];
                    a -= p >>> 24;
                    r -= p >> 16 & 0xFF;
                    g -= p >> 8 & 0xFF;
                    b -= p & 0xFF;
                }
            }
        }
    }

    /** Row by row with a sum for each column, as memory lies in rows. */
    private static void columns(int[] from, int[] to, int w, int h, int box, int lead) {
        float part = 1f / box + 1e-7f;
        int[] sums = new int[4 * w];
        Arrays.fill(sums, 0);
        for (int i = -box; i < h; i++) {
            int in = i + box - lead - 1;
            if (in >= 0 && in < h) {
                add(sums, from, in * w, w, 1);
            }
            if (i >= 0) {
                for (int x = 0; x < w; x++) {
                    to[i * w + x] = pack(sums[4 * x], sums[4 * x + 1], sums[4 * x + 2], sums[4 * x + 3], part);
                }
            }
            int out = i - lead;
            if (out >= 0 && out < h) {
                add(sums, from, out * w, w, -1);
            }
        }
    }

    private static void add(int[] sums, int[] from, int row, int w, int sign) {
        for (int x = 0; x < w; x++) {
            int p = from[row + x];
            sums[4 * x] += sign * (p >>> 24);
            sums[4 * x + 1] += sign * (p >> 16 & 0xFF);
            sums[4 * x + 2] += sign * (p >> 8 & 0xFF);
            sums[4 * x + 3] += sign * (p & 0xFF);
        }
    }

    private static int pack(int a, int r, int g, int b, float part) {
        return (int) (a * part) << 24 | (int) (r * part) << 16 | (int) (g * part) << 8 | (int) (b * part);
    }
}
