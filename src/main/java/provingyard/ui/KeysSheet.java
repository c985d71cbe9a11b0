package provingyard.ui;

import java.util.List;
import javafx.geometry.Pos;
import javafx.geometry.VPos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** All keys by area, and what the program is not for. */
final class KeysSheet extends VBox {

    private static final int ACROSS = 4;

    /** Areas and their keys, in the order in which they are shown. */
    private static final List<List<String>> AREAS = List.of(
            List.of(
                    "keys.everywhere",
                    "keys.help",
                    "keys.language",
                    "keys.units",
                    "keys.theme",
                    "keys.settings",
                    "keys.tab",
                    "keys.escape"),
            List.of("keys.route", "keys.stops", "keys.openSite", "keys.drill"),
            List.of(
                    "keys.season",
                    "keys.play",
                    "keys.nextEvent",
                    "keys.hour",
                    "keys.day",
                    "keys.ends",
                    "keys.events",
                    "keys.schedule",
                    "keys.prove",
                    "keys.records",
                    "keys.debrief"),
            List.of(
                    "keys.yard",
                    "keys.kit",
                    "keys.take",
                    "keys.carry",
                    "keys.place",
                    "keys.select",
                    "keys.remove",
                    "keys.pan",
                    "keys.zoom",
                    "keys.whole",
                    "keys.layers",
                    "keys.things",
                    "keys.list"),
            List.of(
                    "keys.call",
                    "keys.callTools",
                    "keys.callMore",
                    "keys.callMarks",
                    "keys.callDo",
                    "keys.callWater",
                    "keys.callLeft",
                    "keys.callFinding",
                    "keys.callBack"),
            List.of(
                    "keys.callDebrief",
                    "keys.callSteps",
                    "keys.callEnds",
                    "keys.callExpert",
                    "keys.callFork",
                    "keys.callRoute"),
            List.of("keys.files", "keys.undo", "keys.redo", "keys.save", "keys.openFile"));

    private final Words words;
    private final Runnable close;

    KeysSheet(Words words, Runnable close) {
        super(12);
        this.words = words;
        this.close = close;
        setId("keys");
        getStyleClass().add("keys");
        words.follow(this, this::fill);
        fill();
    }

    private void fill() {
        Label title = new Label(words.say("keys.title"));
        title.getStyleClass().add("page-title");
        FlowPane columns = new FlowPane(16, 14);
        columns.setRowValignment(VPos.TOP);
        VBox[] column = new VBox[ACROSS];
        for (int i = 0; i < ACROSS; i++) {
            column[i] = new VBox(12);
            column[i].getStyleClass().add("keys-column");
            columns.getChildren().add(column[i]);
        }
        int[] where = {0, 1, 1, 2, 3, 3, 0};
        for (int i = 0; i < AREAS.size(); i++) {
            column[where[i]].getChildren().add(area(AREAS.get(i), words));
        }
        Label not = new Label(words.say("help.not"));
        not.setWrapText(true);
        not.getStyleClass().addAll("small", "ink2");
        not.setMinHeight(Region.USE_PREF_SIZE);
        not.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(not, Priority.ALWAYS);
        Button shut = new Button(words.say("sheet.close"));
        shut.setId("keys-close");
        shut.setMinWidth(Region.USE_PREF_SIZE);
        shut.setOnAction(e -> close.run());
        HBox foot = new HBox(16, not, shut);
        foot.setAlignment(Pos.CENTER_LEFT);
        boolean keys = !getChildren().isEmpty();
        getChildren().setAll(title, columns, new Hairline(), foot);
        if (keys) {
            shut.requestFocus();
        }
    }

    private static VBox area(List<String> keys, Words words) {
        Label head = new Label(words.say(keys.get(0)));
        head.getStyleClass().add("panel-title");
        VBox box = new VBox(5, head);
        keys.stream().skip(1).forEach(k -> box.getChildren().add(line(words.say(k))));
        return box;
    }

    /** A text such as {@code Ctrl+Z|Undo}: keys before the bar, apart by spaces, and what they do. */
    private static HBox line(String text) {
        String[] parts = text.split("\\|", 2);
        FlowPane caps = new FlowPane(3, 3);
        caps.setAlignment(Pos.TOP_LEFT);
        caps.setStyle("-fx-min-width: 7.2em; -fx-pref-width: 7.2em;");
        for (String key : parts[0].split(" ")) {
            Label cap = new Label(key);
            cap.getStyleClass().addAll("key-cap", "small");
            cap.setMinWidth(Region.USE_PREF_SIZE);
            caps.getChildren().add(cap);
        }
        Label does = new Label(parts[1]);
        does.setWrapText(true);
        does.setMinHeight(Region.USE_PREF_SIZE);
        HBox.setHgrow(does, Priority.ALWAYS);
        return new HBox(10, caps, does);
    }
}
