package provingyard.world.ground;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Formulas of the ground against published rows. Rows whose status is 'from memory' or 'computed here' are weaker: they
 * guard against slips, not against a wrong source.
 */
@Tag("unit")
class PublishedRowsTest {

    private static final Map<String, JsonNode> ROWS = Reference.published();
    private static final Map<String, ToDoubleFunction<JsonNode>> CHECKS = checks();

    @TestFactory
    Stream<DynamicTest> formulaMeetsItsRow() {
        return CHECKS.entrySet().stream()
                .map(check -> DynamicTest.dynamicTest(check.getKey(), () -> {
                    JsonNode row = ROWS.get(check.getKey());
                    assertEquals(
                            row.get("expected").asDouble(),
                            check.getValue().applyAsDouble(row.get("inputs")),
                            Reference.tolerance(row) * 1.0001);
                }));
    }

    @Test
    void everyRowIsCheckedHereOrHasAReasonNotToBe() {
        Set<String> open = new TreeSet<>(ROWS.keySet());
        open.removeAll(CHECKS.keySet());
        open.removeIf(id -> UnusedRows.REASONS.keySet().stream().anyMatch(id::startsWith));
        assertTrue(open.isEmpty(), "no check and no reason in UnusedRows for " + open);
    }

    private static Map<String, ToDoubleFunction<JsonNode>> checks() {
        Map<String, ToDoubleFunction<JsonNode>> c = new LinkedHashMap<>();
        soil(c);
        infiltration(c);
        landscape(c);
        heat(c);
        spray(c);
        return c;
    }

    private static void soil(Map<String, ToDoubleFunction<JsonNode>> c) {
        for (String crop : new String[] {"onion", "tomato", "maize"}) {
            for (String soil : new String[] {"loamy-sand", "silt"}) {
                c.put("fao56-ex36-" + crop + "-" + soil, i -> {
                    double taw = SoilWater.totalAvailable(of(i, "theta_fc"), of(i, "theta_wp"), 1000 * of(i, "zr_m"));
                    assertEquals(of(i, "TAW_mm"), taw, 1e-9);
                    return SoilWater.readilyAvailable(taw, of(i, "p"));
                });
            }
        }
        c.put("fao56-ex37-day3", PublishedRowsTest::tomatoStress);
        c.put("fao56-ex37-day5", PublishedRowsTest::tomatoStress);
        c.put("tr55-ex2-1", i -> CurveNumber.runoff(25.4 * of(i, "P_in"), of(i, "CN")) / 25.4);
        c.put("tr55-ex2-2", i -> CurveNumber.runoff(25.4 * of(i, "P_in"), of(i, "CN")) / 25.4);
        c.put("scs-zero", i -> CurveNumber.runoff(of(i, "P_mm"), of(i, "CN")));
        for (String id : new String[] {"topp-3", "topp-10", "topp-20", "topp-40"}) {
            c.put(id, i -> Dielectric.waterContent(of(i, "Ka")));
        }
        c.put("water-permittivity", i -> Dielectric.waterPermittivity(of(i, "T_C")));
    }

    private static double tomatoStress(JsonNode i) {
        double depleted = of(i, "Dr_start_day1");
        for (int day = 1; day < of(i, "day"); day++) {
            depleted = SoilWater.day(
                            SoilWater.DayOrder.STRESS_AT_START,
                            depleted,
                            0,
                            of(i, "Kc") * of(i, "ET0"),
                            of(i, "TAW"),
                            of(i, "p"))
                    .depleted();
        }
        return SoilWater.stress(of(i, "TAW"), depleted, of(i, "p"));
    }

    private static void infiltration(Map<String, ToDoubleFunction<JsonNode>> c) {
        // Silt loam at 30 % saturation: K 0.65 cm/h, psi 16.68 cm, deficit 0.7 x 0.486.
        double moisture = 16.68 * 0.7 * 0.486;
        c.put("chow-431-f", i -> GreenAmpt.capacity(0.65, moisture, GreenAmpt.ponded(0.65, moisture, 0, 1)));
        c.put("chow-442-tp-1", i -> GreenAmpt.pondingTime(of(i, "K"), of(i, "psi_dtheta_cm"), of(i, "i_cm_h")));
        c.put("chow-443-F", i -> GreenAmpt.after(0.65, moisture, 0, of(i, "i_cm_h"), of(i, "t_h")));
        c.put("osu65-1", i -> {
            double deficit = of(i, "theta_s") - of(i, "theta_i");
            double infiltrated = deficit * of(i, "L_cm");
            double wet = (of(i, "psi_cm") + of(i, "h_cm")) * deficit;
            assertEquals(10.20, infiltrated, 0.005);
            assertEquals(6.190, GreenAmpt.time(of(i, "K_cm_h"), wet, infiltrated), 0.001);
            return GreenAmpt.capacity(of(i, "K_cm_h"), wet, infiltrated);
        });
        c.put("osu65-3", i -> GreenAmpt.pondingTime(of(i, "K"), of(i, "psi") * of(i, "dtheta"), of(i, "i_cm_h")));
    }

