package provingyard.ui;

import java.util.concurrent.Executor;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import provingyard.call.Call;
import provingyard.call.CallReview;
import provingyard.call.Judge;
import provingyard.diagnosis.Trust;

/** A service call's debrief as it comes together behind the question. No control is known here. */
final class CallDebriefModel {

    /** How far it is. */
    enum Stage {
        REFERENCE,
        REVIEW,
        DONE
    }

    /**
     * What the trainee would change, said before anything is shown.
     *
     * @param test number of the test; 0 for none
     */
    record Said(int test, String why) {}

    /** What is shown; the review is null before {@link Stage#DONE}, what was said as long as nothing was. */
    record State(Stage stage, CallReview review, Said said) {

        /** Whether the debrief may be shown. */
        boolean revealed() {
            return review != null && said != null;
        }
    }

    private final Call call;
    private final Judge.Reference known;
    private final ReadOnlyObjectWrapper<State> state =
            new ReadOnlyObjectWrapper<>(new State(Stage.REFERENCE, null, null));
    private volatile boolean given;

    /** The debrief of a call whose finding is stated. */
    CallDebriefModel(Call call) {
        this(call, null);
    }

    /** The same; null for a reference that is not known yet. */
    CallDebriefModel(Call call, Judge.Reference known) {
        this.call = call;
        this.known = known;
    }

    Call call() {
        return call;
    }

    ReadOnlyObjectProperty<State> stateProperty() {
        return state.getReadOnlyProperty();
    }

    /**
     * Begins the work.
     *
     * @param worker where it is done
     * @param window where changes are told
     */
    void begin(Executor worker, Executor window, Consumer<Throwable> onFailure) {
        worker.execute(() -> {
            try {
                Judge.Reference reference = known != null ? known : Judge.reference(call.site(), call.deal());
                tell(window, Stage.REVIEW, null);
                if (!given) {
                    tell(window, Stage.DONE, CallReview.of(call, reference, Trust.USUAL));
                }
            } catch (RuntimeException e) {
                onFailure.accept(e);
            }
        });
    }

    private void tell(Executor window, Stage stage, CallReview review) {
        window.execute(() -> {
            if (!given) {
                state.set(new State(stage, review, state.get().said()));
            }
        });
    }

    void say(Said said) {
        State now = state.get();
        state.set(new State(now.stage(), now.review(), said));
    }

    /** Gives up what is worked out. */
    void cancel() {
        given = true;
    }
}
