package provingyard.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static provingyard.ui.OpenProgram.isShown;
import static provingyard.ui.OpenProgram.node;

import java.util.List;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.util.WaitForAsyncUtils;
import provingyard.learner.SavedCall;
import provingyard.scenario.Sites;

/** A call that is left before its end waits for whoever comes again; they go on with it, or begin anew. */
class CallLeftJourneyTest {

    private static final FxRobot ROBOT = OpenProgram.ROBOT;
    private static OpenProgram program;
    private static Shell shell;

    @BeforeAll
    static void window() throws Exception {
        program = OpenProgram.show(List.of(Sites.open(CallSamples.MAIN).orThrow()), 1280, 720);
        shell = program.shell();
    }

    @AfterAll
    static void close() throws Exception {
        program.close();
    }

    private static void come() throws Exception {
        ROBOT.clickOn("#start");
        OpenProgram.until(
                "the site is ready",
                () -> isShown("call-begin") && !node("call-begin").isDisabled());
    }

    private static void press(String button) throws Exception {
        ROBOT.clickOn("#" + button);
        OpenProgram.until("the call is shown", () -> screen() != null);
        WaitForAsyncUtils.waitForFxEvents();
    }

    private static CallScreen screen() {
        return shell.onCall() == null ? null : shell.onCall().screen();
    }

    private static void leave() {
        ROBOT.interact(shell::route);
        WaitForAsyncUtils.waitForFxEvents();
    }

    private static SavedCall kept() {
        return shell.book().current().at(CallSamples.MAIN).call();
    }

    @Test
    void itIsGoneOnWithOrBegunAnewOrSaidToHaveChanged() throws Exception {
        come();
        assertFalse(isShown("call-go-on-left"), "nothing was left yet");
        press("call-begin");
        long seed = screen().model().call().seed();
        ROBOT.push(KeyCode.DIGIT1);
        OpenProgram.until("the card has the keys", () -> node("call-do").isFocused());
        ROBOT.push(KeyCode.ENTER);
        OpenProgram.until(
                "the meter is read",
                () -> screen().model().nowProperty().get().notes().size() == 1);
        var note = screen().model().nowProperty().get().notes().get(0);
        leave();
        assertEquals(List.of(note.test().id()), kept().tests());

        come();
        press("call-go-on-left");
        var again = screen().model().nowProperty().get().notes().get(0);
        assertEquals(note.reading(), again.reading());
        assertEquals(note.litres(), again.litres());
        assertTrue(isShown("note-1"));
        leave();

        come();
        press("call-begin");
        assertNotEquals(seed, screen().model().call().seed(), "a call given up is not learned by heart");
        assertEquals(List.of(), screen().model().nowProperty().get().notes());
        long second = screen().model().call().seed();
        leave();
        come();
        assertFalse(isShown("call-go-on-left"), "nothing was done since");
        press("call-begin");
        assertEquals(second, screen().model().call().seed());
        leave();

        SavedCall older = new SavedCall("older", "1", 5, 0, "GUIDED", List.of("readMeter"), null);
        ROBOT.interact(() -> shell.book().change(l -> l.on(CallSamples.MAIN, p -> p.leaving(older))));
        ROBOT.interact(shell::route);
        ROBOT.clickOn("#start");
        OpenProgram.until("it is said", () -> isShown("notice-text"));
        ROBOT.clickOn("#notice-ok");
        OpenProgram.until(
                "the site is ready",
                () -> isShown("call-begin") && !node("call-begin").isDisabled());
        assertFalse(isShown("call-go-on-left"));
        leave();
    }
}
