package provingyard.world.ground;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import provingyard.reference.Conditions;
import provingyard.reference.ReferenceRow;
import provingyard.reference.Table;
import provingyard.reference.Table.Line;
import provingyard.reference.UnusedRows;
import provingyard.scenario.Catalogue.Paving;
import provingyard.scenario.Text;

/** Formulas against independently computed series. */
@Tag("unit")
class SeriesTest {

    private static final String BALANCE = "weather-soil/balance-visible.csv";
    private static final String GREEN_AMPT = "weather-soil/greenampt-visible.csv";
    private static final String PAVEMENT = "weather-soil/pavement-visible.csv";

    @Test
    void dailyRootZoneBalanceMeetsTheSeriesInBothOrders() {
        Table table = Table.of(BALANCE);
        for (Line row : table.lines()) {
            double crop = row.number("et0_mm") * row.number("kc");
            double p = SoilWater.adjustedDepletion(row.number("p_table"), crop);
            double taw =
                    SoilWater.totalAvailable(row.number("theta_fc"), row.number("theta_wp"), 1000 * row.number("zr_m"));
            double runoff = CurveNumber.runoff(row.number("p_mm"), row.number("cn"));
            assertEquals(row.number("etc_mm"), crop, 1e-5);
            assertEquals(row.number("p_adj"), p, 1e-5);
            assertEquals(row.number("taw_mm"), taw, 1e-9);
            assertEquals(row.number("raw_mm"), SoilWater.readilyAvailable(taw, p), 1e-3);
            assertEquals(row.number("runoff_mm"), runoff, 1e-3);
            double water = row.number("p_mm") - runoff + row.number("irrigation_net_mm");
            check(
                    row,
                    "",
                    SoilWater.day(SoilWater.DayOrder.STRESS_AT_START, row.number("dr_start_mm"), water, crop, taw, p));
            check(
                    row,
                    "v2_",
                    SoilWater.day(SoilWater.DayOrder.WATER_FIRST, row.number("v2_dr_start_mm"), water, crop, taw, p));
        }
        assertEquals(UnusedRows.rows(BALANCE), table.unread());
    }

    private static void check(Line row, String prefix, SoilWater.Day day) {
        String where = row + " zone " + row.text("zone") + " day " + row.text("day") + " " + prefix;
        assertEquals(row.number(prefix + "ks"), day.stress(), 1e-4, where);
        assertEquals(row.number(prefix + "eta_mm"), day.evapotranspiration(), 1e-3, where);
        assertEquals(row.number(prefix + "dp_mm"), day.percolation(), 1e-3, where);
        assertEquals(row.number(prefix + "dr_end_mm"), day.depleted(), 1e-3, where);
    }

    /** An event so far: hours, and mm fallen and taken in. */
    private static final class Rainfall {

        double hours;
        double fallen;
        double taken;
    }

    @Test
    void greenAmptEventsMeetTheSeries() throws IOException {
        Map<String, Rainfall> events = new LinkedHashMap<>();
        Table table = Table.of(GREEN_AMPT);
        for (Line row : table.lines()) {
            Rainfall event = events.computeIfAbsent(row.text("event"), k -> new Rainfall());
            double k = row.number("K_mm_h");
            double m = row.number("psi_dtheta_mm");
            double step = row.number("t_end_h") - event.hours;
            double rain = row.number("intensity_mm_h") * step;
            double f = GreenAmpt.after(k, m, event.taken, row.number("intensity_mm_h"), step);
            assertEquals(row.number("rain_mm"), rain, 1e-4);
            assertEquals(row.number("infiltration_mm"), f - event.taken, 0.01);
            assertEquals(row.number("excess_mm"), rain - (f - event.taken), 0.01);
            assertEquals(row.number("F_cum_mm"), f, 0.01);
            assertEquals(row.number("capacity_end_mm_h"), GreenAmpt.capacity(k, m, f), 0.01);
            event.hours = row.number("t_end_h");
            event.fallen += rain;
            event.taken = f;
        }
        assertEquals(UnusedRows.rows(GREEN_AMPT), table.unread());
        try (InputStream in = Table.open("weather-soil/greenampt-visible-summary.json")) {
            for (JsonNode sum : new ObjectMapper().readTree(in)) {
                meets(sum, events.get(sum.get("event").asText()), table);
            }
        }
    }

