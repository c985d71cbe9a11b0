package provingyard.ui;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.geometry.HPos;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import provingyard.quantity.Show;
import provingyard.score.Loss;
import provingyard.score.Score;
import provingyard.season.Outcome;
import provingyard.season.Season;
import provingyard.study.Comparison;
import provingyard.study.Mark;
import provingyard.study.MarkSearch;
import provingyard.study.MarkStore;
import provingyard.study.Progress;
import provingyard.study.Standing;

/** The result after the season: points, or the reason why there are none, and what was lost beside clock and mark. */
final class ResultSheet extends VBox {

    private final YardModel model;
    private final Words words;
    private final VBox body = new VBox(12);
    private final AtomicBoolean stop = new AtomicBoolean();
    private Outcome outcome;
    private Standing standing;
    /** Key of a sentence to be shown under the result; empty for none. */
    private String note = "";

    private Optional<Mark> mark = Optional.empty();
    private Consumer<Score> told = score -> {};

    ResultSheet(YardModel model, Words words, Runnable again, Runnable close) {
        this.model = model;
        this.words = words;
        setId("result");
        getStyleClass().add("sheet");
        setSpacing(12);
        setMaxSize(720, Region.USE_PREF_SIZE);
        setStyle("-fx-padding: 24;");
        Button shut = new Button();
        shut.setId("result-close");
        shut.setCancelButton(true);
        words.bind(shut.textProperty(), "result.close");
        shut.setOnAction(e -> close.run());
        Button retry = new Button();
        retry.setId("result-again");
        retry.getStyleClass().add("main");
        words.bind(retry.textProperty(), "result.again");
        retry.setOnAction(e -> again.run());
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        HBox buttons = new HBox(10, gap, shut, retry);
        buttons.setMinHeight(Region.USE_PREF_SIZE);
        ScrollPane scroll = new ScrollPane(body);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setMinHeight(0);
        VBox.setVgrow(scroll, Priority.ALWAYS);
        getChildren().addAll(scroll, buttons);
        words.languageChanges().addListener(o -> show());
        words.units().addListener(o -> show());
    }

    /** Who hears of each score. */
    void tell(Consumer<Score> next) {
        told = next;
    }

    /** Reckons a season that is over; the comparison runs off the window's thread. */
    void reckon(Season season) {
        outcome = season.outcome();
        standing = null;
        show();
        run(() -> {
            Optional<Mark> known = MarkStore.find(model.site());
            compare(known);
        });
    }

    private void compare(Optional<Mark> known) {
        var plan = model.scenario().season();
        Standing reckoned = new Comparison(model.site(), plan.seed(), plan.days(), known, Optional.empty())
                .with(outcome, model.setUp());
        Platform.runLater(() -> {
            mark = known;
            standing = reckoned;
            show();
            told.accept(reckoned.score());
        });
    }

    private static void run(Runnable work) {
        Thread thread = new Thread(work, "result");
        thread.setDaemon(true);
        thread.start();
    }

    private void show() {
        body.getChildren().clear();
        if (outcome == null) {
            return;
        }
        Label title =
                new Label(words.say("result.title", words.say(model.scenario().title())));
        title.getStyleClass().add("page-title");
        body.getChildren().add(title);
        if (standing == null) {
            Label wait = new Label(words.say("result.wait"));
            wait.getStyleClass().add("ink2");
            ProgressBar bar = new ProgressBar();
            bar.setMaxWidth(Double.MAX_VALUE);
            body.getChildren().addAll(wait, bar);
            return;
        }
        body.getChildren().addAll(points(), table());
        if (mark.isEmpty()) {
            body.getChildren().add(searching());
        }
        notProven().ifPresent(body.getChildren()::add);
        if (!note.isEmpty()) {
            Label notKept = new Label(words.say(note));
            notKept.setWrapText(true);
            notKept.getStyleClass().addAll("small", "ink2");
            body.getChildren().add(notKept);
        }
    }

    private HBox points() {
        Label number = new Label();
        number.setId("score");
        number.setMinWidth(Region.USE_PREF_SIZE);
        Label text = new Label();
        text.setWrapText(true);
        HBox.setHgrow(text, Priority.ALWAYS);
        text.setMaxWidth(Double.MAX_VALUE);
        if (standing.score().points() != null) {
            number.setText(Integer.toString(standing.score().shown()));
            number.getStyleClass().add("score-number");
            text.setText(words.say(
                            "result.points",
                            words.display().text(Show.MONEY, standing.clock().total()),
                            words.display()
                                    .text(
                                            Show.MONEY,
                                            standing.mark().orElseThrow().total()))
                    + outside());
        } else {
            number.setText(words.say("result.noScore"));
            number.getStyleClass().add("section-title");
            text.setText(words.say("reason." + standing.score().reason().name()));
        }
        HBox box = new HBox(20, number, text);
        box.setAlignment(Pos.CENTER_LEFT);
        return box;
    }

