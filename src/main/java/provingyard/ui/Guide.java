package provingyard.ui;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javafx.animation.FadeTransition;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.util.Duration;
import provingyard.scenario.SensorKind;
import provingyard.season.SeasonEvent;
import provingyard.season.Siting;
import provingyard.setup.Placement;
import provingyard.setup.SetUp;

/** Shows a yard's hints and its annotated example, and tells the learner's book what was followed. */
final class Guide {

    /** Name under which a learner's file remembers that the example was seen. */
    static final String EXAMPLE = "example";

    private static final double BEAT = 0.5;
    private static final double MARGIN = 12;

    private final YardScreen over;
    private final YardModel model;
    private final Words words;
    private final Shell shell;
    private final Hints hints;
    private final HintCard card;
    private final Timeline beat = new Timeline(new KeyFrame(Duration.seconds(BEAT), e -> beat()));
    private final Map<String, Long> placedAt = new HashMap<>();
    private final Set<String> tripped = new HashSet<>();
    private final Set<String> inSpray = new HashSet<>();
    private SetUp sited;
    private int eventsSeen;
    private double seconds;
    private Integer score;
    private Hints.Hint shown;
    private Example example;

    /**
     * A guide over a yard's screen.
     *
     * @param rained whether the learner's first yard was opened at a run after rain
     */
    Guide(YardScreen over, YardModel model, Words words, Shell shell, boolean rained) {
        this.over = over;
        this.model = model;
        this.words = words;
        this.shell = shell;
        hints = new Hints(shell.book().current().followed(), rained);
        card = new HintCard(words, this::showExample, () -> hints.dismiss(seconds));
        StackPane.setAlignment(card, Pos.BOTTOM_CENTER);
        beat.setCycleCount(Timeline.INDEFINITE);
        beat.play();
        if (rained) {
            beat();
        }
    }

    /** The season that is over brought so many points; null for none. */
    void scored(Integer points) {
        score = points;
    }

    private void beat() {
        seconds += BEAT;
        if (example != null || !shell.book().guided()) {
            return;
        }
        if (over.covered()) {
            // A sheet has the attention; its hint waits.
            show(null);
            return;
        }
        Optional<Hints.Hint> due = hints.look(seen());
        for (Hints.Hint followed : hints.takeFollowed()) {
            shell.book().change(l -> l.following(followed.key()));
        }
        show(due.orElse(null));
        place();
    }

    private Hints.Seen seen() {
        SeasonPlayer.Frame frame = model.frameProperty().get();
        SetUp setUp = model.setUp();
        if (!setUp.equals(sited)) {
            sited = setUp;
            site(setUp, frame.snapshot().tick());
        }
        if (frame.events().size() < eventsSeen) {
            // An earlier minute was lived again in another way.
            eventsSeen = 0;
            tripped.clear();
        }
        frame.events().subList(eventsSeen, frame.events().size()).stream()
                .filter(e -> e.kind() == SeasonEvent.Kind.SENSOR_TRIPPED)
                .forEach(e -> tripped.add(e.subject()));
        eventsSeen = frame.events().size();
        if (!frame.over()) {
            score = null;
        }
        return new Hints.Seen(seconds, setUp, inSpray, frame.lived(), placedAt, tripped, score);
    }

    private void site(SetUp setUp, long tick) {
        Siting siting = model.site().siting();
        inSpray.clear();
        placedAt.keySet().removeIf(id -> setUp.sensor(id).isEmpty());
        for (Placement placement : setUp.sensors()) {
            placedAt.putIfAbsent(placement.id(), tick);
            boolean above = placement.kind() != SensorKind.SOIL && placement.kind() != SensorKind.FLOW;
            if (above
                    && siting.facts(siting.place(placement), siting.heightOf(placement))
                            .sprayReach()) {
                inSpray.add(placement.id());
            }
        }
    }

    private void show(Hints.Hint hint) {
        if (hint == shown) {
            return;
        }
        shown = hint;
        over.getChildren().remove(card);
        if (hint != null) {
            card.show(hint);
            over.getChildren().add(card);
            appear();
        }
    }

    private void appear() {
        if (shell.still().get()) {
            card.setOpacity(1);
            return;
        }
        FadeTransition fade = new FadeTransition(Duration.millis(160), card);
        fade.setFromValue(0);
        fade.setToValue(1);
        fade.play();
    }

    /** Above the ribbon, wherever that ends. */
    private void place() {
        Region ribbon = (Region) over.lookup("#ribbon");
        double below = ribbon == null ? 0 : ribbon.getHeight();
        StackPane.setMargin(card, new Insets(MARGIN, MARGIN, below + MARGIN, MARGIN));
    }

    /** Begins the annotated example. */
    void showExample() {
        if (example != null) {
            return;
        }
        show(null);
        example = new Example(over, words, this::endExample);
        over.getChildren().add(example);
        over.applyCss();
        over.layout();
        example.focusNext();
    }

    private void endExample() {
        if (example == null) {
            return;
        }
        over.getChildren().remove(example);
        example = null;
        over.lookup("#yard").requestFocus();
        shell.book().change(l -> l.following(EXAMPLE));
    }

    void dispose() {
        beat.stop();
    }
}
