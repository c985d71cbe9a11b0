package provingyard.ui;

import javafx.application.Platform;
import javafx.beans.value.ChangeListener;
import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** A sheet over the window, with the rest under a veil: keys stay within it, Esc closes it, focus goes back after. */
final class Overlay extends StackPane {

    private final Scene scene;
    private final Node before;
    private final ChangeListener<Node> keeper = (o, was, is) -> keep(is);
    private boolean open = true;
    private Runnable closed = () -> {};

    private Overlay(Scene scene, Region content) {
        this.scene = scene;
        before = scene.getFocusOwner();
        getStyleClass().add("veil");
        // A sheet that is taller than the window, with large texts, scrolls.
        StackPane padded = new StackPane(content);
        // Room for the ring around what has the focus.
        padded.setStyle("-fx-padding: 8;");
        VBox sheet = new VBox(new FittingScroll(padded, FittingScroll.BAR));
        StackPane.setMargin(sheet, new Insets(16));
        sheet.getStyleClass().add("sheet");
        sheet.setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
        getChildren().add(sheet);
        setOnMousePressed(e -> {
            if (e.getTarget() == this) {
                close();
            }
            e.consume();
        });
        addEventHandler(KeyEvent.KEY_PRESSED, e -> {
            if (e.getCode() == KeyCode.ESCAPE) {
                close();
            }
            // No key reaches what lies under the veil; Tab is the scene's own.
            if (e.getCode() != KeyCode.TAB) {
                e.consume();
            }
        });
        scene.focusOwnerProperty().addListener(keeper);
    }

    /** Shows a sheet over the window of a scene whose root is a stack. */
    static Overlay show(Scene over, Region sheet) {
        Overlay overlay = new Overlay(over, sheet);
        ((StackPane) over.getRoot()).getChildren().add(overlay);
        overlay.applyCss();
        overlay.layout();
        overlay.focusFirst();
        return overlay;
    }

    /** The uppermost sheet of a scene; null when none is shown. */
    static Overlay top(Scene scene) {
        var children = ((StackPane) scene.getRoot()).getChildren();
        Node last = children.isEmpty() ? null : children.get(children.size() - 1);
        return last instanceof Overlay overlay ? overlay : null;
    }

    /** What is done when the sheet is closed. */
    Overlay then(Runnable next) {
        closed = next;
        return this;
    }

    private void keep(Node owner) {
        boolean within = owner != null && isWithin(owner);
        if (open && !within && top(scene) == this) {
            Platform.runLater(() -> {
                if (open && top(scene) == this && !isWithin(scene.getFocusOwner())) {
                    focusFirst();
                }
            });
        }
    }

    private boolean isWithin(Node node) {
        Node at = node;
        while (at != null && at != this) {
            at = at.getParent();
        }
        return at == this;
    }

    private void focusFirst() {
        Node first = firstFocusable(this);
        if (first != null) {
            first.requestFocus();
        }
    }

    private static Node firstFocusable(Parent parent) {
        for (Node node : parent.getChildrenUnmodifiable()) {
            if (!node.isVisible() || node.isDisabled()) {
                continue;
            }
            if (node.isFocusTraversable()) {
                return node;
            }
            Node within = node instanceof Parent p ? firstFocusable(p) : null;
            if (within != null) {
                return within;
            }
        }
        return null;
    }

    void close() {
        if (!open) {
            return;
        }
        open = false;
        scene.focusOwnerProperty().removeListener(keeper);
        ((StackPane) scene.getRoot()).getChildren().remove(this);
        if (before != null && before.getScene() == scene) {
            before.requestFocus();
        }
        closed.run();
    }
}
