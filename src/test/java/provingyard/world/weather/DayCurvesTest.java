package provingyard.world.weather;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.StringJoiner;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import provingyard.numeric.RandomStreams;
import provingyard.scenario.Place;

/** From values of days to minutes: air, dew point, cloud, sun and the place of the sun, checked by hand. */
@Tag("unit")
class DayCurvesTest {

    private static final int DAY = 1440;
    private final SeasonSun sun = new SeasonSun(Plans.EAST, Plans.NOVEMBER, 3);
    private static final List<DayValues> DAYS = List.of(
            new DayValues(20.0, 10.0, 8.0, 0.8, 3.0, 0.0, null),
            new DayValues(16.0, 6.0, 2.0, 0.4, 3.0, 0.0, null),
            new DayValues(18.0, 8.0, 4.0, 0.5, 3.0, 0.0, null));

    private MinuteFields air() {
        MinuteFields fields = new MinuteFields(3 * DAY);
        new TemperatureCurve(DAYS, sun).fill(fields);
        return fields;
    }

    private MinuteFields sky(MinuteFields fields) {
        CloudCurve.fill(fields, DAYS, sun);
        return fields;
    }

    private int noon(int day) {
        return (int) sun.noonTick(day);
    }

    @Test
    void eachDayMeetsItsLowAndItsHigh() {
        MinuteFields fields = air();
        for (int day = 0; day < 3; day++) {
            int low = TemperatureCurve.lowTick(sun, day);
            int high = TemperatureCurve.highTick(sun, day);
            assertEquals(DAYS.get(day).low(), fields.air[low], 1e-12);
            assertEquals(DAYS.get(day).high(), fields.air[high], 1e-4);
            // The sine of 30 degrees is one half: a third of the way in time is half the way in temperature.
            int third = low + (int) Math.round((high - low) / 3.0);
            assertEquals((DAYS.get(day).low() + DAYS.get(day).high()) / 2.0, fields.air[third], 0.03);
        }
    }

    @Test
    void theLowIsTenMinutesBeforeSunriseAndTheHighFollowsNoon() {
        // Parton and Logan 1981: the low 0.17 h before sunrise; the high 1.86 h of the warming's time after noon.
        assertEquals(sun.sunriseTick(1) - 10.2, TemperatureCurve.lowTick(sun, 1), 0.5);
        assertEquals(sun.noonTick(1) + 111.6 - 10.2, TemperatureCurve.highTick(sun, 1), 0.5);
    }

    @Test
    void aNightFallsByItsExponential() {
        assertEquals(10.0, TemperatureCurve.night(10.0, 2.0, 0.0), 1e-12);
        assertEquals(2.0, TemperatureCurve.night(10.0, 2.0, 1.0), 1e-12);
        // (exp(-1.1) - exp(-2.2)) / (1 - exp(-2.2)) = (0.332871 - 0.110803) / 0.889197 = 0.249740
        assertEquals(2.0 + 8.0 * 0.249740, TemperatureCurve.night(10.0, 2.0, 0.5), 1e-5);
        assertEquals(10.0 - 8.0 * 0.249740, TemperatureCurve.night(2.0, 10.0, 0.5), 1e-5);
    }

    @Test
    void theAirHasNoJumpsAndFallsAllNight() {
        MinuteFields fields = air();
        for (int t = 1; t < fields.ticks(); t++) {
            assertTrue(Math.abs(fields.air[t] - fields.air[t - 1]) < 0.1, "step at " + t);
        }
        for (int t = (int) sun.sunsetTick(0) + 2; t <= TemperatureCurve.lowTick(sun, 1); t++) {
            assertTrue(fields.air[t] < fields.air[t - 1], "rises at " + t);
        }
        // The last evening falls toward a morning like its own.
        assertTrue(fields.air[3 * DAY - 1] > 8.0 && fields.air[3 * DAY - 1] < fields.air[3 * DAY - 60]);
        // The first night comes from an evening like its own day's.
        assertTrue(fields.air[0] > 10.0 && fields.air[0] < 16.0);
    }

    @Test
    void theDewPointRunsStraightFromMorningToMorning() {
        MinuteFields fields = air();
        int first = TemperatureCurve.lowTick(sun, 0);
        int second = TemperatureCurve.lowTick(sun, 1);
        int third = TemperatureCurve.lowTick(sun, 2);
        assertEquals(8.0, fields.dewPoint[0], 1e-12);
        assertEquals(8.0, fields.dewPoint[first], 1e-12);
        assertEquals(5.0, fields.dewPoint[(first + second) / 2], 0.005);
        assertEquals(2.0, fields.dewPoint[second], 1e-12);
        assertEquals(2.5, fields.dewPoint[second + (third - second) / 4], 0.005);
        assertEquals(4.0, fields.dewPoint[3 * DAY - 1], 1e-12);
    }

