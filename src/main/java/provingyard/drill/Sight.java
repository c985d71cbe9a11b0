package provingyard.drill;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import provingyard.call.CallSite;
import provingyard.call.FieldTest;
import provingyard.diagnosis.CategoryPrediction;
import provingyard.diagnosis.Hypotheses;
import provingyard.diagnosis.NumericPrediction;
import provingyard.diagnosis.Trust;
import provingyard.numeric.NormalLaw;
import provingyard.scenario.ServiceCall.Seen;

/**
 * A fault together with something that its owner may see of it, computed: an answer that the simulator expects of a test
 * which an owner could have done without tools, in that case, and that is not what a sound site shows. Where nothing is
 * wrong, it is one of the answers that eyes imagine now and then.
 *
 * <p>It is atypical when the owner, taken at the word, speaks most for another family: with
 * {@code w(F) = sum over h in F of prior(h) P(seen|h)}, the greatest w is not the true family's. A site with nothing wrong
 * is never called atypical, since all complaints about it mislead.
 *
 * @param hypothesis index of what is wrong; 0 for nothing
 * @param weight prior weight times the probability of seeing it
 */
record Sight(int hypothesis, Family family, Seen seen, double weight, boolean atypical) {

    /** Tests that owners do with their eyes, their bill or the controller's display. */
    static final List<String> VISIBLE = List.of("walkZone", "lookAtHeads", "look", "readMeter", "readRecords");

    private static final String WALKED = "walkZone";

    /** Answers of these tests with which nobody would complain. */
    private static final List<String> WELL = List.of("allWell", "headsDry", "dry", "asPlanned");

    /** m3/s at rest that a bill shows, and what a leak must pass at least for anybody to complain of it (design). */
    private static final double BILLED = 1e-3 / 60;

    private static final double COMPLAINED = 2 * BILLED;

    /** Times the sound site's probability from which an answer comes from the fault (design). */
    private static final double CAUSED = 3;

    /** Probability that an answer must have to be worth a case (design). */
    private static final double LIKELY = 0.05;

    /** Share of a sound site's answers from which an answer is no complaint. */
    private static final double USUAL = 0.2;

    /** All sights of a site that nobody has complained of. */
    static List<Sight> of(CallSite site) {
        List<Sight> all = new ArrayList<>();
        for (FieldTest test : site.tests()) {
            if (VISIBLE.contains(test.kind())) {
                add(site, test, all);
            }
        }
        return List.copyOf(all);
    }

    /** What else looks well to an owner who walks all zones; none where not all others do. */
    List<Seen> rest(CallSite site) {
        List<Seen> rest = new ArrayList<>();
        for (FieldTest test : site.tests()) {
            if (test.kind().equals(WALKED) && !test.id().equals(seen.test())) {
                List<String> answers = ((FieldTest.Measure.Answers) test.measure()).keys();
                CategoryPrediction odds = (CategoryPrediction) site.predict(test.action(), site.start());
                String likeliest = answers.get(IntStream.range(0, answers.size())
                        .boxed()
                        .max(Comparator.comparingDouble(y -> odds.probability(hypothesis, y)))
                        .orElseThrow());
                if (!WELL.contains(likeliest)) {
                    return List.of();
                }
                rest.add(new Seen(test.id(), List.of(likeliest), 0));
            }
        }
        return rest;
    }

    private static void add(CallSite site, FieldTest test, List<Sight> all) {
        if (test.measure() instanceof FieldTest.Measure.Answers answers) {
            CategoryPrediction odds = (CategoryPrediction) site.predict(test.action(), site.start());
            for (int y = 0; y < odds.categories(); y++) {
                if (odds.probability(0, y) < USUAL
                        && !WELL.contains(answers.keys().get(y))) {
                    int answer = y;
                    double[] told = IntStream.range(0, odds.size())
                            .mapToDouble(h -> odds.probability(h, answer))
                            .toArray();
                    Seen seen = new Seen(test.id(), List.of(answers.keys().get(y)), 0);
                    add(site, seen, told, told, all);
                }
            }
        } else if (site.predict(test.action(), site.start()) instanceof NumericPrediction flow) {
            double[] told = IntStream.range(0, flow.size())
                    .mapToDouble(h -> NormalLaw.below((flow.mean(h) - BILLED) / flow.sigma(h, Trust.USUAL)))
                    .toArray();
            double[] worth = IntStream.range(0, flow.size())
                    .mapToDouble(h -> h > 0 && flow.mean(h) >= COMPLAINED ? told[h] : 0)
                    .toArray();
            add(site, new Seen(test.id(), List.of(), BILLED), told, worth, all);
        }
    }

    /**
     * Sights of one observation.
     *
     * @param told its probability under each hypothesis
     * @param worth the same, 0 where nobody would complain
     */
    private static void add(CallSite site, Seen seen, double[] told, double[] worth, List<Sight> all) {
        Hypotheses hypotheses = site.hypotheses();
        Map<Family, Double> meant = new EnumMap<>(Family.class);
        Arrays.stream(Family.values()).forEach(f -> meant.put(f, 0.0));
        for (int h = 0; h < told.length; h++) {
            meant.merge(Family.of(site, h), hypotheses.prior(h) * told[h], Double::sum);
        }
        Family leading = meant.entrySet().stream()
                .max(Comparator.comparingDouble(Map.Entry::getValue))
                .orElseThrow()
                .getKey();
        for (int h = 0; h < told.length; h++) {
            boolean caused = h == 0 ? worth[h] > 0 : worth[h] >= Math.max(LIKELY, CAUSED * told[0]);
            if (caused) {
                Family family = Family.of(site, h);
                boolean atypical = family != Family.NONE && family != leading;
                all.add(new Sight(h, family, seen, hypotheses.prior(h) * worth[h], atypical));
            }
        }
    }
}
