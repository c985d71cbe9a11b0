package provingyard.ui;

import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.control.MenuItem;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import provingyard.call.Call;
import provingyard.call.Judge;
import provingyard.call.Tool;
import provingyard.diagnosis.CaseScore;
import provingyard.picture.Theme;
import provingyard.picture.View;
import provingyard.scenario.Point;
import provingyard.season.Snapshot;

/** A service call: instruments, the yard with the places of their tests, the card of the chosen one, the field notes. */
final class CallScreen extends StackPane {

    /**
     * How a call is lived.
     *
     * @param practice whether it counts nothing
     * @param reference how long the reference takes, where that is known already; else null
     */
    record Setting(CallModel.Mode mode, boolean practice, Judge.Reference reference) {

        Setting(CallModel.Mode mode, boolean practice) {
            this(mode, practice, null);
        }

        /** Whether it is a card of the drill deck. */
        boolean drilled() {
            return reference != null;
        }
    }

    /** Who goes on after a call. */
    @FunctionalInterface
    interface Ending {

        /** The call was lived to its end. */
        void ended(CallScreen screen, CaseScore score);
    }

    private static final double MARGIN = 12;
    private static final double TRAY_EM = 15.6;
    private static final double NOTES_EM = 21.4;

    /** px that the card takes at the yard's foot, for the plan to stand free above it. */
    private static final double CARD_EM = 10.4;

    /** Share of the width that the panels may cover, however large the texts. */
    private static final double PANELS = 0.62;

    private static final int MOST_FAILURES = 30;

    private final Setting setting;
    private final Ending ending;
    private final CallModel model;
    private final YardModel yardModel;
    private final Words words;
    private final CallWords texts;
    private final Shell shell;
    private final YardPane yard;
    private final CallMarks marks;
    private final CallCard card;
    private final FittingScroll tray;
    private final CallTray tools;
    private final CallNotes notes;
    private final ExecutorService work;
    private final ExecutorService judging;
    private final AnimationTimer pulse;
    private final Snapshot sound;
    private final javafx.beans.InvalidationListener panels = o -> sizePanels();
    private int failures;
    private boolean isEnding;

    CallScreen(Call call, Setting setting, YardModel yardModel, Words words, Shell shell, Ending ending) {
        this.setting = setting;
        this.ending = ending;
        this.yardModel = yardModel;
        this.words = words;
        this.shell = shell;
        setId("call-screen");
        work = thread("call");
        judging = thread("call-reference");
        model = new CallModel(call, setting.mode(), work, Platform::runLater, shell::unforeseen);
        texts = new CallWords(call.site(), words);
        yard = new YardPane(yardModel, words);
        yard.onlyLook();
        yard.stillProperty().set(true);
        List<Point> sensors = yardModel.setUp().sensors().stream()
                .map(p -> yardModel.site().siting().place(p))
                .toList();
        marks = new CallMarks(model, words, texts, sensors, this::toCard);
        yard.layUnderMarks(marks.shade());
        tools = new CallTray(model, words, texts);
        tray = new FittingScroll(tools, 0);
        tray.getStyleClass().addAll("sheet", "kit-scroll");
        tray.setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
        notes = new CallNotes(model, words, texts, this::finding);
        card = new CallCard(model, words, texts, shell::em, this::end, this::toYard);
        StackPane middle = new StackPane(yard, marks, tray, notes, card);
        middle.setMinSize(0, 0);
        StackPane.setAlignment(tray, Pos.TOP_LEFT);
        StackPane.setAlignment(notes, Pos.TOP_RIGHT);
        StackPane.setAlignment(card, Pos.BOTTOM_CENTER);
        StackPane.setMargin(tray, new Insets(MARGIN));
        StackPane.setMargin(notes, new Insets(MARGIN));
        BorderPane frame = new BorderPane(middle);
        frame.setTop(new CallTop(model, setting, words, texts, this::leave, shell::help, menu()));
        getChildren().add(frame);
        addEventFilter(KeyEvent.KEY_PRESSED, this::key);
        middle.widthProperty().addListener(panels);
        shell.textSize().addListener(panels);
        sizePanels();
        judging.execute(this::judge);
        sound = yardModel.player().frame().snapshot();
        model.nowProperty().addListener(o -> seeYard());
        model.toldProperty().addListener(o -> seeYard());
        seeYard();
        model.busyProperty().addListener((o, was, is) -> {
            if (!is) {
                Platform.runLater(this::toCard);
            }
        });
        model.referenceProperty().addListener(o -> {
            if (isEnding) {
                end();
            }
        });
        pulse = new AnimationTimer() {
            @Override
            public void handle(long now) {
                try {
                    pulse();
                    failures = 0;
                } catch (RuntimeException e) {
                    missed(e);
                }
            }
        };
        pulse.start();
        Platform.runLater(yard::requestFocus);
    }

    /** The hour goes on; a zone that was walked sprays as long as the card tells of it. */
    private void seeYard() {
        Call.Note told = model.toldProperty().get();
        Snapshot looked = told == null ? null : told.seen();
        yardModel.show(CallYard.seen(sound, model.nowProperty().get().yard(), looked));
    }

    private static ExecutorService thread(String name) {
        return Executors.newSingleThreadExecutor(task -> {
            Thread thread = new Thread(task, name);
            thread.setDaemon(true);
            thread.setPriority(name.equals("call") ? Thread.NORM_PRIORITY : Thread.MIN_PRIORITY);
            return thread;
        });
    }

