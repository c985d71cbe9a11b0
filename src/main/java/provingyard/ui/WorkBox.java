package provingyard.ui;

import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import provingyard.study.Progress;

/** Long work that is begun when asked: a button, progress with the time that is left, and the way to stop it. */
final class WorkBox extends VBox {

    private static final double NANOS = 1e9;
    private static final int STEADY_AFTER = 8;

    /** The work, done off the window's thread; gives what is then done on it. */
    interface Work {
        /** @throws CancellationException when the progress asks to stop */
        Runnable run(Progress progress);
    }

    private final Words words;
    private final String start;
    private final Work work;
    private final Consumer<Throwable> onFailure;
    private final ProgressBar bar = new ProgressBar(0);
    private final Label how = new Label();
    private final Button button = new Button();
    private AtomicBoolean stop = new AtomicBoolean();

    /**
     * A box that waits.
     *
     * @param id the button's
     * @param start key of the button's text
     */
    WorkBox(Words words, String id, String start, Work work, Consumer<Throwable> onFailure) {
        super(6);
        this.words = words;
        this.start = start;
        this.work = work;
        this.onFailure = onFailure;
        bar.setMaxWidth(Double.MAX_VALUE);
        bar.managedProperty().bind(bar.visibleProperty());
        how.getStyleClass().addAll("small", "ink2");
        how.setWrapText(true);
        how.setMinHeight(Region.USE_PREF_SIZE);
        how.managedProperty().bind(how.textProperty().isNotEmpty());
        button.setId(id);
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.setOnAction(e -> toggle());
        getChildren().addAll(button, bar, how);
        rest("");
    }

    private void toggle() {
        if (bar.isVisible()) {
            stop.set(true);
            return;
        }
        AtomicBoolean mine = new AtomicBoolean();
        stop = mine;
        how.setText("");
        bar.setProgress(-1);
        bar.setVisible(true);
        words.bind(button.textProperty(), "work.cancel");
        Thread thread = new Thread(() -> run(mine), "work");
        thread.setDaemon(true);
        thread.start();
    }

    private void run(AtomicBoolean mine) {
        try {
            Runnable then = work.run(progress(mine));
            Platform.runLater(() -> {
                if (!mine.get()) {
                    rest("");
                    then.run();
                }
            });
        } catch (CancellationException e) {
            Platform.runLater(() -> rest(""));
        } catch (RuntimeException e) {
            Platform.runLater(() -> rest(""));
            onFailure.accept(e);
        }
    }

    private void rest(String said) {
        bar.setVisible(false);
        how.setText(said);
        words.bind(button.textProperty(), start);
    }

    private Progress progress(AtomicBoolean mine) {
        long begun = System.nanoTime();
        return new Progress() {
            @Override
            public void at(int done, int of) {
                double left = (System.nanoTime() - begun) / NANOS * (of - done) / Math.max(1, done);
                Platform.runLater(() -> {
                    if (bar.isVisible()) {
                        bar.setProgress(done / (double) of);
                        how.setText(
                                done < STEADY_AFTER
                                        ? words.say("work.done", done, of)
                                        : words.say("work.left", done, of, Long.toString(Math.round(left))));
                    }
                });
            }

            @Override
            public boolean cancelled() {
                return mine.get();
            }
        };
    }

    /** Stops what still runs. */
    void dispose() {
        stop.set(true);
    }
}
