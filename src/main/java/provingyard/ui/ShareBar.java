package provingyard.ui;

import javafx.geometry.HPos;
import javafx.geometry.VPos;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;

/**
 * A signed amount around a zero line that all bars of a list share: what was lost fills to the left, what was gained
 * stands hollow to the right, the value at the bar's end.
 */
final class ShareBar extends Region {

    private static final double THICK = 16;
    private static final double GAP = 8;
    private static final double LEAST = 3;

    /**
     * What all bars of a list are measured by.
     *
     * @param lost largest amount lost
     * @param gained largest amount gained
     */
    record Scale(double lost, double gained) {}

    private final double value;
    private final Scale scale;
    private final Region bar = new Region();
    private final Region zero = new Region();
    private final Label text;

    /**
     * A bar.
     *
     * @param value lost (positive) or gained (negative)
     * @param shown the value as text, with its sign
     */
    ShareBar(double value, Scale scale, String shown) {
        this.value = value;
        this.scale = scale;
        text = new Label(shown);
        text.getStyleClass().add("strong");
        text.getStyleClass().add(value > 0 ? "share-lost-text" : value < 0 ? "share-gained-text" : "ink2");
        bar.getStyleClass().add(value > 0 ? "share-lost" : "share-gained");
        bar.setVisible(value != 0);
        zero.getStyleClass().add("share-zero");
        getChildren().addAll(bar, text, zero);
        setMinWidth(60);
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    @Override
    protected double computePrefHeight(double width) {
        return Math.ceil(Math.max(THICK, text.prefHeight(-1)) + 16);
    }

    @Override
    protected double computePrefWidth(double height) {
        return 260;
    }

    @Override
    protected void layoutChildren() {
        double room = Math.ceil(text.prefWidth(-1)) + GAP;
        double widest = Math.max(room, 76);
        double span = Math.max(1e-9, scale.lost() + scale.gained());
        double free = Math.max(0, getWidth() - 2 * widest);
        double at = Math.round(widest + free * scale.lost() / span);
        double mid = getHeight() / 2;
        double width = Math.abs(value) < 1e-9 ? 0 : Math.max(LEAST, Math.round(free * Math.abs(value) / span));
        zero.resizeRelocate(at - 1, 0, 2, getHeight());
        bar.resizeRelocate(value > 0 ? at - width : at + 1, Math.round(mid - THICK / 2), width, THICK);
        double textWidth = room - GAP;
        double x = value > 0 || value == 0 ? at - width - GAP - textWidth : at + 1 + width + GAP;
        layoutInArea(text, x, 0, textWidth, getHeight(), 0, HPos.LEFT, VPos.CENTER);
    }
}
