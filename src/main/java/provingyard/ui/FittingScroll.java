package provingyard.ui;

import javafx.geometry.Orientation;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;

/** A scroll pane that is as large as what it holds, where there is room, and scrolls up and down only where there is none. */
final class FittingScroll extends ScrollPane {

    /** Room for the bar, px. */
    private static final double BAR = 12;

    private final Region content;

    FittingScroll(Region content) {
        super(content);
        this.content = content;
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        setFocusTraversable(false);
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected double computePrefWidth(double height) {
        return content.prefWidth(-1) + BAR;
    }

    @Override
    protected double computePrefHeight(double width) {
        double within = width < 0 ? content.prefWidth(-1) : width - BAR;
        return Math.ceil(content.prefHeight(within)) + 2;
    }

    @Override
    protected double computeMinWidth(double height) {
        return 0;
    }

    @Override
    protected double computeMinHeight(double width) {
        return 0;
    }
}
