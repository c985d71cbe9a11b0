package provingyard.call;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import provingyard.diagnosis.Declaration;
import provingyard.diagnosis.Policies;
import provingyard.diagnosis.ServiceRun;
import provingyard.diagnosis.Trust;
import provingyard.numeric.RandomStreams;

/**
 * The weights before any test have no source: whoever thinks every one of them half or double of what is true, by the toss of
 * a coin, must still find the fault, in about the same time, and be right about as often as said.
 */
@Tag("calls")
class PriorSensitivityTest {

    /** Sets of weights, each tossed anew. */
    private static final int SETS = 8;

    /** Faults for each of them. */
    private static final int CASES = Math.max(1, Integer.getInteger("calls.cases", 40) / 4);

    /** Share of the true weights' minutes that it may take. */
    private static final double LONGER = 1.25;

    /** How far what is said may lie from how often it is right. */
    private static final double GAP = 0.05;

    /** How a way fares over some cases. */
    private record Fared(double minutes, double says, double right) {

        Fared and(Fared other) {
            return new Fared(minutes + other.minutes, says + other.says, right + other.right);
        }

        Fared over(int cases) {
            return new Fared(minutes / cases, says / cases, right / cases);
        }
    }

    static Stream<String> yards() {
        return DrawnCases.yards();
    }

    @ParameterizedTest
    @MethodSource("yards")
    void whoeverThinksOtherFaultsCommonStillFindsThem(String id) {
        CallSite site = DrawnCases.site(id);
        List<Deal> deals = DrawnCases.drawn(site, SETS * CASES);
        Fared known = new Fared(0, 0, 0);
        Fared mistaken = known;
        for (int set = 0; set < SETS; set++) {
            CallSite other = site.weighing(tossed(set));
            for (Deal deal : deals.subList(set * CASES, (set + 1) * CASES)) {
                known = known.and(fares(site, deal));
                mistaken = mistaken.and(fares(other, deal));
            }
        }
        tell(id, known.over(deals.size()), mistaken.over(deals.size()));
        Fared end = mistaken.over(deals.size());
        double most = LONGER * known.over(deals.size()).minutes();
        double gap = GAP + DrawnCases.chance(end.right(), deals.size());
        assertAll(
                id,
                () -> assertTrue(end.minutes() <= most, "takes " + end.minutes() + " min, most " + most),
                () -> assertTrue(
                        Math.abs(end.says() - end.right()) <= gap, "says " + end.says() + ", is right " + end.right()));
    }

    /** All weights half or double, as a coin says for each. */
    private static Rates tossed(int set) {
        Map<String, Double> items = new TreeMap<>();
        Rates.SHIPPED.perItem().forEach((kind, weight) -> items.put(kind, weight * toss(set, kind)));
        return Rates.SHIPPED.with(Rates.SHIPPED.none() * toss(set, "none"), items);
    }

    private static double toss(int set, String kind) {
        long key = new RandomStreams(20261126).key("weight." + set + "." + kind);
        return RandomStreams.uniform(key, 0) < 0.5 ? 0.5 : 2;
    }

    private static Fared fares(CallSite site, Deal deal) {
        ServiceRun run = Judge.play(site, deal, Policies.best(site, Trust.USUAL), deal.number());
        boolean right = Judge.hit(site, deal, run.declared()) == Declaration.Hit.RIGHT;
        return new Fared(run.testMinutes(), run.declaredProbability(), right ? 1 : 0);
    }

    private static void tell(String id, Fared known, Fared mistaken) {
        System.out.printf(
                Locale.ROOT,
                "| %s | %.0f | %.0f | %.3f | %.3f | %.3f | %.3f |%n",
                id,
                known.minutes(),
                mistaken.minutes(),
                known.says(),
                known.right(),
                mistaken.says(),
                mistaken.right());
    }
}
