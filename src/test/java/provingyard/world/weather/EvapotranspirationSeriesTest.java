package provingyard.world.weather;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import provingyard.reference.Conditions;
import provingyard.reference.Table;
import provingyard.reference.Table.Line;
import provingyard.reference.UnusedRows;

/**
 * Independent series of reference evapotranspiration (computed outside the project with the same conventions; places in
 * {@code series-conditions.json}).
 */
@Tag("unit")
class EvapotranspirationSeriesTest {

    private static final String DAILY = "weather-soil/et0-daily-visible.csv";
    private static final String HOURLY = "weather-soil/et0-hourly-visible.csv";
    private static final String SEATTLE = "weather-soil/seattle-daily-et0.csv";

    /** Where a series was computed for; latitude in rad. */
    private record At(double latitude, double elevation, double windFactor, double gamma) {

        static At of(Conditions c) {
            double elevation = c.get("elevation_m");
            return new At(
                    Math.toRadians(c.get("latitude_deg")),
                    elevation,
                    Psychrometrics.windFactor(c.get("wind_measured_at_m")),
                    Psychrometrics.psychrometricConstant(Psychrometrics.atmosphericPressure(elevation)));
        }
    }

    private static final At DAYS_AT = At.of(Conditions.of("et0-daily-visible.csv"));
    private static final Conditions HOURS_UNDER = Conditions.of("et0-hourly-visible.csv");
    private static final At HOURS_AT = At.of(HOURS_UNDER);
    private static final At SEATTLE_AT = At.of(Conditions.of("seattle-daily-et0.csv"));

    static Stream<Line> days() {
        return Table.of(DAILY).lines().stream();
    }

    @ParameterizedTest(name = "{0} (independent series): daily FAO-56 within 0.01 mm")
    @MethodSource("days")
    void daily(Line day) {
        int number = (int) day.number("J");
        double high = day.number("tmax_C");
        double low = day.number("tmin_C");
        double ra = SolarGeometry.dailyRa(DAYS_AT.latitude, number);
        double clear = Radiation.clearSky(DAYS_AT.elevation, ra);
        double rs = day.number("rs_MJ_m2");
        double ea = Psychrometrics.vapourPressureOfDewPoint(day.number("tdew_C"));
        double wind = day.number("wind10m_m_s") * DAYS_AT.windFactor;
        double shortWave = Radiation.netShortWave(rs, Radiation.REFERENCE_ALBEDO);
        double longWave = Radiation.netLongWaveDaily(high, low, ea, rs / clear);
        double net = Radiation.net(shortWave, longWave);
        double air = (high + low) / 2.0;
        double es = Psychrometrics.meanSaturationVapourPressure(high, low);

        assertEquals(day.number("ra_MJ_m2"), ra, 1e-4);
        assertEquals(day.number("N_h"), SolarGeometry.daylightHours(DAYS_AT.latitude, number), 1e-4);
        assertEquals(day.number("rso_MJ_m2"), clear, 1e-3);
        assertEquals(day.number("ea_kPa"), ea, 6e-5);
        assertEquals(day.number("es_kPa"), es, 1e-5);
        assertEquals(day.number("u2_m_s"), wind, 1e-4);
        assertEquals(day.number("gamma_kPa_C"), DAYS_AT.gamma, 1e-5);
        assertEquals(day.number("delta_kPa_C"), Psychrometrics.slope(air), 1e-5);
        assertEquals(day.number("rns_MJ_m2"), shortWave, 1e-4);
        assertEquals(day.number("rnl_MJ_m2"), longWave, 1e-3);
        assertEquals(day.number("rn_MJ_m2"), net, 1e-3);
        assertEquals(
                day.number("et0_pm_mm"),
                ReferenceEvapotranspiration.daily(air, es, ea, wind, net, 0.0, DAYS_AT.gamma),
                0.01);
        assertEquals(
                day.number("et0_hargreaves_mm"),
                ReferenceEvapotranspiration.hargreavesSamani(air, high, low, ra),
                0.01);
        assertEquals(
                day.number("et0_pm_missingdata_mm"),
                ReferenceEvapotranspiration.fromTemperatures(
                        high, low, 0.0, 2.0, Radiation.INTERIOR, DAYS_AT.elevation, ra),
                0.01);
        List<Line> hours = Table.of(HOURLY).lines().stream()
                .filter(hour -> hour.text("date").equals(day.text("date")))
                .toList();
        assertEquals(24, hours.size());
        double fao = hours.stream().mapToDouble(h -> Hour.of(h).fao).sum();
        double asce = hours.stream().mapToDouble(h -> Hour.of(h).asce).sum();
        assertEquals(day.number("sum_hourly_fao56_mm"), fao, 0.01);
        assertEquals(day.number("sum_hourly_asce_short_mm"), asce, 0.01);
    }

