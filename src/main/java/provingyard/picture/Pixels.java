package provingyard.picture;

/**
 * A small picture of plain values.
 *
 * @param argb row by row from the top, not premultiplied; never changed once made
 */
public record Pixels(int width, int height, int[] argb) {

    public Pixels {
        if (argb.length != width * height) {
            throw new IllegalArgumentException("pixels do not fill " + width + " x " + height);
        }
    }
}
