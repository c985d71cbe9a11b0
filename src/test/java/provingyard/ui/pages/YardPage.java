package provingyard.ui.pages;

import java.util.Set;
import javafx.geometry.Bounds;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import org.testfx.api.FxRobot;
import org.testfx.util.WaitForAsyncUtils;
import provingyard.scenario.SensorKind;

/** The yard as a trainee has it before them: kit, plan, inspector and list of devices, found by their ids. */
public final class YardPage {

    private final FxRobot robot;

    public YardPage(FxRobot robot) {
        this.robot = robot;
    }

    /** Drags a sensor from the kit to a place of the plan, given as shares of its width and height, and holds it there. */
    public YardPage drag(SensorKind kind, double across, double down) {
        robot.moveTo("#kit-" + kind.name()).press(MouseButton.PRIMARY);
        robot.moveTo(plan(across * 0.9, down * 0.9)).moveTo(plan(across, down));
        return settled();
    }

    /** Lets go of what is dragged. */
    public YardPage letGo() {
        robot.release(MouseButton.PRIMARY);
        return settled();
    }

    private Point2D plan(double across, double down) {
        Node yard = robot.lookup("#yard").query();
        Bounds box = yard.localToScreen(yard.getLayoutBounds());
        return new Point2D(box.getMinX() + across * box.getWidth(), box.getMinY() + down * box.getHeight());
    }

    /** Takes a sensor in hand by keys: its row has the focus, then Enter. */
    public YardPage takeByKeys(SensorKind kind) {
        Node row = robot.lookup("#kit-" + kind.name()).query();
        robot.interact(row::requestFocus);
        return press(KeyCode.ENTER);
    }

    /** Presses a key, with those held that are named after it. */
    public YardPage press(KeyCode code, KeyCode... held) {
        for (KeyCode key : held) {
            robot.press(key);
        }
        robot.press(code).release(code);
        for (KeyCode key : held) {
            robot.release(key);
        }
        return settled();
    }

    /** The words at the pointer while something is in hand; empty otherwise. */
    public String handWords() {
        return robot.lookup("#hand-words")
                .tryQuery()
                .filter(Node::isVisible)
                .map(n -> robot.from(n).lookup(".label").<Label>queryAll())
                .map(YardPage::texts)
                .orElse("");
    }

    private static String texts(Set<Label> labels) {
        return String.join(" ", labels.stream().map(Label::getText).toList());
    }

    /** What the sentence over the small plot says. */
    public String wouldHave() {
        return robot.lookup("#would-title").<Label>query().getText();
    }

    /** Types a value into a field of the inspector and enters it. */
    public YardPage type(String field, String value) {
        TextField found = robot.lookup("#" + field).query();
        robot.interact(() -> {
            found.requestFocus();
            found.setText(value);
            found.fireEvent(new javafx.event.ActionEvent());
        });
        return settled();
    }

    /** What a field of the inspector shows. */
    public String field(String field) {
        return robot.lookup("#" + field).<TextField>query().getText();
    }

    /** Whether a field is marked as wrong. */
    public boolean marked(String field) {
        return robot.lookup("#" + field).query().getStyleClass().contains("bad");
    }

    /** The complaint under a field; empty when there is none. */
    public String complaint(String field) {
        return robot.lookup("#" + field + "-complaint").<Label>query().getText();
    }

    /** Waits until the window did what was asked and drew some pulses. */
    public YardPage settled() {
        WaitForAsyncUtils.waitForFxEvents(6);
        return this;
    }
}
