package provingyard.ui;

import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import provingyard.call.Call;
import provingyard.diagnosis.Belief;
import provingyard.diagnosis.CaseScore;

/** The field notes: what was read, with what a sound system would read; what is strongest so far; the way to the finding. */
final class CallNotes extends VBox {

    private final CallModel model;
    private final Words words;
    private final CallWords texts;
    private final Label count = new Label();
    private final VBox rows = new VBox();
    private final ScrollPane scroll = new ScrollPane(rows);
    private final Label strongest = new Label();
    private final Label share = new Label();
    private final StrengthBar bar = new StrengthBar();
    private final Button state = new Button();
    private int shown = -1;

    CallNotes(CallModel model, Words words, CallWords texts, Runnable finding) {
        super(10);
        this.model = model;
        this.words = words;
        this.texts = texts;
        setId("call-notes");
        getStyleClass().addAll("sheet", "call-notes");
        Label title = new Label();
        words.bind(title.textProperty(), "call.notes");
        title.getStyleClass().add("section-title");
        count.getStyleClass().addAll("small", "ink2");
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        HBox head = new HBox(8, title, gap, count);
        head.setAlignment(Pos.BASELINE_LEFT);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setMinHeight(60);
        VBox.setVgrow(scroll, Priority.ALWAYS);
        scroll.setFocusTraversable(false);
        rows.heightProperty().addListener(o -> scroll.setVvalue(1));
        state.setId("call-state");
        state.setGraphic(IconNode.of("flag", 15));
        state.getStyleClass().addAll("main", "tall");
        state.setMaxWidth(Double.MAX_VALUE);
        words.bind(state.textProperty(), "call.state");
        state.setOnAction(e -> finding.run());
        getChildren().addAll(head, scroll);
        if (model.guided()) {
            getChildren().add(strength());
        }
        getChildren().add(state);
        model.nowProperty().addListener(o -> refresh());
        model.busyProperty().addListener(o -> refresh());
        words.follow(this, () -> {
            shown = -1;
            refresh();
        });
        refresh();
    }

    private VBox strength() {
        Label what = new Label();
        words.bind(what.textProperty(), "call.strongest");
        what.getStyleClass().addAll("small", "ink2");
        strongest.setId("call-strongest");
        strongest.getStyleClass().add("strong");
        strongest.setWrapText(true);
        strongest.setMinHeight(Region.USE_PREF_SIZE);
        HBox.setHgrow(strongest, Priority.ALWAYS);
        strongest.setMaxWidth(Double.MAX_VALUE);
        share.getStyleClass().addAll("strong", "belief");
        share.setMinWidth(Region.USE_PREF_SIZE);
        Label rule = new Label();
        rule.textProperty()
                .bind(words.live(
                        "call.foundedFrom",
                        javafx.beans.binding.Bindings.createStringBinding(
                                () -> texts.percent(CaseScore.SUPPORTED), words.languageChanges())));
        rule.getStyleClass().addAll("small", "ink2");
        rule.setWrapText(true);
        rule.setMinHeight(Region.USE_PREF_SIZE);
        HBox line = new HBox(8, strongest, share);
        line.setAlignment(Pos.BOTTOM_LEFT);
        VBox box = new VBox(3, what, line, bar, rule);
        box.setMinHeight(Region.USE_PREF_SIZE);
        return box;
    }

    private void refresh() {
        CallModel.Now now = model.nowProperty().get();
        long readings = now.notes().stream().filter(n -> n.reading() != null).count();
        count.setText(words.say("call.readings", readings));
        if (shown != now.notes().size()) {
            shown = now.notes().size();
            rows.getChildren().clear();
            if (now.notes().isEmpty()) {
                rows.getChildren().add(empty());
            }
            now.notes().forEach(n -> rows.getChildren().add(row(n)));
        }
        Belief belief = now.belief();
        double most = belief.ofClass(belief.leadingClass());
        strongest.setText(texts.finding(belief.leading()));
        share.setText(texts.percent(most));
        bar.show(most);
        state.setDisable(
                now.stage() != CallModel.Stage.TESTING || model.busyProperty().get());
    }

    private VBox empty() {
        VBox box = new VBox(6);
        Label none = wrapped(words.say("call.noNotes"), "ink2");
        box.getChildren().add(none);
        model.site().scenario().call().shown().forEach(t -> box.getChildren().add(wrapped(words.say(t), "ink2")));
        return box;
    }

    private static Label wrapped(String text, String style) {
        Label label = new Label(text);
        label.getStyleClass().add(style);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        return label;
    }

    private VBox row(Call.Note note) {
        Label number = new Label(Integer.toString(note.number()));
        StackPane disc = new StackPane(number);
        disc.getStyleClass().add("call-number");
        VBox.setVgrow(disc, Priority.NEVER);
        Label name = wrapped(texts.name(note.test()), "strong");
        VBox names = new VBox(1, name, wrapped(words.say("call.minute", minute(note)), "ink2"));
        names.getChildren().get(1).getStyleClass().add("small");
        names.setMinWidth(0);
        HBox.setHgrow(names, Priority.ALWAYS);
        VBox body = new VBox(4);
        HBox.setHgrow(body, Priority.ALWAYS);
        var scale = CallWords.scale(note);
        if (scale.isPresent()) {
            Label value = new Label(texts.reading(note));
            value.getStyleClass().add("value");
            value.getStyleClass().add(scale.get().fits() ? "call-fits" : "alarm");
            value.setMinWidth(Region.USE_PREF_SIZE);
            HBox line = new HBox(8, names, value);
            Label band = wrapped(texts.band(scale.get()), "ink2");
            band.getStyleClass().add("small");
            body.getChildren().addAll(line, new CallBand(scale.get()), band);
        } else {
            body.getChildren().add(names);
            String answer = texts.reading(note);
            if (!answer.isEmpty()) {
                body.getChildren().add(wrapped(answer, "call-answer"));
            }
        }
        HBox line = new HBox(10, disc, body);
        line.setAlignment(Pos.TOP_LEFT);
        VBox row = new VBox(line, new Hairline());
        row.setId("note-" + note.number());
        row.getStyleClass().add("call-note");
        return row;
    }

    private String minute(Call.Note note) {
        return words.display().plain(Math.rint(note.minute()), 0);
    }

    /** A probability as a bar, with a tick where a finding is well founded. */
    private static final class StrengthBar extends Region {

        private final Region well = new Region();
        private final Region full = new Region();
        private final Region tick = new Region();
        private double share;

        StrengthBar() {
            well.getStyleClass().add("score-well");
            full.getStyleClass().add("call-strength");
            tick.getStyleClass().add("score-mark");
            getChildren().addAll(well, full, tick);
            setMinHeight(12);
            setPrefHeight(12);
        }

        void show(double next) {
            share = next;
            requestLayout();
        }

        @Override
        protected void layoutChildren() {
            double w = getWidth();
            well.resizeRelocate(0, 3, w, 6);
            full.resizeRelocate(0, 3, Math.round(w * share), 6);
            tick.resizeRelocate(Math.round(w * CaseScore.SUPPORTED) - 1, 0, 2, 12);
        }
    }
}
