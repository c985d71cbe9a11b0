package provingyard.ui;

import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.VBox;
import provingyard.study.Mark;
import provingyard.study.MarkSearch;
import provingyard.study.MarkStore;
import provingyard.study.Progress;

/** Where a site's mark is not known: looks for it when asked, with progress, and can be stopped. */
final class MarkSearchBox extends VBox {

    private final YardModel model;
    private final Words words;
    private final Consumer<Mark> found;
    private final Consumer<Throwable> onFailure;
    private final ProgressBar bar = new ProgressBar(0);
    private final Label how = new Label();
    private final Button search = new Button();
    private final AtomicBoolean stop = new AtomicBoolean();

    /** @param found told the mark on the window's thread */
    MarkSearchBox(YardModel model, Words words, Consumer<Mark> found, Consumer<Throwable> onFailure) {
        super(6);
        this.model = model;
        this.words = words;
        this.found = found;
        this.onFailure = onFailure;
        bar.setMaxWidth(Double.MAX_VALUE);
        bar.setVisible(false);
        bar.managedProperty().bind(bar.visibleProperty());
        how.getStyleClass().addAll("small", "ink2");
        how.setWrapText(true);
        how.managedProperty().bind(how.textProperty().isNotEmpty());
        search.setId("search-mark");
        words.bind(search.textProperty(), "result.search");
        search.setOnAction(e -> toggle());
        getChildren().addAll(search, bar, how);
    }

    private void toggle() {
        if (bar.isVisible()) {
            stop.set(true);
            return;
        }
        stop.set(false);
        how.setText("");
        bar.setProgress(0);
        bar.setVisible(true);
        words.bind(search.textProperty(), "result.cancel");
        Thread thread = new Thread(this::search, "mark");
        thread.setDaemon(true);
        thread.start();
    }

    private void search() {
        try {
            Mark mark = MarkSearch.search(model.site(), progress());
            boolean kept = MarkStore.save(mark);
            Platform.runLater(() -> {
                rest(kept ? "" : words.say("result.notKept"));
                found.accept(mark);
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
        words.bind(search.textProperty(), "result.search");
    }

    private Progress progress() {
        return new Progress() {
            @Override
            public void at(int done, int of) {
                Platform.runLater(() -> {
                    bar.setProgress(done / (double) of);
                    how.setText(words.say("result.progress", done, of));
                });
            }

            @Override
            public boolean cancelled() {
                return stop.get();
            }
        };
    }

    /** Stops what still runs. */
    void dispose() {
        stop.set(true);
    }
}
