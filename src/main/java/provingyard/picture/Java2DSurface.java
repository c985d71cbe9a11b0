package provingyard.picture;

import java.awt.AlphaComposite;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Composite;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RadialGradientPaint;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.TexturePaint;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.function.Consumer;

/** The surface on a buffered image; needs no display. */
public final class Java2DSurface implements Surface {

    private static final FontRenderContext MEASURE = new FontRenderContext(null, true, true);

    private record State(Graphics2D graphics, double alpha, Blend blend) {}

    private final BufferedImage image;
    private final Deque<State> states = new ArrayDeque<>();
    private Graphics2D g;
    private double alpha = 1;
    private Blend blend = Blend.NORMAL;

    /** A surface on a new, transparent image of a size in px. */
    public Java2DSurface(int width, int height) {
        this(new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB_PRE));
    }

    /** A surface on an image of type {@link BufferedImage#TYPE_INT_ARGB_PRE}. */
    public Java2DSurface(BufferedImage image) {
        this.image = image;
        this.g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    }

    /** What was drawn; the live image, not a copy. */
    public BufferedImage image() {
        return image;
    }

    /** Lays another image over this one, a pixel on a pixel. */
    public void put(BufferedImage other) {
        AffineTransform now = g.getTransform();
        g.setTransform(new AffineTransform());
        g.drawImage(other, 0, 0, null);
        g.setTransform(now);
    }

    /** Lays another image into a rectangle in the current units, smoothed. */
    public void put(BufferedImage other, double x, double y, double width, double height) {
        AffineTransform to = AffineTransform.getTranslateInstance(x, y);
        to.scale(width / other.getWidth(), height / other.getHeight());
        g.drawImage(other, to, null);
    }

    @Override
    public void save() {
        states.push(new State(g, alpha, blend));
        g = (Graphics2D) g.create();
    }

    @Override
    public void restore() {
        g.dispose();
        State s = states.pop();
        g = s.graphics;
        alpha = s.alpha;
        blend = s.blend;
    }

    @Override
    public void translate(double x, double y) {
        g.translate(x, y);
    }

    @Override
    public void scale(double x, double y) {
        g.scale(x, y);
    }

    @Override
    public void rotate(double degrees) {
        g.rotate(Math.toRadians(degrees));
    }

    @Override
    public void clip(Path path) {
        g.clip(shape(path, Path2D.WIND_NON_ZERO));
    }

    @Override
    public void alpha(double share) {
        alpha *= share;
        g.setComposite(composite());
    }

    @Override
    public void blend(Blend mode) {
        blend = mode;
        g.setComposite(composite());
    }

    private Composite composite() {
        return blend == Blend.NORMAL
                ? AlphaComposite.getInstance(AlphaComposite.SRC_OVER, (float) alpha)
                : new BlendComposite(blend, alpha);
    }

    @Override
    public void fill(Path path, Paint paint) {
        g.setPaint(paint(paint));
        g.fill(shape(path, Path2D.WIND_NON_ZERO));
    }

    @Override
    public void fillEvenOdd(Path path, Paint paint) {
        g.setPaint(paint(paint));
        g.fill(shape(path, Path2D.WIND_EVEN_ODD));
    }

    @Override
    public void stroke(Path path, Pen pen) {
        if (pen.width() <= 0) {
            return;
        }
        g.setPaint(new Color(pen.colour().argb(), true));
        g.setStroke(stroke(pen));
        g.draw(shape(path, Path2D.WIND_NON_ZERO));
    }

    private static BasicStroke stroke(Pen pen) {
        int cap = pen.cap() == Pen.Cap.ROUND ? BasicStroke.CAP_ROUND : BasicStroke.CAP_BUTT;
        int join = pen.join() == Pen.Join.ROUND ? BasicStroke.JOIN_ROUND : BasicStroke.JOIN_MITER;
        if (pen.dash().length == 0) {
            return new BasicStroke((float) pen.width(), cap, join, 10);
        }
        float[] dash = new float[pen.dash().length];
        for (int i = 0; i < dash.length; i++) {
            dash[i] = (float) pen.dash()[i];
        }
        return new BasicStroke((float) pen.width(), cap, join, 10, dash, (float) Math.max(0, pen.phase()));
    }

    @Override
    public void text(String text, double x, double y, TextStyle style) {
        if (text.isEmpty()) {
            return;
        }
        Font font = Fonts.font(style.role(), style.size());
        double width = style.anchor() == TextStyle.Anchor.START ? 0 : textWidth(text, style.role(), style.size());
        double left = style.anchor() == TextStyle.Anchor.MIDDLE ? x - width / 2 : x - width;
        if (style.halo() != null && style.haloWidth() > 0) {
            GlyphVector glyphs = font.createGlyphVector(MEASURE, text);
            Shape outline = glyphs.getOutline((float) left, (float) y);
            g.setPaint(new Color(style.halo().argb(), true));
            g.setStroke(new BasicStroke((float) style.haloWidth(), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            g.draw(outline);
        }
        g.setFont(font);
        g.setPaint(new Color(style.colour().argb(), true));
        g.drawString(text, (float) left, (float) y);
    }

    @Override
    public double textWidth(String text, FontRole role, double size) {
        return Fonts.font(role, size).getStringBounds(text, MEASURE).getWidth();
    }

    @Override
    public void image(Pixels picture, double x, double y, double width, double height) {
        AffineTransform to = AffineTransform.getTranslateInstance(x, y);
        to.scale(width / picture.width(), height / picture.height());
        g.drawImage(buffered(picture), to, null);
    }

    @Override
    public void tile(Path path, Pixels picture) {
        Rectangle2D cell = new Rectangle2D.Double(0, 0, picture.width(), picture.height());
        g.setPaint(new TexturePaint(buffered(picture), cell));
        g.fill(shape(path, Path2D.WIND_NON_ZERO));
    }

    @Override
    public void layer(double layerAlpha, double blur, Consumer<Surface> painter) {
        Java2DSurface layer = new Java2DSurface(image.getWidth(), image.getHeight());
        AffineTransform now = g.getTransform();
        layer.g.setTransform(now);
        painter.accept(layer);
        layer.g.dispose();
        double sigma = blur * Math.sqrt(Math.abs(now.getDeterminant()));
        Rectangle drawn = drawn(layer.image, sigma > 0 ? Blur.reach(sigma) : 0);
        if (drawn.isEmpty()) {
            return;
        }
        BufferedImage part = layer.image.getSubimage(drawn.x, drawn.y, drawn.width, drawn.height);
        if (sigma > 0) {
            part = blurred(layer.image, drawn, sigma);
        }
        save();
        g.setTransform(new AffineTransform());
        alpha(layerAlpha);
        g.drawImage(part, drawn.x, drawn.y, null);
        restore();
    }

    private static int[] pixels(BufferedImage image) {
        return ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
    }

    /** Bounds of what is not transparent, widened by a margin and held to the image. */
    private static Rectangle drawn(BufferedImage image, int margin) {
        int[] px = pixels(image);
        int w = image.getWidth();
        int h = image.getHeight();
        int left = w;
        int right = -1;
        int top = h;
        int bottom = -1;
        for (int y = 0; y < h; y++) {
            for (int x = 0; x < w; x++) {
                if (px[y * w + x] != 0) {
                    left = Math.min(left, x);
                    right = Math.max(right, x);
                    top = Math.min(top, y);
                    bottom = y;
                }
            }
        }
        if (right < 0) {
            return new Rectangle();
        }
        Rectangle all = new Rectangle(
                left - margin, top - margin, right - left + 1 + 2 * margin, bottom - top + 1 + 2 * margin);
        return all.intersection(new Rectangle(0, 0, w, h));
    }

    private static BufferedImage blurred(BufferedImage image, Rectangle part, double sigma) {
        int[] from = pixels(image);
        int[] cut = new int[part.width * part.height];
        for (int y = 0; y < part.height; y++) {
            System.arraycopy(from, (part.y + y) * image.getWidth() + part.x, cut, y * part.width, part.width);
        }
        BufferedImage out = new BufferedImage(part.width, part.height, BufferedImage.TYPE_INT_ARGB_PRE);
        System.arraycopy(Blur.gaussian(cut, part.width, part.height, sigma), 0, pixels(out), 0, cut.length);
        return out;
    }

    private static java.awt.Paint paint(Paint paint) {
        if (paint instanceof Colour c) {
            return new Color(c.argb(), true);
        }
        Paint.Radial r = (Paint.Radial) paint;
        float[] at = new float[r.stops().size()];
        Color[] colours = new Color[at.length];
        for (int i = 0; i < at.length; i++) {
            at[i] = (float) r.stops().get(i).at();
            colours[i] = new Color(r.stops().get(i).colour().argb(), true);
        }
        return new RadialGradientPaint(
                new Point2D.Double(r.x(), r.y()), (float) Math.max(1e-3, r.radius()), at, colours);
    }

    private static Shape shape(Path path, int rule) {
        Path2D.Double to = new Path2D.Double(rule);
        path.walk(new Path.Walker() {
            @Override
            public void moveTo(double x, double y) {
                to.moveTo(x, y);
            }

            @Override
            public void lineTo(double x, double y) {
                to.lineTo(x, y);
            }

            @Override
            public void quadTo(double cx, double cy, double x, double y) {
                to.quadTo(cx, cy, x, y);
            }

            @Override
            public void cubicTo(double ax, double ay, double bx, double by, double x, double y) {
                to.curveTo(ax, ay, bx, by, x, y);
            }

            @Override
            public void close() {
                to.closePath();
            }
        });
        return to;
    }

    private static BufferedImage buffered(Pixels picture) {
        BufferedImage to = new BufferedImage(picture.width(), picture.height(), BufferedImage.TYPE_INT_ARGB);
        to.setRGB(0, 0, picture.width(), picture.height(), picture.argb(), 0, picture.width());
        return to;
    }
}
