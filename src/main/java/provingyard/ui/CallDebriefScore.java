package provingyard.ui;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import provingyard.call.CallReview;
import provingyard.diagnosis.CaseScore;

/** The score of a service call: what was unsafe first, then the points, what gave and what took them. */
final class CallDebriefScore {

    private record Given(CaseScore.Kind kind, double most) {}

    private static final List<Given> GIVEN = List.of(
            new Given(CaseScore.Kind.ANSWER, 45),
            new Given(CaseScore.Kind.TIME, 25),
            new Given(CaseScore.Kind.PROCESS, 20),
            new Given(CaseScore.Kind.ECONOMY, 10));

    /** Points that are worth a word. */
    private static final double WORTH = 0.5;

    private static final double BAR = 8;

    private final CallDebriefWords sayings;
    private final CallReview review;

    CallDebriefScore(CallDebriefWords sayings, CallReview review) {
        this.sayings = sayings;
        this.review = review;
    }

    /** All of it, with what the trainee said beforehand. */
    VBox box(CallDebriefModel.Said said) {
        VBox box = new VBox(10);
        if (!review.score().unsafe().isEmpty()) {
            box.getChildren().add(unsafe());
        }
        box.getChildren().addAll(points(), below());
        sayings.said(review, said).ifPresent(text -> {
            Label label = wrapped(text);
            label.setId("call-debrief-answer");
            label.getStyleClass().add("call-debrief-answer");
            label.setMaxWidth(Double.MAX_VALUE);
            box.getChildren().add(label);
        });
        return box;
    }

    private VBox unsafe() {
        Label title = new Label(sayings.say("review.unsafe.title"));
        title.getStyleClass().addAll("panel-title");
        title.setGraphic(IconNode.of("alarm", 18));
        title.getStyleClass().add("sign-alarm");
        VBox box = new VBox(4, title);
        box.setId("call-debrief-unsafe");
        box.getStyleClass().add("wrong");
        List<String> lines = sayings.unsafe(review);
        for (int i = 0; i < lines.size(); i++) {
            Label line = wrapped(lines.get(i));
            if (i == lines.size() - 1) {
                line.getStyleClass().addAll("small", "ink2");
            }
            box.getChildren().add(line);
        }
        return box;
    }

    private HBox points() {
        Label number = new Label(sayings.whole(Math.rint(review.score().total())));
        number.setId("call-debrief-score");
        number.getStyleClass().add("score-number");
        number.setMinWidth(Region.USE_PREF_SIZE);
        Label of = new Label(sayings.say("review.points"));
        of.getStyleClass().addAll("small", "ink2");
        of.setMinWidth(Region.USE_PREF_SIZE);
        VBox total = new VBox(number, of);
        total.getStyleClass().add("call-debrief-total");
        HBox box = new HBox(18, total);
        for (Given given : GIVEN) {
            VBox line = line(given);
            HBox.setHgrow(line, Priority.ALWAYS);
            line.setPrefWidth(0);
            line.setMinWidth(0);
            box.getChildren().add(line);
        }
        return box;
    }

    private double of(CaseScore.Kind kind) {
        return review.score().lines().stream()
                .filter(l -> l.kind() == kind)
                .mapToDouble(CaseScore.Line::points)
                .sum();
    }

    private VBox line(Given given) {
        double points = of(given.kind());
        Label name = wrapped(sayings.say("review.line." + given.kind().name()));
        name.getStyleClass().add("strong");
        Region well = new Region();
        well.getStyleClass().add("score-well");
        Region full = new Region();
        full.getStyleClass().add("score-full");
        full.setMaxHeight(BAR);
        StackPane bar = new StackPane(well, full);
        bar.setAlignment(Pos.CENTER_LEFT);
        bar.setMinHeight(BAR);
        bar.setPrefHeight(BAR);
        bar.setMaxHeight(BAR);
        full.maxWidthProperty().bind(bar.widthProperty().multiply(Math.max(0.001, points / given.most())));
        Label value = wrapped(of(given));
        Label hint = wrapped(hint(given.kind()));
        hint.getStyleClass().addAll("small", "ink2");
        return new VBox(4, name, bar, value, hint);
    }

    private String hint(CaseScore.Kind kind) {
        CaseScore score = review.score();
        return switch (kind) {
            case ANSWER ->
                sayings.say(
                        "review.hint.ANSWER",
                        sayings.percent(review.declaration().probability()));
            case TIME ->
                sayings.say(
                        "review.hint.TIME",
                        sayings.wholeMinutes(score.minutes()),
                        sayings.wholeMinutes(review.reference().minutes()));
            case PROCESS -> {
                double gain = 0;
                double best = 0;
                for (var test : review.yours().tests()) {
                    gain += test.step().gain();
                    best += test.judged() ? test.step().bestBits() : 0;
                }
                yield sayings.say("review.hint.PROCESS", sayings.bits(gain), sayings.bits(best));
            }
            default -> sayings.say("review.hint.ECONOMY", score.redundant());
        };
    }

    /** What took points, and the water. */
    private VBox below() {
        List<Node> taken = new ArrayList<>();
        for (String text : lost()) {
            Label label = wrapped(text);
            label.getStyleClass().add("call-debrief-taken");
            taken.add(label);
        }
        VBox box = new VBox(6);
        if (!taken.isEmpty()) {
            FlowPane flow = new FlowPane(8, 6);
            flow.getChildren().setAll(taken);
            flow.setMinWidth(0);
            box.getChildren().add(flow);
        }
        box.getChildren().add(wrapped(water()));
        return box;
    }

    private List<String> lost() {
        return review.score().lines().stream()
                .filter(l -> GIVEN.stream().noneMatch(g -> g.kind() == l.kind()))
                .filter(l -> Math.abs(l.points()) >= WORTH)
                .map(l -> sayings.say("review.taken." + l.kind().name(), sayings.signed(l.points())))
                .toList();
    }

    private String water() {
        return sayings.say(
                "review.water",
                sayings.litres(review.yours().litres()),
                sayings.litres(review.reference().litres()));
    }

    /** What gave points: its name, why, and how many of how many. */
    List<List<String>> given() {
        return GIVEN.stream()
                .map(g -> List.of(sayings.say("review.line." + g.kind().name()), hint(g.kind()), of(g)))
                .toList();
    }

    private String of(Given given) {
        return sayings.say("review.of", sayings.whole(Math.rint(of(given.kind()))), sayings.whole(given.most()));
    }

    /** What took points, and the water. */
    List<String> taken() {
        List<String> all = new ArrayList<>(lost());
        all.add(water());
        return all;
    }

    private static Label wrapped(String text) {
        Label label = new Label(text);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        return label;
    }
}
