package provingyard.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.LongFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Ways of going about a call, on the toy line: the score puts them in the order that a teacher would. */
class PolicyTableTest {

    private static final int CASES = 120;
    private static final int CALIBRATION = 400;
    private static final int SEEDS_PER_FAULT = 6;
    private static final ToyLine LINE = new ToyLine();
    private static final Map<String, Row> TABLE = new LinkedHashMap<>();

    /** Means over all cases. */
    private record Row(
            double minutes,
            double tests,
            double redundant,
            double share,
            double probability,
            double correct,
            double score) {}

    @BeforeAll
    static void play() {
        double[] reference = referenceMinutes();
        Map<String, LongFunction<Policy>> policies = new LinkedHashMap<>();
        policies.put("reference", s -> new Solver(LINE, Trust.USUAL));
        policies.put("best", s -> Policies.best(LINE, Trust.USUAL));
        policies.put("half-split", s -> Policies.halfSplit(LINE, Trust.USUAL));
        policies.put("most-bits", s -> Policies.mostBits(LINE, Trust.USUAL));
        policies.put("half-random", s -> Policies.halfRandom(LINE, Trust.USUAL, s));
        policies.put("fixed-list", s -> Policies.fixedList(checklist(), LINE));
        policies.put("early", s -> Policies.early(LINE, Trust.USUAL));
        policies.put("as-shown", s -> Policies.asShown(LINE));
        policies.put("random", s -> Policies.random(LINE, Trust.USUAL, s));
        policies.put("dig-everywhere", s -> Policies.digEverywhere(walks(), LINE));
        policies.forEach((name, policy) -> TABLE.put(name, row(policy, reference)));
        System.out.println("policy          min  tests  red.  share  P(decl)  right  score");
        TABLE.forEach((name, r) -> System.out.printf(
                Locale.ROOT,
                "%-14s %5.1f %5.1f %5.1f  %5.2f  %5.3f   %5.3f  %5.1f%n",
                name,
                r.minutes,
                r.tests,
                r.redundant,
                r.share,
                r.probability,
                r.correct,
                r.score));
    }

    /** A sensible checklist: supply, records, wires, zones, ground, ear, valves. */
    private static List<String> checklist() {
        return Stream.of("static", "log", "ohms-", "flow-", "look-", "listen-", "meter", "split-", "walk-")
                .flatMap(start -> LINE.ids(start).stream())
                .toList();
    }

    private static List<String> walks() {
        return Stream.of("look-", "walk-")
                .flatMap(start -> LINE.ids(start).stream())
                .toList();
    }

    private static double[] referenceMinutes() {
        Policy policy = Policies.best(LINE, Trust.USUAL);
        return IntStream.range(0, LINE.hypotheses().size())
                .mapToDouble(h -> IntStream.range(0, SEEDS_PER_FAULT)
                        .mapToDouble(s -> ServiceRun.play(LINE, Trust.USUAL, policy, LINE.nature(h, 10_000 + s))
                                .testMinutes())
                        .average()
                        .orElseThrow())
                .toArray();
    }

    private static Row row(LongFunction<Policy> policy, double[] reference) {
        List<CaseScore> scores = new ArrayList<>();
        double probability = 0;
        double correct = 0;
        for (int seed = 0; seed < CASES; seed++) {
            int truth = LINE.truth(seed);
            ServiceRun run = ServiceRun.play(LINE, Trust.USUAL, policy.apply(seed), LINE.nature(truth, seed));
            Declaration.Hit hit = LINE.hit(truth, run.declared());
            double p = run.declaredProbability();
            scores.add(CaseScore.of(
                    run.steps(),
                    new Declaration(run.declared(), p, hit, Double.NaN),
                    reference[truth],
                    CaseScore.Water.NONE));
            probability += p / CASES;
            correct += hit == Declaration.Hit.RIGHT ? 1.0 / CASES : 0;
        }
        return new Row(
                scores.stream().mapToDouble(CaseScore::minutes).average().orElseThrow(),
                scores.stream().mapToDouble(CaseScore::tests).average().orElseThrow(),
                scores.stream().mapToDouble(CaseScore::redundant).average().orElseThrow(),
                scores.stream()
                        .mapToDouble(CaseScore::informationShare)
                        .average()
                        .orElseThrow(),
                probability,
                correct,
                scores.stream().mapToDouble(CaseScore::total).average().orElseThrow());
    }

    private static double score(String policy) {
        return TABLE.get(policy).score;
    }

