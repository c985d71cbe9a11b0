package provingyard.world.weather;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import provingyard.reference.Formulas;
import provingyard.reference.ReferenceRow;

/**
 * Published examples of FAO-56, Hargreaves-Samani and Stull, each with its source and status in its name. Which formula
 * a row of FAO-56 tries follows from the quantity at the end of its id and from the inputs that it has.
 */
@Tag("unit")
public class PublishedWeatherRowsTest {

    /** Formulas of this package by kind of row. */
    public static final Formulas FORMULAS = formulas();

    private static final String EXAMPLE = "fao56-ex\\d+-";

    @TestFactory
    Stream<DynamicTest> meetsThePublishedValue() {
        return FORMULAS.tests();
    }

    @Test
    void everyFormulaIsTried() {
        assertEquals(List.of(), FORMULAS.idle());
    }

    private static Formulas formulas() {
        Formulas f = new Formulas();
        air(f);
        sun(f);
        energy(f);
        f.add(EXAMPLE + "ET0.*", PublishedWeatherRowsTest::reference);
        f.add(
                "hargreaves-.*",
                r -> ReferenceEvapotranspiration.hargreavesSamani(
                        r.in("Tmean_C"), r.in("Tmax_C"), r.in("Tmin_C"), r.in("Ra")));
        f.add("stull-.*", r -> Psychrometrics.wetBulb(r.in("T_C"), r.in("RH")));
        return f;
    }

    private static void air(Formulas f) {
        f.add(EXAMPLE + "P", r -> Psychrometrics.atmosphericPressure(r.in("z_m")));
        f.add(EXAMPLE + "gamma", r -> r.has("P_kPa") ? Psychrometrics.psychrometricConstant(r.in("P_kPa")) : gamma(r));
        f.add(EXAMPLE + "e0.*", r -> Psychrometrics.saturationVapourPressure(r.in("T_C")));
        f.add(EXAMPLE + "ea.*", PublishedWeatherRowsTest::vapour);
        f.add(EXAMPLE + "vpd", r -> saturation(r) - vapour(r));
        f.add(EXAMPLE + "delta", r -> Psychrometrics.slope(r.in("T_C")));
        f.add(EXAMPLE + "u2", PublishedWeatherRowsTest::wind);
        f.add("fao56-eq47-.*", r -> Psychrometrics.windFactor(r.in("z_m")));
    }

    private static void sun(Formulas f) {
        f.add(EXAMPLE + "decl", r -> SolarGeometry.declination(day(r)));
        f.add(EXAMPLE + "ws", r -> SolarGeometry.sunsetHourAngle(latitude(r), day(r)));
        f.add(EXAMPLE + "N", PublishedWeatherRowsTest::daylight);
        f.add(EXAMPLE + "Ra", PublishedWeatherRowsTest::extraterrestrial);
        f.add(EXAMPLE + "Rs", PublishedWeatherRowsTest::global);
        f.add(EXAMPLE + "Rso", r -> r.has("t") ? hourlyClear(r) : clear(r));
    }

    private static void energy(Formulas f) {
        f.add(EXAMPLE + "Rns", r -> Radiation.netShortWave(r.in("Rs"), r.in("albedo")));
        f.add(EXAMPLE + "Rn", r -> r.has("Rnl") ? netOfParts(r) : net(r));
        f.add(EXAMPLE + "Rn-\\d\\d-\\d\\d", PublishedWeatherRowsTest::hourlyNet);
        f.add(EXAMPLE + "G-\\d\\d-\\d\\d", r -> ReferenceEvapotranspiration.hourlySoilHeat(hourlyNet(r)));
        f.add(EXAMPLE + "G2", r -> ReferenceEvapotranspiration.monthlySoilHeat(r.in("T_prev"), r.in("T")));
    }

    private static int day(ReferenceRow r) {
        return (int) r.in("J");
    }

    /** Latitude in rad, given in degrees or as degrees and minutes. */
    private static double latitude(ReferenceRow r) {
        if (r.has("lat_deg")) {
            return Math.toRadians(r.in("lat_deg"));
        }
        Matcher m = match(r, "lat", "(\\d+) deg (\\d+) min ([NS])");
        double degrees = Double.parseDouble(m.group(1)) + Double.parseDouble(m.group(2)) / 60.0;
        return Math.toRadians(m.group(3).equals("N") ? degrees : -degrees);
    }

    private static Matcher match(ReferenceRow r, String input, String pattern) {
        Matcher matcher = Pattern.compile(pattern).matcher(r.input(input).asText());
        assertTrue(matcher.find(), () -> r.id() + ": " + input);
        return matcher;
    }

