package provingyard.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleSupplier;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import provingyard.call.Call;
import provingyard.diagnosis.Hazard;
import provingyard.quantity.Show;

/** The card at the yard's foot: the test that is chosen, what is being done, what it came to, or what comes after the finding. */
final class CallCard extends HBox {

    /** Tests at one place that can be chosen from beside the title. */
    private static final int FEW = 3;

    /** Width in em under which the buttons stand below the text. */
    private static final double MINUTE = 60;

    private static final double NARROW = 40;

    /** Lines of text before it scrolls in a narrow card. */
    private static final double LINES = 9;

    private final CallModel model;
    private final Words words;
    private final CallWords texts;
    private final DoubleSupplier em;
    private final Runnable end;
    private final Runnable away;
    private boolean narrow;

    /**
     * A card.
     *
     * @param em px of the window's letters
     * @param end leads on to the debrief
     * @param away gives the keys back to the yard
     */
    CallCard(CallModel model, Words words, CallWords texts, DoubleSupplier em, Runnable end, Runnable away) {
        super(16);
        this.em = em;
        this.model = model;
        this.words = words;
        this.texts = texts;
        this.end = end;
        this.away = away;
        setId("call-card");
        getStyleClass().addAll("sheet", "call-card");
        setAlignment(Pos.CENTER_LEFT);
        setMaxHeight(Region.USE_PREF_SIZE);
        model.nowProperty().addListener(o -> refresh());
        model.busyProperty().addListener(o -> refresh());
        model.chosenProperty().addListener(o -> refresh());
        model.toldProperty().addListener(o -> refresh());
        model.toolProperty().addListener(o -> refresh());
        words.follow(this, this::refresh);
        widthProperty().addListener(o -> {
            if (narrow != isNarrow()) {
                refresh();
            }
        });
        refresh();
    }

    private boolean isNarrow() {
        return getWidth() > 0 && getWidth() < NARROW * em.getAsDouble();
    }

    private void refresh() {
        boolean focused = getScene() != null && isWithin(getScene().getFocusOwner());
        getChildren().clear();
        narrow = isNarrow();
        CallModel.Now now = model.nowProperty().get();
        if (model.busyProperty().get()) {
            busy();
        } else if (now.stage() != CallModel.Stage.TESTING) {
            after(now);
        } else if (model.toldProperty().get() != null) {
            told(model.toldProperty().get());
        } else if (model.offer().isPresent()) {
            offer(model.offer().get());
        } else if (model.toolProperty().get() != null) {
            sentence(CallSigns.icon(model.toolProperty().get()), words.say("call.choosePlace"), "");
        } else {
            sentence("hand", words.say("call.chooseTool"), words.say("call.chooseToolWhy"));
        }
        if (narrow) {
            stack();
        }
        if (focused) {
            focusMain();
        }
    }

    /** Large letters: the text above, which scrolls where it is long, the buttons below. */
    private void stack() {
        VBox column = new VBox(10);
        HBox.setHgrow(column, Priority.ALWAYS);
        HBox acts = new HBox(10);
        acts.setAlignment(Pos.CENTER_RIGHT);
        for (Node node : List.copyOf(getChildren())) {
            if (node instanceof Button) {
                acts.getChildren().add(node);
            } else if (node instanceof VBox told) {
                FittingScroll scroll = new FittingScroll(told, FittingScroll.BAR);
                scroll.setMaxHeight(LINES * 1.4 * em.getAsDouble());
                column.getChildren().add(scroll);
            }
        }
        column.getChildren().add(acts);
        acts.setMinHeight(acts.getChildren().isEmpty() ? 0 : Region.USE_PREF_SIZE);
        getChildren().setAll(column);
    }

    private boolean isWithin(Node node) {
        Node at = node;
        while (at != null && at != this) {
            at = at.getParent();
        }
        return at == this;
    }

    /** Puts the keys on what the card is for. */
    void focusMain() {
        for (String id : List.of("#call-do", "#call-go-on", "#call-ask", "#call-repair", "#call-verify", "#call-end")) {
            Node node = lookup(id);
            if (node != null && !node.isDisabled()) {
                node.requestFocus();
                return;
            }
        }
    }

    /** Says that the call's end is being worked out. */
    void waiting() {
        getChildren().clear();
        busy();
    }

