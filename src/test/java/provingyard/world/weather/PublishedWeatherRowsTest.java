package provingyard.world.weather;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import provingyard.world.weather.Reference.Row;

/** Published examples of FAO-56, Hargreaves-Samani and Stull, each with its source and status in its name. */
@Tag("unit")
class PublishedWeatherRowsTest {

    private static final double UCCLE = Math.toRadians(50.0 + 48.0 / 60.0);
    private static final double NDIAYE = Math.toRadians(16.0 + 13.0 / 60.0);
    private static final double KMH_10 = 10.0 / 3.6;

    private static final Map<String, ToDoubleFunction<Row>> FORMULAS = formulas();

    private static Map<String, ToDoubleFunction<Row>> formulas() {
        Map<String, ToDoubleFunction<Row>> f = new TreeMap<>();
        ToDoubleFunction<Row> saturation = r -> Psychrometrics.saturationVapourPressure(r.input("T_C"));
        f.put("fao56-ex02-P", r -> Psychrometrics.atmosphericPressure(r.input("z_m")));
        f.put("fao56-ex02-gamma", r -> Psychrometrics.psychrometricConstant(r.input("P_kPa")));
        f.put("fao56-ex03-e0max", saturation);
        f.put("fao56-ex03-e0min", saturation);
        f.put("fao56-ex03-e0mean", saturation);
        f.put(
                "fao56-ex04-ea",
                r -> Psychrometrics.vapourPressureOfPsychrometer(
                        r.input("Tdry_C"), r.input("Twet_C"), r.input("P_kPa"), r.input("a_psy")));
        f.put(
                "fao56-ex05-ea-mean",
                r -> Psychrometrics.vapourPressureOfMeanHumidity(
                        r.input("Tmax_C"), r.input("Tmin_C"), r.input("RHmean")));
        f.put("fao56-ex06-vpd", r -> saturation(r) - humidity(r));
        f.put("fao56-ex08-decl", r -> SolarGeometry.declination(day(r)));
        f.put("fao56-ex08-ws", r -> SolarGeometry.sunsetHourAngle(latitude(r), day(r)));
        f.put("fao56-ex09-N", r -> SolarGeometry.daylightHours(latitude(r), day(r)));
        f.put(
                "fao56-ex10-Rs",
                r -> Radiation.fromSunshine(
                        r.input("n_h"),
                        SolarGeometry.daylightHours(latitude(r), day(r)),
                        SolarGeometry.dailyRa(latitude(r), day(r))));
        f.put("fao56-ex12-Rns", r -> Radiation.netShortWave(r.input("Rs"), r.input("albedo")));
        f.put(
                "fao56-ex12-Rn",
                r -> Radiation.net(Radiation.netShortWave(r.input("Rs"), Radiation.REFERENCE_ALBEDO), r.input("Rnl")));
        f.put("fao56-ex13-G2", r -> ReferenceEvapotranspiration.monthlySoilHeat(r.input("T_prev"), r.input("T")));
        f.put("fao56-ex14-u2", r -> r.input("uz_m_s") * Psychrometrics.windFactor(r.input("z_m")));
        f.put("fao56-eq47-3m", r -> Psychrometrics.windFactor(r.input("z_m")));
        f.put(
                "fao56-ex15-Rs",
                r -> Radiation.fromTemperatureRange(
                        r.input("Tmax_C"),
                        r.input("Tmin_C"),
                        SolarGeometry.dailyRa(latitude(r), day(r)),
                        r.input("kRs")));
        bangkok(f);
        uccle(f);
        ndiaye(f);
        f.put("fao56-ex20-ea", r -> Psychrometrics.vapourPressureOfDewPoint(r.input("Tdew_C")));
        f.put(
                "fao56-ex20-ET0",
                r -> ReferenceEvapotranspiration.fromTemperatures(
                        r.input("Tmax_C"),
                        r.input("Tmin_C"),
                        r.input("Tmin_C") - r.input("Tdew_C"),
                        r.input("u2_m_s"),
                        Radiation.INTERIOR,
                        r.input("z_m"),
                        SolarGeometry.dailyRa(latitude(r), day(r))));
        f.put(
                "hargreaves-mehta",
                r -> ReferenceEvapotranspiration.hargreavesSamani(
                        r.input("Tmean_C"), r.input("Tmax_C"), r.input("Tmin_C"), r.input("Ra")));
        for (String id : new String[] {"stull-20-50", "stull-5-60", "stull-10-30", "stull-30-50"}) {
            f.put(id, r -> Psychrometrics.wetBulb(r.input("T_C"), r.input("RH")));
        }
        return f;
    }

    private static void bangkok(Map<String, ToDoubleFunction<Row>> f) {
        ToDoubleFunction<Row> ra = r -> SolarGeometry.dailyRa(latitude(r), day(r));
        f.put("fao56-ex17-Ra", ra);
        f.put("fao56-ex17-N", r -> SolarGeometry.daylightHours(latitude(r), day(r)));
        f.put("fao56-ex17-Rso", r -> Radiation.clearSky(r.input("z_m"), ra.applyAsDouble(r)));
        f.put("fao56-ex17-delta", r -> Psychrometrics.slope(r.input("T_C")));
        f.put("fao56-ex17-ET0", r -> {
            double soil = ReferenceEvapotranspiration.monthlySoilHeat(r.input("T_month_prev"), r.input("T_month"));
            double rs = Radiation.fromSunshine(
                    r.input("n_h"), SolarGeometry.daylightHours(latitude(r), day(r)), ra.applyAsDouble(r));
            double clear = Radiation.clearSky(r.input("z_m"), ra.applyAsDouble(r));
            return daily(r, r.input("ea_kPa"), r.input("u2_m_s"), rs, clear, soil);
        });
    }

