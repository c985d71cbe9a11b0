package provingyard.ui;

import javafx.geometry.Orientation;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.layout.Region;
import provingyard.picture.Java2DSurface;
import provingyard.picture.Surface;

/** A chart in a panel: as wide as there is room, as tall as it needs, its texts as large as the program's. */
final class ChartPane extends Region {

    /** Draws in a width and gives the height taken, px. */
    interface Chart {
        double draw(Surface surface, double width);
    }

    private static final double LEAST = 200;

    private final Canvas canvas = new Canvas();
    private final Chart chart;
    private final double lettering;

    /**
     * A chart.
     *
     * @param lettering size of texts, 1 for the usual one
     * @param words what it shows, for those who do not see it
     */
    ChartPane(Chart chart, double lettering, String words) {
        this.chart = chart;
        this.lettering = lettering;
        getChildren().add(canvas);
        setMinWidth(0);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setAccessibleText(words);
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected double computePrefHeight(double width) {
        return Math.ceil(chart.draw(new Java2DSurface(1, 1), room(width)) * lettering);
    }

    private double room(double width) {
        return Math.max(LEAST, width / lettering);
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    @Override
    protected void layoutChildren() {
        double width = getWidth();
        double height = getHeight();
        canvas.setWidth(width);
        canvas.setHeight(height);
        var g = canvas.getGraphicsContext2D();
        g.save();
        g.clearRect(0, 0, width, height);
        g.scale(lettering, lettering);
        chart.draw(new CanvasSurface(g), room(width));
        g.restore();
    }
}