    private void busy() {
        ProgressBar bar = new ProgressBar();
        bar.setPrefWidth(160);
        Label text = new Label(words.say("call.working"));
        text.getStyleClass().add("strong");
        VBox box = new VBox(6, text, bar);
        bar.setAccessibleText(text.getText());
        getChildren().add(box);
    }

    private void offer(CallModel.Offer offer) {
        VBox told = told(texts.name(offer.test()), cost(offer) + " " + texts.does(offer.test()));
        caution(offer).ifPresent(told.getChildren()::add);
        List<String> beside = model.beside(offer.test().id());
        if (beside.size() > 1 && narrow) {
            told.getChildren().add(0, list(beside, offer.test().id()));
        } else if (beside.size() > FEW) {
            told.getChildren().add(0, choices(beside, offer.test().id()));
            told.setSpacing(4);
        } else if (beside.size() > 1) {
            Label title = (Label) told.getChildren().remove(0);
            HBox.setHgrow(title, Priority.ALWAYS);
            title.setMaxWidth(Double.MAX_VALUE);
            HBox row = new HBox(10, title, choices(beside, offer.test().id()));
            row.setAlignment(Pos.CENTER_LEFT);
            told.getChildren().add(0, row);
        }
        Button cancel = button("call-cancel", "call.cancel", false);
        cancel.setOnAction(e -> {
            model.cancel();
            away.run();
        });
        boolean unsafe = !offer.hazards().isEmpty();
        Button act = button("call-do", unsafe && !model.guided() ? "call.doAnyway" : "call.do", true);
        act.setDisable(!model.mayAct());
        act.setOnAction(e -> model.act());
        getChildren().addAll(sign(CallSigns.icon(offer.test().tool())), told, cancel, act);
        setAccessibleText(texts.name(offer.test()));
    }

    private Segments<String> choices(List<String> ids, String now) {
        List<Segments.Choice<String>> choices = new ArrayList<>();
        for (String id : ids) {
            var test = model.site().test(id).orElseThrow();
            var text = new javafx.beans.property.SimpleStringProperty(texts.brief(test));
            choices.add(new Segments.Choice<>(id, test.kind(), text, null));
        }
        return new Segments<>("call-choice", choices, now, model::choose);
    }

    private ComboBox<String> list(List<String> ids, String now) {
        ComboBox<String> box = new ComboBox<>();
        box.setId("call-choice");
        box.setMaxWidth(Double.MAX_VALUE);
        box.setConverter(new StringConverter<>() {
            @Override
            public String toString(String id) {
                return id == null ? "" : texts.brief(model.site().test(id).orElseThrow());
            }

            @Override
            public String fromString(String text) {
                throw new UnsupportedOperationException("nobody types here");
            }
        });
        box.getItems().setAll(ids);
        box.setValue(now);
        box.setAccessibleText(words.say("call.choosePlace"));
        box.setOnAction(e -> javafx.application.Platform.runLater(() -> model.choose(box.getValue())));
        return box;
    }

    private String cost(CallModel.Offer offer) {
        String minutes = texts.minutes(offer.minutes());
        double litres = model.litresOf(offer);
        return litres >= 0.5
                ? words.say("call.cost", minutes, texts.litres(litres))
                : words.say("call.costMinutes", minutes);
    }

    private Node caution(java.util.Set<Hazard> hazards) {
        List<String> rules = new ArrayList<>();
        hazards.forEach(h -> rules.add(texts.diagnosis(h.ruleKey())));
        rules.add(texts.diagnosis(Hazard.LOCAL_RULES));
        return warning(String.join(" ", rules));
    }

    private java.util.Optional<Node> caution(CallModel.Offer offer) {
        if (!offer.possible()) {
            return java.util.Optional.of(warning(words.say("call.notPossible")));
        }
        if (offer.hazards().isEmpty()) {
            return java.util.Optional.empty();
        }
        return java.util.Optional.of(caution(offer.hazards()));
    }

    private static Node warning(String text) {
        Label label = wrapped(text, "small");
        HBox.setHgrow(label, Priority.ALWAYS);
        HBox box = new HBox(8, IconNode.of("caution", 16), label);
        box.setId("call-caution");
        box.setAlignment(Pos.CENTER_LEFT);
        box.getStyleClass().add("caution");
        return box;
    }

