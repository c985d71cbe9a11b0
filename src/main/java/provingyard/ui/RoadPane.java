package provingyard.ui;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Insets;
import javafx.geometry.Orientation;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.scene.shape.ArcTo;
import javafx.scene.shape.LineTo;
import javafx.scene.shape.MoveTo;
import javafx.scene.shape.Path;
import javafx.scene.shape.PathElement;

/** Stops along a road that runs to and fro in rows; how many go into a row follows the width and the texts' size. */
final class RoadPane extends Pane {

    private static final double GAP = 38;
    private static final double ROWS_APART = 30;
    private static final double SIDE = 34;
    private static final double TOP = 18;
    private static final int MOST_COLUMNS = 4;
    private static final double NARROWEST_EM = 13.2;
    private static final double WIDEST_EM = 31;

    private final Path edge = road("road-edge");
    private final Path bed = road("road-bed");
    private final Path line = road("road-line");
    private final Path done = road("road-done");
    private final SitePictures pictures;
    private List<SiteCard> cards = List.of();
    private Region legend = new Region();
    private int driven;
    private double em = 14;

    /** Where everything goes. */
    private record Plan(int columns, double card, List<Double> heights) {}

    RoadPane(SitePictures pictures) {
        this.pictures = pictures;
        setId("road");
    }

    private static Path road(String style) {
        Path path = new Path();
        path.getStyleClass().add(style);
        path.setManaged(false);
        path.setMouseTransparent(true);
        return path;
    }

    /** Shows stops; the road up to stop number {@code driven} (from 0) was driven. */
    void show(List<SiteCard> next, Region legendNext, int drivenNext) {
        cards = List.copyOf(next);
        legend = legendNext;
        driven = drivenNext;
        getChildren().setAll(edge, bed, line, done);
        getChildren().addAll(cards);
        getChildren().add(legend);
        requestLayout();
    }

    /** The height of a letter in px, which the cards' width follows. */
    void em(double next) {
        em = next;
        requestLayout();
    }

    /** The card beside another one, as they lie on the sheet; the same where there is none. */
    SiteCard beside(SiteCard from, int columns, int rows) {
        int count = plan(getWidth()).columns();
        int at = cards.indexOf(from);
        int row = at / count;
        int column = column(at, count);
        if (rows == 0 && Math.abs(columns) == 1) {
            column += columns;
        }
        row += rows;
        for (SiteCard card : cards) {
            int i = cards.indexOf(card);
            if (i / count == row && column(i, count) == column) {
                return card;
            }
        }
        return from;
    }

    private static int column(int index, int columns) {
        int in = index % columns;
        return index / columns % 2 == 0 ? in : columns - 1 - in;
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    private Plan plan(double width) {
        Insets in = getInsets();
        double room = Math.max(100, width - in.getLeft() - in.getRight() - 2 * SIDE);
        int fit = (int) Math.max(1, Math.floor((room + GAP) / (NARROWEST_EM * em + GAP)));
        // Few stops are shown larger, with at least one place beside them, so that the road is seen to go on.
        int wanted = cards.size() <= 2 ? 2 : cards.size() <= 6 ? 3 : MOST_COLUMNS;
        int columns = Math.min(fit, wanted);
        double card = Math.floor(Math.min(WIDEST_EM * em, (room - (columns - 1) * GAP) / columns));
        List<Double> heights = new ArrayList<>();
        for (int i = 0; i < cards.size(); i++) {
            cards.get(i).wide(card, pictures);
            int row = i / columns;
            double height = cards.get(i).prefHeight(card);
            if (heights.size() <= row) {
                heights.add(height);
            } else {
                heights.set(row, Math.max(heights.get(row), height));
            }
        }
        return new Plan(columns, card, heights);
    }

    private boolean legendInRow(int columns) {
        return cards.size() % columns != 0;
    }

    @Override
    protected double computePrefHeight(double width) {
        Plan plan = plan(width < 0 ? getWidth() : width);
        double height = getInsets().getTop() + getInsets().getBottom() + TOP;
        for (double row : plan.heights()) {
            height += row + ROWS_APART;
        }
        return height + (legendInRow(plan.columns()) ? 0 : legend.prefHeight(plan.card()) + ROWS_APART);
    }

    @Override
    protected void layoutChildren() {
        if (cards.isEmpty()) {
            return;
        }
        Plan plan = plan(getWidth());
        double left = getInsets().getLeft() + SIDE;
        double y = getInsets().getTop() + TOP;
        double[] x = new double[cards.size()];
        double[] centre = new double[cards.size()];
        double picture = Math.round(plan.card() * SiteCard.SHAPE);
        double lastTop = y;
        for (int row = 0; row < plan.heights().size(); row++) {
            for (int i = row * plan.columns(); i < Math.min(cards.size(), (row + 1) * plan.columns()); i++) {
                SiteCard card = cards.get(i);
                x[i] = Math.floor(left + column(i, plan.columns()) * (plan.card() + GAP));
                centre[i] = Math.floor(y + picture / 2);
                card.resizeRelocate(x[i], y, plan.card(), plan.heights().get(row));
            }
            lastTop = y;
            y += plan.heights().get(row) + ROWS_APART;
        }
        placeLegend(plan, left, lastTop, y);
        drawRoad(plan, x, centre);
    }

    private void placeLegend(Plan plan, double left, double lastTop, double below) {
        double width = Math.min(plan.card(), 22 * em);
        double height = legend.prefHeight(width);
        if (legendInRow(plan.columns())) {
            int row = plan.heights().size() - 1;
            int free = row % 2 == 0 ? plan.columns() - 1 : 0;
            legend.resizeRelocate(Math.floor(left + free * (plan.card() + GAP)), lastTop, width, height);
        } else {
            legend.resizeRelocate(left, below, width, height);
        }
    }

    private void drawRoad(Plan plan, double[] x, double[] centre) {
        edge.getElements().setAll(way(plan, x, centre, cards.size() - 1));
        bed.getElements().setAll(way(plan, x, centre, cards.size() - 1));
        line.getElements().setAll(way(plan, x, centre, cards.size() - 1));
        done.getElements().setAll(way(plan, x, centre, Math.min(driven, cards.size() - 1)));
        done.setVisible(driven > 0);
    }

    /** The road's middle from the first stop to another one: along a row, round its end, and back along the next. */
    private static List<PathElement> way(Plan plan, double[] x, double[] centre, int until) {
        List<PathElement> way = new ArrayList<>();
        double half = plan.card() / 2;
        way.add(new MoveTo(x[0] + half, centre[0]));
        for (int i = 1; i <= until; i++) {
            boolean turns = centre[i] != centre[i - 1];
            if (turns) {
                boolean right = (i / plan.columns()) % 2 == 1;
                double reach = 22;
                double end = right ? x[i] + plan.card() : x[i];
                double out = right ? end + reach : end - reach;
                double r = reach * 0.8;
                double corner = right ? out - r : out + r;
                way.add(new LineTo(corner, centre[i - 1]));
                way.add(new ArcTo(r, r, 0, out, centre[i - 1] + r, false, right));
                way.add(new LineTo(out, centre[i] - r));
                way.add(new ArcTo(r, r, 0, corner, centre[i], false, right));
            }
            way.add(new LineTo(x[i] + half, centre[i]));
        }
        return way;
    }
}
