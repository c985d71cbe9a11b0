package provingyard.world.weather;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalTime;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import provingyard.numeric.RandomStreams;
import provingyard.scenario.WeatherPlan.Event;
import provingyard.scenario.WeatherPlan.EventKind;

/** Events over four days on which nothing changes, so that every ramp can be read off by hand. */
@Tag("unit")
class EventLayerTest {

    private static final int DAY = 1440;
    private static final int TEN = DAY + 600;
    private static final double DEW_POINT_BELOW_LOW = 2.0;

    private final SeasonSun sun = new SeasonSun(Plans.EAST, Plans.NOVEMBER, 4);
    private final MinuteFields fields = even();

    private static MinuteFields even() {
        MinuteFields fields = new MinuteFields(4 * DAY);
        Arrays.fill(fields.air, 10.0);
        Arrays.fill(fields.dewPoint, 5.0);
        Arrays.fill(fields.wind, 2.0);
        Arrays.fill(fields.windFrom, 90.0);
        Arrays.fill(fields.sun, 300.0);
        Arrays.fill(fields.cloud, 0.1);
        Arrays.fill(fields.rain, 1e-4);
        return fields;
    }

    private void lay(Event... events) {
        new EventLayer(fields, sun, DEW_POINT_BELOW_LOW, new RandomStreams(3)).lay(List.of(events));
    }

    private void assertUntouched() {
        MinuteFields before = even();
        assertArrayEquals(before.air, fields.air);
        assertArrayEquals(before.dewPoint, fields.dewPoint);
        assertArrayEquals(before.wind, fields.wind);
        assertArrayEquals(before.windFrom, fields.windFrom);
        assertArrayEquals(before.sun, fields.sun);
        assertArrayEquals(before.cloud, fields.cloud);
        assertArrayEquals(before.rain, fields.rain);
    }

    @Test
    void aStormFallsInPlaceOfOtherRainUnderRisingAndFallingCloud() {
        lay(Plans.storm(2, "10:00", 0.01, 3600.0));
        assertEquals(0.01, Plans.sum(t -> fields.rain[t], TEN, TEN + 60), 1e-16);
        assertEquals(1e-4, fields.rain[TEN - 1]);
        assertEquals(1e-4, fields.rain[TEN + 60]);
        // Half an hour in and out: a third of 0.95 stands ten minutes after the cloud began.
        assertEquals(0.1, fields.cloud[TEN - 30]);
        assertEquals(0.95 / 3.0, fields.cloud[TEN - 20], 1e-12);
        assertEquals(0.475, fields.cloud[TEN - 15], 1e-12);
        assertEquals(0.95, fields.cloud[TEN], 1e-12);
        assertEquals(0.95, fields.cloud[TEN + 60], 1e-12);
        assertEquals(0.475, fields.cloud[TEN + 75], 1e-12);
        assertEquals(0.1, fields.cloud[TEN + 90]);
        // Under 0.95 of cloud 0.275/0.75 of the clear sky's sun arrives, under 0.1 it was 0.7/0.75 (Angström).
        assertEquals(300.0 * 0.275 / 0.7, fields.sun[TEN + 30], 1e-9);
        assertEquals(300.0, fields.sun[TEN - 31]);
    }

    @Test
    void aStormNeverThinsTheCloudThatIsThere() {
        Arrays.fill(fields.cloud, 0.5);
        lay(Plans.storm(2, "10:00", 0.01, 3600.0));
        assertEquals(0.5, fields.cloud[TEN - 20]);
        assertEquals(0.95, fields.cloud[TEN + 1], 1e-12);
    }

    @Test
    void withoutALengthAnEventLastsToTheEndOfItsDay() {
        lay(Plans.storm(2, "10:00", 0.02, 0.0), Plans.dry(3, 0.0));
        assertEquals(0.02, Plans.sum(t -> fields.rain[t], TEN, 2 * DAY), 1e-16);
        assertTrue(fields.rain[2 * DAY - 1] > 0.0);
        assertEquals(0.0, Plans.sum(t -> fields.rain[t], 2 * DAY, 3 * DAY));
        assertEquals(1e-4, fields.rain[3 * DAY]);
    }

    @Test
    void theShortestEventIsAMinute() {
        lay(Plans.dry(2, 10.0));
        assertEquals(0.0, fields.rain[DAY]);
        assertEquals(1e-4, fields.rain[DAY - 1]);
        assertEquals(1e-4, fields.rain[DAY + 1]);
    }

