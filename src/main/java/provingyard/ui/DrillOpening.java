package provingyard.ui;

import javafx.scene.control.Button;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;
import provingyard.diagnosis.Hazard;
import provingyard.drill.Deck;
import provingyard.drill.Progress;
import provingyard.drill.Standing;
import provingyard.scenario.Text;
import provingyard.text.Texts;

/** Before a session: what it is, where the learner stands, the goal; meanwhile the first card is dealt. */
final class DrillOpening extends DrillSheet {

    private final Deck deck;
    private final Progress progress;
    private final Text first;
    private final ProgressBar bar = new ProgressBar(0);
    private final Button begin;
    private final Runnable back;

    /**
     * An opening.
     *
     * @param first name of the yard whose card comes first
     */
    DrillOpening(Deck deck, Progress progress, Text first, Words words, Runnable begun, Runnable back) {
        super("drill-opening", words);
        this.deck = deck;
        this.progress = progress;
        this.first = first;
        this.back = back;
        begin = main("drill-begin", "drill.begin", begun);
        begin.setDisable(true);
        // Whoever presses Enter too early has not cancelled.
        setFocusTraversable(true);
        fill();
    }

    @Override
    void fill() {
        HBox head = new HBox(12, IconNode.of("deck", 30), label(words.say("drill.title"), "page-title"));
        head.setAlignment(javafx.geometry.Pos.CENTER_LEFT);
        Texts diagnosis = Texts.of("diagnosis", words.language());
        HBox caution = signed(
                IconNode.of("caution", 16),
                label(diagnosis.say(Hazard.LOCAL_RULES) + " " + diagnosis.say(Hazard.NO_LICENCE), "small"));
        caution.getStyleClass().add("caution");
        told.getChildren()
                .setAll(
                        head,
                        label(words.say("drill.what"), "ink2"),
                        signed(IconNode.of("flag", 16), label(sayings.rule(), "strong")),
                        label(words.say("drill.families"), "section-title"),
                        new DrillFamilies(progress, sayings),
                        label(
                                words.say("drill.masteryIs", Standing.ENOUGH, Standing.LAST, Standing.GOOD),
                                "small",
                                "ink2"),
                        caution);
        begin.setText(words.say("drill.begin"));
        Button cancel = button("drill-cancel", "shell.cancel", back);
        cancel.setCancelButton(true);
        foot.getChildren()
                .setAll(
                        bar,
                        label(
                                words.say(
                                        "drill.session",
                                        deck.session(),
                                        deck.slots().size()),
                                "small",
                                "ink2"),
                        gap(),
                        cancel,
                        begin);
        bar.setAccessibleText(words.say("drill.dealing", words.say(first)));
    }

    /** The first card is so far. */
    void at(double share, boolean ready) {
        bar.setProgress(share);
        bar.setVisible(!ready);
        bar.setManaged(!ready);
        if (ready && begin.isDisable()) {
            begin.setDisable(false);
            setFocusTraversable(false);
            begin.requestFocus();
        }
    }
}
