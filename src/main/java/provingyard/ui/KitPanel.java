package provingyard.ui;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javafx.geometry.Pos;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import provingyard.picture.Icons;
import provingyard.picture.Layer;
import provingyard.quantity.Show;
import provingyard.scenario.Kit;
import provingyard.scenario.Point;
import provingyard.scenario.SensorKind;

/**
 * The sensors that may be carried in: dragged onto the yard, or taken in hand by keys and carried with the arrows; the
 * layers of the plan; and, in their place when asked for, the list of all devices.
 */
final class KitPanel extends VBox {

    private final YardModel model;
    private final Words words;
    private final YardPane yard;
    private final Map<SensorKind, Row> rows = new EnumMap<>(SensorKind.class);
    private final Map<Layer, CheckBox> layers = new EnumMap<>(Layer.class);
    private final ToggleButton listing = new ToggleButton();
    private final DeviceList devices;
    private final ScrollPane scroll = new ScrollPane();

    KitPanel(YardModel model, Words words, YardPane yard) {
        this.model = model;
        this.words = words;
        this.yard = yard;
        devices = new DeviceList(model, words);
        setId("kit");
        getStyleClass().addAll("sheet", "kit");
        setMinHeight(0);
        setMaxHeight(Region.USE_PREF_SIZE);
        VBox body = new VBox();
        body.getStyleClass().add("kit-body");
        for (SensorKind kind : SensorKind.values()) {
            if (model.scenario().kit().item(kind) != null) {
                Row row = new Row(kind, rows.size() + 1);
                rows.put(kind, row);
                body.getChildren().add(row);
            }
        }
        Label layerTitle = new Label();
        words.bind(layerTitle.textProperty(), "layers.title");
        layerTitle.getStyleClass().addAll("small", "strong", "ink2", "kit-heading");
        body.getChildren().addAll(new Hairline(), layerTitle, layerGrid());
        scroll.setContent(body);
        scroll.setFitToWidth(true);
        scroll.setFocusTraversable(false);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.prefViewportHeightProperty().bind(body.heightProperty());
        getChildren().addAll(head(), scroll);
        model.draftProperty().addListener(o -> refresh());
        model.frameProperty().addListener(o -> refresh());
        model.handProperty().addListener(o -> refresh());
        model.layersProperty().addListener(o -> refresh());
        words.units().addListener(o -> refresh());
        words.languageChanges().addListener(o -> refresh());
        refresh();
    }

    private HBox head() {
        Label title = new Label();
        words.bind(title.textProperty(), "kit.title");
        title.getStyleClass().add("section-title");
        title.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(title, Priority.ALWAYS);
        listing.setId("kit-list");
        listing.getStyleClass().add("kit-list");
        words.bind(listing.textProperty(), "kit.list");
        listing.setGraphic(keyCap("L"));
        listing.setContentDisplay(javafx.scene.control.ContentDisplay.RIGHT);
        listing.accessibleTextProperty().bind(words.live("kit.listAccessible"));
        listing.setOnAction(e -> showDevices(listing.isSelected()));
        HBox head = new HBox(title, listing);
        head.setAlignment(Pos.CENTER_LEFT);
        head.getStyleClass().add("kit-head");
        return head;
    }

    /** Shows the list of devices instead of the kit, or the kit again. */
    void toggleDevices() {
        showDevices(!listing.isSelected());
    }

    private void showDevices(boolean shown) {
        listing.setSelected(shown);
        getChildren().remove(1);
        getChildren().add(shown ? devices : scroll);
        if (shown) {
            devices.requestFocus();
        } else {
            yard.requestFocus();
        }
    }

    private static Label keyCap(String key) {
        Label cap = new Label(key);
        cap.getStyleClass().add("key-cap");
        return cap;
    }

    /** All layers, or those of the first steps. */
    private List<Layer> shownLayers() {
        return Stream.of(Layer.values())
                .filter(l -> !model.firstSteps()
                        || switch (l) {
                            case SHADE, SHELTER, COLD -> false;
                            default -> true;
                        })
                .toList();
    }

    private GridPane layerGrid() {
        GridPane grid = new GridPane();
        grid.getStyleClass().add("layer-grid");
        int i = 0;
        for (Layer layer : shownLayers()) {
            CheckBox box = new CheckBox();
            box.setId("layer-" + layer.name());
            words.bind(box.textProperty(), "layer." + layer.name());
            box.setOnAction(e -> model.toggle(layer));
            box.setMaxWidth(Double.MAX_VALUE);
            Tooltip key = new Tooltip("Shift+" + (layer.ordinal() + 1));
            box.setTooltip(key);
            box.setMinWidth(Region.USE_PREF_SIZE);
            layers.put(layer, box);
            grid.add(box, i % 2, i / 2);
            i++;
        }
        return grid;
    }

