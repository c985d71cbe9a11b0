package provingyard.bench;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import provingyard.diagnosis.Action;
import provingyard.diagnosis.CategoryPrediction;
import provingyard.diagnosis.Hypotheses;
import provingyard.diagnosis.Hypothesis;
import provingyard.diagnosis.Inquiry;
import provingyard.diagnosis.Instrument;
import provingyard.diagnosis.NumericPrediction;
import provingyard.diagnosis.Prediction;
import provingyard.diagnosis.Premises;
import provingyard.diagnosis.Ranked;
import provingyard.diagnosis.Ranking;
import provingyard.diagnosis.Reading;
import provingyard.diagnosis.SiteState;
import provingyard.diagnosis.Trust;
import provingyard.numeric.RandomStreams;

/**
 * Ranking 60 tests, two thirds of them numbers, by what they tell about 200 hypotheses of 200 repair classes, each with
 * a prediction of its own: nothing can be shared. The floor is one likelihood for each test and hypothesis, which any
 * ranking needs; the ranking itself must stay under 200 ms.
 */
@State(Scope.Thread)
public class RankingBench {

    private static final int HYPOTHESES = 200;
    private static final int TESTS = 60;

    private Premises premises;
    private Ranking ranking;
    private Inquiry inquiry;

    /** Makes the case. */
    @Setup
    public void build() {
        premises = new Many();
        ranking = new Ranking(premises, Trust.USUAL);
        inquiry = Inquiry.at(premises);
    }

    /** The whole ranking. */
    @Benchmark
    public List<Ranked> rank() {
        return ranking.of(inquiry);
    }

    /** One likelihood each. */
    @Benchmark
    public double floor() {
        double sum = 0;
        for (Action action : premises.actions()) {
            Prediction prediction = premises.predict(action, inquiry.state());
            for (int h = 0; h < HYPOTHESES; h++) {
                sum += prediction.logLikelihood(h, Many.READINGS.get(action.id()), Trust.USUAL);
            }
        }
        return sum;
    }

    private static final class Many implements Premises {

        static final Map<String, Reading> READINGS = new HashMap<>();

        private final Hypotheses hypotheses;
        private final List<Action> actions = new ArrayList<>();
        private final Map<String, Prediction> predictions = new HashMap<>();

        Many() {
            List<Hypotheses.Weighted> all = new ArrayList<>();
            for (int h = 0; h < HYPOTHESES; h++) {
                Hypothesis one = new Hypothesis("kind", "p" + h, Hypothesis.Size.PLAIN, "class" + h);
                all.add(new Hypotheses.Weighted(one, 1 + h % 7, 1));
            }
            hypotheses = Hypotheses.of(all);
            for (int t = 0; t < TESTS; t++) {
                String id = "test" + t;
                Action.Leg leg = new Action.Leg("p" + t, 3 + t % 5, Map.of());
                actions.add(new Action(id, Action.Kind.TEST, List.of(leg), Map.of(), null, null, Set.of()));
                predictions.put(id, t % 3 == 2 ? look(t) : number(t));
                READINGS.put(id, t % 3 == 2 ? new Reading.Seen(1) : new Reading.Shown(40));
            }
        }

        private static Prediction number(int t) {
            long key = new RandomStreams(t).key("means");
            double[] means = new double[HYPOTHESES];
            for (int h = 0; h < HYPOTHESES; h++) {
                means[h] = 300 * RandomStreams.uniform(key, h);
            }
            // A fine meter is integrated, a coarse gauge summed step by step.
            Instrument instrument = new Instrument(0.5, 0.02, t % 3 == 0 ? 0.1 : 2, 0, 300);
            return new NumericPrediction(means, instrument, 0.5);
        }

        private static Prediction look(int t) {
            long key = new RandomStreams(t).key("rows");
            double[][] rows = new double[HYPOTHESES][];
            for (int h = 0; h < HYPOTHESES; h++) {
                double dry = RandomStreams.uniform(key, h);
                rows[h] = new double[] {dry, 0.7 * (1 - dry), 0.3 * (1 - dry)};
            }
            return new CategoryPrediction(rows);
        }

        @Override
        public Hypotheses hypotheses() {
            return hypotheses;
        }

        @Override
        public SiteState start() {
            return SiteState.at("p0", Map.of());
        }

        @Override
        public List<Action> actions() {
            return actions;
        }

        @Override
        public double walk(String from, String to) {
            return from.equals(to) ? 0 : 1;
        }

        @Override
        public Prediction predict(Action action, SiteState state) {
            return predictions.get(action.id());
        }
    }
}
