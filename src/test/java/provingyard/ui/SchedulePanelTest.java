package provingyard.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.util.WaitForAsyncUtils;
import provingyard.scenario.Schedule;
import provingyard.setup.SetUp;

/** The schedule is seen and, where the lesson leaves it open, changed in the window. */
class SchedulePanelTest {

    private static final FxRobot ROBOT = OpenProgram.ROBOT;
    private static OpenProgram program;

    @BeforeAll
    static void window() throws Exception {
        program = OpenProgram.show(1280, 720);
    }

    @AfterAll
    static void close() throws Exception {
        program.close();
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

    private static void type(String query, String text) {
        ROBOT.interact(() -> {
            TextInputControl field = (TextInputControl) node(query);
            field.requestFocus();
            field.setText(text);
        });
        key(KeyCode.ENTER);
    }

    private static YardModel opened(String site) throws Exception {
        YardModel model = program.open(site, SetUp.CLOCK_ALONE);
        ROBOT.interact(() -> node("#ribbon-band").requestFocus());
        key(KeyCode.S);
        assertTrue(node("#schedule").isVisible());
        return model;
    }

    @Test
    void cyclesAndSoaksAreSetAndTakenBack() throws Exception {
        YardModel model = opened(States.CLAY_SLOPE);
        assertNull(model.setUp().schedule());
        assertTrue(node("#schedule-soak-zone-1").isDisabled(), "no soak without a cycle");
        type("#schedule-cycle-zone-1", "3");
        type("#schedule-soak-zone-1", "30 min");
        type("#schedule-runs-zone-1", "0.2 h");
        Schedule.ZoneRun run = model.setUp().schedule().zones().get(0);
        assertEquals(new Schedule.ZoneRun("zone-1", 720, 180, 1800), run);
        assertEquals(
                4,
                ROBOT.lookup("#schedule-zones")
                                .queryAs(ScheduleZones.class)
                                .lookupAll(".pass-bar")
                                .size()
                        - 5,
                "four parts, and one of each other zone");
        type("#schedule-cycle-zone-1", "");
        assertEquals(0, model.setUp().schedule().zones().get(0).cycle());
        fire("#schedule-undo");
        assertEquals(180, model.setUp().schedule().zones().get(0).cycle());
        fire("#schedule-back");
        assertNull(model.setUp().schedule());
        key(KeyCode.ESCAPE);
        assertFalse(node("#schedule").isVisible());
    }

    @Test
    void daysAndStartsAreSet() throws Exception {
        YardModel model = opened(States.CLAY_SLOPE);
        fire("#schedule-more");
        assertEquals(2, model.setUp().schedule().every());
        fire("#schedule-mode-weekdays");
        fire("#schedule-SUNDAY");
        assertEquals(6, model.setUp().schedule().days().size());
        assertFalse(model.setUp().schedule().days().contains(DayOfWeek.SUNDAY));
        fire("#schedule-add-start");
        type("#schedule-start-1", "2230");
        assertEquals(
                List.of(LocalTime.of(5, 0), LocalTime.of(22, 30)),
                model.setUp().schedule().starts());
        type("#schedule-start-1", "25:00");
        assertTrue(((Labeled) node("#schedule-complaint")).getText().contains("25:00"));
        assertEquals(2, model.setUp().schedule().starts().size());
        fire("#schedule-remove-start-0");
        assertEquals(List.of(LocalTime.of(22, 30)), model.setUp().schedule().starts());
        type("#field-setting-seasonal", "80 %");
        assertEquals(0.8, model.setUp().schedule().seasonal(), 1e-12);
        type("#schedule-start-0", "8:30");
        assertTrue(node("#schedule-cut").isVisible(), "the allowed hours end at nine");
        fire("#schedule-close");
    }

    @Test
    void aLockedScheduleIsShownAndSaysWhy() throws Exception {
        YardModel model = opened(States.CLINIC);
        assertTrue(node("#schedule-lock").isVisible());
        for (String field : List.of("#schedule-runs-zone-1", "#schedule-start-0", "#schedule-mode", "#schedule-more")) {
            assertTrue(node(field).isDisabled(), field);
        }
        assertNull(model.setUp().schedule());
        key(KeyCode.S);
        assertFalse(node("#schedule").isVisible(), "the same key closes it");
    }
}
