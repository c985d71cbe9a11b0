package provingyard.ui;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Line;
import javafx.scene.text.Text;
import provingyard.picture.RibbonData;
import provingyard.picture.RibbonPainter;
import provingyard.picture.RibbonView;
import provingyard.picture.Theme;
import provingyard.quantity.Show;
import provingyard.season.Snapshot;

/** The weather ribbon with its controls: play, speed, next event, and the band that is also the scrubber. */
final class RibbonPane extends VBox {

    private static final int DAY = 1440;
    private static final int HOUR = 60;
    private static final double NEXT_TO_POINTER = 14;
    private static final double ABOVE_BAND = 44;
    private static final double TOP_OF_LANES = 16;
    private static final double USUAL_TEXT = 14;
    private static final double BAR_GAP = 10;

    private final YardModel model;
    private final Words words;
    private final LivePicture picture = new LivePicture();
    private final Pane band = new Pane(picture.node());
    private final Button play = new Button();
    private final Label status = new Label();
    private final VBox bar = new VBox(4);
    private final RibbonStory story;
    private final RibbonWindow window;
    private final Line pointer = new Line();
    private final VBox plate = new VBox(2);
    private Theme theme = Theme.LIGHT;
    private int days = 10;
    private List<Node> first = List.of();
    private List<Node> second = List.of();
    private Node last;
    private double arrangedFor;
    private double hover = Double.NaN;
    private double zoom = 1;
    private RibbonData data;
    private RibbonView view;
    private SeasonPlayer.Frame drawn;

    /**
     * Makes the ribbon.
     *
     * @param prove opens the tests of the sensors
     * @param records opens the controller's records
     * @param schedule opens the schedule
     */
    RibbonPane(YardModel model, Words words, Runnable prove, Runnable records, Runnable schedule) {
        this.model = model;
        this.words = words;
        story = new RibbonStory(model, words);
        window = new RibbonWindow(story.whole(), (long) days * DAY);
        setId("ribbon");
        getStyleClass().add("ribbon");
        band.setFocusTraversable(true);
        band.setId("ribbon-band");
        band.setMinHeight(60);
        band.accessibleTextProperty().bind(words.live("ribbon.accessible"));
        band.setOnMousePressed(this::scrub);
        band.setOnMouseDragged(this::scrub);
        band.setOnMouseMoved(e -> point(e.getX()));
        band.setOnMouseExited(e -> point(Double.NaN));
        band.setOnKeyPressed(this::key);
        band.getChildren().addAll(pointer, plate);
        pointer.getStyleClass().add("ribbon-pointer");
        plate.setId("ribbon-plate");
        plate.getStyleClass().add("plate");
        for (Node node : List.of(pointer, plate)) {
            node.setMouseTransparent(true);
            node.setManaged(false);
            node.setVisible(false);
        }
        getChildren().addAll(controls(prove, records, schedule), band);
    }

    private void key(KeyEvent e) {
        SeasonPlayer player = model.player();
        SeasonPlayer.Frame frame = model.frameProperty().get();
        long now = frame.snapshot().tick();
        long step = e.isShiftDown() ? DAY : HOUR;
        if (e.isShortcutDown() || e.isAltDown()) {
            return;
        }
        switch (e.getCode()) {
            case LEFT -> player.show(Math.max(0, now - step));
            case RIGHT -> player.show(now + step);
            case HOME -> player.show(0);
            case END -> player.show(frame.lived());
            case COMMA -> player.previousEvent();
            case PERIOD -> player.nextEvent();
            default -> {
                return;
            }
        }
        e.consume();
    }

    void theme(Theme next) {
        theme = next;
        drawn = null;
    }

    private VBox controls(Runnable prove, Runnable records, Runnable schedule) {
        play.setId("play");
        play.getStyleClass().add("main");
        play.setMinWidth(110);
        play.setOnAction(e -> model.togglePlay());
        Button next =
                quiet("next-event", "next", "ribbon.next", () -> model.player().nextEvent());
        Button tests = quiet("open-prove", "ok", "prove.title", prove);
        tests.setTooltip(tip("prove.open"));
        Button log = quiet("open-records", "log", "ribbon.records", records);
        log.setTooltip(tip("records.open"));
        Button watering = quiet("open-schedule", "clock", "schedule.title", schedule);
        watering.setTooltip(tip("schedule.open"));
        status.getStyleClass().add("ink2");
        status.setMinWidth(0);
        first = List.of(play, speeds());
        second = List.of(next, watering, tests, log);
        last = spans();
        bar.getStyleClass().add("ribbon-bar");
        return bar;
    }

