package provingyard.world.hydraulics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import provingyard.reference.Table;
import provingyard.reference.UnusedRows;

/**
 * Published values from {@code published-hydraulics.json}, each against what the model computes, by quantity, so that a
 * new row of a known quantity is checked as soon as it stands in the file.
 */
public class PublishedHydraulicsTest {

    private static final double INCH = 0.0254;
    private static final double FOOT = 0.3048;
    private static final double GPM = 3.785411784e-3 / 60;
    private static final double PSI = 6894.757293168;
    private static final double PSI_HEAD = PSI / (1000 * Constants.GRAVITY_M_S2);

    /** The file's path below {@code shared/reference/}. */
    public static final String FILE = "hydraulics/published-hydraulics.json";

    private static final JsonNode ROWS = ReferenceFiles.json("published-hydraulics.json");

    @TestFactory
    Stream<DynamicTest> rows() {
        return IntStream.range(0, ROWS.size())
                .filter(i -> !UnusedRows.rows(FILE).contains(text(ROWS.get(i), "quantity")))
                .mapToObj(i -> DynamicTest.dynamicTest(name(i), () -> check(ROWS.get(i))));
    }

    @Test
    void onlyListedQuantitiesAreLeftOut() {
        Set<String> quantities = new TreeSet<>();
        ROWS.forEach(row -> quantities.add(text(row, "quantity")));
        assertTrue(quantities.containsAll(UnusedRows.rows(FILE)), "listed but not in the file");
        long left = IntStream.range(0, ROWS.size())
                .filter(i -> UnusedRows.rows(FILE).contains(text(ROWS.get(i), "quantity")))
                .count();
        assertEquals(ROWS.size(), rows().count() + left);
    }

    private static String name(int i) {
        JsonNode row = ROWS.get(i);
        return "row " + i + ": " + text(row, "quantity") + " " + row.get("inputs") + " (" + text(row, "source") + "; "
                + text(row, "how") + ")";
    }

    private static String text(JsonNode row, String field) {
        return row.get(field).textValue();
    }

    private static double in(JsonNode row, String field) {
        return row.get("inputs").get(field).doubleValue();
    }

    private static void check(JsonNode row) {
        Map<String, Double> computed = compute(row);
        JsonNode expected = row.get("expected");
        computed.forEach((key, value) -> {
            double wanted = key.isEmpty()
                    ? expected.doubleValue()
                    : key.startsWith("#") ? value : expected.get(key).doubleValue();
            assertEquals(wanted, value, tolerance(row, wanted), () -> text(row, "quantity") + " " + key);
        });
        if (expected.isArray()) {
            for (double value : computed.values()) {
                assertTrue(
                        value >= expected.get(0).doubleValue() - 1e-9
                                && value <= expected.get(1).doubleValue() + 1e-9,
                        () -> value + " is outside " + expected);
            }
        } else {
            assertEquals(expected.isObject() ? expected.size() : 1, computed.size(), "values compared");
        }
    }

    /** The row's own tolerance text as a number; rules and exact table entries must match to rounding. */
    private static double tolerance(JsonNode row, double wanted) {
        String text = text(row, "tolerance");
        double share = 0;
        double least = 1e-9;
        if (text.startsWith("exact as a table")) {
            share = "1".equals(row.get("inputs").get("size_in").textValue()) ? 0.10 : 0.04;
        } else if (text.matches("[0-9.]+ %.*")) {
            share = Double.parseDouble(text.substring(0, text.indexOf(' '))) / 100;
            least = text.contains("or 0.01") ? 0.01 : text.contains("or 0.1") ? 0.1 : least;
        } else if (text.matches("[0-9.]+.*")) {
            least = Double.parseDouble(text.split(" ")[0]);
        }
        return Math.max(share * Math.abs(wanted), least) * (1 + 1e-9);
    }

    private static Map<String, Double> one(double value) {
        return Map.of("", value);
    }