    @Test
    void theDewPointNeverLiesOverTheAir() {
        MinuteFields fields = new MinuteFields(DAY);
        DayValues damp = new DayValues(20.0, 10.0, 15.0, 0.8, 3.0, 0.0, null);
        new TemperatureCurve(List.of(damp), new SeasonSun(Plans.EAST, Plans.NOVEMBER, 1)).fill(fields);
        for (int t = 0; t < DAY; t++) {
            assertEquals(Math.min(15.0, fields.air[t]), fields.dewPoint[t], 1e-12);
        }
    }

    @Test
    void cloudIsTheDaysBySunAndRunsStraightOverTheNight() {
        MinuteFields fields = sky(new MinuteFields(3 * DAY));
        double[] cloud = {0.2, 0.6, 0.5};
        for (int day = 0; day < 3; day++) {
            assertEquals(cloud[day], fields.cloud[noon(day)], 1e-12);
            assertEquals(cloud[day], fields.cloud[(int) Math.ceil(sun.sunriseTick(day))], 1e-12);
            assertEquals(cloud[day], fields.cloud[(int) sun.sunsetTick(day)], 1e-12);
        }
        double sunset = sun.sunsetTick(0);
        double night = sun.sunriseTick(1) - sunset;
        assertEquals(0.3, fields.cloud[(int) Math.round(sunset + night / 4.0)], 5e-4);
        assertEquals(0.5, fields.cloud[(int) Math.round(sunset + night * 0.75)], 5e-4);
        assertEquals(0.2, fields.cloud[0], 1e-12);
        assertEquals(0.5, fields.cloud[3 * DAY - 1], 1e-12);
        for (int t = 1; t < fields.ticks(); t++) {
            assertTrue(Math.abs(fields.cloud[t] - fields.cloud[t - 1]) < 0.001, "step at " + t);
        }
    }

    @Test
    void anHourWithRainIsCloudy() {
        MinuteFields fields = new MinuteFields(3 * DAY);
        fields.rain[617] = 1e-4;
        fields.rain[DAY + 600] = 1e-4;
        fields.rain[DAY + 719] = 1e-4;
        sky(fields);
        assertEquals(0.2, fields.cloud[599], 1e-12);
        assertEquals(0.9, fields.cloud[600], 1e-12);
        assertEquals(0.9, fields.cloud[659], 1e-12);
        assertEquals(0.2, fields.cloud[660], 1e-12);
        assertEquals(0.9, fields.cloud[DAY + 600], 1e-12);
        assertEquals(0.9, fields.cloud[DAY + 660], 1e-12);
        assertEquals(0.6, fields.cloud[DAY + 599], 1e-12);
        assertEquals(0.6, fields.cloud[DAY + 720], 1e-12);
    }

    @Test
    void rainDoesNotClearAnOvercastSky() {
        MinuteFields fields = new MinuteFields(DAY);
        fields.rain[700] = 1e-4;
        DayValues overcast = new DayValues(20.0, 10.0, 8.0, 0.0, 3.0, 0.01, null);
        SeasonSun day = new SeasonSun(Plans.EAST, Plans.NOVEMBER, 1);
        CloudCurve.fill(fields, List.of(overcast), day);
        assertEquals(1.0, fields.cloud[700], 1e-12);
        // Angström: a third of the clear sky's sun comes through.
        assertEquals(day.clearSky()[700] / 3.0, fields.sun[700], 1e-9);
        assertTrue(fields.sun[700] > 100.0);
    }

    @Test
    void theSunThatComesThroughFollowsTheCloud() {
        MinuteFields fields = sky(new MinuteFields(3 * DAY));
        // Half the sunshine: (0.25 + 0.25) / 0.75 of the clear sky.
        assertEquals(sun.clearSky()[noon(2)] * 2.0 / 3.0, fields.sun[noon(2)], 1e-9);
        assertEquals(0.0, fields.sun[0]);
        fields.cloud(noon(2), 0.0);
        assertEquals(sun.clearSky()[noon(2)], fields.sun[noon(2)], 1e-9);
        assertEquals(0.0, fields.cloud[noon(2)]);
        assertEquals(3 * DAY, fields.ticks());
    }

    @Test
    void cloudAndItsShareOfSunAreInverse() {
        assertEquals(1.0, Radiation.shareUnderCloud(0.0), 1e-12);
        assertEquals(1.0 / 3.0, Radiation.shareUnderCloud(1.0), 1e-12);
        for (double cloud : new double[] {0.0, 0.3, 0.7, 1.0}) {
            assertEquals(cloud, Radiation.cloudOfShare(Radiation.shareUnderCloud(cloud)), 1e-12);
        }
        assertEquals(0.0, Radiation.cloudOfShare(1.3));
        assertEquals(1.0, Radiation.cloudOfShare(0.1));
    }

