package provingyard.ui;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.geometry.Rectangle2D;
import javafx.scene.Scene;
import javafx.scene.SnapshotParameters;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.transform.Scale;
import javax.imageio.ImageIO;

/** A picture of what a scene shows. */
final class Shot {

    private Shot() {}

    /** The scene's pixels at so many pixels to a unit; must be called on the window's thread. */
    static BufferedImage of(Scene scene, double scale) {
        SnapshotParameters how = new SnapshotParameters();
        how.setFill(scene.getFill());
        how.setTransform(new Scale(scale, scale));
        int width = (int) Math.round(scene.getWidth() * scale);
        int height = (int) Math.round(scene.getHeight() * scale);
        how.setViewport(new Rectangle2D(0, 0, width, height));
        WritableImage taken = scene.getRoot().snapshot(how, new WritableImage(width, height));
        int[] argb = new int[width * height];
        taken.getPixelReader().getPixels(0, 0, width, height, PixelFormat.getIntArgbInstance(), argb, 0, width);
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        image.setRGB(0, 0, width, height, argb, 0, width);
        return image;
    }

    static void write(BufferedImage image, Path file) {
        try {
            Files.createDirectories(file.getParent());
            ImageIO.write(image, "png", file.toFile());
        } catch (IOException e) {
            throw new IllegalStateException("picture not written: " + file, e);
        }
    }
}
