package provingyard.ui;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import provingyard.picture.Charts;
import provingyard.picture.Theme;
import provingyard.quantity.Show;
import provingyard.score.Loss;
import provingyard.season.Ledger;
import provingyard.season.Outcome;
import provingyard.study.Commitment;
import provingyard.study.Debrief;
import provingyard.study.Shares;
import provingyard.study.Standing;

/** The debrief's head: points between the clock alone and the mark, the season in five figures, and the answer given. */
final class DebriefScore {

    /** USD under which a choice counts as the mark's. */
    private static final double LEAST = 0.5;

    private final Words words;
    private final Theme theme;
    private final double lettering;

    DebriefScore(Words words, Theme theme, double lettering) {
        this.words = words;
        this.theme = theme;
        this.lettering = lettering;
    }

    /**
     * Points, figures and the bar.
     *
     * @param best what the best for just this weather would lose, USD, where it was looked for
     */
    Node score(Debrief debrief, Optional<Double> best) {
        Standing standing = debrief.standing();
        VBox right = new VBox(8, figures(debrief));
        HBox.setHgrow(right, Priority.ALWAYS);
        right.setMinWidth(0);
        if (standing.score().points() == null) {
            Label none = new Label(words.say("result.noScore"));
            none.setId("score");
            none.getStyleClass().add("section-title");
            Label why =
                    new Label(words.say("reason." + standing.score().reason().name()));
            why.setWrapText(true);
            why.setMinHeight(Region.USE_PREF_SIZE);
            right.getChildren().add(0, new VBox(2, none, why));
            return right;
        }
        right.getChildren()
                .add(new ChartPane(
                        (s, w) -> Charts.score(s, w, bar(standing, best), theme), lettering, spoken(standing)));
        if (standing.score().outside()) {
            Label note = new Label(words.say(standing.score().points() > 100 ? "result.better" : "result.worse"));
            note.setWrapText(true);
            note.setMinHeight(Region.USE_PREF_SIZE);
            right.getChildren().add(note);
        }
        HBox box = new HBox(24, points(standing), right);
        box.setAlignment(Pos.TOP_LEFT);
        return box;
    }

    private VBox points(Standing standing) {
        Label number = new Label(Integer.toString(standing.score().shown()));
        number.setId("score");
        number.getStyleClass().add("score-number");
        number.setMinWidth(Region.USE_PREF_SIZE);
        number.setMinHeight(Region.USE_PREF_SIZE);
        Label of = new Label(words.say("debrief.points"));
        of.getStyleClass().add("ink2");
        of.setMinWidth(Region.USE_PREF_SIZE);
        VBox box = new VBox(number, of);
        box.getStyleClass().add("score-box");
        return box;
    }

    private String spoken(Standing standing) {
        return standing.score().shown()
                + " "
                + words.say(
                        "result.points",
                        money(standing.clock().total()),
                        money(standing.mark().orElseThrow().total()));
    }

    private Charts.Score bar(Standing standing, Optional<Double> best) {
        double clock = standing.clock().total();
        double mark = standing.mark().orElseThrow().total();
        double gap = Math.max(1e-9, clock - mark);
        return new Charts.Score(
                mark(0, "result.clock", clock),
                mark(
                        standing.score().points() / 100,
                        "result.you",
                        standing.trainee().total()),
                mark(1, "result.mark", mark),
                best.map(b -> new Charts.ScoreMark(
                                (clock - b) / gap, words.say("debrief.best"), words.say("debrief.lost", money(b))))
                        .orElse(null));
    }

    private Charts.ScoreMark mark(double share, String name, double loss) {
        return new Charts.ScoreMark(share, words.say(name), words.say("debrief.lost", money(loss)));
    }

    private FlowPane figures(Debrief debrief) {
        FlowPane row = new FlowPane(18, 2);
        row.setMinWidth(0);
        row.setPrefWrapLength(200);
        row.getChildren().addAll(sayings(debrief).stream().map(Label::new).toList());
        return row;
    }

    private List<String> sayings(Debrief debrief) {
        Outcome outcome = debrief.season().outcome();
        List<String> all = new ArrayList<>();
        Ledger.Ice ice = outcome.ledger().ice();
        all.add(words.say(
                "debrief.ice",
                words.display().text(Show.ICE, ice.areaHoursInTraffic()),
                Integer.toString(ice.mornings())));
        Outcome.Leaks leaks = outcome.leaks();
        all.add(words.say(
                "debrief.leaks",
                Integer.toString(leaks.happened()),
                Integer.toString(leaks.found()),
                Integer.toString(leaks.missed())));
        all.add(words.say("debrief.alarms", Integer.toString(leaks.falseAlarms())));
        Loss loss = debrief.standing().trainee();
        all.add(words.say("debrief.dry", money(loss.money(Loss.Kind.DRY_PLANTS) + loss.money(Loss.Kind.DEAD_PLANTS))));
        return all;
    }

    /** What the trainee said they would change, beside what it really cost; empty where they were not asked. */
    Optional<Node> answer(Debrief debrief) {
        return debrief.commitment().map(said -> answer(said, debrief.shares()));
    }

    private Node answer(Commitment said, Optional<Shares> shares) {
        String name = said.choice() == null
                ? words.say("commit.nothing")
                : words.say("choice." + said.choice().name());
        Label own = wrapped(
                said.why().isEmpty() ? words.say("answer.said", name) : words.say("answer.saidWhy", name, said.why()));
        own.setId("answer-said");
        Label computed = wrapped(shares.map(s -> computed(said, s)).orElseGet(() -> words.say("answer.wait")));
        computed.setId("answer-computed");
        computed.getStyleClass().add("strong");
        VBox box = new VBox(2, own, computed);
        box.getStyleClass().add("answer");
        return box;
    }

    private String computed(Commitment said, Shares shares) {
        Optional<Shares.Share> most = shares.shares().stream()
                .filter(s -> s.cost().money() > LEAST)
                .max(Comparator.comparingDouble(s -> s.cost().money()));
        if (most.isEmpty()) {
            return words.say("answer.none");
        }
        String worst = words.say("choice." + most.get().choice().name());
        String cost = money(most.get().cost().money());
        if (most.get().choice() == said.choice()) {
            return words.say("answer.right", worst, cost);
        }
        Optional<Shares.Share> named = shares.shares().stream()
                .filter(s -> s.choice() == said.choice())
                .findFirst();
        if (named.isEmpty()) {
            return words.say("answer.missed", worst, cost);
        }
        double own = named.get().cost().money();
        return words.say(
                own < 0 ? "answer.gained" : "answer.other",
                words.say("choice." + said.choice().name()),
                money(Math.abs(own)),
                worst,
                cost);
    }

    private static Label wrapped(String text) {
        Label label = new Label(text);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        return label;
    }

    private String money(double usd) {
        return words.display().text(Show.MONEY, usd);
    }
}
