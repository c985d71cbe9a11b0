package provingyard.ui;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import provingyard.quantity.Show;
import provingyard.scenario.Schedule;

/** A schedule's days, start times and seasonal percentage, and the hours that the ordinance allows. */
final class ScheduleDays extends VBox {

    private static final double MOST_SEASONAL = 3;

    private static final Setting SEASONAL = new Setting(
            "setting.seasonal",
            Show.FRACTION,
            0,
            MOST_SEASONAL,
            new Setting.Usual(0.5, 1.2),
            true,
            (u, id) -> u.schedule().seasonal(),
            (u, id, v) -> u.withSchedule(new Schedules(u.schedule()).seasonal(v).schedule()));

    private final Words words;
    private final Consumer<UnaryOperator<Schedules>> change;
    private final Segments<Boolean> mode;
    private final Map<DayOfWeek, ToggleButton> weekdays = new EnumMap<>(DayOfWeek.class);
    private final FlowPane week = new FlowPane(4, 4);
    private final Label every = new Label();
    private final Button fewer;
    private final Button more;
    private final HBox interval;
    private final FlowPane starts = new FlowPane(8, 6);
    private final List<TimeField> times = new ArrayList<>();
    private final List<Button> removals = new ArrayList<>();
    private final Button add = new Button();
    private final Label complaint = new Label();
    private final SettingRow seasonal;
    private final Label allowed = new Label();
    private Schedules shown;

    /**
     * Makes the side.
     *
     * @param change takes a step of the schedule into the set-up
     */
    ScheduleDays(Words words, Consumer<UnaryOperator<Schedules>> change) {
        super(10);
        this.words = words;
        this.change = change;
        getStyleClass().add("schedule-days");
        mode = new Segments<>(
                "schedule-mode",
                List.of(
                        new Segments.Choice<>(true, "interval", words.live("schedule.interval"), null),
                        new Segments.Choice<>(false, "weekdays", words.live("schedule.weekdays"), null)),
                true,
                this::choose);
        for (DayOfWeek day : DayOfWeek.values()) {
            ToggleButton button = new ToggleButton();
            button.setId("schedule-" + day.name());
            button.getStyleClass().add("day");
            button.setMinWidth(Region.USE_PREF_SIZE);
            button.setOnAction(e -> step(s -> s.toggled(day)));
            weekdays.put(day, button);
        }
        week.getChildren().addAll(weekdays.values());
        every.setId("schedule-every");
        fewer = stepper("schedule-fewer", "minus", "schedule.fewer", -1);
        more = stepper("schedule-more", "plus", "schedule.more", 1);
        interval = new HBox(8, fewer, every, more);
        interval.setAlignment(Pos.CENTER_LEFT);
        starts.setAlignment(Pos.CENTER_LEFT);
        add.setId("schedule-add-start");
        add.setGraphic(IconNode.of("plus", 14));
        add.setMinWidth(Region.USE_PREF_SIZE);
        words.bind(add.textProperty(), "schedule.addStart");
        add.setOnAction(e -> step(Schedules::oneMoreStart));
        complaint.setId("schedule-complaint");
        complaint.getStyleClass().addAll("alarm", "small");
        complaint.setGraphic(IconNode.of("alarm", 14));
        complaint.managedProperty().bind(complaint.visibleProperty());
        complaint.visibleProperty().bind(complaint.textProperty().isNotEmpty());
        seasonal = new SettingRow(SEASONAL, words, v -> {}, v -> step(s -> s.seasonal(v)));
        allowed.getStyleClass().addAll("small", "ink2");
        wrap(complaint);
        wrap(allowed);
        getChildren()
                .addAll(
                        title("schedule.days"),
                        mode,
                        interval,
                        week,
                        new Hairline(),
                        title("schedule.starts"),
                        starts,
                        complaint,
                        new Hairline(),
                        seasonal,
                        new Hairline(),
                        allowed);
    }

    private static void wrap(Label label) {
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
    }

    private Label title(String key) {
        Label title = new Label();
        words.bind(title.textProperty(), key);
        title.getStyleClass().add("strong");
        return title;
    }

