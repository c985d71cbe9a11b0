package provingyard.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import provingyard.scenario.SensorKind;
import provingyard.setup.Placement;

/** A site is tuned from the kit to the result: once by mouse alone, once by keys alone. */
class TuneJourneyTest {

    private static final FxRobot ROBOT = OpenProgram.ROBOT;
    private static final int MOST_TABS = 60;

    private static OpenProgram program;
    private YardModel model;

    @BeforeAll
    static void open() throws Exception {
        program = OpenProgram.show(1280, 720);
    }

    @AfterAll
    static void close() throws Exception {
        program.close();
    }

    @BeforeEach
    void tansyRow() throws Exception {
        model = program.open(States.TANSY_ROW, States.clockAlone());
        program.untilTheYardIsDrawn();
    }

    private double trip() {
        return ((Placement.Rain) model.setUp().of(SensorKind.RAIN).get(0)).trip();
    }

    private static void press(KeyCode key) {
        ROBOT.push(key);
        program.settle();
    }

    private static void tabTo(String id) {
        StringBuilder way = new StringBuilder();
        for (int i = 0; i < MOST_TABS; i++) {
            Node owner = program.shell().scene().getFocusOwner();
            if (owner != null && id.equals(owner.getId())) {
                return;
            }
            way.append(owner == null ? "none" : owner.getId()).append(" ");
            press(KeyCode.TAB);
        }
        throw new AssertionError("Tab does not lead to " + id + ": " + way);
    }

    private void untilTheSeasonIsLived() throws Exception {
        OpenProgram.until(
                "the season is lived", () -> model.frameProperty().get().over());
        OpenProgram.until(
                "the trainee is asked",
                () -> ROBOT.lookup("#commit-RAIN").query().isFocused());
        program.settle();
    }

    private static void untilTheResult() throws Exception {
        OpenProgram.until(
                "the result is read", () -> ROBOT.lookup("#score").tryQuery().isPresent());
    }

    @Test
    void byMouseAlone() throws Exception {
        ROBOT.drag("#kit-RAIN", MouseButton.PRIMARY)
                .moveTo("#yard")
                .moveBy(330, -60)
                .drop();
        program.settle();
        assertEquals(1, model.setUp().of(SensorKind.RAIN).size());
        double before = trip();
        Node slider = ROBOT.lookup("#slider-setting-rainTrip").query();
        ROBOT.drag(slider.lookup(".thumb"), MouseButton.PRIMARY).moveBy(60, 0).drop();
        program.settle();
        assertTrue(trip() > before, "the set point is higher");
        ROBOT.clickOn("#speed-MOST").clickOn("#play");
        untilTheSeasonIsLived();
        ROBOT.clickOn("#commit-RAIN").clickOn("#commit-go");
        untilTheResult();
    }

    @Test
    void byKeysAlone() throws Exception {
        press(KeyCode.DIGIT1);
        press(KeyCode.RIGHT);
        press(KeyCode.ENTER);
        assertEquals(1, model.setUp().of(SensorKind.RAIN).size());
        double before = trip();
        tabTo("slider-setting-rainTrip");
        press(KeyCode.RIGHT);
        assertTrue(trip() > before, "the set point is higher");
        // Tab leads to the chosen one of several, arrows to its neighbours.
        tabTo("speed-SIX_HUNDRED");
        press(KeyCode.RIGHT);
        press(KeyCode.RIGHT);
        press(KeyCode.SPACE);
        assertEquals(Speed.MOST, model.speedProperty().get());
        press(KeyCode.P);
        untilTheSeasonIsLived();
        press(KeyCode.SPACE);
        tabTo("commit-go");
        press(KeyCode.SPACE);
        untilTheResult();
    }
}