    private void judge() {
        try {
            Judge.Reference known = setting.reference() != null
                    ? setting.reference()
                    : Judge.reference(model.site(), model.call().deal());
            Platform.runLater(() -> model.judged(known));
        } catch (RuntimeException | Error e) {
            Platform.runLater(() -> shell.unforeseen(e));
        }
    }

    private void missed(RuntimeException e) {
        failures++;
        shell.unforeseen(e);
        if (failures > MOST_FAILURES) {
            pulse.stop();
            shell.route();
        }
    }

    private void pulse() {
        yardModel.refresh();
        yard.pulse(false);
        double pixels = getScene() == null || getScene().getWindow() == null
                ? 1
                : Math.max(1, getScene().getWindow().getRenderScaleX());
        marks.pulse(yard.view(), pixels);
    }

    /** Panels grow with the texts, as far as the yard is still seen between them. */
    private void sizePanels() {
        double wanted = (TRAY_EM + NOTES_EM) * shell.em();
        double room = getWidth() <= 0 ? wanted : PANELS * getWidth();
        double em = shell.em() * Math.min(1, room / wanted);
        double left = Math.round(TRAY_EM * em);
        double right = Math.round(NOTES_EM * em);
        wide(tools, left);
        wide(notes, right);
        StackPane.setMargin(card, new Insets(MARGIN, right + 2 * MARGIN, MARGIN, left + 2 * MARGIN));
        double foot = Math.round(CARD_EM * shell.em());
        yard.free(new View.Free(left + 2 * MARGIN, MARGIN, right + 2 * MARGIN, foot + MARGIN));
    }

    private static void wide(Region panel, double width) {
        panel.setMinWidth(width);
        panel.setPrefWidth(width);
        panel.setMaxWidth(width);
    }

    void theme(Theme theme) {
        yard.look(theme, shell.em() / Shell.EM);
    }

    private List<MenuItem> menu() {
        return shell.lookMenu();
    }

    private void key(KeyEvent e) {
        boolean plain = !e.isShortcutDown() && !e.isShiftDown() && !e.isAltDown();
        if (!plain || e.getTarget() instanceof TextInputControl || Overlay.top(getScene()) != null) {
            return;
        }
        Tool tool = CallSigns.tool(e.getCode());
        if (tool != null && model.tools().contains(tool)) {
            take(tool);
        } else if (!act(CallKey.of(e.getCode()).orElse(null))) {
            return;
        }
        e.consume();
    }

    /** Does what a key is for; false where it is for nothing now. */
    private boolean act(CallKey key) {
        if (key == CallKey.FINDING) {
            finding();
        } else if (key == CallKey.WATER) {
            model.makeSafe();
        } else if (key == CallKey.LEFT && model.guided()) {
            model.leftProperty().set(!model.leftProperty().get());
        } else if (key == CallKey.BACK && letGo()) {
            toYard();
        } else {
            return false;
        }
        return true;
    }

    private void take(Tool tool) {
        model.take(tool);
        if (model.chosenProperty().get() != null) {
            toCard();
        } else if (model.toolProperty().get() == null || !marks.focusMark()) {
            yard.requestFocus();
        }
    }

    /** Puts away the card first, then the tool; false where there is neither. */
    private boolean letGo() {
        if (model.chosenProperty().get() != null || model.toldProperty().get() != null) {
            model.cancel();
            return true;
        }
        boolean held = model.toolProperty().get() != null;
        if (held) {
            model.take(model.toolProperty().get());
        }
        return held;
    }

    private void toCard() {
        card.focusMain();
    }

    private void toYard() {
        if (!marks.focusMark()) {
            yard.requestFocus();
        }
    }

    private void finding() {
        boolean may = model.nowProperty().get().stage() == CallModel.Stage.TESTING
                && !model.busyProperty().get();
        if (may) {
            Overlay[] shown = new Overlay[1];
            CallFinding sheet = new CallFinding(model, words, texts, model::state, () -> shown[0].close());
            shown[0] = Overlay.show(getScene(), sheet);
        }
    }

    /** Leads on to the debrief, once it is known how long the reference takes. */
    private void end() {
        isEnding = true;
        Judge.Reference reference = model.referenceProperty().get();
        if (reference == null) {
            card.waiting();
        } else if (model.score().isPresent()) {
            isEnding = false;
            ending.ended(this, model.score().get());
        }
    }

    private void leave() {
        boolean kept = !setting.practice() && !setting.drilled();
        boolean lost = !kept && !model.nowProperty().get().notes().isEmpty();
        if (lost && !isEnding) {
            Notice.ask(
                    getScene(),
                    words.say("call.leave"),
                    words.say("call.leaveAsk"),
                    words.say("call.leave"),
                    words.say("call.stay"),
                    shell::route);
        } else {
            shell.route();
        }
    }

    CallModel model() {
        return model;
    }

    YardPane yard() {
        return yard;
    }

    Setting setting() {
        return setting;
    }

    /** Ends all that runs here; what is seen of the yard goes to whoever asks. */
    YardModel leaveYard() {
        pulse.stop();
        shell.textSize().removeListener(panels);
        work.shutdownNow();
        judging.shutdownNow();
        yard.dispose();
        return yardModel;
    }
}
