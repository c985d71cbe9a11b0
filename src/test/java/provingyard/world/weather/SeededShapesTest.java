package provingyard.world.weather;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.apache.commons.rng.UniformRandomProvider;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import provingyard.numeric.RandomStreams;

/**
 * Seeded rain and wind have the moments that their description gives them. Bounds are some four standard errors of the
 * numbers drawn.
 */
@Tag("unit")
class SeededShapesTest {

    private static final int DAY = 1440;
    private static final int DRAWS = 400;
    private final DiurnalShape level = DiurnalShape.read(Plans.with(Map.of(
            "weather-soil/diurnal-shape.json",
            IntStream.rangeClosed(1, 12)
                    .mapToObj(month -> "\"" + month + "\":{\"wind_ratio\":" + Collections.nCopies(24, 1) + "}")
                    .toList()
                    .toString()
                    .replaceFirst("\\[", "{")
                    .replaceFirst("]$", "}"))));

    private static UniformRandomProvider random(String name) {
        return new RandomStreams(17).sequence(name);
    }

    /** A day of rain by its first and last wet minute and the number of wet ones. */
    private record Wet(int first, int last, int minutes) {

        static Wet of(double[] rain) {
            int[] wet =
                    IntStream.range(0, rain.length).filter(t -> rain[t] > 0.0).toArray();
            return new Wet(wet[0], wet[wet.length - 1], wet.length);
        }
    }

    private static Wet[] days(double depth) {
        UniformRandomProvider random = random("bursts " + depth);
        Wet[] days = new Wet[DRAWS];
        for (int i = 0; i < DRAWS; i++) {
            double[] rain = new double[DAY];
            RainBursts.fillDay(rain, 0, depth, random);
            assertEquals(depth, Arrays.stream(rain).reduce(0.0, (a, b) -> a + b));
            days[i] = Wet.of(rain);
        }
        return days;
    }

    private static double mean(Wet[] days, java.util.function.ToDoubleFunction<Wet> value) {
        return Arrays.stream(days).mapToDouble(value).average().orElseThrow();
    }

    @Test
    void aTraceIsOneBurstOfTwentyToHundredAndTwentyMinutes() {
        Wet[] days = days(1e-9);
        for (Wet day : days) {
            assertTrue(day.minutes() >= 20 && day.minutes() <= 120, day.toString());
            assertEquals(day.minutes(), day.last() - day.first() + 1);
        }
        // 20 + 100/2, less half a minute of rounding; begun evenly within what is left of the day.
        assertEquals(69.5, mean(days, Wet::minutes), 6.0);
        assertEquals((DAY - 70) / 2.0, mean(days, Wet::first), 80.0);
        assertTrue(Arrays.stream(days).anyMatch(day -> day.first() < 30));
        assertTrue(Arrays.stream(days).anyMatch(day -> day.last() > DAY - 30));
    }

    @Test
    void sixMillimetresAreTwoBurstsWithAGapBetween() {
        Wet[] days = days(0.006);
        assertEquals(139.0, mean(days, Wet::minutes), 9.0);
        assertEquals(180.0, mean(days, day -> day.last() - day.first() + 1), 12.0);
    }

    @Test
    void aQuarterOfABurstsDepthAddsABurstToEveryFourthDay() {
        assertEquals(70.0 * 1.25 - 0.6, mean(days(0.0015), Wet::minutes), 8.0);
    }

    @Test
    void aCloudburstHasSixBurstsAtMost() {
        Wet[] days = days(0.2);
        assertEquals(6 * 69.5, mean(days, Wet::minutes), 15.0);
        assertEquals(6 * 70.0 + 5 * 40.0, mean(days, day -> day.last() - day.first() + 1), 30.0);
    }

    @Test
    void aBurstPeaksEarlyAndThinsOut() {
        UniformRandomProvider random = random("spell");
        double[] sum = new double[100];
        for (int i = 0; i < 2000; i++) {
            RainBursts.fillSpell(sum, 0, 100, 1.0, random);
        }
        // 0.1 + a triangle with its peak drawn from 0.1 to 0.5 of the time, over its area of 0.6: in the first tenth
        // 0.1 + 0.05 ln(5) / 0.4, in the last 0.1 + 0.05 ln(1.8) / 0.4; roughness is even.
        assertEquals(0.0502, Plans.sum(t -> sum[t], 0, 10) / 2000.0, 0.002);
        assertEquals(0.0289, Plans.sum(t -> sum[t], 90, 100) / 2000.0, 0.0012);
        assertTrue(Plans.sum(t -> sum[t], 20, 40) > Plans.sum(t -> sum[t], 50, 70));
    }

