package provingyard.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import javafx.application.Platform;
import provingyard.call.Call;
import provingyard.call.CallReview;
import provingyard.call.FieldTest;
import provingyard.diagnosis.Action;
import provingyard.diagnosis.CaseScore;
import provingyard.diagnosis.Ranked;
import provingyard.diagnosis.Trust;
import provingyard.drill.Card;
import provingyard.drill.Deck;
import provingyard.drill.Form;
import provingyard.drill.Progress;
import provingyard.drill.Result;
import provingyard.scenario.Scenario;

/** The way through a session of the drill deck: opening, card after card with a word after each, and the end. */
final class DrillSession {

    private final List<Scenario> calls;
    private final Words words;
    private final Shell shell;
    private final DrillDealing dealing;
    private final List<DrillEnd.Played> played = new ArrayList<>();
    private final ExecutorService looking = Executors.newSingleThreadExecutor(task -> {
        Thread thread = new Thread(task, "drill-review");
        thread.setDaemon(true);
        return thread;
    });
    private int index = -1;
    private DrillOpening opening;
    private DrillBrief brief;
    private DrillExample example;
    private DrillFeedback feedback;
    private CallScreen screen;
    private CallDebriefScreen debrief;
    private DrillDealing.Ready playing;

    /**
     * A session that has not begun.
     *
     * @param calls all service calls' sites, at least one
     */
    DrillSession(List<Scenario> calls, Words words, Shell shell) {
        this.calls = calls;
        this.words = words;
        this.shell = shell;
        Progress progress = progress();
        long seed = 31L * shell.book().current().id().hashCode();
        List<String> yards = calls.stream().map(Scenario::id).toList();
        Deck deck = Deck.of(seed, progress, progress.sessions() + 1, yards);
        dealing = new DrillDealing(deck, seed, calls, shell::unforeseen, this::changed);
    }

    private Progress progress() {
        return shell.book().current().drill();
    }

    private Scenario site(Deck.Slot slot) {
        return calls.stream()
                .filter(c -> c.id().equals(slot.yard()))
                .findFirst()
                .orElseThrow();
    }

    /** Shows what a session is, while the first card is dealt. */
    void open() {
        Deck deck = dealing.deck();
        opening =
                new DrillOpening(deck, progress(), site(deck.slots().get(0)).title(), words, this::begin, shell::route);
        shell.screen(opening);
        dealing.begin();
    }

    private void begin() {
        shell.book().change(l -> l.drilled(Progress::begun));
        opening = null;
        next();
    }

    private void changed() {
        if (opening != null) {
            opening.at(dealing.share(0), dealing.dealt(0) != null);
        }
        if (brief != null && playing == null) {
            brief.at(dealing.share(index));
            dealt();
        }
    }

    /** Goes on to the next card that could be dealt, or to the end. */
    private void next() {
        clear();
        index++;
        if (index >= dealing.deck().slots().size()) {
            end();
            return;
        }
        Deck.Slot slot = dealing.deck().slots().get(index);
        brief = new DrillBrief(slot.number(), dealing.deck().slots().size(), site(slot), words, new DrillBrief.Acts() {
            @Override
            public void start(CallModel.Mode mode) {
                play(mode);
            }

            @Override
            public void skip() {
                watched();
            }

            @Override
            public void end() {
                if (played.isEmpty()) {
                    shell.route();
                } else {
                    DrillSession.this.end();
                }
            }
        });
        shell.screen(brief);
        dealt();
    }

    private void dealt() {
        Optional<DrillDealing.Ready> ready = dealing.dealt(index);
        if (ready == null) {
            return;
        }
        if (ready.isEmpty()) {
            next();
            return;
        }
        playing = ready.get();
        boolean explains =
                progress().at(playing.card().slot().family()).support().explains();
        brief.dealt(playing.card(), explains ? CallModel.Mode.GUIDED : CallModel.Mode.EXAM);
    }

    private void play(CallModel.Mode mode) {
        Card card = playing.card();
        brief = null;
        if (card.slot().form() == Form.EXAMPLE) {
            example = new DrillExample(card, playing.example(), words, this::watched);
            look();
            shell.screen(example);
            example.begin(shell.still().get());
            return;
        }
        boolean wanted = mode == CallModel.Mode.GUIDED;
        shell.book().change(l -> l.drilled(p -> p.choosing(card.slot().family(), wanted)));
        call(playing.call(), new CallScreen.Setting(mode, false, card.reference()), playing.yard());
    }

