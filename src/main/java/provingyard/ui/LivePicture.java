package provingyard.ui;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.nio.IntBuffer;
import java.util.Arrays;
import java.util.function.Consumer;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.image.PixelBuffer;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import provingyard.picture.Java2DSurface;

/**
 * A picture on the window that is drawn anew as often as wished. Many thin strokes spread over a wide picture cost
 * the toolkit's software canvas a mask of all of it for each; here they cost what they cover. Two buffers take turns, so
 * that none is drawn on while the renderer reads it.
 */
final class LivePicture {

    /** Pixels that painters draw on and the window shows. */
    private record Buffer(BufferedImage picture, int[] data, PixelBuffer<IntBuffer> pixels, Image image) {

        static Buffer of(int width, int height) {
            BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB_PRE);
            int[] data = ((DataBufferInt) picture.getRaster().getDataBuffer()).getData();
            PixelBuffer<IntBuffer> pixels =
                    new PixelBuffer<>(width, height, IntBuffer.wrap(data), PixelFormat.getIntArgbPreInstance());
            return new Buffer(picture, data, pixels, new WritableImage(pixels));
        }
    }

    private final ImageView node = new ImageView();
    private Buffer shown;
    private Buffer spare;
    private double density = 1;

    LivePicture() {
        node.setMouseTransparent(true);
        node.setSmooth(false);
    }

    ImageView node() {
        return node;
    }

    /** Gives it a size in px, and pixels to one px. */
    void size(double width, double height, double pixels) {
        int w = Math.max(1, (int) Math.ceil(width * pixels));
        int h = Math.max(1, (int) Math.ceil(height * pixels));
        if (shown == null || shown.picture().getWidth() != w || shown.picture().getHeight() != h) {
            shown = Buffer.of(w, h);
            spare = Buffer.of(w, h);
        }
        density = pixels;
        node.setFitWidth(w / pixels);
        node.setFitHeight(h / pixels);
    }

    /** Draws it anew over opaque pixels of just its size. */
    void draw(int[] ground, Consumer<Java2DSurface> painter) {
        System.arraycopy(ground, 0, spare.data(), 0, ground.length);
        paint(painter);
    }

    /** Whether a picture has just its size. */
    boolean fits(int width, int height) {
        return spare.picture().getWidth() == width && spare.picture().getHeight() == height;
    }

    /** Draws it anew on nothing. */
    void draw(Consumer<Java2DSurface> painter) {
        Arrays.fill(spare.data(), 0);
        paint(painter);
    }

    private void paint(Consumer<Java2DSurface> painter) {
        Buffer next = spare;
        Java2DSurface surface = new Java2DSurface(next.picture());
        surface.scale(density, density);
        painter.accept(surface);
        next.pixels().updateBuffer(buffer -> null);
        node.setImage(next.image());
        spare = shown;
        shown = next;
    }
}
