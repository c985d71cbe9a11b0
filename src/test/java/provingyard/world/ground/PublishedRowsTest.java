package provingyard.world.ground;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
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
 * Formulas of the ground against published rows, by kind of row. Rows whose status is 'from memory' or 'computed here'
 * are weaker: they guard against slips, not against a wrong source.
 */
@Tag("unit")
public class PublishedRowsTest {

    /** Formulas of this package by kind of row. */
    public static final Formulas FORMULAS = formulas();

    /** Emissivity in the rows of frozen films, of the rows of steady nights, and depth of the films (m): their sources. */
    private static final double FILM_EMISSIVITY = 0.97;

    private static final double NIGHT_EMISSIVITY = 0.95;
    private static final double FILM = 0.001;

    private static final double INCH_MM = 25.4;

    @TestFactory
    Stream<DynamicTest> formulaMeetsItsRow() {
        return FORMULAS.tests();
    }

    @Test
    void everyFormulaIsTried() {
        assertEquals(List.of(), FORMULAS.idle());
    }

    private static Formulas formulas() {
        Formulas f = new Formulas();
        soil(f);
        infiltration(f);
        landscape(f);
        heat(f);
        films(f);
        spray(f);
        return f;
    }

    private static void soil(Formulas f) {
        f.add("fao56-ex36-.*", r -> {
            double taw = SoilWater.totalAvailable(r.in("theta_fc"), r.in("theta_wp"), 1000 * r.in("zr_m"));
            assertEquals(r.in("TAW_mm"), taw, 1e-9);
            return SoilWater.readilyAvailable(taw, r.in("p"));
        });
        f.add("fao56-ex37-day\\d+", PublishedRowsTest::tomatoStress);
        f.add("(tr55|scs)-.*", r -> {
            boolean inches = r.has("P_in");
            double rain = inches ? INCH_MM * r.in("P_in") : r.in("P_mm");
            return CurveNumber.runoff(rain, r.in("CN")) / (inches ? INCH_MM : 1);
        });
        f.add("topp-\\d+", r -> Dielectric.waterContent(r.in("Ka")));
        f.add("water-permittivity.*", r -> Dielectric.waterPermittivity(r.in("T_C")));
    }

    private static double tomatoStress(ReferenceRow r) {
        double depleted = r.in("Dr_start_day1");
        for (int day = 1; day < r.in("day"); day++) {
            depleted = SoilWater.day(
                            SoilWater.DayOrder.STRESS_AT_START,
                            depleted,
                            0,
                            r.in("Kc") * r.in("ET0"),
                            r.in("TAW"),
                            r.in("p"))
                    .depleted();
        }
        assertEquals(noted(r, "start of the day ([0-9.]+)"), depleted, 0.05, "depletion");
        return SoilWater.stress(r.in("TAW"), depleted, r.in("p"));
    }

    private static void infiltration(Formulas f) {
        f.add("chow-431-.*", r -> {
            Fresh soil = Fresh.of(r);
            double infiltrated = GreenAmpt.ponded(soil.conductivity, soil.moisture, 0, 1);
            return r.id().endsWith("-f")
                    ? GreenAmpt.capacity(soil.conductivity, soil.moisture, infiltrated)
                    : infiltrated;
        });
        f.add("chow-442-tp-.*", r -> GreenAmpt.pondingTime(r.in("K"), r.in("psi_dtheta_cm"), r.in("i_cm_h")));
        f.add("chow-443-F.*", r -> {
            Fresh soil = Fresh.of(r);
            return GreenAmpt.after(soil.conductivity, soil.moisture, 0, r.in("i_cm_h"), r.in("t_h"));
        });
        f.add("osu65-.*", r -> r.has("L_cm") ? pondedFront(r) : meinLarson(r));
    }

    private static double pondedFront(ReferenceRow r) {
        double deficit = r.in("theta_s") - r.in("theta_i");
        double infiltrated = deficit * r.in("L_cm");
        double wet = (r.in("psi_cm") + r.in("h_cm")) * deficit;
        assertEquals(noted(r, "F = ([0-9.]+)"), infiltrated, 0.005);
        assertEquals(noted(r, "t = ([0-9.]+)"), GreenAmpt.time(r.in("K_cm_h"), wet, infiltrated), 0.001);
        return GreenAmpt.capacity(r.in("K_cm_h"), wet, infiltrated);
    }

    private static double meinLarson(ReferenceRow r) {
        return GreenAmpt.pondingTime(r.in("K"), r.in("psi") * r.in("dtheta"), r.in("i_cm_h"));
    }

    /**
     * A soil of the Green-Ampt table at an effective saturation, in cm and h. Rows that name none are of the same worked
     * example as the first that does.
     */
    private record Fresh(double conductivity, double moisture) {

        static Fresh of(ReferenceRow r) {
            ReferenceRow example = r.has("soil") ? r : ReferenceRow.of("chow-431-f");
            String soil = example.input("soil").asText().replace(' ', '-');
            JsonNode known = ReferenceRow.of("rawls83-" + soil).expected();
            double deficit = known.get("effective_porosity").doubleValue() * (1 - example.in("Se"));
            return new Fresh(
                    known.get("K_cm_h").doubleValue(), known.get("psi_cm").doubleValue() * deficit);
        }
    }

