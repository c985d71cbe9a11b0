package provingyard.ui;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javafx.geometry.HPos;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import provingyard.quantity.Show;
import provingyard.scenario.Plumbing;
import provingyard.scenario.Schedule.ZoneRun;
import provingyard.season.Plan;

/** Each zone's run time, longest cycle and soak, and what becomes of them on a watering day. */
final class ScheduleZones extends VBox {

    private static final double MOST = 12 * 3600;
    private static final double LEAST_CYCLE = 60;
    private static final int DAY = 1440;
    private static final int HOUR = 60;

    private record Row(QuantityField runs, QuantityField cycle, QuantityField soak, PassLane lane) {}

    private final YardModel model;
    private final Words words;
    private final Consumer<UnaryOperator<Schedules>> change;
    private final Map<String, Row> rows = new LinkedHashMap<>();
    private final GridPane grid = new GridPane();
    private final Label complaint = new Label();
    private final Label first = new Label();
    private final Label last = new Label();
    private final Label total = new Label();
    private final HBox cut = new HBox(8);
    private final Label cutText = new Label();

    /**
     * Makes the table.
     *
     * @param change takes a step of the schedule into the set-up
     */
    ScheduleZones(YardModel model, Words words, Consumer<UnaryOperator<Schedules>> change) {
        super(10);
        this.model = model;
        this.words = words;
        this.change = change;
        setId("schedule-zones");
        grid.getStyleClass().add("schedule-grid");
        columns();
        head();
        int line = 1;
        for (ZoneRun zone :
                Schedules.of(model.setUp(), model.scenario()).schedule().zones()) {
            rows.put(zone.zone(), row(zone.zone(), line++));
        }
        total.setId("schedule-total");
        total.getStyleClass().add("ink2");
        complaint.setId("schedule-zone-complaint");
        complaint.getStyleClass().addAll("alarm", "small");
        complaint.setGraphic(IconNode.of("alarm", 14));
        complaint.visibleProperty().bind(complaint.textProperty().isNotEmpty());
        complaint.managedProperty().bind(complaint.visibleProperty());
        cut.setId("schedule-cut");
        cut.getStyleClass().add("caution");
        cut.getChildren().addAll(IconNode.of("caution", 16), cutText);
        cut.managedProperty().bind(cut.visibleProperty());
        HBox.setHgrow(cutText, Priority.ALWAYS);
        for (Label label : List.of(total, complaint, cutText)) {
            label.setWrapText(true);
            label.setMinHeight(Region.USE_PREF_SIZE);
        }
        Label about = small("schedule.about", "ink3");
        getChildren().addAll(grid, complaint, total, cut, about);
    }

    private void columns() {
        for (int i = 0; i < 5; i++) {
            ColumnConstraints column = new ColumnConstraints();
            column.setHalignment(i == 0 || i == 4 ? HPos.LEFT : HPos.RIGHT);
            column.setHgrow(i == 4 ? Priority.ALWAYS : i == 0 ? Priority.SOMETIMES : Priority.NEVER);
            column.setMinWidth(i == 0 ? 70 : Region.USE_PREF_SIZE);
            grid.getColumnConstraints().add(column);
        }
    }

    private void head() {
        String[] keys = {"flow.zone", "schedule.runs", "schedule.cycle", "schedule.soak"};
        for (int i = 0; i < keys.length; i++) {
            Label head = small(keys[i], "ink3");
            GridPane.setValignment(head, VPos.BOTTOM);
            grid.add(head, i, 0);
        }
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        for (Label end : List.of(first, last)) {
            end.getStyleClass().addAll("small", "ink3");
            end.setMinWidth(Region.USE_PREF_SIZE);
        }
        grid.add(new HBox(first, gap, last), 4, 0);
    }

    private Label small(String key, String tone) {
        Label label = new Label();
        words.bind(label.textProperty(), key);
        label.getStyleClass().addAll("small", tone);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        return label;
    }

    private Row row(String zone, int line) {
        Label name = new Label();
        name.textProperty().bind(words.live(label(zone)));
        name.setWrapText(true);
        name.setMinHeight(Region.USE_PREF_SIZE);
        QuantityField runs = field(zone, "runs", 0, v -> step(zone, z -> new ZoneRun(zone, v, z.cycle(), z.soak())));
        QuantityField cycle =
                field(zone, "cycle", LEAST_CYCLE, v -> step(zone, z -> new ZoneRun(zone, z.runs(), v, z.soak())));
        QuantityField soak = field(zone, "soak", 0, v -> step(zone, z -> new ZoneRun(zone, z.runs(), z.cycle(), v)));
        cycle.onEmpty(() -> step(zone, z -> new ZoneRun(zone, z.runs(), 0, 0)));
        cycle.promptTextProperty().bind(words.live("schedule.atOnce"));
        PassLane lane = new PassLane();
        int column = 0;
        for (Node node : List.of(name, runs, cycle, soak, lane)) {
            grid.add(node, column++, line);
        }
        return new Row(runs, cycle, soak, lane);
    }

    private provingyard.scenario.Text label(String zone) {
        return model.scenario().plumbing().fittings().stream()
                .filter(f -> f.id().equals(zone))
                .map(Plumbing.Fitting::label)
                .findFirst()
                .orElse(null);
    }

    private QuantityField field(String zone, String what, double least, java.util.function.DoubleConsumer take) {
        QuantityField field = new QuantityField(Show.DURATION, least, MOST, words, take);
        field.setId("schedule-" + what + "-" + zone);
        field.accessibleTextProperty()
                .bind(words.live("schedule.of", words.live("schedule." + what), words.live(label(zone))));
        field.complaintProperty().addListener((o, was, is) -> complaint.setText(is));
        field.setMinWidth(Region.USE_PREF_SIZE);
        return field;
    }

    private void step(String zone, UnaryOperator<ZoneRun> next) {
        change.accept(s -> s.with(next.apply(s.of(zone))));
    }

    /** Shows a schedule; what is being typed is left alone. */
    void show(Schedules now, boolean open) {
        Schedules.Pass pass = now.pass(model.scenario());
        rows.forEach((zone, row) -> {
            ZoneRun run = now.of(zone);
            boolean parts = run.cycle() > 0;
            row.runs().show(run.runs(), open);
            row.cycle().show(parts ? run.cycle() : Double.NaN, open);
            row.soak().show(parts ? run.soak() : Double.NaN, open && parts);
            List<Plan.Run> its =
                    pass.runs().stream().filter(r -> r.zone().equals(zone)).toList();
            row.lane().show(its, pass.from(), pass.to());
        });
        boolean any = !pass.runs().isEmpty();
        first.setText(any ? clock(pass.from()) : "");
        last.setText(any ? clock(pass.to()) : "");
        total.setText(
                any
                        ? words.say(
                                "schedule.total",
                                clock(pass.from()),
                                clock(pass.to()),
                                words.display().text(Show.DURATION, 60.0 * pass.minutes()),
                                pass.runs().size())
                        : words.say("schedule.nothing"));
        cut.setVisible(any && pass.minutes() < pass.asked());
        cutText.setText(words.say(
                "schedule.cut",
                words.display().text(Show.DURATION, 60.0 * pass.minutes()),
                words.display().text(Show.DURATION, 60.0 * pass.asked())));
    }

    private static String clock(long tick) {
        return String.format(java.util.Locale.ROOT, "%02d:%02d", tick % DAY / HOUR, tick % HOUR);
    }
}
