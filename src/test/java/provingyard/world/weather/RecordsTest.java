package provingyard.world.weather;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.TreeSet;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import provingyard.numeric.RandomStreams;
import provingyard.scenario.Place;
import provingyard.scenario.WeatherPlan.Day;
import provingyard.scenario.WeatherPlan.Source;
import provingyard.scenario.WeatherPlan.SourceKind;

/** Days and hours that come from records or an author: which are taken, and what the minutes make of them. */
@Tag("unit")
class RecordsTest {

    private static final int DAY = 1440;
    private static final LocalDate MAY = LocalDate.of(2026, 5, 1);
    private final SeasonSun sun = new SeasonSun(Plans.EAST, MAY, 2);
    private static final String HEADER = "time,air_C,dew_point_C,wind_m_s,wind_from_deg,sun_W_m2,rain_mm\n";

    private static String hours(int first, int last, IntToDoubleFunction sun) {
        StringBuilder text = new StringBuilder();
        for (int hour = first; hour < last; hour++) {
            text.append(MAY.atStartOfDay().plusHours(hour))
                    .append("," + (10 + hour % 24) + "," + (hour % 24 < 12 ? 5 : 40))
                    .append("," + (2 + hour % 2 * 2) + "," + (hour % 2 == 0 ? 350 : 20))
                    .append("," + sun.applyAsDouble(hour) + "," + (hour == 9 ? 1.5 : 0) + "\n");
        }
        return text.toString();
    }

    private static HourlyRecords read(String rows) {
        return HourlyRecords.read(Plans.hourly("h.csv").source(), Plans.with(Map.of("h.csv", HEADER + rows)));
    }

    private static MinuteFields minutes(String rows, SeasonSun sun) {
        MinuteFields fields = new MinuteFields(2 * DAY);
        read(rows).fill(fields, List.of(MAY, MAY.plusDays(1)), 0.5, sun, new RandomStreams(1).sequence("rain"));
        return fields;
    }

    private double clearMean(int hour) {
        return Plans.sum(t -> sun.clearSky()[t], hour * 60, hour * 60 + 60) / 60.0;
    }

    @Test
    void airWindAndBearingRunStraightBetweenTheMiddlesOfTheHours() {
        MinuteFields fields = minutes(hours(0, 48, hour -> 0.0), sun);
        // The minute from 8:29 has its middle half a minute before 8:30, the middle of the hour.
        assertEquals(18.0, (fields.air[509] + fields.air[510]) / 2.0, 0.005);
        assertEquals(18.5, (fields.air[539] + fields.air[540]) / 2.0, 1e-9);
        assertEquals(18.25, (fields.air[524] + fields.air[525]) / 2.0, 1e-9);
        // 2 and 4 m/s, brought to 2 m by one half.
        assertEquals(1.5, (fields.wind[539] + fields.wind[540]) / 2.0, 1e-9);
        assertEquals(1.25, (fields.wind[524] + fields.wind[525]) / 2.0, 1e-9);
        // From 350 to 20 degrees by way of north.
        assertEquals(5.0, (fields.windFrom[539] + fields.windFrom[540]) / 2.0, 1e-9);
        assertEquals(357.5, (fields.windFrom[524] + fields.windFrom[525]) / 2.0, 1e-9);
        // Level before the first middle and after the last.
        assertEquals(10.0, fields.air[0], 1e-12);
        assertEquals(10.0, fields.air[29], 1e-12);
        assertEquals(33.0, fields.air[2 * DAY - 1], 1e-12);
        assertEquals(33.0, fields.air[2 * DAY - 30], 1e-12);
    }

    @Test
    void theDewPointIsHeldAtTheAir() {
        MinuteFields fields = minutes(hours(0, 48, hour -> 0.0), sun);
        assertEquals(5.0, fields.dewPoint[600], 1e-12);
        assertEquals(fields.air[900], fields.dewPoint[900], 1e-12);
    }

    @Test
    void rainAndSunKeepTheirHours() {
        MinuteFields fields = minutes(hours(0, 48, hour -> clearMean(hour) * 0.6), sun);
        for (int hour = 0; hour < 48; hour++) {
            int start = hour * 60;
            assertEquals(hour == 9 ? 0.0015 : 0.0, Plans.sum(t -> fields.rain[t], start, start + 60), 1e-17);
            assertEquals(clearMean(hour) * 0.6, Plans.sum(t -> fields.sun[t], start, start + 60) / 60.0, 1e-9);
        }
        assertEquals(0.6 * sun.clearSky()[700], fields.sun[700], 1e-9);
    }

