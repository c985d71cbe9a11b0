package provingyard.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleConsumer;
import java.util.function.ToDoubleFunction;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import provingyard.quantity.Show;
import provingyard.scenario.Point;
import provingyard.setup.Placement;

/** Where a sensor stands, in numbers: m east and north from the yard's south-west corner, and for those above ground the height. */
final class PlacePanel extends VBox {

    private record Bound(QuantityField field, ToDoubleFunction<Placement> get) {}

    private final YardModel model;
    private final Words words;
    private final String id;
    private final List<Bound> fields = new ArrayList<>();
    private final Label complaint = new Label();

    PlacePanel(YardModel model, Words words, Placement placement) {
        this.model = model;
        this.words = words;
        id = placement.id();
        getStyleClass().add("place-panel");
        Label title = new Label(words.say("place.title"));
        title.getStyleClass().add("strong");
        Point size = model.scenario().yard().size();
        HBox row = new HBox();
        row.getStyleClass().add("place-row");
        add(row, "place.east", size.x(), p -> at(p).x(), v -> move(v, at().y()));
        add(row, "place.north", size.y(), p -> at(p).y(), v -> move(at().x(), v));
        Setting.of(placement, model.site().siting()).stream()
                .filter(s -> s.key().equals("setting.height"))
                .findFirst()
                .ifPresent(s -> add(
                        row, "place.height", s.least(), s.most(), p -> s.get().of(model.setUp(), id), v -> {
                            model.decide("step.set", s.put().into(model.setUp(), id, v), s.key());
                        }));
        complaint.setId("place-complaint");
        complaint.getStyleClass().addAll("alarm", "small");
        complaint.setWrapText(true);
        complaint.setMinHeight(Region.USE_PREF_SIZE);
        complaint.managedProperty().bind(complaint.visibleProperty());
        complaint.visibleProperty().bind(complaint.textProperty().isNotEmpty());
        getChildren().addAll(title, row, complaint);
    }

    private Point at() {
        return at(model.setUp().sensor(id).orElseThrow());
    }

    private Point at(Placement placement) {
        return model.site().siting().place(placement);
    }

    private void add(HBox row, String key, double most, ToDoubleFunction<Placement> get, DoubleConsumer set) {
        add(row, key, 0, most, get, set);
    }

    private void add(
            HBox row, String key, double least, double most, ToDoubleFunction<Placement> get, DoubleConsumer set) {
        QuantityField field = new QuantityField(Show.LENGTH, least, most, words, set);
        field.setId(key.replace('.', '-'));
        Label label = new Label(words.say(key));
        label.getStyleClass().addAll("small", "ink3");
        label.setLabelFor(field);
        field.setAccessibleText(words.say(key));
        field.complaintProperty().addListener((o, was, is) -> complaint.setText(is));
        VBox cell = new VBox(label, field);
        HBox.setHgrow(cell, Priority.ALWAYS);
        row.getChildren().add(cell);
        fields.add(new Bound(field, get));
    }

    private void move(double east, double north) {
        String whyNot = model.moveTo(id, new Point(east, north));
        if (whyNot != null) {
            refresh(model.setUp().sensor(id).orElseThrow());
            complaint.setText(words.say(whyNot));
        }
    }

    /** Shows where a placement stands. */
    void refresh(Placement placement) {
        complaint.setText("");
        fields.forEach(b -> b.field().show(b.get().applyAsDouble(placement), !model.locked()));
    }
}
