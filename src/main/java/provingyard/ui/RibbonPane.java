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

    private final YardModel model;
    private final Words words;
    private final Overlay picture = new Overlay();
    private final Pane band = new Pane(picture.node());
    private final Button play = new Button();
    private final Label status = new Label();
    private final RibbonStory story;
    private final RibbonWindow window;
    private final Line pointer = new Line();
    private final VBox plate = new VBox(2);
    private Theme theme = Theme.LIGHT;
    private int days = 10;
    private double hover = Double.NaN;
    private RibbonData data;
    private RibbonView view;
    private SeasonPlayer.Frame drawn;

    /**
     * Makes the ribbon.
     *
     * @param prove opens the tests of the sensors
     * @param records opens the controller's records
     */
    RibbonPane(YardModel model, Words words, Runnable prove, Runnable records) {
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
        getChildren().addAll(controls(prove, records), band);
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

    private HBox controls(Runnable prove, Runnable records) {
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
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        status.getStyleClass().add("ink2");
        HBox.setHgrow(status, Priority.SOMETIMES);
        status.setMinWidth(0);
        HBox box = new HBox(10, play, speeds(), next, tests, log, gap, status, spans());
        box.getStyleClass().add("ribbon-bar");
        box.setAlignment(Pos.CENTER_LEFT);
        return box;
    }

    private Button quiet(String id, String icon, String key, Runnable action) {
        Button button = new Button();
        button.setId(id);
        button.setGraphic(IconNode.of(icon, 16));
        button.getStyleClass().add("quiet");
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
        if (view != null && e.getX() >= RibbonView.GUTTER) {
            band.requestFocus();
            model.player().show(view.tick(e.getX()));
            point(e.getX());
        }
    }

    /** The hand points at a place of the band, or (NaN) nowhere. */
    private void point(double x) {
        hover = x;
        boolean on = view != null && x >= RibbonView.GUTTER && x <= view.end();
        pointer.setVisible(on);
        plate.setVisible(on);
        if (!on) {
            return;
        }
        RibbonPlate told = RibbonPlate.at(data, view.tick(x), words);
        plate.getChildren().setAll(plateRows(told));
        plate.applyCss();
        double w = Math.ceil(plate.prefWidth(-1));
        double h = Math.ceil(plate.prefHeight(w));
        boolean left = x + NEXT_TO_POINTER + w > getWidth();
        plate.resizeRelocate(left ? x - NEXT_TO_POINTER - w : x + NEXT_TO_POINTER, -h - ABOVE_BAND, w, h);
        pointer.setStartX(x);
        pointer.setEndX(x);
        pointer.setStartY(TOP_OF_LANES);
        pointer.setEndY(view.height());
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
        boolean sized = view != null && view.width() == (int) getWidth();
        if (frame == drawn && sized) {
            return;
        }
        drawn = frame;
        play.setText(words.say(frame.playing() ? "ribbon.pause" : "ribbon.play"));
        play.setGraphic(IconNode.of(frame.playing() ? "pause" : "play", 14));
        play.setDisable(frame.over() && frame.snapshot().tick() >= frame.lived());
        status.setText(sentence(frame.snapshot()));
        data = story.tell(frame);
        int height = RibbonPainter.height(data);
        picture.size(getWidth(), height, density());
        band.setMinHeight(height);
        band.setPrefHeight(height);
        long now = frame.snapshot().tick();
        window.follow(now, frame.playing());
        view = new RibbonView(
                (int) getWidth(),
                height,
                window.from(),
                window.to(),
                now,
                theme,
                words.language(),
                words.units().get());
        picture.draw(s -> RibbonPainter.draw(s, data, view));
        point(hover);
    }

    private double density() {
        return getScene() == null || getScene().getWindow() == null
                ? 1
                : Math.max(1, getScene().getWindow().getRenderScaleX());
    }

    /** What happens now, in one sentence. */
    private String sentence(Snapshot now) {
        Locale locale = words.language().equals("es") ? Locale.forLanguageTag("es") : Locale.ENGLISH;
        String clock = now.clock().format(DateTimeFormatter.ofPattern("EEE d MMM, HH:mm", locale));
        String running = now.zones().stream()
                .filter(Snapshot.Zone::open)
                .map(z -> words.say("ribbon.running", story.zoneName(z.id())))
                .findFirst()
                .orElseGet(() -> words.say("ribbon.idle"));
        return words.say(
                "ribbon.now",
                clock,
                running,
                words.display().text(Show.TEMPERATURE, now.sky().air()),
                words.display().text(Show.SPEED, now.sky().wind()));
    }

    /** Draws anew at the next pulse, because texts or units changed. */
    void stale() {
        drawn = null;
    }
}
