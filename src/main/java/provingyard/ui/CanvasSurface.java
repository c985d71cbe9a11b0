package provingyard.ui;

import java.io.IOException;
import java.io.InputStream;
import java.nio.IntBuffer;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.Consumer;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.effect.BlendMode;
import javafx.scene.image.Image;
import javafx.scene.image.PixelBuffer;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.paint.Color;
import javafx.scene.paint.CycleMethod;
import javafx.scene.paint.ImagePattern;
import javafx.scene.paint.RadialGradient;
import javafx.scene.paint.Stop;
import javafx.scene.shape.FillRule;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;
import provingyard.picture.Colour;
import provingyard.picture.FontRole;
import provingyard.picture.Fonts;
import provingyard.picture.Paint;
import provingyard.picture.Path;
import provingyard.picture.Pen;
import provingyard.picture.Pixels;
import provingyard.picture.Surface;
import provingyard.picture.TextStyle;

/** The painters' surface on a JavaFX canvas. Layers are drawn straight, without their blur: heavy things are cached. */
final class CanvasSurface implements Surface {

    private static final Map<FontRole, String> FAMILIES = new EnumMap<>(FontRole.class);

    private final GraphicsContext g;

    CanvasSurface(GraphicsContext graphics) {
        g = graphics;
    }

    /** The JavaFX name of a face, loaded from the program's fonts once. */
    static Font font(FontRole role, double size) {
        String name = FAMILIES.computeIfAbsent(role, CanvasSurface::load);
        return new Font(name, size);
    }

    private static String load(FontRole role) {
        try (InputStream in = Fonts.open(role)) {
            Font font = Font.loadFont(in, 14);
            return font == null ? "System" : font.getName();
        } catch (IOException e) {
            return "System";
        }
    }

    @Override
    public void save() {
        g.save();
    }

    @Override
    public void restore() {
        g.restore();
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
        g.rotate(degrees);
    }

    @Override
    public void clip(Path path) {
        trace(path);
        g.clip();
    }

    @Override
    public void alpha(double share) {
        g.setGlobalAlpha(g.getGlobalAlpha() * share);
    }

    @Override
    public void blend(Blend mode) {
        g.setGlobalBlendMode(
                switch (mode) {
                    case NORMAL -> BlendMode.SRC_OVER;
                    case MULTIPLY -> BlendMode.MULTIPLY;
                    case SCREEN -> BlendMode.SCREEN;
                });
    }

    @Override
    public void fill(Path path, Paint paint) {
        g.setFillRule(FillRule.NON_ZERO);
        g.setFill(paint(paint));
        trace(path);
        g.fill();
    }

    @Override
    public void fillEvenOdd(Path path, Paint paint) {
        g.setFillRule(FillRule.EVEN_ODD);
        g.setFill(paint(paint));
        trace(path);
        g.fill();
    }

    @Override
    public void stroke(Path path, Pen pen) {
        if (pen.width() <= 0) {
            return;
        }
        g.setStroke(colour(pen.colour()));
        g.setLineWidth(pen.width());
        g.setLineCap(pen.cap() == Pen.Cap.ROUND ? StrokeLineCap.ROUND : StrokeLineCap.BUTT);
        g.setLineJoin(pen.join() == Pen.Join.ROUND ? StrokeLineJoin.ROUND : StrokeLineJoin.MITER);
        g.setLineDashes(pen.dash());
        g.setLineDashOffset(pen.phase());
        trace(path);
        g.stroke();
        g.setLineDashes();
    }

    @Override
    public void text(String text, double x, double y, TextStyle style) {
        if (text.isEmpty()) {
            return;
        }
        g.setFont(font(style.role(), style.size()));
        g.setTextBaseline(VPos.BASELINE);
        g.setTextAlign(
                switch (style.anchor()) {
                    case START -> TextAlignment.LEFT;
                    case MIDDLE -> TextAlignment.CENTER;
                    case END -> TextAlignment.RIGHT;
                });
        if (style.halo() != null && style.haloWidth() > 0) {
            g.setStroke(colour(style.halo()));
            g.setLineWidth(style.haloWidth());
            g.setLineJoin(StrokeLineJoin.ROUND);
            g.setLineDashes();
            g.strokeText(text, x, y);
        }
        g.setFill(colour(style.colour()));
        g.fillText(text, x, y);
    }

    @Override
    public double textWidth(String text, FontRole role, double size) {
        javafx.scene.text.Text measure = new javafx.scene.text.Text(text);
        measure.setFont(font(role, size));
        return measure.getLayoutBounds().getWidth();
    }

    @Override
    public void image(Pixels picture, double x, double y, double width, double height) {
        g.drawImage(image(picture), x, y, width, height);
    }

    @Override
    public void tile(Path path, Pixels picture) {
        g.setFill(new ImagePattern(image(picture), 0, 0, picture.width(), picture.height(), false));
        trace(path);
        g.fill();
    }

    @Override
    public void layer(double alpha, double blur, Consumer<Surface> painter) {
        g.save();
        alpha(alpha);
        painter.accept(this);
        g.restore();
    }

    /** A picture as JavaFX has it. */
    static Image image(Pixels picture) {
        int[] premultiplied = new int[picture.argb().length];
        for (int i = 0; i < premultiplied.length; i++) {
            premultiplied[i] = premultiply(picture.argb()[i]);
        }
        return new WritableImage(new PixelBuffer<>(
                picture.width(), picture.height(), IntBuffer.wrap(premultiplied), PixelFormat.getIntArgbPreInstance()));
    }

    private static int premultiply(int argb) {
        int a = argb >>> 24;
        int r = (argb >> 16 & 255) * a / 255;
        int green = (argb >> 8 & 255) * a / 255;
        int b = (argb & 255) * a / 255;
        return a << 24 | r << 16 | green << 8 | b;
    }

    private static javafx.scene.paint.Paint paint(Paint paint) {
        if (paint instanceof Colour c) {
            return colour(c);
        }
        Paint.Radial r = (Paint.Radial) paint;
        Stop[] stops = r.stops().stream()
                .map(s -> new Stop(s.at(), colour(s.colour())))
                .toArray(Stop[]::new);
        return new RadialGradient(0, 0, r.x(), r.y(), Math.max(1e-3, r.radius()), false, CycleMethod.NO_CYCLE, stops);
    }

    private static Color colour(Colour c) {
        return Color.rgb(c.red(), c.green(), c.blue(), c.alpha() / 255.0);
    }

    private void trace(Path path) {
        g.beginPath();
        path.walk(new Path.Walker() {
            @Override
            public void moveTo(double x, double y) {
                g.moveTo(x, y);
            }

            @Override
            public void lineTo(double x, double y) {
                g.lineTo(x, y);
            }

            @Override
            public void quadTo(double cx, double cy, double x, double y) {
                g.quadraticCurveTo(cx, cy, x, y);
            }

            @Override
            public void cubicTo(double ax, double ay, double bx, double by, double x, double y) {
                g.bezierCurveTo(ax, ay, bx, by, x, y);
            }

            @Override
            public void close() {
                g.closePath();
            }
        });
    }
}