    @Test
    void whatLiesOutsideTheSeasonOrLacksItsSizeHasNoEffect() {
        lay(
                Plans.storm(0, "10:00", 0.01, 3600.0),
                Plans.dry(0, 3600.0),
                Plans.dry(5, 3600.0),
                Plans.wind(5, "10:00", 8.0, 350.0, 3600.0),
                Plans.clearCalmNight(0, -3.0),
                Plans.clearCalmNight(5, -3.0),
                new Event(EventKind.CLEAR_CALM_NIGHT, 2, null, 0.0, null, null, null, null),
                new Event(EventKind.STORM, 2, LocalTime.NOON, 60.0, null, null, null, null),
                new Event(EventKind.WIND, 2, LocalTime.NOON, 60.0, null, null, null, null));
        assertUntouched();
    }

    @Test
    void anEventIsCutAtTheSeasonsEnds() {
        lay(Plans.dry(0, 2.0 * 86_400.0), Plans.storm(4, "23:30", 0.01, 7200.0));
        assertEquals(0.0, Plans.sum(t -> fields.rain[t], 0, DAY));
        assertEquals(1e-4, fields.rain[DAY]);
        assertEquals(0.01, Plans.sum(t -> fields.rain[t], 4 * DAY - 30, 4 * DAY), 1e-16);
    }

    @Test
    void aWindComesAndGoesInTenMinutes() {
        lay(Plans.wind(2, "10:00", 8.0, 350.0, 3600.0));
        for (int t : new int[] {TEN, TEN + 30, TEN + 59}) {
            assertEquals(8.0, fields.wind[t], 1e-12);
            assertEquals(350.0, fields.windFrom[t], 1e-12);
        }
        // Half way in, half of the 6 m/s and half of the 100 degrees over north are done.
        assertEquals(5.0, fields.wind[TEN - 5], 1e-12);
        assertEquals(40.0, fields.windFrom[TEN - 5], 1e-12);
        assertEquals(2.6, fields.wind[TEN - 9], 1e-12);
        assertEquals(5.0, fields.wind[TEN + 64], 1e-12);
        assertEquals(40.0, fields.windFrom[TEN + 64], 1e-12);
        assertEquals(2.6, fields.wind[TEN + 68], 1e-12);
        for (int t : new int[] {TEN - 10, TEN - 11, TEN + 69, TEN + 70, 0}) {
            assertEquals(2.0, fields.wind[t]);
            assertEquals(90.0, fields.windFrom[t]);
        }
    }

    @Test
    void gustsKeepTheirPattern() {
        for (int t = 0; t < fields.ticks(); t++) {
            fields.wind[t] = t % 2 == 0 ? 1.0 : 3.0;
        }
        lay(Plans.wind(2, "10:00", 8.0, 90.0, 3600.0));
        assertEquals(4.0, fields.wind[TEN + 10], 1e-12);
        assertEquals(12.0, fields.wind[TEN + 11], 1e-12);
    }

    @Test
    void aWindRisesOutOfACalmToo() {
        Arrays.fill(fields.wind, 0.0);
        lay(Plans.wind(2, "10:00", 8.0, 90.0, 3600.0));
        assertEquals(8.0, fields.wind[TEN]);
        assertEquals(0.0, fields.wind[TEN - 10]);
    }

    @Test
    void aWindAtTheSeasonsEndsIsCutThere() {
        lay(Plans.wind(1, "00:00", 8.0, 90.0, 600.0), Plans.wind(4, "23:55", 6.0, 90.0, 3600.0));
        assertEquals(8.0, fields.wind[0], 1e-12);
        assertEquals(6.0, fields.wind[4 * DAY - 1], 1e-12);
        assertEquals(4.0, fields.wind[4 * DAY - 10], 1e-12);
    }

