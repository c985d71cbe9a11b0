package provingyard.ui;

import java.util.List;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import provingyard.scenario.Scenario;
import provingyard.scenario.Text;

/** A service call's top: way back, where and why, minutes, water, whether lines are marked, and the way to make safe. */
final class CallTop extends HBox {

    /** Share of the reference's minutes up to which being slower costs nothing, as the score has it. */
    private static final double EASE = 1.25;

    /** Width in em from which there is room for the figures' words. */
    private static final double WORDS_FIT_FROM = 80;

    private static final PseudoClass WARNS = PseudoClass.getPseudoClass("warns");

    private final CallModel model;
    private final CallScreen.Setting setting;
    private final Words words;
    private final CallWords texts;
    private final Label subtitle = new Label();
    private final Figure time = new Figure("clock", "call-time");
    private final Figure running = new Figure("leak", "call-running");
    private final Figure lost = new Figure(null, "call-lost");
    private final Figure marks = new Figure(null, "call-marks-state");
    private final Button safe = new Button();

    CallTop(
            CallModel model,
            CallScreen.Setting setting,
            Words words,
            CallWords texts,
            Runnable back,
            Runnable help,
            List<MenuItem> menu) {
        this.setting = setting;
        this.model = model;
        this.words = words;
        this.texts = texts;
        getStyleClass().addAll("top-bar", "call-top");
        Button home = quiet("back", "back", "top.back");
        home.setOnAction(e -> back.run());
        Label title = new Label();
        words.bind(
                title.textProperty(),
                "call.title",
                words.live(model.site().scenario().title()));
        title.getStyleClass().add("section-title");
        title.setMinWidth(0);
        subtitle.getStyleClass().addAll("small", "ink2");
        subtitle.setMinWidth(0);
        subtitle.setTooltip(new Tooltip());
        VBox names = new VBox(title, subtitle);
        names.setAlignment(Pos.CENTER_LEFT);
        names.setMinWidth(150);
        HBox.setHgrow(names, Priority.ALWAYS);
        running.value.getStyleClass().add("water");
        lost.value.getStyleClass().add("water");
        safe.setId("call-safe");
        safe.setGraphic(IconNode.of("key", 15));
        safe.setMinWidth(Region.USE_PREF_SIZE);
        words.bind(safe.textProperty(), "call.makeSafe");
        safe.setTooltip(new Tooltip());
        words.bind(safe.getTooltip().textProperty(), "call.makeSafeWhy");
        safe.setOnAction(e -> model.makeSafe());
        MenuButton more = new MenuButton();
        more.setId("menu");
        words.bind(more.textProperty(), "top.menu");
        more.getItems().setAll(menu);
        more.setMinWidth(Region.USE_PREF_SIZE);
        Button ask = quiet("help", "help", "top.help");
        ask.setOnAction(e -> help.run());
        getChildren().addAll(home, names, time, running, lost, marks, safe, more, ask);
        model.nowProperty().addListener(o -> refresh());
        model.busyProperty().addListener(o -> refresh());
        model.referenceProperty().addListener(o -> refresh());
        words.follow(this, this::refresh);
        widthProperty().addListener(o -> fit());
        time.value.fontProperty().addListener(o -> fit());
        refresh();
    }

    private Button quiet(String icon, String id, String key) {
        Button button = new Button();
        button.setId(id);
        button.setGraphic(IconNode.of(icon, 18));
        button.getStyleClass().add("quiet");
        button.setMinWidth(34);
        button.setTooltip(new Tooltip());
        words.bind(button.getTooltip().textProperty(), key);
        button.accessibleTextProperty().bind(button.getTooltip().textProperty());
        return button;
    }

    /** A site's subtitle is about its own complaint; a card of the drill deck has another one. */
    private Text what(Scenario scenario) {
        return setting.drilled() ? scenario.call().complaint() : scenario.subtitle();
    }

    private void fit() {
        boolean narrow = getWidth() < WORDS_FIT_FROM * time.value.getFont().getSize() / Figure.VALUE_EM;
        List.of(time, running, lost, marks).forEach(f -> f.terse(narrow));
    }

    private void refresh() {
        CallModel.Now now = model.nowProperty().get();
        String mode = words.say(
                setting.practice()
                        ? "call.practice"
                        : "call.mode." + model.mode().name());
        Scenario scenario = model.site().scenario();
        subtitle.setText(words.say("call.subtitle", mode, words.say(what(scenario))));
        subtitle.getTooltip().setText(words.say(scenario.call().complaint()));
        String minutes = words.say("call.min", words.display().plain(Math.rint(now.minutes()), 0));
        String goal = model.referenceProperty().get() == null
                ? words.say("call.onSite")
                : words.say("call.onSiteGoal", goal());
        time.show(minutes, goal);
        // What nobody has measured is not known.
        running.show(
                now.metered() ? texts.flow(now.running()) : words.say("call.notRead"), words.say("call.runningAway"));
        lost.show(now.metered() ? texts.litres(now.litres()) : words.say("call.notRead"), words.say("call.lost"));
        marks.show(words.say(now.marked() ? "call.marked" : "call.notMarked"), words.say("call.buriedLines"));
        marks.sign(now.marked() ? "ok" : "caution");
        marks.pseudoClassStateChanged(WARNS, !now.marked());
        boolean may = now.stage() == CallModel.Stage.TESTING
                && !now.safe()
                && !model.busyProperty().get();
        safe.setDisable(!may || !now.offers().containsKey("makeSafe"));
    }

    private String goal() {
        double goal = EASE * model.referenceProperty().get().minutes();
        return words.display().plain(Math.max(1, Math.rint(goal)), 0);
    }

    /** A number over its word. */
    private static final class Figure extends VBox {

        /** Size of its number in em. */
        static final double VALUE_EM = 1.14;

        private final Label value = new Label();
        private final Label word = new Label();

        Figure(String icon, String id) {
            setId(id);
            getStyleClass().add("call-figure");
            value.getStyleClass().add("value");
            if (icon != null) {
                sign(icon);
            }
            word.getStyleClass().addAll("small", "ink2");
            word.managedProperty().bind(word.visibleProperty());
            Tooltip whole = new Tooltip();
            whole.textProperty().bind(word.textProperty());
            Tooltip.install(this, whole);
            setAlignment(Pos.CENTER_LEFT);
            setMinWidth(Region.USE_PREF_SIZE);
            getChildren().addAll(value, word);
        }

        void sign(String icon) {
            value.setGraphic(IconNode.of(icon, 15));
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
