package provingyard.ui;

import java.util.EnumMap;
import java.util.Map;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import provingyard.call.Tool;

/** The instruments: one is taken in hand, with the minutes that it takes from here; below, what the plan shows. */
final class CallTray extends VBox {

    private static final PseudoClass IN_HAND = PseudoClass.getPseudoClass("in-hand");

    /** A row of the tray. */
    private record Row(Button button, Label name, Label aside) {}

    private final CallModel model;
    private final Words words;
    private final CallWords texts;
    private final Map<Tool, Row> rows = new EnumMap<>(Tool.class);
    private final VBox legend = new VBox(4);

    CallTray(CallModel model, Words words, CallWords texts) {
        this.model = model;
        this.words = words;
        this.texts = texts;
        setId("call-tray");
        getStyleClass().addAll("sheet", "call-tray");
        Label title = new Label();
        words.bind(title.textProperty(), "call.instruments");
        title.getStyleClass().add("section-title");
        getChildren().add(title);
        for (Tool tool : model.tools()) {
            Row row = row(tool);
            rows.put(tool, row);
            getChildren().add(row.button());
        }
        if (model.guided()) {
            getChildren().addAll(new Hairline(), left());
        }
        model.nowProperty().addListener(o -> refresh());
        model.busyProperty().addListener(o -> refresh());
        model.toolProperty().addListener(o -> refresh());
        words.follow(this, this::refresh);
        refresh();
    }

    private Row row(Tool tool) {
        Label key = new Label(CallSigns.key(tool).getName());
        key.getStyleClass().addAll("key-cap", "call-key");
        Label name = new Label();
        name.setWrapText(true);
        name.setMinWidth(0);
        name.getStyleClass().add("strong");
        HBox.setHgrow(name, Priority.ALWAYS);
        name.setMaxWidth(Double.MAX_VALUE);
        Label aside = new Label();
        aside.getStyleClass().addAll("small", "ink2");
        aside.setMinWidth(Region.USE_PREF_SIZE);
        HBox box = new HBox(8, key, IconNode.of(CallSigns.icon(tool), 20), name, aside);
        box.setAlignment(Pos.CENTER_LEFT);
        Button button = new Button();
        button.setId("tool-" + tool.name());
        button.setGraphic(box);
        button.setContentDisplay(ContentDisplay.GRAPHIC_ONLY);
        button.getStyleClass().addAll("quiet", "call-tool");
        button.setMaxWidth(Double.MAX_VALUE);
        box.prefWidthProperty().bind(button.widthProperty().subtract(16));
        button.setTooltip(new Tooltip());
        button.setOnAction(e -> model.take(tool));
        return new Row(button, name, aside);
    }

    private VBox left() {
        CheckBox show = new CheckBox();
        show.setId("call-left");
        words.bind(show.textProperty(), "call.whatIsLeft");
        show.selectedProperty().bindBidirectional(model.leftProperty());
        HBox scale = new HBox(1);
        scale.setAlignment(Pos.BOTTOM_LEFT);
        for (int i = 0; i < 4; i++) {
            Region step = new Region();
            step.getStyleClass().add("call-left-step");
            step.setStyle("-fx-min-height: " + (4 + 4 * i) + "; -fx-max-height: " + (4 + 4 * i) + "; -fx-opacity: "
                    + (0.35 + 0.2 * i) + ";");
            HBox.setHgrow(step, Priority.ALWAYS);
            step.setMaxWidth(Double.MAX_VALUE);
            scale.getChildren().add(step);
        }
        Label low = small("call.unlikely");
        Label high = small("call.likely");
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        legend.getChildren().addAll(scale, new HBox(low, gap, high));
        legend.visibleProperty().bind(model.leftProperty());
        VBox box = new VBox(6, show, legend);
        box.getStyleClass().add("call-left");
        return box;
    }

    private Label small(String key) {
        Label label = new Label();
        words.bind(label.textProperty(), key);
        label.getStyleClass().addAll("small", "ink2");
        return label;
    }

    private void refresh() {
        boolean testing = model.nowProperty().get().stage() == CallModel.Stage.TESTING;
        rows.forEach((tool, row) -> {
            boolean inHand = tool == model.toolProperty().get();
            boolean locked = model.locked(tool);
            String name = texts.tool(tool);
            String minutes = texts.minutes(model.leastMinutes(tool));
            row.name().setText(name);
            row.aside().setText(locked ? words.say("call.marksFirst") : minutes);
            row.aside().setGraphic(locked ? IconNode.of("lock", 12) : null);
            row.button().pseudoClassStateChanged(IN_HAND, inHand);
            row.button().setDisable(!testing || model.busyProperty().get());
            String key = CallSigns.key(tool).getName();
            row.button().getTooltip().setText(words.say("call.toolTip", name, minutes, key));
            String said = words.say(
                    inHand ? "call.toolInHand" : "call.toolSaid",
                    name,
                    row.aside().getText(),
                    key);
            row.button().setAccessibleText(said);
        });
    }
}
