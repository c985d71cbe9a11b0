package provingyard.ui;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.application.Platform;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.IntegerProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleIntegerProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.MenuItem;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.StackPane;
import javafx.util.Duration;
import provingyard.learner.Learner;
import provingyard.learner.LearnerStore.Trouble;
import provingyard.learner.Look;
import provingyard.learner.SavedSeason;
import provingyard.learner.SiteProgress;
import provingyard.picture.FontRole;
import provingyard.picture.Theme;
import provingyard.quantity.UnitSystem;
import provingyard.scenario.Problem;
import provingyard.scenario.Scenario;
import provingyard.scenario.Work;
import provingyard.season.Season;
import provingyard.setup.History;
import provingyard.setup.SetUp;
import provingyard.study.Choice;
import provingyard.study.Commitment;

/**
 * The window's inside: which screen is shown, to whom, in which theme, language, units and size of text; what is kept
 * of the learner's work; and what happens in a mishap.
 */
public final class Shell {

    private static final KeyCombination GALLERY =
            new KeyCodeCombination(KeyCode.G, KeyCombination.SHORTCUT_DOWN, KeyCombination.SHIFT_DOWN);
    /** The themes, in the order in which they are offered. */
    static final List<Theme> THEMES = List.of(Theme.LIGHT, Theme.DARK, Theme.HIGH_CONTRAST, Theme.PROJECTOR);

    /** Set on the root while the program is used by keys. */
    private static final PseudoClass BY_KEYS = PseudoClass.getPseudoClass("by-keys");

    /** px of the root's letters at 100 %. */
    static final double EM = 14;

    private static final Duration AUTOSAVE = Duration.seconds(20);
    private static final int KEEP_SECONDS = 3;

    private final Words words = new Words();
    private final StackPane screens = new StackPane();
    private final StackPane root = new StackPane(screens);
    private final Scene scene;
    private final List<Scenario> sites;
    private final LearnerBook book;
    private SeasonStudy study = new LiveStudy(LiveStudy.DRAWS);
    private final ObjectProperty<Theme> theme = new SimpleObjectProperty<>(Theme.LIGHT);
    private final IntegerProperty textSize = new SimpleIntegerProperty(100);
    private final BooleanProperty still = new SimpleBooleanProperty();
    private final Mishaps mishaps = new Mishaps();
    private final Timeline autosave = new Timeline(new KeyFrame(AUTOSAVE, e -> keepSoon()));
    private YardScreen yard;
    private Guide guide;
    private RouteSheet route;
    private Opening opening;
    private OnCall onCall;
    private DrillSession drill;
    private Class<?> sheet;

    /** A shell over the sites, in their order, that belongs to no learner and keeps nothing. */
    public Shell(List<Scenario> sites, double width, double height) {
        this(sites, LearnerBook.unwritten(), width, height);
    }

    /** A shell over the sites, in their order, for the learners of a book. */
    Shell(List<Scenario> sites, LearnerBook book, double width, double height) {
        this.sites = sites;
        this.book = book;
        for (FontRole role : FontRole.values()) {
            CanvasSurface.font(role, 14);
        }
        scene = new Scene(root, width, height);
        scene.addEventFilter(KeyEvent.KEY_PRESSED, this::key);
        scene.addEventFilter(KeyEvent.KEY_PRESSED, e -> root.pseudoClassStateChanged(BY_KEYS, true));
        scene.addEventFilter(MouseEvent.MOUSE_PRESSED, e -> root.pseudoClassStateChanged(BY_KEYS, false));
        words.units()
                .addListener((o, was, is) -> book.change(l -> l.looking(l.look().units(is))));
        book.onTrouble(trouble -> Platform.runLater(() -> say(trouble)));
        look(book.current().look());
        autosave.setCycleCount(Timeline.INDEFINITE);
        autosave.play();
        route();
        book.takeTroubles().forEach(this::say);
    }

    private void key(KeyEvent e) {
        Runnable action =
                switch (e.getCode()) {
                    case F1 -> this::help;
                    case F2 -> () -> speak(words.language().equals("en") ? "es" : "en");
                    case F3 -> this::otherUnits;
                    case F4 -> () -> theme(next(theme.get()));
                    case F10 -> this::settings;
                    default -> settingsKey(e) ? this::settings : GALLERY.match(e) ? this::gallery : null;
                };
        if (action != null) {
            action.run();
            e.consume();
        }
    }

