package provingyard.ui;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;
import provingyard.call.Call;
import provingyard.call.LivedCalls;
import provingyard.picture.FontRole;
import provingyard.picture.Theme;
import provingyard.quantity.UnitSystem;

/** The debrief of a service call by keys: said first, then shown, stepped through, held against the expert's, forked. */
class CallDebriefJourneyTest {

    private static final FxRobot ROBOT = new FxRobot();
    private static final long PATIENCE = 120;

    private static Stage stage;

    private final Words words = new Words();
    private final List<Call> forks = new ArrayList<>();
    private final List<Throwable> failures = new ArrayList<>();
    private int left;
    private CallDebriefScreen screen;

    @BeforeAll
    static void window() throws Exception {
        stage = FxToolkit.registerPrimaryStage();
    }

    @AfterEach
    void away() {
        ROBOT.interact(screen::dispose);
    }

    private void open(Call call, boolean practice) throws Exception {
        FxToolkit.setupFixture(() -> {
            for (FontRole role : FontRole.values()) {
                CanvasSurface.font(role, 14);
            }
            words.units().set(UnitSystem.US);
            StackPane root = new StackPane();
            Scene scene = new Scene(root, 1280, 720);
            scene.getStylesheets().setAll(ThemeSheet.all(Theme.LIGHT, Shell.EM));
            screen = new CallDebriefScreen(call, practice, words, failures::add, acts());
            screen.look(Theme.LIGHT, Shell.EM);
            root.getChildren().add(screen);
            stage.setScene(scene);
            stage.show();
        });
        settle();
    }

    private CallDebriefScreen.Acts acts() {
        return new CallDebriefScreen.Acts() {
            @Override
            public void back() {
                left++;
            }

            @Override
            public void fork(Call practice) {
                forks.add(practice);
            }
        };
    }

    private static void settle() {
        WaitForAsyncUtils.waitForFxEvents(6);
    }

    private static boolean shown(String query) {
        return ROBOT.lookup(query).tryQuery().filter(Node::isVisible).isPresent();
    }

    private static String text(String query) {
        return ROBOT.lookup(query).queryAs(Label.class).getText();
    }

    private void press(KeyCode key) {
        ROBOT.push(key);
        settle();
    }

    private void reveal(int test) throws Exception {
        assertFalse(shown("#call-debrief-score"), "nothing is told before the trainee has said something");
        ROBOT.clickOn("#call-commit-" + test)
                .clickOn("#call-commit-why")
                .write("hm")
                .push(KeyCode.ENTER);
        WaitForAsyncUtils.waitFor(PATIENCE, TimeUnit.SECONDS, () -> shown("#call-debrief-score"));
        WaitForAsyncUtils.waitFor(PATIENCE, TimeUnit.SECONDS, screen::isDrawn);
        settle();
        assertEquals(List.of(), failures);
    }

    @Test
    void anUnsafeCallIsToldByKeys() throws Exception {
        open(LivedCalls.unsafe(), false);
        reveal(1);
        assertTrue(shown("#call-debrief-unsafe"));
        assertTrue(text("#call-debrief-answer").contains("hm"));
        assertTrue(Integer.parseInt(text("#call-debrief-score")) <= 59);
        assertTrue(text("#call-debrief-explained").startsWith("Test 2"), "the worst is open");
        press(KeyCode.LEFT);
        assertTrue(text("#call-debrief-explained").startsWith("Test 1"));
        assertTrue(text("#call-debrief-said").contains("gpm"));
        press(KeyCode.END);
        assertTrue(text("#call-debrief-explained").startsWith("Test 3"));
        press(KeyCode.F);
        OpenProgram.until("the call is lived again", () -> forks.size() == 1);
        assertEquals(2, forks.get(0).notes().size(), "the third test is chosen anew");
        assertTrue(forks.get(0).finding().isEmpty());
        press(KeyCode.E);
        assertFalse(shown("#call-debrief-score"), "the expert has no score");
        assertTrue(ROBOT.lookup("#call-debrief-fork").queryAs(Button.class).isDisabled());
        press(KeyCode.END);
        assertTrue(text("#call-debrief-explained")
                .startsWith("Test " + screen.state().review().experts().tests().size()));
        press(KeyCode.E);
        assertTrue(shown("#call-debrief-score"));
        press(KeyCode.ESCAPE);
        assertEquals(1, left);
    }