    private void watched() {
        result(Result.shown(dealing.deck().session()));
        next();
    }

    private void result(Result result) {
        Card card = playing.card();
        played.add(new DrillEnd.Played(card, result));
        shell.book().change(l -> l.drilled(p -> p.after(card.slot().family(), result)));
    }

    private void call(Call call, CallScreen.Setting setting, YardModel yard) {
        screen = new CallScreen(call, setting, yard, words, shell, this::ended);
        look();
        shell.screen(screen);
    }

    private void ended(CallScreen ended, CaseScore score) {
        boolean practice = ended.setting().practice();
        CallModel.Mode mode = ended.setting().mode();
        Call call = ended.model().call();
        ended.leaveYard();
        screen = null;
        if (practice) {
            debrief(call, true, mode);
            return;
        }
        Card card = playing.card();
        boolean met = card.goal().met(call.declaration(), score);
        int points = (int) Math.rint(score.total());
        result(new Result(card.slot().form(), dealing.deck().session(), points, met));
        int of = dealing.deck().slots().size();
        feedback = new DrillFeedback(card.slot().number(), of, card, call, score, words, new DrillFeedback.Acts() {
            @Override
            public void next() {
                DrillSession.this.next();
            }

            @Override
            public void debrief() {
                DrillSession.this.debrief(call, false, mode);
            }
        });
        shell.screen(feedback);
        feedback.focusNext();
        DrillFeedback asking = feedback;
        looking.execute(() -> review(card, call, asking));
    }

    private void review(Card card, Call call, DrillFeedback asking) {
        try {
            CallReview review = CallReview.of(call, card.reference(), Trust.USUAL);
            FieldTest best = best(card, call);
            Platform.runLater(() -> asking.reviewed(review, best));
        } catch (RuntimeException | Error e) {
            Platform.runLater(() -> shell.unforeseen(e));
        }
    }

    /** The best test at the moment of stating, where the evidence was not enough; else null. */
    private static FieldTest best(Card card, Call call) {
        if (call.declaration().probability() >= card.goal().evidence()) {
            return null;
        }
        int tests = (int) call.notes().stream()
                .takeWhile(n -> n.test().action().kind() != Action.Kind.REPAIR)
                .count();
        List<Ranked> ranked = call.fork(tests).ranked();
        return ranked.isEmpty()
                ? null
                : call.site().test(ranked.get(0).action().id()).orElse(null);
    }

    private void debrief(Call call, boolean practice, CallModel.Mode mode) {
        closeDebrief();
        debrief = new CallDebriefScreen(
                new CallDebriefModel(call, playing.card().reference()),
                practice,
                words,
                e -> Platform.runLater(() -> shell.unforeseen(e)),
                new CallDebriefScreen.Acts() {
                    @Override
                    public void back() {
                        closeDebrief();
                        shell.screen(feedback);
                        feedback.fill();
                        feedback.focusNext();
                    }

                    @Override
                    public void fork(Call other) {
                        closeDebrief();
                        call(
                                other,
                                new CallScreen.Setting(
                                        mode, true, playing.card().reference()),
                                playing.yard());
                    }
                });
        look();
        shell.screen(debrief);
    }

    private void closeDebrief() {
        if (debrief != null) {
            debrief.dispose();
            debrief = null;
        }
    }

    private void end() {
        clear();
        dealing.close();
        DrillEnd sheet = new DrillEnd(played, progress(), words, shell::drill, shell::route);
        shell.screen(sheet);
        sheet.focusBack();
    }

    private void clear() {
        closeDebrief();
        if (example != null) {
            example.dispose();
            example = null;
        }
        brief = null;
        feedback = null;
        playing = null;
    }

    /** Theme or size of texts changed. */
    void look() {
        if (screen != null) {
            screen.theme(shell.theme().get());
        }
        if (debrief != null) {
            debrief.look(shell.theme().get(), shell.em());
        }
        if (example != null) {
            example.look(shell.theme().get(), shell.em());
        }
    }

    /** The call that is shown; null for none. */
    CallScreen screen() {
        return screen;
    }

    /** The example that is shown; null for none. */
    DrillExample example() {
        return example;
    }

    /** The card that is played; null for none. */
    Card card() {
        return playing == null ? null : playing.card();
    }

    /** Leaves everything; what was done is kept. */
    void leave() {
        opening = null;
        if (screen != null) {
            screen.leaveYard();
            screen = null;
        }
        clear();
        dealing.close();
        looking.shutdownNow();
    }
}
