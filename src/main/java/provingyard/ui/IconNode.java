package provingyard.ui;

import javafx.scene.Group;
import javafx.scene.layout.StackPane;
import javafx.scene.shape.FillRule;
import javafx.scene.shape.SVGPath;
import javafx.scene.transform.Scale;
import provingyard.picture.Icons;

/** One of the program's icons as a node that takes its colour from the style sheet. */
final class IconNode extends StackPane {

    private static final double GRID = 24;

    IconNode(Icons.Icon icon, double size) {
        Group group = new Group();
        if (!icon.fill().isEmpty()) {
            SVGPath fill = new SVGPath();
            fill.setContent(icon.fill());
            fill.setFillRule(FillRule.EVEN_ODD);
            fill.getStyleClass().add("icon-fill");
            group.getChildren().add(fill);
        }
        if (!icon.line().isEmpty()) {
            SVGPath line = new SVGPath();
            line.setContent(icon.line());
            line.getStyleClass().add("icon-line");
            group.getChildren().add(line);
        }
        group.getTransforms().add(new Scale(size / GRID, size / GRID));
        Group bounds = new Group(group);
        bounds.setMouseTransparent(true);
        getChildren().add(bounds);
        setMinSize(size, size);
        setPrefSize(size, size);
        setMaxSize(size, size);
        setMouseTransparent(true);
    }

    static IconNode of(String name, double size) {
        return new IconNode(Icons.get(name), size);
    }
}