    private static void assertFalling(String... policies) {
        for (int i = 1; i < policies.length; i++) {
            String better = policies[i - 1];
            String worse = policies[i];
            assertTrue(
                    score(better) > score(worse),
                    () -> better + " " + score(better) + " should be above " + worse + " " + score(worse));
        }
    }

    @Test
    void theLineIsTheOneOfTheDesign() {
        assertEquals(40, LINE.hypotheses().size());
        assertEquals(
                36,
                LINE.actions().stream()
                        .filter(a -> a.kind() == Action.Kind.TEST || a.kind() == Action.Kind.SPLIT)
                        .count());
    }

    @Test
    void goodOrdersComeBeforeHabitsAndHabitsBeforeChance() {
        assertFalling("best", "half-split", "half-random", "fixed-list", "random", "dig-everywhere");
        assertFalling("most-bits", "half-random", "as-shown", "random");
        assertFalling("half-random", "early", "random");
    }

    @Test
    void theReferenceIsAsGoodAsOneStep() {
        assertTrue(score("reference") > score("half-split"));
        assertTrue(TABLE.get("reference").minutes <= 1.05 * TABLE.get("best").minutes);
    }

    @Test
    void theBestGivesAwayNothingAndAsksNothingTwice() {
        assertEquals(1, TABLE.get("best").share, 1e-12);
        assertEquals(0, TABLE.get("best").redundant, 0.1);
    }

    @Test
    void beliefIsAsOftenRightAsItSays() {
        Policy policy = Policies.best(LINE, Trust.USUAL);
        double said = 0;
        double right = 0;
        for (int seed = 20_000; seed < 20_000 + CALIBRATION; seed++) {
            int truth = LINE.truth(seed);
            ServiceRun run = ServiceRun.play(LINE, Trust.USUAL, policy, LINE.nature(truth, seed));
            said += run.declaredProbability() / CALIBRATION;
            right += LINE.hit(truth, run.declared()) == Declaration.Hit.RIGHT ? 1.0 / CALIBRATION : 0;
        }
        System.out.printf(Locale.ROOT, "calibration: said %.3f, right %.3f%n", said, right);
        assertEquals(right, said, 0.03);
    }

    @Test
    void theSameSeedGivesTheSameRunBitForBit() {
        for (LongFunction<Policy> policy : List.<LongFunction<Policy>>of(
                s -> new Solver(LINE, Trust.USUAL), s -> Policies.halfRandom(LINE, Trust.USUAL, s))) {
            for (int seed = 0; seed < 5; seed++) {
                assertEquals(steps(LINE, policy, seed), steps(new ToyLine(), policy, seed));
            }
        }
    }

    private static List<Step> steps(ToyLine line, LongFunction<Policy> policy, int seed) {
        return ServiceRun.play(line, Trust.USUAL, policy.apply(seed), line.nature(line.truth(seed), seed))
                .steps();
    }

    @Test
    void noPolicyDoesAnythingUnsafe() {
        ServiceRun run = ServiceRun.play(LINE, Trust.USUAL, Policies.digEverywhere(walks(), LINE), LINE.nature(0, 1));
        assertTrue(run.steps().stream().anyMatch(s -> s.kind() == Action.Kind.DIG));
        assertTrue(run.steps().stream().allMatch(s -> s.breaches().isEmpty()));
    }

    @Test
    void priorsTwiceAsWrongStillFindTheFault() {
        for (String kind : List.of("mainline", "lateral", "none")) {
            for (double factor : new double[] {0.5, 2}) {
                ToyLine believed = new ToyLine(w -> new Hypotheses.Weighted(
                        w.hypothesis(),
                        w.hypothesis().kind().equals(kind) ? factor * w.baseRate() : w.baseRate(),
                        w.exposure()));
                Policy policy = Policies.best(believed, Trust.USUAL);
                double right = 0;
                double minutes = 0;
                for (int seed = 0; seed < CASES / 2; seed++) {
                    int truth = LINE.truth(seed);
                    ServiceRun run = ServiceRun.play(believed, Trust.USUAL, policy, LINE.nature(truth, seed));
                    right += LINE.hit(truth, run.declared()) == Declaration.Hit.RIGHT ? 2.0 / CASES : 0;
                    minutes += run.inquiry().minutes() * 2 / CASES;
                }
                System.out.printf(
                        Locale.ROOT, "prior of %s x %.1f: right %.3f, %.1f min%n", kind, factor, right, minutes);
                assertTrue(right > 0.90, kind + " times " + factor + ": right in " + right);
            }
        }
    }
}
