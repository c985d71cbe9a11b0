package provingyard.ui;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.beans.InvalidationListener;
import javafx.beans.Observable;
import javafx.beans.WeakInvalidationListener;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;

/** A row of buttons of which one is chosen; left and right choose the neighbour. */
final class Segments<T> extends HBox {

    /** One of the choices: what it stands for, the end of its id, and its live text. */
    record Choice<T>(T value, String id, ObservableValue<String> text, String icon) {}

    private final ToggleGroup group = new ToggleGroup();
    private final Consumer<T> chosen;
    /** Kept here, because what is followed only knows it weakly. */
    private InvalidationListener follower;

    Segments(String id, List<Choice<T>> choices, T now, Consumer<T> chosen) {
        this.chosen = chosen;
        setId(id);
        getStyleClass().add("segments");
        setMaxWidth(Region.USE_PREF_SIZE);
        setMaxHeight(Region.USE_PREF_SIZE);
        choices.forEach(c -> add(id, c));
        show(now);
        addEventFilter(javafx.scene.input.KeyEvent.KEY_PRESSED, e -> {
            if (e.getCode() == KeyCode.LEFT || e.getCode() == KeyCode.RIGHT) {
                step(e.getCode() == KeyCode.RIGHT ? 1 : -1);
                e.consume();
            }
        });
    }

    private void add(String id, Choice<T> choice) {
        ToggleButton button = new ToggleButton();
        button.setId(id + "-" + choice.id());
        button.textProperty().bind(choice.text());
        button.setUserData(choice.value());
        button.setToggleGroup(group);
        button.setMinWidth(Region.USE_PREF_SIZE);
        if (choice.icon() != null) {
            button.setGraphic(IconNode.of(choice.icon(), 15));
        }
        button.setOnAction(e -> {
            // A second press does not take the choice away.
            button.setSelected(true);
            chosen.accept(choice.value());
        });
        // Tab goes to what is chosen, the arrows go on from there.
        button.setFocusTraversable(false);
        button.selectedProperty().addListener((o, was, is) -> button.setFocusTraversable(is));
        getChildren().add(button);
    }

    private void step(int by) {
        int at = getChildren().indexOf(group.getSelectedToggle());
        int to = Math.max(0, Math.min(getChildren().size() - 1, at + by));
        if (to != at) {
            ToggleButton next = (ToggleButton) getChildren().get(to);
            next.requestFocus();
            next.fire();
        }
    }

    /** Follows what is chosen elsewhere, for as long as these buttons are in use. */
    Segments<T> following(Observable source, Supplier<T> now) {
        follower = o -> show(now.get());
        source.addListener(new WeakInvalidationListener(follower));
        return this;
    }

    /** Shows what is chosen now. */
    void show(T value) {
        group.getToggles().stream()
                .filter(t -> value.equals(t.getUserData()))
                .findFirst()
                .ifPresent(t -> t.setSelected(true));
    }
}
