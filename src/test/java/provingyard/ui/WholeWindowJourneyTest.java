package provingyard.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import provingyard.picture.Theme;
import provingyard.quantity.UnitSystem;
import provingyard.scenario.Point;
import provingyard.scenario.SensorKind;
import provingyard.season.Season;
import provingyard.season.Site;
import provingyard.setup.SetUp;

/** Ways through the window that cross all of it: other language, units and theme midway; undo all, redo all; scrubbing. */
class WholeWindowJourneyTest {

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
        program.look(Theme.LIGHT, "en", UnitSystem.US);
        model = program.open(States.TANSY_ROW, States.clockAlone());
    }

    private static void press(KeyCode... keys) {
        OpenProgram.ROBOT.push(keys);
        program.settle();
    }

    private static Label shown(String figure) {
        return OpenProgram.ROBOT.lookup("#" + figure + " .value").queryAs(Label.class);
    }

    private static String hash(Site site, SetUp setUp, long ticks) {
        Season season = Season.begin(site, setUp);
        while (season.tick() < ticks) {
            season.advance();
        }
        return season.ledgerHash();
    }

    private String hashNow() throws Exception {
        String[] hash = new String[1];
        model.player().handOver(season -> hash[0] = season.ledgerHash());
        OpenProgram.until(() -> hash[0] != null);
        return hash[0];
    }

    @Test
    void languageUnitsAndThemeChangeMidwayAndTheSeasonDoesNot() throws Exception {
        program.at(model, 5_000);
        Label word = OpenProgram.ROBOT.lookup("#figure-water .small").queryAs(Label.class);
        String english = word.getText();
        String gallons = shown("figure-water").getText();
        assertTrue(gallons.endsWith("gal"), gallons);

        press(KeyCode.F2);
        press(KeyCode.F3);
        press(KeyCode.F4);

        assertEquals("es", program.shell().words().language());
        assertNotEquals(english, word.getText());
        assertTrue(
                shown("figure-water").getText().endsWith("m³"),
                shown("figure-water").getText());
        program.at(model, 9_000);
        assertEquals(hash(model.site(), States.clockAlone(), 9_000), hashNow());
    }

    @Test
    void allIsUndoneAndRedoneByKeysAndNamedOnTheButtons() throws Exception {
        OpenProgram.ROBOT.interact(() -> {
            model.carry(SensorKind.RAIN, null, new Point(3, 2));
            model.place();
            model.carry(SensorKind.RAIN, "rain-1", new Point(5, 2));
            model.place();
            model.carry(SensorKind.RAIN, "rain-1", new Point(6, 2));
            model.place();
            model.remove("rain-1");
            model.carry(SensorKind.FREEZE, null, new Point(4, 2));
            model.place();
            program.shell().yard().yard().requestFocus();
        });
        program.settle();
        SetUp last = model.setUp();
        Button undo = OpenProgram.ROBOT.lookup("#undo").queryAs(Button.class);
        Button redo = OpenProgram.ROBOT.lookup("#redo").queryAs(Button.class);
        assertEquals("Undo: place Freeze 1 (Ctrl+Z)", undo.getTooltip().getText());

        for (int i = 0; i < 5; i++) {
            press(KeyCode.CONTROL, KeyCode.Z);
        }
        assertEquals(SetUp.CLOCK_ALONE, model.setUp());
        assertTrue(undo.isDisabled());
        assertEquals("Redo: place Rain 1 (Ctrl+Y)", redo.getAccessibleText());

        for (int i = 0; i < 5; i++) {
            press(KeyCode.CONTROL, KeyCode.Y);
        }
        assertEquals(last, model.setUp());
        assertTrue(redo.isDisabled());
    }

    @Test
    void scrubbedBackAndLivedAgainIsTheSame() throws Exception {
        program.at(model, 12_000);
        String before = hashNow();
        var frame = model.frameProperty().get().snapshot();
        program.at(model, 3_333);
        program.at(model, 700);
        assertEquals(12_000, model.frameProperty().get().lived(), "looking back loses nothing");
        program.at(model, 12_000);
        assertEquals(before, hashNow());
        assertEquals(frame.ledger(), model.frameProperty().get().snapshot().ledger());
    }
}
