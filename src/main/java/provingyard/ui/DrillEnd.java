package provingyard.ui;

import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import provingyard.drill.Card;
import provingyard.drill.Form;
import provingyard.drill.Progress;
import provingyard.drill.Result;

/** The end of a session: what came of each card, and where the learner stands now. */
final class DrillEnd extends DrillSheet {

    /** A card that was played, and what came of it. */
    record Played(Card card, Result result) {}

    private final List<Played> played;
    private final Progress progress;
    private final Runnable again;
    private final Runnable back;

    DrillEnd(List<Played> played, Progress progress, Words words, Runnable again, Runnable back) {
        super("drill-over", words);
        this.played = List.copyOf(played);
        this.progress = progress;
        this.again = again;
        this.back = back;
        fill();
    }

    @Override
    void fill() {
        long worked =
                played.stream().filter(p -> p.result().form() != Form.EXAMPLE).count();
        long met = played.stream()
                .filter(p -> p.result().form() != Form.EXAMPLE && p.result().met())
                .count();
        told.getChildren()
                .setAll(
                        label(words.say("drill.over"), "page-title"),
                        label(played.isEmpty() ? words.say("drill.none") : words.say("drill.overCount", met, worked)),
                        rows(),
                        label(words.say("drill.families"), "section-title"),
                        new DrillFamilies(progress, sayings));
        Button cancel = main("drill-route", "drill.toRoute", back);
        cancel.setCancelButton(true);
        foot.getChildren().setAll(button("drill-again", "drill.again", again), gap(), cancel);
    }

    void focusBack() {
        lookup("#drill-route").requestFocus();
    }

    private GridPane rows() {
        GridPane grid = new GridPane();
        grid.setHgap(14);
        grid.setVgap(6);
        for (Played one : played) {
            boolean example = one.result().form() == Form.EXAMPLE;
            CallDebriefWords names = new CallDebriefWords(words, one.card().site());
            String truth = names.suspect(one.card().deal().answer(one.card().site()));
            Label what = label(words.say(
                    "drill.row." + one.result().form().name(), one.card().slot().number(), truth));
            GridPane.setHgrow(what, Priority.ALWAYS);
            String came = example
                    ? words.say("drill.seen")
                    : words.say(
                            "drill.points", words.display().plain(one.result().points(), 0));
            Label points = plain(came, "strong");
            points.setAccessibleText(
                    came + (example ? "" : ", " + words.say(one.result().met() ? "drill.met" : "drill.missed")));
            grid.addRow(
                    grid.getRowCount(),
                    example ? IconNode.of("look", 16) : sign(one.result().met()),
                    what,
                    points);
        }
        return grid;
    }
}