    private static void landscape(Map<String, ToDoubleFunction<JsonNode>> c) {
        c.put("wucols-newplanting", i -> LandscapeBudget.landscapeCoefficient(of(i, "ks"), of(i, "kd"), of(i, "kmc")));
        c.put(
                "wucols-etl",
                i -> LandscapeBudget.toApply(
                        LandscapeBudget.landscapeCoefficient(of(i, "ks"), of(i, "kd"), of(i, "kmc")),
                        of(i, "ET0_in_month"),
                        of(i, "IE")));
        c.put("mwelo2009-mawa", i -> LandscapeBudget.allowance(of(i, "ET0_in_yr"), 0.7, of(i, "LA_ft2"), 0));
        c.put(
                "mwelo2015-mawa-res",
                i -> LandscapeBudget.allowance(of(i, "ET0_in_yr"), of(i, "ETAF"), of(i, "LA_ft2"), of(i, "SLA_ft2")));
        c.put(
                "mwelo2009-etwu",
                i -> LandscapeBudget.estimatedUse(
                        of(i, "ET0_in_yr"), i.get("hydrozone_PFxHA").get("sum").asDouble(), of(i, "IE"), of(i, "SLA")));
    }

    private static void heat(Map<String, ToDoubleFunction<JsonNode>> c) {
        for (String at : new String[] {"0C-80", "-5C-80", "10C-50"}) {
            c.put("emis-brutsaert-" + at, i -> SurfaceHeat.brutsaert(of(i, "T_C"), of(i, "e_kPa")));
            c.put("emis-idso1981-" + at, i -> SurfaceHeat.idso(of(i, "T_C"), of(i, "e_kPa")));
        }
        c.put(
                "damping-concrete",
                i -> SurfaceHeat.dampingDepth(of(i, "k") / (of(i, "rho") * of(i, "c")), of(i, "period_s")));
        c.put("conv-barber", i -> SurfaceHeat.barber(of(i, "v_mph") * 0.44704));
        ROWS.keySet().stream()
                .filter(id -> id.startsWith("night-"))
                .forEach(id -> c.put(id, i -> {
                    double air = of(i, "Ta");
                    double vapour = SurfaceHeat.saturation(air) * of(i, "RH") / 100;
                    double sky = SurfaceHeat.cloudy(SurfaceHeat.brutsaert(air, vapour), of(i, "cloud"))
                            * SurfaceHeat.radiated(air);
                    double h = SurfaceHeat.convection(of(i, "wind"));
                    return air - SurfaceHeat.steadyNight(air, h, 0.95, sky, of(i, "G"));
                }));
        ROWS.keySet().stream()
                .filter(id -> id.startsWith("film-") && !id.startsWith("film-sink"))
                .forEach(id -> c.put(id, i -> {
                    double air = of(i, "Ta");
                    double vapour = SurfaceHeat.saturation(air) * of(i, "RH") / 100;
                    double h = SurfaceHeat.convection(of(i, "wind"));
                    double sky = SurfaceHeat.brutsaert(air, vapour) * SurfaceHeat.radiated(air);
                    double lost = -h * air
                            + of(i, "rad") * 0.97 * (SurfaceHeat.radiated(0) - sky)
                            + of(i, "evap") * SurfaceHeat.evaporation(h, 0, vapour);
                    return Freezing.time(0.001, lost) / 60;
                }));
        for (String id : new String[] {"film-sink--3", "film-sink--5"}) {
            c.put(id, i -> Freezing.timeOnSlab(0.001, -of(i, "T_slab_C"), of(i, "effusivity")) / 60);
        }
    }

    private static void spray(Map<String, ToDoubleFunction<JsonNode>> c) {
        c.put("playan05-E15-all", i -> SprayLoss.solidSet(of(i, "U"), of(i, "RH")));
        c.put("playan05-E13-day", i -> SprayLoss.solidSetDay(of(i, "U"), of(i, "RH")));
        c.put("playan05-E2-night", i -> SprayLoss.solidSetNight(of(i, "U")));
        c.put("yazar84-evap", i -> SprayLoss.yazar(of(i, "W_m_s"), of(i, "vpd_hPa")));
        c.put("kb-re", i -> {
            double coarseness = SprayLoss.coarseness(of(i, "P_kPa"), of(i, "B_mm"));
            assertEquals(of(i, "CI"), coarseness, 0.02);
            return SprayLoss.kellerBliesner(coarseness, of(i, "ET0"), of(i, "WS_km_h"));
        });
        ROWS.keySet().stream()
                .filter(id -> id.startsWith("trimmer87-") && !id.startsWith("trimmer87-3.18"))
                .forEach(id -> c.put(
                        id,
                        i -> SprayLoss.trimmer(of(i, "D_mm"), of(i, "vpd_kPa"), of(i, "h_kPa"), of(i, "wind_m_s"))));
    }

    private static double of(JsonNode inputs, String name) {
        return inputs.get(name).asDouble();
    }
}
