package provingyard.picture;

import java.awt.Composite;
import java.awt.CompositeContext;
import java.awt.RenderingHints;
import java.awt.image.ColorModel;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;

/**
 * Multiply and screen for Java2D, over an opaque ground. Colour = (1 - a) ground + a B(ground, source), with
 * B = ground source (multiply) or ground + source - ground source (screen): W3C Compositing and Blending, from memory.
 */
record BlendComposite(Surface.Blend mode, double alpha) implements Composite {

    @Override
    public CompositeContext createContext(ColorModel source, ColorModel ground, RenderingHints hints) {
        return new Context(source, ground);
    }

    private final class Context implements CompositeContext {

        private final ColorModel source;
        private final ColorModel ground;

        Context(ColorModel source, ColorModel ground) {
            this.source = source;
            this.ground = ground;
        }

        @Override
        public void dispose() {}

        @Override
        public void compose(Raster src, Raster in, WritableRaster out) {
            int w = Math.min(src.getWidth(), in.getWidth());
            int h = Math.min(src.getHeight(), in.getHeight());
            Object s = null;
            Object d = null;
            Object o = null;
            for (int y = 0; y < h; y++) {
                for (int x = 0; x < w; x++) {
                    s = src.getDataElements(x + src.getMinX(), y + src.getMinY(), s);
                    d = in.getDataElements(x + in.getMinX(), y + in.getMinY(), d);
                    o = ground.getDataElements(blend(source.getRGB(s), ground.getRGB(d)), o);
                    out.setDataElements(x + out.getMinX(), y + out.getMinY(), o);
                }
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
            return (int) Math.round(255 * (cd + a * (b - cd))) << shift;
        }
    }
}
