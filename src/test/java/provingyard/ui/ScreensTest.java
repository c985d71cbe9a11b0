package provingyard.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.AccessibleAction;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import provingyard.call.Tool;
import provingyard.picture.Theme;
import provingyard.quantity.UnitSystem;
import provingyard.scenario.Point;
import provingyard.scenario.SensorKind;
import provingyard.scenario.Sites;
import provingyard.setup.SetUp;

/** Takes the pictures of {@code assets/screens}; none of them with a cut or overlapping text. */
@Tag("screens")
class ScreensTest {

    private static final Path FOLDER = Path.of("assets", "screens");

    private static OpenProgram program;

    @BeforeAll
    static void open() throws Exception {
        program = OpenProgram.show(1280, 720);
    }

    @AfterAll
    static void close() throws Exception {
        program.close();
    }

    private static void shoot(String name, double scale) throws Exception {
        if (program.shell().yard() != null) {
            program.untilTheYardIsDrawn();
        }
        BufferedImage[] taken = new BufferedImage[1];
        List<String>[] faults = new List[1];
        OpenProgram.ROBOT.interact(() -> {
            faults[0] = TextFit.faults(program.shell().scene());
            taken[0] = Shot.of(program.shell().scene(), scale);
        });
        Shot.write(taken[0], FOLDER.resolve(name + ".png"));
        assertEquals("", String.join("\n", faults[0]), name);
    }

    private static void english(Theme theme) {
        program.look(theme, "en", UnitSystem.US);
    }

    private static void spanish(Theme theme) {
        program.look(theme, "es", UnitSystem.METRIC);
    }

    private static void sized(double width, double height) {
        program.size(width, height);
    }

    @Test
    void theRouteSheet() throws Exception {
        program.route();
        english(Theme.LIGHT);
        program.untilPicturesAreDrawn();
        shoot("route", 1);
        spanish(Theme.DARK);
        program.untilPicturesAreDrawn();
        shoot("route-dark-es", 1);
        sized(1920, 1080);
        english(Theme.LIGHT);
        program.untilPicturesAreDrawn();
        shoot("route-1920", 1);
        sized(1280, 720);
    }

    @Test
    void theYardByDayInEachThemeLanguageAndSize() throws Exception {
        SetUp setUp = States.textbook(States.CLINIC);
        YardModel model = program.open(States.CLINIC, setUp);
        english(Theme.LIGHT);
        program.at(model, States.noon());
        for (Theme theme : List.of(Theme.LIGHT, Theme.DARK, Theme.HIGH_CONTRAST, Theme.PROJECTOR)) {
            english(theme);
            shoot("yard-" + theme.name(), 1);
        }
        spanish(Theme.LIGHT);
        shoot("yard-es", 1);
        english(Theme.LIGHT);
        OpenProgram.ROBOT.interact(() -> {
            program.stage().setRenderScaleX(2);
            program.stage().setRenderScaleY(2);
        });
        program.settle();
        shoot("yard-scale-2", 2);
        OpenProgram.ROBOT.interact(() -> {
            program.stage().setRenderScaleX(1);
            program.stage().setRenderScaleY(1);
        });
        sized(1920, 1080);
        shoot("yard-1920", 1);
        sized(1280, 720);
    }

    @Test
    void theGallery() throws Exception {
        program.route();
        english(Theme.LIGHT);
        sized(1280, 3000);
        OpenProgram.ROBOT.interact(() -> program.shell().gallery());
        program.settle();
        shoot("gallery", 1);
        OpenProgram.ROBOT.interact(() -> program.shell().gallery());
        sized(1280, 720);
    }

    @Test
    void theYardBeforeDawnWhileItWaters() throws Exception {
        YardModel model = program.open(States.TANSY_ROW, States.clockAlone());
        english(Theme.LIGHT);
        program.at(model, States.watering(States.TANSY_ROW, States.clockAlone()));
        shoot("yard-watering", 1);
    }

    @Test
    void theDebrief() throws Exception {
        english(Theme.LIGHT);
        YardModel model = program.open(States.CLINIC, States.careless(States.CLINIC));
        model.player().show(Long.MAX_VALUE);
        OpenProgram.until(
                "the trainee is asked",
                () -> OpenProgram.ROBOT.lookup("#commit-RAIN").query().isFocused());
        program.settle();
        shoot("commit", 1);
        OpenProgram.ROBOT.clickOn("#commit-FREEZE").clickOn("#commit-why").write("It hangs by the warm vent");
        OpenProgram.ROBOT.clickOn("#commit-go");
        OpenProgram.until(
                "all is worked out", () -> program.shell().yard().debriefs().stage() == DebriefModel.Stage.DONE);
        shootDebrief("debrief");
        spanish(Theme.DARK);
        shootDebrief("debrief-dark-es");
        english(Theme.LIGHT);
        sized(1920, 1080);
        shootDebrief("debrief-1920");
        sized(1280, 720);
        OpenProgram.ROBOT.interact(() -> OpenProgram.ROBOT
                .lookup("#moment-2")
                .<MomentRow>query()
                .executeAccessibleAction(AccessibleAction.FIRE));
        OpenProgram.until("the yard is back", () -> !model.frameProperty().get().playing());
        program.untilTheYardIsDrawn();
        shoot("moment", 1);
    }