    private static boolean settingsKey(KeyEvent e) {
        return new KeyCodeCombination(KeyCode.COMMA, KeyCombination.SHORTCUT_DOWN).match(e);
    }

    private void otherUnits() {
        words.units().set(words.units().get() == UnitSystem.US ? UnitSystem.METRIC : UnitSystem.US);
    }

    public Scene scene() {
        return scene;
    }

    public Words words() {
        return words;
    }

    /** The learners and the one who is here. */
    LearnerBook book() {
        return book;
    }

    /** Who is asked for what lies behind a debrief. */
    SeasonStudy study() {
        return study;
    }

    /** Asks somebody else from the next site that is opened on. */
    void study(SeasonStudy next) {
        study = next;
    }

    /** The theme of everything. */
    ReadOnlyObjectProperty<Theme> theme() {
        return theme;
    }

    /** Size of texts in percent. */
    ReadOnlyIntegerProperty textSize() {
        return textSize;
    }

    /** Whether nothing moves that need not. */
    public ReadOnlyBooleanProperty still() {
        return still;
    }

    /** The root's font size in px, in which panels measure. */
    double em() {
        return EM * textSize.get() / 100;
    }

    /** Changes the language of everything. */
    public void speak(String language) {
        words.speak(language);
        book.change(l -> l.looking(l.look().language(language)));
    }

    /** Changes the theme of everything, live. */
    public void theme(Theme next) {
        theme.set(next);
        style();
        book.change(l -> l.looking(l.look().theme(next.name())));
    }

    /** Changes the size of all texts, live. */
    void textSize(int percent) {
        textSize.set(percent);
        style();
        book.change(l -> l.looking(l.look().textSize(percent)));
    }

    /** Lets things move, or not. */
    void still(boolean next) {
        still.set(next);
        book.change(l -> l.looking(l.look().still(next)));
    }

    /** Everything as a learner wants it. */
    private void look(Look look) {
        words.speak(look.language());
        words.units().set(look.units());
        theme.set(THEMES.stream()
                .filter(t -> t.name().equals(look.theme()))
                .findFirst()
                .orElse(Theme.LIGHT));
        textSize.set(look.textSize());
        still.set(look.still());
        style();
    }

    private void style() {
        Theme now = theme.get();
        scene.getStylesheets().setAll(ThemeSheet.all(now, em()));
        if (yard != null) {
            yard.theme(now);
        }
        if (route != null) {
            route.theme(now);
        }
        if (onCall != null) {
            onCall.look();
        }
        if (drill != null) {
            drill.look();
        }
    }

    private static Theme next(Theme now) {
        return THEMES.get((THEMES.indexOf(now) + 1) % THEMES.size());
    }

    void screen(Node next) {
        screens.getChildren().setAll(next);
    }

    /** Shows the route sheet. */
    public void route() {
        leave();
        route = new RouteSheet(sites, words, this);
        route.theme(theme.get());
        screen(route);
        Platform.runLater(() -> {
            if (route != null && Overlay.top(scene) == null) {
                route.focusChosen();
            }
        });
    }

    /** Shows every control in every state, for those who work on the program; pressing the keys again leads back. */
    void gallery() {
        if (root.lookup("#gallery") != null) {
            route();
            return;
        }
        leave();
        screen(new Gallery(words));
    }

    /** Opens a site where it was left, or at its first minute; making it ready happens off the window's thread. */
    public void open(Scenario scenario) {
        open(scenario, book.current().at(scenario.id()).season());
    }

    /** Opens a site at its first minute; what was kept of a season there is given up. */
    void startAgain(Scenario scenario) {
        book.change(l -> l.on(scenario.id(), p -> p.with(null)));
        open(scenario, null);
    }

    private void open(Scenario scenario, SavedSeason saved) {
        leave();
        if (scenario.work() == Work.SERVICE_CALL) {
            onCall = new OnCall(scenario, words, this);
            onCall.arrive();
            return;
        }
        opening = new Opening(scenario, saved, book.isNew(), words, this::opened, this::notOpened);
        opening.onCancel(this::route);
        screen(opening);
        opening.begin(e -> Platform.runLater(() -> unforeseen(e)));
    }

    /** Opens a session of the drill deck, over the sites of all service calls that are shipped. */
    void drill() {
        leave();
        List<Scenario> calls =
                sites.stream().filter(s -> s.work() == Work.SERVICE_CALL).toList();
        drill = new DrillSession(OwnSites.shipped(calls), words, this);
        drill.open();
    }

