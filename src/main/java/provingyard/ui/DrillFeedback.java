package provingyard.ui;

import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import provingyard.call.Call;
import provingyard.call.CallReview;
import provingyard.call.FieldTest;
import provingyard.call.ReviewedTest;
import provingyard.diagnosis.CaseScore;
import provingyard.diagnosis.Declaration;
import provingyard.drill.Card;
import provingyard.drill.Goal;

/** After a card: what was wrong, whether it was found, time and evidence against the goal, and the test that would have told most. */
final class DrillFeedback extends DrillSheet {

    /** What can be done from here. */
    interface Acts {

        /** Goes on to the next card, or the session's end. */
        void next();

        /** Shows the whole debrief. */
        void debrief();
    }

    private final int number;
    private final int of;
    private final Card card;
    private final Call call;
    private final CaseScore score;
    private final CallDebriefWords names;
    private final Acts acts;
    private final Label better = label("", "ink2");
    private CallReview review;
    private FieldTest missing;

    DrillFeedback(int number, int of, Card card, Call call, CaseScore score, Words words, Acts acts) {
        super("drill-feedback", words);
        this.number = number;
        this.of = of;
        this.card = card;
        this.call = call;
        this.score = score;
        this.acts = acts;
        names = new CallDebriefWords(words, call.site());
        better.setId("drill-better");
        fill();
    }

    /**
     * The tests have been looked at.
     *
     * @param best the test that should have come next, where something was stated too early; else null
     */
    void reviewed(CallReview next, FieldTest best) {
        review = next;
        missing = best;
        better.setText(betterTest());
    }

    @Override
    void fill() {
        Declaration declared = call.declaration();
        boolean right = declared.hit() == Declaration.Hit.RIGHT;
        boolean met = card.goal().met(declared, score);
        Label verdict = label(words.say("drill.found." + declared.hit().name()), "drill-verdict");
        verdict.setId("drill-verdict");
        HBox head = signed(sign(right), verdict);
        Label chip = plain(words.say(met ? "drill.met" : "drill.missed"), "strong");
        chip.setGraphic(sign(met));
        head.getChildren().add(chip);
        told.getChildren()
                .setAll(
                        label(words.say("drill.card", number, of), "small", "strong", "ink2"),
                        head,
                        label(
                                words.say(
                                        "drill.wasWrong",
                                        names.suspect(call.deal().answer(call.site()))),
                                "strong"));
        if (!right) {
            told.getChildren().add(label(words.say("drill.youStated", names.suspect(declared.repairClass()))));
        }
        better.setText(betterTest());
        told.getChildren().addAll(checks(declared), label(words.say("drill.better"), "section-title"), better);
        Button next = main("drill-next", number == of ? "drill.toEnd" : "drill.nextCard", acts::next);
        foot.getChildren().setAll(button("drill-debrief", "drill.debrief", acts::debrief), gap(), next);
    }

    void focusNext() {
        lookup("#drill-next").requestFocus();
    }

    private GridPane checks(Declaration declared) {
        Goal goal = card.goal();
        GridPane grid = new GridPane();
        grid.setHgap(14);
        grid.setVgap(7);
        check(
                grid,
                "drill.check.minutes",
                sayings.say("drill.ofGoal", sayings.minutes(score.minutes()), sayings.minutes(goal.minutes())),
                score.minutes() <= goal.minutes());
        check(
                grid,
                "drill.check.evidence",
                sayings.say("drill.atLeast", names.percent(declared.probability()), sayings.percent(goal.evidence())),
                declared.probability() >= goal.evidence());
        if (!score.unsafe().isEmpty()) {
            check(grid, "drill.check.unsafe", sayings.say("drill.unsafeAct"), false);
        }
        grid.addRow(
                grid.getRowCount(),
                new Label(),
                plain(words.say("drill.check.points"), "ink2"),
                plain(words.say("drill.points", words.display().plain(Math.rint(score.total()), 0)), "value"));
        return grid;
    }

    private void check(GridPane grid, String key, String text, boolean met) {
        Label value = plain(text, "value");
        value.setAccessibleText(text + ", " + words.say(met ? "drill.ok" : "drill.not"));
        grid.addRow(grid.getRowCount(), sign(met), plain(words.say(key), "ink2"), value);
    }

    private String betterTest() {
        if (review == null) {
            return words.say("drill.betterLooking");
        }
        if (missing != null) {
            boolean none = score.tests() == 0 || call.notes().size() <= card.done();
            return words.say(none ? "drill.betterNoTest" : "drill.betterNext", names.name(missing));
        }
        Optional<ReviewedTest> worst = review.worst().stream()
                .filter(t -> t.number() > card.done() && t.better().isPresent())
                .findFirst();
        if (worst.isPresent()) {
            ReviewedTest test = worst.get();
            ReviewedTest.Better best = test.better().orElseThrow();
            return words.say(
                    "drill.betterAt",
                    test.number(),
                    names.name(test.note().test()),
                    names.name(best.test()),
                    names.why(test, best));
        }
        return words.say("drill.betterNone");
    }
}
