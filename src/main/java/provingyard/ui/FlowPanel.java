package provingyard.ui;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.geometry.HPos;
import javafx.geometry.VPos;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import provingyard.picture.RunPlot;
import provingyard.picture.Theme;
import provingyard.quantity.Show;
import provingyard.season.RunTrace;
import provingyard.setup.FlowWatch;

/**
 * The flow watch's zones: expected flow (typed, or recorded by the controller), the last run's mean and how far it lay off;
 * below, the chosen zone's last run with the expected flow and the limits, live while a limit is moved.
 */
final class FlowPanel extends VBox {

    private static final double LEAST_FLOW = 1e-3 / 60 / 10;
    private static final double MOST_FLOW = 20e-3;
    private static final double MINUTE = 60;

    /** Widths of the columns in percent. */
    private static final double[] SHARES = {38, 24, 20, 18};

    private record Row(ToggleButton name, QuantityField expected, Label last, Label difference) {}

    private final YardModel model;
    private final Words words;
    private final FlowLog log;
    private final Map<String, Row> rows = new LinkedHashMap<>();
    private final GridPane grid = new GridPane();
    private final ToggleGroup chosen = new ToggleGroup();
    private final CheckBox record = new CheckBox();
    private final Label runTitle = new Label();
    private final Canvas canvas = new Canvas(10, RunPlot.HEIGHT);
    private final Pane frame = new Pane(canvas);
    private Theme theme = Theme.LIGHT;
    private FlowWatch watch;

    FlowPanel(YardModel model, Words words, FlowLog log) {
        this.model = model;
        this.words = words;
        this.log = log;
        watch = model.setUp().flowWatch();
        setId("flow-panel");
        getStyleClass().add("flow-panel");
        Label title = new Label(words.say("flow.title"));
        title.getStyleClass().add("strong");
        grid();
        record.setId("flow-record");
        record.setText(words.say("flow.record"));
        record.setWrapText(true);
        record.setOnAction(e -> decide(FlowWatches.of(model.setUp().flowWatch()).record(record.isSelected())));
        runTitle.getStyleClass().addAll("small", "ink2");
        runTitle.setWrapText(true);
        runTitle.setMinHeight(Region.USE_PREF_SIZE);
        frame.setMinHeight(RunPlot.HEIGHT);
        frame.setPrefHeight(RunPlot.HEIGHT);
        frame.setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        frame.managedProperty().bind(frame.visibleProperty());
        canvas.widthProperty().bind(frame.widthProperty());
        frame.widthProperty().addListener(o -> draw());
        chosen.selectedToggleProperty().addListener((o, was, is) -> {
            if (is == null && was != null) {
                was.setSelected(true);
            } else {
                draw();
            }
        });
        getChildren().addAll(title, grid, record, runTitle, frame);
        log.zonesProperty().addListener(o -> refresh());
        refresh();
    }

    private void decide(FlowWatches next) {
        model.decide(
                "step.watch",
                model.setUp().with(next.sensor(model.selectedProperty().get()).watch()));
    }

    private void grid() {
        grid.getStyleClass().add("flow-grid");
        for (int i = 0; i < SHARES.length; i++) {
            ColumnConstraints column = new ColumnConstraints();
            column.setHalignment(i == 0 ? HPos.LEFT : HPos.RIGHT);
            column.setPercentWidth(SHARES[i]);
            grid.getColumnConstraints().add(column);
        }
        String unit = words.display().unit(Show.FLOW);
        String[] heads = {
            words.say("flow.zone"),
            words.say("flow.expected", unit),
            words.say("flow.last", unit),
            words.say("flow.off")
        };
        for (int i = 0; i < heads.length; i++) {
            Label head = new Label(heads[i]);
            head.getStyleClass().addAll("small", "ink3");
            head.setWrapText(true);
            head.setMinHeight(Region.USE_PREF_SIZE);
            head.setTextAlignment(
                    i == 0 ? javafx.scene.text.TextAlignment.LEFT : javafx.scene.text.TextAlignment.RIGHT);
            GridPane.setValignment(head, VPos.BOTTOM);
            grid.add(head, i, 0);
        }
    }

    private Row row(String zone) {
        ToggleButton name = new ToggleButton(zoneName(zone));
        name.setId("flow-zone-" + zone);
        name.getStyleClass().setAll("toggle-button", "zone-name");
        name.setToggleGroup(chosen);
        name.setUserData(zone);
        name.setMaxWidth(Double.MAX_VALUE);
        name.setWrapText(true);
        name.setMinHeight(Region.USE_PREF_SIZE);
        QuantityField expected = QuantityField.bare(Show.FLOW, LEAST_FLOW, MOST_FLOW, words, v -> expect(zone, v));
        expected.onEmpty(() -> expect(zone, Double.NaN));
        expected.setId("flow-expected-" + zone);
        expected.setMinWidth(0);
        expected.setMaxWidth(Double.MAX_VALUE);
        expected.setPromptText(words.say("flow.none"));
        expected.focusedProperty().addListener((o, was, is) -> {
            if (is) {
                name.setSelected(true);
            }
        });
        Label last = new Label();
        Label difference = new Label();
        difference.getStyleClass().add("strong");
        int at = rows.size() + 1;
        grid.add(name, 0, at);
        grid.add(expected, 1, at);
        grid.add(last, 2, at);
        grid.add(difference, 3, at);
        return new Row(name, expected, last, difference);
    }

