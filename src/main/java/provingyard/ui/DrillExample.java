package provingyard.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.util.Duration;
import provingyard.call.Call;
import provingyard.call.CallReview;
import provingyard.call.ReviewedTest;
import provingyard.diagnosis.Belief;
import provingyard.drill.Card;
import provingyard.picture.Theme;

/**
 * The reference's way through a call, step by step: what is done, what it read, what that rules out and what is left. Space
 * plays and pauses, left and right go from step to step, Esc skips it. It lasts {@link #LONGEST} s at most.
 */
final class DrillExample extends BorderPane {

    /** Seconds of the whole replay at most. */
    static final double LONGEST = 90;

    /** Seconds of a step at most, and tests that are replayed at most; those before are summed up. */
    private static final double STEP = 11;

    static final int MOST = 6;

    /** Share of the width that the plan has. */
    private static final double PLAN = 0.52;

    private final Card card;
    private final CallReview review;
    private final Words words;
    private final DrillWords sayings;
    private final CallDebriefWords names;
    private final CallWords texts;
    private final Runnable done;
    private final List<ReviewedTest> tests;
    private final int before;
    private final int steps;
    private final CallDebriefPlan plan;
    private final CallDebriefPlan truthPlan;
    private final StackPane plans;
    private final VBox told = new VBox(12);
    private final HBox past = new HBox(4);
    private final Label position = new Label();
    private final Button play = new Button();
    private final Button next = new Button();
    private final Button back = new Button();
    private final Button skip = new Button();
    private final Label title = new Label();
    private final Timeline playing;
    private int at;

    /**
     * A replay that has not begun.
     *
     * @param review the card's example, looked at afterwards
     * @param done goes on, whether all was watched or not
     */
    DrillExample(Card card, CallReview review, Words words, Runnable done) {
        this.card = card;
        this.review = review;
        this.words = words;
        this.done = done;
        sayings = new DrillWords(words);
        names = new CallDebriefWords(words, review.site());
        texts = new CallWords(review.site(), words);
        tests = review.yours().tests();
        before = Math.max(0, tests.size() - MOST);
        steps = tests.size() - before + 2;
        // Where the fault lies is not shown before it is found.
        plan = new CallDebriefPlan(words, hidden(review));
        truthPlan = new CallDebriefPlan(words, review);
        plans = new StackPane(plan, truthPlan);
        playing = new Timeline(new KeyFrame(Duration.seconds(Math.min(STEP, LONGEST / steps)), e -> tick()));
        playing.setCycleCount(Timeline.INDEFINITE);
        setId("drill-example");
        getStyleClass().add("debrief");
        arrange();
        words.follow(this, this::fill);
        addEventFilter(KeyEvent.KEY_PRESSED, this::key);
        go(0);
    }

    private static CallReview hidden(CallReview all) {
        return new CallReview(
                all.site(),
                all.map(),
                all.truth(),
                List.of(),
                all.yours(),
                all.experts(),
                all.declaration(),
                all.score(),
                all.reference(),
                all.remarks());
    }

    private void arrange() {
        title.getStyleClass().add("section-title");
        title.setMinWidth(0);
        position.getStyleClass().addAll("small", "ink2");
        VBox head = new VBox(title, position);
        head.setAlignment(Pos.CENTER_LEFT);
        head.setMinWidth(0);
        HBox.setHgrow(head, Priority.ALWAYS);
        control(back, "drill-back", "back", () -> go(at - 1));
        control(play, "drill-play", "play", this::toggle);
        control(next, "drill-forward", "fwd", () -> go(at + 1));
        skip.setId("drill-skip");
        skip.getStyleClass().add("tall");
        skip.setMinWidth(Region.USE_PREF_SIZE);
        skip.setOnAction(e -> leave());
        HBox top = new HBox(10, IconNode.of("deck", 22), head, back, play, next, skip);
        top.getStyleClass().add("top-bar");
        setTop(top);
        for (int i = 0; i < steps; i++) {
            Region bar = new Region();
            bar.getStyleClass().add("drill-step");
            HBox.setHgrow(bar, Priority.ALWAYS);
            past.getChildren().add(bar);
        }
        plans.setMinWidth(0);
        StackPane.setAlignment(plan, Pos.TOP_CENTER);
        StackPane.setAlignment(truthPlan, Pos.TOP_CENTER);
        VBox left = new VBox(10, plans);
        VBox.setVgrow(plans, Priority.ALWAYS);
        VBox sheet = new VBox(14, past, new FittingScroll(told, FittingScroll.BAR));
        sheet.getStyleClass().add("sheet");
        sheet.setMaxHeight(Region.USE_PREF_SIZE);
        sheet.setMinWidth(0);
        HBox both = new HBox(18, left, sheet);
        both.setPadding(new Insets(16));
        both.widthProperty().addListener((o, was, is) -> {
            double width = Math.round(PLAN * is.doubleValue());
            left.setMinWidth(width);
            left.setPrefWidth(width);
            left.setMaxWidth(width);
        });
        HBox.setHgrow(sheet, Priority.ALWAYS);
        setCenter(both);
    }

    private void control(Button button, String id, String icon, Runnable act) {
        button.setId(id);
        button.setGraphic(IconNode.of(icon, 16));
        button.getStyleClass().add("tall");
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.setTooltip(new Tooltip());
        button.accessibleTextProperty().bind(button.getTooltip().textProperty());
        button.setOnAction(e -> act.run());
    }

    private void key(KeyEvent e) {
        Runnable act =
                switch (e.getCode()) {
                    case SPACE -> this::toggle;
                    case RIGHT -> () -> go(at + 1);
                    case LEFT -> () -> go(at - 1);
                    case ESCAPE -> this::leave;
                    default -> null;
                };
        if (act != null && Overlay.top(getScene()) == null) {
            act.run();
            e.consume();
        }
    }