    private void told(Call.Note note) {
        String reading = texts.reading(note);
        String title = texts.name(note.test());
        String head = reading.isEmpty() ? words.say("call.done", title) : words.say("call.gave", title, reading);
        String band = CallWords.scale(note).map(texts::band).orElseGet(() -> waited(note));
        String thought = model.guided() && note.reading() != null
                ? texts.thought(
                        CallThought.of(note.prior(), model.nowProperty().get().after(note)))
                : "";
        VBox told = told(head, band, thought);
        told.setId("call-told");
        Button on = button("call-go-on", "call.goOn", true);
        on.setOnAction(e -> {
            model.cancel();
            away.run();
        });
        getChildren().addAll(sign(CallSigns.icon(note.test().tool())), told, on);
        setAccessibleText(String.join(". ", head, band, thought));
    }

    /** How long a request took until it was answered, and what that cost; empty where nobody waited. */
    private String waited(Call.Note note) {
        if (note.test().waits() <= 0) {
            return "";
        }
        List<Call.Note> notes = model.nowProperty().get().notes();
        double before = note.number() > 1 ? notes.get(note.number() - 2).litres() : 0;
        String until = words.display().text(Show.DURATION, MINUTE * note.test().waits());
        return words.say("call.waited", until, texts.litres(note.litres() - before));
    }

    private void after(CallModel.Now now) {
        String stated = words.say(
                "call.stated",
                texts.finding(now.finding().repairClass()),
                texts.percent(now.finding().confidence()));
        String next =
                switch (now.stage()) {
                    case STATED -> words.say(model.mayRepair() ? "call.thenRepair" : "call.thenEnd");
                    case REPAIRED -> words.say("call.thenVerify");
                    default -> verified(now);
                };
        VBox told = told(stated, next, "");
        getChildren().addAll(sign("flag"), told);
        boolean last = now.stage() != CallModel.Stage.REPAIRED && !model.mayRepair();
        Button finish = button("call-end", "call.end", last);
        finish.setOnAction(e -> end.run());
        getChildren().add(finish);
        if (model.mayRepair()) {
            repair(now, told);
        }
        if (now.stage() == CallModel.Stage.REPAIRED) {
            Button verify = button("call-verify", "call.verify", true);
            verify.setOnAction(e -> model.verify());
            getChildren().add(verify);
        }
    }

    private void repair(CallModel.Now now, VBox told) {
        boolean unsafe = !now.repairHazards().isEmpty();
        if (unsafe) {
            told.getChildren().add(caution(now.repairHazards()));
            Button ask = button("call-ask", "call.ask", model.guided());
            ask.setOnAction(e -> model.askForMarks());
            getChildren().add(ask);
        }
        if (!unsafe || !model.guided()) {
            Button repair = button("call-repair", unsafe ? "call.doAnyway" : "call.repair", true);
            repair.setOnAction(e -> model.repair());
            getChildren().add(repair);
        }
    }

    private String verified(CallModel.Now now) {
        Call.Note note = now.last().orElseThrow();
        String band = CallWords.scale(note).map(texts::band).orElse("");
        String gave = words.say("call.gave", texts.name(note.test()), texts.reading(note));
        return band.isEmpty() ? gave : gave + ". " + band;
    }

    private void sentence(String icon, String text, String more) {
        getChildren().addAll(sign(icon), told(text, more, ""));
    }

    private static StackPane sign(String icon) {
        StackPane sign = new StackPane(IconNode.of(icon, 24));
        sign.getStyleClass().add("call-sign");
        return sign;
    }

    private static VBox told(String title, String... lines) {
        VBox box = new VBox(2, wrapped(title, "call-card-title"));
        for (String line : lines) {
            if (!line.isEmpty()) {
                box.getChildren().add(wrapped(line, "ink2"));
            }
        }
        box.setAlignment(Pos.CENTER_LEFT);
        box.setMinWidth(0);
        HBox.setHgrow(box, Priority.ALWAYS);
        return box;
    }

    private static Label wrapped(String text, String style) {
        Label label = new Label(text);
        label.getStyleClass().add(style);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        return label;
    }

    private Button button(String id, String key, boolean main) {
        Button button = new Button(words.say(key));
        button.setId(id);
        button.getStyleClass().add("tall");
        button.setMinWidth(Region.USE_PREF_SIZE);
        if (main) {
            button.getStyleClass().add("main");
        }
        return button;
    }
}
