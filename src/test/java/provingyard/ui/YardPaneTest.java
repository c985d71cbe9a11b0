package provingyard.ui;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import javafx.animation.AnimationTimer;
import javafx.scene.Node;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.util.WaitForAsyncUtils;
import provingyard.picture.Layer;

/** The plan in the window: still when time stands, layers and plates by keys. */
class YardPaneTest {

    private static final FxRobot ROBOT = OpenProgram.ROBOT;

    /** A windy shower in the evening. */
    private static final long SHOWER = 2567;

    private static OpenProgram program;
    private static Shell shell;
    private static YardPane yard;
    private static YardModel model;

    @BeforeAll
    static void window() throws Exception {
        program = OpenProgram.show(1280, 720);
        shell = program.shell();
        model = program.open(States.TANSY_ROW, States.clockAlone());
        yard = shell.yard().yard();
        ROBOT.interact(() -> {
            model.speed(Speed.REAL);
            yard.requestFocus();
        });
        program.at(model, SHOWER);
        program.untilTheYardIsDrawn();
        pulses(60);
    }

    @AfterAll
    static void close() throws Exception {
        program.close();
    }

    private static void until(String what, BooleanSupplier holds) throws Exception {
        OpenProgram.until(what, holds);
    }

    /** Waits for so many pulses of the window. */
    private static void pulses(int n) throws Exception {
        AtomicInteger count = new AtomicInteger();
        AnimationTimer timer = new AnimationTimer() {
            @Override
            public void handle(long now) {
                count.incrementAndGet();
            }
        };
        ROBOT.interact(timer::start);
        until("pulses", () -> count.get() >= n);
        ROBOT.interact(timer::stop);
    }

    private static int[] picture() {
        int[][] pixels = new int[1][];
        ROBOT.interact(() -> {
            Node node = yard;
            WritableImage image = node.snapshot(null, null);
            int w = (int) image.getWidth();
            int h = (int) image.getHeight();
            pixels[0] = new int[w * h];
            image.getPixelReader().getPixels(0, 0, w, h, PixelFormat.getIntArgbInstance(), pixels[0], 0, w);
        });
        return pixels[0];
    }

    private static void play(boolean on) throws Exception {
        ROBOT.interact(() -> {
            if (on) {
                model.player().play(Speed.REAL.minutesPerSecond());
            } else {
                model.player().pause();
            }
        });
        until("time " + (on ? "runs" : "stands"), () -> model.playingProperty().get() == on);
    }

    @Test
    void standingTimeIsStillPixelForPixelAndRunningTimeMovesUnlessAskedNotTo() throws Exception {
        int[] before = picture();
        assertTrue(Arrays.stream(before).distinct().count() > 1000, "the plan is drawn");
        pulses(20);
        assertArrayEquals(before, picture());

        ROBOT.interact(() -> shell.still(true));
        play(true);
        pulses(20);
        assertArrayEquals(before, picture(), "still though time runs");

        ROBOT.interact(() -> shell.still(false));
        pulses(20);
        assertFalse(Arrays.equals(before, picture()), "rain falls");
        play(false);
        pulses(5);
        int[] paused = picture();
        pulses(20);
        assertArrayEquals(paused, picture());
    }

    @Test
    void shiftWithADigitShowsAndHidesALayer() {
        for (Layer layer : Layer.values()) {
            boolean before = model.layersProperty().get().contains(layer);
            KeyCode key = KeyCode.valueOf("DIGIT" + (layer.ordinal() + 1));
            ROBOT.press(KeyCode.SHIFT, key).release(key, KeyCode.SHIFT);
            WaitForAsyncUtils.waitForFxEvents();
            assertEquals(!before, model.layersProperty().get().contains(layer), layer.name());
            ROBOT.press(KeyCode.SHIFT, key).release(key, KeyCode.SHIFT);
            WaitForAsyncUtils.waitForFxEvents();
            assertEquals(before, model.layersProperty().get().contains(layer), layer.name());
        }
    }

    @Test
    void thingsAreNamedByKeysUntilEscape() throws Exception {
        ROBOT.interact(yard::requestFocus);
        ROBOT.press(KeyCode.PAGE_DOWN).release(KeyCode.PAGE_DOWN);
        until("a plate is open", () -> yard.plate().isVisible());
        String first = yard.plate().said().whole();
        assertTrue(yard.getAccessibleText().startsWith(first), yard.getAccessibleText());
        ROBOT.press(KeyCode.PAGE_DOWN).release(KeyCode.PAGE_DOWN);
        until("the next is named", () -> !yard.plate().said().whole().equals(first));
        ROBOT.press(KeyCode.PAGE_UP).release(KeyCode.PAGE_UP);
        until("back", () -> yard.plate().said().whole().equals(first));
        ROBOT.press(KeyCode.ESCAPE).release(KeyCode.ESCAPE);
        until("the plate is gone", () -> !yard.plate().isVisible());
        assertFalse(yard.getAccessibleText().startsWith(first));
    }
}
