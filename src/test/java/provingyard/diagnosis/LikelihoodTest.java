package provingyard.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LikelihoodTest {

    private static final Instrument GAUGE = new Instrument(3, 0, 10, 0, 1000);

    @Test
    void noiseAddsInSquares() {
        // 3, 5 % of 80 and 12 make 13; a relative share of the instrument counts like model error.
        assertEquals(13, Likelihood.sigma(80, GAUGE, 12, new Trust(0.05, 0)), 1e-12);
        assertEquals(13, Likelihood.sigma(-80, new Instrument(3, 0.05, 10, 0, 1000), 12, Trust.FULL), 1e-12);
    }

    @Test
    void aStepHasTheProbabilityOfItsWidth() {
        // Half a step is one standard deviation: 0.682689492137 of A&S table 26.1.
        assertEquals(0.682689492137, Likelihood.numeric(500, 500, 5, GAUGE, Trust.FULL), 1e-12);
        double floor = 0.005 * 10 / 1000;
        assertEquals(0.995 * 0.682689492137 + floor, Likelihood.numeric(500, 500, 5, GAUGE, Trust.USUAL), 1e-12);
        assertEquals(floor, Likelihood.numeric(900, 500, 5, GAUGE, Trust.USUAL), 1e-15);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-40, 0, 3, 250, 996, 1000, 1300})
    void allStepsTogetherAreCertain(double mean) {
        double sum = IntStream.rangeClosed(0, 100)
                .mapToDouble(i -> Likelihood.numeric(10.0 * i, mean, 14, GAUGE, Trust.FULL))
                .sum();
        assertEquals(1, sum, 1e-12);
    }

    @Test
    void anExactPredictionFallsIntoOneStep() {
        assertEquals(1, Likelihood.numeric(500, 503, 0, GAUGE, Trust.FULL));
        assertEquals(0, Likelihood.numeric(510, 503, 0, GAUGE, Trust.FULL));
    }

    @Test
    void categoriesShareTheOutliers() {
        assertEquals(0.995 * 0.2 + 0.005 / 3, Likelihood.category(0.2, 3, 0.005), 1e-15);
    }

    @Test
    void aReadingOfTheWrongSortIsRefused() {
        Prediction number = new NumericPrediction(new double[] {1}, GAUGE, 0);
        Prediction look = new CategoryPrediction(new double[][] {{0.5, 0.5}});
        assertThrows(IllegalArgumentException.class, () -> number.logLikelihood(0, new Reading.Seen(0), Trust.USUAL));
        assertThrows(IllegalArgumentException.class, () -> look.logLikelihood(0, new Reading.Seen(2), Trust.USUAL));
        assertThrows(IllegalArgumentException.class, () -> new CategoryPrediction(new double[][] {{0.5, 0.6}}));
        assertTrue(Double.isFinite(look.logLikelihood(0, new Reading.Seen(1), Trust.FULL)));
    }

    @Test
    void anInstrumentShowsItsStepsAndItsEnds() {
        assertEquals(510, GAUGE.shown(507));
        assertEquals(0, GAUGE.shown(-4));
        assertEquals(1000, GAUGE.shown(4000));
    }

    /** Of fifty places one is dug up, and there is the broken pipe. */
    @Test
    void whatIsSeenInAnOpenPitIsAsGoodAsCertain() {
        double[][] rows = new double[50][];
        for (int h = 0; h < rows.length; h++) {
            rows[h] = h == 7 ? new double[] {0, 1} : new double[] {1, 0};
        }
        Reading found = new Reading.Seen(1);
        double pit = after(CategoryPrediction.ofSight(rows), found);
        double reading = after(new CategoryPrediction(rows), found);
        assertTrue(pit > 0.99, "in the pit " + pit);
        assertTrue(reading < 0.9, "by an instrument " + reading);
        assertEquals(1, after(new CategoryPrediction(rows).of(7), found, 0), 1e-12);
    }

    private static double after(CategoryPrediction prediction, Reading reading) {
        return after(prediction, reading, 7);
    }

    private static double after(CategoryPrediction prediction, Reading reading, int h) {
        List<Hypotheses.Weighted> all = IntStream.range(0, prediction.size())
                .mapToObj(i -> new Hypotheses.Weighted(
                        new Hypothesis("main", "cell", Hypothesis.Size.PLAIN, "main/" + i), 1, 1))
                .toList();
        return Belief.before(Hypotheses.of(all))
                .after(prediction, reading, Trust.USUAL)
                .probability(h);
    }
}
