package provingyard.ui;

import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** A service call's debrief in its window: the plan beside the rest where there is room, else one below the other. */
final class CallDebriefColumns {

    private static final double LEFT_EM = 35.7;

    /** em that the right column takes at most; the plan takes the rest, up to a share of the window. */
    private static final double RIGHT_EM = 75;

    private static final double LEFT_SHARE = 0.45;
    private static final double BESIDE_FROM = 84;

    private final double em;

    CallDebriefColumns(double em) {
        this.em = em;
    }

    /** Whether a width has room for two columns. */
    boolean beside(double width) {
        return width >= BESIDE_FROM * em;
    }

    Node of(VBox left, VBox right, double width) {
        return beside(width) ? both(left, right, width) : one(left, right);
    }

    private Node both(VBox left, VBox right, double room) {
        ScrollPane leftScroll = scroll(left);
        ScrollPane rightScroll = scroll(right);
        double width = Math.round(Math.max(LEFT_EM * em, Math.min(LEFT_SHARE * room, room - RIGHT_EM * em)));
        leftScroll.setMinWidth(width);
        leftScroll.setPrefWidth(width);
        left.setPadding(new Insets(0, 10, 16, 4));
        HBox both = new HBox(18, leftScroll, rightScroll);
        HBox.setHgrow(rightScroll, Priority.ALWAYS);
        both.setPadding(new Insets(14, 8, 0, 16));
        return both;
    }

    private static Node one(VBox left, VBox right) {
        ScrollPane pane = scroll(new VBox(18, left, right));
        VBox box = new VBox(pane);
        VBox.setVgrow(pane, Priority.ALWAYS);
        box.setPadding(new Insets(14, 8, 0, 16));
        return box;
    }

    private static ScrollPane scroll(Region content) {
        ScrollPane pane = new ScrollPane(content);
        pane.setFitToWidth(true);
        pane.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        pane.setMinHeight(0);
        pane.setFocusTraversable(false);
        return pane;
    }
}
