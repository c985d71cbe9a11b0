package provingyard.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.AccessibleAction;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import provingyard.picture.Theme;
import provingyard.quantity.UnitSystem;
import provingyard.scenario.SensorKind;
import provingyard.setup.Placement;
import provingyard.setup.SetUp;

/** No text on any screen is cut, sticks out or lies over another, in both languages and at both sizes of window. */
class ScreensFitTest {

    private static OpenProgram program;

    @BeforeAll
    static void open() throws Exception {
        program = OpenProgram.show(1280, 720);
    }

    @AfterAll
    static void close() throws Exception {
        program.close();
    }

    private static List<String> faults() {
        List<String> faults = new ArrayList<>();
        OpenProgram.ROBOT.interact(
                () -> faults.addAll(TextFit.faults(program.shell().scene())));
        return faults;
    }

    /** A size of window and of texts in %. */
    private record Size(double width, int text) {}

    private static final List<Size> SIZES = List.of(
            new Size(1280, 80), new Size(1280, 100), new Size(1280, 150), new Size(1920, 100), new Size(1920, 200));

    /** The sizes at which most breaks. */
    private static final List<Size> TIGHT = List.of(new Size(1280, 100), new Size(1280, 150), new Size(1920, 200));

    private static void look(List<String> all, String what) {
        look(all, what, SIZES);
    }

    private static void look(List<String> all, String what, List<Size> sizes) {
        for (String language : new String[] {"en", "es"}) {
            program.look(Theme.LIGHT, language, language.equals("en") ? UnitSystem.US : UnitSystem.METRIC);
            for (Size size : sizes) {
                OpenProgram.ROBOT.interact(() -> program.shell().textSize(size.text()));
                program.size(size.width(), size.width() * 9 / 16);
                for (String fault : faults()) {
                    all.add(what + ", " + language + ", " + (int) size.width() + ", " + size.text() + " %: " + fault);
                }
            }
        }
        OpenProgram.ROBOT.interact(() -> program.shell().textSize(100));
        program.size(1280, 720);
    }

    private static void expectNone(List<String> faults) {
        assertEquals("", String.join("\n", faults));
    }

    @Test
    void theRouteSheet() throws Exception {
        program.route();
        List<String> faults = new ArrayList<>();
        look(faults, "route sheet");
        expectNone(faults);
    }

    @Test
    void theYardWithEachSensorInspected() throws Exception {
        SetUp setUp = States.textbook(States.CLINIC);
        YardModel model = program.open(States.CLINIC, setUp);
        program.at(model, 12_000);
        List<String> faults = new ArrayList<>();
        look(faults, "yard");
        for (SensorKind kind : SensorKind.values()) {
            for (Placement placement : setUp.of(kind)) {
                OpenProgram.ROBOT.interact(() -> model.selectedProperty().set(placement.id()));
                program.settle();
                look(faults, placement.id(), TIGHT);
            }
        }
        expectNone(faults);
    }

    @Test
    void sheetsOverTheYard() throws Exception {
        SetUp setUp = States.textbook(States.CLINIC);
        YardModel model = program.open(States.CLINIC, setUp);
        program.at(model, States.noon());
        List<String> faults = new ArrayList<>();
        for (KeyCode key : List.of(KeyCode.R, KeyCode.T, KeyCode.S, KeyCode.F1, KeyCode.F10)) {
            OpenProgram.ROBOT.push(key);
            program.settle();
            look(faults, key.getName(), TIGHT);
            OpenProgram.ROBOT.push(KeyCode.ESCAPE);
            program.settle();
        }
        expectNone(faults);
    }

    @Test
    void theDebriefAndTheQuestionBeforeIt() throws Exception {
        YardModel model = program.open(States.CLINIC, States.careless(States.CLINIC));
        model.player().show(Long.MAX_VALUE);
        OpenProgram.until(
                "the trainee is asked",
                () -> OpenProgram.ROBOT.lookup("#commit-RAIN").query().isFocused());
        program.settle();
        List<String> faults = new ArrayList<>();
        look(faults, "question", TIGHT);
        OpenProgram.ROBOT.clickOn("#commit-FREEZE").clickOn("#commit-why").write("It hangs by the warm vent");
        OpenProgram.ROBOT.clickOn("#commit-go");
        OpenProgram.until(
                "all is worked out", () -> program.shell().yard().debriefs().stage() == DebriefModel.Stage.DONE);
        program.settle();
        look(faults, "debrief", TIGHT);
        OpenProgram.ROBOT.interact(() -> OpenProgram.ROBOT
                .lookup("#moment-0")
                .<MomentRow>query()
                .executeAccessibleAction(AccessibleAction.FIRE));
        program.settle();
        look(faults, "moment", TIGHT);
        expectNone(faults);
    }

    @Test
    void theScheduleThatIsOpen() throws Exception {
        YardModel model = program.open(States.CLAY_SLOPE, States.textbook(States.CLAY_SLOPE));
        List<String> faults = new ArrayList<>();
        OpenProgram.ROBOT.push(KeyCode.S);
        program.settle();
        look(faults, "cycles");
        OpenProgram.ROBOT.interact(() -> {
            Schedules late = Schedules.of(model.setUp(), model.scenario())
                    .on(List.of(DayOfWeek.values()))
                    .oneMoreStart()
                    .start(0, LocalTime.of(8, 30));
            model.decide("step.schedule", late.into(model.setUp(), model.scenario()));
        });
        program.settle();
        look(faults, "weekdays, two starts, cut short", TIGHT);
        OpenProgram.ROBOT.push(KeyCode.ESCAPE);
        program.settle();
        expectNone(faults);
    }

    @Test
    @DisplayName("the check itself sees a cut text, one that sticks out, and one over another")
    void theCheckSees() throws Exception {
        List<String> found = new ArrayList<>();
        OpenProgram.ROBOT.interact(() -> {
            Label cut = new Label("A sentence that has no room at all");
            cut.setMaxWidth(60);
            Label over = new Label("over");
            Label under = new Label("under");
            Label out = new Label("out of the window");
            out.relocate(180, 60);
            over.relocate(10, 100);
            under.relocate(14, 103);
            Pane pane = new Pane(new HBox(cut), out, over, under);
            Stage stage = new Stage();
            stage.setScene(new Scene(pane, 200, 200));
            stage.show();
            found.addAll(TextFit.faults(stage.getScene()));
            stage.close();
        });
        assertFalse(found.stream().noneMatch(f -> f.contains("is cut to")), found::toString);
        assertFalse(found.stream().noneMatch(f -> f.contains("sticks out")), found::toString);
        assertFalse(found.stream().noneMatch(f -> f.contains("lie over each other")), found::toString);
        assertEquals(3, found.size(), found::toString);
    }
}