    @Test
    void aClearCalmNightFallsAlongTheNightCurveAndReturnsByTheTimeOfTheHigh() {
        lay(Plans.clearCalmNight(2, -3.0));
        int dusk = (int) Math.round(sun.sunsetTick(0));
        int dawn = TemperatureCurve.lowTick(sun, 1);
        int high = TemperatureCurve.highTick(sun, 1);
        assertEquals(10.0, fields.air[dusk - 1]);
        assertEquals(10.0, fields.air[dusk], 1e-12);
        // Parton and Logan's night, coefficient 2.2: at half time 0.24974 of the fall is left.
        assertEquals(-3.0 + 13.0 * 0.24974, between(fields.air, dusk, dawn, 0.5), 1e-3);
        assertEquals(-3.0, fields.air[dawn], 1e-12);
        // Back along 3x2 - 2x3: 0.15625 at a quarter, one half at half time.
        assertEquals(-3.0 + 13.0 * 0.15625, between(fields.air, dawn, high, 0.25), 1e-3);
        assertEquals(3.5, between(fields.air, dawn, high, 0.5), 1e-3);
        assertEquals(10.0, fields.air[high], 1e-12);
        assertEquals(10.0, fields.air[high + 1]);
        // The dew point falls straight by 10 K to 2 K under the low, and comes back with the air.
        assertEquals(5.0, fields.dewPoint[dusk]);
        assertEquals(2.5, between(fields.dewPoint, dusk, dawn, 0.25), 1e-3);
        assertEquals(-5.0, fields.dewPoint[dawn], 1e-12);
        assertEquals(-5.0 + 10.0 * 0.15625, between(fields.dewPoint, dawn, high, 0.25), 1e-3);
        assertEquals(5.0, fields.dewPoint[high], 1e-12);
    }

    /** The value at a share of the time from one tick to another, straight between minutes. */
    private static double between(double[] values, int from, int to, double share) {
        double at = from + (to - from) * share;
        int before = (int) at;
        return values[before] + (values[before + 1] - values[before]) * (at - before);
    }

    @Test
    void aClearCalmNightIsClearCalmAndDryFromAnHourAfterSunset() {
        lay(Plans.clearCalmNight(2, -3.0));
        int dusk = (int) Math.round(sun.sunsetTick(0));
        int dawn = TemperatureCurve.lowTick(sun, 1);
        assertEquals(2.0, fields.wind[dusk], 1e-12);
        assertEquals(0.1, fields.cloud[dusk], 1e-12);
        assertEquals(1.4, fields.wind[dusk + 30], 1e-12);
        assertEquals(0.05, fields.cloud[dusk + 30], 1e-12);
        for (int t : new int[] {dusk + 60, dawn, dawn + 60}) {
            assertEquals(0.8, fields.wind[t], 1e-12);
            assertEquals(0.0, fields.cloud[t], 1e-12);
            // A clear sky instead of one tenth of cloud: 0.75 / 0.7 of the sun.
            assertEquals(300.0 * 0.75 / 0.7, fields.sun[t], 1e-9);
        }
        assertEquals(1.4, fields.wind[dawn + 90], 1e-12);
        assertEquals(0.05, fields.cloud[dawn + 90], 1e-12);
        assertEquals(2.0, fields.wind[dawn + 120]);
        assertEquals(2.0, fields.wind[dusk - 1]);
        assertEquals(1e-4, fields.rain[dusk - 1]);
        assertEquals(0.0, Plans.sum(t -> fields.rain[t], dusk, dawn + 60));
        assertEquals(1e-4, fields.rain[dawn + 60]);
    }

    @Test
    void aNightThatIsCalmAndDryAlreadyStaysSo() {
        Arrays.fill(fields.wind, 0.5);
        Arrays.fill(fields.dewPoint, -20.0);
        lay(Plans.clearCalmNight(2, -3.0));
        assertTrue(Arrays.stream(fields.wind).allMatch(wind -> wind == 0.5));
        assertTrue(Arrays.stream(fields.dewPoint).allMatch(dewPoint -> dewPoint == -20.0));
    }

    @Test
    void aFirstNightBeginsWithTheSeason() {
        lay(Plans.clearCalmNight(1, -3.0));
        int dawn = TemperatureCurve.lowTick(sun, 0);
        assertEquals(10.0, fields.air[0], 1e-12);
        assertEquals(0.8, fields.wind[0], 1e-12);
        assertEquals(0.0, fields.cloud[0], 1e-12);
        assertEquals(-3.0, fields.air[dawn], 1e-12);
    }

    @Test
    void drawnEventsKeepAllButTheirDay() {
        Event storm = Plans.storm(2, "15:20", 0.015, 3000.0);
        boolean[] seen = new boolean[6];
        var random = new RandomStreams(9).sequence("draw");
        for (int i = 0; i < 200; i++) {
            Event moved = EventLayer.drawn(List.of(storm), 5, random).get(0);
            seen[moved.day()] = true;
            assertEquals(storm, new Event(moved.kind(), 2, moved.at(), moved.lasts(), null, moved.depth(), null, null));
        }
        assertArrayEquals(new boolean[] {false, true, true, true, true, true}, seen);
    }
}