    @Test
    void sunshineOfADayComesFromItsRangeAndItsRain() {
        // 0.16 sqrt(16) = 0.64 of Ra; over 0.75 Ra clear; (0.64 - 0.25) / 0.5 = 0.78 of the sunshine.
        DayValues dry = DayValues.fromTemperatures(25.0, 9.0, 3.0, 4.0, 0.0, 0.75);
        assertEquals(new DayValues(25.0, 9.0, 6.0, dry.sunshine(), 4.0, 0.0, null), dry);
        assertEquals(0.78, dry.sunshine(), 1e-12);
        // A wet day has half of the cloud at least, all of it from 10 mm.
        assertEquals(
                0.45,
                DayValues.fromTemperatures(25.0, 9.0, 3.0, 4.0, 0.001, 0.75).sunshine(),
                1e-12);
        assertEquals(
                0.25,
                DayValues.fromTemperatures(25.0, 9.0, 3.0, 4.0, 0.005, 0.75).sunshine(),
                1e-12);
        assertEquals(
                0.0, DayValues.fromTemperatures(25.0, 9.0, 3.0, 4.0, 0.03, 0.75).sunshine(), 1e-12);
        // Its own cloud stays where that is more: 0.16 sqrt(4) = 0.32, sunshine 0.14.
        assertEquals(
                0.14,
                DayValues.fromTemperatures(13.0, 9.0, 3.0, 4.0, 0.001, 0.75).sunshine(),
                1e-12);
        assertEquals(
                1.0, DayValues.fromTemperatures(40.0, 4.0, 3.0, 4.0, 0.0, 0.75).sunshine(), 1e-12);
    }

    @Test
    void beforeAndAfterTheSeasonTheSunGoesOnAsAtItsEnds() {
        assertEquals(sun.noonTick(0) - DAY, sun.noonTick(-1), 1e-9);
        assertEquals(sun.sunsetTick(0) - DAY, sun.sunsetTick(-1), 1e-9);
        assertEquals(sun.sunriseTick(2) + DAY, sun.sunriseTick(3), 1e-9);
        assertEquals(3, sun.days());
        assertEquals(0.75 + 2e-5 * 9.0, sun.clearSkyShare(), 1e-12);
    }

    @Test
    void sunriseAndSunsetAreWhereTheSunCrossesTheHorizon() {
        for (int day = 0; day < 3; day++) {
            int rise = (int) Math.round(sun.sunriseTick(day));
            int set = (int) Math.round(sun.sunsetTick(day));
            assertTrue(sun.altitude()[rise - 2] < 0.0 && sun.altitude()[rise + 2] > 0.0);
            assertTrue(sun.altitude()[set - 2] > 0.0 && sun.altitude()[set + 2] < 0.0);
            assertEquals(0.0, sun.clearSky()[rise - 2]);
            assertTrue(sun.bearing()[rise] > 100.0 && sun.bearing()[rise] < 115.0, "south of east in November");
            assertEquals(360.0, sun.bearing()[rise] + sun.bearing()[set], 1.5);
        }
    }

    @Test
    void aSunThatNeverSetsLeavesAnHourOfNight() {
        Place north = new Place(null, 75.0, 0.0, 0.0, 0.0);
        SeasonSun polar = new SeasonSun(north, LocalDate.of(2026, 6, 21), 1);
        assertEquals(polar.noonTick(0) - 690.0, polar.sunriseTick(0), 1e-9);
        assertEquals(polar.noonTick(0) + 690.0, polar.sunsetTick(0), 1e-9);
    }

    @Test
    void theSunOfTheEquinoxRisesInTheEastAndCulminatesOverTheEquator() {
        double quarter = Math.PI / 2.0;
        assertEquals(1.0, SolarGeometry.sineOfAltitude(0.0, 0.0, 0.0), 1e-12);
        assertEquals(0.0, SolarGeometry.sineOfAltitude(0.7, 0.0, quarter), 1e-12);
        assertEquals(90.0, SolarGeometry.bearing(0.7, 0.0, -quarter), 1e-9);
        assertEquals(270.0, SolarGeometry.bearing(0.7, 0.0, quarter), 1e-9);
        assertEquals(180.0, SolarGeometry.bearing(0.7, 0.0, 0.0), 1e-9);
        assertEquals(0.0, SolarGeometry.bearing(-0.7, 0.0, 0.0), 1e-9);
        // At noon the altitude is 90 degrees less latitude plus declination.
        assertEquals(Math.sin(quarter - 0.7 + 0.4), SolarGeometry.sineOfAltitude(0.7, 0.4, 0.0), 1e-12);
    }

