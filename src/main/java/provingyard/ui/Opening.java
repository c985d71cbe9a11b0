package provingyard.ui;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.VBox;
import provingyard.learner.SavedSeason;
import provingyard.scenario.Scenario;
import provingyard.season.Season;
import provingyard.season.Site;
import provingyard.setup.History;
import provingyard.study.Progress;

/** A site is made ready, and the season that was left there lived again; nothing of it on the window's thread. */
final class Opening extends VBox implements Progress {

    /**
     * A site that is ready.
     *
     * @param note key of a sentence to be said; empty for none
     * @param first whether it is a learner's very first one, which runs when it opens
     * @param rained whether it was taken to a run that begins after rain
     */
    record Ready(YardModel model, String note, boolean first, boolean rained) {

        Ready(YardModel model, String note) {
            this(model, note, false, false);
        }
    }

    private final Scenario scenario;
    private final SavedSeason saved;
    private final boolean guide;
    private final Consumer<Ready> opened;
    private final Consumer<Throwable> failed;
    private final ProgressBar bar = new ProgressBar();
    private final Button cancel = new Button();
    private volatile boolean cancelled;

    Opening(
            Scenario scenario,
            SavedSeason saved,
            boolean guide,
            Words words,
            Consumer<Ready> opened,
            Consumer<Throwable> failed) {
        super(14);
        this.scenario = scenario;
        this.saved = saved;
        this.guide = guide;
        this.opened = opened;
        this.failed = failed;
        setId("opening");
        setAlignment(Pos.CENTER);
        Label what = new Label();
        words.bind(what.textProperty(), "shell.opening", words.live(scenario.title()));
        what.getStyleClass().add("section-title");
        bar.setStyle("-fx-pref-width: 22em;");
        cancel.setId("opening-cancel");
        words.bind(cancel.textProperty(), "shell.cancel");
        getChildren().addAll(what, bar, cancel);
    }

    void onCancel(Runnable back) {
        cancel.setOnAction(e -> back.run());
    }

    /**
     * Begins.
     *
     * @param onFailure told, on the player's thread, what goes wrong later
     */
    void begin(Consumer<Throwable> onFailure) {
        Thread thread = new Thread(
                () -> {
                    try {
                        Ready ready = ready(onFailure);
                        Platform.runLater(() -> hand(ready));
                    } catch (CancellationException e) {
                        // Whoever cancelled is on another screen by now.
                        cancelled = true;
                    } catch (RuntimeException | Error e) {
                        Platform.runLater(() -> fail(e));
                    }
                },
                "open-site");
        thread.setDaemon(true);
        thread.start();
        cancel.requestFocus();
    }

    private Ready ready(Consumer<Throwable> onFailure) {
        Site site = Site.of(scenario);
        if (saved == null) {
            Optional<SeasonReplay.Lived> after = guide ? AfterRain.of(site, this) : Optional.empty();
            SeasonReplay.Lived begun = after.orElseGet(() -> SeasonReplay.fresh(site));
            return new Ready(new YardModel(begun, onFailure), "", guide, after.isPresent());
        }
        List<History.Change> changes = saved.changes(scenario).orElse(null);
        if (changes == null) {
            return new Ready(new YardModel(SeasonReplay.fresh(site), onFailure), "shell.siteChangedWhole");
        }
        boolean same =
                saved.content().equals(site.contentHash()) && saved.engine().equals(Season.ENGINE);
        List<Season.Change> lived = changes.stream()
                .map(c -> new Season.Change(c.tick(), c.setUp()))
                .toList();
        if (same) {
            SeasonPlayer.Kept kept = new SeasonPlayer.Kept(saved.tick(), lived, saved.rearms());
            return new Ready(new YardModel(SeasonReplay.of(site, kept, this), onFailure), "");
        }
        // Other results than before: the set-up is kept, the season begins anew.
        Season.Change last = new Season.Change(0, lived.get(lived.size() - 1).setUp());
        SeasonPlayer.Kept anew = new SeasonPlayer.Kept(0, List.of(last), List.of());
        return new Ready(new YardModel(SeasonReplay.of(site, anew, this), onFailure), "shell.siteChanged");
    }

    private void hand(Ready ready) {
        if (cancelled) {
            ready.model().close();
        } else {
            opened.accept(ready);
        }
    }

    private void fail(Throwable e) {
        if (!cancelled) {
            failed.accept(e);
        }
    }

    void cancel() {
        cancelled = true;
    }

    @Override
    public void at(int done, int of) {
        Platform.runLater(() -> bar.setProgress(of == 0 ? ProgressBar.INDETERMINATE_PROGRESS : done / (double) of));
    }

    @Override
    public boolean cancelled() {
        return cancelled;
    }
}
