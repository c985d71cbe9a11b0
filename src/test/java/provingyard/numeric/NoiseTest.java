package provingyard.numeric;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The noise of each minute against the law's own numbers; bounds are four standard errors and more of so many draws. */
class NoiseTest {

    private static final int COUNT = 2_000_000;
    private static final long KEY = new RandomStreams(1).key("test.normal");

    private static double[] drawn(int count) {
        return IntStream.range(0, count)
                .mapToDouble(n -> RandomStreams.noise(KEY, n))
                .toArray();
    }

    private static double moment(double[] drawn, int power) {
        return Arrays.stream(drawn).map(z -> Math.pow(z, power)).average().orElseThrow();
    }

    @Test
    void theFirstFourMomentsAreTheNormalOnes() {
        double[] drawn = drawn(COUNT);
        // Standard errors of the moments are the roots of 1, 2, 15 and 96 over the count.
        assertEquals(0, moment(drawn, 1), 4 * Math.sqrt(1.0 / COUNT));
        assertEquals(1, moment(drawn, 2), 4 * Math.sqrt(2.0 / COUNT));
        assertEquals(0, moment(drawn, 3), 4 * Math.sqrt(15.0 / COUNT));
        assertEquals(3, moment(drawn, 4), 4 * Math.sqrt(96.0 / COUNT));
    }

    @ParameterizedTest(name = "share beyond {0} on either side")
    @CsvSource({
        // Upper tail of the standard normal law, from tables.
        "0.25, 0.4012937",
        "0.5, 0.3085375",
        "1, 0.1586553",
        "1.5, 0.0668072",
        "2, 0.0227501",
        "2.5, 0.0062097",
        "3, 0.0013499",
        "3.442619855899, 0.00028807",
        "4, 0.00003167"
    })
    void tailsAreTheNormalOnes(double from, double share) {
        double[] drawn = drawn(COUNT);
        double error = 4 * Math.sqrt(share / COUNT);
        assertEquals(share, Arrays.stream(drawn).filter(z -> z > from).count() / (double) COUNT, error);
        assertEquals(share, Arrays.stream(drawn).filter(z -> z < -from).count() / (double) COUNT, error);
    }

    @Test
    void eachSixteenthOfTheLawIsFilledAlike() {
        // Standard normal quantiles at 1/16 to 8/16, from tables; below zero by symmetry.
        double[] upper = {0, 0.15731068, 0.31863936, 0.48877641, 0.67448975, 0.88714656, 1.15034938, 1.53412054};
        int[] count = new int[16];
        for (double z : drawn(COUNT)) {
            int at = Arrays.binarySearch(upper, Math.abs(z));
            int cell = at >= 0 ? at : -at - 2;
            count[z < 0 ? 7 - cell : 8 + cell]++;
        }
        double chi = 0;
        for (int found : count) {
            double expected = COUNT / 16.0;
            chi += (found - expected) * (found - expected) / expected;
        }
        assertTrue(chi < 37.7, "chi square with 15 degrees of freedom passes 37.7 once in a thousand: " + chi);
        assertTrue(chi > 3.5, "nor is it too even: " + chi);
    }

    @ParameterizedTest(name = "minutes {0} apart")
    @CsvSource({"1", "2", "3", "10", "60", "1440"})
    void minutesKnowNothingOfEachOther(int apart) {
        double[] drawn = drawn(COUNT);
        double together = 0;
        double sizes = 0;
        for (int i = apart; i < COUNT; i++) {
            together += drawn[i] * drawn[i - apart];
            sizes += (drawn[i] * drawn[i] - 1) * (drawn[i - apart] * drawn[i - apart] - 1);
        }
        assertEquals(0, together / COUNT, 4 * Math.sqrt(1.0 / COUNT));
        assertEquals(0, sizes / COUNT, 4 * 2 * Math.sqrt(1.0 / COUNT));
    }

    @Test
    void streamsKnowNothingOfEachOther() {
        RandomStreams streams = new RandomStreams(1);
        long other = streams.key("test.normal-2");
        double together = 0;
        double first = 0;
        double firstSquare = 0;
        int keys = 200_000;
        for (int n = 0; n < keys; n++) {
            together += RandomStreams.noise(KEY, n) * RandomStreams.noise(other, n);
            double unit = RandomStreams.noise(streams.key("sensor." + n + ".unit"), 0);
            first += unit;
            firstSquare += unit * unit;
        }
        assertEquals(0, together / keys, 4 * Math.sqrt(1.0 / keys));
        assertEquals(0, first / keys, 4 * Math.sqrt(1.0 / keys));
        assertEquals(1, firstSquare / keys, 4 * Math.sqrt(2.0 / keys));
    }

    @Test
    void theyDependOnSeedNameAndNumberAlone() {
        double forward = RandomStreams.noise(KEY, 7);
        RandomStreams.noise(KEY, 8);
        assertEquals(forward, RandomStreams.noise(new RandomStreams(1).key("test.normal"), 7));
        assertTrue(forward != RandomStreams.noise(new RandomStreams(2).key("test.normal"), 7));
        assertTrue(forward != RandomStreams.noise(KEY, 8));
    }
}
