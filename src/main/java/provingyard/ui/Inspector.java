package provingyard.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import provingyard.picture.Icons;
import provingyard.picture.Theme;
import provingyard.scenario.SensorKind;
import provingyard.setup.Cautions;
import provingyard.setup.FlowWatch;
import provingyard.setup.Interlock;
import provingyard.setup.Placement;
import provingyard.setup.SetUp;

/**
 * Everything about the selected sensor: settings and what they would have done, what could be measured at its place, what
 * the controller does, where it stands in numbers, and cautions. The head stays while the body scrolls.
 */
final class Inspector extends VBox {

    private record Bound(Setting setting, SettingRow row) {}

    private final YardModel model;
    private final Words words;
    private final VBox body = new VBox();
    private final VBox head = new VBox();
    private final ScrollPane scroll = new ScrollPane(body);
    private final List<Bound> rows = new ArrayList<>();
    private final Label place = new Label();
    private final Label reading = new Label();
    private final VBox facts = new VBox();
    private final ExecutorService worker = new ThreadPoolExecutor(
            1,
            1,
            0,
            TimeUnit.SECONDS,
            new LinkedBlockingQueue<>(),
            work -> {
                Thread thread = new Thread(work, "hindsight");
                thread.setDaemon(true);
                thread.setPriority(Thread.MIN_PRIORITY);
                return thread;
            },
            // A question that comes after the screen was left has nobody to answer to.
            new ThreadPoolExecutor.DiscardPolicy());
    private final Hindsight hindsight;
    private final FlowLog flowLog;
    private Theme theme = Theme.LIGHT;
    private WouldPlot would;
    private FlowPanel flow;
    private PlacePanel numbers;
    private ComboBox<Interlock.Action> action;
    private ComboBox<FlowWatch.Action> onZone;
    private ComboBox<FlowWatch.Action> onUnscheduled;
    private boolean filling;
    private String shown;

    Inspector(YardModel model, Words words) {
        this.model = model;
        this.words = words;
        hindsight = new Hindsight(model, worker, Platform::runLater);
        flowLog = new FlowLog(model, Platform::runLater);
        setId("inspector");
        getStyleClass().addAll("sheet", "inspector");
        setMinHeight(0);
        setMaxHeight(Region.USE_PREF_SIZE);
        scroll.prefViewportHeightProperty().bind(body.heightProperty());
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setFocusTraversable(false);
        body.getStyleClass().add("inspector-body");
        facts.getStyleClass().add("facts");
        VBox.setVgrow(scroll, Priority.ALWAYS);
        getChildren().addAll(head, scroll);
        setVisible(false);
        model.selectedProperty().addListener(o -> rebuild());
        model.draftProperty().addListener(o -> refresh());
        model.frameProperty().addListener(o -> showReading());
        hindsight.pastProperty().addListener(o -> showWould());
        words.languageChanges().addListener(o -> rebuild());
        words.units().addListener(o -> rebuild());
    }

    void theme(Theme next) {
        theme = next;
        if (would != null) {
            would.theme(next);
        }
        if (flow != null) {
            flow.theme(next);
        }
    }

    void dispose() {
        worker.shutdownNow();
    }

    private void rebuild() {
        String id = model.selectedProperty().get();
        Placement placement = id == null ? null : model.setUp().sensor(id).orElse(null);
        setVisible(placement != null);
        rows.clear();
        body.getChildren().clear();
        head.getChildren().clear();
        action = null;
        onZone = null;
        onUnscheduled = null;
        would = null;
        flow = null;
        numbers = null;
        boolean another = id == null || !id.equals(shown);
        shown = placement == null ? null : id;
        if (placement == null) {
            return;
        }
        head.getChildren().add(header(placement));
        build(placement);
        if (another) {
            scroll.setVvalue(0);
        }
        theme(theme);
        refresh();
    }

    private void build(Placement placement) {
        boolean watched = placement.kind() == SensorKind.FLOW;
        Setting.of(placement, model.site().siting()).stream()
                .filter(s -> s.basic() || !model.firstSteps())
                .filter(s -> !s.key().equals("setting.height"))
                .forEach(s -> add(s, v -> preview(s, v)));
        if (watched) {
            flow = new FlowPanel(model, words, flowLog);
            body.getChildren().add(flow);
            Setting.ofFlowWatch().forEach(s -> add(s, v -> previewWatch(s, v)));
        } else {
            would = new WouldPlot(words);
            body.getChildren().add(would);
        }
        body.getChildren().addAll(new Hairline(), facts);
        if (watched) {
            watchActions();
        } else {
            interlock(placement);
        }
        numbers = new PlacePanel(model, words, placement);
        body.getChildren().addAll(new Hairline(), numbers, removal(placement.id()), cautions(placement));
    }

