package provingyard.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleConsumer;
import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;
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
import provingyard.quantity.Show;
import provingyard.scenario.SensorKind;
import provingyard.setup.Cautions;
import provingyard.setup.FlowWatch;
import provingyard.setup.Interlock;
import provingyard.setup.Placement;
import provingyard.setup.SetUp;

/** Everything about the selected sensor: cautions, settings, what the controller does, and what could be measured there. */
final class Inspector extends VBox {

    /** Connects a setting's row with the set-up. */
    private record Bound(SettingRow row, ToDoubleFunction<SetUp> get) {}

    private final YardModel model;
    private final Words words;
    private final VBox body = new VBox(10);
    private final List<Bound> rows = new ArrayList<>();
    private final Label place = new Label();
    private final Label reading = new Label();
    private final VBox facts = new VBox(6);
    private ComboBox<Interlock.Action> action;
    private ComboBox<FlowWatch.Action> onZone;
    private ComboBox<FlowWatch.Action> onUnscheduled;
    private boolean filling;
    private String shown;

    Inspector(YardModel model, Words words) {
        this.model = model;
        this.words = words;
        setId("inspector");
        getStyleClass().add("sheet");
        setSpacing(10);
        setPrefWidth(300);
        setMinWidth(300);
        setMaxWidth(300);
        setMaxHeight(Region.USE_PREF_SIZE);
        ScrollPane scroll = new ScrollPane(body);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        body.setStyle("-fx-padding: 0 10 0 0;");
        VBox.setVgrow(scroll, Priority.ALWAYS);
        getChildren().add(scroll);
        setVisible(false);
        model.selectedProperty().addListener(o -> rebuild());
        model.draftProperty().addListener(o -> refresh());
        model.frameProperty().addListener(o -> showReading());
        words.languageChanges().addListener(o -> rebuild());
        words.units().addListener(o -> rebuild());
    }

    private void rebuild() {
        String id = model.selectedProperty().get();
        Placement placement = id == null ? null : model.setUp().sensor(id).orElse(null);
        setVisible(placement != null);
        rows.clear();
        body.getChildren().clear();
        action = null;
        onZone = null;
        onUnscheduled = null;
        shown = placement == null ? null : id;
        if (placement == null) {
            return;
        }
        body.getChildren().addAll(header(placement), reading);
        settings(placement);
        if (placement.kind() == SensorKind.FLOW) {
            flowWatch();
        } else {
            interlock(placement);
        }
        body.getChildren().addAll(new Hairline(), facts, new Hairline(), cautions(placement), removal(id));
        refresh();
    }

    private Node header(Placement placement) {
        StackPane disc = new StackPane(new IconNode(Icons.of(placement.kind()), 24));
        disc.getStyleClass().add("icon-disc");
        Label name = new Label(words.say("sensor." + placement.kind().name()));
        name.getStyleClass().add("section-title");
        name.setWrapText(true);
        place.getStyleClass().setAll("label", "small", "ink2");
        place.setWrapText(true);
        VBox texts = new VBox(name, place);
        HBox.setHgrow(texts, Priority.ALWAYS);
        Button close = new Button();
        close.setId("inspector-close");
        close.setGraphic(IconNode.of("cross", 16));
        close.getStyleClass().add("quiet");
        close.setAccessibleText(words.say("inspector.close"));
        close.setOnAction(e -> model.selectedProperty().set(null));
        HBox box = new HBox(10, disc, texts, close);
        box.setAlignment(Pos.CENTER_LEFT);
        reading.getStyleClass().setAll("label", "ink2");
        reading.setWrapText(true);
        return box;
    }

    private void settings(Placement placement) {
        switch (placement.kind()) {
            case RAIN -> {
                row("setting.rainTrip", Show.DEPTH, 0.003, 0.025, u -> rain(u).trip(), v -> {
                    Placement.Rain r = rain(model.setUp());
                    return new Placement.Rain(r.id(), r.at(), r.mount(), r.height(), v, r.vent());
                });
                row("setting.vent", Show.FRACTION, 0, 1, u -> rain(u).vent(), v -> {
                    Placement.Rain r = rain(model.setUp());
                    return new Placement.Rain(r.id(), r.at(), r.mount(), r.height(), r.trip(), v);
                });
                row("setting.height", Show.LENGTH, 0.3, 8, u -> rain(u).height(), v -> {
                    Placement.Rain r = rain(model.setUp());
                    return new Placement.Rain(r.id(), r.at(), r.mount(), v, r.trip(), r.vent());
                });
            }
            case WIND -> wind();
            case FREEZE -> freeze();
            case FLOW -> flow();
            case SOIL -> soil();
        }
    }