    private Button stepper(String id, String icon, String key, int by) {
        Button button = new Button();
        button.setId(id);
        button.setGraphic(IconNode.of(icon, 14));
        button.accessibleTextProperty().bind(words.live(key));
        button.setOnAction(e -> step(s -> s.every(s.schedule().every() + by)));
        return button;
    }

    private void step(UnaryOperator<Schedules> next) {
        change.accept(next);
    }

    private void choose(boolean byInterval) {
        boolean is = shown.schedule().every() > 0;
        if (byInterval && !is) {
            step(s -> s.every(1));
        } else if (!byInterval && is) {
            step(s -> s.on(List.of(DayOfWeek.values())));
        }
    }

    /** Shows a schedule; what is being typed is left alone. */
    void show(Schedules now, boolean open) {
        shown = now;
        Schedule s = now.schedule();
        boolean byInterval = s.every() > 0;
        mode.show(byInterval);
        mode.setDisable(!open);
        seen(interval, byInterval);
        seen(week, !byInterval);
        every.setText(s.every() == 1 ? words.say("schedule.everyDay") : words.say("schedule.everyDays", s.every()));
        fewer.setDisable(!open || s.every() <= 1);
        more.setDisable(!open || s.every() >= Schedules.MOST_DAYS);
        weekdays.forEach((day, button) -> {
            button.setText(name(day));
            button.setSelected(s.days().contains(day));
            button.setDisable(!open);
        });
        starts(s.starts(), open);
        seasonal.show(s.seasonal(), open);
        allowed.setText(ordinance(s.allowed()));
    }

    private static void seen(Node node, boolean visible) {
        node.setVisible(visible);
        node.setManaged(visible);
    }

    private void starts(List<LocalTime> now, boolean open) {
        if (times.size() != now.size()) {
            times.clear();
            removals.clear();
            starts.getChildren().clear();
            for (int i = 0; i < now.size(); i++) {
                starts.getChildren().add(start(i));
            }
            starts.getChildren().add(add);
        }
        for (int i = 0; i < now.size(); i++) {
            times.get(i).show(now.get(i), open);
            String time = TimeField.WRITTEN.format(now.get(i));
            removals.get(i).setAccessibleText(words.say("schedule.removeStart", time));
            seen(removals.get(i), open && now.size() > 1);
        }
        seen(add, open && now.size() < Schedules.MOST_STARTS);
    }

    private HBox start(int index) {
        TimeField field = new TimeField(words, t -> step(s -> s.start(index, t)));
        field.setId("schedule-start-" + index);
        field.accessibleTextProperty().bind(words.live("schedule.start", index + 1));
        field.complaintProperty().addListener((o, was, is) -> complaint.setText(is));
        Button remove = new Button();
        remove.setId("schedule-remove-start-" + index);
        remove.setGraphic(IconNode.of("cross", 12));
        remove.getStyleClass().add("quiet");
        remove.setOnAction(e -> {
            step(s -> s.withoutStart(index));
            times.get(0).requestFocus();
        });
        times.add(field);
        removals.add(remove);
        HBox box = new HBox(2, field, remove);
        box.setAlignment(Pos.CENTER_LEFT);
        return box;
    }

    private String name(DayOfWeek day) {
        return day.getDisplayName(TextStyle.SHORT, locale());
    }

    private Locale locale() {
        return words.language().equals("es") ? Locale.forLanguageTag("es") : Locale.ENGLISH;
    }

    private String ordinance(Schedule.Allowed allows) {
        String days = allows.days().isEmpty() || allows.days().size() == DayOfWeek.values().length
                ? words.say("schedule.allDays")
                : allows.days().stream().map(this::name).collect(Collectors.joining(", "));
        String hours = allows.windows().isEmpty()
                ? words.say("schedule.allHours")
                : allows.windows().stream()
                        .map(w -> words.say(
                                "schedule.window",
                                TimeField.WRITTEN.format(w.from()),
                                TimeField.WRITTEN.format(w.to())))
                        .collect(Collectors.joining(", "));
        return words.say("schedule.allowed", hours, days);
    }
}
