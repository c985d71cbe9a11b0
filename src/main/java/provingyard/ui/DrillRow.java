package provingyard.ui;

import javafx.geometry.Orientation;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import provingyard.drill.Deck;
import provingyard.drill.Progress;

/** The way into the drill deck from the route sheet. */
final class DrillRow extends Button {

    private final HBox row = new HBox(12);

    DrillRow(Runnable open) {
        setId("drill-open");
        getStyleClass().add("drill-row");
        setMaxWidth(Double.MAX_VALUE);
        setContentDisplay(ContentDisplay.GRAPHIC_ONLY);
        setOnAction(e -> open.run());
        row.setAlignment(Pos.CENTER_LEFT);
        row.prefWidthProperty().bind(widthProperty().subtract(30));
        setGraphic(row);
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    /** As high as its words need at this width: a button by itself asks for the height of words in a narrow column. */
    @Override
    protected double computePrefHeight(double width) {
        double within =
                width < 0 ? -1 : width - getInsets().getLeft() - getInsets().getRight();
        return row.prefHeight(within) + getInsets().getTop() + getInsets().getBottom();
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    /** Shows how far a learner came. */
    void show(Progress progress, Words words) {
        StackPane sign = new StackPane(IconNode.of("deck", 20));
        sign.getStyleClass().add("kit-icon");
        String what = words.say("drill.row", Deck.CARDS);
        String far = new DrillWords(words).mastered(progress);
        Label name = new Label(words.say("drill.title"));
        name.getStyleClass().add("strong");
        Label told = DrillSheet.label(what, "small", "ink2");
        VBox texts = new VBox(name, told);
        texts.setAlignment(Pos.CENTER_LEFT);
        texts.setMinWidth(0);
        HBox.setHgrow(texts, Priority.ALWAYS);
        Label mastered = DrillSheet.plain(far, "small", "strong");
        row.getChildren().setAll(sign, texts, mastered, IconNode.of("fwd", 14));
        setAccessibleText(words.say("drill.rowAccessible", what, far));
    }
}
