package provingyard.ui;

import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import provingyard.diagnosis.CaseScore;

/** The end of a call: what was wrong, the score with the lines that gave and took points, and what to talk about. */
final class CallResult extends VBox {

    CallResult(CallModel model, Words words, CallWords texts, CaseScore score, Runnable leave) {
        super(10);
        setId("call-result");
        getStyleClass().add("call-result");
        String truth = texts.finding(model.call().deal().answer(model.site()));
        Label title = label(words.say("call.result.title"), "page-title");
        Label total = new Label(words.display().plain(Math.rint(score.total()), 0));
        total.setId("call-score");
        total.getStyleClass().add("score-number");
        Label of = label(words.say("call.result.of"), "ink2");
        HBox number = new HBox(10, total, of);
        number.setAlignment(Pos.BASELINE_LEFT);
        getChildren().addAll(title, label(words.say("call.result.truth", truth), "strong"), number);
        score.unsafe().forEach(h -> {
            HBox row = new HBox(8, IconNode.of("alarm", 16), label(texts.diagnosis(h.breachKey()), "strong"));
            row.getStyleClass().add("wrong");
            getChildren().add(row);
        });
        for (CaseScore.Line line : score.lines()) {
            Label what = label(texts.diagnosis(line.kind().key()), "ink2");
            HBox.setHgrow(what, Priority.ALWAYS);
            what.setMaxWidth(Double.MAX_VALUE);
            Label points = new Label(words.display().plain(line.points(), 1));
            points.getStyleClass().add("strong");
            points.setMinWidth(Region.USE_PREF_SIZE);
            getChildren().add(new HBox(16, what, points));
        }
        getChildren().add(new Hairline());
        score.flags().forEach(f -> getChildren().add(label(texts.diagnosis(f.key()), "ink2")));
        Button route = new Button(words.say("call.result.leave"));
        route.setId("call-leave");
        route.getStyleClass().addAll("main", "tall");
        route.setOnAction(e -> leave.run());
        HBox foot = new HBox(route);
        foot.setAlignment(Pos.CENTER_RIGHT);
        getChildren().add(foot);
    }

    private static Label label(String text, String style) {
        Label label = new Label(text);
        label.getStyleClass().add(style);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        return label;
    }
}
