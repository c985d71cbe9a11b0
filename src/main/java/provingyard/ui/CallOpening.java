package provingyard.ui;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CancellationException;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.geometry.Pos;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import provingyard.call.CallSite;
import provingyard.diagnosis.Hazard;
import provingyard.scenario.FaultPlan;
import provingyard.scenario.Problem;
import provingyard.scenario.Scenario;
import provingyard.scenario.Text;
import provingyard.season.Season;
import provingyard.season.Site;
import provingyard.setup.References;
import provingyard.setup.SetUp;
import provingyard.study.Progress;
import provingyard.text.Texts;

/** Before a service call: what the owner says, what is known, what safety asks; meanwhile the site is made ready. */
final class CallOpening extends StackPane implements Progress {

    private static final int DAY = 1440;
    private static final int HOUR = 60;

    /**
     * A call's site that is ready.
     *
     * @param yard the yard as it is to be seen on arrival, with nothing given away
     */
    record Ready(CallSite site, YardModel yard) {}

    /** A call that was left here, and after how many tests. */
    private record Left(int tests, CallModel.Mode mode) {}

    private final Scenario scenario;
    private final Words words;
    private final Consumer<Throwable> failed;
    private final Runnable back;
    private final BiConsumer<Ready, CallModel.Mode> begun;
    private final ProgressBar bar = new ProgressBar();
    private final Button begin = new Button();
    private final Button cancel = new Button();
    private final Button goOn = new Button();
    private final VBox sheet = new VBox(12);
    private final VBox told = new VBox(12);
    private final HBox foot = new HBox(10);
    private CallModel.Mode mode = CallModel.Mode.GUIDED;
    private Left left;
    private Ready ready;
    private volatile boolean cancelled;

    CallOpening(
            Scenario scenario,
            Words words,
            BiConsumer<Ready, CallModel.Mode> begun,
            Consumer<Throwable> failed,
            Runnable back) {
        this.scenario = scenario;
        this.words = words;
        this.begun = begun;
        this.failed = failed;
        this.back = back;
        setId("call-opening");
        sheet.getStyleClass().addAll("sheet", "call-brief");
        sheet.setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
        begin.setId("call-begin");
        begin.getStyleClass().addAll("main", "tall");
        begin.setDefaultButton(true);
        begin.setDisable(true);
        // Whoever presses Enter too early has not cancelled.
        setFocusTraversable(true);
        begin.setMinWidth(Region.USE_PREF_SIZE);
        begin.setOnAction(e -> leave(now -> begun.accept(now, mode)));
        cancel.setId("opening-cancel");
        cancel.getStyleClass().add("tall");
        cancel.setMinWidth(Region.USE_PREF_SIZE);
        words.bind(cancel.textProperty(), "shell.cancel");
        cancel.setOnAction(e -> back.run());
        words.bind(begin.textProperty(), "call.begin");
        words.follow(this, this::fill);
        fill();
        // What is told scrolls where letters are large; the buttons are always seen.
        FittingScroll scroll = new FittingScroll(told, FittingScroll.BAR);
        sheet.getChildren().addAll(scroll, foot);
        foot.setMinHeight(Region.USE_PREF_SIZE);
        getChildren().add(sheet);
        getStyleClass().add("call-opening");
    }

    private void fill() {
        Texts diagnosis = Texts.of("diagnosis", words.language());
        told.getChildren()
                .setAll(
                        label(words.say("call.title", words.say(scenario.title())), "page-title"),
                        label("“" + words.say(scenario.call().complaint()) + "”", "call-complaint"));
        for (Text shown : scenario.call().shown()) {
            told.getChildren().add(label(words.say(shown), "ink2"));
        }
        Label safety = label(
                diagnosis.say(Hazard.BURIED_LINES.ruleKey()) + " " + diagnosis.say(Hazard.LOCAL_RULES) + " "
                        + diagnosis.say(Hazard.NO_LICENCE),
                "small");
        HBox caution = new HBox(8, IconNode.of("caution", 16), safety);
        HBox.setHgrow(safety, Priority.ALWAYS);
        caution.getStyleClass().add("caution");
        caution.setAlignment(Pos.CENTER_LEFT);
        List<Segments.Choice<CallModel.Mode>> choices = new ArrayList<>();
        for (CallModel.Mode each : CallModel.Mode.values()) {
            choices.add(new Segments.Choice<>(each, each.name(), words.live("call.mode." + each.name()), null));
        }
        Label why = label(words.say("call.modeWhy." + mode.name()), "ink2");
        why.getStyleClass().add("small");
        Segments<CallModel.Mode> modes = new Segments<>("call-mode", choices, mode, next -> {
            mode = next;
            why.setText(words.say("call.modeWhy." + mode.name()));
        });
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        foot.getChildren().setAll(bar, gap, cancel, begin);
        if (left != null) {
            told.getChildren().add(label(words.say("call.leftHere", left.tests(), modeName()), "call-left-here"));
            foot.getChildren().add(goOn);
        }
        foot.setAlignment(Pos.CENTER_LEFT);
        bar.setAccessibleText(words.say("shell.opening", words.say(scenario.title())));
        told.getChildren().addAll(caution, modes, why);
    }

