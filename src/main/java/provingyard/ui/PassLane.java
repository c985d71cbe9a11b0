package provingyard.ui;

import java.util.List;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import provingyard.season.Plan;

/** When one zone runs on a watering day: a bar for each part, between the day's first and last minute of water. */
final class PassLane extends Pane {

    private static final double HIGH = 14;
    private static final double LEAST = 2;

    private List<Plan.Run> runs = List.of();
    private long from;
    private long to;

    PassLane() {
        getStyleClass().add("pass-lane");
        setMinWidth(80);
        setPrefWidth(120);
        setMaxWidth(Double.MAX_VALUE);
    }

    /** Shows a zone's parts within a span of minutes. */
    void show(List<Plan.Run> parts, long first, long last) {
        runs = parts;
        from = first;
        to = Math.max(first + 1, last);
        getChildren().setAll(parts.stream().map(r -> bar()).toList());
        requestLayout();
    }

    private static Region bar() {
        Region bar = new Region();
        bar.getStyleClass().add("pass-bar");
        bar.setManaged(false);
        return bar;
    }

    @Override
    protected void layoutChildren() {
        double scale = getWidth() / (to - from);
        for (int i = 0; i < runs.size(); i++) {
            double x = snapPositionX((runs.get(i).from() - from) * scale);
            double w = Math.max(LEAST, (runs.get(i).to() - runs.get(i).from()) * scale - 1);
            getChildren().get(i).resizeRelocate(x, (getHeight() - HIGH) / 2, w, HIGH);
        }
    }
}