    /** Sums of an event, and the time of its first ponding. */
    private static void meets(JsonNode sum, Rainfall event, Table table) {
        assertEquals(sum.get("rain").doubleValue(), event.fallen, 0.01);
        assertEquals(sum.get("F").doubleValue(), event.taken, 0.01);
        assertEquals(sum.get("excess").doubleValue(), event.fallen - event.taken, 0.01);
        double before = 0;
        double from = 0;
        for (Line row : table.lines()) {
            if (!row.text("event").equals(sum.get("event").asText())) {
                continue;
            }
            double rate = row.number("intensity_mm_h");
            double pondsAt = GreenAmpt.pondingDepth(row.number("K_mm_h"), row.number("psi_dtheta_mm"), rate);
            if (before + rate * (row.number("t_end_h") - from) > pondsAt) {
                double hours = from + Math.max(0, pondsAt - before) / rate;
                assertEquals(60 * sum.get("tp_h").doubleValue(), 60 * hours, 0.1, "minutes to ponding");
                return;
            }
            before += rate * (row.number("t_end_h") - from);
            from = row.number("t_end_h");
        }
        throw new AssertionError("no ponding in " + sum.get("event"));
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
        Conditions c = Conditions.of("pavement-visible.csv");
        Paving concrete = new Paving(
                "c",
                new Text("c", "c"),
                c.get("slab_m"),
                c.get("conductivity_W_mK"),
                c.get("specific_heat_J_kgK"),
                c.get("density_kg_m3"),
                c.get("albedo"),
                c.get("emissivity"),
                0.001);
        PavementSlab slab = new PavementSlab(concrete);
        double cell = concrete.thickness() / (slab.nodes() - PavementSlab.SOIL_CELLS);
        assertEquals(c.get("soil_below_m"), PavementSlab.SOIL_DEPTH);
        double[] t = new double[slab.nodes()];
        Arrays.fill(t, c.get("start_C"));
        Table table = Table.of(PAVEMENT);
        List<Line> rows = table.lines();
        double worst = 0;
        for (int hour = 0; hour < rows.size() - 1; hour++) {
            for (int minute = 0; minute < 60; minute++) {
                pass(slab, concrete, t, rows.get(hour), rows.get(hour + 1), minute / 60.0, c.get("base_C"));
            }
            Line row = rows.get(hour + 1);
            assertEquals(hour + 1, (int) row.number("hour"));
            worst = Math.max(worst, Math.abs(row.number("t_surface_C") - t[0]));
            worst = Math.max(worst, Math.abs(row.number("t_5cm_C") - t[(int) Math.round(0.05 / cell)]));
            worst = Math.max(worst, Math.abs(row.number("t_10cm_C") - t[(int) Math.round(0.10 / cell)]));
        }
        assertTrue(worst < 0.1, "worst " + worst + " K");
        assertEquals(UnusedRows.rows(PAVEMENT), table.unread());
    }

    private static void pass(
            PavementSlab slab, Paving paving, double[] t, Line from, Line to, double share, double base) {
        double air = between(from, to, "ta_C", share);
        double vapour = SurfaceHeat.saturation(air) * between(from, to, "rh_pct", share) / 100;
        double sky = SurfaceHeat.cloudy(SurfaceHeat.brutsaert(air, vapour), between(from, to, "cloud_0_1", share))
                * SurfaceHeat.radiated(air);
        double flux = SurfaceHeat.convection(between(from, to, "wind_m_s", share)) * (air - t[0])
                + paving.emissivity() * (sky - SurfaceHeat.radiated(t[0]))
                + (1 - paving.albedo()) * between(from, to, "rs_W_m2", share);
        slab.conduct(t, 0, flux, 0, base, 60);
    }

    private static double between(Line from, Line to, String column, double share) {
        return from.number(column) * (1 - share) + to.number(column) * share;
    }

    @Test
    void soilBelowSlabsIsThePublishedOne() {
        JsonNode soil = ReferenceRow.of("nist-concrete").expected().get("soil");
        assertEquals(soil.get("k").doubleValue(), PavementSlab.SOIL_CONDUCTIVITY);
        assertEquals(soil.get("rho").doubleValue() * soil.get("c").doubleValue(), PavementSlab.SOIL_HEAT);
    }
}
