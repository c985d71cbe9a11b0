package provingyard.world.weather;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import provingyard.numeric.RandomStreams;
import provingyard.reference.ReferenceRow;
import provingyard.reference.Table;
import provingyard.reference.Table.Line;
import provingyard.scenario.Place;
import provingyard.scenario.WeatherPlan;
import provingyard.scenario.WeatherPlan.Day;

public class WeatherSeriesTest {

    private static final int DAY = 1440;

    /** A plan under a name. */
    record Case(String name, WeatherPlan plan, Place place, LocalDate from, int days) {

        WeatherSeries of(long seed) {
            return WeatherSeries.of(plan, place, from, days, new RandomStreams(seed), Plans.with(files()));
        }

        WeatherSeries drawn(long seed) {
            return WeatherSeries.drawn(plan, place, from, days, new RandomStreams(seed), Plans.with(files()));
        }

        private static Map<String, String> files() {
            return Map.of("hours.csv", hourlyFile(20));
        }

        @Override
        public String toString() {
            return name;
        }
    }

    static Stream<Case> cases() {
        WeatherPlan events = Plans.measured(
                "New York",
                Plans.clearCalmNight(1, -1.0),
                Plans.clearCalmNight(9, 0.5),
                Plans.storm(14, "15:20", 0.015, 3000.0),
                Plans.wind(20, "10:00", 12.0, 300.0, 7200.0),
                Plans.dry(26, 2 * 86400.0));
        Day sunny = new Day(28.0, 14.0, 0.0, null, 0.0, 0.9, 2.0);
        Day wet = new Day(20.0, 12.0, 0.012, LocalTime.of(16, 0), 5400.0, 0.2, 4.0);
        return Stream.of(
                new Case("measured New York", Plans.measured("New York"), Plans.EAST, Plans.NOVEMBER, 30),
                new Case("measured Seattle", Plans.measured("Seattle"), Plans.WEST, LocalDate.of(2014, 4, 1), 60),
                new Case("events over New York", events, Plans.EAST, Plans.NOVEMBER, 30),
                new Case("generated Seattle", Plans.generated("Seattle"), Plans.WEST, LocalDate.of(2026, 1, 1), 60),
                new Case("scripted", Plans.scripted(sunny, sunny, wet), Plans.EAST, LocalDate.of(2026, 7, 1), 8),
                new Case("hourly", Plans.hourly("hours.csv"), Plans.EAST, LocalDate.of(2026, 5, 3), 12));
    }

