package provingyard.ui;

import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;

/** Under the top bar, while a lived season is looked at: what is shown, and the ways from here. */
final class MomentStrip extends HBox {

    private final Label text = new Label();
    private final Button practise = new Button();
    private final Button own = new Button();
    private final Button debrief = new Button();

    /**
     * A strip that is not shown.
     *
     * @param toPractice tries the season otherwise from the minute shown
     * @param toOwn ends practice
     * @param toDebrief opens the debrief
     */
    MomentStrip(Words words, Runnable toPractice, Runnable toOwn, Runnable toDebrief) {
        setId("moment-strip");
        getStyleClass().add("moment-strip");
        setSpacing(10);
        setAlignment(Pos.CENTER_LEFT);
        setVisible(false);
        managedProperty().bind(visibleProperty());
        text.setId("moment-text");
        text.setWrapText(true);
        text.setMinWidth(0);
        text.setMinHeight(Region.USE_PREF_SIZE);
        text.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(text, Priority.ALWAYS);
        button(words, practise, "moment-practise", "strip.practise", toPractice);
        button(words, own, "moment-own", "strip.own", toOwn);
        button(words, debrief, "moment-debrief", "strip.debrief", toDebrief);
        debrief.getStyleClass().add("main");
        getChildren().addAll(text, practise, own, debrief);
    }

    private static void button(Words words, Button button, String id, String key, Runnable action) {
        button.setId(id);
        button.setMinWidth(Region.USE_PREF_SIZE);
        words.bind(button.textProperty(), key);
        button.setOnAction(e -> action.run());
        button.managedProperty().bind(button.visibleProperty());
    }

    /**
     * Shows it.
     *
     * @param said what is shown
     * @param practice whether the season is tried otherwise
     * @param mayPractise whether it can be tried otherwise from the minute shown
     * @param over whether there is a debrief to go to
     */
    void show(String said, boolean practice, boolean mayPractise, boolean over) {
        text.setText(said);
        own.setVisible(practice);
        practise.setVisible(mayPractise);
        debrief.setVisible(over);
        setVisible(true);
    }

    void hide() {
        setVisible(false);
    }
}
