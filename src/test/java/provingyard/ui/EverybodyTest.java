package provingyard.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.control.Slider;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Region;
import javafx.scene.text.Font;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;
import provingyard.learner.Learner;
import provingyard.learner.LearnerStore;
import provingyard.learner.Look;
import provingyard.picture.Theme;
import provingyard.quantity.UnitSystem;
import provingyard.scenario.SensorKind;

/** Somebody new at the window: the first minutes, settings that act at once, what is kept, and a mishap in between. */
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class EverybodyTest {

    private static final FxRobot ROBOT = new FxRobot();

    @TempDir
    static Path folder;

    private static Shell shell;
    private static String home;

    @BeforeAll
    static void window() throws Exception {
        home = System.getProperty("provingyard.home");
        System.setProperty("provingyard.home", folder.toString());
        Stage stage = FxToolkit.registerPrimaryStage();
        FxToolkit.setupFixture(() -> {
            LearnerBook book = new LearnerBook(new LearnerStore(folder), Look.first("en", "US"));
            shell = new Shell(ProvingYardApp.sites(), book, 1280, 720);
            stage.setScene(shell.scene());
            stage.show();
        });
    }

    @AfterAll
    static void close() throws Exception {
        FxToolkit.setupFixture(() -> shell.close());
        FxToolkit.cleanupStages();
        if (home == null) {
            System.clearProperty("provingyard.home");
        } else {
            System.setProperty("provingyard.home", home);
        }
    }

    private static void until(String what, BooleanSupplier holds) throws Exception {
        WaitForAsyncUtils.waitFor(60, TimeUnit.SECONDS, () -> holds.getAsBoolean());
        assertTrue(holds.getAsBoolean(), what);
    }

    private static Node node(String id) {
        return ROBOT.lookup("#" + id).tryQuery().orElse(null);
    }

    private static void press(KeyCode code) {
        ROBOT.press(code).release(code);
        WaitForAsyncUtils.waitForFxEvents();
    }

    private static String text(String id) {
        return ((Labeled) node(id)).getText();
    }

    private static void act(Runnable action) {
        ROBOT.interact(action);
        WaitForAsyncUtils.waitForFxEvents();
    }

    @Test
    @Order(1)
    void theFirstYardRunsWhenItOpensAndSaysWhatToTry() throws Exception {
        assertTrue(shell.book().isNew());
        WaitForAsyncUtils.waitForFxEvents();
        act(() -> node("site-tansy-row").requestFocus());
        press(KeyCode.ENTER);
        until("the yard opens", () -> shell.yard() != null);
        YardModel model = shell.yard().model();
        until("time runs by itself", () -> model.frameProperty().get().playing());
        until("a hint is there", () -> node("hint-text") != null);
        assertEquals(shell.words().say("hint.AFTER_RAIN"), text("hint-text"));
        until("the ribbon is laid out", () -> node("speed-SIXTY") != null);
        assertNull(node("speed-REAL"), "fewer controls on the first level");
        assertNull(node("layer-COLD"));
        assertTrue(node("layer-PIPES").isVisible());
    }

    @Test
    @Order(2)
    void theExampleIsTurnedAndLeftByKeys() {
        // What moves makes each event wait for a drawn frame.
        shell.yard().model().player().pause();
        act(() -> ((javafx.scene.control.Button) node("hint-example")).fire());
        assertNull(node("hint-text"), "one voice at a time");
        String first = text("example-text");
        press(KeyCode.RIGHT);
        assertNotEquals(first, text("example-text"));
        assertEquals(shell.words().say("example.kit"), text("example-text"));
        press(KeyCode.LEFT);
        assertEquals(first, text("example-text"));
        for (int i = 0; i < 4; i++) {
            press(KeyCode.RIGHT);
        }
        assertEquals(shell.words().say("example.ribbon"), text("example-text"));
        press(KeyCode.ESCAPE);
        assertNull(node("example-text"));
        assertTrue(shell.book().current().followed().contains(Guide.EXAMPLE));
    }

    @Test
    @Order(3)
    void aSensorIsTakenAndPlacedByKeysAndTheHintIsFollowed() throws Exception {
        YardModel model = shell.yard().model();
        press(KeyCode.DIGIT1);
        assertEquals(SensorKind.RAIN, model.handProperty().get().kind());
        press(KeyCode.ENTER);
        assertEquals(1, model.setUp().of(SensorKind.RAIN).size());
        until("followed", () -> shell.book().current().followed().contains("hint.AFTER_RAIN"));
        assertNull(node("hint-text"));
    }

    @Test
    @Order(4)
    void settingsActAtOnceAndAreKeptWithTheLearner() {
        press(KeyCode.F10);
        assertNotNull(node("settings"));
        act(() -> ((javafx.scene.control.ToggleButton) node("settings-language-es")).fire());
        assertEquals("Ajustes", shell.words().say("settings.title"));
        assertEquals(shell.words().say("settings.done"), text("settings-done"));
        act(() -> ((javafx.scene.control.ToggleButton) node("settings-units-METRIC")).fire());
        assertEquals(UnitSystem.METRIC, shell.words().units().get());
        act(() -> ((javafx.scene.control.ToggleButton) node("settings-theme-dark")).fire());
        assertEquals(Theme.DARK, shell.theme().get());
        Font before = ((Label) node("figure-day").lookup(".value")).getFont();
        double kit = ((Region) node("kit")).getWidth();
        act(() -> ((Slider) node("settings-text-size")).setValue(150));
        act(() -> shell.scene().getRoot().layout());
        Font after = ((Label) node("figure-day").lookup(".value")).getFont();
        assertEquals(1.5, after.getSize() / before.getSize(), 0.02);
        assertEquals(1.5, ((Region) node("kit")).getPrefWidth() / kit, 0.05);
        act(() -> ((javafx.scene.control.CheckBox) node("settings-still")).fire());
        assertTrue(shell.still().get());
        assertEquals(
                new Look("es", UnitSystem.METRIC, "dark", 150, true),
                shell.book().current().look());
        press(KeyCode.ESCAPE);
        assertNull(node("settings"));
        press(KeyCode.F2);
        press(KeyCode.F3);
        press(KeyCode.F4);
        assertEquals("en", shell.book().current().look().language());
        assertEquals(UnitSystem.US, shell.book().current().look().units());
        assertEquals("highContrast", shell.book().current().look().theme());
    }

    @Test
    @Order(5)
    void everyThemeAndEverySizeKeepsTheSheetsWithinTheWindow() {
        for (int i = 0; i < Shell.THEMES.size(); i++) {
            Theme theme = Shell.THEMES.get(i);
            int size = i == 0 ? Look.SMALLEST : Look.LARGEST;
            act(() -> {
                shell.theme(theme);
                shell.textSize(size);
            });
            for (KeyCode key : new KeyCode[] {KeyCode.F1, KeyCode.F10}) {
                press(key);
                Overlay sheet = Overlay.top(shell.scene());
                act(() -> shell.scene().getRoot().layout());
                var bounds = sheet.getChildren().get(0).getLayoutBounds();
                assertTrue(bounds.getHeight() <= 720, key + " " + theme.name() + " " + bounds);
                assertTrue(bounds.getWidth() <= 1280, key + " " + theme.name() + " " + bounds);
                press(key);
                assertNull(Overlay.top(shell.scene()), "its key closes it");
            }
        }
        act(() -> {
            shell.theme(Theme.LIGHT);
            shell.textSize(100);
        });
    }

    @Test
    @Order(6)
    void aMishapSavesTheWorkSaysSoOnceAndLetsGoOn() throws Exception {
        YardModel model = shell.yard().model();
        int placed = model.setUp().sensors().size();
        RuntimeException mishap = new IllegalStateException("on purpose");
        for (int i = 0; i < 3; i++) {
            model.player().handOver(season -> {
                throw mishap;
            });
        }
        until("it is said", () -> node("notice-text") != null);
        String said = text("notice-text");
        Path rescued = folder.resolve("rescued-tansy-row.json");
        assertTrue(said.contains(rescued.toString()), said);
        assertTrue(Files.readString(rescued).contains("rain-1"));
        assertFalse(said.contains("Exception"), said);
        press(KeyCode.ENTER);
        assertNull(node("notice-text"), "it was said once");
        assertEquals(placed, model.setUp().sensors().size());
        long then = model.frameProperty().get().lived();
        act(model::togglePlay);
        until("time goes on", () -> model.frameProperty().get().lived() > then + 10);
        assertNull(node("notice-text"));
    }

    @Test
    @Order(7)
    void whatWasLeftIsGoneOnWith() throws Exception {
        YardModel model = shell.yard().model();
        model.player().pause();
        until("it stands", () -> !model.frameProperty().get().playing());
        act(() -> shell.route());
        long lived = shell.book().current().at("tansy-row").season().tick();
        assertTrue(lived > 0);
        assertEquals(shell.words().say("route.goOn"), text("start"));
        act(() -> ((javafx.scene.control.Button) node("start")).fire());
        until("the yard opens", () -> shell.yard() != null);
        YardModel again = shell.yard().model();
        assertEquals(lived, again.frameProperty().get().lived());
        assertEquals(1, again.setUp().of(SensorKind.RAIN).size());
        assertFalse(again.frameProperty().get().playing(), "only somebody new finds it running");
        act(() -> shell.route());
    }

    @Test
    @Order(8)
    void learnersComeSwitchAndGo() {
        act(() -> ((javafx.scene.control.Button) node("learner")).fire());
        act(() -> ((TextField) node("learner-new")).setText("Ben"));
        act(() -> ((javafx.scene.control.Button) node("learner-add")).fire());
        assertEquals("Ben", shell.book().current().name());
        assertTrue(shell.book().isNew());
        assertEquals(shell.words().say("route.start"), text("start"));
        String ben = shell.book().current().id();
        String first = shell.book().all().get(0).id();
        act(() -> ((javafx.scene.control.Button) node("learner")).fire());
        act(() -> ((javafx.scene.control.Button) node("learner-sit-" + first)).fire());
        assertEquals(first, shell.book().current().id());
        assertEquals(shell.words().say("route.goOn"), text("start"));
        act(() -> ((javafx.scene.control.Button) node("learner")).fire());
        act(() -> ((javafx.scene.control.Button) node("learner-remove-" + ben)).fire());
        assertEquals(2, shell.book().all().size(), "it is asked first");
        act(() -> ((javafx.scene.control.Button) node("notice-yes")).fire());
        assertEquals(1, shell.book().all().size());
        press(KeyCode.ESCAPE);
        assertTrue(shell.kept(), "everything is on the disk");
        Learner kept = new LearnerStore(folder).all().learners().get(0);
        assertEquals(shell.book().current(), kept);
    }

    @Test
    @Order(9)
    void whatAnswersToKeysHasANameForScreenReaders() {
        for (Node node :
                ROBOT.lookup(n -> n.isFocusTraversable() && n.isVisible()).queryAll()) {
            boolean named = node.getAccessibleText() != null
                            && !node.getAccessibleText().isBlank()
                    || node instanceof Labeled l
                            && l.getText() != null
                            && !l.getText().isBlank();
            assertTrue(named, node.toString());
        }
    }
}
