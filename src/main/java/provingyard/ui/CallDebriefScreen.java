package provingyard.ui;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.application.Platform;
import javafx.beans.property.IntegerProperty;
import javafx.beans.property.SimpleIntegerProperty;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.util.Duration;
import provingyard.call.Call;
import provingyard.call.CallReview;
import provingyard.call.ReviewedTest;
import provingyard.diagnosis.Action;
import provingyard.diagnosis.Belief;
import provingyard.picture.Theme;

/**
 * The debrief of a service call: first the question which test one would change, then what each test told and could have
 * told, what was believed when, and how an expert goes about the same call. Left and right go from test to test, E shows
 * the expert's path, F forks, Esc leads back.
 */
final class CallDebriefScreen extends BorderPane {

    /** What can be done from here. */
    interface Acts {

        /** Leaves the debrief. */
        void back();

        /** Goes on with a call that did the first tests of this one; it is practice. */
        void fork(Call practice);
    }

    private static final double LEFT_EM = 35.7;

    /** em that the right column takes at most; the plan takes the rest, up to a share of the window. */
    private static final double RIGHT_EM = 75;

    private static final double LEFT_SHARE = 0.45;
    private static final double BESIDE_FROM = 84;
    private static final Duration STEP = Duration.seconds(1.6);

    private final Words words;
    private final CallDebriefModel model;
    private final Acts acts;
    private final boolean practice;
    private final CallDebriefWords sayings;
    private final IntegerProperty at = new SimpleIntegerProperty();
    private final ExecutorService worker = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "call-debrief");
        thread.setDaemon(true);
        return thread;
    });
    private final Timeline playing = new Timeline(new KeyFrame(STEP, e -> next()));
    private final Label title = new Label();
    private final Label subtitle = new Label();
    private final Button watch = new Button();
    private final Button fork = new Button();
    private final VBox explained = new VBox();
    private final VBox better = new VBox();
    private CallDebriefCommit commit;
    private CallDebriefPlan plan;
    private CallDebriefScrub scrub;
    private boolean experts;
    private Theme theme = Theme.LIGHT;
    private double em = Shell.EM;

    /**
     * The debrief of a call; its work begins at once.
     *
     * @param call a call whose finding is stated
     * @param practice whether it counts nothing
     */
    CallDebriefScreen(Call call, boolean practice, Words words, Consumer<Throwable> onFailure, Acts acts) {
        this(new CallDebriefModel(call), practice, words, onFailure, acts);
    }

    /** The same of a call of which more is known. */
    CallDebriefScreen(CallDebriefModel model, boolean practice, Words words, Consumer<Throwable> onFailure, Acts acts) {
        this.words = words;
        this.acts = acts;
        this.practice = practice;
        this.model = model;
        sayings = new CallDebriefWords(words, model.call().site());
        setId("call-debrief");
        getStyleClass().add("debrief");
        playing.setCycleCount(Timeline.INDEFINITE);
        model.stateProperty().addListener((o, was, is) -> changed(was, is));
        at.addListener((o, was, is) -> moved());
        widthProperty().addListener((o, was, is) -> {
            if (plan != null && (beside(was.doubleValue()) != beside(is.doubleValue()) || beside(is.doubleValue()))) {
                arrange();
            }
        });
        words.follow(this, this::fill);
        addEventFilter(KeyEvent.KEY_PRESSED, this::key);
        fill();
        model.begin(worker, Platform::runLater, onFailure);
    }

    private void key(KeyEvent e) {
        if (e.getTarget() instanceof TextInputControl || e.isShortcutDown()) {
            return;
        }
        Runnable action =
                switch (e.getCode()) {
                    case ESCAPE -> acts::back;
                    case LEFT -> () -> go(at.get() - 1);
                    case RIGHT -> () -> go(at.get() + 1);
                    case HOME -> () -> go(0);
                    case END -> () -> go(way().tests().size());
                    case E -> this::toggleExpert;
                    case F -> this::fork;
                    default -> null;
                };
        boolean shown = model.stateProperty().get().revealed();
        if (action != null && (shown || e.getCode() == KeyCode.ESCAPE)) {
            action.run();
            e.consume();
        }
    }

    void look(Theme next, double size) {
        theme = next;
        em = size;
        fill();
    }

    private void changed(CallDebriefModel.State was, CallDebriefModel.State is) {
        if (is.revealed()) {
            if (!was.revealed()) {
                at.set(is.review().worst().stream()
                        .findFirst()
                        .map(ReviewedTest::number)
                        .orElse(is.review().yours().tests().size()));
            }
            fill();
            scrub.requestFocus();
        } else if (is.said() != null) {
            setCenter(waiting(is.stage()));
        } else {
            commit.at(is.stage());
        }
    }

    private void fill() {
        CallDebriefModel.State state = model.stateProperty().get();
        setTop(top(state));
        if (!state.revealed()) {
            if (state.said() == null) {
                ask(state);
            } else {
                setCenter(waiting(state.stage()));
            }
            return;
        }
        commit = null;
        arrange();
    }

    private void ask(CallDebriefModel.State state) {
        CallDebriefModel.Said draft = commit == null ? null : commit.draft();
        commit = new CallDebriefCommit(words, model.call(), sayings, model::say);
        commit.at(state.stage());
        if (draft != null) {
            commit.take(draft);
        }
        VBox sheet = new VBox(new FittingScroll(commit, FittingScroll.BAR));
        sheet.getStyleClass().add("sheet");
        sheet.setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
        StackPane middle = new StackPane(sheet);
        middle.setPadding(new Insets(16));
        setCenter(middle);
        Platform.runLater(() -> {
            if (commit != null && getScene() != null) {
                commit.focusFirst();
            }
        });
    }

    private Node waiting(CallDebriefModel.Stage stage) {
        ProgressBar bar = new ProgressBar();
        bar.setPrefWidth(160);
        Label label = new Label(sayings.say(
                stage == CallDebriefModel.Stage.REFERENCE ? "review.wait.reference" : "review.wait.review"));
        label.getStyleClass().add("ink2");
        HBox box = new HBox(12, bar, label);
        box.setAlignment(Pos.CENTER);
        return box;
    }

    private HBox top(CallDebriefModel.State state) {
        Button back = new Button();
        back.setId("call-debrief-back");
        back.setGraphic(IconNode.of("back", 18));
        back.getStyleClass().add("quiet");
        back.setAccessibleText(sayings.say("review.back"));
        back.setOnAction(e -> acts.back());
        title.getStyleClass().setAll("label", "section-title");
        subtitle.getStyleClass().setAll("label", "small", "ink2");
        VBox names = new VBox(title, subtitle);
        names.setAlignment(Pos.CENTER_LEFT);
        names.setMinWidth(0);
        HBox.setHgrow(names, Priority.ALWAYS);
        HBox bar = new HBox(12, back, names);
        if (practice) {
            Label chip = new Label(sayings.say("review.practice"));
            chip.setId("call-debrief-practice");
            chip.getStyleClass().add("practice-chip");
            chip.setMinWidth(Region.USE_PREF_SIZE);
            bar.getChildren().add(chip);
        }
        if (state.revealed()) {
            watch.setId("call-debrief-watch");
            watch.setMinWidth(Region.USE_PREF_SIZE);
            watch.setOnAction(e -> toggleExpert());
            fork.setId("call-debrief-fork");
            fork.getStyleClass().setAll("button", "main");
            fork.setMinWidth(Region.USE_PREF_SIZE);
            fork.setOnAction(e -> fork());
            fork.setAccessibleHelp(sayings.say("review.fork.note"));
            bar.getChildren().addAll(watch, fork);
        }
        bar.getStyleClass().add("top-bar");
        heading(state);
        return bar;
    }

    private void heading(CallDebriefModel.State state) {
        title.setText(sayings.say(experts ? "review.title.expert" : "review.title"));
        if (!state.revealed()) {
            subtitle.setText(words.say(model.call().site().scenario().title()));
            return;
        }
        subtitle.setText(sayings.say(
                "review.subtitle",
                sayings.whole(Math.rint(clock())),
                experts ? sayings.suspect(way().stated()) : sayings.outcome(state.review())));
        watch.setText(sayings.say(experts ? "review.unwatch" : "review.watch"));
        fork.setText(sayings.say("review.fork", forked()));
        fork.setDisable(experts);
    }

    private double clock() {
        List<ReviewedTest> tests = way().tests();
        return tests.isEmpty() ? 0 : tests.get(tests.size() - 1).note().minute();
    }

    private CallReview review() {
        return model.stateProperty().get().review();
    }

    private CallReview.Way way() {
        return experts ? review().experts() : review().yours();
    }

    private boolean beside(double width) {
        return width >= BESIDE_FROM * em;
    }

    private void arrange() {
        CallReview review = review();
        double lettering = em / Shell.EM;
        if (plan == null) {
            plan = new CallDebriefPlan(words, review);
        }
        plan.look(theme, lettering);
        if (scrub == null) {
            scrub = new CallDebriefScrub(at, this::stop);
        }
        scrub.show(way().tests().size(), theme, lettering);
        VBox left = new VBox(10, new StackPane(plan, legend()), scrub, better, remarks());
        VBox right = new VBox(18);
        if (!experts) {
            right.getChildren()
                    .add(new CallDebriefScore(sayings, review)
                            .box(model.stateProperty().get().said()));
        }
        right.getChildren()
                .addAll(
                        strip(lettering),
                        explained,
                        section(
                                "review.curve.title",
                                "review.curve.hint",
                                new CallDebriefCurve(sayings, theme).of(review, lettering)));
        right.getStyleClass().add("debrief-column");
        setCenter(beside(getWidth()) ? both(left, right) : one(left, right));
        moved();
    }

    private Node both(VBox left, VBox right) {
        ScrollPane leftScroll = scroll(left);
        ScrollPane rightScroll = scroll(right);
        double width =
                Math.round(Math.max(LEFT_EM * em, Math.min(LEFT_SHARE * getWidth(), getWidth() - RIGHT_EM * em)));
        leftScroll.setMinWidth(width);
        leftScroll.setPrefWidth(width);
        left.setPadding(new Insets(0, 10, 16, 4));
        HBox both = new HBox(18, leftScroll, rightScroll);
        HBox.setHgrow(rightScroll, Priority.ALWAYS);
        both.setPadding(new Insets(14, 8, 0, 16));
        return both;
    }

    private Node one(VBox left, VBox right) {
        VBox all = new VBox(18, left, right);
        ScrollPane pane = scroll(all);
        VBox box = new VBox(pane);
        VBox.setVgrow(pane, Priority.ALWAYS);
        box.setPadding(new Insets(14, 8, 0, 16));
        return box;
    }

    private static ScrollPane scroll(Region content) {
        ScrollPane pane = new ScrollPane(content);
        pane.setFitToWidth(true);
        pane.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        pane.setMinHeight(0);
        pane.setFocusTraversable(false);
        return pane;
    }

    private Node legend() {
        Label likely = new Label(sayings.say("review.plan.legend"));
        Region band = new Region();
        band.getStyleClass().add("call-debrief-band");
        likely.setGraphic(band);
        HBox box = new HBox(14, likely);
        if (!review().places().isEmpty()) {
            Label truth = new Label(sayings.say("review.plan.truth"));
            IconNode sign = IconNode.of("cross", 11);
            sign.getStyleClass().add("call-debrief-truth");
            truth.setGraphic(sign);
            box.getChildren().add(truth);
        }
        box.getStyleClass().addAll("call-debrief-legend", "small");
        box.setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
        StackPane.setAlignment(box, Pos.BOTTOM_LEFT);
        StackPane.setMargin(box, new Insets(8));
        return box;
    }

    private String stop(int number) {
        return number < 0
                ? sayings.say("review.scrub.end")
                : number == 0 ? sayings.say("review.scrub.start") : sayings.say("review.scrub.after", number);
    }

    private VBox strip(double lettering) {
        CallDebriefStrip strip = new CallDebriefStrip(sayings, way().tests(), at, theme, lettering);
        VBox box = section(experts ? "review.strip.expert" : "review.strip.title", "review.strip.hint", strip);
        HBox legend = new HBox(
                16,
                key("best", "call-debrief-best"),
                key("chosen", "call-debrief-chosen"),
                key("came", "call-debrief-came"));
        legend.getStyleClass().add("small");
        box.getChildren().add(1, legend);
        return box;
    }

    private Label key(String key, String style) {
        Region sign = new Region();
        sign.getStyleClass().add(style);
        Label label = new Label(sayings.say("review.strip." + key), sign);
        label.setMinWidth(Region.USE_PREF_SIZE);
        return label;
    }

    private VBox section(String key, String hint, Node body) {
        Label name = new Label(sayings.say(key));
        name.getStyleClass().add("section-title");
        name.setMinWidth(Region.USE_PREF_SIZE);
        Label note = new Label(sayings.say(hint));
        note.getStyleClass().addAll("small", "ink2");
        note.setWrapText(true);
        note.setMinHeight(Region.USE_PREF_SIZE);
        HBox head = new HBox(10, name, note);
        head.setAlignment(Pos.BASELINE_LEFT);
        return new VBox(6, head, body);
    }

    private Node remarks() {
        FlowPane flow = new FlowPane(18, 8);
        flow.setId("call-debrief-remarks");
        for (CallReview.Found found : review().remarks()) {
            boolean unsafe = found.remark() == CallReview.Remark.UNSAFE;
            IconNode icon = IconNode.of(found.remark().good() ? "ok" : unsafe ? "alarm" : "caution", 16);
            icon.getStyleClass()
                    .add(found.remark().good() ? "sign-good" : unsafe ? "sign-alarm" : "call-debrief-caution");
            Label label = new Label(sayings.remark(found), icon);
            label.setWrapText(true);
            label.setGraphicTextGap(8);
            label.setMinHeight(Region.USE_PREF_SIZE);
            label.maxWidthProperty().bind(flow.widthProperty());
            flow.getChildren().add(label);
        }
        Label name = new Label(sayings.say("review.remarks.title"));
        name.getStyleClass().add("panel-title");
        VBox box = new VBox(6, name, flow);
        box.setVisible(!experts);
        box.setManaged(!experts);
        return box;
    }

    /** Another test is looked at. */
    private void moved() {
        if (!model.stateProperty().get().revealed() || plan == null) {
            return;
        }
        List<ReviewedTest> tests = way().tests();
        ReviewedTest test = at.get() == 0 ? null : tests.get(at.get() - 1);
        Belief belief = test == null ? Belief.before(review().site().hypotheses()) : test.after();
        plan.show(new CallDebriefPlan.Moment(belief, test, test == null ? "" : pin(test)));
        if (test == null) {
            Label name = new Label(sayings.say("review.explain.start"));
            name.getStyleClass().add("section-title");
            Label likely = new Label(sayings.start(belief));
            likely.getStyleClass().add("ink2");
            likely.setWrapText(true);
            likely.setMinHeight(Region.USE_PREF_SIZE);
            explained.getChildren().setAll(name, likely);
        } else {
            explained.getChildren().setAll(new CallDebriefRows(sayings, review().truth(), theme).of(test));
        }
        better.getChildren()
                .setAll(Optional.ofNullable(test)
                        .map(t -> List.<Node>of(new CallDebriefBetter(sayings, t, experts)))
                        .orElse(List.of()));
        heading(model.stateProperty().get());
    }

    private String pin(ReviewedTest test) {
        String reading = sayings.reading(test);
        String name = sayings.name(test.note().test());
        return reading.isEmpty() ? name : name + ": " + reading;
    }

    private void go(int stop) {
        playing.stop();
        at.set(Math.max(0, Math.min(way().tests().size(), stop)));
    }

    private void next() {
        if (at.get() >= way().tests().size()) {
            playing.stop();
        } else {
            at.set(at.get() + 1);
        }
    }

    private void toggleExpert() {
        playing.stop();
        at.set(0);
        experts = !experts;
        fill();
        if (experts) {
            playing.playFromStart();
        } else {
            at.set(Math.min(1, way().tests().size()));
        }
        scrub.requestFocus();
    }

    private void fork() {
        if (!experts) {
            acts.fork(model.call().fork(forked() - 1));
        }
    }

    /** The test that a fork begins with: the one looked at, the last one before the repair where that is looked at. */
    private int forked() {
        long before = review().yours().tests().stream()
                .takeWhile(
                        t -> t.step().kind() != Action.Kind.REPAIR && t.step().kind() != Action.Kind.VERIFY)
                .count();
        return (int) Math.min(Math.max(1, at.get()), Math.max(1, before));
    }

    /** As far as the debrief came. */
    CallDebriefModel.State state() {
        return model.stateProperty().get();
    }

    /** Whether everything that is shown is drawn. */
    boolean isDrawn() {
        return plan != null && plan.isDrawn();
    }

    void dispose() {
        playing.stop();
        model.cancel();
        worker.shutdownNow();
        if (plan != null) {
            plan.dispose();
        }
    }
}
