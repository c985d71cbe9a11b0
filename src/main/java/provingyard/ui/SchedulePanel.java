package provingyard.ui;

import java.util.function.UnaryOperator;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import provingyard.setup.SetUp;

/** The schedule, over the yard: days, start times, seasonal percentage, and each zone's run, cycle and soak. */
final class SchedulePanel extends VBox {

    private final YardModel model;
    private final Words words;
    private final ScheduleDays days;
    private final ScheduleZones zones;
    private final Label state = new Label();
    private final Button undo = new Button();
    private final Button back = new Button();
    private final HBox lock = new HBox(8);
    private final Label why = new Label();

    SchedulePanel(YardModel model, Words words, Runnable close) {
        this.model = model;
        this.words = words;
        setId("schedule");
        getStyleClass().addAll("sheet", "schedule");
        setSpacing(12);
        setVisible(false);
        setMaxHeight(Region.USE_PREF_SIZE);
        days = new ScheduleDays(words, this::decide);
        zones = new ScheduleZones(model, words, this::decide);
        HBox.setHgrow(zones, Priority.ALWAYS);
        zones.setMinWidth(0);
        HBox both = new HBox(22, days, zones);
        // Room for the ring around what has the focus.
        both.getStyleClass().add("schedule-body");
        FittingScroll page = new FittingScroll(both, FittingScroll.BAR);
        VBox.setVgrow(page, Priority.ALWAYS);
        lock.setId("schedule-lock");
        lock.getStyleClass().add("caution");
        lock.setAlignment(Pos.CENTER_LEFT);
        lock.managedProperty().bind(lock.visibleProperty());
        why.setWrapText(true);
        why.setMinHeight(Region.USE_PREF_SIZE);
        HBox.setHgrow(why, Priority.ALWAYS);
        lock.getChildren().addAll(IconNode.of("caution", 16), why);
        getChildren().addAll(head(close), lock, page);
        model.draftProperty().addListener(o -> refresh());
        model.frameProperty().addListener(o -> lockAgain());
        words.follow(this, this::refresh);
    }

    private HBox head(Runnable close) {
        Label title = new Label();
        words.bind(title.textProperty(), "schedule.title");
        title.getStyleClass().add("section-title");
        title.setMinWidth(Region.USE_PREF_SIZE);
        state.setId("schedule-state");
        state.getStyleClass().add("ink2");
        state.setMinWidth(0);
        state.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(state, Priority.ALWAYS);
        button(undo, "schedule-undo", "undo", "schedule.undo", model::undo);
        button(
                back,
                "schedule-back",
                null,
                "schedule.back",
                () -> put(model.setUp().withSchedule(null)));
        Button shut = new Button();
        button(shut, "schedule-close", "cross", null, close);
        shut.getStyleClass().add("quiet");
        shut.accessibleTextProperty().bind(words.live("schedule.close"));
        HBox box = new HBox(12, title, state, undo, back, shut);
        box.getStyleClass().add("schedule-head");
        box.setAlignment(Pos.CENTER_LEFT);
        return box;
    }

    private void button(Button button, String id, String icon, String key, Runnable action) {
        button.setId(id);
        if (icon != null) {
            button.setGraphic(IconNode.of(icon, 16));
        }
        if (key != null) {
            words.bind(button.textProperty(), key);
        }
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.setOnAction(e -> action.run());
    }

    private void decide(UnaryOperator<Schedules> step) {
        Schedules next = step.apply(Schedules.of(model.setUp(), model.scenario()));
        put(next.into(model.setUp(), model.scenario()));
    }

    private void put(SetUp next) {
        if (model.whyNoSchedule() == null) {
            model.decide("step.schedule", next);
        }
        refresh();
    }

    /** Opens the sheet. */
    void open() {
        setVisible(true);
        refresh();
        Node firstField = lookup("#schedule-start-0");
        (firstField == null || firstField.isDisabled() ? lookup("#schedule-close") : firstField).requestFocus();
    }

    private void lockAgain() {
        boolean locked = model.whyNoSchedule() != null;
        if (isVisible() && locked != lock.isVisible()) {
            refresh();
        }
    }

    private void refresh() {
        if (!isVisible()) {
            return;
        }
        String reason = model.whyNoSchedule();
        boolean open = reason == null;
        lock.setVisible(!open);
        why.setText(open ? "" : words.say(reason));
        boolean own = model.setUp().schedule() == null;
        state.setText(words.say(own ? "schedule.asFound" : "schedule.changed"));
        back.setDisable(!open || own);
        undo.setDisable(!open || model.draftProperty().get().undoable().isEmpty());
        Schedules now = Schedules.of(model.setUp(), model.scenario());
        days.show(now, open);
        zones.show(now, open);
    }
}