    @Test
    void polarNightAndPolarDayAreHeld() {
        assertEquals(0.0, SolarGeometry.sunsetHourAngle(Math.toRadians(80.0), 355), 1e-7);
        assertEquals(Math.PI, SolarGeometry.sunsetHourAngle(Math.toRadians(80.0), 172), 1e-7);
        assertEquals(0.0, SolarGeometry.dailyRa(Math.toRadians(80.0), 355), 1e-9);
        assertEquals(0.0, SolarGeometry.hourlyRa(Math.toRadians(40.0), 172, 2.0, 12.0));
        assertEquals(0.0, SolarGeometry.momentaryRa(-0.5, 10));
    }

    @Test
    void theHoursOfADayAddUpToItsRadiation() {
        double latitude = Math.toRadians(40.0);
        double sum = 0.0;
        for (int hour = 0; hour < 24; hour++) {
            sum += SolarGeometry.hourlyRa(latitude, 100, hour, 12.3);
        }
        assertEquals(SolarGeometry.dailyRa(latitude, 100), sum, 1e-9);
        // 0.0820 MJ/m2/min are 1367 W/m2 (FAO-56 eq. 21), on 1 January 3.3 % more.
        assertEquals(1366.67 * 1.033, SolarGeometry.momentaryRa(1.0, 1), 0.1);
    }

    @Test
    void humidityIsOneAtTheDewPoint() {
        assertEquals(1.0, Psychrometrics.relativeHumidity(20.0, 20.0), 1e-12);
        assertEquals(1.0, Psychrometrics.relativeHumidity(20.0, 21.0), 1e-12);
        // FAO-56 table 2.3: e0(15) = 1.705 kPa, e0(25) = 3.168 kPa.
        assertEquals(1.705 / 3.168, Psychrometrics.relativeHumidity(25.0, 15.0), 2e-4);
        assertEquals(15.0, Psychrometrics.dewPoint(1.705), 0.01);
        assertEquals(-12.0, Psychrometrics.dewPoint(Psychrometrics.saturationVapourPressure(-12.0)), 1e-9);
    }

    @Test
    void windRatiosRunStraightBetweenFullHours() {
        DiurnalShape shape = DiurnalShape.read(shape(24));
        assertEquals(1.5, shape.wind(1, 90), 1e-12);
        assertEquals(6.0, shape.wind(12, 360), 1e-12);
        assertEquals(7.25, shape.wind(6, 435), 1e-12);
        // The last hour runs back to midnight's ratio.
        assertEquals(0.0 + 9.0 * 0.25, shape.wind(1, 23 * 60 + 45), 1e-12);
    }

    @Test
    void aMonthWithoutItsHoursIsNamed() {
        WeatherDataException e = assertThrows(WeatherDataException.class, () -> DiurnalShape.read(shape(23)));
        assertTrue(e.problem().what().contains("month 1 has 23"), e.problem().what());
    }

    /** The ratio of each hour is its number, at most 9. */
    private static DataFiles shape(int hours) {
        StringJoiner ratios = new StringJoiner(",", "[", "]");
        for (int hour = 0; hour < hours; hour++) {
            ratios.add(Integer.toString(Math.min(9, hour)));
        }
        StringJoiner months = new StringJoiner(",", "{", "}");
        for (int month = 1; month <= 12; month++) {
            months.add("\"" + month + "\":{\"wind_ratio\":" + ratios + "}");
        }
        return Plans.with(Map.of("weather-soil/diurnal-shape.json", months.toString()));
    }

    @Test
    void rainFallsInItsSpellOrSomewhereInItsDay() {
        DayValues dry = new DayValues(20.0, 10.0, 8.0, 0.8, 3.0, 0.0, null);
        DayValues free = new DayValues(20.0, 10.0, 8.0, 0.8, 3.0, 0.004, null);
        DayValues spell = new DayValues(20.0, 10.0, 8.0, 0.8, 3.0, 0.002, new DayValues.RainSpell(600, 30));
        double[] rain = new double[4 * DAY];
        DailyRain.fill(rain, List.of(dry, free, spell, dry), new RandomStreams(1).sequence("rain"));
        assertEquals(0.0, Arrays.stream(rain, 0, DAY).sum());
        assertEquals(0.004, Plans.sum(t -> rain[t], DAY, 2 * DAY), 1e-17);
        assertEquals(0.002, Plans.sum(t -> rain[t], 2 * DAY + 600, 2 * DAY + 630), 1e-17);
        assertTrue(rain[2 * DAY + 600] > 0.0 && rain[2 * DAY + 629] > 0.0);
        assertEquals(0.002, Plans.sum(t -> rain[t], 2 * DAY, 4 * DAY), 1e-17);
    }
}
