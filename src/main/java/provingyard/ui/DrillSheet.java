package provingyard.ui;

import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** A sheet of paper in the middle of the window: what is told scrolls where letters are large, its buttons are always seen. */
abstract class DrillSheet extends StackPane {

    final Words words;
    final DrillWords sayings;
    final VBox told = new VBox(12);
    final HBox foot = new HBox(10);

    DrillSheet(String id, Words words) {
        this.words = words;
        sayings = new DrillWords(words);
        setId(id);
        getStyleClass().add("call-opening");
        VBox sheet = new VBox(14, new FittingScroll(told, FittingScroll.BAR), foot);
        sheet.getStyleClass().addAll("sheet", "drill-sheet");
        sheet.setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
        foot.setMinHeight(Region.USE_PREF_SIZE);
        foot.setAlignment(Pos.CENTER_LEFT);
        getChildren().add(sheet);
        words.follow(this, this::again);
    }

    /** What has the focus is made anew, and keeps it. */
    private void again() {
        Node owner = getScene().getFocusOwner();
        String held = owner == null ? null : owner.getId();
        fill();
        Node same = held == null ? null : lookup("#" + held);
        if (same != null) {
            same.requestFocus();
        }
    }

    /** Tells everything anew, in the language and units of now. */
    abstract void fill();

    static Label label(String text, String... styles) {
        Label label = new Label(text);
        label.getStyleClass().addAll(styles);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        return label;
    }

    static Label plain(String text, String... styles) {
        Label label = new Label(text);
        label.getStyleClass().addAll(styles);
        label.setMinWidth(Region.USE_PREF_SIZE);
        return label;
    }

    static Region gap() {
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        return gap;
    }

    /** A sentence after a sign. */
    static HBox signed(IconNode sign, Label text) {
        HBox.setHgrow(text, Priority.ALWAYS);
        HBox row = new HBox(9, sign, text);
        row.setAlignment(Pos.CENTER_LEFT);
        return row;
    }

    /** The sign of something met or missed. */
    static IconNode sign(boolean good) {
        IconNode sign = IconNode.of(good ? "ok" : "alarm", 16);
        sign.getStyleClass().add(good ? "sign-good" : "sign-alarm");
        return sign;
    }

    Button button(String id, String key, Runnable act) {
        Button button = new Button(words.say(key));
        button.setId(id);
        button.getStyleClass().add("tall");
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.setOnAction(e -> act.run());
        return button;
    }

    Button main(String id, String key, Runnable act) {
        Button button = button(id, key, act);
        button.getStyleClass().add("main");
        button.setDefaultButton(true);
        return button;
    }
}
