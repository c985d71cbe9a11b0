package provingyard.picture;

import java.awt.Composite;
import java.awt.CompositeContext;
import java.awt.RenderingHints;
import java.awt.image.ColorModel;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;

/**
 * Multiply and screen for Java2D on images of packed ARGB, over an opaque ground. Colour = (1 - a) ground + a B(ground, source), with
 * B = ground source (multiply) or ground + source - ground source (screen): W3C Compositing and Blending, from memory.
 */
record BlendComposite(Surface.Blend mode, double alpha) implements Composite {

    @Override
    public CompositeContext createContext(ColorModel source, ColorModel ground, RenderingHints hints) {
        return new Context(source);
    }

    private final class Context implements CompositeContext {

        private final ColorModel source;

        Context(ColorModel source) {
            this.source = source;
        }

        @Override
        public void dispose() {}

        @Override
        public void compose(Raster src, Raster in, WritableRaster out) {
            int w = Math.min(src.getWidth(), in.getWidth());
            int h = Math.min(src.getHeight(), in.getHeight());
            int[] s = new int[w];
            int[] d = new int[w];
            boolean plain = source.isAlphaPremultiplied();
            for (int y = 0; y < h; y++) {
                src.getDataElements(src.getMinX(), y + src.getMinY(), w, 1, s);
                in.getDataElements(in.getMinX(), y + in.getMinY(), w, 1, d);
                for (int x = 0; x < w; x++) {
                    if (s[x] >>> 24 != 0) {
                        d[x] = blend(plain ? source.getRGB(s[x]) : s[x], d[x]);
                    }
                }
                out.setDataElements(out.getMinX(), y + out.getMinY(), w, 1, d);
            }
        }

        private int blend(int s, int d) {
            double a = (s >>> 24) / 255.0 * alpha;
            return d & 0xFF000000 | channel(s, d, 16, a) | channel(s, d, 8, a) | channel(s, d, 0, a);
        }

        private int channel(int s, int d, int shift, double a) {
            double cs = (s >> shift & 0xFF) / 255.0;
            double cd = (d >> shift & 0xFF) / 255.0;
            double b = mode == Surface.Blend.MULTIPLY ? cs * cd : cs + cd - cs * cd;
            return (int) (255 * (cd + a * (b - cd)) + 0.5) << shift;
        }
    }
}
