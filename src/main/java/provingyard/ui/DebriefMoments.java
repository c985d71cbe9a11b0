package provingyard.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
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

    private MomentRow row(Moment moment, int number) {
        MomentRow row = new MomentRow(words, sayings, moment);
        row.setId("moment-" + number);
        row.onAct(() -> go.accept(moment));
        return row;
    }
}