    private static void uccle(Map<String, ToDoubleFunction<Row>> f) {
        ToDoubleFunction<Row> ra = r -> SolarGeometry.dailyRa(UCCLE, day(r));
        ToDoubleFunction<Row> rso = r -> Radiation.clearSky(r.input("z_m"), ra.applyAsDouble(r));
        ToDoubleFunction<Row> rs = r ->
                Radiation.fromSunshine(r.input("n_h"), SolarGeometry.daylightHours(UCCLE, day(r)), ra.applyAsDouble(r));
        f.put("fao56-ex18-u2", r -> KMH_10 * Psychrometrics.windFactor(10.0));
        f.put("fao56-ex18-ea", PublishedWeatherRowsTest::humidity);
        f.put("fao56-ex18-Ra", ra);
        f.put("fao56-ex18-Rs", rs);
        f.put("fao56-ex18-Rso", rso);
        f.put("fao56-ex18-Rn", r -> net(r, humidity(r), rs.applyAsDouble(r), rso.applyAsDouble(r)));
        f.put(
                "fao56-ex18-ET0",
                r -> daily(
                        r,
                        humidity(r),
                        KMH_10 * Psychrometrics.windFactor(10.0),
                        rs.applyAsDouble(r),
                        rso.applyAsDouble(r),
                        0.0));
    }

    private static void ndiaye(Map<String, ToDoubleFunction<Row>> f) {
        f.put("fao56-ex19-Rso", r -> {
            double noon = SolarGeometry.solarNoon(-r.input("Lm_degW"), -r.input("Lz_degW") * 240.0, day(r));
            return Radiation.clearSky(r.input("z_m"), SolarGeometry.hourlyRa(NDIAYE, day(r), r.input("t") - 0.5, noon));
        });
        f.put("fao56-ex19-ea-02-03", PublishedWeatherRowsTest::hourlyVapour);
        f.put("fao56-ex19-Rn-14-15", PublishedWeatherRowsTest::hourlyNet);
        for (String hours : new String[] {"02-03", "14-15"}) {
            f.put("fao56-ex19-G-" + hours, r -> ReferenceEvapotranspiration.hourlySoilHeat(hourlyNet(r)));
            f.put(
                    "fao56-ex19-ET0-" + hours,
                    r -> ReferenceEvapotranspiration.hourly(
                            r.input("T_C"), hourlyVapour(r), r.input("u2_m_s"), hourlyNet(r), gamma(r)));
        }
    }

    private static int day(Row r) {
        return (int) r.input("J");
    }

    private static double latitude(Row r) {
        return Math.toRadians(r.input("lat_deg"));
    }

    private static double gamma(Row r) {
        return Psychrometrics.psychrometricConstant(Psychrometrics.atmosphericPressure(r.input("z_m")));
    }

    private static double saturation(Row r) {
        return Psychrometrics.meanSaturationVapourPressure(r.input("Tmax_C"), r.input("Tmin_C"));
    }

    private static double humidity(Row r) {
        return Psychrometrics.vapourPressureOfHumidity(
                r.input("Tmax_C"), r.input("Tmin_C"), r.input("RHmax"), r.input("RHmin"));
    }

    private static double net(Row r, double ea, double rs, double clear) {
        return Radiation.net(
                Radiation.netShortWave(rs, Radiation.REFERENCE_ALBEDO),
                Radiation.netLongWaveDaily(r.input("Tmax_C"), r.input("Tmin_C"), ea, rs / clear));
    }

    private static double daily(Row r, double ea, double wind, double rs, double clear, double soil) {
        double air = (r.input("Tmax_C") + r.input("Tmin_C")) / 2.0;
        return ReferenceEvapotranspiration.daily(air, saturation(r), ea, wind, net(r, ea, rs, clear), soil, gamma(r));
    }

    private static double hourlyVapour(Row r) {
        return Psychrometrics.saturationVapourPressure(r.input("T_C")) * r.input("RH") / 100.0;
    }

    private static double hourlyNet(Row r) {
        return Radiation.net(
                Radiation.netShortWave(r.input("Rs_MJ"), Radiation.REFERENCE_ALBEDO),
                Radiation.netLongWaveHourly(r.input("T_C"), hourlyVapour(r), r.input("Rs_Rso_ratio")));
    }

    static Stream<Row> rows() {
        return Reference.published(FORMULAS::containsKey);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rows")
    void meetsThePublishedValue(Row row) {
        double value = FORMULAS.get(row.id()).applyAsDouble(row);
        assertEquals(row.expected(), value, row.tolerance(), row.toString());
    }

    @Test
    void leavesNoWeatherRowOut() {
        // Turf, soil and depletion rows of FAO-56 belong to the ground.
        long weatherRows = Reference.published(
                        id -> id.matches("(fao56-ex(0\\d|1\\d|20)|fao56-eq47|hargreaves|stull).*"))
                .peek(row -> assertTrue(FORMULAS.containsKey(row.id()), row.toString()))
                .count();
        assertTrue(weatherRows >= 40, "only " + weatherRows + " rows");
    }
}
