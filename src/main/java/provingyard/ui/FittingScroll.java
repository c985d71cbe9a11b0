package provingyard.ui;

import javafx.geometry.Orientation;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;

/** A scroll pane that is as large as what it holds, where there is room, and scrolls up and down only where there is none. */
final class FittingScroll extends ScrollPane {

    /** Room for the bar beside what is held, px. */
    static final double BAR = 12;

    private final Region content;
    private final double bar;

    /**
     * Holds something.
     *
     * @param bar room beside it that the bar may take, px
     */
    FittingScroll(Region content, double bar) {
        super(content);
        this.content = content;
        this.bar = bar;
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
        return content.prefWidth(-1) + bar;
    }

    @Override
    protected double computePrefHeight(double width) {
        double within = width < 0 ? content.prefWidth(-1) : width - bar;
        return Math.ceil(content.prefHeight(within)) + insets();
    }

    private double insets() {
        return 2 + getInsets().getTop() + getInsets().getBottom();
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