    private String modeName() {
        return words.say("call.mode." + left.mode().name()).toLowerCase(Locale.ROOT);
    }

    /**
     * Offers to go on with a call that was left here.
     *
     * @param tests tests done until then
     * @param then takes the site when that is chosen
     */
    void offer(int tests, CallModel.Mode leftMode, Consumer<Ready> then) {
        left = new Left(tests, leftMode);
        words.bind(begin.textProperty(), "call.beginAnew");
        begin.getStyleClass().remove("main");
        begin.setDefaultButton(false);
        goOn.setId("call-go-on-left");
        words.bind(goOn.textProperty(), "call.goOnLeft");
        goOn.getStyleClass().addAll("main", "tall");
        goOn.setDefaultButton(true);
        goOn.setDisable(true);
        goOn.setMinWidth(Region.USE_PREF_SIZE);
        goOn.setOnAction(e -> leave(then));
        fill();
    }

    /** Hands the site over, and shows that the call takes its time to begin. */
    private void leave(Consumer<Ready> to) {
        Ready now = ready;
        ready = null;
        begin.setDisable(true);
        goOn.setDisable(true);
        bar.setProgress(ProgressBar.INDETERMINATE_PROGRESS);
        bar.setVisible(true);
        to.accept(now);
    }

    private static Label label(String text, String style) {
        Label label = new Label(text);
        label.getStyleClass().add(style);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        return label;
    }

    /** Whoever wrote the site is told what does not fit, and is led back. */
    private void refuse(List<Problem> errors) {
        if (!cancelled) {
            Scene over = getScene();
            back.run();
            Notice.show(over, words.say(scenario.title()), OwnSites.told(errors, words));
        }
    }

    /** Makes the site ready. */
    void begin(Consumer<Throwable> onFailure) {
        Thread thread = new Thread(
                () -> {
                    try {
                        List<Problem> errors = OwnSites.errors(scenario);
                        if (!errors.isEmpty()) {
                            Platform.runLater(() -> refuse(errors));
                            return;
                        }
                        Ready made = new Ready(CallSite.of(scenario), yard(scenario, this, onFailure));
                        Platform.runLater(() -> hand(made));
                    } catch (CancellationException e) {
                        cancelled = true;
                    } catch (RuntimeException | Error e) {
                        Platform.runLater(() -> {
                            if (!cancelled) {
                                failed.accept(e);
                            }
                        });
                    }
                },
                "open-call");
        thread.setDaemon(true);
        thread.start();
    }

    /** The site as installed, without its faults: what is wrong is found by tests, not seen on the plan. */
    static YardModel yard(Scenario scenario, Progress progress, Consumer<Throwable> onFailure) {
        Site site = Site.of(scenario.with(scenario.catalogue(), scenario.yard(), List.of()));
        SetUp installed = References.textbook(scenario).orElse(SetUp.CLOCK_ALONE);
        List<Season.Change> changes = List.of(new Season.Change(0, installed));
        SeasonPlayer.Kept kept = new SeasonPlayer.Kept(arrival(scenario), changes, List.of());
        return new YardModel(SeasonReplay.of(site, kept, progress), onFailure);
    }

    private static long arrival(Scenario scenario) {
        FaultPlan.When arrives = scenario.call().arrives();
        LocalTime at = arrives.at();
        return (arrives.day() - 1L) * DAY + at.getHour() * HOUR + at.getMinute();
    }

    private void hand(Ready made) {
        if (cancelled) {
            made.yard().close();
            return;
        }
        ready = made;
        bar.setVisible(false);
        begin.setDisable(false);
        setFocusTraversable(false);
        goOn.setDisable(false);
        (left == null ? begin : goOn).requestFocus();
    }

    void cancel() {
        cancelled = true;
        if (ready != null) {
            ready.yard().close();
            ready = null;
        }
    }

    @Override
    public void at(int done, int of) {
        Platform.runLater(() -> bar.setProgress(of == 0 ? ProgressBar.INDETERMINATE_PROGRESS : done / (double) of));
    }

    @Override
    public boolean cancelled() {
        return cancelled;
    }
}
