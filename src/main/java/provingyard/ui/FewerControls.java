package provingyard.ui;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.MenuButton;
import provingyard.scenario.Scenario;
import provingyard.scenario.SensorKind;

/** Leaves out of a yard's screen what its level or its kit has no use for yet. */
final class FewerControls {

    /** Highest level on which only the first things are offered. */
    private static final int FIRST_STEPS = 1;

    private static final List<String> LATER = List.of("speed-REAL", "layer-SHADE", "layer-COLD");

    private FewerControls() {}

    /** Leaves out; the screen must be in its scene. */
    static void on(Parent screen, Scenario site) {
        // What scrolls has no children before.
        screen.applyCss();
        if (site.level() <= FIRST_STEPS) {
            LATER.forEach(id -> leaveOut(screen.lookup("#" + id)));
        }
        if (site.kit().item(SensorKind.FLOW) == null && screen.lookup("#menu") instanceof MenuButton menu) {
            // Only a flow watch locks out what can be re-armed.
            menu.getItems().removeIf(i -> "menu-rearm".equals(i.getId()));
        }
    }

    private static void leaveOut(Node control) {
        if (control != null) {
            control.setVisible(false);
            control.setManaged(false);
        }
    }
}
