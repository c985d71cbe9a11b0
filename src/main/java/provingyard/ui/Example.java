package provingyard.ui;

import java.util.List;
import javafx.beans.binding.Bindings;
import javafx.geometry.Bounds;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/**
 * A short annotated example over a yard: five notes that point at the real controls, which stay in use under them. Left
 * and right turn the notes, Esc puts them away.
 */
final class Example extends Pane {

    /** A note: the id of the control that it points at, and its text's key. */
    private record Step(String target, String key) {}

    private static final List<Step> STEPS = List.of(
            new Step("yard", "example.yard"),
            new Step("kit-RAIN", "example.kit"),
            new Step("yard", "example.sky"),
            new Step("play", "example.play"),
            new Step("ribbon-band", "example.ribbon"));

    private static final double GAP = 18;
    private static final double EDGE = 8;

    private final Pane under;
    private final Words words;
    private final Runnable end;
    private final Region ring = new Region();
    private final VBox note = new VBox(10);
    private final Label text = new Label();
    private final Label count = new Label();
    private final Button back = new Button();
    private final Button next = new Button();
    private int at;

    /**
     * Notes over a pane.
     *
     * @param end told once, when the notes are put away
     */
    Example(Pane under, Words words, Runnable end) {
        this.under = under;
        this.words = words;
        this.end = end;
        setId("example");
        setPickOnBounds(false);
        ring.getStyleClass().add("example-ring");
        ring.setMouseTransparent(true);
        ring.setManaged(false);
        note.setId("example-note");
        note.getStyleClass().addAll("sheet", "example-note");
        text.setId("example-text");
        text.setWrapText(true);
        text.setMinHeight(Region.USE_PREF_SIZE);
        note.getChildren().addAll(text, buttons());
        getChildren().addAll(ring, note);
        addEventFilter(KeyEvent.KEY_PRESSED, this::key);
        turn(0);
    }

    private HBox buttons() {
        Button skip = new Button();
        skip.setId("example-skip");
        skip.getStyleClass().add("quiet");
        words.bind(skip.textProperty(), "example.skip");
        skip.setOnAction(e -> end.run());
        back.setId("example-back");
        words.bind(back.textProperty(), "example.back");
        back.setOnAction(e -> turn(-1));
        next.setId("example-next");
        next.getStyleClass().add("main");
        next.setOnAction(e -> turn(1));
        count.getStyleClass().addAll("small", "ink2");
        Region gap = new Region();
        HBox.setHgrow(gap, javafx.scene.layout.Priority.ALWAYS);
        HBox row = new HBox(8, count, gap, skip, back, next);
        row.getChildren().forEach(n -> ((Region) n).setMinWidth(Region.USE_PREF_SIZE));
        gap.setMinWidth(0);
        row.setAlignment(Pos.CENTER_LEFT);
        return row;
    }

    private void key(KeyEvent e) {
        if (e.getCode() == KeyCode.ESCAPE) {
            end.run();
        } else if (e.getCode() == KeyCode.RIGHT) {
            turn(1);
        } else if (e.getCode() == KeyCode.LEFT) {
            turn(-1);
        } else {
            return;
        }
        e.consume();
    }

    private void turn(int by) {
        if (at + by >= STEPS.size()) {
            end.run();
            return;
        }
        at = Math.max(0, at + by);
        text.textProperty().unbind();
        words.bind(text.textProperty(), STEPS.get(at).key());
        count.textProperty().unbind();
        words.bind(count.textProperty(), "example.count", at + 1, STEPS.size());
        next.textProperty().unbind();
        boolean last = at == STEPS.size() - 1;
        next.textProperty()
                .bind(Bindings.createStringBinding(
                        () -> words.say(last ? "example.done" : "example.next"), words.languageChanges()));
        back.setVisible(at > 0);
        note.accessibleTextProperty().unbind();
        note.accessibleTextProperty().bind(text.textProperty());
        requestLayout();
    }

    /** Puts the focus on the button that turns to the next note. */
    void focusNext() {
        next.requestFocus();
    }

    @Override
    protected void layoutChildren() {
        double width = Math.min(getWidth() - 2 * EDGE, note.prefWidth(-1));
        double height = note.prefHeight(width);
        Node target = under.lookup("#" + STEPS.get(at).target());
        boolean seen = target != null && target.isVisible() && target.getScene() != null;
        ring.setVisible(seen && !STEPS.get(at).target().equals("yard"));
        if (!seen || !ring.isVisible()) {
            note.resizeRelocate(Math.round((getWidth() - width) / 2), Math.round(getHeight() * 0.16), width, height);
            return;
        }
        Bounds on = sceneToLocal(target.localToScene(target.getLayoutBounds()));
        ring.resizeRelocate(on.getMinX() - 4, on.getMinY() - 4, on.getWidth() + 8, on.getHeight() + 8);
        boolean beside = on.getMaxX() + GAP + width < getWidth() && on.getHeight() < getHeight() / 2;
        boolean above = on.getMinY() - GAP - height > 0;
        boolean wide = on.getWidth() > 1.5 * width;
        double x = wide ? on.getCenterX() - width / 2 : on.getMinX();
        double y = on.getMaxY() + GAP;
        if (above && on.getMinY() > getHeight() / 2) {
            y = on.getMinY() - GAP - height;
        } else if (beside) {
            x = on.getMaxX() + GAP;
            y = on.getMinY();
        }
        note.resizeRelocate(
                Math.round(Math.max(EDGE, Math.min(getWidth() - width - EDGE, x))),
                Math.round(Math.max(EDGE, Math.min(getHeight() - height - EDGE, y))),
                width,
                height);
    }
}