    /** Wind in m/s at 2 m: given so, or measured at another height. */
    private static double wind(ReferenceRow r) {
        if (r.has("u2_m_s")) {
            return r.in("u2_m_s");
        }
        if (r.has("uz_m_s")) {
            return r.in("uz_m_s") * Psychrometrics.windFactor(r.in("z_m"));
        }
        double kilometresAnHour =
                Double.parseDouble(match(r, "wind_10m", "([0-9.]+) km/h").group(1));
        return kilometresAnHour / 3.6 * Psychrometrics.windFactor(10.0);
    }

    private static double gamma(ReferenceRow r) {
        return Psychrometrics.psychrometricConstant(Psychrometrics.atmosphericPressure(r.in("z_m")));
    }

    private static double saturation(ReferenceRow r) {
        return Psychrometrics.meanSaturationVapourPressure(r.in("Tmax_C"), r.in("Tmin_C"));
    }

    private static double vapour(ReferenceRow r) {
        if (r.has("ea_kPa")) {
            return r.in("ea_kPa");
        }
        if (r.has("Twet_C")) {
            return Psychrometrics.vapourPressureOfPsychrometer(
                    r.in("Tdry_C"), r.in("Twet_C"), r.in("P_kPa"), r.in("a_psy"));
        }
        if (r.has("Tdew_C")) {
            return Psychrometrics.vapourPressureOfDewPoint(r.in("Tdew_C"));
        }
        if (r.has("RHmean")) {
            return Psychrometrics.vapourPressureOfMeanHumidity(r.in("Tmax_C"), r.in("Tmin_C"), r.in("RHmean"));
        }
        return r.has("RHmax")
                ? Psychrometrics.vapourPressureOfHumidity(r.in("Tmax_C"), r.in("Tmin_C"), r.in("RHmax"), r.in("RHmin"))
                : Psychrometrics.saturationVapourPressure(r.in("T_C")) * r.in("RH") / 100.0;
    }

    private static double daylight(ReferenceRow r) {
        return SolarGeometry.daylightHours(latitude(r), day(r));
    }

    private static double extraterrestrial(ReferenceRow r) {
        return SolarGeometry.dailyRa(latitude(r), day(r));
    }

    private static double clear(ReferenceRow r) {
        return Radiation.clearSky(r.in("z_m"), extraterrestrial(r));
    }

    private static double hourlyClear(ReferenceRow r) {
        double noon = SolarGeometry.solarNoon(-r.in("Lm_degW"), -r.in("Lz_degW") * 240.0, day(r));
        return Radiation.clearSky(r.in("z_m"), SolarGeometry.hourlyRa(latitude(r), day(r), r.in("t") - 0.5, noon));
    }

    /** From sunshine, or from the temperature range. */
    private static double global(ReferenceRow r) {
        return r.has("n_h")
                ? Radiation.fromSunshine(r.in("n_h"), daylight(r), extraterrestrial(r))
                : Radiation.fromTemperatureRange(r.in("Tmax_C"), r.in("Tmin_C"), extraterrestrial(r), r.in("kRs"));
    }

    private static double netOfParts(ReferenceRow r) {
        return Radiation.net(Radiation.netShortWave(r.in("Rs"), Radiation.REFERENCE_ALBEDO), r.in("Rnl"));
    }

    private static double net(ReferenceRow r) {
        return Radiation.net(
                Radiation.netShortWave(global(r), Radiation.REFERENCE_ALBEDO),
                Radiation.netLongWaveDaily(r.in("Tmax_C"), r.in("Tmin_C"), vapour(r), global(r) / clear(r)));
    }

    private static double hourlyNet(ReferenceRow r) {
        return Radiation.net(
                Radiation.netShortWave(r.in("Rs_MJ"), Radiation.REFERENCE_ALBEDO),
                Radiation.netLongWaveHourly(r.in("T_C"), vapour(r), r.in("Rs_Rso_ratio")));
    }

    /** By the hour, from temperatures alone, or of a day or month with its sunshine. */
    private static double reference(ReferenceRow r) {
        if (r.has("Rs_MJ")) {
            return ReferenceEvapotranspiration.hourly(r.in("T_C"), vapour(r), wind(r), hourlyNet(r), gamma(r));
        }
        if (!r.has("n_h")) {
            return ReferenceEvapotranspiration.fromTemperatures(
                    r.in("Tmax_C"),
                    r.in("Tmin_C"),
                    r.in("Tmin_C") - r.in("Tdew_C"),
                    wind(r),
                    Radiation.INTERIOR,
                    r.in("z_m"),
                    extraterrestrial(r));
        }
        double soil = r.has("T_month")
                ? ReferenceEvapotranspiration.monthlySoilHeat(r.in("T_month_prev"), r.in("T_month"))
                : 0.0;
        double air = (r.in("Tmax_C") + r.in("Tmin_C")) / 2.0;
        return ReferenceEvapotranspiration.daily(air, saturation(r), vapour(r), wind(r), net(r), soil, gamma(r));
    }
}