    static Stream<Line> hours() {
        return Table.of(HOURLY).lines().stream();
    }

    /** An hour as we compute it. */
    private record Hour(
            double ra, double clear, double wind, double shortWave, double longWave, double fao, double asce) {

        static Hour of(Line hour) {
            int number = (int) hour.number("J");
            double noon = SolarGeometry.solarNoon(
                    HOURS_UNDER.get("longitude_deg_east"), 3600.0 * HOURS_UNDER.get("utc_offset_h"), number);
            double ra = SolarGeometry.hourlyRa(HOURS_AT.latitude, number, hour.number("hour_begin"), noon);
            double air = hour.number("t_C");
            double ea = hour.number("ea_kPa");
            double wind = hour.number("wind10m_m_s") * HOURS_AT.windFactor;
            double shortWave = Radiation.netShortWave(hour.number("rs_MJ_m2_h"), Radiation.REFERENCE_ALBEDO);
            double longWave = Radiation.netLongWaveHourly(air, ea, hour.number("rs_rso_ratio_used"));
            double net = Radiation.net(shortWave, longWave);
            return new Hour(
                    ra,
                    Radiation.clearSky(HOURS_AT.elevation, ra),
                    wind,
                    shortWave,
                    longWave,
                    ReferenceEvapotranspiration.hourly(air, ea, wind, net, HOURS_AT.gamma),
                    ReferenceEvapotranspiration.hourlyAsceShort(air, ea, wind, net, HOURS_AT.gamma));
        }

        double net() {
            return Radiation.net(shortWave, longWave);
        }
    }

    @ParameterizedTest(name = "{0} (independent series): hourly FAO-56 and ASCE short within 0.003 mm")
    @MethodSource("hours")
    void hourly(Line line) {
        Hour hour = Hour.of(line);
        assertEquals(line.number("ra_MJ_m2_h"), hour.ra, 1e-4);
        assertEquals(line.number("rso_MJ_m2_h"), hour.clear, 1e-4);
        assertEquals(line.number("u2_m_s"), hour.wind, 1e-4);
        assertEquals(line.number("rns"), hour.shortWave, 1e-4);
        assertEquals(line.number("rnl"), hour.longWave, 1e-4);
        assertEquals(line.number("rn"), hour.net(), 1e-4);
        assertEquals(line.number("g"), ReferenceEvapotranspiration.hourlySoilHeat(hour.net()), 1e-4);
        assertEquals(line.number("et0_fao56_mm_h"), hour.fao, 0.003);
        assertEquals(line.number("et0_asce_short_mm_h"), hour.asce, 0.003);
    }

    static Stream<List<Line>> seattleMonths() {
        List<Line> all = Table.of(SEATTLE).lines();
        return IntStream.rangeClosed(1, 12)
                .mapToObj(month -> all.stream()
                        .filter(line -> line.text("date").substring(5, 7).equals("%02d".formatted(month)))
                        .toList());
    }

    @ParameterizedTest(name = "Seattle 2012-2015 (independent series), month {index}: temperatures only")
    @MethodSource("seattleMonths")
    void fromTemperatures(List<Line> days) {
        for (Line day : days) {
            double high = day.number("tmax_C");
            double low = day.number("tmin_C");
            double ra = SolarGeometry.dailyRa(SEATTLE_AT.latitude, (int) day.number("J"));
            double wind = day.number("wind_m_s") * SEATTLE_AT.windFactor;
            double hargreaves = ReferenceEvapotranspiration.hargreavesSamani((high + low) / 2.0, high, low, ra);
            double missing = ReferenceEvapotranspiration.fromTemperatures(
                    high, low, 0.0, wind, Radiation.INTERIOR, SEATTLE_AT.elevation, ra);
            assertEquals(day.number("ra_MJ_m2"), ra, 1e-3, day.toString());
            assertEquals(day.number("et0_hargreaves_mm"), hargreaves, 0.01, day.toString());
            assertEquals(day.number("et0_pm_missingdata_mm"), missing, 0.01, day.toString());
        }
    }

    @Test
    void everyColumnIsComparedOrListed() {
        Table daily = Table.of(DAILY);
        daily(daily.lines().get(0));
        assertEquals(UnusedRows.rows(DAILY), daily.unread());
        Table hourly = Table.of(HOURLY);
        hourly(hourly.lines().get(0));
        hourly.lines().get(0).text("date");
        assertEquals(UnusedRows.rows(HOURLY), hourly.unread());
        Table seattle = Table.of(SEATTLE);
        seattle.lines().get(0).text("date");
        fromTemperatures(seattle.lines());
        assertEquals(UnusedRows.rows(SEATTLE), seattle.unread());
    }
}
