package provingyard.ui;

import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import javafx.scene.Node;
import javafx.scene.image.ImageView;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;
import provingyard.picture.Theme;
import provingyard.quantity.UnitSystem;
import provingyard.scenario.Scenario;
import provingyard.setup.SetUp;

/** The program in a window without a display, and what a test does with it as a whole. */
final class OpenProgram {

    static final FxRobot ROBOT = new FxRobot();
    private static final long PATIENCE_SECONDS = 150;

    private final Shell shell;
    private final Stage stage;

    private OpenProgram(Shell shell, Stage stage) {
        this.shell = shell;
        this.stage = stage;
    }

    /** Opens the window on the route sheet, for somebody who needs no hints, so that none comes by the clock. */
    static OpenProgram show(double width, double height) throws Exception {
        return show(ProvingYardApp.sites(), width, height);
    }

    /** The same over some sites. */
    static OpenProgram show(List<Scenario> sites, double width, double height) throws Exception {
        Stage stage = FxToolkit.registerPrimaryStage();
        Shell[] made = new Shell[1];
        FxToolkit.setupFixture(() -> {
            made[0] = new Shell(sites, width, height);
            // A window is tried here, not the climate: two draws say as much of it as many.
            made[0].study(new LiveStudy(2));
            for (Hints.Hint hint : Hints.Hint.values()) {
                made[0].book().change(l -> l.following(hint.key()));
            }
            stage.setScene(made[0].scene());
            stage.show();
        });
        OpenProgram program = new OpenProgram(made[0], stage);
        program.size(width, height);
        return program;
    }

    void close() throws Exception {
        FxToolkit.setupFixture(shell::close);
        FxToolkit.cleanupStages();
    }

    Shell shell() {
        return shell;
    }

    Stage stage() {
        return stage;
    }

    void size(double width, double height) {
        ROBOT.interact(() -> {
            stage.setWidth(width);
            stage.setHeight(height);
        });
        settle();
    }

    void look(Theme theme, String language, UnitSystem units) {
        ROBOT.interact(() -> {
            shell.theme(theme);
            shell.speak(language);
            shell.words().units().set(units);
        });
        settle();
    }

    void route() {
        ROBOT.interact(shell::route);
        settle();
    }

    /** Opens a site at its first minute, under a set-up, and waits until it is drawn. */
    YardModel open(String site, SetUp setUp) throws Exception {
        ROBOT.interact(() -> shell.startAgain(ProvingYardApp.sites().stream()
                .filter(s -> s.id().equals(site))
                .findFirst()
                .orElseThrow()));
        until(() -> shell.yard() != null && shell.yard().model().frameProperty().get() != null);
        YardModel model = shell.yard().model();
        ROBOT.interact(() -> {
            model.playingProperty().set(false);
            model.player().pause();
            if (!setUp.equals(model.setUp())) {
                model.decide("step.open", setUp);
            }
        });
        settle();
        return model;
    }

    /** Lives or goes back to a minute of the season and stands still there. */
    void at(YardModel model, long tick) throws Exception {
        model.player().show(tick);
        until(() -> model.frameProperty().get().snapshot().tick() == tick);
        settle();
    }

    /** Waits until the yard's picture shows all that was asked of it. */
    void untilTheYardIsDrawn() throws Exception {
        settle();
        until(() -> shell.yard().yard().isDrawn());
        settle();
    }

    /** Waits until every card has its picture. */
    void untilPicturesAreDrawn() throws Exception {
        until(() -> ROBOT.lookup(n -> n instanceof ImageView).<ImageView>queryAll().stream()
                .allMatch(v -> v.getImage() != null));
        settle();
    }

    /** The node of an id that is shown. */
    static Node node(String id) {
        return ROBOT.lookup((Node n) -> id.equals(n.getId())).query();
    }

    static boolean isShown(String id) {
        return ROBOT.lookup((Node n) -> id.equals(n.getId())).tryQuery().isPresent();
    }

    /** Presses a key and waits until what it does is done. */
    static void press(KeyCode key) {
        ROBOT.press(key).release(key);
        WaitForAsyncUtils.waitForFxEvents();
    }

    static void until(BooleanSupplier holds) throws Exception {
        WaitForAsyncUtils.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS, holds::getAsBoolean);
    }

    static void until(String what, BooleanSupplier holds) throws Exception {
        try {
            until(holds);
        } catch (TimeoutException e) {
            throw new AssertionError("waited in vain: " + what, e);
        }
    }

    /** Waits until the window has done what was asked and has drawn some pulses. */
    void settle() {
        WaitForAsyncUtils.waitForFxEvents(8);
    }
}
