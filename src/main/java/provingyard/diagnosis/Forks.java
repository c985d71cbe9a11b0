package provingyard.diagnosis;

import java.util.ArrayList;
import java.util.List;

/**
 * Few readings that stand for all that a test may give, for looking one test further ahead. Categories stand for
 * themselves, numbers by up to seven of the predicted means, each the most probable one of its share of the probability
 * (design).
 */
final class Forks {

    private static final int MOST = 7;

    /** One reading with its probability; those of a test add up to 1. */
    record Fork(Reading reading, double probability) {}

    private Forks() {}

    static List<Fork> of(Belief belief, Prediction prediction, Trust trust) {
        if (prediction instanceof NumericPrediction numeric) {
            return ofNumber(belief, numeric);
        }
        return ofCategories(belief, (CategoryPrediction) prediction, trust);
    }

    private static List<Fork> ofCategories(Belief belief, CategoryPrediction prediction, Trust trust) {
        List<Fork> forks = new ArrayList<>();
        for (int y = 0; y < prediction.categories(); y++) {
            double sum = 0;
            for (int h = 0; h < prediction.size(); h++) {
                sum += belief.probability(h) * prediction.likelihood(h, y, trust);
            }
            forks.add(new Fork(new Reading.Seen(y), sum));
        }
        return forks;
    }

    private static List<Fork> ofNumber(Belief belief, NumericPrediction prediction) {
        List<Fork> forks = new ArrayList<>();
        double inGroup = 0;
        double atMean = 0;
        double most = 0;
        double representative = 0;
        for (int i = 0; i < prediction.size(); i++) {
            double p = belief.probability(prediction.rising(i));
            double mean = prediction.mean(prediction.rising(i));
            inGroup += p;
            atMean += p;
            boolean last = i == prediction.size() - 1;
            if (!last && prediction.mean(prediction.rising(i + 1)) == mean) {
                continue;
            }
            if (atMean > most) {
                most = atMean;
                representative = mean;
            }
            atMean = 0;
            if (last || inGroup >= 1.0 / MOST) {
                forks.add(new Fork(new Reading.Shown(prediction.instrument().shown(representative)), inGroup));
                inGroup = 0;
                most = 0;
            }
        }
        return forks;
    }
}
