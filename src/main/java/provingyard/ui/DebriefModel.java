package provingyard.ui;

import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import provingyard.season.Season;
import provingyard.study.Commitment;
import provingyard.study.Debrief;
import provingyard.study.Mark;
import provingyard.study.Progress;

/**
 * A debrief as it comes together: first loss and moments, then shares, then worth. No control is known here, so it is
 * tested without a window.
 */
final class DebriefModel {

    /** How far it is. */
    enum Stage {
        /** No season was handed over yet. */
        NONE,
        /** The season beside clock and mark is worked out. */
        BEGUN,
        /** Loss and moments are there, shares are worked out. */
        SHARES,
        /** Shares are there, worth is worked out. */
        WORTH,
        /** All is there. */
        DONE
    }

    /**
     * What is shown.
     *
     * @param debrief as far as it came; null before {@link Stage#SHARES}
     * @param done seasons lived for this stage
     * @param of about how many it takes
     */
    record State(Stage stage, Debrief debrief, int done, int of) {}

    private record Kept(State state, Optional<Commitment> commitment) {}

    private static final State NOTHING = new State(Stage.NONE, null, 0, 0);

    private final SeasonStudy study;
    private final Executor worker;
    private final Executor window;
    private final Consumer<Throwable> onFailure;
    private final ReadOnlyObjectWrapper<State> state = new ReadOnlyObjectWrapper<>(NOTHING);
    private Consumer<Debrief> told = debrief -> {};
    private Optional<Commitment> commitment = Optional.empty();
    /** The own season's state and answer while practice is debriefed; null for none. */
    private Kept kept;

    private volatile int number;

    /**
     * A model without a season.
     *
     * @param worker where long work is done, one piece after the other
     * @param window where changes are told
     */
    DebriefModel(SeasonStudy study, Executor worker, Executor window, Consumer<Throwable> onFailure) {
        this.study = study;
        this.worker = worker;
        this.window = window;
        this.onFailure = onFailure;
    }

    /** As it stands. */
    ReadOnlyObjectProperty<State> stateProperty() {
        return state.getReadOnlyProperty();
    }

    /** Who hears of a debrief as soon as it has its score. */
    void tell(Consumer<Debrief> next) {
        told = next;
    }

    /** Begins with the trainee's own season; what was worked out for another one is given up. */
    void begin(Season lived, String learner) {
        kept = null;
        start(lived, learner);
    }

    /** Begins with a season that was tried otherwise; what is known of the own one is put aside. */
    void beginPractice(Season lived, String learner) {
        if (kept == null) {
            kept = new Kept(state.get(), commitment);
        }
        start(lived, learner);
    }

    /** The own season's debrief is back; what was not worked out then is begun again. */
    void backToOwn() {
        if (kept == null) {
            return;
        }
        Kept own = kept;
        begin(own.state().debrief().season(), own.state().debrief().learner());
        commitment = own.commitment();
        if (own.state().stage() == Stage.DONE) {
            number++;
            state.set(own.state());
        }
    }

    /** The own season's debrief as far as it came; null while there is none. */
    Debrief own() {
        return kept == null ? state.get().debrief() : kept.state().debrief();
    }

    /** Forgets all. */
    void forget() {
        number++;
        kept = null;
        commitment = Optional.empty();
        state.set(NOTHING);
    }

    private void start(Season lived, String learner) {
        int mine = ++number;
        commitment = Optional.empty();
        state.set(new State(Stage.BEGUN, null, 0, 0));
        worker.execute(() -> work(lived, learner, Optional.empty(), mine));
    }

    /** Goes on with a mark that was found meanwhile. */
    void found(Mark mark) {
        Debrief now = state.get().debrief();
        int mine = ++number;
        worker.execute(() -> work(now.season(), now.learner(), Optional.of(mark), mine));
    }

    /** What the trainee would change; stays beside the answer. */
    void commit(Commitment next) {
        commitment = Optional.of(next);
        State now = state.get();
        if (now.debrief() != null) {
            state.set(new State(now.stage(), now.debrief().with(next), now.done(), now.of()));
        }
    }

    /** Whether the trainee has said what they would change. */
    boolean committed() {
        return commitment.isPresent();
    }

    /** Gives up what is worked out. */
    void cancel() {
        number++;
    }

    private void work(Season lived, String learner, Optional<Mark> foundMark, int mine) {
        try {
            Optional<Mark> mark = foundMark.isPresent() ? foundMark : study.mark(lived);
            Debrief first = study.debrief(lived, mark, learner);
            show(mine, first, mark.isPresent() ? Stage.SHARES : Stage.WORTH, true);
            Debrief second = first;
            if (mark.isPresent()) {
                second = first.with(study.shares(lived, mark.get(), progress(mine)));
                show(mine, second, Stage.WORTH, false);
            }
            show(mine, second.with(study.worth(lived, mark, progress(mine))), Stage.DONE, false);
        } catch (CancellationException e) {
            // Another season is being worked out, or the site was left.
            return;
        } catch (RuntimeException e) {
            onFailure.accept(e);
        }
    }

    private void show(int mine, Debrief debrief, Stage stage, boolean first) {
        window.execute(() -> {
            if (mine == number) {
                Debrief whole = commitment.map(debrief::with).orElse(debrief);
                state.set(new State(stage, whole, 0, 0));
                if (first) {
                    told.accept(whole);
                }
            }
        });
    }

    private Progress progress(int mine) {
        return new Progress() {
            @Override
            public void at(int done, int of) {
                window.execute(() -> {
                    State now = state.get();
                    if (mine == number && now.debrief() != null) {
                        state.set(new State(now.stage(), now.debrief(), done, of));
                    }
                });
            }

            @Override
            public boolean cancelled() {
                return mine != number;
            }
        };
    }
}
