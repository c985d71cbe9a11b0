package provingyard.ui;

import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;

/** A hint on a slip of paper: what is worth trying, a way to have it shown, and a way to be left alone. */
final class HintCard extends HBox {

    private final Words words;
    private final Label text = new Label();
    private final Button example = new Button();

    HintCard(Words words, Runnable show, Runnable close) {
        super(12);
        this.words = words;
        setId("hint");
        getStyleClass().addAll("sheet", "hint");
        setAlignment(Pos.CENTER_LEFT);
        text.setId("hint-text");
        text.setWrapText(true);
        text.setMinHeight(Region.USE_PREF_SIZE);
        HBox.setHgrow(text, Priority.ALWAYS);
        example.setId("hint-example");
        words.bind(example.textProperty(), "hint.example");
        example.setMinWidth(Region.USE_PREF_SIZE);
        example.managedProperty().bind(example.visibleProperty());
        example.setOnAction(e -> show.run());
        Button shut = new Button();
        shut.setId("hint-close");
        shut.setGraphic(IconNode.of("cross", 14));
        shut.getStyleClass().add("quiet");
        shut.accessibleTextProperty().bind(words.live("hint.close"));
        shut.setOnAction(e -> close.run());
        IconNode sign = IconNode.of("hand", 22);
        sign.getStyleClass().add("hint-sign");
        getChildren().addAll(sign, text, example, shut);
        setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
    }

    void show(Hints.Hint hint) {
        text.textProperty().unbind();
        words.bind(text.textProperty(), hint.key());
        example.setVisible(hint == Hints.Hint.AFTER_RAIN || hint == Hints.Hint.NOTHING_PLACED);
    }
}