    private void refresh() {
        rows.values().forEach(Row::refresh);
        layers.forEach(
                (layer, box) -> box.setSelected(model.layersProperty().get().contains(layer)));
    }

    /** The focusable row of a kind. */
    Region row(SensorKind kind) {
        return rows.get(kind);
    }

    private final class Row extends HBox {

        private final SensorKind kind;
        private final Label placed = new Label();
        private final Label price = new Label();
        private final Label lock = new Label();
        private final Tooltip whole = new Tooltip();

        Row(SensorKind kind, int digit) {
            this.kind = kind;
            setId("kit-" + kind.name());
            getStyleClass().add("kit-row");
            setFocusTraversable(true);
            StackPane icon = new StackPane(new IconNode(Icons.of(kind), 22));
            icon.getStyleClass().add("kit-icon");
            Label name = new Label();
            words.bind(name.textProperty(), "kind." + kind.name());
            name.getStyleClass().add("strong");
            name.setWrapText(true);
            name.setMinHeight(Region.USE_PREF_SIZE);
            price.getStyleClass().addAll("small", "ink2");
            placed.getStyleClass().addAll("small", "strong", "ink2");
            for (Label label : new Label[] {price, placed, lock}) {
                label.setMinWidth(Region.USE_PREF_SIZE);
            }
            lock.setId("kit-lock-" + kind.name());
            lock.getStyleClass().addAll("small", "ink2");
            IconNode sign = IconNode.of("lock", 12);
            sign.getStyleClass().add("quiet-ink");
            lock.setGraphic(sign);
            for (Label label : new Label[] {price, placed, lock}) {
                label.managedProperty().bind(label.visibleProperty());
            }
            Region gap = new Region();
            HBox.setHgrow(gap, Priority.ALWAYS);
            HBox second = new HBox(price, lock, gap, placed);
            Region between = new Region();
            HBox.setHgrow(between, Priority.ALWAYS);
            HBox.setHgrow(name, Priority.SOMETIMES);
            Label cap = keyCap(Integer.toString(digit));
            cap.setMinWidth(Region.USE_PREF_SIZE);
            VBox texts = new VBox(new HBox(4, name, between, cap), second);
            texts.setAlignment(Pos.CENTER_LEFT);
            HBox.setHgrow(texts, Priority.ALWAYS);
            texts.setMinWidth(0);
            whole.textProperty().bind(accessibleTextProperty());
            Tooltip.install(this, whole);
            setAlignment(Pos.CENTER_LEFT);
            getChildren().addAll(icon, texts);
            setOnMouseDragged(this::dragged);
            setOnMouseReleased(this::released);
            setOnKeyPressed(e -> {
                if (e.getCode() == KeyCode.ENTER || e.getCode() == KeyCode.SPACE) {
                    take();
                    e.consume();
                }
            });
        }

        private void take() {
            model.takeInHand(kind);
            if (model.handProperty().get() != null) {
                yard.requestFocus();
            }
        }

        private void dragged(MouseEvent e) {
            if (model.mayPlace(kind)) {
                Point at = yard.yardAt(e.getSceneX(), e.getSceneY());
                model.carry(kind, null, at);
            }
        }

        private void released(MouseEvent e) {
            boolean onPanel = KitPanel.this.contains(KitPanel.this.sceneToLocal(e.getSceneX(), e.getSceneY()));
            if (e.isStillSincePress()) {
                take();
            } else if (!onPanel && yard.covers(e.getSceneX(), e.getSceneY())) {
                model.place();
                model.drop();
            } else {
                model.drop();
            }
        }

        void refresh() {
            Kit.Item item = model.scenario().kit().item(kind);
            int count = model.setUp().of(kind).size();
            price.setText(words.display().text(Show.MONEY, item.price()));
            placed.setText(count > 0 ? words.say("kit.placed", count) : "");
            String why = model.whyNoMore(kind);
            String reason = why == null
                    ? ""
                    : words.say(why, count, item.most(), words.display().text(Show.MONEY, model.budgetLeft()));
            lock.setVisible(why != null);
            lock.setText(why == null ? "" : words.say(why + "Short", count, item.most()));
            placed.setVisible(why == null && count > 0);
            price.setVisible(why == null || count == 0);
            boolean inHand = model.handProperty().get() != null
                    && model.handProperty().get().kind() == kind
                    && model.handProperty().get().moving() == null;
            getStyleClass().remove("in-hand");
            if (inHand) {
                getStyleClass().add("in-hand");
            }
            setAccessibleText(words.say(
                    why == null ? "kit.accessible" : "kit.accessibleNot",
                    words.say("kind." + kind.name()),
                    price.getText(),
                    count,
                    reason));
        }
    }
}
