package provingyard.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import provingyard.numeric.RandomStreams;

/** Expected bits against closed forms, and against belief updated by every reading that an instrument can show. */
class ExpectationTest {

    /** A number is integrated over four deviations on either side, outside which 6.3e-5 of it lies. */
    private static final double TAILS = 7e-5;

    private static Hypotheses hypotheses(int count, IntFunction<String> repairClass) {
        return Hypotheses.of(IntStream.range(0, count)
                .mapToObj(h -> new Hypotheses.Weighted(
                        new Hypothesis("kind" + h, "", Hypothesis.Size.PLAIN, repairClass.apply(h)), 1 + h % 3, 1))
                .toList());
    }

    private static Belief even(int count) {
        return Belief.before(Hypotheses.of(IntStream.range(0, count)
                .mapToObj(h -> new Hypotheses.Weighted(
                        new Hypothesis("kind" + h, "", Hypothesis.Size.PLAIN, "class" + h), 1, 1))
                .toList()));
    }

    private static double gain(Belief belief, Prediction prediction, Trust trust) {
        return new Expectation(trust).gain(belief, prediction);
    }

    @Test
    void aPerfectTestOfTwoTellsOneBit() {
        double[][] perfect = {{1, 0}, {0, 1}};
        assertEquals(1, gain(even(2), new CategoryPrediction(perfect), Trust.FULL), 1e-12);
        Instrument meter = new Instrument(0.5, 0, 0.1, 0, 300);
        assertEquals(1, gain(even(2), new NumericPrediction(new double[] {0, 40}, meter, 0), Trust.FULL), TAILS);
    }

    @Test
    void aPerfectTestOfEightTellsThreeBits() {
        double[] means = IntStream.range(0, 8).mapToDouble(i -> 100 * i + 100).toArray();
        Instrument gauge = new Instrument(2, 0, 10, 0, 1000);
        assertEquals(3, gain(even(8), new NumericPrediction(means, gauge, 0), Trust.FULL), 1e-9);
    }

    @ParameterizedTest(name = "wrong with probability {0}")
    @CsvSource({
        // Binary symmetric channel: 1 - H(e), Shannon 1948.
        "0.11, 0.500084",
        "0.25, 0.188722",
        "0.5, 0"
    })
    void anUnsureTestTellsWhatAChannelCarries(double wrong, double bits) {
        double[][] table = {{1 - wrong, wrong}, {wrong, 1 - wrong}};
        assertEquals(bits, gain(even(2), new CategoryPrediction(table), Trust.FULL), 1e-6);
    }

    @Test
    void outliersMakeASymmetricChannelToo() {
        double wrong = 0.005 / 2;
        double h = -wrong * Belief.bits(wrong) - (1 - wrong) * Belief.bits(1 - wrong);
        assertEquals(1 - h, gain(even(2), new CategoryPrediction(new double[][] {{1, 0}, {0, 1}}), Trust.USUAL), 1e-9);
    }

    @Test
    void twoMeansTwoDeviationsApartTellWhatAGaussianChannelCarries() {
        // Binary input at +-1 in noise of 1: an integral done here with a hundred times as many points.
        double integral = 0;
        int points = 100_000;
        double step = 24.0 / points;
        for (int i = 0; i < points; i++) {
            double y = -12 + (i + 0.5) * step;
            double one = Math.exp(-0.5 * (y - 1) * (y - 1)) / Math.sqrt(2 * Math.PI);
            double other = Math.exp(-0.5 * (y + 1) * (y + 1)) / Math.sqrt(2 * Math.PI);
            double mean = 0.5 * (one + other);
            integral += 0.5 * step * (one * Math.log(one / mean) + other * Math.log(other / mean)) / Math.log(2);
        }
        Instrument fine = new Instrument(1, 0, 1e-4, -500, 500);
        double gain = gain(even(2), new NumericPrediction(new double[] {1, -1}, fine, 0), Trust.FULL);
        assertEquals(integral, gain, TAILS);
    }