    private static Map<String, Double> compute(JsonNode row) {
        String quantity = text(row, "quantity");
        switch (quantity) {
            case "Hazen-Williams friction loss, Sch 40 plastic pipe":
                assertEquals(in(row, "inner_diameter_in"), inner(PipeSizes.WallClass.SCHEDULE_40, row), 0.0006);
                return one(friction(row) / FOOT);
            case "Hazen-Williams friction loss, PVC Class 160 (SDR 26)":
                assertEquals(in(row, "inner_diameter_in"), inner(PipeSizes.WallClass.CLASS_160, row), 0.0006);
                return one(friction(row) / PSI_HEAD);
            case "Hazen-Williams US form, psi per foot":
                return one(Friction.hazenWilliams(
                                100 * FOOT,
                                in(row, "inner_diameter_in") * INCH,
                                in(row, "C"),
                                in(row, "flow_gpm") * GPM,
                                Constants.TEXTBOOK)
                        / PSI_HEAD);
            case "Hazen-Williams SI constant":
                return one(Friction.hazenResistance(1, 1, 1, Constants.TEXTBOOK));
            case "pipe velocity":
                return one(Friction.velocity(in(row, "flow_gpm") * GPM, in(row, "inner_diameter_in") * INCH) / FOOT);
            case "inner diameter, PVC Class 200 (SDR 21), ASTM D2241":
                return one(inner(PipeSizes.WallClass.CLASS_200, row));
            case "inner diameter, PVC Sch 40: average ID":
                return one(PipeSizes.find(PipeSizes.WallClass.SCHEDULE_40, in(row, "nominal_in"))
                                .orElseThrow()
                                .averageInnerDiameter()
                        / INCH);
            case "multiple-outlet factor F, m = 1.85", "multiple-outlet factor F, m = 1.852":
                return one(Friction.multipleOutletFactor((int) in(row, "outlets"), in(row, "m")));
            case "F, first outlet half a spacing from the inlet, m = 1.852":
                double m = Double.parseDouble(quantity.substring(quantity.lastIndexOf(' ') + 1));
                return one(Friction.multipleOutletFactorHalfSpacing((int) in(row, "outlets"), m));
            case "coefficient of discharge of an orifice":
                return one(NozzleFlow.dischargeCoefficient(
                        imperialFlow(row), in(row, "diameter_in") * INCH, in(row, "head_ft") * FOOT));
            case "theoretical nozzle discharge":
                return one(nozzle(row, in(row, "C"), "pressure_psi"));
            case "sprinkler nozzle discharge":
                return one(nozzle(row, in(row, "Cd"), "pressure_psi"));
            case "hydrant/orifice discharge":
                return one(nozzle(row, in(row, "Cd"), "pitot_psi"));
            case "precipitation rate":
                return one(NozzleFlow.applicationRate(in(row, "flow_gpm") * GPM, in(row, "area_ft2") * FOOT * FOOT)
                        * 3600
                        / INCH);
            default:
                return computeMore(row, quantity);
        }
    }

    private static Map<String, Double> computeMore(JsonNode row, String quantity) {
        switch (quantity) {
            case "Joukowsky surge, PVC DR 18":
                return one(Surge.headRise(in(row, "wave_speed_ft_s") * FOOT, in(row, "velocity_change_ft_s") * FOOT)
                        / FOOT
                        * in(row, "psi_per_ft"));
            case "reflection time 2L/a in that example":
                return one(Surge.reflectionTime(in(row, "length_ft") * FOOT, in(row, "wave_speed_ft_s") * FOOT));
            case "surge per 1 ft/s, PVC":
                double speed = Surge.waveSpeed(in(row, "DR"), in(row, "K_psi") / in(row, "E_psi"));
                assertEquals(Surge.WATER_OVER_PVC, in(row, "K_psi") / in(row, "E_psi"));
                return one(Surge.pressureRise(Friction.WATER_DENSITY_KG_M3, speed, FOOT) / PSI);
            case "velocity limit for PVC pipe selection":
                return one(Friction.VELOCITY_CAUTION_M_S / FOOT);
            case "water meter pressure loss (limit of the standard)":
                return one(meter(row.get("inputs").get("size_in").textValue()).lossLimit(in(row, "flow_gpm") * GPM)
                        / PSI_HEAD);
            case "backflow device pressure loss, usual range in normal service":
                return backflow(row.get("inputs").get("type").textValue());
            case "straight length upstream of a point-velocity (insertion) sensor":
                var sensor = pointSensor(row.get("inputs").get("disturbance").textValue());
                return Map.of("at_mean_velocity_point", sensor.atMeanVelocityPoint(), "on_axis", sensor.onAxis());
            case "straight length for an orifice meter, beta 0.5":
                var orifice = orificeMeter(row.get("inputs").get("fitting").textValue());
                return Map.of("A", orifice.full(), "B", orifice.reduced());
            case "common rule for insertion paddle/turbine sensors":
                return Map.of("upstream", StraightPipe.RULE_UPSTREAM, "downstream", StraightPipe.RULE_DOWNSTREAM);
            case "leak flow ratio on pressure cut":
                return one(Leak.flowRatio(in(row, "p0_m"), in(row, "p1_m"), in(row, "N1")));
            default:
                assertTrue(quantity.startsWith("DU and CU"), () -> "no model for " + quantity);
                double[] catches = new double[row.get("inputs").get("catch").size()];
                for (int i = 0; i < catches.length; i++) {
                    catches[i] = row.get("inputs").get("catch").get(i).doubleValue();
                }
                return Map.of(
                        "DU", 100 * Uniformity.lowerQuarter(catches), "CU", 100 * Uniformity.christiansen(catches));
        }
    }