    /** The session of the drill deck; null for none. */
    DrillSession drilling() {
        return drill;
    }

    /** The service call from arrival to debrief; null for none. */
    OnCall onCall() {
        return onCall;
    }

    private void opened(Opening.Ready ready) {
        opening = null;
        yard = new YardScreen(ready.model(), words, this);
        yard.theme(theme.get());
        screen(yard);
        guide = new Guide(yard, ready.model(), words, this, ready.rained());
        if (ready.first()) {
            ready.model().speed(ready.rained() ? Speed.SIXTY : Speed.SIX_HUNDRED);
            ready.model().togglePlay();
        }
        if (!ready.note().isEmpty()) {
            Notice.show(scene, words.say(ready.model().scenario().title()), words.say(ready.note()));
        }
    }

    private void notOpened(Throwable failure) {
        opening = null;
        unforeseen(failure);
        route();
    }

    YardScreen yard() {
        return yard;
    }

    /** Menu of settings, themes, languages and units. */
    List<MenuItem> lookMenu() {
        List<MenuItem> items = new ArrayList<>();
        items.add(item("look.example", this::example));
        items.add(item("look.settings", this::settings));
        items.add(item("look.language", () -> speak(words.language().equals("en") ? "es" : "en")));
        items.add(item("look.units", this::otherUnits));
        items.add(item("look.theme", () -> theme(next(theme.get()))));
        return items;
    }

    private MenuItem item(String key, Runnable action) {
        MenuItem item = new MenuItem();
        item.setId("look-" + key.substring(key.indexOf('.') + 1));
        words.bind(item.textProperty(), key);
        item.setOnAction(e -> action.run());
        return item;
    }

    /** Says which keys there are, and what the program is not for. */
    void help() {
        sheet(KeysSheet.class, close -> new KeysSheet(words, close));
    }

    /** Shows the annotated example on the yard. */
    private void example() {
        if (guide != null) {
            guide.showExample();
        }
    }

    /** Shows the settings. */
    void settings() {
        sheet(SettingsSheet.class, close -> new SettingsSheet(words, this, close));
    }

    /** Shows who learns here. */
    void learners() {
        sheet(LearnerSheet.class, close -> new LearnerSheet(words, this, close));
    }

    /** Shows a sheet; its key closes it again, and takes away another one that is open. */
    private void sheet(
            Class<?> kind, java.util.function.Function<Runnable, ? extends javafx.scene.layout.Region> maker) {
        Class<?> before = sheet;
        Overlay top = Overlay.top(scene);
        if (top != null) {
            top.close();
        }
        if (top != null && kind == before) {
            return;
        }
        Overlay[] shown = new Overlay[1];
        shown[0] = Overlay.show(scene, maker.apply(() -> shown[0].close())).then(() -> sheet = null);
        sheet = kind;
    }

    /** What a learner is called on the screen. */
    String learnerName(Learner learner) {
        return learner.name().isEmpty() ? words.say("learner.unnamed") : learner.name();
    }

    /** How many sites of the route a learner has lived. */
    long done(Learner learner) {
        return RouteModel.of(sites, learner).done();
    }

    /** Somebody new sits down. */
    void add(String name) {
        book.add(name);
        sat();
    }

    /** Another learner sits down. */
    void sit(String id) {
        book.switchTo(id);
        sat();
    }

    private void sat() {
        look(book.current().look());
        route();
    }

    void rename(String id, String name) {
        book.change(id, l -> l.named(name));
    }

    void removeLearner(String id) {
        boolean here = book.current().id().equals(id);
        book.remove(id);
        if (here) {
            sat();
        }
    }

    private void say(Trouble trouble) {
        Notice.show(
                scene,
                words.say("learner.trouble"),
                words.say(
                        "learner." + trouble.kind().name(),
                        trouble.file().toAbsolutePath(),
                        trouble.file().toAbsolutePath().getParent()));
    }

    /** What the learner would change after a season on a site is kept. */
    void answered(String site, Commitment said) {
        String choice = said.choice() == null ? "" : said.choice().name();
        book.change(l -> l.on(site, p -> p.answering(new SiteProgress.Answer(choice, said.why()))));
    }

    /** What the learner would have changed after the last season on a site. */
    Optional<Commitment> answer(String site) {
        return Optional.ofNullable(book.current().at(site).answer()).map(Shell::commitment);
    }

