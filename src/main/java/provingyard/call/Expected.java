package provingyard.call;

import java.util.List;

/** What a test would give in a case, without noise. */
public sealed interface Expected {

    /** A number in SI units, finite; what an instrument cannot show is kept at the end of its range. */
    record Number(double value) implements Expected {}

    /** How often each of the test's answers is given, in their order; adds up to 1. */
    record Odds(List<Double> probabilities) implements Expected {

        public Odds {
            probabilities = List.copyOf(probabilities);
        }

        /** One answer for sure. */
        public static Odds sure(int answer, int of) {
            Double[] odds = new Double[of];
            java.util.Arrays.fill(odds, 0.0);
            odds[answer] = 1.0;
            return new Odds(List.of(odds));
        }
    }
}
