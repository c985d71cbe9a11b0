package provingyard.diagnosis;

import java.util.List;

/**
 * The place of a service call as the diagnosis sees it: what may be wrong, what can be done, and what each test would
 * read. Predictions may come from a simulator, a table or a formula; the same action in the same state gives the same
 * prediction.
 */
public interface Premises {

    /** What may be wrong. */
    Hypotheses hypotheses();

    /** The state at the start. */
    SiteState start();

    /** Everything that can be done, in the order in which it is shown; ids differ. */
    List<Action> actions();

    /** Minutes of walking between two places. */
    double walk(String from, String to);

    /** What an action would read, its legs done from a state. Only for actions that read something. */
    Prediction predict(Action action, SiteState state);
}