    private static void shootDebrief(String name) throws Exception {
        program.settle();
        OpenProgram.until(
                "the plan is drawn",
                () -> OpenProgram.ROBOT
                        .lookup("#debrief-plan")
                        .queryAs(DebriefPlan.class)
                        .isDrawn());
        shoot(name, 1);
    }

    @Test
    void aServiceCallAndItsDebrief() throws Exception {
        program.route();
        english(Theme.LIGHT);
        OpenProgram.ROBOT.interact(
                () -> program.shell().open(Sites.open(CallSamples.MAIN).orThrow()));
        OpenProgram.until(
                "the site is ready",
                () -> OpenProgram.ROBOT
                        .lookup("#call-begin")
                        .tryQuery()
                        .filter(b -> !b.isDisabled())
                        .isPresent());
        shoot("call-opening", 1);
        OpenProgram.ROBOT.push(KeyCode.ENTER);
        OpenProgram.until("the call is shown", () -> program.shell().onCall().screen() != null);
        CallModel model = program.shell().onCall().screen().model();
        for (String test : List.of("readMeter", "runZone:zone-1", "isolate:iso-c")) {
            act(model, test);
        }
        OpenProgram.ROBOT.interact(() -> {
            model.take(Tool.ISOLATE);
            model.choose("isolate:iso-b");
        });
        shootCall("call");
        spanish(Theme.DARK);
        shootCall("call-dark-es");
        english(Theme.LIGHT);
        sized(1920, 1080);
        shootCall("call-1920");
        sized(1280, 720);
        act(model, "isolate:iso-b");
        String answer = model.call().deal().answer(model.site());
        OpenProgram.ROBOT.interact(() -> model.state(answer, 0.7));
        OpenProgram.until("it can end", () -> model.score().isPresent());
        OpenProgram.ROBOT.clickOn("#call-end");
        OpenProgram.until("the debrief opens", () -> program.shell().onCall().debrief() != null);
        CallDebriefScreen debrief = program.shell().onCall().debrief();
        OpenProgram.ROBOT.clickOn("#call-commit-0").clickOn("#call-commit-go");
        OpenProgram.until("it is drawn", () -> debrief.state().revealed() && debrief.isDrawn());
        program.settle();
        shoot("call-debrief", 1);
        program.route();
    }

    private static void act(CallModel model, String test) throws Exception {
        int before = model.nowProperty().get().notes().size();
        OpenProgram.ROBOT.interact(() -> {
            model.choose(test);
            model.act();
        });
        OpenProgram.until(
                test + " is done", () -> model.nowProperty().get().notes().size() == before + 1);
    }

    private static void shootCall(String name) throws Exception {
        YardPane yard = program.shell().onCall().screen().yard();
        program.settle();
        OpenProgram.until("the yard is drawn", yard::isDrawn);
        program.settle();
        shoot(name, 1);
    }

    @Test
    void provingAndRecords() throws Exception {
        SetUp setUp = States.textbook(States.CLINIC);
        YardModel model = program.open(States.CLINIC, setUp);
        english(Theme.LIGHT);
        program.at(model, States.noon());
        OpenProgram.ROBOT.push(KeyCode.R);
        program.settle();
        shoot("records", 1);
        OpenProgram.ROBOT.push(KeyCode.ESCAPE);
        OpenProgram.ROBOT.push(KeyCode.T);
        program.settle();
        shoot("prove", 1);
        OpenProgram.ROBOT.push(KeyCode.ESCAPE);
        program.settle();
    }

    @Test
    void settingsAndKeys() throws Exception {
        program.route();
        english(Theme.LIGHT);
        program.untilPicturesAreDrawn();
        OpenProgram.ROBOT.push(KeyCode.F10);
        program.settle();
        shoot("settings", 1);
        OpenProgram.ROBOT.push(KeyCode.ESCAPE);
        OpenProgram.ROBOT.push(KeyCode.F1);
        program.settle();
        shoot("keys", 1);
        OpenProgram.ROBOT.push(KeyCode.ESCAPE);
        program.settle();
    }

    @Test
    void theYardByNightWithFrost() throws Exception {
        YardModel model = program.open(States.CLINIC, States.clockAlone());
        english(Theme.DARK);
        program.at(model, States.icedNight(States.CLINIC, States.clockAlone()));
        shoot("yard-night-frost", 1);
    }

    @Test
    void placingAndTheInspectorOfEachKind() throws Exception {
        SetUp setUp = States.textbook(States.CLINIC);
        YardModel model = program.open(States.CLINIC, setUp);
        english(Theme.LIGHT);
        program.at(model, 12_000);
        for (SensorKind kind : SensorKind.values()) {
            if (!setUp.of(kind).isEmpty()) {
                OpenProgram.ROBOT.interact(() -> model.selectedProperty().set(States.sensor(setUp, kind)));
                program.settle();
                shoot("inspector-" + kind.name().toLowerCase(java.util.Locale.ROOT), 1);
            }
        }
        YardModel empty = program.open(States.TANSY_ROW, States.clockAlone());
        OpenProgram.ROBOT.interact(() -> empty.carry(SensorKind.RAIN, null, new Point(4, 3)));
        program.settle();
        shoot("placing", 1);
    }
}
