package provingyard.ui;

import javafx.scene.layout.Region;

/** A share of a whole as a bar: a score, which ends at the mark's tick, or a season under way. */
final class ScoreBar extends Region {

    private final double share;
    private final boolean underWay;
    private final Region well = new Region();
    private final Region full = new Region();
    private final Region mark = new Region();

    ScoreBar(double share, boolean underWay) {
        this.share = share;
        this.underWay = underWay;
        getStyleClass().add("score-bar");
        well.getStyleClass().add("score-well");
        full.getStyleClass().add(underWay ? "score-under-way" : "score-full");
        mark.getStyleClass().add("score-mark");
        mark.setVisible(!underWay);
        getChildren().addAll(well, full, mark);
        setMinWidth(24);
    }

    @Override
    protected void layoutChildren() {
        double h = getHeight();
        double thick = Math.max(4, Math.round(h * 0.42));
        double y = Math.round((h - thick) / 2);
        double w = getWidth() - (underWay ? 0 : 2);
        well.resizeRelocate(0, y, w, thick);
        full.resizeRelocate(0, y, Math.round(w * share), thick);
        mark.resizeRelocate(getWidth() - 2, 0, 2, h);
    }
}
