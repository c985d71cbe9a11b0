package provingyard.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import provingyard.scenario.SensorKind;
import provingyard.season.Season;

/** From the end of a season through its debrief: said first, then shown; back to a moment, tried otherwise, and back. */
class DebriefJourneyTest {

    private static final FxRobot ROBOT = OpenProgram.ROBOT;
    private static OpenProgram program;

    @TempDir
    private Path folder;

    @BeforeAll
    static void open() throws Exception {
        program = OpenProgram.show(1280, 720);
    }

    @AfterAll
    static void close() throws Exception {
        program.close();
    }

    private static boolean shown(String query) {
        return ROBOT.lookup(query)
                .tryQuery()
                .filter(n -> n.isVisible() && n.getScene() != null)
                .isPresent();
    }

    private static String text(String query) {
        return ROBOT.lookup(query).queryAs(Label.class).getText();
    }

    private static Season lived(YardModel model) throws Exception {
        CompletableFuture<Season> told = new CompletableFuture<>();
        model.player().handOver(told::complete);
        return told.get(60, TimeUnit.SECONDS);
    }

    private static void press(KeyCode key) {
        ROBOT.push(key);
        program.settle();
    }

    /** Each kind is written, and said to be; a folder that is not there is said in one sentence. */
    private void exports() throws Exception {
        OpenProgram.until(
                "worth is known", () -> program.shell().yard().debriefs().stage() == DebriefModel.Stage.DONE);
        DebriefScreen screen = ROBOT.lookup("#debrief").query();
        for (Saving.Kind kind : Saving.Kind.values()) {
            Path file = folder.resolve(kind.name());
            ROBOT.interact(() -> screen.saving().save(kind, file));
            OpenProgram.until(kind + " is saved", () -> shown("#notice-text"));
            assertTrue(text("#notice-text").contains(file.toString()), text("#notice-text"));
            assertTrue(Files.size(file) > 500, kind + " has " + Files.size(file) + " bytes");
            press(KeyCode.ESCAPE);
        }
        ROBOT.interact(() -> screen.saving().save(Saving.Kind.LEDGER, folder.resolve("nowhere/ledger.csv")));
        OpenProgram.until("it is said", () -> shown("#notice-text"));
        assertTrue(text("#notice-text").contains("could not be saved"), text("#notice-text"));
        press(KeyCode.ESCAPE);
    }

    @Test
    void saidShownTriedOtherwiseAndBack() throws Exception {
        YardModel model = program.open(States.TANSY_ROW, States.careless(States.TANSY_ROW));
        ROBOT.clickOn("#speed-MOST").clickOn("#play");
        OpenProgram.until("the trainee is asked", () -> shown("#commit"));
        assertFalse(shown("#score"), "nothing is told before the trainee has said something");
        ROBOT.clickOn("#commit-RAIN")
                .clickOn("#commit-why")
                .write("under the tree")
                .push(KeyCode.ENTER);
        OpenProgram.until("the score is shown", () -> shown("#score"));
        OpenProgram.until("shares are there", () -> shown("#share-RAIN"));
        program.settle();
        assertTrue(text("#answer-said").contains("under the tree"), text("#answer-said"));
        assertTrue(text("#answer-computed").contains("Rain"), text("#answer-computed"));
        assertEquals(
                "under the tree",
                program.shell().book().current().at(States.TANSY_ROW).answer().why());
        int seasons = program.shell().book().current().at(States.TANSY_ROW).seasons();
        String own = lived(model).ledgerHash();
        Integer best = program.shell().book().current().at(States.TANSY_ROW).best();

        exports();

        ROBOT.clickOn("#moment-0");
        OpenProgram.until("the yard is back at the moment", () -> shown("#moment-practise"));
        long tick = model.frameProperty().get().snapshot().tick();
        assertTrue(tick < model.frameProperty().get().lived());
        ROBOT.clickOn("#moment-practise");
        OpenProgram.until("practice began", () -> model.frameProperty().get().practice());
        ROBOT.interact(() -> model.decide("step.open", States.textbook(States.TANSY_ROW)));
        program.settle();
        ROBOT.clickOn("#play");
        OpenProgram.until("practice is debriefed", () -> shown("#debrief-practice") && shown("#score"));
        assertEquals(
                seasons, program.shell().book().current().at(States.TANSY_ROW).seasons(), "practice counts nothing");
        assertEquals(best, program.shell().book().current().at(States.TANSY_ROW).best());
        assertFalse(own.equals(lived(model).ledgerHash()));

        press(KeyCode.ESCAPE);
        ROBOT.clickOn("#moment-own");
        OpenProgram.until(
                "the own season is back", () -> !model.frameProperty().get().practice());
        program.settle();
        assertEquals(own, lived(model).ledgerHash());
        assertEquals(States.careless(States.TANSY_ROW), model.setUp());
        press(KeyCode.D);
        OpenProgram.until("its debrief is back", () -> shown("#debrief") && shown("#answer-said"));
        assertFalse(ROBOT.lookup("#debrief-practice").query().isVisible());

        ROBOT.clickOn("#debrief-again");
        OpenProgram.until(
                "a new season begins", () -> model.frameProperty().get().lived() == 0);
        assertFalse(shown("#debrief"));
        assertEquals(1, model.setUp().of(SensorKind.RAIN).size(), "with the set-up as it stood");
        assertNull(program.shell().yard().debriefs().debrief());
    }

    /** Where textbook beats the mark in this season, it is celebrated, and tried on other seasons when asked. */
    @Test
    void aSeasonBetterThanTheMarkIsTried() throws Exception {
        YardModel model = program.open(States.TEASEL_FIELD, States.textbook(States.TEASEL_FIELD));
        model.player().show(Long.MAX_VALUE);
        OpenProgram.until("the trainee is asked", () -> shown("#commit"));
        ROBOT.clickOn("#commit-nothing").clickOn("#commit-go");
        OpenProgram.until("it is celebrated", () -> shown("#celebrate"));
        program.settle();
        ROBOT.clickOn("#challenge");
        OpenProgram.until("it was tried", () -> !text("#challenged").isEmpty());
        assertTrue(text("#challenged").contains("USD"), text("#challenged"));
    }
}
