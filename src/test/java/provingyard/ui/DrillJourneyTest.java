package provingyard.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static provingyard.ui.OpenProgram.isShown;
import static provingyard.ui.OpenProgram.node;
import static provingyard.ui.OpenProgram.press;

import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import provingyard.drill.Family;
import provingyard.drill.Form;
import provingyard.drill.Progress;
import provingyard.drill.Result;
import provingyard.drill.Standing;
import provingyard.picture.Theme;
import provingyard.quantity.UnitSystem;
import provingyard.scenario.Sites;

/** A session of the drill deck by keys alone: from the route sheet to the end of an example and of the call after it. */
class DrillJourneyTest {

    private static final FxRobot ROBOT = OpenProgram.ROBOT;
    private static OpenProgram program;
    private static Shell shell;

    @BeforeAll
    static void window() throws Exception {
        program = OpenProgram.show(List.of(Sites.open("sedge-nook").orThrow()), 1280, 720);
        shell = program.shell();
        ROBOT.interact(() -> shell.still(true));
    }

    @AfterAll
    static void close() throws Exception {
        program.close();
    }

    private static void tabTo(String id) {
        for (int i = 0; i < 40 && !node(id).isFocused(); i++) {
            press(KeyCode.TAB);
        }
        assertTrue(node(id).isFocused(), "Tab leads to " + id);
    }

    private static void waitFor(String id) throws Exception {
        OpenProgram.until(id + " has the keys", () -> isShown(id) && node(id).isFocused());
    }

    private static Progress progress() {
        return shell.book().current().drill();
    }

    private static List<String> faults() {
        List<String> faults = new java.util.ArrayList<>();
        ROBOT.interact(() -> faults.addAll(TextFit.faults(shell.scene())));
        return faults;
    }

    /** Nothing is cut in the longer language, in either theme, with usual and large texts. */
    private static void fits(String what) {
        for (int size : new int[] {100, 150}) {
            program.look(size == 100 ? Theme.DARK : Theme.LIGHT, "es", UnitSystem.METRIC);
            ROBOT.interact(() -> shell.textSize(size));
            program.settle();
            assertEquals(List.of(), faults(), what + " at " + size + " %");
        }
        ROBOT.interact(() -> shell.textSize(100));
        program.look(Theme.LIGHT, "en", UnitSystem.US);
        assertEquals(List.of(), faults(), what);
    }

    @Test
    void anExampleAndTheCallAfterItByKeys() throws Exception {
        OpenProgram.until("a stop has the keys", () -> node("site-sedge-nook").isFocused());
        press(KeyCode.D);
        waitFor("drill-begin");
        fits("the opening");
        assertEquals(0, progress().sessions());
        tabTo("drill-begin");
        press(KeyCode.ENTER);
        assertEquals(1, progress().sessions());

        waitFor("drill-start");
        assertEquals(Form.EXAMPLE, shell.drilling().card().slot().form());
        fits("before an example");
        tabTo("drill-start");
        press(KeyCode.ENTER);
        OpenProgram.until(
                "the example is shown",
                () -> shell.drilling().example() != null
                        && node("drill-forward").isFocused());
        press(KeyCode.RIGHT);
        press(KeyCode.RIGHT);
        assertEquals(2, shell.drilling().example().at());
        fits("an example");
        press(KeyCode.LEFT);
        assertEquals(1, shell.drilling().example().at());
        press(KeyCode.ESCAPE);
        assertEquals(List.of(Result.shown(1)), progress().at(Family.HYDRAULIC).results());

        waitFor("drill-start");
        assertEquals(Form.HALF, shell.drilling().card().slot().form());
        fits("before a call that is half done");
        tabTo("drill-start");
        press(KeyCode.ENTER);
        OpenProgram.until("the call is shown", () -> shell.drilling().screen() != null);
        CallModel model = shell.drilling().screen().model();
        assertTrue(model.guided(), "readings are explained at first");
        assertEquals(
                shell.drilling().card().done(),
                model.nowProperty().get().notes().size(),
                "the first tests are done");
        state(model.call().deal().answer(model.site()));

        OpenProgram.until("the call can end", () -> isShown("call-end"));
        tabTo("call-end");
        press(KeyCode.ENTER);
        waitFor("drill-next");
        assertEquals("Found", ((Label) node("drill-verdict")).getText());
        String looking = shell.words().say("drill.betterLooking");
        OpenProgram.until(
                "the tests are looked at",
                () -> !((Label) node("drill-better")).getText().equals(looking));
        fits("what is said after a card");
        Standing standing = progress().at(Family.HYDRAULIC);
        assertEquals(2, standing.results().size());
        assertEquals(Form.HALF, standing.results().get(1).form());
        assertFalse(standing.mastered());

        tabTo("drill-debrief");
        press(KeyCode.ENTER);
        OpenProgram.until("the debrief is shown", () -> isShown("call-debrief"));
        press(KeyCode.ESCAPE);
        waitFor("drill-next");
        press(KeyCode.ENTER);
        OpenProgram.until("the third card comes", () -> isShown("drill-brief"));
        press(KeyCode.ESCAPE);
        waitFor("drill-route");
        fits("the end of a session");
        press(KeyCode.ENTER);
        OpenProgram.until("the route sheet is shown", () -> isShown("drill-open"));
        fits("the route sheet");
        tabTo("drill-open");
    }

    /** States a repair class with the keys alone. */
    private static void state(String truth) throws Exception {
        press(KeyCode.F);
        OpenProgram.until("the sheet is shown", () -> isShown("finding-kinds"));
        tabTo("finding-kinds");
        choose("finding-kinds", CallThought.kind(truth));
        tabTo("finding-places");
        choose("finding-places", truth);
        tabTo("finding-sure-50");
        press(KeyCode.RIGHT);
        press(KeyCode.RIGHT);
        press(KeyCode.RIGHT);
        tabTo("finding-go");
        press(KeyCode.ENTER);
    }

    @SuppressWarnings("unchecked")
    private static void choose(String id, String item) {
        ListView<String> list = (ListView<String>) node(id);
        for (int i = 0; i < 200 && !item.equals(list.getSelectionModel().getSelectedItem()); i++) {
            press(KeyCode.DOWN);
        }
        assertEquals(item, list.getSelectionModel().getSelectedItem());
    }
}
