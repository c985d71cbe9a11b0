package provingyard.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static provingyard.ui.OpenProgram.isShown;
import static provingyard.ui.OpenProgram.node;
import static provingyard.ui.OpenProgram.press;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.scene.paint.Color;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.util.WaitForAsyncUtils;
import provingyard.diagnosis.Declaration;
import provingyard.diagnosis.Reading;
import provingyard.picture.Tone;

/**
 * An apprentice finds a silent hole in the main: meter, zone, isolation valve, listening, marks, dig, finding, repair,
 * check.
 */
class CallJourneyTest {

    private static final FxRobot ROBOT = OpenProgram.ROBOT;
    private static OpenProgram program;
    private static Shell shell;

    @BeforeAll
    static void window() throws Exception {
        program = OpenProgram.show(List.of(CallSamples.dealt(CallSamples.MAIN, 1)), 1280, 720);
        shell = program.shell();
    }

    @AfterAll
    static void close() throws Exception {
        program.close();
    }

    private static CallModel model() {
        return shell.onCall().screen().model();
    }

    private static int notes() {
        return model().nowProperty().get().notes().size();
    }

    /** Does the test on the card, by the key that it has. */
    private static void doIt() throws Exception {
        int before = notes();
        OpenProgram.until("the card has the keys", () -> node("call-do").isFocused());
        press(KeyCode.ENTER);
        OpenProgram.until("the test is done", () -> notes() == before + 1);
        OpenProgram.until(
                "the reading is told",
                () -> isShown("call-go-on") && node("call-go-on").isFocused());
        press(KeyCode.ENTER);
    }

    private static void at(KeyCode tool, String test) throws Exception {
        press(tool);
        Node mark = node("mark-" + test);
        ROBOT.clickOn(mark);
        WaitForAsyncUtils.waitForFxEvents();
        assertEquals(test, model().chosenProperty().get());
        doIt();
    }

    private static double shown() {
        return ((Reading.Shown) model().nowProperty().get().last().orElseThrow().reading()).value();
    }

    @Test
    void fromTheRouteSheetToTheScore() throws Exception {
        ROBOT.clickOn("#site-" + CallSamples.MAIN).clickOn("#start");
        OpenProgram.until(
                "the site is ready",
                () -> isShown("call-begin") && !node("call-begin").isDisabled());
        ROBOT.clickOn("#call-begin");
        OpenProgram.until(
                "the call is shown",
                () -> shell.onCall() != null && shell.onCall().screen() != null);
        WaitForAsyncUtils.waitForFxEvents();
        String truth = model().call().deal().answer(model().site());

        press(KeyCode.DIGIT1);
        doIt();
        double all = shown();
        assertTrue(all > 1e-5, "the meter turns with all zones off: " + all);
        assertTrue(isShown("note-1"));

        press(KeyCode.DIGIT0);
        assertTrue(model().locked(provingyard.call.Tool.DIG), "nobody digs before marks are shown");
        at(KeyCode.DIGIT3, "runZone:zone-1");
        at(KeyCode.DIGIT2, "isolate:iso-c");
        assertTrue(shown() < 0.2 * all, "beyond C: " + shown());
        at(KeyCode.DIGIT8, "listen:" + truth);
        at(KeyCode.M, "locate");
        assertTrue(model().nowProperty().get().marked());
        at(KeyCode.DIGIT0, "dig:" + truth);
        assertEquals(
                new Reading.Seen(1),
                model().nowProperty().get().last().orElseThrow().reading(),
                "the hole is seen");
        assertTrue(model().nowProperty().get().belief().ofClass(truth) > 0.9);

        press(KeyCode.F);
        OpenProgram.until("the sheet is shown", () -> isShown("finding-kinds"));
        ROBOT.interact(() -> {
            list("finding-kinds").getSelectionModel().select("main");
            list("finding-places").getSelectionModel().select(truth);
        });
        assertTrue(node("finding-go").isDisabled(), "confidence belongs to a finding");
        ROBOT.clickOn("#finding-sure-99").clickOn("#finding-go");
        OpenProgram.until("it is stated", () -> isShown("call-repair"));
        trayIsReadable();
        ROBOT.clickOn("#call-repair");
        OpenProgram.until("it is repaired", () -> isShown("call-verify"));
        ROBOT.clickOn("#call-verify");
        OpenProgram.until("it is checked", () -> model().nowProperty().get().stage() == CallModel.Stage.VERIFIED);
        assertEquals(0, shown(), 1e-5);
        OpenProgram.until("the reference is known", () -> model().score().isPresent());
        assertTrue(model().score().orElseThrow().unsafe().isEmpty());
        assertEquals(Declaration.Hit.RIGHT, model().call().declaration().hit());
        OpenProgram.until("the call can end", () -> isShown("call-end"));
        ROBOT.clickOn("#call-end");
        OpenProgram.until("the debrief opens", () -> shell.onCall().debrief() != null);
        assertFalse(shell.onCall().debrief().state() == null);
        assertFalse(shell.book().current().at(CallSamples.MAIN).best() == null, "the score is kept");
    }

    /** Instruments that are not used any more are still read: their colour says so, nothing shines through. */
    private static void trayIsReadable() {
        List<Label> labels = List.copyOf(ROBOT.from(node("tool-METER"))
                .lookup((Node n) -> n instanceof Label)
                .<Label>queryAll());
        assertTrue(labels.size() >= 3, "key, name and minutes");
        Color quiet = Color.web(shell.theme().get().at(Tone.INK_3).hex());
        labels.forEach(l -> {
            assertEquals(1, l.getOpacity(), l.getText());
            assertEquals(quiet, l.getTextFill(), l.getText());
        });
    }

    @SuppressWarnings("unchecked")
    private static ListView<String> list(String id) {
        return (ListView<String>) node(id);
    }
}
