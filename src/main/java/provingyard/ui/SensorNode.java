package provingyard.ui;

import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Region;
import provingyard.picture.View;
import provingyard.scenario.Point;
import provingyard.scenario.SensorKind;
import provingyard.setup.Placement;

/** What people operate of a sensor on the plan: it can be focused, moved by mouse or keys, selected and taken away. */
final class SensorNode extends Region {

    private static final double SIZE = 38;
    private static final double STAKE = 10;

    private final YardModel model;
    private final String id;
    private final SensorKind kind;
    private final YardPane yard;
    private boolean moving;
    private Point at = new Point(0, 0);

    SensorNode(YardModel model, Words words, Placement placement, YardPane yard) {
        this.model = model;
        this.yard = yard;
        id = placement.id();
        kind = placement.kind();
        setId("sensor-" + id);
        getStyleClass().add("sensor-node");
        setFocusTraversable(true);
        accessibleTextProperty().bind(words.live("sensor.accessible", words.live("kind." + kind.name()), id));
        resize(SIZE, SIZE);
        setPrefSize(SIZE, SIZE);
        setOnMousePressed(e -> {
            requestFocus();
            model.selectedProperty().set(id);
            e.consume();
        });
        setOnMouseDragged(this::dragged);
        setOnMouseReleased(this::released);
        setOnKeyPressed(e -> {
            double step = e.isShiftDown() ? YardModel.FINE_STEP : YardModel.STEP;
            KeyCode code = e.getCode();
            switch (code) {
                case LEFT -> moveTo(new Point(at.x() - step, at.y()));
                case RIGHT -> moveTo(new Point(at.x() + step, at.y()));
                case UP -> moveTo(new Point(at.x(), at.y() + step));
                case DOWN -> moveTo(new Point(at.x(), at.y() - step));
                case DELETE, BACK_SPACE -> model.remove(id);
                case ENTER, SPACE -> model.selectedProperty().set(id);
                default -> {
                    return;
                }
            }
            e.consume();
        });
    }

    /** Puts the node over the sensor's disc. */
    void at(View view, Point place) {
        at = place;
        relocate(view.x(place.x()) - SIZE / 2, view.y(place.y()) - STAKE - SIZE + 4);
        resize(SIZE, SIZE);
    }

    private void moveTo(Point to) {
        model.moveTo(id, to);
    }

    private void dragged(MouseEvent e) {
        if (model.locked()) {
            return;
        }
        moving = true;
        model.carry(kind, id, yard.yardAt(e.getSceneX(), e.getSceneY()));
        e.consume();
    }

    private void released(MouseEvent e) {
        if (moving) {
            moving = false;
            if (yard.covers(e.getSceneX(), e.getSceneY())) {
                model.place();
            }
            model.drop();
        }
        e.consume();
    }
}