    @Test
    void aSpellLiesOverWhatFallsAlreadyAndEndsWithTheSeries() {
        double[] rain = new double[60];
        Arrays.fill(rain, 1.0);
        RainBursts.fillSpell(rain, 50, 30, 0.5, random("cut"));
        assertEquals(50.0, Arrays.stream(rain, 0, 50).sum());
        assertEquals(10.5, Arrays.stream(rain, 50, 60).sum(), 1e-12);
        assertTrue(rain[50] > 1.0 && rain[59] > 1.0);
        double[] before = rain.clone();
        RainBursts.fillSpell(rain, 60, 30, 0.5, random("cut"));
        RainBursts.fillSpell(rain, 70, 30, 0.5, random("cut"));
        RainBursts.fillSpell(rain, 10, 0, 0.5, random("cut"));
        RainBursts.fillSpell(rain, 10, 30, 0.0, random("cut"));
        assertEquals(Arrays.toString(before), Arrays.toString(rain));
    }

    @Test
    void rainIsRoughByItsLognormalNoise() {
        UniformRandomProvider random = random("rough");
        double sum = 0.0;
        int count = 0;
        for (int i = 0; i < 50; i++) {
            double[] rain = new double[1000];
            RainBursts.fillSpell(rain, 0, 1000, 1.0, random);
            // The last minute takes the rest; between neighbours the shape hardly changes.
            for (int t = 600; t < 900; t++) {
                double step = Math.log(rain[t + 1] / rain[t]);
                sum += step * step;
                count++;
            }
        }
        assertEquals(0.5, Math.sqrt(sum / count / 2.0), 0.015);
    }

    @Test
    void drawsHaveTheirMoments() {
        UniformRandomProvider random = random("draws");
        double[] x = IntStream.range(0, 40_000)
                .mapToDouble(i -> Draws.gaussian(random))
                .toArray();
        assertMoments(x, 0.0, 1.0);
        assertEquals(0.1587, Arrays.stream(x).filter(v -> v > 1.0).count() / 40_000.0, 0.008);
        double[] e = IntStream.range(0, 40_000)
                .mapToDouble(i -> Draws.exponential(random, 3.0))
                .toArray();
        assertMoments(e, 3.0, 9.0);
        // Gamma: mean alpha beta, variance alpha beta squared; the skewness 2 / sqrt(alpha) tells shapes apart.
        double[] wide = IntStream.range(0, 40_000)
                .mapToDouble(i -> Draws.gamma(random, 0.5, 2.0))
                .toArray();
        assertMoments(wide, 1.0, 2.0);
        double[] tall = IntStream.range(0, 40_000)
                .mapToDouble(i -> Draws.gamma(random, 4.0, 0.5))
                .toArray();
        assertMoments(tall, 2.0, 1.0);
        assertEquals(1.0, skewness(tall), 0.15);
        double[] one = IntStream.range(0, 40_000)
                .mapToDouble(i -> Draws.gamma(random, 1.0, 1.0))
                .toArray();
        assertMoments(one, 1.0, 1.0);
        assertEquals(2.0, skewness(one), 0.35);
    }

    private static void assertMoments(double[] x, double mean, double variance) {
        double got = Arrays.stream(x).average().orElseThrow();
        double spread =
                Arrays.stream(x).map(v -> (v - got) * (v - got)).average().orElseThrow();
        assertEquals(mean, got, 4.0 * Math.sqrt(variance / x.length));
        assertEquals(variance, spread, 0.06 * variance);
    }

    private static double skewness(double[] x) {
        double mean = Arrays.stream(x).average().orElseThrow();
        double second =
                Arrays.stream(x).map(v -> (v - mean) * (v - mean)).average().orElseThrow();
        double third =
                Arrays.stream(x).map(v -> Math.pow(v - mean, 3.0)).average().orElseThrow();
        return third / Math.pow(second, 1.5);
    }