    /** Names the sensors that nobody tested under their last settings; empty where all were. */
    private Optional<Label> notProven() {
        SensorNames names = new SensorNames(model, words);
        List<String> left = model.unproven().stream().map(names::of).toList();
        if (left.isEmpty()) {
            return Optional.empty();
        }
        Label said = new Label(words.say("result.notProven", String.join(", ", left)));
        said.setId("not-proven");
        said.setWrapText(true);
        said.setGraphic(IconNode.of("caution", 16));
        said.getStyleClass().add("caution");
        said.setMaxWidth(Double.MAX_VALUE);
        said.setMinHeight(Region.USE_PREF_SIZE);
        return Optional.of(said);
    }

    /** A score outside 0 to 100 is shown at the end of the scale, with a word why. */
    private String outside() {
        if (!standing.score().outside()) {
            return "";
        }
        return " " + words.say(standing.score().points() > 100 ? "result.better" : "result.worse");
    }

    private GridPane table() {
        GridPane grid = new GridPane();
        grid.setHgap(18);
        grid.setVgap(4);
        ColumnConstraints wide = new ColumnConstraints();
        wide.setHgrow(Priority.ALWAYS);
        grid.getColumnConstraints().add(wide);
        head(grid, 1, "result.clock");
        head(grid, 2, "result.you");
        head(grid, 3, "result.mark");
        int line = 1;
        for (Loss.Kind kind : Loss.Kind.values()) {
            double clock = standing.clock().money(kind);
            double you = standing.trainee().money(kind);
            double best = standing.mark().map(m -> m.money(kind)).orElse(0.0);
            if (Math.max(Math.max(clock, you), best) < 0.005) {
                continue;
            }
            row(grid, line++, words.say("loss." + kind.name()), clock, you, best, false);
        }
        double best = standing.mark().map(Loss::total).orElse(0.0);
        row(
                grid,
                line,
                words.say("loss.total"),
                standing.clock().total(),
                standing.trainee().total(),
                best,
                true);
        return grid;
    }

    private void head(GridPane grid, int column, String key) {
        Label label = new Label(words.say(key));
        label.getStyleClass().addAll("small", "ink2");
        GridPane.setHalignment(label, HPos.RIGHT);
        grid.add(label, column, 0);
    }

    private void row(GridPane grid, int line, String name, double clock, double you, double best, boolean strong) {
        Label label = new Label(name);
        label.setWrapText(true);
        grid.add(label, 0, line);
        cell(grid, 1, line, clock, strong);
        cell(grid, 2, line, you, true);
        if (standing.mark().isPresent()) {
            cell(grid, 3, line, best, strong);
        } else {
            Label none = new Label("–");
            GridPane.setHalignment(none, HPos.RIGHT);
            grid.add(none, 3, line);
        }
        if (strong) {
            label.getStyleClass().add("strong");
        }
    }

    private void cell(GridPane grid, int column, int line, double money, boolean strong) {
        Label label = new Label(words.display().text(Show.MONEY, money));
        label.setMinWidth(Region.USE_PREF_SIZE);
        if (strong) {
            label.getStyleClass().add("strong");
        }
        GridPane.setHalignment(label, HPos.RIGHT);
        grid.add(label, column, line);
    }

    private VBox searching() {
        ProgressBar bar = new ProgressBar(0);
        bar.setMaxWidth(Double.MAX_VALUE);
        bar.setVisible(false);
        bar.managedProperty().bind(bar.visibleProperty());
        Label how = new Label();
        how.getStyleClass().addAll("small", "ink2");
        Button search = new Button(words.say("result.search"));
        search.setId("search-mark");
        search.setOnAction(e -> {
            if (bar.isVisible()) {
                stop.set(true);
                return;
            }
            stop.set(false);
            bar.setVisible(true);
            search.setText(words.say("result.cancel"));
            run(() -> search(bar, how, search));
        });
        return new VBox(6, search, bar, how);
    }

    private void search(ProgressBar bar, Label how, Button button) {
        Progress progress = new Progress() {
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
        try {
            Mark found = MarkSearch.search(model.site(), progress);
            boolean kept = MarkStore.save(found);
            Platform.runLater(() -> note = kept ? "" : "result.notKept");
            compare(Optional.of(found));
        } catch (CancellationException e) {
            Platform.runLater(() -> {
                bar.setVisible(false);
                how.setText("");
                button.setText(words.say("result.search"));
            });
        }
    }

    /** Stops what still runs. */
    void dispose() {
        stop.set(true);
    }
}
