package provingyard.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Scene;
import javafx.scene.control.Label;
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

    private static void look(List<String> all, String what) {
        for (String language : new String[] {"en", "es"}) {
            for (double width : new double[] {1280, 1920}) {
                program.look(Theme.LIGHT, language, language.equals("en") ? UnitSystem.US : UnitSystem.METRIC);
                program.size(width, width * 9 / 16);
                for (String fault : faults()) {
                    all.add(what + ", " + language + ", " + (int) width + ": " + fault);
                }
            }
        }
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
                look(faults, placement.id());
            }
        }
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