    @Test
    void cloudIsReadFromTheSunAndCarriedOverTheNight() {
        // Half cloud lets (0.25 + 0.25) / 0.75 of the clear sky through; the second day is clear.
        MinuteFields fields = minutes(hours(0, 48, hour -> clearMean(hour) * (hour < 24 ? 2.0 / 3.0 : 1.0)), sun);
        assertEquals(0.5, fields.cloud[12 * 60], 1e-3);
        assertEquals(0.5, fields.cloud[0], 1e-3);
        assertEquals(0.0, fields.cloud[DAY + 12 * 60], 1e-3);
        assertEquals(0.0, fields.cloud[2 * DAY - 1], 1e-3);
        int evening = last(0);
        int morning = first(1);
        for (int hour = evening; hour <= morning; hour++) {
            double expected = 0.5 * (morning - hour) / (morning - evening);
            double middle = (fields.cloud[hour * 60 + 29] + fields.cloud[hour * 60 + 30]) / 2.0;
            assertEquals(expected, middle, 1e-3, "hour " + hour);
        }
    }

    /** The last hour of a day with the sun over 0.3 rad (17.2 degrees) in its middle, by the table of altitudes. */
    private int last(int day) {
        return IntStream.range(day * 24, day * 24 + 24)
                .filter(hour -> sun.altitude()[hour * 60 + 30] >= 17.19)
                .max()
                .orElseThrow();
    }

    private int first(int day) {
        return IntStream.range(day * 24, day * 24 + 24)
                .filter(hour -> sun.altitude()[hour * 60 + 30] >= 17.19)
                .min()
                .orElseThrow();
    }

    @Test
    void withoutAnySunTheCloudIsTakenAsHalf() {
        SeasonSun dark = new SeasonSun(new Place(null, 80.0, 0.0, 0.0, 0.0), LocalDate.of(2026, 12, 21), 2);
        MinuteFields fields = minutes(hours(0, 48, hour -> 50.0), dark);
        for (int t = 0; t < 2 * DAY; t += 60) {
            assertEquals(0.5, fields.cloud[t]);
            assertEquals(0.0, fields.sun[t]);
        }
    }

    @Test
    void onlyWholeDaysCount() {
        HourlyRecords records = read(hours(0, 47, hour -> 0.0));
        assertEquals(new TreeSet<>(List.of(MAY)), records.dates());
        assertEquals("h.csv", records.file());
    }

    @Test
    void anHourBeginsAtItsFullHour() {
        for (String time : List.of("2026-05-01T06:30", "2026-05-01T06:00:10")) {
            WeatherDataException e = assertThrows(WeatherDataException.class, () -> read(time + ",1,0,1,0,0,0\n"));
            assertTrue(e.problem().what().contains("full hour"), e.problem().what());
            assertEquals(2, e.problem().line());
        }
    }

    private static NavigableSet<LocalDate> days(LocalDate from, int count) {
        TreeSet<LocalDate> days = new TreeSet<>();
        for (int i = 0; i < count; i++) {
            days.add(from.plusDays(i));
        }
        return days;
    }

    private static List<LocalDate> drawn(LocalDate from, int count, NavigableSet<LocalDate> recorded, int seed) {
        return DateChoice.drawn(from, count, recorded, new RandomStreams(seed).sequence("weather.draw"), "r.csv");
    }

    @Test
    void aSeasonTakesItsOwnDates() {
        assertEquals(List.of(MAY, MAY.plusDays(1), MAY.plusDays(2)), DateChoice.own(MAY, 3, days(MAY, 3), "r.csv"));
        WeatherDataException e =
                assertThrows(WeatherDataException.class, () -> DateChoice.own(MAY, 4, days(MAY, 3), "r.csv"));
        assertEquals(
                "has no complete 2026-05-04; on record are days from 2026-05-01 to 2026-05-03",
                e.problem().what());
        assertEquals("r.csv", e.problem().file());
    }

    @Test
    void blocksAreDrawnFromAllYearsAndAllShiftsUpToFifteenDays() {
        NavigableSet<LocalDate> recorded = days(LocalDate.of(2012, 1, 1), 3 * 365 + 1);
        LocalDate from = LocalDate.of(2026, 7, 1);
        TreeSet<Integer> years = new TreeSet<>();
        TreeSet<Long> shifts = new TreeSet<>();
        for (int seed = 0; seed < 500; seed++) {
            LocalDate first = drawn(from, 5, recorded, seed).get(0);
            years.add(first.getYear());
            shifts.add(first.toEpochDay() - from.withYear(first.getYear()).toEpochDay());
        }
        assertEquals(new TreeSet<>(List.of(2012, 2013, 2014)), years);
        assertEquals(31, shifts.size());
        assertEquals(-15L, shifts.first());
        assertEquals(15L, shifts.last());
    }

