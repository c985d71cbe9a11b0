package provingyard.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.util.WaitForAsyncUtils;
import provingyard.scenario.SensorKind;
import provingyard.setup.Placement;

/** A trainee's way through the window: open a site, place and set a sensor, undo, live the season, read the result. */
class JourneyTest {

    private static final FxRobot ROBOT = OpenProgram.ROBOT;
    private static OpenProgram program;
    private static Shell shell;

    @BeforeAll
    static void window() throws Exception {
        program = OpenProgram.show(1280, 720);
        shell = program.shell();
    }

    @AfterAll
    static void close() throws Exception {
        program.close();
    }

    private static void until(String what, java.util.function.BooleanSupplier holds) throws Exception {
        OpenProgram.until(what, holds);
    }

    private static boolean isShown(String query) {
        return ROBOT.lookup(query)
                .tryQuery()
                .filter(n -> n.getBoundsInParent().getWidth() > 0)
                .isPresent();
    }

    private static Placement.Rain rain(YardModel model) {
        return (Placement.Rain) model.setUp().of(SensorKind.RAIN).get(0);
    }

    @Test
    void fromTheRouteSheetToTheResult() throws Exception {
        ROBOT.clickOn("#site-tansy-row").clickOn("#start");
        until("the yard opens", () -> isShown("#kit-RAIN"));
        WaitForAsyncUtils.waitForFxEvents();
        YardModel model = shell.yard().model();
        until("the yard is drawn", () -> model.frameProperty().get() != null);

        ROBOT.clickOn("#kit-RAIN");
        WaitForAsyncUtils.waitForFxEvents();
        assertNotNull(model.handProperty().get(), "a rain sensor is in hand");
        ROBOT.press(KeyCode.RIGHT).release(KeyCode.RIGHT).press(KeyCode.ENTER).release(KeyCode.ENTER);
        until(
                "the rain sensor is placed",
                () -> model.setUp().of(SensorKind.RAIN).size() == 1);
        assertEquals(42, model.budgetLeft(), 1e-9);
        until("the inspector shows it", () -> isShown("#field-setting-rainTrip"));
        WaitForAsyncUtils.waitForFxEvents();

        TextField field = ROBOT.lookup("#field-setting-rainTrip").queryAs(TextField.class);
        ROBOT.interact(() -> {
            field.requestFocus();
            field.setText("9 mm");
            field.fireEvent(new javafx.event.ActionEvent());
        });
        assertEquals(0.009, rain(model).trip(), 1e-12);
        ROBOT.interact(() -> field.setText("nine drops"));
        ROBOT.interact(() -> field.fireEvent(new javafx.event.ActionEvent()));
        assertEquals(0.009, rain(model).trip(), 1e-12, "what is not understood changes nothing");

        ROBOT.clickOn("#undo");
        WaitForAsyncUtils.waitForFxEvents();
        assertEquals(0.00635, rain(model).trip(), 1e-12);
        ROBOT.clickOn("#redo");
        WaitForAsyncUtils.waitForFxEvents();
        assertEquals(0.009, rain(model).trip(), 1e-12);

        ROBOT.clickOn("#speed-MOST").clickOn("#play");
        until("the season is lived", () -> model.frameProperty().get().over());
        until("the trainee is asked", () -> isShown("#commit-RAIN"));
        ROBOT.clickOn("#commit-RAIN").clickOn("#commit-go");
        until("the result is read", () -> ROBOT.lookup("#score").tryQuery().isPresent());
        Label score = ROBOT.lookup("#score").queryAs(Label.class);
        assertFalse(score.getText().isBlank());
        until(
                "what was not proven is named",
                () -> ROBOT.lookup("#not-proven").tryQuery().isPresent());
        Label notProven = ROBOT.lookup("#not-proven").queryAs(Label.class);
        assertTrue(notProven.getText().contains("Rain sensor"), notProven.getText());
        assertTrue(model.frameProperty().get().snapshot().ledger().water().closure() < 1e-9);
    }
}