    private double[] speed(double... means) {
        double[] wind = new double[means.length * DAY];
        List<DayValues> days = Arrays.stream(means)
                .mapToObj(mean -> new DayValues(20.0, 10.0, 8.0, 0.8, mean, 0.0, null))
                .toList();
        new WindPattern(new RandomStreams(5)).fillSpeed(wind, days, Plans.NOVEMBER, level);
        return wind;
    }

    @Test
    void eachDaysWindHasItsMean() {
        double[] means = {3.0, 0.0, 5.0, 0.3, 12.0};
        double[] wind = speed(means);
        for (int day = 0; day < means.length; day++) {
            int start = day * DAY;
            assertEquals(means[day], Plans.sum(t -> wind[t], start, start + DAY) / DAY, 1e-9);
        }
        assertTrue(Arrays.stream(wind).allMatch(v -> v >= 0.0));
    }

    @Test
    void gustsHaveTheirSpreadAndTheirMemory() {
        double[] means = new double[40];
        Arrays.fill(means, 3.0);
        double[] wind = speed(means);
        double[] log = Arrays.stream(wind).map(Math::log).toArray();
        double mean = Arrays.stream(log).average().orElseThrow();
        // 0.3 by the slow part, less where it runs straight between steps, and 0.1 by the minute.
        assertEquals(0.31, Math.sqrt(covariance(log, mean, 0)), 0.025);
        // A first-order process with a memory of 45 min, seen at 50, 100 min: exp(-10/9), exp(-20/9) of 0.09.
        assertEquals(0.09 * Math.exp(-10.0 / 9.0), covariance(log, mean, 50), 0.008);
        assertEquals(0.09 * Math.exp(-20.0 / 9.0), covariance(log, mean, 100), 0.008);
        // Minutes apart by one differ by the noise of two of them: 2 x 0.01.
        double steps = IntStream.range(1, log.length)
                .mapToDouble(t -> (log[t] - log[t - 1]) * (log[t] - log[t - 1]))
                .average()
                .orElseThrow();
        assertEquals(0.0206, steps, 0.0012);
        assertTrue(Arrays.stream(wind).max().orElseThrow() < 3.0 * Math.exp(0.3 * 4.5) * 1.25);
    }

    @Test
    void theSlowGustRunsStraightBetweenItsSteps() {
        double[] means = new double[40];
        Arrays.fill(means, 3.0);
        double[] wind = speed(means);
        double[] square = new double[10];
        double[] log = Arrays.stream(wind).map(Math::log).toArray();
        for (int t = 10; t + 10 < log.length; t += 10) {
            for (int i = 0; i < 10; i++) {
                square[i] += Math.pow(log[t + i + 1] - log[t + i], 2.0) / (log.length / 10.0 - 2.0);
            }
        }
        // No jump where one step gives way to the next: each place in the step changes alike.
        for (double v : square) {
            assertEquals(0.0206, v, 0.003);
        }
    }

    private static double covariance(double[] x, double mean, int lag) {
        double sum = 0.0;
        for (int i = lag; i < x.length; i++) {
            sum += (x[i] - mean) * (x[i - lag] - mean);
        }
        return sum / (x.length - lag);
    }

    @Test
    void daysMeetAtTheCalmerOnesMean() {
        double[] means = new double[60];
        for (int i = 0; i < means.length; i++) {
            means[i] = i % 2 == 0 ? 2.0 : 6.0;
        }
        double[] wind = speed(means);
        // The mean of exp(0.3 x) is exp(0.045).
        double meeting = 2.0 * Math.exp(0.045);
        for (int minute : new int[] {0, 2, DAY - 3, DAY - 1}) {
            assertEquals(meeting, windyDays(wind, minute), 0.45, "at " + minute);
        }
        double noon = (windyDays(wind, 600) + windyDays(wind, 720) + windyDays(wind, 840)) / 3.0;
        // Half way up at an hour and a half, whole at three hours.
        double edge = (windyDays(wind, 90) + windyDays(wind, DAY - 91)) / 2.0;
        assertEquals((meeting + noon) / 2.0, edge, 0.6);
        double whole = (windyDays(wind, 200) + windyDays(wind, 260) + windyDays(wind, DAY - 200)) / 3.0;
        assertEquals(noon, whole, 0.8);
        assertTrue(noon > 6.0);
    }

