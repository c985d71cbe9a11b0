package provingyard.picture;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;

/**
 * A blur close to Gaussian: three box blurs in a row. Box width d = floor(3 sigma sqrt(2 pi) / 4 + 0.5), as the SVG
 * filter specification gives for feGaussianBlur (from memory).
 */
final class Blur {

    private Blur() {}

    /** Blurs a premultiplied ARGB image in place; sigma in px. */
    static void gaussian(BufferedImage image, double sigma) {
        int box = (int) Math.floor(sigma * 3 * Math.sqrt(2 * Math.PI) / 4 + 0.5);
        if (box < 2) {
            return;
        }
        int w = image.getWidth();
        int h = image.getHeight();
        int[] px = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
        int[] line = new int[Math.max(w, h)];
        int[] back = new int[line.length];
        int before = box / 2;
        for (int pass = 0; pass < 3; pass++) {
            // An even box lies half a pixel off: the passes lean left and right in turn.
            int lead = box % 2 == 0 && pass == 1 ? before - 1 : before;
            for (int y = 0; y < h; y++) {
                System.arraycopy(px, y * w, line, 0, w);
                box(line, back, w, box, lead);
                System.arraycopy(back, 0, px, y * w, w);
            }
            for (int x = 0; x < w; x++) {
                for (int y = 0; y < h; y++) {
                    line[y] = px[y * w + x];
                }
                box(line, back, h, box, lead);
                for (int y = 0; y < h; y++) {
                    px[y * w + x] = back[y];
                }
            }
        }
    }

    private static void box(int[] from, int[] to, int n, int width, int lead) {
        int a = 0;
        int r = 0;
        int g = 0;
        int b = 0;
        int end = width - lead - 1;
        for (int i = -width; i < n; i++) {
            int in = i + end;
            if (in >= 0 && in < n) {
                a += from[in] >>> 24;
                r += from[in] >> 16 & 0xFF;
                g += from[in] >> 8 & 0xFF;
                b += from[in] & 0xFF;
            }
            if (i >= 0) {
                to[i] = a / width << 24 | r / width << 16 | g / width << 8 | b / width;
            }
            int out = i - lead;
            if (out >= 0 && out < n) {
                a -= from[out] >>> 24;
                r -= from[out] >> 16 & 0xFF;
                g -= from[out] >> 8 & 0xFF;
                b -= from[out] & 0xFF;
            }
        }
    }
}
