package provingyard.call;

import java.util.Optional;
import provingyard.diagnosis.Action;
import provingyard.diagnosis.Belief;
import provingyard.diagnosis.Inquiry;
import provingyard.diagnosis.Move;
import provingyard.diagnosis.Policy;
import provingyard.diagnosis.SafetyGates;

/**
 * A policy that shuts the water and has buried lines marked as soon as a mainline is more likely to leak than not, and is
 * otherwise another one: neither tells anything by itself, so no bits per minute would ever ask for it, and the water would
 * run for the days until the marks are there.
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
        Optional<Action> locate = site.test(FieldTest.LOCATE).map(FieldTest::action);
        if (!marked && locate.isPresent() && mains(inquiry.belief()) >= LIKELY) {
            Optional<Action> safe = site.test("makeSafe").map(FieldTest::action);
            boolean shut = safe.isEmpty() || safe.get().after(inquiry.state()).equals(inquiry.state());
            return new Move.Do(shut ? locate.get() : safe.get());
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
