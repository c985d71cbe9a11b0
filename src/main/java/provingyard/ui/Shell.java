package provingyard.ui;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.MenuItem;
import javafx.scene.control.ProgressIndicator;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import provingyard.picture.FontRole;
import provingyard.picture.Theme;
import provingyard.quantity.UnitSystem;
import provingyard.scenario.Scenario;
import provingyard.season.Site;
import provingyard.setup.SetUpWriter;

/** The window's inside: which screen is shown, in which theme, language and units; and what happens in a mishap. */
public final class Shell {

    private static final KeyCombination GALLERY =
            new KeyCodeCombination(KeyCode.G, KeyCombination.SHORTCUT_DOWN, KeyCombination.SHIFT_DOWN);

    private final Words words = new Words();
    private final StackPane root = new StackPane();
    private final Scene scene;
    private final List<Scenario> sites;
    private Theme theme = Theme.LIGHT;
    private YardScreen yard;
    private RouteSheet route;
    private boolean saidSo;

    /** A shell over the sites, in their order. */
    public Shell(List<Scenario> sites, double width, double height) {
        this.sites = sites;
        for (FontRole role : FontRole.values()) {
            CanvasSurface.font(role, 14);
        }
        scene = new Scene(root, width, height);
        scene.addEventFilter(KeyEvent.KEY_PRESSED, e -> {
            if (e.getCode() == KeyCode.F1) {
                help();
                e.consume();
            } else if (e.getCode() == KeyCode.F2) {
                speak(words.language().equals("en") ? "es" : "en");
                e.consume();
            } else if (e.getCode() == KeyCode.F3) {
                words.units().set(words.units().get() == UnitSystem.US ? UnitSystem.METRIC : UnitSystem.US);
                e.consume();
            } else if (e.getCode() == KeyCode.F4) {
                theme(next(theme));
                e.consume();
            } else if (GALLERY.match(e)) {
                gallery();
                e.consume();
            }
        });
        theme(Theme.LIGHT);
        route();
    }

    public Scene scene() {
        return scene;
    }

    public Words words() {
        return words;
    }

    /** Changes the language of everything. */
    public void speak(String language) {
        words.speak(language);
    }

    /** Changes the theme of everything, live. */
    public void theme(Theme next) {
        theme = next;
        scene.getStylesheets().setAll(ThemeSheet.all(next));
        if (yard != null) {
            yard.theme(next);
        }
        if (route != null) {
            route.theme(next);
        }
    }

    private static Theme next(Theme now) {
        List<Theme> all = List.of(Theme.LIGHT, Theme.DARK, Theme.HIGH_CONTRAST, Theme.PROJECTOR);
        return all.get((all.indexOf(now) + 1) % all.size());
    }

    /** Shows the route sheet. */
    public void route() {
        close();
        route = new RouteSheet(sites, words, this);
        route.theme(theme);
        root.getChildren().setAll(route);
    }

    /** Shows every control in every state, for those who work on the program; pressing the keys again leads back. */
    void gallery() {
        if (root.lookup("#gallery") != null) {
            route();
            return;
        }
        close();
        root.getChildren().setAll(new Gallery(words));
    }

    /** Opens a site; making it ready happens off the window's thread. */
    public void open(Scenario scenario) {
        close();
        ProgressIndicator wait = new ProgressIndicator();
        wait.setMaxSize(48, 48);
        Label what = new Label(words.say("shell.opening", words.say(scenario.title())));
        VBox box = new VBox(12, wait, what);
        box.setAlignment(javafx.geometry.Pos.CENTER);
        root.getChildren().setAll(box);
        Thread thread = new Thread(
                () -> {
                    try {
                        YardModel model = new YardModel(Site.of(scenario), e -> Platform.runLater(() -> unforeseen(e)));
                        Platform.runLater(() -> {
                            yard = new YardScreen(model, words, this);
                            yard.theme(theme);
                            root.getChildren().setAll(yard);
                        });
                    } catch (RuntimeException e) {
                        Platform.runLater(() -> {
                            unforeseen(e);
                            route();
                        });
                    }
                },
                "open-site");
        thread.setDaemon(true);
        thread.start();
    }

    YardScreen yard() {
        return yard;
    }

    /** Menu of themes, languages and units. */
    List<MenuItem> lookMenu() {
        List<MenuItem> items = new ArrayList<>();
        items.add(item("look.language", () -> speak(words.language().equals("en") ? "es" : "en")));
        items.add(item(
                "look.units",
                () -> words.units().set(words.units().get() == UnitSystem.US ? UnitSystem.METRIC : UnitSystem.US)));
        items.add(item("look.theme", () -> theme(next(theme))));
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
        Notice.show(scene, words.say("help.title"), words.say("help.text"));
    }

    /** Something unforeseen happened: the set-up is saved, and it is said once in plain words. */
    void unforeseen(Throwable failure) {
        if (saidSo) {
            return;
        }
        saidSo = true;
        String kept = "";
        try {
            Path folder = Path.of(System.getProperty("user.home"), ".proving-yard");
            Files.createDirectories(folder);
            StringWriter trace = new StringWriter();
            failure.printStackTrace(new PrintWriter(trace));
            Files.writeString(folder.resolve("last-mishap.txt"), trace.toString());
            if (yard != null) {
                Path file = folder.resolve("rescued-set-up.json");
                Files.writeString(file, SetUpWriter.write(yard.model().setUp()));
                kept = file.toString();
            }
        } catch (java.io.IOException e) {
            kept = "";
        }
        Notice.show(scene, words.say("shell.title"), words.say("shell.unforeseen", kept));
    }

    /** Ends what the shown screen still runs. */
    public void close() {
        if (yard != null) {
            yard.dispose();
            yard = null;
        }
        if (route != null) {
            route.dispose();
            route = null;
        }
    }
}