    private void expect(String zone, double flow) {
        decide(FlowWatches.of(model.setUp().flowWatch()).expected(zone, flow));
    }

    private String zoneName(String id) {
        return model.scenario().plumbing().fittings().stream()
                .filter(f -> f.id().equals(id) && f.label() != null)
                .findFirst()
                .map(f -> words.say(f.label()))
                .orElse(id);
    }

    void theme(Theme next) {
        theme = next;
        draw();
    }

    /** Shows the limits of a flow watch that is not decided yet, while one of its settings is moved. */
    void preview(FlowWatch moved) {
        watch = moved;
        draw();
    }

    private void refresh() {
        watch = model.setUp().flowWatch();
        record.setSelected(watch.record());
        record.setDisable(model.locked());
        for (FlowLog.Zone zone : log.zonesProperty().get()) {
            Row row = rows.get(zone.id());
            if (row == null) {
                row = row(zone.id());
                rows.put(zone.id(), row);
            }
            fill(row, zone);
        }
        if (chosen.getSelectedToggle() == null && !rows.isEmpty()) {
            rows.values().iterator().next().name().setSelected(true);
        }
        draw();
    }

    private void fill(Row row, FlowLog.Zone zone) {
        row.expected().show(zone.expected(), !model.locked());
        row.expected().getStyleClass().remove("typed");
        if (zone.typed()) {
            row.expected().getStyleClass().add("typed");
        }
        String last = words.display().number(Show.FLOW, Double.isNaN(zone.mean()) ? 0 : zone.mean());
        row.last().setText(Double.isNaN(zone.mean()) ? "–" : last);
        row.difference().setText(difference(zone));
        boolean off = zone.difference() > watch.high() - 1 || watch.low() > 0 && zone.difference() < watch.low() - 1;
        row.difference().getStyleClass().remove("alarm");
        if (off) {
            row.difference().getStyleClass().add("alarm");
        }
        row.expected()
                .setAccessibleText(words.say(
                        "flow.accessible",
                        zoneName(zone.id()),
                        words.say(zone.typed() ? "flow.typed" : "flow.recorded"),
                        words.display().text(Show.FLOW, zone.mean()),
                        difference(zone)));
    }

    private String difference(FlowLog.Zone zone) {
        if (Double.isNaN(zone.difference())) {
            return "–";
        }
        String share = words.display().text(Show.FRACTION, zone.difference());
        return zone.difference() > 0.0005 ? "+" + share : share;
    }

    private void draw() {
        canvas.getGraphicsContext2D().clearRect(0, 0, canvas.getWidth(), canvas.getHeight());
        FlowLog.Zone zone = zone();
        RunTrace run = zone == null ? null : zone.lastRun();
        frame.setVisible(run != null);
        if (zone == null) {
            runTitle.setText("");
            return;
        }
        String source = Double.isNaN(zone.expected())
                ? words.say("flow.unknown")
                : words.say(zone.typed() ? "flow.typed" : "flow.recorded");
        runTitle.setText(
                run == null
                        ? words.say("flow.noRun", zoneName(zone.id()))
                        : words.say("flow.run", zoneName(zone.id()), source));
        if (run != null && canvas.getWidth() > 20) {
            frame.setAccessibleText(runTitle.getText());
            plot(zone, run).draw(new CanvasSurface(canvas.getGraphicsContext2D()), canvas.getWidth(), theme);
        }
    }

    private RunPlot plot(FlowLog.Zone zone, RunTrace run) {
        RunPlot.Words texts = new RunPlot.Words(
                limit("flow.high", zone, watch.high()),
                words.display().text(Show.FLOW, zone.expected()),
                limit("flow.low", zone, watch.low()),
                words.say("flow.settling"),
                clock(run.start()),
                words.display().text(Show.DURATION, run.flow().length * MINUTE));
        return new RunPlot(run.flow(), zone.expected(), watch.high(), watch.low(), watch.settling() / MINUTE, texts);
    }

    private String limit(String key, FlowLog.Zone zone, double share) {
        return words.say(key, words.display().text(Show.FLOW, zone.expected() * share));
    }

    private String clock(long tick) {
        return String.format("%02d:%02d", tick / 60 % 24, tick % 60);
    }

    private FlowLog.Zone zone() {
        if (chosen.getSelectedToggle() == null) {
            return null;
        }
        Object id = chosen.getSelectedToggle().getUserData();
        List<FlowLog.Zone> all = log.zonesProperty().get();
        return all.stream().filter(z -> z.id().equals(id)).findFirst().orElse(null);
    }
}
