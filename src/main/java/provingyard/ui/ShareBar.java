package provingyard.ui;

import javafx.geometry.HPos;
import javafx.geometry.VPos;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.text.Text;

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
     * @param longest the longest of the values' texts
     */
    record Scale(double lost, double gained, String longest) {

        /** Share of the room between the values that lies left of zero. */
        double left() {
            double span = lost + gained;
            return span <= 0 ? 0.5 : lost / span;
        }
    }

    private final double value;
    private final Scale scale;
    private final Region bar = new Region();
    private final Region zero = new Region();
    private final Label text;
    private final Text measure;

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
        measure = new Text(scale.longest());
        measure.fontProperty().bind(text.fontProperty());
        bar.getStyleClass().add(value > 0 ? "share-lost" : "share-gained");
        bar.setVisible(value != 0);
        zero.getStyleClass().add("share-zero");
        getChildren().addAll(bar, text, zero);
        setMinWidth(60);
    }

    /** Names of both sides over the bars of a list. */
    static Region head(Scale scale, Label lost, Label gained) {
        return new Region() {
            {
                getChildren().addAll(lost, gained);
                setMinWidth(60);
            }

            @Override
            protected double computePrefHeight(double width) {
                return lost.prefHeight(-1);
            }

            @Override
            protected void layoutChildren() {
                Text longest = new Text(scale.longest());
                longest.setFont(lost.getFont());
                double at = zero(getWidth(), longest.getLayoutBounds().getWidth() * 1.25, scale);
                double wide = lost.prefWidth(-1);
                // Where there is no room before the zero line, both stand after it.
                double x = Math.max(0, at - GAP - wide);
                layoutInArea(lost, x, 0, wide, getHeight(), 0, HPos.LEFT, VPos.CENTER);
                double after = Math.max(at + GAP, x + wide + 2 * GAP);
                layoutInArea(gained, after, 0, gained.prefWidth(-1), getHeight(), 0, HPos.LEFT, VPos.CENTER);
            }
        };
    }

    /** Room for a value's text on a side; a side without bars needs next to none. */
    private static double room(double longest, double most) {
        return most > 0 ? longest + 2 * GAP : 2 * GAP;
    }

    private static double free(double width, double longest, Scale scale) {
        return Math.max(0, width - room(longest, scale.lost()) - room(longest, scale.gained()));
    }

    private static double zero(double width, double longest, Scale scale) {
        return Math.round(room(longest, scale.lost()) + free(width, longest, scale) * scale.left());
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
        double longest = measure.getLayoutBounds().getWidth();
        double at = zero(getWidth(), longest, scale);
        double free = free(getWidth(), longest, scale);
        double most = Math.max(1e-9, scale.lost() + scale.gained());
        double width = value == 0 ? 0 : Math.max(LEAST, Math.round(free * Math.abs(value) / most));
        zero.resizeRelocate(at - 1, 0, 2, getHeight());
        bar.resizeRelocate(value > 0 ? at - width : at + 1, Math.round((getHeight() - THICK) / 2), width, THICK);
        double wide = Math.ceil(text.prefWidth(-1));
        double x = value < 0 || value == 0 && scale.lost() <= 0 ? at + 1 + width + GAP : at - width - GAP - wide;
        layoutInArea(text, x, 0, wide, getHeight(), 0, HPos.LEFT, VPos.CENTER);
    }
}
