package provingyard.ui;

import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.shape.SVGPath;
import javafx.scene.transform.Scale;

/** The program's sign: a stake with a drop on a strip of lawn, on a grid of 40. */
final class BrandSign extends StackPane {

    private static final double GRID = 40;

    BrandSign(double size) {
        javafx.scene.Group group = new javafx.scene.Group(
                part("M2 31C10 26 30 26 38 31V38H2Z", "brand-lawn"),
                part("M18.6 18H21.4V34H18.6Z", "brand-stake"),
                part("M20 2A10 10 0 1 1 19.99 2Z", "brand-disc"),
                part(
                        "M20 5.6C20 5.6 15.8 10.6 15.8 13.2A4.2 4.2 0 0 0 24.2 13.2C24.2 10.6 20 5.6 20 5.6Z",
                        "brand-drop"));
        group.getTransforms().add(new Scale(size / GRID, size / GRID));
        getChildren().add(new javafx.scene.Group(group));
        setMinSize(size, Region.USE_PREF_SIZE);
        setMouseTransparent(true);
    }

    private static SVGPath part(String outline, String style) {
        SVGPath path = new SVGPath();
        path.setContent(outline);
        path.getStyleClass().add(style);
        return path;
    }
}
