package provingyard.call;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import provingyard.diagnosis.Declaration;
import provingyard.diagnosis.Policies;
import provingyard.diagnosis.ServiceRun;
import provingyard.diagnosis.Solver;
import provingyard.diagnosis.Trust;
import provingyard.scenario.Sites;

/** Every deal of the shipped service calls can be found with the tests that the call allows: the reference finds it. */
@Tag("unit")
class SolvableCallsTest {

    /** Luck of how many tries each deal is played with; more of them with {@code -Dcalls.seeds}. */
    private static final int SEEDS = Integer.getInteger("calls.seeds", 1);

    /** Of a dozen tries one may go wrong: the reference states at 95 %. */
    private static final double MISTAKEN = 1.0 / 12;

    /** What may be said of a site with nothing wrong: small faults hide behind the noise. */
    private static final double NOTHING = 0.5;

    @ParameterizedTest
    @ValueSource(strings = {"sedge-nook", "mallow-quad", "sumac-bend", "spikenard-rise", "lovage-mews", "mallow-fair"})
    void theReferenceFindsEveryDeal(String id) {
        CallSite site = CallSite.of(Sites.open(id).orThrow());
        for (int n = 0; n < site.scenario().call().deals().size(); n++) {
            isFound(site, Deal.of(site, n));
        }
    }

    private static void isFound(CallSite site, Deal deal) {
        int right = 0;
        double says = 0;
        double minutes = 0;
        for (int seed = 0; seed < SEEDS; seed++) {
            ServiceRun run = Judge.play(site, deal, Policies.best(site, Trust.USUAL), 1000 + seed);
            right += Judge.hit(site, deal, run.declared()) == Declaration.Hit.RIGHT ? 1 : 0;
            says += run.declaredProbability() / SEEDS;
            minutes += run.testMinutes() / SEEDS;
        }
        String name = site.scenario().id() + " " + deal.number() + " " + deal.answer(site);
        if (SEEDS > 1) {
            System.out.printf(Locale.ROOT, "%s: %d of %d, says %.2f, %.0f min%n", name, right, SEEDS, says, minutes);
        }
        assertTrue(right >= Math.floor(SEEDS * (1 - MISTAKEN)), name + " was found " + right + " times of " + SEEDS);
        boolean sound = deal.wrong().faults().isEmpty();
        assertTrue(says >= (sound ? NOTHING : Solver.ENOUGH - 0.05), name + " is said with " + says);
    }
}