    /** Flow in m3/s from a text such as '16 imperial gpm (10 lb each, 62.4 lb/ft3)'. */
    private static double imperialFlow(JsonNode row) {
        String text = row.get("inputs").get("flow").textValue();
        Matcher m = Pattern.compile("([0-9.]+) imperial gpm \\(([0-9.]+) lb each, ([0-9.]+) lb/ft3\\)")
                .matcher(text);
        assertTrue(m.matches(), text);
        double[] number = IntStream.rangeClosed(1, 3)
                .mapToDouble(i -> Double.parseDouble(m.group(i)))
                .toArray();
        return number[0] * number[1] / number[2] * FOOT * FOOT * FOOT / 60;
    }

    private static double inner(PipeSizes.WallClass wall, JsonNode row) {
        return PipeSizes.find(wall, in(row, "nominal_in")).orElseThrow().innerDiameter() / INCH;
    }

    private static double friction(JsonNode row) {
        return Friction.hazenWilliams(
                in(row, "length_ft") * FOOT,
                in(row, "inner_diameter_in") * INCH,
                in(row, "C"),
                in(row, "flow_gpm") * GPM,
                Constants.TEXTBOOK);
    }

    private static double nozzle(JsonNode row, double coefficient, String pressure) {
        return NozzleFlow.discharge(coefficient, in(row, "diameter_in") * INCH, in(row, pressure) * PSI_HEAD) / GPM;
    }

    private static MeterSize meter(String size) {
        return switch (size) {
            case "5/8" -> MeterSize.FIVE_EIGHTHS;
            case "3/4" -> MeterSize.THREE_QUARTERS;
            case "1" -> MeterSize.ONE;
            case "1-1/2" -> MeterSize.ONE_AND_A_HALF;
            default -> MeterSize.TWO;
        };
    }

    /** All points of the curve; each must lie in the row's range. */
    private static Map<String, Double> backflow(String type) {
        BackflowKind kind = type.equals("reduced-pressure assembly")
                ? BackflowKind.REDUCED_PRESSURE
                : BackflowKind.PRESSURE_VACUUM_BREAKER;
        Map<String, Double> psi = new TreeMap<>();
        for (double loss : kind.losses()) {
            psi.put("#" + loss, loss / PSI_HEAD);
        }
        return psi;
    }

    private static StraightPipe.BeforePointSensor pointSensor(String disturbance) {
        return switch (disturbance) {
            case "90 degree elbow or tee bend" -> StraightPipe.BeforePointSensor.ELBOW;
            case "several non-coplanar 90 degree bends" -> StraightPipe.BeforePointSensor.BENDS_NOT_IN_ONE_PLANE;
            case "convergent 18 to 36 degrees" -> StraightPipe.BeforePointSensor.CONVERGENT;
            case "fully open butterfly valve" -> StraightPipe.BeforePointSensor.BUTTERFLY_VALVE;
            default -> StraightPipe.BeforePointSensor.PLUG_VALVE;
        };
    }

    private static StraightPipe.NearOrificeMeter orificeMeter(String fitting) {
        return switch (fitting) {
            case "single 90 degree bend" -> StraightPipe.NearOrificeMeter.BEND;
            case "two 90 degree bends in perpendicular planes" ->
                StraightPipe.NearOrificeMeter.BENDS_IN_PERPENDICULAR_PLANES;
            default -> StraightPipe.NearOrificeMeter.DOWNSTREAM;
        };
    }

    static List<Table.Line> darcyRows() {
        return Table.of("hydraulics/darcy-weisbach.csv").lines();
    }

    @ParameterizedTest(name = "Darcy-Weisbach: {0}")
    @MethodSource("darcyRows")
    void darcyByNumber(Table.Line row) {
        double q = row.number("q_m3_s");
        double d = row.number("diameter_m");
        double e = row.number("roughness_mm") / 1000;
        double nu = row.number("viscosity_m2_s");
        String where = row.text("source") + ", " + row.text("status");
        double re = Friction.reynolds(q, d, nu, Constants.TEXTBOOK);
        assertEquals(row.number("reynolds"), re, 0.06, where);
        assertEquals(row.number("factor"), Friction.darcyFactor(re, e / d), 6e-7, where);
        double loss = Friction.darcyWeisbach(row.number("length_m"), d, e, nu, q, Constants.TEXTBOOK);
        assertEquals(row.number("loss_m"), loss, 6e-7, where);
    }

    @ParameterizedTest(name = "Re df/dRe at Re = {0} agrees with a difference quotient")
    @CsvSource({"1500", "2001", "2500", "3999", "4001", "20000", "300000"})
    void darcySlope(double re) {
        double step = 1e-6 * re;
        double difference = (Friction.darcyFactor(re + step, 7e-5) - Friction.darcyFactor(re - step, 7e-5)) / 2e-6;
        assertEquals(difference, Friction.darcyFactorSlope(re, 7e-5), 1e-6);
    }

    @Test
    void darcyFactorIsContinuousWhereRegimesMeet() {
        for (double edge : new double[] {2000, 4000}) {
            assertEquals(Friction.darcyFactor(edge - 1e-9, 7e-5), Friction.darcyFactor(edge + 1e-9, 7e-5), 1e-7);
        }
    }
}
