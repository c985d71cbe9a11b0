package provingyard.scenario;

import java.util.List;
import provingyard.quantity.Dimension;
import provingyard.quantity.In;

/**
 * A service call's own part. What is installed on the site is its {@code textbook} set-up.
 *
 * @param complaint what the owner says
 * @param seen the same as observations, from which the first belief is computed
 * @param shown what the trainee is given at the start
 * @param arrives when the technician stands on the site; faults began before, each at its own time
 * @param deals what may be wrong: each deal is a list of faults (places in the scenario's list), empty for none; which
 *     deal a seat gets is drawn
 * @param tests tests allowed, by name; empty for all
 * @param house whether the meter serves a house or building too, by a branch right behind it
 */
public record ServiceCall(
        Text complaint,
        List<Seen> seen,
        List<Text> shown,
        FaultPlan.When arrives,
        List<List<Integer>> deals,
        List<String> tests,
        boolean house) {

    /**
     * What an owner saw, as the outcome that a test of the same thing would have had.
     *
     * @param test id of a test, such as {@code walkZone:zone-3} or {@code readMeter}
     * @param answers which of its answers the owner's words mean; for tests with answers
     * @param above flow in m3/s that was passed; for tests that read a flow
     */
    public record Seen(
            String test,
            List<String> answers,
            @In(Dimension.FLOW) double above) {}
}