    /** One row where all has room, else two; what happens now is said as fully as there is room. */
    private void arrange(Snapshot now) {
        boolean narrow = room(false) < 0;
        if (bar.getChildren().isEmpty() || narrow != bar.getChildren().size() > 1) {
            HBox upper = row(first);
            HBox lower = narrow ? row(second) : upper;
            if (!narrow) {
                upper.getChildren().addAll(second);
            }
            lower.getChildren().addAll(gap(), status);
            upper.getChildren().addAll(narrow ? List.of(gap(), last) : List.of(last));
            bar.getChildren().setAll(narrow ? List.of(upper, lower) : List.of(upper));
        }
        double room = room(narrow);
        Text measure = new Text();
        measure.setFont(status.getFont());
        String said = "";
        for (String text : sentences(now)) {
            measure.setText(text);
            if (Math.ceil(measure.getLayoutBounds().getWidth()) + 2 <= room) {
                said = text;
                break;
            }
        }
        status.setText(said);
    }

    /** px left for the sentence, in one row or in the second of two. */
    private double room(boolean second) {
        List<Node> others = new ArrayList<>(this.second);
        if (!second) {
            others.addAll(first);
            others.add(last);
        }
        double taken = 24 + BAR_GAP * (others.size() + 1);
        for (Node node : others) {
            taken += Math.max(node.minWidth(-1), node.prefWidth(-1));
        }
        return getWidth() - taken;
    }

    private static HBox row(List<? extends Node> nodes) {
        HBox row = new HBox(BAR_GAP);
        row.getChildren().addAll(nodes);
        row.setAlignment(Pos.CENTER_LEFT);
        return row;
    }

    private static Region gap() {
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        return gap;
    }

    private Button quiet(String id, String icon, String key, Runnable action) {
        Button button = new Button();
        button.setId(id);
        button.setGraphic(IconNode.of(icon, 16));
        button.getStyleClass().add("on-bar");
        button.setMinWidth(Region.USE_PREF_SIZE);
        words.bind(button.textProperty(), key);
        button.setOnAction(e -> action.run());
        return button;
    }

    private Tooltip tip(String key) {
        Tooltip tip = new Tooltip();
        words.bind(tip.textProperty(), key);
        return tip;
    }

    private HBox speeds() {
        ToggleGroup group = new ToggleGroup();
        HBox box = new HBox();
        box.getStyleClass().add("segments");
        for (Speed speed : Speed.values()) {
            if (speed == Speed.REAL && model.firstSteps()) {
                continue;
            }
            ToggleButton button = new ToggleButton();
            words.bind(button.textProperty(), "speed." + speed.name());
            button.setId("speed-" + speed.name());
            button.setToggleGroup(group);
            button.setSelected(model.speedProperty().get() == speed);
            button.setMinWidth(Region.USE_PREF_SIZE);
            Tooltip tip = tip("speed.long." + speed.name());
            button.setTooltip(tip);
            button.accessibleTextProperty().bind(tip.textProperty());
            button.setOnAction(e -> {
                button.setSelected(true);
                model.speed(speed);
            });
            model.speedProperty().addListener((o, was, is) -> {
                if (is == speed) {
                    button.setSelected(true);
                }
            });
            box.getChildren().add(button);
        }
        return box;
    }

    private HBox spans() {
        ToggleGroup group = new ToggleGroup();
        HBox box = new HBox();
        box.getStyleClass().add("segments");
        for (int span : new int[] {3, 10, 0}) {
            ToggleButton button = new ToggleButton();
            button.setId("span-" + span);
            words.bind(button.textProperty(), span == 0 ? "ribbon.season" : "ribbon.days", span);
            button.setToggleGroup(group);
            button.setSelected(span == days);
            button.setMinWidth(Region.USE_PREF_SIZE);
            button.setOnAction(e -> {
                button.setSelected(true);
                days = span;
                window.span((long) span * DAY);
                drawn = null;
            });
            box.getChildren().add(button);
        }
        return box;
    }

    private void scrub(MouseEvent e) {
        if (view != null && e.getX() >= RibbonView.GUTTER * zoom) {
            band.requestFocus();
            model.player().show(view.tick(e.getX() / zoom));
            point(e.getX());
        }
    }