    static String hourlyFile(int days) {
        StringBuilder text = new StringBuilder("time,air_C,dew_point_C,wind_m_s,wind_from_deg,sun_W_m2,rain_mm\n");
        for (int hour = 0; hour < days * 24; hour++) {
            int h = hour % 24;
            double air = 12.0 + 6.0 * Math.cos((h - 15) * Math.PI / 12.0);
            double sun = Math.max(0.0, 700.0 * Math.cos((h - 11.5) * Math.PI / 13.0));
            text.append(LocalDate.of(2026, 5, 1).atStartOfDay().plusHours(hour))
                    .append("," + air + ",5.0,3.0," + (hour * 7) % 360 + "," + sun + "," + (h == 9 ? 1.3 : 0.0) + "\n");
        }
        return text.toString();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void everyMinuteIsPhysicallyPossible(Case c) {
        for (WeatherSeries series : List.of(c.of(7), c.drawn(8))) {
            for (int t = 0; t < series.ticks(); t++) {
                Weather w = series.at(t);
                double step = t == 0 ? 0.0 : Math.abs(w.air() - series.air(t - 1));
                if (!isPossible(w) || !(step < 3.0)) {
                    fail(c + " tick " + t + ", step of air " + step + ": " + w);
                }
            }
        }
    }

    private static boolean isPossible(Weather w) {
        return within(w.air(), -45.0, 55.0)
                && within(w.dewPoint(), -60.0, w.air())
                && within(w.wind(), 0.0, 60.0)
                && within(w.windFrom(), 0.0, Math.nextDown(360.0))
                && within(w.cloud(), 0.0, 1.0)
                && within(w.sun(), 0.0, w.sunAltitude() > 0.0 ? 1200.0 : 0.0)
                && within(w.rain(), 0.0, 0.01)
                && within(w.reference(), 0.0, 2e-3 / 60.0)
                && within(w.sunBearing(), 0.0, 360.0);
    }

    /** False for a NaN. */
    private static boolean within(double value, double least, double most) {
        return value >= least && value <= most;
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void sameSeedSameBitsOtherSeedOthers(Case c) {
        assertEquals(minutes(c.of(7)), minutes(c.of(7)));
        assertEquals(minutes(c.drawn(7)), minutes(c.drawn(7)));
        assertNotEquals(minutes(c.of(7)), minutes(c.of(8)));
        assertNotEquals(minutes(c.drawn(7)), minutes(c.drawn(8)));
    }

    private static List<Weather> minutes(WeatherSeries series) {
        return IntStream.range(0, series.ticks()).mapToObj(series::at).toList();
    }

    @Test
    void measuredTotalsAreKeptWhateverTheSeed() {
        List<Line> november = Table.of(Plans.NOAA).lines().stream()
                .filter(line -> line.text("location").equals("New York"))
                .filter(line -> line.text("date").startsWith("2013-11"))
                .toList();
        double factor = Psychrometrics.windFactor(10.0);
        SeasonSun sun = new SeasonSun(Plans.EAST, Plans.NOVEMBER, 30);
        for (long seed : new long[] {1, 2, 3}) {
            WeatherSeries series = Plans.november(seed);
            for (int day = 0; day < 30; day++) {
                Line line = november.get(day);
                int start = day * DAY;
                double rain = Plans.sum(series::rain, start, start + DAY);
                assertEquals(line.number("precipitation") / 1000.0, rain, 0.0, line.toString());
                double wind = Plans.sum(series::wind, start, start + DAY) / DAY;
                assertEquals(line.number("wind") * factor, wind, 1e-9, line.toString());
                double low = series.air(TemperatureCurve.lowTick(sun, day));
                assertEquals(line.number("temp_min"), low, 1e-12, line.toString());
                double high = IntStream.range(start + DAY / 2, start + DAY * 5 / 6)
                        .mapToDouble(series::air)
                        .max()
                        .orElseThrow();
                assertEquals(line.number("temp_max"), high, 1e-3, line.toString());
            }
        }
    }

    /** Rows of annual totals. */
    public static Stream<ReferenceRow> annualRows() {
        return ReferenceRow.all().stream().filter(row -> row.id().startsWith("weather-"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("annualRows")
    void annualTotals(ReferenceRow row) {
        String site = row.input("site").asText();
        int year = row.input("year").asInt();
        LocalDate from = LocalDate.of(year, 1, 1);
        Place place = site.equals("Seattle") ? Plans.WEST : Plans.EAST;
        WeatherSeries series = WeatherSeries.of(
                Plans.measured(site), place, from, from.lengthOfYear(), new RandomStreams(5), Reference.FILES);
        SeasonSun sun = new SeasonSun(place, from, from.lengthOfYear());
        double rain = 0.0;
        double wind = 0.0;
        int wet = 0;
        int lowBelowZero = 0;
        int highBelowZero = 0;
        int lowUpToFour = 0;
        for (int day = 0; day < series.days(); day++) {
            int start = day * DAY;
            double depth = Plans.sum(series::rain, start, start + DAY);
            double low = series.air(TemperatureCurve.lowTick(sun, day));
            double high = series.air(TemperatureCurve.highTick(sun, day));
            rain += depth * 1000.0;
            wind += Plans.sum(series::wind, start, start + DAY) / DAY / Psychrometrics.windFactor(10.0);
            wet += depth > 0.0 ? 1 : 0;
            lowBelowZero += low < 0.0 ? 1 : 0;
            lowUpToFour += low <= 4.0 ? 1 : 0;
            highBelowZero += high < -0.001 ? 1 : 0;
        }
        double tolerance = row.tolerance(1.0);
        var expected = row.expected();
        assertEquals(expected.get("precip_mm").doubleValue(), rain, tolerance);
        assertEquals(expected.get("wind_sum_m_s").doubleValue(), wind, tolerance);
        assertEquals(expected.get("wet_days").intValue(), wet);
        assertEquals(expected.get("days_tmin_below_0").intValue(), lowBelowZero);
        assertEquals(expected.get("days_tmin_le_4").intValue(), lowUpToFour);
        assertEquals(expected.get("days_tmax_below_0").intValue(), highBelowZero);
    }

    @Tag("unit")
    @Test
    void aDrawIsMadeOfRecordedDaysNearTheCalendar() {
        MeasuredDays record = MeasuredDays.read(Plans.measured("New York").source(), Reference.FILES);
        TreeSet<String> seasons = new TreeSet<>();
        for (int seed = 0; seed < 20; seed++) {
            LocalDate from = LocalDate.of(2013, 12, 10);
            List<LocalDate> dates = DateChoice.drawn(
                    from, 43, record.dates(), new RandomStreams(seed).sequence("weather.draw"), record.file());
            assertEquals(43, dates.size());
            for (int i = 0; i < 43; i++) {
                assertTrue(record.dates().contains(dates.get(i)), dates.get(i).toString());
                int apart =
                        Math.abs(dates.get(i).getDayOfYear() - from.plusDays(i).getDayOfYear());
                assertTrue(Math.min(apart, 366 - apart) <= 17, dates.get(i) + " for " + from.plusDays(i));
                assertTrue(i % 5 == 0 || dates.get(i).equals(dates.get(i - 1).plusDays(1)));
            }
            seasons.add(dates.toString());
        }
        assertEquals(20, seasons.size());
    }

    @Tag("unit")
    @Test
    void theSunFollowsItsGeometry() {
        SeasonSun sun = new SeasonSun(Plans.WEST, Plans.NOVEMBER, 1);
        int number = SolarGeometry.dayNumber(Plans.NOVEMBER);
        double latitude = Math.toRadians(Plans.WEST.latitude());
        double noon = SolarGeometry.solarNoon(Plans.WEST.longitude(), Plans.WEST.utcOffset(), number);
        for (int t = 0; t < DAY; t += 7) {
            double hour = SolarGeometry.hourAngle((t + 0.5) / 60.0, noon);
            double sine = SolarGeometry.sineOfAltitude(latitude, SolarGeometry.declination(number), hour);
            double bearing = SolarGeometry.bearing(latitude, SolarGeometry.declination(number), hour);
            assertEquals(Math.toDegrees(Math.asin(sine)), sun.altitude()[t], 1e-9);
            assertEquals(bearing, sun.bearing()[t], 1e-9);
        }
        double day = Arrays.stream(sun.clearSky()).sum() * 60.0 / 1e6;
        assertEquals(Radiation.clearSky(130.0, SolarGeometry.dailyRa(latitude, number)), day, 0.01);
    }

    @Tag("unit")
    @Test
    void aScriptedDrawHasTheSameDays() {
        Case scripted =
                cases().filter(c -> c.name.equals("scripted")).findFirst().orElseThrow();
        WeatherSeries own = scripted.of(1);
        WeatherSeries drawn = scripted.drawn(2);
        assertEquals(Plans.sum(own::rain, 0, own.ticks()), Plans.sum(drawn::rain, 0, drawn.ticks()), 1e-12);
        assertEquals(0.012, Plans.sum(own::rain, 2 * DAY + 16 * 60, 2 * DAY + 16 * 60 + 90), 1e-15);
    }

    @Tag("unit")
    @Test
    void sunAndRainOfAnHourlyFileAreKeptAndTheAirFollows() {
        Case hourly = cases().filter(c -> c.name.equals("hourly")).findFirst().orElseThrow();
        WeatherSeries series = hourly.of(1);
        HourlyWeather hours = series.hours();
        for (int hour = 0; hour < hours.hours(); hour++) {
            int h = hour % 24;
            assertEquals(h == 9 ? 0.0013 : 0.0, hours.rain()[hour], 1e-15);
            assertEquals(12.0 + 6.0 * Math.cos((h - 15) * Math.PI / 12.0), hours.air()[hour], 0.25);
            double lowest = IntStream.range(hour * 60, hour * 60 + 60)
                    .mapToDouble(series::air)
                    .min()
                    .orElseThrow();
            assertEquals(lowest, hours.lowest()[hour]);
            double sun = Math.max(0.0, 700.0 * Math.cos((h - 11.5) * Math.PI / 13.0));
            assertEquals(hours.sun()[hour] > 0.0 ? sun : 0.0, hours.sun()[hour], 1e-9);
        }
        assertTrue(hours.sun()[12] > 600.0);
    }

    @Tag("unit")
    @Test
    void theSunOfTheSeriesStandsWhereItShould() {
        // 21 June 2026 at 40.6 N, 74 W: noon altitude 90 - 40.6 + 23.45 = 72.85 degrees, due south (geometry).
        WeatherSeries series = WeatherSeries.of(
                Plans.generated("New York"),
                Plans.EAST,
                LocalDate.of(2026, 6, 21),
                1,
                new RandomStreams(1),
                Reference.FILES);
        int noon = IntStream.range(0, DAY)
                .reduce((a, b) -> series.sunAltitude(a) > series.sunAltitude(b) ? a : b)
                .orElseThrow();
        assertEquals(72.85, series.sunAltitude(noon), 0.05);
        assertEquals(180.0, series.sunBearing(noon), 0.6);
        // Solar noon of that day is 11:58 by the zone's offset of 4 min and the equation of time of -1.8 min.
        assertEquals(11 * 60 + 58, noon, 2.0);
        assertTrue(series.sunBearing(8 * 60) < 120.0 && series.sunBearing(17 * 60) > 240.0);
    }

    @Test
    void seasonsOfReferenceEvapotranspirationAreCloseToTheDailyFormula() {
        LocalDate from = LocalDate.of(2014, 5, 1);
        WeatherSeries series = WeatherSeries.of(
                Plans.measured("Seattle"), Plans.WEST, from, 120, new RandomStreams(3), Reference.FILES);
        double hourly = Plans.sum(series::reference, 0, series.ticks()) * 1000.0;
        double daily = Table.of("weather-soil/seattle-daily-et0.csv").lines().stream()
                .filter(line -> {
                    LocalDate date = LocalDate.parse(line.text("date"));
                    return !date.isBefore(from) && date.isBefore(from.plusDays(120));
                })
                .mapToDouble(line -> line.number("et0_pm_missingdata_mm"))
                .sum();
        assertEquals(1.0, hourly / daily, 0.05, hourly + " mm by the hour, " + daily + " mm by the day");
    }

    @Test
    void heatOfWallsIsLivedMinuteByMinute() {
        WeatherSeries weather = cases().iterator().next().of(3);
        StoredHeat.Whole series = StoredHeat.Series.of(weather).whole();
        StoredHeat heat = StoredHeat.none();
        double most = 0;
        for (int tick = 0; tick < weather.ticks(); tick++) {
            heat = heat.after(weather.at(tick));
            for (int bearing = 0; bearing < 360; bearing += 45) {
                assertEquals(heat.facing(bearing), series.after(tick).facing(bearing), "minute " + tick);
                most = Math.max(most, heat.facing(bearing));
            }
        }
        assertTrue(most > 5, "some wall was warm: " + most);
    }
}
