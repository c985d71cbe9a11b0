package provingyard.scenario;

import java.util.List;

/**
 * A service call's own part. What is installed on the site is its {@code textbook} set-up.
 *
 * @param complaint what the owner says
 * @param shown what the trainee is given at the start
 * @param arrives when the technician stands on the site; faults began before, each at its own time
 * @param deals what may be wrong: each deal is a list of faults (places in the scenario's list), empty for none; which
 *     deal a seat gets is drawn
 * @param tests tests allowed, by name; empty for all
 */
public record ServiceCall(
        Text complaint, List<Text> shown, FaultPlan.When arrives, List<List<Integer>> deals, List<String> tests) {}