    @Test
    void theLastBlockIsCutToTheSeason() {
        List<LocalDate> dates = drawn(LocalDate.of(2026, 7, 1), 7, days(LocalDate.of(2012, 1, 1), 366), 3);
        assertEquals(7, dates.size());
        assertEquals(dates.get(0).plusDays(4), dates.get(4));
        assertEquals(dates.get(5).plusDays(1), dates.get(6));
    }

    @Test
    void blocksStayWhole() {
        // Only the first five days of July are on record: each block of five is just these.
        NavigableSet<LocalDate> recorded = days(LocalDate.of(2012, 7, 1), 5);
        for (int seed = 0; seed < 5; seed++) {
            assertEquals(List.copyOf(recorded), drawn(LocalDate.of(2026, 7, 3), 5, recorded, seed));
        }
    }

    @Test
    void aRecordTooShortForABlockIsNamed() {
        NavigableSet<LocalDate> four = days(LocalDate.of(2012, 7, 1), 4);
        WeatherDataException e =
                assertThrows(WeatherDataException.class, () -> drawn(LocalDate.of(2026, 7, 1), 9, four, 1));
        assertTrue(e.problem().what().contains("no 5 days in a row within 15 days of any 2026-07-01"));
        WeatherDataException none = assertThrows(WeatherDataException.class, () -> drawn(MAY, 9, new TreeSet<>(), 1));
        assertTrue(none.problem().what().contains("no day is on record"));
    }

    private static Source script(Day... days) {
        return new Source(SourceKind.SCRIPTED, null, null, 2.0, null, 2.0, List.of(days));
    }

    private static final Day SUNNY = new Day(28.0, 14.0, 0.0, null, 0.0, 1.4, 2.0);
    private static final Day WET = new Day(20.0, 12.0, 0.012, LocalTime.of(16, 10), 5400.0, -0.2, 4.0);
    private static final Day SHOWER = new Day(20.0, 12.0, 0.002, LocalTime.of(6, 0), 10.0, 0.5, 4.0);
    private static final Day FREE = new Day(20.0, 12.0, 0.002, LocalTime.of(6, 0), 0.0, 0.5, 4.0);

    @Test
    void aScriptIsTakenInItsOrderAndRepeats() {
        List<DayValues> days = ScriptedDays.own(script(SUNNY, WET, SHOWER, FREE), 6, 0.5);
        assertEquals(new DayValues(28.0, 14.0, 12.0, 1.0, 1.0, 0.0, null), days.get(0));
        assertEquals(new DayValues(20.0, 12.0, 10.0, 0.0, 2.0, 0.012, new DayValues.RainSpell(970, 90)), days.get(1));
        assertEquals(new DayValues.RainSpell(360, 1), days.get(2).spell());
        assertEquals(null, days.get(3).spell());
        assertEquals(days.get(0), days.get(4));
        assertEquals(days.get(1), days.get(5));
        assertEquals(6, days.size());
    }

    @Test
    void aScriptedDrawShufflesEvenly() {
        Day[] days = IntStream.range(0, 4)
                .mapToObj(i -> new Day(20.0 + i, 12.0, 0.0, null, 0.0, 0.5, 4.0))
                .toArray(Day[]::new);
        int[][] count = new int[4][4];
        var random = new RandomStreams(2).sequence("weather.draw");
        for (int n = 0; n < 1200; n++) {
            List<DayValues> drawn = ScriptedDays.drawn(script(days), 4, 1.0, random);
            List<Double> sorted = new ArrayList<>();
            for (int place = 0; place < 4; place++) {
                sorted.add(drawn.get(place).high());
                count[place][(int) drawn.get(place).high() - 20]++;
            }
            sorted.sort(null);
            assertEquals(List.of(20.0, 21.0, 22.0, 23.0), sorted);
        }
        // Each day stands at each place in a quarter of 1200 draws; four standard errors are 60.
        for (int[] place : count) {
            for (int times : place) {
                assertEquals(300.0, times, 60.0);
            }
        }
    }

    @Test
    void anEmptyScriptIsNamed() {
        Source none = new Source(SourceKind.SCRIPTED, null, null, 2.0, null, 2.0, null);
        for (Source source : List.of(script(), none)) {
            WeatherDataException e = assertThrows(WeatherDataException.class, () -> ScriptedDays.own(source, 2, 1.0));
            assertEquals("the scripted source has no days", e.problem().what());
            assertFalse(e.getMessage().isBlank());
        }
    }

    @Test
    void aProblemSaysItsFileAndLine() {
        assertEquals("r.csv:3: is odd", new WeatherDataProblem("r.csv", 3, "is odd").message());
        assertEquals("r.csv: is odd", new WeatherDataProblem("r.csv", 0, "is odd").message());
    }
}
