package provingyard.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.BooleanSupplier;
import javafx.scene.Node;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.TableView;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.util.WaitForAsyncUtils;
import provingyard.quantity.UnitSystem;
import provingyard.scenario.SensorKind;
import provingyard.setup.Placement;

/** The ribbon's keys, the tests of placed sensors and the controller's records, in the window. */
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class SheetsTest {

    private static final FxRobot ROBOT = OpenProgram.ROBOT;
    private static OpenProgram program;
    private static Shell shell;
    private static YardModel model;

    @BeforeAll
    static void window() throws Exception {
        program = OpenProgram.show(1280, 720);
        shell = program.shell();
        model = program.open(States.CLINIC, States.textbook(States.CLINIC));
    }

    @AfterAll
    static void close() throws Exception {
        program.close();
    }

    private static void until(String what, BooleanSupplier holds) throws Exception {
        OpenProgram.until(what, holds);
    }

    private static Node node(String query) {
        return ROBOT.lookup(query).query();
    }

    private static void fire(String query) {
        ROBOT.interact(() -> ((ButtonBase) node(query)).fire());
    }

    private static void key(KeyCode code) {
        ROBOT.press(code).release(code);
        WaitForAsyncUtils.waitForFxEvents();
    }

    private static long shown() {
        return model.frameProperty().get().snapshot().tick();
    }

    private static void focus(String query) {
        ROBOT.interact(() -> node(query).requestFocus());
    }

    @Test
    @Order(1)
    void testsAreMadeByKeysAndUnmadeByAChange() throws Exception {
        assertEquals(5, model.unproven().size());
        focus("#ribbon-band");
        key(KeyCode.T);
        until("the sheet opens", () -> node("#prove").isVisible());
        fire("#prove-rain-1-POUR");
        fire("#prove-run");
        until("the rain sensor is proven", () -> !model.unproven().contains("rain-1"));
        until("its plot is shown", () -> ROBOT.lookup("#prove-plot").tryQuery().isPresent());
        fire("#prove-all");
        until("all are proven", () -> model.unproven().isEmpty());
        Placement.Rain rain = (Placement.Rain) model.setUp().of(SensorKind.RAIN).get(0);
        Placement.Rain moved =
                new Placement.Rain(rain.id(), rain.at(), rain.mount(), rain.height() + 0.2, rain.trip(), rain.vent());
        ROBOT.interact(() -> model.decide("step.set", model.setUp().with(moved), rain.id()));
        assertEquals(java.util.List.of("rain-1"), model.unproven());
        ROBOT.interact(() -> model.undo());
        assertTrue(model.unproven().isEmpty(), "back where it was, the proof holds again");
        assertEquals(0, model.frameProperty().get().lived(), "nothing was lived for it");
        key(KeyCode.ESCAPE);
        assertFalse(node("#prove").isVisible());
    }

    @Test
    @Order(2)
    void ribbonKeysMoveThroughTheSeason() throws Exception {
        focus("#ribbon-band");
        ROBOT.press(KeyCode.SHIFT);
        for (int day = 1; day <= 8; day++) {
            long next = day * 1440L;
            ROBOT.press(KeyCode.RIGHT).release(KeyCode.RIGHT);
            until("day " + day, () -> shown() == next);
        }
        ROBOT.release(KeyCode.SHIFT);
        key(KeyCode.LEFT);
        until("an hour back", () -> shown() == 8 * 1440 - 60);
        assertEquals(8 * 1440, model.frameProperty().get().lived(), "what was lived stays");
        key(KeyCode.HOME);
        until("the first minute", () -> shown() == 0);
        key(KeyCode.PERIOD);
        long first = Happenings.after(model.frameProperty().get().events(), 0);
        until("the first event", () -> shown() == first);
        key(KeyCode.PERIOD);
        long second = Happenings.after(model.frameProperty().get().events(), first);
        until("the second event", () -> shown() == second);
        key(KeyCode.COMMA);
        until("the first event again", () -> shown() == first);
        key(KeyCode.END);
        until("the last minute lived", () -> shown() == 8 * 1440);
    }

    @Test
    @Order(3)
    void recordsSortByKeysAndAreWritten(@TempDir Path folder) throws Exception {
        focus("#ribbon-band");
        key(KeyCode.R);
        until("the records open", () -> node("#records").isVisible());
        @SuppressWarnings("unchecked")
        TableView<RecordsTable.Row> table =
                (TableView<RecordsTable.Row>) ROBOT.lookup("#records-table").queryAs(TableView.class);
        until("runs are listed", () -> table.getItems().size() > 5);
        assertTrue(table.isFocused());
        key(KeyCode.DIGIT3);
        assertSorted(table, 1);
        key(KeyCode.DIGIT3);
        assertSorted(table, -1);
        RecordsSheet sheet = (RecordsSheet) node("#records");
        Path file = folder.resolve("runs.csv");
        ROBOT.interact(() -> sheet.export(file));
        assertEquals(table.getItems().size() + 1, Files.readAllLines(file).size());
        ROBOT.interact(() -> shell.words().units().set(UnitSystem.METRIC));
        String flow = table.getItems().get(0).cells().get(3).text();
        assertTrue(flow.endsWith("L/min"), flow);
        fire("#records-NOTES");
        assertEquals(4, table.getColumns().size());
        key(KeyCode.ESCAPE);
        assertFalse(node("#records").isVisible());
    }

    private static void assertSorted(TableView<RecordsTable.Row> table, int way) {
        for (int i = 1; i < table.getItems().size(); i++) {
            RecordsTable.Cell before = table.getItems().get(i - 1).cells().get(2);
            RecordsTable.Cell here = table.getItems().get(i).cells().get(2);
            assertTrue(before.compareTo(here) * way <= 0, before + " then " + here);
        }
    }
}
