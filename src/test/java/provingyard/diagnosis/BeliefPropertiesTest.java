package provingyard.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

class BeliefPropertiesTest {

    private record Test(Prediction prediction, Reading reading) {}

    private static Hypotheses hypotheses(Random random, int count) {
        return Hypotheses.of(IntStream.range(0, count)
                .mapToObj(h -> new Hypotheses.Weighted(
                        new Hypothesis("kind" + h, "", Hypothesis.Size.PLAIN, "class" + random.nextInt(count)),
                        0.01 + random.nextDouble(),
                        1))
                .toList());
    }

    private static Test test(Random random, int count) {
        if (random.nextBoolean()) {
            Instrument meter = new Instrument(random.nextDouble(), 0.02, random.nextBoolean() ? 0.1 : 5, 0, 300);
            double[] means = IntStream.range(0, count)
                    .mapToDouble(h -> random.nextInt(30) * 12)
                    .toArray();
            return new Test(
                    new NumericPrediction(means, meter, random.nextDouble()),
                    new Reading.Shown(meter.shown(random.nextDouble() * 300)));
        }
        double[][] rows = new double[count][3];
        for (double[] row : rows) {
            row[random.nextInt(3)] = 0.25;
            row[random.nextInt(3)] += 0.25;
            row[random.nextInt(3)] += 0.5;
        }
        return new Test(new CategoryPrediction(rows), new Reading.Seen(random.nextInt(3)));
    }

    @Property(tries = 200)
    void noTestIsExpectedToTellLessThanNothingOrMoreThanAll(
            @ForAll long seed, @ForAll @IntRange(min = 1, max = 60) int n) {
        Random random = new Random(seed);
        Belief belief = Belief.before(hypotheses(random, n));
        Expectation expectation = new Expectation(random.nextBoolean() ? Trust.USUAL : Trust.FULL);
        for (int k = 0; k < 5; k++) {
            Test test = test(random, n);
            double gain = expectation.gain(belief, test.prediction);
            assertTrue(gain >= 0 && gain <= belief.entropy(), () -> "gain " + gain);
            belief = belief.after(test.prediction, test.reading, Trust.USUAL);
        }
    }

    @Property(tries = 200)
    void theOrderOfTestsDoesNotMatter(@ForAll long seed, @ForAll @IntRange(min = 1, max = 40) int n) {
        Random random = new Random(seed);
        Belief before = Belief.before(hypotheses(random, n));
        List<Test> tests = new ArrayList<>();
        IntStream.range(0, 6).forEach(k -> tests.add(test(random, n)));
        Belief one = all(before, tests);
        Collections.shuffle(tests, random);
        Belief other = all(before, tests);
        for (int h = 0; h < n; h++) {
            assertEquals(one.probability(h), other.probability(h), 1e-9);
        }
        assertEquals(one.entropy(), other.entropy(), 1e-8);
    }

    private static Belief all(Belief belief, List<Test> tests) {
        for (Test test : tests) {
            belief = belief.after(test.prediction, test.reading, Trust.USUAL);
        }
        return belief;
    }

    @Property(tries = 200)
    void beliefAddsUpAndKillsNothing(@ForAll long seed, @ForAll @IntRange(min = 1, max = 40) int n) {
        Random random = new Random(seed);
        Belief belief = Belief.before(hypotheses(random, n));
        for (int k = 0; k < 12; k++) {
            Test test = test(random, n);
            belief = belief.after(test.prediction, test.reading, Trust.USUAL);
        }
        Belief end = belief;
        assertEquals(1, IntStream.range(0, n).mapToDouble(end::probability).sum(), 1e-12);
        assertTrue(IntStream.range(0, n).allMatch(h -> end.probability(h) >= 0.99 * Belief.FLOOR));
        int classes = end.hypotheses().classes().size();
        assertEquals(1, IntStream.range(0, classes).mapToDouble(end::ofClass).sum(), 1e-12);
        assertTrue(end.entropy() <= Math.log(classes) / Math.log(2) + 1e-9);
    }

    @Property(tries = 100)
    void theSameLookTellsNothingNew(@ForAll long seed, @ForAll @IntRange(min = 2, max = 40) int n) {
        Random random = new Random(seed);
        Test test = test(random, n);
        Belief once = Belief.before(hypotheses(random, n)).after("here", test.prediction, test.reading, Trust.USUAL);
        assertSame(once, once.after("here", test.prediction, test.reading, Trust.USUAL));
        assertTrue(once.answered("here"));
        Belief elsewhere = once.after("there", test.prediction, test.reading, Trust.USUAL);
        assertNotEquals(once, elsewhere);
    }
}
