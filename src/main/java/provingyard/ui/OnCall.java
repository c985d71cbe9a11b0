package provingyard.ui;

import javafx.application.Platform;
import provingyard.call.Call;
import provingyard.call.Deal;
import provingyard.diagnosis.CaseScore;
import provingyard.learner.Learner;
import provingyard.scenario.Scenario;

/** The way through a service call: the arrival, the call, its debrief, and another try from one of its tests. */
final class OnCall {

    private final Scenario scenario;
    private final Words words;
    private final Shell shell;
    private CallOpening arriving;
    private CallScreen screen;
    private CallDebriefScreen debrief;
    /** The yard of the call whose debrief is shown, for another try. */
    private YardModel yard;

    OnCall(Scenario scenario, Words words, Shell shell) {
        this.scenario = scenario;
        this.words = words;
        this.shell = shell;
    }

    /** Comes to the site. */
    void arrive() {
        arriving = new CallOpening(scenario, words, this::arrived, this::notArrived, shell::route);
        shell.screen(arriving);
        arriving.begin(e -> Platform.runLater(() -> shell.unforeseen(e)));
    }

    private void arrived(CallOpening.Ready ready, CallModel.Mode mode) {
        arriving = null;
        Learner learner = shell.book().current();
        // Whoever comes again, or sits elsewhere, may find something else wrong.
        long seed = 31L * learner.id().hashCode() + learner.at(scenario.id()).seasons();
        Call begun = Call.begin(ready.site(), Deal.drawn(ready.site(), seed), seed);
        begin(begun, new CallScreen.Setting(mode, false), ready.yard());
    }

    private void notArrived(Throwable failure) {
        arriving = null;
        shell.unforeseen(failure);
        shell.route();
    }

    private void begin(Call begun, CallScreen.Setting setting, YardModel seen) {
        screen = new CallScreen(begun, setting, seen, words, shell, this::ended);
        screen.theme(shell.theme().get());
        shell.screen(screen);
    }

    /** The call was lived to its end: its debrief opens. */
    private void ended(CallScreen ended, CaseScore score) {
        CallScreen.Setting setting = ended.setting();
        if (!setting.practice()) {
            int points = (int) Math.rint(score.total());
            shell.book().change(l -> l.on(scenario.id(), p -> p.lived(points)));
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
        if (arriving != null) {
            arriving.cancel();
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