    @Test
    void whatAllPredictAlikeTellsNothing() {
        Instrument meter = new Instrument(0.5, 0, 0.1, 0, 300);
        assertEquals(0, gain(even(5), new NumericPrediction(new double[5], meter, 0), Trust.USUAL), 1e-9);
    }

    @Test
    void sizesOfTheSameRepairAreNotWorthTelling() {
        Belief belief = Belief.before(hypotheses(2, h -> "same"));
        Instrument meter = new Instrument(0.5, 0, 0.1, 0, 300);
        assertEquals(0, gain(belief, new NumericPrediction(new double[] {4, 60}, meter, 0), Trust.USUAL), 1e-12);
    }

    /** The definition: entropy now less the mean entropy after each reading that can be shown. */
    private static double bruteForce(Belief belief, NumericPrediction prediction, Trust trust) {
        Instrument instrument = prediction.instrument();
        int steps = (int) Math.rint(instrument.range() / instrument.resolution());
        double after = 0;
        double total = 0;
        for (int i = 0; i <= steps; i++) {
            Reading reading = new Reading.Shown(instrument.low() + i * instrument.resolution());
            double p = 0;
            for (int h = 0; h < prediction.size(); h++) {
                p += belief.probability(h) * Math.exp(prediction.logLikelihood(h, reading, trust));
            }
            total += p;
            after += p * belief.after(prediction, reading, trust).entropy();
        }
        return total * belief.entropy() - after;
    }

    @ParameterizedTest(name = "steps of {1}, noise {0}, model error {2}")
    @CsvSource({
        // Summed over steps: tolerance is four deviations' tails. Integrated: and the rounding's share.
        "0.5,  2.0, 0.05, 1e-3",
        "5,    5.0, 0.00, 1e-3",
        "0.2,  0.1, 0.05, 1e-3",
        "0.5,  0.1, 0.05, 1e-3",
        "0.05, 0.1, 0.05, 5e-3",
        "1,    0.1, 0.00, 1e-3",
        "0.3,  0.1, 0.00, 1e-3"
    })
    void gainsAreThoseOfTheDefinition(double sigma, double resolution, double modelError, double tolerance) {
        Instrument meter = new Instrument(sigma, 0, resolution, 0, 300);
        for (double outliers : new double[] {1e-9, 0.005}) {
            Trust trust = new Trust(modelError, outliers);
            for (int seed = 0; seed < 4; seed++) {
                long key = new RandomStreams(seed).key("means");
                Belief belief = Belief.before(hypotheses(24, h -> "class" + h / 2));
                // A third reads nothing, the others anything up to beyond the meter's end.
                double[] means = IntStream.range(0, 24)
                        .mapToDouble(h -> h % 3 == 0 ? 0 : 320 * Math.pow(RandomStreams.uniform(key, h), 3))
                        .toArray();
                NumericPrediction prediction = new NumericPrediction(means, meter, 0);
                double expected = bruteForce(belief, prediction, trust);
                assertTrue(expected > 0.5, "there is something to tell: " + expected);
                assertEquals(expected, gain(belief, prediction, trust), tolerance);
            }
        }
    }

    @Test
    void aKeptCalculatorForgetsTheLastTest() {
        Expectation kept = new Expectation(Trust.USUAL);
        Instrument meter = new Instrument(0.5, 0, 0.1, 0, 300);
        Prediction many = new NumericPrediction(new double[] {1, 50, 100, 150, 299, 3}, meter, 0);
        Prediction few = new CategoryPrediction(new double[][] {{0.9, 0.1}, {0.3, 0.7}});
        double first = kept.gain(even(6), many);
        double second = kept.gain(even(2), few);
        assertEquals(first, kept.gain(even(6), many));
        assertEquals(second, gain(even(2), few, Trust.USUAL));
        assertEquals(List.of(first), List.of(gain(even(6), many, Trust.USUAL)));
    }
}
