package provingyard.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import provingyard.drill.Card;
import provingyard.drill.Form;
import provingyard.scenario.Scenario;

/** Before a card: while it is dealt how far that is; then what the owner says, what is done already, and the goal. */
final class DrillBrief extends DrillSheet {

    /** What can be done from here. */
    interface Acts {

        /** Plays the card, with explanations or without. */
        void start(CallModel.Mode mode);

        /** Goes on without watching the example. */
        void skip();

        /** Ends the session. */
        void end();
    }

    private final int number;
    private final int of;
    private final Scenario planned;
    private final Acts acts;
    private final ProgressBar bar = new ProgressBar(0);
    private Card card;
    private CallModel.Mode mode;

    DrillBrief(int number, int of, Scenario planned, Words words, Acts acts) {
        super("drill-brief", words);
        this.number = number;
        this.of = of;
        this.planned = planned;
        this.acts = acts;
        bar.setMaxWidth(Double.MAX_VALUE);
        fill();
    }

    /** The card is so far. */
    void at(double share) {
        bar.setProgress(share);
    }

    /** The card is dealt. */
    void dealt(Card next, CallModel.Mode usual) {
        card = next;
        mode = usual;
        fill();
        Button start = (Button) lookup("#drill-start");
        start.requestFocus();
    }

    @Override
    void fill() {
        Label which = plain(words.say("drill.card", number, of), "small", "strong", "ink2");
        Button end = button("drill-end", "drill.end", acts::end);
        end.setCancelButton(true);
        if (card == null) {
            String site = words.say(planned.title());
            told.getChildren().setAll(which, label(words.say("drill.dealingNext", number, of, site)), bar);
            foot.getChildren().setAll(gap(), end);
            return;
        }
        boolean example = card.slot().form() == Form.EXAMPLE;
        Label form = plain(sayings.form(card), "practice-chip");
        HBox head = new HBox(12, which, gap(), form);
        head.setAlignment(Pos.CENTER_LEFT);
        Scenario site = card.site().scenario();
        told.getChildren()
                .setAll(
                        head,
                        label(words.say("call.title", words.say(site.title())), "page-title"),
                        label("“" + words.say(site.call().complaint()) + "”", "call-complaint"),
                        label(sayings.task(card), "ink2"));
        foot.getChildren().setAll(end, gap());
        if (example) {
            foot.getChildren()
                    .addAll(
                            button("drill-skip", "drill.skip", acts::skip),
                            main("drill-start", "drill.watch", () -> acts.start(mode)));
        } else {
            told.getChildren().addAll(signed(IconNode.of("flag", 16), label(sayings.goal(card), "strong")), modes());
            foot.getChildren().add(main("drill-start", "drill.start", () -> acts.start(mode)));
        }
    }

    private VBox modes() {
        List<Segments.Choice<CallModel.Mode>> choices = new ArrayList<>();
        for (CallModel.Mode each : CallModel.Mode.values()) {
            choices.add(new Segments.Choice<>(each, each.name(), words.live("drill.explain." + each.name()), null));
        }
        Label why = label("", "small", "ink2");
        Consumer<CallModel.Mode> tell = m -> why.setText(words.say("drill.explainWhy." + m.name()));
        tell.accept(mode);
        Segments<CallModel.Mode> segments = new Segments<>("drill-mode", choices, mode, next -> {
            mode = next;
            tell.accept(next);
        });
        HBox row = new HBox(12, plain(words.say("drill.explain"), "strong"), segments);
        row.setAlignment(Pos.CENTER_LEFT);
        return new VBox(6, row, why);
    }
}
