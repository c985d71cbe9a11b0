package provingyard.diagnosis;

import java.util.ArrayList;
import java.util.List;

/**
 * How far a service call has come: what is believed, what was done to the site, what was done in which order.
 *
 * @param done ids of the actions so far, in order
 * @param minutes minutes so far
 */
public record Inquiry(Belief belief, SiteState state, List<String> done, double minutes) {

    public Inquiry {
        done = List.copyOf(done);
    }

    /** The start of a call. */
    public static Inquiry at(Premises premises) {
        return new Inquiry(Belief.before(premises.hypotheses()), premises.start(), List.of(), 0);
    }

    /**
     * After an action.
     *
     * @param reading what it gave; null for actions that read nothing
     */
    public Inquiry after(Action action, Reading reading, Premises premises, Trust trust) {
        Belief next = belief;
        if (reading != null) {
            Prediction prediction = premises.predict(action, state);
            next = action.latentKey(state)
                    .map(key -> belief.after(key, prediction, reading, trust))
                    .orElseGet(() -> belief.after(prediction, reading, trust));
        }
        List<String> ids = new ArrayList<>(done);
        ids.add(action.id());
        return new Inquiry(next, action.after(state), ids, minutes + action.minutes(state, premises::walk));
    }
}
