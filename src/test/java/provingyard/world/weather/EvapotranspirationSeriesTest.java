package provingyard.world.weather;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import provingyard.world.weather.Reference.Line;

/**
 * Independent series of reference evapotranspiration (computed outside the project with the same conventions; the
 * files do not print their place: latitude, longitude offset and elevation below are those that meet the files' own
 * radiation and psychrometric columns).
 */
@Tag("unit")
class EvapotranspirationSeriesTest {

    private static final double LATITUDE = Math.toRadians(39.8);
    private static final double ELEVATION = 1620.0;
    private static final double LONGITUDE = -104.9;
    private static final double UTC_OFFSET = -7.0 * 3600.0;
    private static final double SEATTLE_LATITUDE = Math.toRadians(47.45);
    private static final double SEATTLE_ELEVATION = 130.0;

    static Stream<Line> days() {
        return Reference.table("weather-soil/et0-daily-visible.csv").stream();
    }

    @ParameterizedTest(name = "{0} (independent series): daily FAO-56 within 0.01 mm")
    @MethodSource("days")
    void daily(Line day) {
        int number = (int) day.number("J");
        double high = day.number("tmax_C");
        double low = day.number("tmin_C");
        double ra = SolarGeometry.dailyRa(LATITUDE, number);
        double clear = Radiation.clearSky(ELEVATION, ra);
        double rs = day.number("rs_MJ_m2");
        double ea = Psychrometrics.vapourPressureOfDewPoint(day.number("tdew_C"));
        double wind = day.number("wind10m_m_s") * Psychrometrics.windFactor(10.0);
        double net = Radiation.net(
                Radiation.netShortWave(rs, Radiation.REFERENCE_ALBEDO),
                Radiation.netLongWaveDaily(high, low, ea, rs / clear));
        double air = (high + low) / 2.0;
        double es = Psychrometrics.meanSaturationVapourPressure(high, low);

        assertEquals(day.number("ra_MJ_m2"), ra, 1e-4);
        assertEquals(day.number("N_h"), SolarGeometry.daylightHours(LATITUDE, number), 1e-4);
        assertEquals(day.number("rso_MJ_m2"), clear, 1e-3);
        assertEquals(day.number("gamma_kPa_C"), gamma(), 1e-5);
        assertEquals(day.number("delta_kPa_C"), Psychrometrics.slope(air), 1e-5);
        assertEquals(
                day.number("et0_pm_mm"), ReferenceEvapotranspiration.daily(air, es, ea, wind, net, 0.0, gamma()), 0.01);
        assertEquals(
                day.number("et0_hargreaves_mm"),
                ReferenceEvapotranspiration.hargreavesSamani(air, high, low, ra),
                0.01);
        assertEquals(
                day.number("et0_pm_missingdata_mm"),
                ReferenceEvapotranspiration.fromTemperatures(high, low, 0.0, 2.0, Radiation.INTERIOR, ELEVATION, ra),
                0.01);
    }

    static Stream<Line> hours() {
        return Reference.table("weather-soil/et0-hourly-visible.csv").stream();
    }

    @ParameterizedTest(name = "{0} (independent series): hourly FAO-56 and ASCE short within 0.003 mm")
    @MethodSource("hours")
    void hourly(Line hour) {
        int number = (int) hour.number("J");
        double noon = SolarGeometry.solarNoon(LONGITUDE, UTC_OFFSET, number);
        double ra = SolarGeometry.hourlyRa(LATITUDE, number, hour.number("hour_begin"), noon);
        double air = hour.number("t_C");
        double ea = hour.number("ea_kPa");
        double wind = hour.number("wind10m_m_s") * Psychrometrics.windFactor(10.0);
        double net = Radiation.net(
                Radiation.netShortWave(hour.number("rs_MJ_m2_h"), Radiation.REFERENCE_ALBEDO),
                Radiation.netLongWaveHourly(air, ea, hour.number("rs_rso_ratio_used")));

        assertEquals(hour.number("ra_MJ_m2_h"), ra, 1e-4);
        assertEquals(hour.number("rn"), net, 1e-4);
        assertEquals(hour.number("g"), ReferenceEvapotranspiration.hourlySoilHeat(net), 1e-4);
        assertEquals(
                hour.number("et0_fao56_mm_h"), ReferenceEvapotranspiration.hourly(air, ea, wind, net, gamma()), 0.003);
        assertEquals(
                hour.number("et0_asce_short_mm_h"),
                ReferenceEvapotranspiration.hourlyAsceShort(air, ea, wind, net, gamma()),
                0.003);
    }

    static Stream<List<Line>> seattleMonths() {
        List<Line> all = Reference.table("weather-soil/seattle-daily-et0.csv");
        return IntStream.rangeClosed(1, 12)
                .mapToObj(month -> all.stream()
                        .filter(line -> line.cells().get("date").substring(5, 7).equals("%02d".formatted(month)))
                        .toList());
    }

    @ParameterizedTest(name = "Seattle 2012-2015 (independent series), month {index}: temperatures only")
    @MethodSource("seattleMonths")
    void fromTemperatures(List<Line> days) {
        for (Line day : days) {
            double high = day.number("tmax_C");
            double low = day.number("tmin_C");
            double ra = SolarGeometry.dailyRa(SEATTLE_LATITUDE, (int) day.number("J"));
            double wind = day.number("wind_m_s") * Psychrometrics.windFactor(10.0);
            double hargreaves = ReferenceEvapotranspiration.hargreavesSamani((high + low) / 2.0, high, low, ra);
            double missing = ReferenceEvapotranspiration.fromTemperatures(
                    high, low, 0.0, wind, Radiation.INTERIOR, SEATTLE_ELEVATION, ra);
            assertEquals(day.number("ra_MJ_m2"), ra, 1e-3, day.label());
            assertEquals(day.number("et0_hargreaves_mm"), hargreaves, 0.01, day.label());
            assertEquals(day.number("et0_pm_missingdata_mm"), missing, 0.01, day.label());
        }
    }

    private static double gamma() {
        return Psychrometrics.psychrometricConstant(Psychrometrics.atmosphericPressure(ELEVATION));
    }
}