    private void preview(Setting setting, double value) {
        SetUp moved = setting.put().into(model.setUp(), shown, value);
        if (would != null) {
            would.show(hindsight.pastProperty().get(), moved.sensor(shown).orElseThrow(), lived());
        }
    }

    private void previewWatch(Setting setting, double value) {
        flow.preview(setting.put().into(model.setUp(), shown, value).flowWatch());
    }

    private long lived() {
        return model.frameProperty().get() == null
                ? 0
                : model.frameProperty().get().lived();
    }

    private Node header(Placement placement) {
        StackPane disc = new StackPane(new IconNode(Icons.of(placement.kind()), 24));
        disc.getStyleClass().add("icon-disc");
        Label name = new Label(words.say("sensor." + placement.kind().name()));
        name.getStyleClass().add("section-title");
        name.setWrapText(true);
        name.setMinHeight(Region.USE_PREF_SIZE);
        place.getStyleClass().setAll("label", "small", "ink2");
        place.setWrapText(true);
        place.setMinHeight(Region.USE_PREF_SIZE);
        VBox texts = new VBox(name, place, reading);
        HBox.setHgrow(texts, Priority.ALWAYS);
        Button close = new Button();
        close.setId("inspector-close");
        close.setGraphic(IconNode.of("cross", 16));
        close.getStyleClass().add("quiet");
        close.setAccessibleText(words.say("inspector.close"));
        close.setOnAction(e -> model.selectedProperty().set(null));
        HBox box = new HBox(disc, texts, close);
        box.getStyleClass().add("inspector-head");
        box.setAlignment(Pos.CENTER_LEFT);
        reading.getStyleClass().setAll("label", "small", "ink2");
        reading.setWrapText(true);
        reading.setMinHeight(Region.USE_PREF_SIZE);
        return box;
    }

    private void add(Setting setting, Consumer<Double> preview) {
        SettingRow row = new SettingRow(
                setting,
                words,
                preview::accept,
                v -> model.decide("step.set", setting.put().into(model.setUp(), shown, v), setting.key()));
        rows.add(new Bound(setting, row));
        body.getChildren().add(row);
    }

    private void interlock(Placement placement) {
        List<Interlock.Action> actions = placement.kind() == SensorKind.SOIL
                ? List.of(Interlock.Action.NONE, Interlock.Action.BLOCK, Interlock.Action.ALLOW, Interlock.Action.START)
                : List.of(Interlock.Action.NONE, Interlock.Action.SKIP, Interlock.Action.PAUSE, Interlock.Action.SHUT);
        action = combo("interlock", actions, "action.", chosen -> {
            List<String> zones = model.setUp().interlocks().stream()
                    .filter(i -> i.sensor().equals(shown))
                    .findFirst()
                    .map(Interlock::zones)
                    .orElse(List.of());
            model.decide("step.interlock", model.setUp().with(new Interlock(shown, chosen, zones)), shown);
        });
        body.getChildren().add(acting("inspector.when." + placement.kind().name(), action));
    }

    private void watchActions() {
        List<FlowWatch.Action> all = List.of(FlowWatch.Action.values());
        onZone = combo("on-zone", all, "watch.", chosen -> watch(w -> w.onZone(chosen)));
        onUnscheduled = combo("on-unscheduled", all, "watch.", chosen -> watch(w -> w.onUnscheduled(chosen)));
        body.getChildren().addAll(acting("inspector.onZone", onZone), acting("inspector.onUnscheduled", onUnscheduled));
    }

    private void watch(java.util.function.UnaryOperator<FlowWatches> change) {
        FlowWatches next =
                change.apply(FlowWatches.of(model.setUp().flowWatch()).sensor(shown));
        model.decide("step.watch", model.setUp().with(next.watch()));
    }

