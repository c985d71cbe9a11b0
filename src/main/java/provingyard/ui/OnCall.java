package provingyard.ui;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.application.Platform;
import provingyard.call.Call;
import provingyard.call.Deal;
import provingyard.diagnosis.CaseScore;
import provingyard.learner.SavedCall;
import provingyard.scenario.Scenario;

/** The way through a service call: the arrival, the call, its debrief, and another try from one of its tests. */
final class OnCall {

    private final Scenario scenario;
    private final Words words;
    private final Shell shell;
    private final String learner;
    private CallOpening arriving;
    private CallScreen screen;
    private CallDebriefScreen debrief;
    /** The yard of the call whose debrief is shown, for another try. */
    private YardModel yard;

    OnCall(Scenario scenario, Words words, Shell shell) {
        this.scenario = scenario;
        this.words = words;
        this.shell = shell;
        learner = shell.book().current().id();
    }

    /** Comes to the site. */
    void arrive() {
        arriving = new CallOpening(scenario, words, this::arrived, this::notArrived, shell::route);
        shell.screen(arriving);
        SavedCall kept = kept();
        if (kept != null && kept.isBegun()) {
            if (kept.fits(scenario.contentHash(), Call.ENGINE)) {
                arriving.offer(kept.tests().size(), CallKept.mode(kept), ready -> goOn(ready, kept));
            } else {
                sayThatItChanged();
            }
        }
        arriving.begin(e -> Platform.runLater(() -> shell.unforeseen(e)));
    }

    private void arrived(CallOpening.Ready ready, CallModel.Mode mode) {
        long seed = seed();
        Deal deal = Deal.drawn(ready.site(), seed);
        live(ready, () -> Optional.of(Call.begin(ready.site(), deal, seed)), begun -> {
            if (kept() != null) {
                keep(CallKept.of(begun.orElseThrow(), mode));
            }
            begin(begun.orElseThrow(), new CallScreen.Setting(mode, false), ready.yard());
        });
    }

    /** Whoever comes again, sits elsewhere or gives a call up may find something else wrong. */
    private long seed() {
        SavedCall kept = kept();
        if (kept != null) {
            return kept.isBegun() ? 31L * kept.seed() + 1 : kept.seed();
        }
        return 31L * learner.hashCode()
                + shell.book().current().at(scenario.id()).seasons();
    }

    private SavedCall kept() {
        return shell.book().current().at(scenario.id()).call();
    }

    /** Lives again what was left; begins anew where the site does not take it any more. */
    private void goOn(CallOpening.Ready ready, SavedCall kept) {
        CallModel.Mode mode = CallKept.mode(kept);
        live(ready, () -> CallKept.again(ready.site(), kept), lived -> {
            if (lived.isEmpty()) {
                arrived(ready, mode);
                sayThatItChanged();
            } else {
                begin(lived.get(), new CallScreen.Setting(mode, false), ready.yard());
            }
        });
    }

    /** Lives a call up to where it begins, off the window's thread; nothing comes of it where it was cancelled meanwhile. */
    private void live(CallOpening.Ready ready, Supplier<Optional<Call>> life, Consumer<Optional<Call>> then) {
        CallOpening here = arriving;
        Thread thread = new Thread(
                () -> {
                    try {
                        Optional<Call> lived = life.get();
                        Platform.runLater(() -> lived(here, ready, () -> then.accept(lived)));
                    } catch (RuntimeException | Error e) {
                        Platform.runLater(() -> {
                            ready.yard().close();
                            if (arriving == here) {
                                notArrived(e);
                            }
                        });
                    }
                },
                "call-begins");
        thread.setDaemon(true);
        thread.start();
    }

    private void lived(CallOpening here, CallOpening.Ready ready, Runnable then) {
        if (arriving == here) {
            then.run();
        } else {
            ready.yard().close();
        }
    }

    private void sayThatItChanged() {
        Notice.show(shell.scene(), words.say(scenario.title()), words.say("call.leftChanged"));
    }

    /** Keeps the call as it is now, so that it can be gone on with; practice is not kept. */
    void keep() {
        if (screen != null && !screen.setting().practice()) {
            SavedCall now = CallKept.of(screen.model());
            if (now.isBegun() && !now.equals(kept())) {
                keep(now);
            }
        }
    }

    private void keep(SavedCall call) {
        shell.book().change(learner, l -> l.on(scenario.id(), p -> p.leaving(call)));
    }

    private void notArrived(Throwable failure) {
        arriving = null;
        shell.unforeseen(failure);
        shell.route();
    }

    private void begin(Call begun, CallScreen.Setting setting, YardModel seen) {
        arriving = null;
        screen = new CallScreen(begun, setting, seen, words, shell, this::ended);
        screen.theme(shell.theme().get());
        shell.screen(screen);
    }

    /** The call was lived to its end: its debrief opens. */
    private void ended(CallScreen ended, CaseScore score) {
        CallScreen.Setting setting = ended.setting();
        if (!setting.practice()) {
            int points = (int) Math.rint(score.total());
            shell.book().change(l -> l.on(scenario.id(), p -> p.lived(points).leaving(null)));
        }
        yard = ended.leaveYard();
        screen = null;
        Call lived = ended.model().call();
        debrief = new CallDebriefScreen(
                lived,
                setting.practice(),
                words,
                e -> Platform.runLater(() -> shell.unforeseen(e)),
                new CallDebriefScreen.Acts() {
                    @Override
                    public void back() {
                        shell.route();
                    }

                    @Override
                    public void fork(Call practice) {
                        again(practice, setting.mode());
                    }
                });
        look();
        shell.screen(debrief);
    }

    private void again(Call practice, CallModel.Mode mode) {
        debrief.dispose();
        debrief = null;
        YardModel seen = yard;
        yard = null;
        begin(practice, new CallScreen.Setting(mode, true), seen);
    }

    /** Theme or size of texts changed. */
    void look() {
        if (screen != null) {
            screen.theme(shell.theme().get());
        }
        if (debrief != null) {
            debrief.look(shell.theme().get(), shell.em());
        }
    }

    /** The call that is shown; null for none. */
    CallScreen screen() {
        return screen;
    }

    /** The debrief that is shown; null for none. */
    CallDebriefScreen debrief() {
        return debrief;
    }

    /** Leaves everything. */
    void leave() {
        keep();
        if (arriving != null) {
            arriving.cancel();
            arriving = null;
        }
        if (screen != null) {
            screen.leaveYard().close();
        }
        if (debrief != null) {
            debrief.dispose();
        }
        if (yard != null) {
            yard.close();
        }
    }
}