    /** The hand points at a place of the band, or (NaN) nowhere. */
    private void point(double x) {
        hover = x;
        boolean on = view != null && x >= RibbonView.GUTTER * zoom && x <= view.end() * zoom;
        pointer.setVisible(on);
        plate.setVisible(on);
        if (!on) {
            return;
        }
        RibbonPlate told = RibbonPlate.at(data, view.tick(x / zoom), words);
        plate.getChildren().setAll(plateRows(told));
        plate.applyCss();
        double w = Math.ceil(plate.prefWidth(-1));
        double h = Math.ceil(plate.prefHeight(w));
        boolean left = x + NEXT_TO_POINTER + w > getWidth();
        plate.resizeRelocate(left ? x - NEXT_TO_POINTER - w : x + NEXT_TO_POINTER, -h - ABOVE_BAND * zoom, w, h);
        pointer.setStartX(x);
        pointer.setEndX(x);
        pointer.setStartY(TOP_OF_LANES * zoom);
        pointer.setEndY(view.height() * zoom);
    }

    private static List<Node> plateRows(RibbonPlate told) {
        List<Node> nodes = new ArrayList<>();
        Label title = new Label(told.title());
        title.getStyleClass().add("strong");
        nodes.add(title);
        for (RibbonPlate.Row row : told.rows()) {
            Label name = new Label(row.name());
            name.getStyleClass().addAll("small", "ink2");
            Label value = new Label(row.value());
            value.getStyleClass().addAll("small", "strong");
            Region gap = new Region();
            HBox.setHgrow(gap, Priority.ALWAYS);
            nodes.add(new HBox(12, name, gap, value));
        }
        return nodes;
    }

    /** Draws what changed; called once a pulse. */
    void pulse() {
        SeasonPlayer.Frame frame = model.frameProperty().get();
        if (frame == null || getWidth() < 10) {
            return;
        }
        zoom = status.getFont().getSize() / USUAL_TEXT;
        int width = (int) (getWidth() / zoom);
        if (frame != drawn || Math.abs(room(false) - arrangedFor) > 0.5) {
            arrangedFor = room(false);
            arrange(frame.snapshot());
        }
        boolean sized = view != null && view.width() == width && band.getMinHeight() == view.height() * zoom;
        if (frame == drawn && sized) {
            return;
        }
        drawn = frame;
        play.setText(words.say(frame.playing() ? "ribbon.pause" : "ribbon.play"));
        play.setGraphic(IconNode.of(frame.playing() ? "pause" : "play", 14));
        play.setDisable(frame.over() && frame.snapshot().tick() >= frame.lived());
        data = story.tell(frame);
        int height = RibbonPainter.height(data);
        picture.size(getWidth(), height * zoom, density());
        band.setMinHeight(height * zoom);
        band.setPrefHeight(height * zoom);
        long now = frame.snapshot().tick();
        window.follow(now, frame.playing());
        view = new RibbonView(
                width,
                height,
                window.from(),
                window.to(),
                now,
                theme,
                words.language(),
                words.units().get());
        picture.draw(s -> {
            s.scale(zoom, zoom);
            RibbonPainter.draw(s, data, view);
        });
        point(hover);
    }

    private double density() {
        return getScene() == null || getScene().getWindow() == null
                ? 1
                : Math.max(1, getScene().getWindow().getRenderScaleX());
    }

    /** What happens now, from the fullest to the shortest sentence. */
    private List<String> sentences(Snapshot now) {
        Locale locale = words.language().equals("es") ? Locale.forLanguageTag("es") : Locale.ENGLISH;
        String clock = now.clock().format(DateTimeFormatter.ofPattern("EEE d MMM, HH:mm", locale));
        String running = now.zones().stream()
                .filter(Snapshot.Zone::open)
                .map(z -> words.say("ribbon.running", story.zoneName(z.id())))
                .findFirst()
                .orElseGet(() -> words.say("ribbon.idle"));
        String full = words.say(
                "ribbon.now",
                clock,
                running,
                words.display().text(Show.TEMPERATURE, now.sky().air()),
                words.display().text(Show.SPEED, now.sky().wind()));
        return List.of(full, words.say("ribbon.nowShort", clock, running), clock);
    }

    /** Draws anew at the next pulse, because texts or units changed. */
    void stale() {
        drawn = null;
    }
}
