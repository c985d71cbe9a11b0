package provingyard.ui;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.Collectors;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.control.MenuItem;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;
import provingyard.picture.Theme;
import provingyard.picture.View;
import provingyard.scenario.Problem;
import provingyard.scenario.Read;
import provingyard.scenario.SensorKind;
import provingyard.score.Score;
import provingyard.season.Season;
import provingyard.setup.Placement;
import provingyard.setup.SetUp;
import provingyard.setup.SetUpReader;
import provingyard.setup.SetUpWriter;
import provingyard.study.Commitment;
import provingyard.study.Debrief;
import provingyard.study.Moment;

/** A site being tuned: yard, kit, inspector, ribbon, and the result when the season is over. */
final class YardScreen extends StackPane {

    private static final double MARGIN = 12;
    private static final double KIT_EM = 15.6;
    private static final double INSPECTOR_EM = 20.6;
    /** px that its scales and fields take, however small the texts. */
    private static final double INSPECTOR_LEAST = 288;
    /** Share of the width that kit and inspector may cover, however large the texts. */
    private static final double PANELS = 0.62;

    /** Pulses in a row that may fail. */
    private static final int MOST_FAILURES = 30;

    private final YardModel model;
    private final Words words;
    private final Shell shell;
    private final YardPane yard;
    private final KitPanel kit;
    private final Inspector inspector;
    private final RibbonPane ribbon;
    private final CommitSheet commit;
    private final DebriefModel debriefs;
    private final DebriefScreen debrief;
    private final MomentStrip strip;
    private final MomentSayings sayings;
    private final ExecutorService study = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "study");
        thread.setDaemon(true);
        return thread;
    });
    private final RecordsSheet records;
    private final ProveSheet prove;
    private final SchedulePanel schedule;
    private final AnimationTimer pulse;
    private boolean reckoned;
    private boolean counts;
    /** Whether the season that the debrief tells of is practice. */
    private boolean practice;

    private boolean practised;
    /** The moment that the yard was taken back to; null for none. */
    private Moment moment;

    private int failures;
    private final javafx.beans.InvalidationListener panels = o -> sizePanels();

    YardScreen(YardModel model, Words words, Shell shell) {
        this.model = model;
        this.words = words;
        this.shell = shell;
        setId("yard-screen");
        yard = new YardPane(model, words);
        yard.stillProperty().bind(shell.still());
        kit = new KitPanel(model, words, yard);
        inspector = new Inspector(model, words);
        ribbon = new RibbonPane(model, words, this::toggleProve, this::toggleRecords, this::toggleSchedule);
        debriefs = new DebriefModel(
                new LiveStudy(), study, Platform::runLater, e -> Platform.runLater(() -> shell.unforeseen(e)));
        debriefs.tell(this::scored);
        commit = new CommitSheet(model, words, this::committed, this::hideSheets);
        debriefs.stateProperty().addListener((o, was, is) -> commit.working(is.debrief() == null));
        debrief = new DebriefScreen(model, words, debriefs, e -> Platform.runLater(() -> shell.unforeseen(e)), acts());
        sayings = new MomentSayings(words, model.scenario());
        strip = new MomentStrip(words, model::practise, this::backToOwn, this::showDebrief);
        records = new RecordsSheet(model, words, this::hideSheets);
        prove = new ProveSheet(model, words, this::hideSheets);
        schedule = new SchedulePanel(model, words, this::hideSheets);
        // With large texts the kit is taller than the yard, and scrolls.
        FittingScroll kitScroll = new FittingScroll(kit, 0);
        kitScroll.getStyleClass().addAll("sheet", "kit-scroll");
        kitScroll.setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
        // Their shadows are soft: kept as pictures while the yard beneath them moves.
        kitScroll.setCache(true);
        inspector.setCache(true);
        StackPane middle = new StackPane(yard, kitScroll, inspector);
        StackPane.setAlignment(kitScroll, Pos.TOP_LEFT);
        StackPane.setAlignment(inspector, Pos.TOP_RIGHT);
        StackPane.setMargin(kitScroll, new Insets(MARGIN));
        StackPane.setMargin(inspector, new Insets(MARGIN));
        middle.setMinSize(0, 0);
        BorderPane frame = new BorderPane(middle);
        frame.setTop(new VBox(new TopBar(model, words, shell::route, shell::help, menu()), strip));
        frame.setBottom(ribbon);
        getChildren().addAll(frame, veil(), records, prove, schedule, commit, debrief);
        // What lies wholly under the debrief need neither be drawn nor read out.
        frame.visibleProperty().bind(debrief.visibleProperty().not());
        StackPane.setMargin(commit, new Insets(MARGIN));
        StackPane.setMargin(records, new Insets(MARGIN));
        StackPane.setMargin(prove, new Insets(MARGIN));
        StackPane.setMargin(schedule, new Insets(MARGIN));
        addEventFilter(KeyEvent.KEY_PRESSED, this::key);
        words.follow(this, ribbon::stale);
        middle.widthProperty().addListener(panels);
        shell.textSize().addListener(panels);
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
        Platform.runLater(() -> yard.requestFocus());
    }

    /** One pulse may be missed; a screen that fails on and on is left for the route sheet. */
    private void missed(RuntimeException e) {
        failures++;
        shell.unforeseen(e);
        if (failures > MOST_FAILURES) {
            pulse.stop();
            shell.route();
        }
    }

    /** Panels grow with the texts, as far as the yard is still seen between them. */
    private void sizePanels() {
        double wanted = (KIT_EM + INSPECTOR_EM) * shell.em();
        double room = getWidth() <= 0 ? wanted : PANELS * getWidth();
        double em = shell.em() * Math.min(1, room / wanted);
        wide(kit, Math.round(KIT_EM * em));
        wide(inspector, Math.max(INSPECTOR_LEAST, Math.round(INSPECTOR_EM * em)));
    }

    private static void wide(Region panel, double width) {
        panel.setMinWidth(width);
        panel.setPrefWidth(width);
        panel.setMaxWidth(width);
    }

    /** Tells of a season's score; one that was over when the site was opened was told of before. Practice never counts. */
    private void scored(Debrief ready) {
        Score score = ready.standing().score();
        if (counts && !practice) {
            counts = false;
            shell.scored(model.scenario().id(), score.points() == null ? null : score.shown());
        }
    }

    private void pulse() {
        model.refresh();
        double right = inspector.isVisible() ? inspector.getPrefWidth() + 2 * MARGIN : MARGIN;
        yard.free(new View.Free(kit.getPrefWidth() + 2 * MARGIN, MARGIN, right, MARGIN));
        yard.pulse(model.playingProperty().get());
        ribbon.pulse();
        records.pulse();
        SeasonPlayer.Frame frame = model.frameProperty().get();
        boolean ended = frame.over() && frame.snapshot().tick() >= frame.lived();
        if (frame.practice()) {
            if (ended && !practised) {
                practised = true;
                model.player().handOver(season -> Platform.runLater(() -> reckonPractice(season)));
            }
            practised &= frame.over();
        } else if (ended && !reckoned) {
            reckoned = true;
            model.player().handOver(season -> Platform.runLater(() -> reckon(season)));
        } else if (!frame.over()) {
            reckoned = false;
            counts = true;
        }
        strip(frame);
    }

    /** A season is over: it is worked out while the trainee says what they would change. */
    private void reckon(Season season) {
        Optional<Commitment> before =
                counts ? Optional.empty() : shell.answer(model.scenario().id());
        begin(false);
        debriefs.begin(season, shell.book().current().name());
        before.ifPresent(debriefs::commit);
        showDebrief();
    }

    private void reckonPractice(Season season) {
        begin(true);
        debriefs.beginPractice(season, shell.book().current().name());
        showDebrief();
    }

    private void begin(boolean inPractice) {
        practice = inPractice;
        moment = null;
        model.selectedProperty().set(null);
        hideSheets();
    }

    private void committed(Commitment said) {
        debriefs.commit(said);
        shell.answered(model.scenario().id(), said);
        showDebrief();
    }

    /** Opens the debrief; whoever has not said what they would change is asked first. */
    private void showDebrief() {
        hideSheets();
        if (!debriefs.committed() && !practice) {
            commit.open();
            return;
        }
        debrief.open(practice ? Optional.of(when(model.frameProperty().get().practiceFrom())) : Optional.empty());
    }

    private String when(long tick) {
        return sayings.day(tick) + " " + sayings.clock(tick);
    }

    /** What stands under the top bar while a lived season is looked at. */
    private void strip(SeasonPlayer.Frame frame) {
        boolean told = debriefs.stateProperty().get().stage() != DebriefModel.Stage.NONE;
        boolean back = frame.over() && frame.snapshot().tick() < frame.lived();
        if (!told || !(frame.practice() || frame.over())) {
            strip.hide();
            yard.ghosts(List.of());
            return;
        }
        String said = moment != null && back
                ? when(moment.tick()) + ": " + sayings.sentence(moment)
                : frame.practice()
                        ? words.say("strip.inPractice", when(frame.practiceFrom()))
                        : words.say(back ? "strip.lookingBack" : "strip.over");
        strip.show(said, frame.practice(), back && !frame.practice(), frame.over() && !frame.playing());
        yard.ghosts(back || frame.practice() ? ghosts() : List.of());
    }

    private List<Placement> ghosts() {
        Debrief now = debriefs.stateProperty().get().debrief();
        return now == null ? List.of() : DebriefPlan.ghosts(now);
    }

    private void backToOwn() {
        SetUp setUp = debriefs.own().season().setUp();
        moment = null;
        practice = false;
        debriefs.backToOwn();
        model.backToOwn(setUp);
    }

    private DebriefScreen.Acts acts() {
        return new DebriefScreen.Acts() {
            @Override
            public void toYard() {
                debrief.setVisible(false);
                yard.requestFocus();
            }

            @Override
            public void to(Moment which) {
                moment = which;
                model.player().show(which.tick());
                toYard();
            }

            @Override
            public void again() {
                YardScreen.this.again();
            }

            @Override
            public List<MenuItem> saving() {
                return List.of();
            }
        };
    }

    void theme(Theme theme) {
        yard.look(theme, shell.em() / Shell.EM);
        ribbon.theme(theme);
        inspector.theme(theme);
        prove.theme(theme);
        debrief.look(theme, shell.em());
    }

    /** Dims the yard under a sheet; a click on it closes the sheet. */
    private Region veil() {
        Region veil = new Region();
        veil.getStyleClass().add("veil");
        veil.visibleProperty()
                .bind(records.visibleProperty()
                        .or(prove.visibleProperty())
                        .or(schedule.visibleProperty())
                        .or(commit.visibleProperty()));
        veil.setOnMousePressed(e -> hideSheets());
        return veil;
    }

    private List<MenuItem> menu() {
        List<MenuItem> items = new ArrayList<>();
        items.add(item("menu.open", "menu-open", this::openSetUp));
        items.add(item("menu.save", "menu-save", this::saveSetUp));
        if (model.scenario().kit().item(SensorKind.FLOW) != null) {
            // Only a flow watch locks out what can be re-armed.
            items.add(item("menu.rearm", "menu-rearm", () -> model.player().rearm()));
        }
        items.add(item("menu.restart", "menu-restart", this::again));
        items.addAll(shell.lookMenu());
        return items;
    }

    private MenuItem item(String key, String id, Runnable action) {
        MenuItem item = new MenuItem();
        item.setId(id);
        words.bind(item.textProperty(), key);
        item.setOnAction(e -> action.run());
        return item;
    }

    private void key(KeyEvent e) {
        if (commit.isVisible() || debrief.isVisible()) {
            return;
        }
        boolean typing = e.getTarget() instanceof javafx.scene.control.TextInputControl;
        if (new KeyCodeCombination(KeyCode.Z, KeyCombination.SHORTCUT_DOWN).match(e) && !typing) {
            model.undo();
        } else if (new KeyCodeCombination(KeyCode.Y, KeyCombination.SHORTCUT_DOWN).match(e) && !typing) {
            model.redo();
        } else if (new KeyCodeCombination(KeyCode.S, KeyCombination.SHORTCUT_DOWN).match(e)) {
            saveSetUp();
        } else if (new KeyCodeCombination(KeyCode.O, KeyCombination.SHORTCUT_DOWN).match(e)) {
            openSetUp();
        } else if (!typing && e.getCode() == KeyCode.P && !e.isShortcutDown()) {
            model.togglePlay();
        } else if (!typing && e.getCode() == KeyCode.L && !e.isShortcutDown()) {
            kit.toggleDevices();
        } else if (!typing && e.getCode() == KeyCode.N && !e.isShortcutDown()) {
            model.player().nextEvent();
        } else if (!typing && e.getCode() == KeyCode.R && !e.isShortcutDown()) {
            toggleRecords();
        } else if (!typing && e.getCode() == KeyCode.T && !e.isShortcutDown()) {
            toggleProve();
        } else if (!typing && e.getCode() == KeyCode.S && !e.isShortcutDown()) {
            toggleSchedule();
        } else if (!typing && e.getCode() == KeyCode.D && !e.isShortcutDown() && strip.isVisible()) {
            showDebrief();
        } else if (e.getCode() == KeyCode.ESCAPE && sheetOpen()) {
            hideSheets();
        } else if (!typing && !covered() && !e.isShortcutDown() && !e.isShiftDown() && kitKey(e.getCode()) != null) {
            model.takeInHand(kitKey(e.getCode()));
            yard.requestFocus();
        } else {
            return;
        }
        e.consume();
    }

    private void toggleRecords() {
        boolean open = records.isVisible();
        hideSheets();
        if (!open) {
            records.open();
        }
    }

    private void toggleProve() {
        boolean open = prove.isVisible();
        hideSheets();
        if (!open) {
            prove.open();
        }
    }

    private void toggleSchedule() {
        boolean open = schedule.isVisible();
        hideSheets();
        if (!open) {
            schedule.open();
        }
    }

    private void hideSheets() {
        records.setVisible(false);
        prove.setVisible(false);
        commit.setVisible(false);
        debrief.setVisible(false);
        schedule.setVisible(false);
        yard.requestFocus();
    }

    /** Whether a sheet lies over the yard, whose own keys come first. */
    boolean covered() {
        return sheetOpen() || commit.isVisible() || debrief.isVisible();
    }

    private boolean sheetOpen() {
        return records.isVisible() || prove.isVisible() || schedule.isVisible();
    }

    /** The sensor of the kit that a digit takes in hand; null for other keys. */
    private SensorKind kitKey(KeyCode code) {
        List<SensorKind> kinds = java.util.Arrays.stream(SensorKind.values())
                .filter(k -> model.scenario().kit().item(k) != null)
                .toList();
        int digit = code.isDigitKey() ? code.getCode() % 16 : 0;
        return digit >= 1 && digit <= kinds.size() ? kinds.get(digit - 1) : null;
    }

    private void again() {
        hideSheets();
        moment = null;
        practice = false;
        reckoned = true;
        debriefs.forget();
        model.restart();
    }

    private FileChooser chooser() {
        FileChooser chooser = new FileChooser();
        chooser.getExtensionFilters().add(new FileChooser.ExtensionFilter(words.say("menu.files"), "*.json"));
        return chooser;
    }

    private void saveSetUp() {
        FileChooser chooser = chooser();
        chooser.setInitialFileName(model.scenario().id() + "-set-up.json");
        File file = chooser.showSaveDialog(getScene().getWindow());
        if (file != null) {
            saveTo(file.toPath());
        }
    }

    private void openSetUp() {
        File file = chooser().showOpenDialog(getScene().getWindow());
        if (file != null) {
            openFrom(file.toPath());
        }
    }

    /** Writes the set-up; says so when that fails. */
    void saveTo(Path file) {
        try {
            Files.writeString(file, SetUpWriter.write(model.setUp()));
        } catch (IOException e) {
            say(words.say("menu.notSaved", file, String.valueOf(e.getMessage())));
        }
    }

    /** Reads a set-up; what is wrong with it is said and nothing changes. */
    void openFrom(Path file) {
        try {
            Read<SetUp> read =
                    SetUpReader.read(file.getFileName().toString(), Files.readString(file), model.scenario());
            Optional<SetUp> setUp = Optional.ofNullable(read.value());
            if (setUp.isPresent()) {
                model.decide("step.open", setUp.get());
            } else {
                say(read.errors().stream()
                        .map((Problem p) -> p.line(words.language()))
                        .limit(8)
                        .collect(Collectors.joining("\n")));
            }
        } catch (IOException e) {
            say(words.say("menu.notRead", file, String.valueOf(e.getMessage())));
        }
    }

    private void say(String text) {
        Notice.show(getScene(), words.say(model.scenario().title()), text);
    }

    YardModel model() {
        return model;
    }

    DebriefModel.State debriefs() {
        return debriefs.stateProperty().get();
    }

    YardPane yard() {
        return yard;
    }

    void dispose() {
        pulse.stop();
        shell.textSize().removeListener(panels);
        debriefs.cancel();
        study.shutdownNow();
        debrief.dispose();
        yard.dispose();
        inspector.dispose();
        model.close();
    }
}
