package provingyard.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import provingyard.quantity.Show;
import provingyard.report.MomentWords;
import provingyard.study.Debrief;
import provingyard.study.Moment;
import provingyard.study.Moments;

/** The moments that mattered, each a button that takes the yard back to its minute. */
final class DebriefMoments extends VBox {

    private static final int PER_RULE = 3;

    private final Words words;
    private final MomentSayings sayings;
    private final Consumer<Moment> go;
    private boolean all;

    DebriefMoments(Words words, MomentSayings sayings, Consumer<Moment> go) {
        this.words = words;
        this.sayings = sayings;
        this.go = go;
        setId("moments");
        setSpacing(2);
        setMinWidth(0);
    }

    void show(Debrief debrief) {
        List<Moment> shown = all ? debrief.moments() : Moments.topOf(debrief.moments(), PER_RULE);
        List<Node> rows = new ArrayList<>();
        for (Moment moment : shown) {
            rows.add(row(moment, rows.size()));
        }
        if (debrief.moments().isEmpty()) {
            Label none = new Label(words.say("moments.none"));
            none.setWrapText(true);
            none.getStyleClass().add("ink2");
            rows.add(none);
        }
        if (shown.size() < debrief.moments().size() || all) {
            Button more = new Button(words.say(
                    all ? "moments.fewer" : "moments.all",
                    Integer.toString(debrief.moments().size())));
            more.setId("moments-all");
            more.getStyleClass().add("quiet");
            more.setMinWidth(Region.USE_PREF_SIZE);
            more.setOnAction(e -> {
                all = !all;
                show(debrief);
                lookup("#moments-all").requestFocus();
            });
            rows.add(more);
        }
        getChildren().setAll(rows);
    }

    private Button row(Moment moment, int number) {
        String day = sayings.day(moment.tick());
        String clock = sayings.clock(moment.tick());
        String said = sayings.sentence(moment);
        Label when = new Label(day + "\n" + clock);
        when.getStyleClass().addAll("small", "ink2");
        when.setMinWidth(Region.USE_PREF_SIZE);
        when.setStyle("-fx-pref-width: 5.6em;");
        Label text = new Label(said);
        text.setWrapText(true);
        text.setMinWidth(0);
        text.setMinHeight(Region.USE_PREF_SIZE);
        text.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(text, Priority.ALWAYS);
        double lost = moment.money();
        Label money = new Label((lost > 0 ? "−" : "+") + words.display().text(Show.MONEY, Math.abs(lost)));
        money.getStyleClass().addAll("strong", lost > 0 ? "share-lost-text" : "share-gained-text");
        money.setMinWidth(Region.USE_PREF_SIZE);
        HBox box = new HBox(10, IconNode.of(MomentWords.icon(moment.what()), 20), when, text, money);
        box.setAlignment(Pos.CENTER_LEFT);
        Button row = new Button();
        row.setId("moment-" + number);
        row.getStyleClass().add("moment-row");
        row.setGraphic(box);
        row.setMaxWidth(Double.MAX_VALUE);
        row.setMinWidth(0);
        box.prefWidthProperty().bind(row.widthProperty().subtract(18));
        box.minHeightProperty().bind(box.prefHeightProperty());
        row.setAccessibleText(day + " " + clock + ". " + said + " " + words.say("moments.go"));
        row.setOnAction(e -> go.accept(moment));
        return row;
    }
}
