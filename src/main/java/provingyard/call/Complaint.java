package provingyard.call;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import provingyard.diagnosis.CategoryPrediction;
import provingyard.diagnosis.Hypotheses;
import provingyard.diagnosis.NumericPrediction;
import provingyard.diagnosis.Prediction;
import provingyard.diagnosis.Trust;
import provingyard.numeric.NormalLaw;
import provingyard.scenario.ServiceCall.Seen;

/**
 * The complaint as the first, free observation: each thing that the owner saw has the probability that a test of it would
 * have had, and owners are believed with {@link #BELIEVED} (design). An observation whose test the site does not have says
 * nothing.
 */
final class Complaint {

    /** How far an owner's words are believed; the rest says nothing either way. */
    private static final double BELIEVED = 0.85;

    private Complaint() {}

    /**
     * The hypotheses with their weights after the complaint.
     *
     * @param test finds a test by its id
     * @param predict what a test would read under each of them, as the owner had the site
     */
    static Hypotheses heard(
            Hypotheses before,
            List<Seen> seen,
            Function<String, Optional<FieldTest>> test,
            Function<FieldTest, Prediction> predict) {
        Hypotheses now = before;
        for (Seen one : seen) {
            Optional<FieldTest> asked = test.apply(one.test());
            now = asked.isPresent() ? heard(now, told(one, asked.get(), predict.apply(asked.get()))) : now;
        }
        return now;
    }

    private static Hypotheses heard(Hypotheses before, IntToDoubleFunction told) {
        int[] next = {0};
        return before.reweighted(w -> {
            double heard = BELIEVED * told.applyAsDouble(next[0]++) + (1 - BELIEVED);
            return new Hypotheses.Weighted(w.hypothesis(), w.baseRate(), w.exposure() * heard);
        });
    }

    /** Probability of what was seen under each hypothesis. */
    private static IntToDoubleFunction told(Seen seen, FieldTest test, Prediction prediction) {
        if (prediction instanceof NumericPrediction number) {
            return h -> NormalLaw.below((number.mean(h) - seen.above()) / number.sigma(h, Trust.USUAL));
        }
        List<String> keys = ((FieldTest.Measure.Answers) test.measure()).keys();
        CategoryPrediction table = (CategoryPrediction) prediction;
        return h -> IntStream.range(0, keys.size())
                .filter(y -> seen.answers().contains(keys.get(y)))
                .mapToDouble(y -> table.probability(h, y))
                .sum();
    }
}
