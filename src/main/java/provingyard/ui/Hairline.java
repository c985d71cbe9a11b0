package provingyard.ui;

import javafx.scene.layout.Region;

/** The only line between rows. */
final class Hairline extends Region {

    Hairline() {
        getStyleClass().add("hairline");
    }
}
