package provingyard.ui;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import javafx.application.Platform;
import provingyard.picture.Theme;
import provingyard.score.Score;
import provingyard.season.Season;
import provingyard.setup.Placement;
import provingyard.setup.SetUp;
import provingyard.study.Commitment;
import provingyard.study.Debrief;
import provingyard.study.Moment;

/**
 * What comes when a season is over: the question what one would change, the debrief, the way back to its moments, and
 * practice from them.
 */
final class AfterSeason {

    /** The yard's screen, as far as it matters here. */
    interface Yard {

        /** Takes away whatever lies over the yard, which then has the keys. */
        void uncover();

        /** Shows the mark's sensors beside the trainee's. */
        void ghosts(List<Placement> ghosts);
    }

    private final YardModel model;
    private final Words words;
    private final Shell shell;
    private final Yard yard;
    private final MomentSayings sayings;
    private final ExecutorService study = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "study");
        thread.setDaemon(true);
        return thread;
    });
    private final DebriefModel debriefs;
    private final CommitSheet commit;
    private final DebriefScreen debrief;
    private final MomentStrip strip;
    private boolean reckoned;
    private boolean counts;
    /** Whether the season that the debrief tells of is practice. */
    private boolean practice;
    /** Whether the trial under way was reckoned. */
    private boolean tried;
    /** The moment that the yard was taken back to; null for none. */
    private Moment moment;

    private List<Object> saidOf;

    AfterSeason(YardModel model, Words words, Shell shell, Yard yard) {
        this.model = model;
        this.words = words;
        this.shell = shell;
        this.yard = yard;
        sayings = new MomentSayings(words, model.scenario());
        debriefs = new DebriefModel(shell.study(), study, Platform::runLater, this::failed);
        debriefs.tell(this::scored);
        commit = new CommitSheet(model, words, this::committed, yard::uncover);
        debriefs.stateProperty().addListener((o, was, is) -> commit.working(is.debrief() == null));
        debrief = new DebriefScreen(model, words, debriefs, this::failed, acts());
        strip = new MomentStrip(words, model::practise, this::backToOwn, this::show);
    }

    private void failed(Throwable e) {
        Platform.runLater(() -> shell.unforeseen(e));
    }

    CommitSheet commit() {
        return commit;
    }

    DebriefScreen debrief() {
        return debrief;
    }

    MomentStrip strip() {
        return strip;
    }

    /** As far as the debrief came. */
    DebriefModel.State state() {
        return debriefs.stateProperty().get();
    }

    void theme(Theme theme) {
        debrief.look(theme, shell.em());
    }

    /** Whether the question or the debrief lies over the yard. */
    boolean covers() {
        return commit.isVisible() || debrief.isVisible();
    }

    void hide() {
        commit.setVisible(false);
        debrief.setVisible(false);
    }

    /** Looks at the newest frame; called once a pulse. */
    void pulse(SeasonPlayer.Frame frame) {
        boolean ended = frame.over() && frame.snapshot().tick() >= frame.lived();
        if (frame.practice()) {
            if (ended && !tried) {
                tried = true;
                model.player().handOver(season -> Platform.runLater(() -> reckonPractice(season)));
            }
            tried &= frame.over();
        } else if (ended && !reckoned) {
            reckoned = true;
            model.player().handOver(season -> Platform.runLater(() -> reckon(season)));
        } else if (!frame.over()) {
            reckoned = false;
            counts = true;
        }
        strip(frame);
    }

    /** A season is over: it is worked out while the trainee says what they would change. */
    private void reckon(Season season) {
        Optional<Commitment> before =
                counts ? Optional.empty() : shell.answer(model.scenario().id());
        begin(false);
        debriefs.begin(season, shell.book().current().name());
        before.ifPresent(debriefs::commit);
        show();
    }

    private void reckonPractice(Season season) {
        begin(true);
        debriefs.beginPractice(season, shell.book().current().name());
        show();
    }

    private void begin(boolean inPractice) {
        practice = inPractice;
        moment = null;
        model.selectedProperty().set(null);
        yard.uncover();
    }

    /** Tells of a season's score; one that was over when the site was opened was told of before. Practice never counts. */
    private void scored(Debrief ready) {
        Score score = ready.standing().score();
        if (counts && !practice) {
            counts = false;
            shell.scored(model.scenario().id(), score.points() == null ? null : score.shown());
        }
    }

    private void committed(Commitment said) {
        debriefs.commit(said);
        shell.answered(model.scenario().id(), said);
        show();
    }

    /** Opens the debrief; whoever has not said what they would change is asked first. */
    void show() {
        yard.uncover();
        if (!debriefs.committed() && !practice) {
            commit.open();
            return;
        }
        debrief.open(practice ? Optional.of(when(model.frameProperty().get().practiceFrom())) : Optional.empty());
    }

    /** The same season again, from its first minute, with the set-up as it stands. */
    void again() {
        yard.uncover();
        moment = null;
        practice = false;
        reckoned = true;
        debriefs.forget();
        model.restart();
    }

    private void backToOwn() {
        SetUp setUp = debriefs.own().season().setUp();
        moment = null;
        practice = false;
        debriefs.backToOwn();
        model.backToOwn(setUp);
    }

    private String when(long tick) {
        return sayings.day(tick) + " " + sayings.clock(tick);
    }

    /** What stands under the top bar while a lived season is looked at. */
    private void strip(SeasonPlayer.Frame frame) {
        boolean told = state().stage() != DebriefModel.Stage.NONE && (frame.practice() || frame.over());
        boolean back = frame.over() && frame.snapshot().tick() < frame.lived();
        List<Object> now = List.of(
                told,
                back,
                frame.practiceFrom(),
                frame.over() && !frame.playing(),
                Optional.ofNullable(moment),
                words.language(),
                words.units().get(),
                Optional.ofNullable(state().debrief()));
        if (now.equals(saidOf)) {
            return;
        }
        saidOf = now;
        if (!told) {
            strip.hide();
            yard.ghosts(List.of());
            return;
        }
        strip.show(said(frame, back), frame.practice(), back && !frame.practice(), frame.over() && !frame.playing());
        Debrief known = state().debrief();
        yard.ghosts(known != null && (back || frame.practice()) ? DebriefPlan.ghosts(known) : List.of());
    }

    private String said(SeasonPlayer.Frame frame, boolean back) {
        if (moment != null && back) {
            return when(moment.tick()) + ": " + sayings.sentence(moment);
        }
        return frame.practice()
                ? words.say("strip.inPractice", when(frame.practiceFrom()))
                : words.say(back ? "strip.lookingBack" : "strip.over");
    }

    private DebriefScreen.Acts acts() {
        return new DebriefScreen.Acts() {
            @Override
            public void toYard() {
                yard.uncover();
            }

            @Override
            public void to(Moment which) {
                moment = which;
                model.player().show(which.tick());
                yard.uncover();
            }

            @Override
            public void again() {
                AfterSeason.this.again();
            }
        };
    }

    void dispose() {
        debriefs.cancel();
        study.shutdownNow();
        debrief.dispose();
    }
}
