package provingyard.ui;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.BoundingBox;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.ComboBoxBase;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Slider;
import javafx.scene.control.TextInputControl;
import javafx.scene.text.Text;

/**
 * Walks what a scene shows and names every text that is cut short, sticks out of its window or panel, or lies over
 * another text or control of the same sheet.
 */
final class TextFit {

    /** px by which boxes may touch, since letters have air around them. */
    private static final double TOUCH = 2.5;

    private record Seen(Node node, Bounds box, Node sheet) {}

    private final List<String> faults = new ArrayList<>();
    private final List<Seen> seen = new ArrayList<>();

    private TextFit() {}

    /** Faults of a scene, in the order of its nodes; must be called on the window's thread. */
    static List<String> faults(Scene scene) {
        TextFit fit = new TextFit();
        Parent root = scene.getRoot();
        root.applyCss();
        root.layout();
        fit.walk(root, new BoundingBox(0, 0, scene.getWidth(), scene.getHeight()), root);
        fit.overlaps();
        return fit.faults;
    }

    private void walk(Node node, Bounds window, Node sheet) {
        if (!node.isVisible() || node.getOpacity() == 0) {
            return;
        }
        Node on = node.getStyleClass().contains("sheet") ? node : sheet;
        Bounds through = through(node, window);
        if (node instanceof Labeled labeled && !text(labeled).isBlank()) {
            look(labeled, window, on);
        } else if (control(node)) {
            see(node, node.localToScene(node.getLayoutBounds()), window, on);
        }
        if (node instanceof ComboBoxBase<?> box) {
            lookInto(box, window);
        }
        if (node instanceof Parent parent && !control(node)) {
            for (Node child : parent.getChildrenUnmodifiable()) {
                walk(child, through, on);
            }
        }
    }

    /** What a closed choice shows is a text of its own inside it. */
    private void lookInto(ComboBoxBase<?> box, Bounds window) {
        for (Node child : box.getChildrenUnmodifiable()) {
            if (child instanceof Labeled shown
                    && cut(shown)
                    && common(shown.localToScene(shown.getLayoutBounds()), window) != null) {
                faults.add(name(box) + ": " + name(shown) + " is cut");
            }
        }
    }

    private static boolean cut(Labeled labeled) {
        return labeled.getChildrenUnmodifiable().stream()
                .anyMatch(c -> c instanceof Text drawn && !drawn.getText().equals(text(labeled)));
    }

    private static boolean control(Node node) {
        return node instanceof TextInputControl || node instanceof Slider || node instanceof ComboBoxBase<?>;
    }

    /** What of a window is seen through a node: a scroll pane shows only its viewport. */
    private static Bounds through(Node node, Bounds window) {
        return node instanceof ScrollPane || node.getClip() != null
                ? common(window, node.localToScene(node.getLayoutBounds()))
                : window;
    }

    private static String text(Labeled labeled) {
        return labeled.getText() == null ? "" : labeled.getText();
    }

    private void look(Labeled labeled, Bounds window, Node sheet) {
        for (Node child : labeled.getChildrenUnmodifiable()) {
            if (child instanceof Text drawn && drawn.isVisible()) {
                Bounds box = drawn.localToScene(drawn.getLayoutBounds());
                if (!drawn.getText().equals(text(labeled)) && common(box, window) != null) {
                    faults.add(name(labeled) + " is cut to “" + drawn.getText() + "”");
                }
                see(labeled, box, window, sheet);
            }
        }
    }

    private void see(Node node, Bounds box, Bounds window, Node sheet) {
        Bounds part = common(box, window);
        if (part == null) {
            return;
        }
        if (part.getWidth() < box.getWidth() - TOUCH) {
            faults.add(name(node) + " sticks out sideways");
        }
        seen.add(new Seen(node, part, sheet));
    }

    private void overlaps() {
        for (int i = 0; i < seen.size(); i++) {
            for (int j = i + 1; j < seen.size(); j++) {
                Seen a = seen.get(i);
                Seen b = seen.get(j);
                Bounds both = common(a.box, b.box);
                boolean over = a.sheet == b.sheet
                        && both != null
                        && both.getWidth() > TOUCH
                        && both.getHeight() > TOUCH
                        && !within(a.node, b.node)
                        && !within(b.node, a.node);
                if (over) {
                    faults.add(name(a.node) + " and " + name(b.node) + " lie over each other");
                }
            }
        }
    }

    private static boolean within(Node inner, Node outer) {
        for (Node n = inner; n != null; n = n.getParent()) {
            if (n == outer) {
                return true;
            }
        }
        return false;
    }

    private static Bounds common(Bounds a, Bounds b) {
        if (a == null || b == null) {
            return null;
        }
        double x = Math.max(a.getMinX(), b.getMinX());
        double y = Math.max(a.getMinY(), b.getMinY());
        double w = Math.min(a.getMaxX(), b.getMaxX()) - x;
        double h = Math.min(a.getMaxY(), b.getMaxY()) - y;
        return w <= 0 || h <= 0 ? null : new BoundingBox(x, y, w, h);
    }

    private static String name(Node node) {
        String text = node instanceof Labeled l ? text(l) : node.getAccessibleText();
        String id = node.getId() == null ? node.getClass().getSimpleName() : "#" + node.getId();
        return text == null || text.isBlank() ? id : id + " “" + text + "”";
    }
}