    private static Commitment commitment(SiteProgress.Answer answer) {
        Choice choice = Arrays.stream(Choice.values())
                .filter(c -> c.name().equals(answer.choice()))
                .findFirst()
                .orElse(null);
        return new Commitment(choice, answer.why());
    }

    /** A season on a site was lived to its end and reckoned. */
    void scored(String site, Integer score) {
        guide.scored(score);
        book.change(l -> l.on(site, p -> p.lived(score)));
    }

    /** Keeps the season as it is; the player answers on its own thread, and writes it down there. */
    private void keepSoon() {
        if (onCall != null) {
            onCall.keep();
        }
        if (yard != null) {
            String learner = book.current().id();
            YardModel model = yard.model();
            model.player().keep(kept -> {
                Optional<SavedSeason> season = saved(model, kept);
                Platform.runLater(() -> {
                    // Whoever left meanwhile has kept it already.
                    if (yard != null && yard.model() == model) {
                        keep(learner, model, season);
                    }
                });
            });
        }
    }

    /** What is kept of a season; empty where nothing was done yet. */
    private static Optional<SavedSeason> saved(YardModel model, SeasonPlayer.Kept kept) {
        boolean touched = kept.tick() > 0 || !kept.changes().get(0).setUp().equals(SetUp.CLOCK_ALONE);
        List<History.Change> changes = kept.changes().stream()
                .map(c -> new History.Change(c.tick(), c.setUp()))
                .toList();
        return touched
                ? Optional.of(
                        SavedSeason.of(model.site().contentHash(), Season.ENGINE, kept.tick(), changes, kept.rearms()))
                : Optional.empty();
    }

    private void keep(String learner, YardModel model, Optional<SavedSeason> season) {
        season.ifPresent(kept -> book.change(learner, l -> l.on(model.scenario().id(), p -> p.with(kept))));
    }

    /** Keeps the season before its screen goes; waits for the player, which answers between two minutes. */
    private void keepNow() {
        if (onCall != null) {
            onCall.keep();
        }
        if (yard == null) {
            return;
        }
        YardModel model = yard.model();
        CompletableFuture<Optional<SavedSeason>> season = new CompletableFuture<>();
        model.player().keep(kept -> season.complete(saved(model, kept)));
        try {
            keep(book.current().id(), model, season.get(KEEP_SECONDS, TimeUnit.SECONDS));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (ExecutionException | TimeoutException e) {
            unforeseen(e);
        }
    }

    /** Says which sites cannot be read, and why. */
    void tellOf(List<Problem> errors) {
        if (!errors.isEmpty()) {
            Notice.show(scene, words.say("sites.unread"), OwnSites.told(errors, words));
        }
    }

    /** Something unforeseen happened: the set-up is saved, it is said in plain words, and the work goes on. */
    void unforeseen(Throwable failure) {
        if (!mishaps.isNew(failure)) {
            return;
        }
        Optional<Path> kept = mishaps.keep(failure, yard == null ? null : yard.model());
        String key = yard == null
                ? "shell.unforeseenElsewhere"
                : kept.isEmpty() ? "shell.unforeseenNotKept" : "shell.unforeseen";
        Notice.show(
                scene,
                words.say("shell.title"),
                words.say(key, kept.map(Path::toString).orElse("")));
    }

    /** Ends what the shown screen still runs, and keeps the learner's work. */
    private void leave() {
        keepNow();
        if (yard != null) {
            guide.dispose();
            guide = null;
            yard.dispose();
            yard = null;
        }
        if (route != null) {
            route.dispose();
            route = null;
        }
        if (opening != null) {
            opening.cancel();
            opening = null;
        }
        if (onCall != null) {
            onCall.leave();
            onCall = null;
        }
        if (drill != null) {
            drill.leave();
            drill = null;
        }
    }

    /** Keeps everything; false when something could not be kept, so that closing would lose it. */
    boolean kept() {
        keepNow();
        return book.flush();
    }

    /** Asks whether to close although work would be lost. */
    void askToLose(Runnable close) {
        Notice.ask(
                scene,
                words.say("learner.trouble"),
                words.say("shell.loses"),
                words.say("shell.closeAnyway"),
                words.say("shell.stay"),
                close);
    }

    /** Ends all that still runs. */
    public void close() {
        leave();
        autosave.stop();
        book.close();
    }
}