    /** Begins; where nothing is to move by itself, it waits for the keys. */
    void begin(boolean still) {
        if (!still) {
            playing.play();
        }
        fill();
        next.requestFocus();
    }

    private void toggle() {
        if (isPlaying()) {
            playing.pause();
        } else {
            if (at == steps - 1) {
                at = 0;
            }
            playing.play();
        }
        fill();
    }

    private boolean isPlaying() {
        return playing.getStatus() == Timeline.Status.RUNNING;
    }

    private void tick() {
        if (at < steps - 1) {
            show(at + 1);
        }
        if (at == steps - 1) {
            playing.pause();
            fill();
        }
    }

    private void go(int step) {
        // Whoever looks at a step has as long for it as they want.
        playing.pause();
        if (step >= steps) {
            leave();
        } else {
            show(Math.max(0, step));
        }
    }

    private void leave() {
        playing.stop();
        done.run();
    }

    private void show(int step) {
        at = step;
        fill();
    }

    private void fill() {
        title.setText(words.say("drill.example", sayings.family(card.slot().family())));
        position.setText(words.say("drill.step", at + 1, steps));
        boolean last = at == steps - 1;
        play.setGraphic(IconNode.of(isPlaying() ? "pause" : "play", 16));
        play.getTooltip().setText(words.say(isPlaying() ? "drill.pause" : "drill.play"));
        back.getTooltip().setText(words.say("drill.back"));
        back.setDisable(at == 0);
        next.getTooltip().setText(words.say("drill.next"));
        skip.setText(words.say(last ? "drill.nextCard" : "drill.skip"));
        skip.getStyleClass().remove("main");
        if (last) {
            skip.getStyleClass().add("main");
        }
        for (int i = 0; i < steps; i++) {
            past.getChildren().get(i).getStyleClass().remove("past");
            if (i <= at) {
                past.getChildren().get(i).getStyleClass().add("past");
            }
        }
        ReviewedTest test = at == 0 || last ? null : tests.get(before + at - 1);
        Belief belief =
                test != null ? test.after() : last ? tests.get(tests.size() - 1).after() : start();
        plan.setVisible(!last);
        truthPlan.setVisible(last);
        (last ? truthPlan : plan).show(new CallDebriefArt.Moment(belief, test, test == null ? "" : pin(test)));
        told.getChildren().setAll(at == 0 ? opening(belief) : last ? finding(belief) : told(test));
    }

    /** What was believed when the replay begins. */
    private Belief start() {
        return before == 0
                ? Belief.before(review.site().hypotheses())
                : tests.get(before - 1).after();
    }

    private String pin(ReviewedTest test) {
        String reading = names.reading(test);
        String name = names.name(test.note().test());
        return reading.isEmpty() ? name : name + ": " + reading;
    }

    private List<Node> opening(Belief belief) {
        List<Node> all = new ArrayList<>();
        all.add(DrillSheet.label(words.say("drill.exampleStart"), "section-title"));
        all.add(DrillSheet.label("“" + words.say(review.site().scenario().call().complaint()) + "”", "call-complaint"));
        if (before > 0) {
            all.add(DrillSheet.label(words.say("drill.exampleBefore", before)));
        }
        all.add(DrillSheet.label(names.start(belief), "ink2"));
        all.add(strongest(belief));
        return all;
    }

    private List<Node> told(ReviewedTest test) {
        Call.Note note = test.note();
        List<Node> all = new ArrayList<>();
        StackPane sign = new StackPane(CallDebriefSigns.of(note.test()));
        sign.getStyleClass().add("kit-icon");
        Label name = DrillSheet.label(texts.name(note.test()), "section-title");
        all.add(DrillSheet.signed(new IconNode(CallDebriefSigns.icon(note.test()), 22), name));
        all.add(DrillSheet.label(texts.does(note.test()), "ink2"));
        String reading = texts.reading(note);
        if (!reading.isEmpty()) {
            all.add(DrillSheet.label(words.say("drill.exampleRead", reading), "value"));
        }
        Optional<CallWords.Scale> scale = CallWords.scale(note);
        scale.ifPresent(s -> {
            Label band = DrillSheet.label(texts.band(s), "small", "ink2");
            all.add(new VBox(4, new CallBand(s), band));
        });
        if (note.reading() == null) {
            all.add(DrillSheet.label(names.explained(test)));
        } else {
            all.add(DrillSheet.label(texts.thought(CallThought.of(note.prior(), test.after()))));
        }
        all.add(strongest(test.after()));
        return all;
    }

    private List<Node> finding(Belief belief) {
        String stated = names.suspect(review.yours().stated());
        return List.of(
                DrillSheet.signed(
                        DrillSheet.sign(true), DrillSheet.label(words.say("drill.exampleEnd"), "section-title")),
                DrillSheet.label(
                        words.say(
                                "drill.exampleStated",
                                stated,
                                texts.percent(review.yours().probability())),
                        "value"),
                strongest(belief));
    }

    private Label strongest(Belief belief) {
        String share = texts.percent(belief.ofClass(belief.leadingClass()));
        return DrillSheet.label(
                words.say("drill.strongest", texts.finding(belief.leading()), share), "strong", "belief");
    }

    void look(Theme theme, double em) {
        plan.look(theme, em / Shell.EM);
        truthPlan.look(theme, em / Shell.EM);
    }

    /** The step that is shown, from 0. */
    int at() {
        return at;
    }

    void dispose() {
        playing.stop();
        plan.dispose();
        truthPlan.dispose();
    }
}