    private <T extends Enum<T>> ComboBox<T> combo(String id, List<T> values, String prefix, Consumer<T> onChosen) {
        ComboBox<T> combo = new ComboBox<>();
        combo.setId(id);
        combo.getItems().setAll(values);
        combo.getStyleClass().add("act");
        combo.setConverter(new StringConverter<>() {
            @Override
            public String toString(T value) {
                return value == null ? "" : words.say(prefix + value.name());
            }

            @Override
            public T fromString(String text) {
                return null;
            }
        });
        combo.valueProperty().addListener((o, was, is) -> {
            if (!filling && is != null && is != was) {
                onChosen.accept(is);
            }
        });
        return combo;
    }

    /** A row that says what the controller does; the choice under its name, as both may be long. */
    private Node acting(String key, ComboBox<?> combo) {
        Label text = new Label(words.say(key));
        text.setWrapText(true);
        text.setMinHeight(Region.USE_PREF_SIZE);
        text.setLabelFor(combo);
        combo.setAccessibleText(words.say(key));
        combo.setMaxWidth(Double.MAX_VALUE);
        IconNode hand = IconNode.of("hand", 16);
        hand.getStyleClass().add("quiet-ink");
        VBox texts = new VBox(text, combo);
        HBox.setHgrow(texts, Priority.ALWAYS);
        HBox row = new HBox(hand, texts);
        row.getStyleClass().add("fact-row");
        return row;
    }

    private Node cautions(Placement placement) {
        VBox box = new VBox();
        box.setId("cautions");
        box.getStyleClass().add("caution");
        Label title = new Label(words.say("inspector.cautions"));
        title.getStyleClass().add("strong");
        title.setGraphic(IconNode.of("caution", 16));
        box.getChildren().add(title);
        for (String key : Cautions.of(placement)) {
            Label line = new Label(Cautions.text(key, words.language()));
            line.setWrapText(true);
            line.setMinHeight(Region.USE_PREF_SIZE);
            line.getStyleClass().add("small");
            box.getChildren().add(line);
        }
        return box;
    }

    private Node removal(String id) {
        Button remove = new Button(words.say("inspector.remove"));
        remove.setId("remove-sensor");
        remove.setMaxWidth(Double.MAX_VALUE);
        remove.setDisable(model.locked());
        remove.setOnAction(e -> model.remove(id));
        return remove;
    }

    private void refresh() {
        if (shown == null) {
            return;
        }
        Placement placement = model.setUp().sensor(shown).orElse(null);
        if (placement == null) {
            rebuild();
            return;
        }
        boolean open = !model.locked();
        rows.forEach(b -> b.row().show(b.setting().get().of(model.setUp(), shown), open));
        filling = true;
        if (action != null) {
            action.setValue(model.setUp().interlocks().stream()
                    .filter(i -> i.sensor().equals(shown))
                    .findFirst()
                    .map(Interlock::action)
                    .orElse(Interlock.Action.NONE));
            action.setDisable(!open);
        }
        if (onZone != null) {
            onZone.setValue(model.setUp().flowWatch().onZone());
            onUnscheduled.setValue(model.setUp().flowWatch().onUnscheduled());
            onZone.setDisable(!open);
            onUnscheduled.setDisable(!open);
        }
        filling = false;
        numbers.refresh(placement);
        SiteFacts siteFacts = new SiteFacts(model, words);
        place.setText(siteFacts.place(placement));
        facts.getChildren().setAll(siteFacts.rows(placement));
        showReading();
        showWould();
    }

    private void showWould() {
        if (would != null && shown != null) {
            model.setUp()
                    .sensor(shown)
                    .ifPresent(p -> would.show(hindsight.pastProperty().get(), p, lived()));
        }
    }

    private void showReading() {
        if (shown == null || model.frameProperty().get() == null) {
            return;
        }
        Placement placement = model.setUp().sensor(shown).orElse(null);
        if (placement == null) {
            return;
        }
        if (model.frameProperty().get().lived() == 0) {
            reading.setText(words.say("inspector.notYet"));
            return;
        }
        model.frameProperty().get().snapshot().sensors().stream()
                .filter(s -> s.id().equals(shown))
                .findFirst()
                .ifPresent(s -> reading.setText(words.say(
                        s.tripped() ? "inspector.readsTripped" : "inspector.reads",
                        words.display().text(Readouts.of(placement.kind()), s.reading()))));
    }
}