    private static double windyDays(double[] wind, int minute) {
        return IntStream.range(0, 30)
                .mapToDouble(i -> wind[(2 * i + 1) * DAY + minute])
                .average()
                .orElseThrow();
    }

    private static double[] direction(List<Double> rose) {
        double[] from = new double[60 * DAY];
        new WindPattern(new RandomStreams(6)).fillDirection(from, rose);
        return from;
    }

    private static double share(double[] from, int sector) {
        return Arrays.stream(from)
                        .filter(v -> Math.abs(WindPattern.turn(sector * 45.0, v)) < 22.5)
                        .count()
                / (double) from.length;
    }

    @Test
    void aRoseOfOneSectorBlowsFromIt() {
        double[] from = direction(List.of(0.0, 0.0, 3.0, 0.0, 0.0, 0.0, 0.0, -1.0));
        double[] off = Arrays.stream(from).map(v -> WindPattern.turn(90.0, v)).toArray();
        double mean = Arrays.stream(off).average().orElseThrow();
        assertEquals(0.0, mean, 2.5);
        // Bearings even over 45 degrees (13 degrees of deviation) and a wander of 8: together some 15.
        double spread = Math.sqrt(Arrays.stream(off).map(v -> v * v).average().orElseThrow());
        assertEquals(15.0, spread, 1.8);
        assertTrue(Arrays.stream(off).allMatch(v -> Math.abs(v) < 22.5 + 5 * 8.0));
        // From minute to minute the wander moves by 8 sqrt(2 (1 - exp(-1/40))) = 1.8 degrees.
        double step = Math.sqrt(IntStream.range(1, off.length)
                .mapToDouble(t -> (off[t] - off[t - 1]) * (off[t] - off[t - 1]))
                .average()
                .orElseThrow());
        assertEquals(1.78, step, 0.06);
    }

    @Test
    void theRoseGivesTheSectorsTheirShares() {
        double[] from = direction(List.of(1.0, 0.0, 0.0, 0.0, 3.0, 0.0, 0.0, 0.0));
        double north = share(from, 0) + share(from, 1) / 2 + share(from, 7) / 2;
        assertEquals(0.25, north, 0.14);
        assertTrue(share(from, 4) > 0.5);
    }

    @Test
    void withoutARoseItBlowsFromEverywhere() {
        for (List<Double> rose : Arrays.asList(null, List.of(1.0, 2.0), Collections.nCopies(8, 0.0))) {
            double[] from = direction(rose);
            for (int sector = 0; sector < 8; sector++) {
                assertEquals(0.125, share(from, sector), 0.1, "sector " + sector);
            }
        }
    }

    @Test
    void spellsLastEightHoursInTheMean() {
        // Only north and south, so that each turn of 180 degrees is one of an even chance at the end of a spell.
        double[] from = direction(List.of(1.0, 0.0, 0.0, 0.0, 1.0, 0.0, 0.0, 0.0));
        int turns = 0;
        boolean north = true;
        for (double v : from) {
            double off = Math.abs(WindPattern.turn(0.0, v));
            if (north ? off > 140.0 : off < 40.0) {
                turns++;
                north = !north;
            }
        }
        assertEquals(60 * 24 / 8.0 / 2.0, turns, 35.0);
    }

    @Test
    void bearingsAreBroughtIntoTheCircleAndTurnTheShortWay() {
        assertEquals(0.0, WindPattern.circle(360.0));
        assertEquals(10.0, WindPattern.circle(730.0), 1e-12);
        assertEquals(350.0, WindPattern.circle(-10.0), 1e-12);
        assertEquals(0.0, WindPattern.circle(-1e-20));
        assertEquals(20.0, WindPattern.turn(350.0, 10.0), 1e-12);
        assertEquals(-20.0, WindPattern.turn(10.0, 350.0), 1e-12);
        assertEquals(-180.0, WindPattern.turn(0.0, 180.0), 1e-12);
    }
}