    private void wind() {
        row("setting.windTrip", Show.SPEED, 2, 12, u -> wind(u).trip(), v -> {
            Placement.Wind w = wind(model.setUp());
            double rearm = Math.min(w.rearm(), v);
            return new Placement.Wind(w.id(), w.at(), w.mount(), w.height(), v, rearm, w.averaging(), w.hold());
        });
        row("setting.windRearm", Show.SPEED, 1, 12, u -> wind(u).rearm(), v -> {
            Placement.Wind w = wind(model.setUp());
            return new Placement.Wind(
                    w.id(), w.at(), w.mount(), w.height(), w.trip(), Math.min(v, w.trip()), w.averaging(), w.hold());
        });
        row("setting.averaging", Show.DURATION, 60, 3600, u -> wind(u).averaging(), v -> {
            Placement.Wind w = wind(model.setUp());
            return new Placement.Wind(w.id(), w.at(), w.mount(), w.height(), w.trip(), w.rearm(), v, w.hold());
        });
        row("setting.hold", Show.DURATION, 0, 7200, u -> wind(u).hold(), v -> {
            Placement.Wind w = wind(model.setUp());
            return new Placement.Wind(w.id(), w.at(), w.mount(), w.height(), w.trip(), w.rearm(), w.averaging(), v);
        });
        row("setting.height", Show.LENGTH, 0.5, 10, u -> wind(u).height(), v -> {
            Placement.Wind w = wind(model.setUp());
            return new Placement.Wind(w.id(), w.at(), w.mount(), v, w.trip(), w.rearm(), w.averaging(), w.hold());
        });
    }

    private void freeze() {
        row("setting.freezeBelow", Show.TEMPERATURE, -2, 6, u -> freeze(u).below(), v -> {
            Placement.Freeze f = freeze(model.setUp());
            return new Placement.Freeze(f.id(), f.at(), f.mount(), f.height(), v, Math.max(f.rearm(), v));
        });
        row("setting.freezeRearm", Show.TEMPERATURE, -2, 10, u -> freeze(u).rearm(), v -> {
            Placement.Freeze f = freeze(model.setUp());
            return new Placement.Freeze(f.id(), f.at(), f.mount(), f.height(), f.below(), Math.max(v, f.below()));
        });
        row("setting.height", Show.LENGTH, 0.1, 8, u -> freeze(u).height(), v -> {
            Placement.Freeze f = freeze(model.setUp());
            return new Placement.Freeze(f.id(), f.at(), f.mount(), v, f.below(), f.rearm());
        });
    }

    private void flow() {
        row("setting.flowSize", Show.DEPTH, 0.019, 0.1016, u -> flow(u).size(), v -> {
            Placement.Flow f = flow(model.setUp());
            return model.site().siting().flowSensor(f.id(), new provingyard.season.Siting.OnPipe(f.on(), f.along()), v);
        });
        row("setting.pulses", Show.PULSES, 0.5, 80, u -> flow(u).pulses(), v -> {
            Placement.Flow f = flow(model.setUp());
            return new Placement.Flow(f.id(), f.on(), f.along(), f.size(), v, f.offset());
        });
    }

    private void soil() {
        row("setting.soilWet", Show.FRACTION, 0.05, 0.5, u -> soil(u).wet(), v -> {
            Placement.Soil s = soil(model.setUp());
            return new Placement.Soil(s.id(), s.at(), s.depth(), s.soil(), Math.min(s.dry(), v), v);
        });
        row("setting.soilDry", Show.FRACTION, 0.02, 0.5, u -> soil(u).dry(), v -> {
            Placement.Soil s = soil(model.setUp());
            return new Placement.Soil(s.id(), s.at(), s.depth(), s.soil(), Math.min(v, s.wet()), s.wet());
        });
        row("setting.soilDepth", Show.SHORT_LENGTH, 0.03, 0.4, u -> soil(u).depth(), v -> {
            Placement.Soil s = soil(model.setUp());
            return new Placement.Soil(s.id(), s.at(), v, s.soil(), s.dry(), s.wet());
        });
    }

    private Placement.Rain rain(SetUp u) {
        return (Placement.Rain) u.sensor(shown).orElseThrow();
    }

