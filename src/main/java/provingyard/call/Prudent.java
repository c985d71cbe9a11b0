package provingyard.call;

import java.util.Optional;
import provingyard.diagnosis.Action;
import provingyard.diagnosis.Belief;
import provingyard.diagnosis.Inquiry;
import provingyard.diagnosis.Move;
import provingyard.diagnosis.Policy;
import provingyard.diagnosis.SafetyGates;

/**
 * A policy that has buried lines marked as soon as a mainline is more likely to leak than not, and is otherwise another
 * one: the request tells nothing by itself, so no bits per minute would ever ask for it.
 */
record Prudent(CallSite site, Policy other) implements Policy {

    /** Probability of a mainline leak from which marks are asked for (design). */
    private static final double LIKELY = 0.5;

    @Override
    public String name() {
        return other.name();
    }

    @Override
    public Move next(Inquiry inquiry) {
        boolean marked = inquiry.state().condition(SafetyGates.MARKS).equals(SafetyGates.SHOWN);
        Optional<Action> locate = site.test("locate").map(FieldTest::action);
        if (!marked && locate.isPresent() && mains(inquiry.belief()) >= LIKELY) {
            return new Move.Do(locate.get());
        }
        return other.next(inquiry);
    }

    private static double mains(Belief belief) {
        return belief.hypotheses().classes().stream()
                .filter(c -> c.startsWith(Suspects.MAIN))
                .mapToDouble(belief::ofClass)
                .sum();
    }
}