    private static void landscape(Formulas f) {
        f.add("wucols-etl.*", r -> LandscapeBudget.toApply(coefficient(r), r.in("ET0_in_month"), r.in("IE")));
        f.add("wucols-.*", PublishedRowsTest::coefficient);
        f.add("mwelo\\d+-mawa.*", r -> {
            double factor = r.has("ETAF") ? r.in("ETAF") : quoted(r.quantity(), "ETAF ([0-9.]+)");
            return LandscapeBudget.allowance(r.in("ET0_in_yr"), factor, r.in("LA_ft2"), r.in("SLA_ft2"));
        });
        f.add(
                "mwelo\\d+-etwu.*",
                r -> LandscapeBudget.estimatedUse(
                        r.in("ET0_in_yr"), r.input("hydrozone_PFxHA").get("sum").asDouble(), r.in("IE"), r.in("SLA")));
    }

    private static double coefficient(ReferenceRow r) {
        return LandscapeBudget.landscapeCoefficient(r.in("ks"), r.in("kd"), r.in("kmc"));
    }

    private static void heat(Formulas f) {
        f.add("emis-brutsaert-.*", r -> SurfaceHeat.brutsaert(r.in("T_C"), r.in("e_kPa")));
        f.add("emis-idso1981-.*", r -> SurfaceHeat.idso(r.in("T_C"), r.in("e_kPa")));
        f.add("damping-.*", r -> SurfaceHeat.dampingDepth(r.in("k") / (r.in("rho") * r.in("c")), r.in("period_s")));
        f.add("conv-barber.*", r -> SurfaceHeat.barber(r.in("v_mph") * 0.44704));
        f.add("night-.*", r -> {
            double air = r.in("Ta");
            double sky = SurfaceHeat.cloudy(SurfaceHeat.brutsaert(air, vapour(r)), r.in("cloud"))
                    * SurfaceHeat.radiated(air);
            return air - SurfaceHeat.steadyNight(air, convection(r), NIGHT_EMISSIVITY, sky, r.in("G"));
        });
    }

    private static void films(Formulas f) {
        f.add("film-sink-.*", r -> Freezing.timeOnSlab(FILM, -r.in("T_slab_C"), r.in("effusivity")) / 60);
        f.add("film-.*", r -> {
            double air = r.in("Ta");
            double h = convection(r);
            double sky = SurfaceHeat.brutsaert(air, vapour(r)) * SurfaceHeat.radiated(air);
            double convected = -h * air;
            double radiated = r.in("rad") * FILM_EMISSIVITY * (SurfaceHeat.radiated(0) - sky);
            double evaporated = r.in("evap") * SurfaceHeat.evaporation(h, 0, vapour(r));
            assertEquals(r.in("q_conv"), convected, 0.005, "W/m2 by convection");
            assertEquals(r.in("q_rad"), radiated, 0.02, "W/m2 by radiation");
            assertEquals(r.in("q_evap"), evaporated, 0.01, "W/m2 by evaporation");
            return Freezing.time(FILM, convected + radiated + evaporated) / 60;
        });
    }

    private static double convection(ReferenceRow r) {
        double h = SurfaceHeat.convection(r.in("wind"));
        assertEquals(r.in("h"), h, 0.005, "convection coefficient");
        return h;
    }

    private static double vapour(ReferenceRow r) {
        return SurfaceHeat.saturation(r.in("Ta")) * r.in("RH") / 100;
    }

    private static void spray(Formulas f) {
        f.add("playan05-E15-.*", r -> SprayLoss.solidSet(r.in("U"), r.in("RH")));
        f.add("playan05-E13-.*", r -> SprayLoss.solidSetDay(r.in("U"), r.in("RH")));
        f.add("playan05-E2-.*", r -> SprayLoss.solidSetNight(r.in("U")));
        f.add("yazar84-.*", r -> SprayLoss.yazar(r.in("W_m_s"), r.in("vpd_hPa")));
        f.add("kb-re.*", r -> {
            double coarseness = SprayLoss.coarseness(r.in("P_kPa"), r.in("B_mm"));
            assertEquals(r.in("CI"), coarseness, 0.001);
            return SprayLoss.kellerBliesner(coarseness, r.in("ET0"), r.in("WS_km_h"));
        });
        f.add("trimmer87-.*", r -> SprayLoss.trimmer(r.in("D_mm"), r.in("vpd_kPa"), r.in("h_kPa"), r.in("wind_m_s")));
    }

    /** A number that stands in a row's note. */
    private static double noted(ReferenceRow r, String pattern) {
        return quoted(r.node().get("note").asText(), pattern);
    }

    private static double quoted(String text, String pattern) {
        Matcher matcher = Pattern.compile(pattern).matcher(text);
        assertTrue(matcher.find(), () -> pattern + " in " + text);
        return Double.parseDouble(matcher.group(1));
    }
}
