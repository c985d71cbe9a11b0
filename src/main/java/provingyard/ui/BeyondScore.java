package provingyard.ui;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import provingyard.quantity.Show;
import provingyard.score.Loss;
import provingyard.study.Challenger;
import provingyard.study.Debrief;
import provingyard.study.Hindsight;
import provingyard.study.Mark;
import provingyard.study.MarkSearch;
import provingyard.study.MarkStore;
import provingyard.study.Progress;

/**
 * What is worked out beyond a season's score when the trainee asks: the mark where none is known, the best for just this
 * weather, and the trial of a season that was better than the mark.
 */
final class BeyondScore extends VBox {

    /** Points from which a season was better than the mark. */
    private static final double BEAT = 100.5;

    private final YardModel model;
    private final Words words;
    private final Supplier<Debrief> debrief;
    private final Consumer<Mark> markFound;
    private final Runnable bestFound;
    private final WorkBox search;
    private final WorkBox hindsight;
    private final WorkBox challenge;
    private final Label challenged = new Label();
    private Optional<Double> best = Optional.empty();

    /**
     * Nothing is worked out yet.
     *
     * @param debrief the one shown
     * @param markFound told a mark that was looked for
     * @param bestFound told when {@link #best()} is known
     */
    BeyondScore(
            YardModel model,
            Words words,
            Supplier<Debrief> debrief,
            Consumer<Mark> markFound,
            Runnable bestFound,
            Consumer<Throwable> onFailure) {
        super(8);
        this.model = model;
        this.words = words;
        this.debrief = debrief;
        this.markFound = markFound;
        this.bestFound = bestFound;
        search = new WorkBox(words, "search-mark", "result.search", this::searchMark, onFailure);
        hindsight = new WorkBox(words, "search-best", "debrief.searchBest", this::searchBest, onFailure);
        challenge = new WorkBox(words, "challenge", "challenge.try", this::challenge, onFailure);
        challenged.setId("challenged");
        challenged.setWrapText(true);
        challenged.getStyleClass().add("strong");
        challenged.setMinHeight(Region.USE_PREF_SIZE);
        challenged.managedProperty().bind(challenged.textProperty().isNotEmpty());
    }

    /** What the best for just this weather loses, USD, once it was looked for. */
    Optional<Double> best() {
        return best;
    }

    /** Another season is debriefed. */
    void forget() {
        best = Optional.empty();
        challenged.setText("");
    }

    /** Offers what fits the debrief; practice is not tried against the mark. */
    void offer(Debrief now, boolean practice) {
        getChildren().clear();
        if (now.mark().isEmpty()) {
            getChildren().add(search);
            return;
        }
        Double points = now.standing().score().points();
        if (points != null && points > BEAT && !practice) {
            getChildren().add(celebration());
        }
        if (points != null && best.isEmpty()) {
            getChildren().add(hindsight);
        }
    }

    private VBox celebration() {
        Label said = new Label(words.say("challenge.said"));
        said.setWrapText(true);
        said.setMinHeight(Region.USE_PREF_SIZE);
        said.setGraphic(IconNode.of("ok", 18));
        VBox box = new VBox(8, said, challenge, challenged);
        box.setId("celebrate");
        box.getStyleClass().add("celebrate");
        return box;
    }

    private Runnable searchMark(Progress progress) {
        Mark mark = MarkSearch.search(model.site(), progress);
        boolean kept = MarkStore.save(mark);
        return () -> {
            if (!kept) {
                Notice.show(getScene(), words.say(model.scenario().title()), words.say("result.notKept"));
            }
            markFound.accept(mark);
        };
    }

    private Runnable searchBest(Progress progress) {
        Debrief now = debrief.get();
        Loss loss = Hindsight.search(model.site(), now.mark().orElseThrow(), progress)
                .loss();
        // The trainee's own season may be better than all that was tried.
        double least = Math.min(loss.total(), now.standing().trainee().total());
        return () -> {
            best = Optional.of(least);
            bestFound.run();
        };
    }

    private Runnable challenge(Progress progress) {
        Debrief now = debrief.get();
        Challenger tried = Challenger.of(
                model.site(), now.mark().orElseThrow(), now.season().setUp(), progress);
        boolean kept = tried.won().isPresent()
                && MarkStore.keepChallenger(model.site(), tried.won().get());
        String key = !tried.wins() ? "challenge.stays" : kept ? "challenge.won" : "challenge.notKept";
        return () -> challenged.setText(words.say(
                key,
                words.display().text(Show.MONEY, tried.meanChallenger()),
                words.display().text(Show.MONEY, tried.meanMark()),
                words.display().text(Show.MONEY, tried.needed())));
    }

    /** Stops what still runs. */
    void dispose() {
        search.dispose();
        hindsight.dispose();
        challenge.dispose();
    }
}