    private Placement.Wind wind(SetUp u) {
        return (Placement.Wind) u.sensor(shown).orElseThrow();
    }

    private Placement.Freeze freeze(SetUp u) {
        return (Placement.Freeze) u.sensor(shown).orElseThrow();
    }

    private Placement.Flow flow(SetUp u) {
        return (Placement.Flow) u.sensor(shown).orElseThrow();
    }

    private Placement.Soil soil(SetUp u) {
        return (Placement.Soil) u.sensor(shown).orElseThrow();
    }

    private void row(
            String key,
            Show show,
            double least,
            double most,
            ToDoubleFunction<SetUp> get,
            DoubleFunction<Placement> with) {
        add(
                key,
                show,
                least,
                most,
                get,
                v -> model.decide("step.set", model.setUp().with(with.apply(v)), key));
    }

    private void add(
            String key, Show show, double least, double most, ToDoubleFunction<SetUp> get, DoubleConsumer set) {
        SettingRow row = new SettingRow(new SettingRow.Setting(key, show, least, most), words, set);
        rows.add(new Bound(row, get));
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
        body.getChildren().add(labelled("inspector.when." + placement.kind().name(), action));
    }

    private void flowWatch() {
        add("setting.flowHigh", Show.FRACTION, 1.03, 2, u -> u.flowWatch().high(), v -> watch(w -> w.high(v)));
        add("setting.flowLow", Show.FRACTION, 0, 0.95, u -> u.flowWatch().low(), v -> watch(w -> w.low(v)));
        add("setting.settling", Show.DURATION, 0, 600, u -> u.flowWatch().settling(), v -> watch(w -> w.settling(v)));
        add(
                "setting.averaging",
                Show.DURATION,
                60,
                600,
                u -> u.flowWatch().averaging(),
                v -> watch(w -> w.averaging(v)));
        add(
                "setting.unscheduled",
                Show.FLOW,
                0.5e-3 / 60,
                1e-3,
                u -> u.flowWatch().unscheduled(),
                v -> watch(w -> w.unscheduled(v)));
        List<FlowWatch.Action> all = List.of(FlowWatch.Action.values());
        onZone = combo("on-zone", all, "watch.", chosen -> watch(w -> w.onZone(chosen)));
        onUnscheduled = combo("on-unscheduled", all, "watch.", chosen -> watch(w -> w.onUnscheduled(chosen)));
        body.getChildren()
                .addAll(labelled("inspector.onZone", onZone), labelled("inspector.onUnscheduled", onUnscheduled));
    }

    private void watch(java.util.function.UnaryOperator<FlowWatches> change) {
        FlowWatches next =
                change.apply(FlowWatches.of(model.setUp().flowWatch()).sensor(shown));
        model.decide("step.watch", model.setUp().with(next.watch()));
    }

    private <T extends Enum<T>> ComboBox<T> combo(
            String id, List<T> values, String prefix, java.util.function.Consumer<T> onChosen) {
        ComboBox<T> combo = new ComboBox<>();
        combo.setId(id);
        combo.getItems().setAll(values);
        combo.setMaxWidth(Double.MAX_VALUE);
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

    private Node labelled(String key, ComboBox<?> combo) {
        Label label = new Label(words.say(key));
        label.getStyleClass().add("strong");
        label.setWrapText(true);
        label.setLabelFor(combo);
        combo.setAccessibleText(words.say(key));
        return new VBox(4, label, combo);
    }

    private Node cautions(Placement placement) {
        VBox box = new VBox(6);
        box.setId("cautions");
        box.getStyleClass().add("caution");
        Label title = new Label(words.say("inspector.cautions"));
        title.getStyleClass().add("strong");
        title.setGraphic(IconNode.of("caution", 16));
        box.getChildren().add(title);
        for (String key : Cautions.of(placement)) {
            Label line = new Label(Cautions.text(key, words.language()));
            line.setWrapText(true);
            line.getStyleClass().add("small");
            box.getChildren().add(line);
        }
        return box;
    }

    private Node removal(String id) {
        Button remove = new Button(words.say("inspector.remove"));
        remove.setId("remove-sensor");
        remove.setMaxWidth(Double.MAX_VALUE);
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
        rows.forEach(b -> b.row().show(b.get().applyAsDouble(model.setUp()), open));
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
        SiteFacts siteFacts = new SiteFacts(model, words);
        place.setText(siteFacts.place(placement));
        facts.getChildren().setAll(siteFacts.rows(placement));
        showReading();
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
