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
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
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

    private static final Duration STEP = Duration.seconds(1.6);

    private final Words words;
    private final CallDebriefModel model;
    private final Acts acts;
    private final Consumer<Throwable> onFailure;
    private boolean forking;
    private final CallDebriefWords sayings;
    private final IntegerProperty at = new SimpleIntegerProperty();
    private final ExecutorService worker = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "call-debrief");
        thread.setDaemon(true);
        return thread;
    });
    private final Timeline playing = new Timeline(new KeyFrame(STEP, e -> next()));
    private final CallDebriefSaving saving;
    private final CallDebriefTop top;
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
        this.onFailure = onFailure;
        this.model = model;
        sayings = new CallDebriefWords(words, model.call().site());
        saving = new CallDebriefSaving(model, words, this);
        top = new CallDebriefTop(sayings, practice, saving.menu(), bar());
        setId("call-debrief");
        setTop(top);
        getStyleClass().add("debrief");
        playing.setCycleCount(Timeline.INDEFINITE);
        model.stateProperty().addListener((o, was, is) -> changed(was, is));
        at.addListener((o, was, is) -> moved());
        widthProperty().addListener((o, was, is) -> {
            CallDebriefColumns columns = new CallDebriefColumns(em);
            if (plan != null && (columns.beside(was.doubleValue()) || columns.beside(is.doubleValue()))) {
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
        CallDebriefKey key = CallDebriefKey.of(e.getCode()).orElse(null);
        boolean shown = model.stateProperty().get().revealed();
        if (key == CallDebriefKey.BACK || key != null && shown) {
            act(key);
            e.consume();
        }
    }

    private void act(CallDebriefKey key) {
        switch (key) {
            case BACK -> acts.back();
            case BEFORE -> go(at.get() - 1);
            case AFTER -> go(at.get() + 1);
            case START -> go(0);
            case LAST -> go(way().tests().size());
            case EXPERT -> toggleExpert();
            case FORK -> fork();
        }
    }

    private CallDebriefTop.Acts bar() {
        return new CallDebriefTop.Acts() {
            @Override
            public void back() {
                acts.back();
            }

            @Override
            public void toggleExpert() {
                CallDebriefScreen.this.toggleExpert();
            }

            @Override
            public void fork() {
                CallDebriefScreen.this.fork();
            }
        };
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
        heading(state);
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

    private void heading(CallDebriefModel.State state) {
        if (!state.revealed()) {
            top.before(words.say(model.call().site().scenario().title()));
            return;
        }
        String outcome = sayings.say(
                "review.subtitle",
                sayings.whole(Math.rint(experts ? clock() : sayings.stated(model.call()))),
                experts ? sayings.suspect(way().stated()) : sayings.outcome(state.review()));
        top.shown(experts, outcome, forked());
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
        CallDebriefParts parts = new CallDebriefParts(sayings);
        VBox left = new VBox(10, parts.plan(plan, !review.places().isEmpty()), scrub, better);
        VBox right = new VBox(18);
        if (!experts) {
            left.getChildren().add(new CallDebriefRemarks(sayings, review));
            CallDebriefModel.Said said = model.stateProperty().get().said();
            right.getChildren().add(new CallDebriefScore(sayings, review).box(said));
        }
        CallDebriefStrip strip = new CallDebriefStrip(sayings, way().tests(), at, theme, lettering);
        ChartPane curve = new CallDebriefCurve(sayings, theme).of(review, lettering);
        right.getChildren()
                .addAll(
                        parts.strip(strip, experts),
                        explained,
                        parts.section("review.curve.title", "review.curve.hint", curve));
        right.getStyleClass().add("debrief-column");
        setCenter(new CallDebriefColumns(em).of(left, right, getWidth()));
        moved();
    }

    private String stop(int number) {
        return number < 0
                ? sayings.say("review.scrub.end")
                : number == 0 ? sayings.say("review.scrub.start") : sayings.say("review.scrub.after", number);
    }

    /** Another test is looked at. */
    private void moved() {
        if (!model.stateProperty().get().revealed() || plan == null) {
            return;
        }
        List<ReviewedTest> tests = way().tests();
        ReviewedTest test = at.get() == 0 ? null : tests.get(at.get() - 1);
        Belief belief = test == null ? Belief.before(review().site().hypotheses()) : test.after();
        plan.show(new CallDebriefArt.Moment(belief, test, test == null ? "" : pin(test)));
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

    /** Lives the call again up to a test, off the window's thread. */
    private void fork() {
        if (experts || forking) {
            return;
        }
        forking = true;
        top.forking();
        int tests = forked() - 1;
        worker.execute(() -> {
            try {
                Call practice = model.call().fork(tests);
                Platform.runLater(() -> acts.fork(practice));
            } catch (RuntimeException | Error e) {
                onFailure.accept(e);
            }
            Platform.runLater(() -> {
                forking = false;
                if (getScene() != null) {
                    heading(model.stateProperty().get());
                }
            });
        });
    }

    /** The test that a fork begins with: the one looked at, the last one before the repair where that is looked at. */
    private int forked() {
        long before = review().yours().tests().stream()
                .takeWhile(
                        t -> t.step().kind() != Action.Kind.REPAIR && t.step().kind() != Action.Kind.VERIFY)
                .count();
        return (int) Math.min(Math.max(1, at.get()), Math.max(1, before));
    }

    CallDebriefSaving saving() {
        return saving;
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
