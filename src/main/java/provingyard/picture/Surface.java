package provingyard.picture;

import java.util.function.Consumer;

/**
 * What painters draw on. Coordinates are pixels, x to the right and y down, until they are transformed. Widths, dashes
 * and gradients follow the transform. Two back ends: {@link Java2DSurface} here, and the window's canvas. All that is
 * heavy (blur, tiles) is drawn into the cached ground and top images, so the canvas may draw {@link #layer} without its
 * blur and {@link #tile} as a plain repeated image.
 */
public interface Surface {

    /** How colours meet what is drawn already. */
    enum Blend {
        NORMAL,
        MULTIPLY,
        SCREEN
    }

    /** Remembers transform, clip, alpha and blend. */
    void save();

    /** Goes back to the last remembered state. */
    void restore();

    void translate(double x, double y);

    void scale(double x, double y);

    /** Turns by degrees, clockwise on the screen while y points down. */
    void rotate(double degrees);

    /** Draws only inside a path (non-zero winding) and inside the clip so far. */
    void clip(Path path);

    /** Multiplies the alpha of all that follows. */
    void alpha(double share);

    void blend(Blend mode);

    /** Fills a path, non-zero winding. */
    void fill(Path path, Paint paint);

    /** Fills a path, even-odd: holes where outlines overlap. */
    void fillEvenOdd(Path path, Paint paint);

    void stroke(Path path, Pen pen);

    void text(String text, double x, double y, TextStyle style);

    /** Width of a text in px. */
    double textWidth(String text, FontRole role, double size);

    /** Draws a picture into a rectangle, smoothed. */
    void image(Pixels picture, double x, double y, double width, double height);

    /** Fills a path with a repeated picture, its size one pixel to one unit, anchored at the origin. */
    void tile(Path path, Pixels picture);

    /**
     * Draws on a transparent layer of the same size and transform, then puts the layer down with one alpha.
     *
     * @param alpha of the whole layer: what overlaps in it does not double
     * @param blur standard deviation in current units, 0 for none
     */
    void layer(double alpha, double blur, Consumer<Surface> painter);
}
