package provingyard.learner;

import java.util.List;

/**
 * A service call that was left before its end: what was done, from which it is lived again bit for bit.
 *
 * @param content content hash of the site's document when it was lived
 * @param engine version of the simulator that lived it
 * @param seed what its chance is drawn from
 * @param deal number of what was wrong among the author's deals, from 0
 * @param mode how much the program said on the way, as the window calls it
 * @param tests ids of the tests done before the finding, in their order
 * @param finding what was stated; null as long as nothing was
 */
public record SavedCall(
        String content, String engine, long seed, int deal, String mode, List<String> tests, Finding finding) {

    /**
     * What was stated, and what was done after it.
     *
     * @param repairClass what is to be repaired
     * @param confidence 0 to 1
     * @param after ids of what was done since, in its order
     */
    public record Finding(String repairClass, double confidence, List<String> after) {
        public Finding {
            after = List.copyOf(after);
        }
    }

    public SavedCall {
        tests = List.copyOf(tests);
    }

    /** Whether anything was done in it. */
    public boolean isBegun() {
        return !tests.isEmpty() || finding != null;
    }

    /** Whether it was lived on the same site and by the same simulator, so that it comes out alike. */
    public boolean fits(String siteContent, String simulator) {
        return content.equals(siteContent) && engine.equals(simulator);
    }
}
