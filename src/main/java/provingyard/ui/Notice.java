package provingyard.ui;

import javafx.geometry.Pos;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** A sentence to the user over the window, in the program's own look; or a question with two answers. */
final class Notice {

    private static final double WIDTH = 34;

    private Notice() {}

    /** Shows a text over the window of a scene. */
    static Overlay show(Scene over, String title, String text) {
        Button ok = answer("notice-ok", "OK", true);
        Overlay shown = Overlay.show(over, sheet(over, title, text, ok));
        ok.setOnAction(e -> shown.close());
        return shown;
    }

    /** Asks; only the first answer does something. */
    static void ask(Scene over, String title, String text, String yes, String no, Runnable then) {
        Button keep = answer("notice-no", no, false);
        Button go = answer("notice-yes", yes, true);
        Overlay shown = Overlay.show(over, sheet(over, title, text, keep, go));
        keep.setOnAction(e -> shown.close());
        go.setOnAction(e -> {
            shown.close();
            then.run();
        });
    }

    private static Button answer(String id, String text, boolean main) {
        Button button = new Button(text);
        button.setId(id);
        button.setMinWidth(Region.USE_PREF_SIZE);
        if (main) {
            button.getStyleClass().add("main");
        }
        return button;
    }

    private static VBox sheet(Scene over, String title, String text, Button... answers) {
        Label head = new Label(title);
        head.getStyleClass().add("section-title");
        head.setWrapText(true);
        head.setMinHeight(Region.USE_PREF_SIZE);
        Label body = new Label(text);
        body.setId("notice-text");
        body.setWrapText(true);
        body.setMinHeight(Region.USE_PREF_SIZE);
        HBox row = new HBox(10, answers);
        row.setAlignment(Pos.CENTER_RIGHT);
        row.setStyle("-fx-padding: 0.6em 0 0 0;");
        VBox sheet = new VBox(10, head, body, row);
        sheet.setId("notice");
        sheet.getStyleClass().add("notice");
        sheet.setStyle("-fx-pref-width: " + WIDTH + "em;");
        sheet.setAccessibleText(title + ". " + text);
        return sheet;
    }
}
