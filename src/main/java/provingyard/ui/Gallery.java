package provingyard.ui;

import java.util.List;
import java.util.function.Supplier;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Slider;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import provingyard.picture.Theme;
import provingyard.scenario.SensorKind;

/**
 * Every control in every state and theme, side by side, for those who work on the program: Ctrl+Shift+G. States that a
 * hand would make (hover, focus, pressed) are set by hand.
 */
final class Gallery extends ScrollPane {

    private static final List<Theme> THEMES = List.of(Theme.LIGHT, Theme.DARK, Theme.HIGH_CONTRAST, Theme.PROJECTOR);
    private static final List<String> STATES = List.of("", "hover", "focused", "pressed", "disabled");
    private static final List<String> ICONS =
            List.of("rain", "wind", "freeze", "flow", "soil", "play", "pause", "next", "undo", "redo", "alarm");

    private final Words words;

    Gallery(Words words) {
        this.words = words;
        setId("gallery");
        FlowPane all = new FlowPane(24, 24);
        all.setStyle("-fx-padding: 24;");
        for (Theme theme : THEMES) {
            all.getChildren().add(column(theme));
        }
        setContent(all);
        setFitToWidth(true);
    }

    private VBox column(Theme theme) {
        VBox column = new VBox(
                14,
                titled("gallery.type", type()),
                titled("gallery.buttons", states(() -> button(""))),
                titled("gallery.mainButtons", states(() -> button("main"))),
                titled("gallery.quietButtons", states(() -> button("quiet"))),
                titled("gallery.segments", segments()),
                titled("gallery.fields", states(() -> new TextField("6 mm")), bad()),
                titled("gallery.choices", states(this::choice), states(this::check)),
                titled("gallery.sliders", states(() -> new Slider(0, 10, 4))),
                titled("gallery.settings", setting()),
                titled("gallery.notes", note("caution"), note("wrong")),
                titled("gallery.hints", hint()),
                titled("gallery.menus", states(this::menu)),
                titled("gallery.tables", table()),
                titled("gallery.progress", progress()),
                titled("gallery.icons", icons()));
        column.setId("gallery-" + theme.name());
        column.getStyleClass().addAll("root", "gallery-column");
        column.pseudoClassStateChanged(PseudoClass.getPseudoClass("by-keys"), true);
        column.getStylesheets().setAll(ThemeSheet.all(theme, Shell.EM));
        column.setPrefWidth(588);
        return column;
    }

    private VBox titled(String key, Node... shown) {
        Label title = new Label();
        words.bind(title.textProperty(), key);
        title.getStyleClass().addAll("small", "ink2");
        VBox box = new VBox(6, title);
        box.getChildren().addAll(shown);
        return box;
    }

    private Node type() {
        VBox box = new VBox(2);
        for (String style : List.of("page-title", "section-title", "panel-title", "value", "strong", "ink2", "small")) {
            Label label = new Label();
            words.bind(label.textProperty(), "gallery.words");
            label.getStyleClass().add(style);
            box.getChildren().add(label);
        }
        for (String role : List.of("water", "ice", "good", "alarm")) {
            Label label = new Label();
            words.bind(label.textProperty(), "gallery.words");
            label.getStyleClass().addAll("strong", role);
            box.getChildren().add(label);
        }
        return box;
    }

    private Node states(Supplier<Region> maker) {
        HBox row = new HBox(12);
        row.setAlignment(Pos.CENTER_LEFT);
        for (String state : STATES) {
            Region control = maker.get();
            control.setPrefWidth(104);
            if (control instanceof Labeled labeled && labeled.getGraphic() == null) {
                words.bind(labeled.textProperty(), state.isEmpty() ? "gallery.rest" : "gallery." + state);
            }
            if (state.equals("disabled")) {
                control.setDisable(true);
            } else if (!state.isEmpty()) {
                control.pseudoClassStateChanged(PseudoClass.getPseudoClass(state), true);
            }
            row.getChildren().add(control);
        }
        return row;
    }

    private static Button button(String style) {
        Button button = new Button();
        if (!style.isEmpty()) {
            button.getStyleClass().add(style);
        }
        return button;
    }

    private Region choice() {
        ComboBox<String> box = new ComboBox<>();
        box.getItems().add(words.say("kind.RAIN"));
        box.getSelectionModel().select(0);
        return box;
    }

    private Region check() {
        CheckBox box = new CheckBox();
        box.setSelected(true);
        return box;
    }

    private Node segments() {
        HBox box = new HBox();
        box.getStyleClass().add("segments");
        box.setMaxWidth(Region.USE_PREF_SIZE);
        for (Speed speed : Speed.values()) {
            ToggleButton button = new ToggleButton();
            words.bind(button.textProperty(), "speed." + speed.name());
            button.setSelected(speed == Speed.SIX_HUNDRED);
            button.setDisable(speed == Speed.MOST);
            box.getChildren().add(button);
        }
        return box;
    }

    private static Node bad() {
        TextField field = new TextField("nine drops");
        field.getStyleClass().add("bad");
        field.setMaxWidth(160);
        return field;
    }

    private Node setting() {
        Setting unscheduled = Setting.ofFlowWatch().get(Setting.ofFlowWatch().size() - 1);
        SettingRow row = new SettingRow(unscheduled, words, value -> {}, value -> {});
        row.show(unscheduled.usual().to(), true);
        row.setMaxWidth(280);
        return row;
    }

    private Node note(String style) {
        Label label = new Label();
        label.setWrapText(true);
        words.bind(label.textProperty(), "gallery.words");
        VBox box = new VBox(label);
        box.getStyleClass().add(style);
        box.setMaxWidth(280);
        return box;
    }

    private Node hint() {
        HintCard card = new HintCard(words, () -> {}, () -> {});
        card.show(Hints.Hint.AFTER_RAIN);
        card.setMaxWidth(540);
        return card;
    }

    private Region menu() {
        MenuButton menu = new MenuButton();
        MenuItem item = new MenuItem();
        words.bind(item.textProperty(), "menu.restart");
        menu.getItems().add(item);
        return menu;
    }

    /** A table with a row that is chosen, as the records have it. */
    private Node table() {
        TableView<SensorKind> table = new TableView<>();
        TableColumn<SensorKind, String> kinds = new TableColumn<>();
        words.bind(kinds.textProperty(), "kit.title");
        kinds.setCellValueFactory(row -> words.live("kind." + row.getValue().name()));
        TableColumn<SensorKind, String> names = new TableColumn<>();
        words.bind(names.textProperty(), "gallery.icons");
        names.setCellValueFactory(row -> words.live("sensor." + row.getValue().name()));
        kinds.setPrefWidth(240);
        names.setPrefWidth(280);
        table.getColumns().add(kinds);
        table.getColumns().add(names);
        table.getItems().setAll(SensorKind.values());
        table.getSelectionModel().select(1);
        table.setPrefSize(540, 210);
        VBox box = new VBox(table);
        box.getStyleClass().add("records");
        return box;
    }

    private static Node progress() {
        ProgressBar bar = new ProgressBar(0.4);
        bar.setPrefWidth(280);
        return bar;
    }

    private static Node icons() {
        HBox row = new HBox(10);
        ICONS.forEach(name -> row.getChildren().add(IconNode.of(name, 24)));
        return row;
    }
}
