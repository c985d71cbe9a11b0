package provingyard.ui;

import java.util.EnumMap;
import java.util.Map;
import javafx.geometry.Pos;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
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
import provingyard.quantity.Display;
import provingyard.quantity.Show;
import provingyard.scenario.Kit;
import provingyard.scenario.Point;
import provingyard.scenario.SensorKind;

/** The sensors that may be carried in: dragged onto the yard, or taken in hand by keys and carried with the arrows. */
final class KitPanel extends VBox {

    private final YardModel model;
    private final Words words;
    private final YardPane yard;
    private final Map<SensorKind, Row> rows = new EnumMap<>(SensorKind.class);
    private final Map<Layer, CheckBox> layers = new EnumMap<>(Layer.class);

    KitPanel(YardModel model, Words words, YardPane yard) {
        this.model = model;
        this.words = words;
        this.yard = yard;
        setId("kit");
        getStyleClass().addAll("sheet", "kit");
        setSpacing(2);
        setPrefWidth(196);
        setMinWidth(196);
        setMaxWidth(196);
        setMaxHeight(Region.USE_PREF_SIZE);
        Label title = new Label();
        words.bind(title.textProperty(), "kit.title");
        title.getStyleClass().add("section-title");
        title.setStyle("-fx-padding: 2 0 6 6;");
        getChildren().add(title);
        for (SensorKind kind : SensorKind.values()) {
            if (model.scenario().kit().item(kind) != null) {
                Row row = new Row(kind);
                rows.put(kind, row);
                getChildren().add(row);
            }
        }
        getChildren().add(new Hairline());
        Label layerTitle = new Label();
        words.bind(layerTitle.textProperty(), "layers.title");
        layerTitle.getStyleClass().addAll("small", "strong", "ink2");
        layerTitle.setStyle("-fx-padding: 6 0 4 6;");
        getChildren().addAll(layerTitle, layerGrid());
        model.draftProperty().addListener(o -> refresh());
        model.frameProperty().addListener(o -> refresh());
        model.handProperty().addListener(o -> refresh());
        model.layersProperty().addListener(o -> refresh());
        words.units().addListener(o -> refresh());
        words.languageChanges().addListener(o -> refresh());
        refresh();
    }

    private GridPane layerGrid() {
        GridPane grid = new GridPane();
        grid.setHgap(4);
        grid.setVgap(6);
        grid.setStyle("-fx-padding: 0 0 2 6;");
        int i = 0;
        for (Layer layer : Layer.values()) {
            if (layer == Layer.SHELTER) {
                continue;
            }
            CheckBox box = new CheckBox();
            box.setId("layer-" + layer.name());
            words.bind(box.textProperty(), "layer." + layer.name());
            box.setOnAction(e -> model.toggle(layer));
            box.setMinWidth(86);
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

        Row(SensorKind kind) {
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
            VBox texts = new VBox(name, price);
            texts.setAlignment(Pos.CENTER_LEFT);
            HBox.setHgrow(texts, Priority.ALWAYS);
            texts.setMinWidth(0);
            placed.getStyleClass().add("small");
            placed.setMinWidth(Region.USE_PREF_SIZE);
            setAlignment(Pos.CENTER_LEFT);
            getChildren().addAll(icon, texts, placed);
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
            } else {
                model.drop();
            }
        }

        void refresh() {
            Kit.Item item = model.scenario().kit().item(kind);
            int count = model.setUp().of(kind).size();
            price.setText(Display.of(words.units().get(), words.language()).text(Show.MONEY, item.price()));
            placed.setText(count > 0 ? words.say("kit.placed", count) : "");
            boolean inHand = model.handProperty().get() != null
                    && model.handProperty().get().kind() == kind
                    && model.handProperty().get().moving() == null;
            getStyleClass().remove("in-hand");
            if (inHand) {
                getStyleClass().add("in-hand");
            }
            setAccessibleText(words.say(
                    model.mayPlace(kind) ? "kit.accessible" : "kit.accessibleNot",
                    words.say("kind." + kind.name()),
                    price.getText(),
                    count));
        }
    }
}
