package provingyard.scenario;

import java.util.List;

/**
 * A service call's own part; has its place in the document now and is played by a later version.
 *
 * @param complaint what the owner says
 * @param shown what the trainee is given at the start
 * @param pool faults that may be dealt to seats, as indices into the scenario's faults
 * @param tests tests allowed, by name; empty for all
 */
public record ServiceCall(Text complaint, List<Text> shown, List<Integer> pool, List<String> tests) {}
