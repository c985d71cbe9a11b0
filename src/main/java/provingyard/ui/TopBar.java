package provingyard.ui;

import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import provingyard.quantity.Show;
import provingyard.season.Ledger;
import provingyard.season.SeasonEvent;
import provingyard.season.Snapshot;
import provingyard.setup.History;

/** The yard screen's top: way back, name, undo and redo, and the running ledger in five figures. */
final class TopBar extends HBox {

    private static final int DAY = 1440;

    /** Size of a figure in em, and width in em from which there is room for their words. */
    private static final double VALUE_EM = 1.14;

    private static final double WORDS_FIT_FROM = 80;

    private final YardModel model;
    private final Words words;
    private final Button undo = new Button();
    private final Button redo = new Button();
    private final Figure day = new Figure(null, "figure-day");
    private final Figure money = new Figure(null, "figure-money");
    private final Figure water = new Figure("drop", "figure-water");
    private final Figure ice = new Figure("ice", "figure-ice");
    private final Figure leaks = new Figure("leak", "figure-leaks");

    TopBar(YardModel model, Words words, Runnable back, Runnable help, List<MenuItem> menu) {
        this.model = model;
        this.words = words;
        getStyleClass().add("top-bar");
        Button home = quiet("back", "back", "top.back");
        home.setOnAction(e -> back.run());
        Label title = new Label();
        title.textProperty().bind(words.live(model.scenario().title()));
        title.getStyleClass().add("section-title");
        Label subtitle = new Label();
        subtitle.textProperty().bind(words.live(model.scenario().subtitle()));
        subtitle.getStyleClass().addAll("small", "ink2");
        VBox names = new VBox(title, subtitle);
        names.setAlignment(Pos.CENTER_LEFT);
        names.setMinWidth(120);
        setUp(undo, "undo");
        setUp(redo, "redo");
        undo.setOnAction(e -> model.undo());
        redo.setOnAction(e -> model.redo());
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        MenuButton more = new MenuButton();
        more.setId("menu");
        words.bind(more.textProperty(), "top.menu");
        more.getItems().setAll(menu);
        more.setMinWidth(Region.USE_PREF_SIZE);
        Button ask = quiet("help", "help", "top.help");
        ask.setOnAction(e -> help.run());
        getChildren().addAll(home, names, undo, redo, gap, day, money, water, ice, leaks, more, ask);
        model.frameProperty().addListener(o -> refresh());
        model.draftProperty().addListener(o -> refresh());
        words.follow(this, this::refresh);
        widthProperty().addListener(o -> fit());
        day.value.fontProperty().addListener(o -> fit());
        refresh();
    }

    /** Where the window is narrow for its texts, the figures stand without their words, which then are tooltips. */
    private void fit() {
        double em = day.value.getFont().getSize() / VALUE_EM;
        boolean narrow = getWidth() < WORDS_FIT_FROM * em;
        for (Figure figure : List.of(day, money, water, ice, leaks)) {
            figure.terse(narrow);
        }
    }

    private Button quiet(String icon, String id, String key) {
        Button button = new Button();
        setUp(button, icon);
        button.setId(id);
        words.bind(button.getTooltip().textProperty(), key);
        return button;
    }

    private static void setUp(Button button, String icon) {
        button.setId(icon);
        button.setGraphic(IconNode.of(icon, 18));
        button.getStyleClass().add("quiet");
        button.setMinWidth(34);
        button.setTooltip(new Tooltip());
        button.accessibleTextProperty().bind(button.getTooltip().textProperty());
    }

    /** Names the step that a button would take back or make again. */
    private void name(Button button, String key, Optional<History.Step> step) {
        button.setDisable(step.isEmpty() || model.locked());
        button.getTooltip()
                .setText(step.map(s -> words.say(key + "Step", StepWords.name(s, words)))
                        .orElseGet(() -> words.say(key)));
    }

    private void refresh() {
        SeasonPlayer.Frame frame = model.frameProperty().get();
        name(undo, "top.undo", model.draftProperty().get().undoable());
        name(redo, "top.redo", model.draftProperty().get().redoable());
        if (frame == null) {
            return;
        }
        Snapshot now = frame.snapshot();
        Ledger ledger = now.ledger();
        int days = model.scenario().season().days();
        long today = Math.min(days, now.tick() / DAY + 1);
        day.show(words.say("figure.day", today, days), words.say("figure.dayWord"));
        money.show(
                words.display().text(Show.MONEY, model.budgetLeft()),
                words.say(
                        "figure.left",
                        words.display().text(Show.MONEY, model.scenario().kit().budget())));
        water.show(
                words.display().text(Show.VOLUME, ledger.irrigation().supplied()),
                words.say(
                        "figure.wasted",
                        words.display().text(Show.VOLUME, ledger.irrigation().wasted())));
        ice.show(
                words.display().text(Show.ICE, ledger.ice().areaHours()),
                words.say("figure.iced", ledger.ice().mornings()));
        long alarms = frame.events().stream()
                .filter(e -> e.kind() == SeasonEvent.Kind.FAULT_FOUND)
                .count();
        leaks.show(words.display().text(Show.VOLUME, ledger.water().leaked()), words.say("figure.leaked", alarms));
    }

    /** A number over its word. */
    private static final class Figure extends VBox {

        private final Label value = new Label();
        private final Label word = new Label();

        Figure(String icon, String id) {
            setId(id);
            value.getStyleClass().add("value");
            if (icon != null) {
                Node sign = IconNode.of(icon, 15);
                value.setGraphic(sign);
            }
            word.getStyleClass().addAll("small", "ink2");
            word.managedProperty().bind(word.visibleProperty());
            Tooltip whole = new Tooltip();
            whole.textProperty().bind(word.textProperty());
            Tooltip.install(this, whole);
            setAlignment(Pos.CENTER_LEFT);
            setMinWidth(Region.USE_PREF_SIZE);
            setStyle("-fx-padding: 0 4 0 8;");
            getChildren().addAll(value, word);
        }

        void terse(boolean next) {
            word.setVisible(!next);
        }

        void show(String number, String words) {
            value.setText(number);
            word.setText(words);
        }
    }
}
