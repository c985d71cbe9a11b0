package provingyard.call;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import provingyard.diagnosis.Belief;
import provingyard.diagnosis.Declaration;
import provingyard.diagnosis.Policies;
import provingyard.diagnosis.ServiceRun;
import provingyard.diagnosis.Trust;
import provingyard.scenario.FaultPlan.Kind;

/**
 * The weights before any test have no source: what is stated must not hang on them. Each kind's weight is halved and doubled
 * in turn, and what the evidence says at the end of a call is said again.
 */
@Tag("calls")
class PriorSensitivityTest {

    private static final int CASES = Integer.getInteger("calls.cases", 40);

    /** Share of the conclusions that may be others with a weight half or double. */
    private static final double OTHERS = 0.03;

    /** How far what is said may lie from how often it is right, by any one weight. */
    private static final double GAP = 0.03;

    /** What is said at the end of a call, with the weights as they are and with one changed. */
    private record Told(boolean same, boolean right, double says) {}

    static Stream<String> yards() {
        return DrawnCases.yards();
    }

    @ParameterizedTest
    @MethodSource("yards")
    void whatIsStatedDoesNotHangOnOneWeight(String id) {
        CallSite site = DrawnCases.site(id);
        List<ServiceRun> ends = new ArrayList<>();
        List<Deal> deals = DrawnCases.drawn(site, CASES);
        deals.forEach(d -> ends.add(Judge.play(site, d, Policies.best(site, Trust.USUAL), d.number())));
        double others = 0;
        double worstGap = 0;
        String worst = "";
        int weights = 0;
        for (Set<Kind> kinds : weights()) {
            for (double factor : new double[] {0.5, 2}) {
                List<Told> told = new ArrayList<>();
                for (int i = 0; i < ends.size(); i++) {
                    told.add(again(site, deals.get(i), ends.get(i), kinds, factor));
                }
                others += told.stream().filter(t -> !t.same()).count() / (double) CASES;
                double says = told.stream().mapToDouble(Told::says).average().orElseThrow();
                double right = told.stream().filter(Told::right).count() / (double) CASES;
                double gap = Math.abs(says - right) - DrawnCases.chance(right, CASES);
                if (gap > worstGap) {
                    worstGap = gap;
                    worst = kinds + " x " + factor;
                }
                weights++;
            }
        }
        double share = others / weights;
        System.out.printf(Locale.ROOT, "| %s | %d | %.4f | %.3f %s |%n", id, weights, share, worstGap, worst);
        assertTrue(share <= OTHERS, "other conclusions: " + share);
        assertTrue(worstGap <= GAP, worst + " says too much or too little by " + worstGap);
    }

    /** Weights as the file has them: one for all openings of a main, and for nothing being wrong. */
    private static List<Set<Kind>> weights() {
        List<Set<Kind>> all = new ArrayList<>();
        Set<Kind> mains = EnumSet.of(Kind.MAINLINE_BREAK, Kind.MAINLINE_LEAK);
        all.add(mains);
        all.add(EnumSet.noneOf(Kind.class));
        EnumSet.complementOf(EnumSet.copyOf(mains)).forEach(k -> all.add(EnumSet.of(k)));
        return all;
    }

    private static Told again(CallSite site, Deal deal, ServiceRun end, Set<Kind> kinds, double factor) {
        Belief belief = end.inquiry().belief();
        List<String> classes = belief.hypotheses().classes();
        double[] byClass = new double[classes.size()];
        double sum = 0;
        for (int h = 0; h < belief.hypotheses().size(); h++) {
            boolean changed = h == 0
                    ? kinds.isEmpty()
                    : kinds.contains(site.faults().get(h - 1).kind());
            double p = belief.probability(h) * (changed ? factor : 1);
            byClass[belief.hypotheses().classOf(h)] += p;
            sum += p;
        }
        int best = 0;
        for (int c = 0; c < byClass.length; c++) {
            best = byClass[c] > byClass[best] ? c : best;
        }
        String leading = classes.get(best);
        boolean right = Judge.hit(site, deal, leading) == Declaration.Hit.RIGHT;
        return new Told(leading.equals(end.declared()), right, byClass[best] / sum);
    }
}
