package provingyard.world.ground;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static provingyard.world.ground.Reference.number;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import provingyard.scenario.Catalogue.Paving;
import provingyard.scenario.Text;

/** Formulas against independently computed series. */
@Tag("unit")
class SeriesTest {

    @Test
    void dailyRootZoneBalanceMeetsTheSeriesInBothOrders() {
        List<Map<String, String>> rows = Reference.csv("balance-visible.csv");
        assertEquals(90, rows.size());
        for (Map<String, String> row : rows) {
            double crop = number(row, "et0_mm") * number(row, "kc");
            double p = SoilWater.adjustedDepletion(number(row, "p_table"), crop);
            double taw = SoilWater.totalAvailable(
                    number(row, "theta_fc"), number(row, "theta_wp"), 1000 * number(row, "zr_m"));
            double runoff = CurveNumber.runoff(number(row, "p_mm"), number(row, "cn"));
            assertEquals(number(row, "p_adj"), p, 1e-5);
            assertEquals(number(row, "taw_mm"), taw, 1e-9);
            assertEquals(number(row, "raw_mm"), SoilWater.readilyAvailable(taw, p), 1e-3);
            assertEquals(number(row, "runoff_mm"), runoff, 1e-3);
            double water = number(row, "p_mm") - runoff + number(row, "irrigation_net_mm");
            check(
                    row,
                    "",
                    SoilWater.day(SoilWater.DayOrder.STRESS_AT_START, number(row, "dr_start_mm"), water, crop, taw, p));
            check(
                    row,
                    "v2_",
                    SoilWater.day(SoilWater.DayOrder.WATER_FIRST, number(row, "v2_dr_start_mm"), water, crop, taw, p));
        }
    }

    private static void check(Map<String, String> row, String prefix, SoilWater.Day day) {
        String where = row.get("zone") + row.get("day") + prefix;
        assertEquals(number(row, prefix + "ks"), day.stress(), 1e-4, where);
        assertEquals(number(row, prefix + "eta_mm"), day.evapotranspiration(), 1e-3, where);
        assertEquals(number(row, prefix + "dp_mm"), day.percolation(), 1e-3, where);
        assertEquals(number(row, prefix + "dr_end_mm"), day.depleted(), 1e-3, where);
    }

    @Test
    void greenAmptEventsMeetTheSeries() {
        Map<String, double[]> state = new LinkedHashMap<>();
        for (Map<String, String> row : Reference.csv("greenampt-visible.csv")) {
            double[] s = state.computeIfAbsent(row.get("event"), k -> new double[2]);
            double k = number(row, "K_mm_h");
            double m = number(row, "psi_dtheta_mm");
            double step = number(row, "t_end_h") - s[0];
            double f = GreenAmpt.after(k, m, s[1], number(row, "intensity_mm_h"), step);
            assertEquals(number(row, "infiltration_mm"), f - s[1], 0.01);
            assertEquals(number(row, "F_cum_mm"), f, 0.01);
            assertEquals(number(row, "capacity_end_mm_h"), GreenAmpt.capacity(k, m, f), 0.01);
            s[0] = number(row, "t_end_h");
            s[1] = f;
        }
        assertEquals(60 * 0.16958383448275863, 60 * GreenAmpt.pondingTime(6.5, 56.74536, 50), 0.1);
    }

    @Test
    void quadraticInMinutesStaysNearTheExactInfiltration() {
        double worst = 0;
        double first = 0;
        double[][] soils = {{117.8, 14.9}, {29.9, 18.4}, {3.4, 27}, {6.5, 56.7}, {1, 45.2}, {0.5, 86.5}, {0.3, 85.4}};
        for (double[] soil : soils) {
            double quick = 0;
            for (int minute = 1; minute <= 120; minute++) {
                quick += GreenAmpt.quadratic(soil[0], soil[1], quick, 1.0 / 60);
                double exact = GreenAmpt.ponded(soil[0], soil[1], 0, minute / 60.0);
                double error = Math.abs(quick - exact) / exact;
                worst = Math.max(worst, error);
                first = minute == 1 ? Math.max(first, error) : first;
            }
        }
        assertTrue(worst < QUADRATIC_WORST, "worst " + worst + ", first minute " + first);
        assertTrue(worst > QUADRATIC_WORST / 2, "the stated error is too generous: " + worst);
    }

    /** Stated in the docstring of {@link GreenAmpt#quadratic}. */
    private static final double QUADRATIC_WORST = 0.036;

    @Test
    void slabMeetsTheSeriesWithinATenthOfAKelvin() {
        Paving concrete = new Paving("c", new Text("c", "c"), 0.2, 1.5, 1000, 2350, 0.3, 0.92, 0.001);
        PavementSlab slab = new PavementSlab(concrete);
        double[] t = new double[slab.nodes()];
        Arrays.fill(t, 3);
        List<Map<String, String>> rows = Reference.csv("pavement-visible.csv");
        double worst = 0;
        for (int hour = 0; hour < 72; hour++) {
            for (int minute = 0; minute < 60; minute++) {
                pass(slab, t, rows.get(hour), rows.get(hour + 1), minute / 60.0);
            }
            Map<String, String> row = rows.get(hour + 1);
            worst = Math.max(worst, Math.abs(number(row, "t_surface_C") - t[0]));
            worst = Math.max(worst, Math.abs(number(row, "t_10cm_C") - t[4]));
        }
        assertTrue(worst < 0.1, "worst " + worst + " K");
    }

    private static void pass(
            PavementSlab slab, double[] t, Map<String, String> from, Map<String, String> to, double share) {
        double air = between(from, to, "ta_C", share);
        double vapour = SurfaceHeat.saturation(air) * between(from, to, "rh_pct", share) / 100;
        double sky = SurfaceHeat.cloudy(SurfaceHeat.brutsaert(air, vapour), between(from, to, "cloud_0_1", share))
                * SurfaceHeat.radiated(air);
        double flux = SurfaceHeat.convection(between(from, to, "wind_m_s", share)) * (air - t[0])
                + 0.92 * (sky - SurfaceHeat.radiated(t[0]))
                + 0.7 * between(from, to, "rs_W_m2", share);
        slab.conduct(t, 0, flux, 0, 6, 60);
    }

    private static double between(Map<String, String> from, Map<String, String> to, String column, double share) {
        return number(from, column) * (1 - share) + number(to, column) * share;
    }
}
