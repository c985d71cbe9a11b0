package provingyard.ui;

import javafx.scene.Scene;
import javafx.scene.control.Alert;
import javafx.scene.control.ButtonType;
import javafx.scene.layout.Region;

/** A sentence to the user in a small window of its own, in the program's own look. */
final class Notice {

    private Notice() {}

    /** Shows a text over the window of a scene. */
    static void show(Scene over, String title, String text) {
        Alert alert = new Alert(Alert.AlertType.NONE, text, ButtonType.OK);
        alert.initOwner(over.getWindow());
        alert.setTitle(title);
        alert.setHeaderText(null);
        alert.setGraphic(null);
        alert.getDialogPane().setMinHeight(Region.USE_PREF_SIZE);
        alert.getDialogPane().getStylesheets().setAll(over.getStylesheets());
        alert.getDialogPane().getStyleClass().add("notice");
        alert.show();
    }
}