    @Test
    void aLuckyCallFollowsLanguageAndUnits() throws Exception {
        open(LivedCalls.lucky(), true);
        assertTrue(shown("#call-debrief-practice"));
        reveal(0);
        press(KeyCode.HOME);
        press(KeyCode.RIGHT);
        press(KeyCode.RIGHT);
        String english = text("#call-debrief-said");
        assertTrue(english.contains("gpm"), english);
        ROBOT.interact(() -> {
            words.speak("es");
            words.units().set(UnitSystem.METRIC);
        });
        settle();
        assertTrue(text("#call-debrief-said").contains("L/min"), text("#call-debrief-said"));
        assertTrue(text("#call-debrief-explained").startsWith("Prueba 2"), "the place in it is kept");
    }

    @Test
    void itIsSavedAsPageForPaperAndAsTable(@TempDir Path folder) throws Exception {
        open(LivedCalls.lucky(), false);
        assertFalse(shown("#call-debrief-save"), "nothing is saved before it is shown");
        reveal(0);
        assertTrue(shown("#call-debrief-save"));
        for (CallDebriefSaving.Kind kind : CallDebriefSaving.Kind.values()) {
            Path file = folder.resolve(kind.name());
            ROBOT.interact(() -> screen.saving().save(kind, file));
            WaitForAsyncUtils.waitFor(PATIENCE, TimeUnit.SECONDS, () -> shown("#notice-text"));
            assertTrue(text("#notice-text").contains(file.toString()), text("#notice-text"));
            press(KeyCode.ESCAPE);
            assertFalse(shown("#notice-text"));
        }
        assertTrue(Files.readString(folder.resolve("PAGE")).contains("Quillback Clinic"));
        assertEquals(
                "%PDF", Files.readString(folder.resolve("PAPER"), ISO_8859_1).substring(0, 4));
        assertEquals(4, Files.readAllLines(folder.resolve("TESTS")).size(), "a head and three tests");
    }

    @Test
    void aCallWithoutATestIsTold() throws Exception {
        open(LivedCalls.untested(), false);
        reveal(0);
        assertTrue(Integer.parseInt(text("#call-debrief-score")) < 10);
        press(KeyCode.RIGHT);
        press(KeyCode.E);
        press(KeyCode.E);
        press(KeyCode.F);
        OpenProgram.until("the call is lived again", () -> forks.size() == 1);
        assertEquals(0, forks.get(0).notes().size());
        assertEquals(List.of(), failures);
    }

    @Test
    void noTextIsCutOrLiesOverAnother() throws Exception {
        open(LivedCalls.good(), false);
        List<String> faults = new ArrayList<>();
        look("question", faults);
        reveal(1);
        look("debrief", faults);
        press(KeyCode.E);
        press(KeyCode.END);
        look("expert", faults);
        assertEquals("", String.join("\n", faults));
    }

    private void look(String what, List<String> faults) {
        for (String language : List.of("en", "es")) {
            for (double em : new double[] {Shell.EM, 1.5 * Shell.EM}) {
                ROBOT.interact(() -> {
                    words.speak(language);
                    stage.getScene().getStylesheets().setAll(ThemeSheet.all(Theme.LIGHT, em));
                    screen.look(Theme.LIGHT, em);
                });
                settle();
                ROBOT.interact(() -> TextFit.faults(stage.getScene())
                        .forEach(f -> faults.add(what + ", " + language + ", " + em + ": " + f)));
            }
        }
        ROBOT.interact(() -> {
            words.speak("en");
            stage.getScene().getStylesheets().setAll(ThemeSheet.all(Theme.LIGHT, Shell.EM));
            screen.look(Theme.LIGHT, Shell.EM);
        });
        settle();
    }
}
