package provingyard.ui;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import provingyard.picture.Icons;
import provingyard.quantity.Show;
import provingyard.scenario.Plumbing;
import provingyard.season.Snapshot;
import provingyard.setup.Placement;

/**
 * All placed sensors and all that sits in the pipes, as a list: what is chosen here is selected on the plan and opens in the
 * inspector, where a sensor is moved by numbers. Delete takes a sensor away.
 */
final class DeviceList extends VBox {

    /** A line of the list. */
    record Device(String id, boolean sensor, Icons.Icon icon, String name, String where) {}

    private final YardModel model;
    private final Words words;
    private final ListView<Device> list = new ListView<>();
    private final Button remove = new Button();
    private boolean following;

    DeviceList(YardModel model, Words words) {
        this.model = model;
        this.words = words;
        setId("devices");
        getStyleClass().add("devices");
        list.setId("device-list");
        list.setCellFactory(view -> new Cell());
        list.accessibleTextProperty().bind(words.live("devices.accessible"));
        VBox.setVgrow(list, Priority.ALWAYS);
        remove.setId("device-remove");
        words.bind(remove.textProperty(), "inspector.remove");
        remove.setMaxWidth(Double.MAX_VALUE);
        remove.setOnAction(e -> takeAway());
        getChildren().addAll(list, remove);
        list.getSelectionModel().selectedItemProperty().addListener((o, was, is) -> {
            if (!following && is != null) {
                model.selectedProperty().set(is.id());
            }
            remove.setDisable(is == null || !is.sensor() || model.locked());
        });
        list.setOnKeyPressed(e -> {
            if (e.getCode() == KeyCode.DELETE || e.getCode() == KeyCode.BACK_SPACE) {
                takeAway();
                e.consume();
            }
        });
        model.draftProperty().addListener(o -> refresh());
        model.selectedProperty().addListener(o -> follow());
        words.languageChanges().addListener(o -> refresh());
        words.units().addListener(o -> refresh());
        refresh();
    }

    @Override
    public void requestFocus() {
        list.requestFocus();
    }

    private void takeAway() {
        Device device = list.getSelectionModel().getSelectedItem();
        if (device != null && device.sensor()) {
            model.remove(device.id());
        }
    }

    private void refresh() {
        following = true;
        list.getItems().setAll(devices(model, words));
        following = false;
        follow();
    }

    private void follow() {
        following = true;
        String id = model.selectedProperty().get();
        Device same = list.getItems().stream()
                .filter(d -> d.id().equals(id))
                .findFirst()
                .orElse(null);
        if (same == null) {
            list.getSelectionModel().clearSelection();
        } else {
            list.getSelectionModel().select(same);
        }
        remove.setDisable(same == null || !same.sensor() || model.locked());
        following = false;
    }

    /** The sensors in the order of placing, then the fittings in the document's order. */
    static List<Device> devices(YardModel model, Words words) {
        List<Device> all = new ArrayList<>();
        SiteFacts facts = new SiteFacts(model, words);
        for (Placement p : model.setUp().sensors()) {
            String name = words.say("sensor." + p.kind().name());
            all.add(new Device(p.id(), true, Icons.of(p.kind()), name, facts.place(p)));
        }
        for (Plumbing.Fitting f : model.scenario().plumbing().fittings()) {
            String kind = words.say("fitting." + f.kind().name());
            boolean zone = f.kind() == Plumbing.FittingKind.ZONE_VALVE;
            boolean named = f.label() != null;
            all.add(new Device(
                    f.id(),
                    false,
                    Icons.get(f.kind() == Plumbing.FittingKind.METER ? "meter" : "valve"),
                    named ? words.say(f.label()) : kind,
                    zone ? zone(model, words, f.id(), kind) : named ? kind : ""));
        }
        return all;
    }

    private static String zone(YardModel model, Words words, String id, String kind) {
        if (model.frameProperty().get() == null) {
            return kind;
        }
        return model.frameProperty().get().snapshot().zones().stream()
                .filter(z -> z.id().equals(id) && z.open())
                .findFirst()
                .map((Snapshot.Zone z) ->
                        words.say("devices.running", words.display().text(Show.FLOW, z.flow())))
                .orElse(kind);
    }

    private final class Cell extends ListCell<Device> {

        private static final double AROUND = 34;
        private static final double LEAST = 24;

        /** As high as its wrapped texts need. */
        @Override
        protected double computePrefHeight(double width) {
            double texts = getGraphic() == null ? 0 : getGraphic().prefHeight(list.getWidth() - AROUND);
            return Math.max(LEAST, texts) + snappedTopInset() + snappedBottomInset();
        }

        @Override
        protected void updateItem(Device device, boolean empty) {
            super.updateItem(device, empty);
            setText(null);
            setGraphic(null);
            if (empty || device == null) {
                setAccessibleText(null);
                return;
            }
            Label name = new Label(device.name());
            name.getStyleClass().add("strong");
            name.setWrapText(true);
            Label where = new Label(device.where());
            where.getStyleClass().addAll("small", "ink2");
            where.setWrapText(true);
            for (Label label : new Label[] {name, where}) {
                label.setMinHeight(Region.USE_PREF_SIZE);
            }
            where.setManaged(!device.where().isEmpty());
            VBox texts = new VBox(name, where);
            HBox.setHgrow(texts, Priority.ALWAYS);
            HBox row = new HBox(new IconNode(device.icon(), 18), texts);
            row.getStyleClass().add("device-row");
            row.setMinWidth(0);
            row.prefWidthProperty().bind(list.widthProperty().subtract(AROUND));
            setGraphic(row);
            String key = device.sensor() ? "devices.sensor" : "devices.fitting";
            setAccessibleText(words.say(key, device.name(), device.where()));
        }
    }
}
