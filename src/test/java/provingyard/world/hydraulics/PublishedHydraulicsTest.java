package provingyard.world.hydraulics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import provingyard.reference.Table;
import provingyard.reference.UnusedRows;
import provingyard.world.ground.Uniformity;

/**
 * Published values from {@code published-hydraulics.json}, each against what the model computes, by quantity, so that a
 * new row of a known quantity is checked as soon as it stands in the file.
 */
@Tag("unit")
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

    /** Laws by the beginning of the quantities that they compute; the first that fits counts. */
    private static final Map<String, Function<JsonNode, Map<String, Double>>> LAWS = laws();

    private static Map<String, Function<JsonNode, Map<String, Double>>> laws() {
        Map<String, Function<JsonNode, Map<String, Double>>> laws = new LinkedHashMap<>();
        pipes(laws);
        outlets(laws);
        surges(laws);
        parts(laws);
        return laws;
    }

    private static Map<String, Double> compute(JsonNode row) {
        String quantity = text(row, "quantity");
        return LAWS.entrySet().stream()
                .filter(law -> quantity.startsWith(law.getKey()))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no model for " + quantity))
                .getValue()
                .apply(row);
    }

    private static void pipes(Map<String, Function<JsonNode, Map<String, Double>>> laws) {
        laws.put("Hazen-Williams friction loss", row -> {
            double inner = size(row).innerDiameter() / INCH;
            assertEquals(in(row, "inner_diameter_in"), inner, 0.0006);
            return one(friction(row, in(row, "length_ft"))
                    / (text(row, "unit").startsWith("psi") ? PSI_HEAD : FOOT)
                    * 100
                    / in(row, "length_ft"));
        });
        laws.put("Hazen-Williams US form", row -> one(friction(row, 100) / PSI_HEAD));
        laws.put("Hazen-Williams SI constant", row -> one(Friction.hazenResistance(1, 1, 1, Constants.TEXTBOOK)));
        laws.put(
                "pipe velocity",
                row -> one(Friction.velocity(in(row, "flow_gpm") * GPM, in(row, "inner_diameter_in") * INCH) / FOOT));
        laws.put("velocity limit", row -> one(Friction.VELOCITY_CAUTION_M_S / FOOT));
        laws.put("inner diameter", row -> {
            boolean average = text(row, "quantity").contains("average");
            return one((average ? size(row).averageInnerDiameter() : size(row).innerDiameter()) / INCH);
        });
        laws.put(
                "multiple-outlet factor F",
                row -> one(Friction.multipleOutletFactor((int) in(row, "outlets"), in(row, "m"))));
        laws.put("F, first outlet half a spacing from the inlet, m = ", row -> {
            String quantity = text(row, "quantity");
            double m = Double.parseDouble(quantity.substring(quantity.lastIndexOf(' ') + 1));
            return one(Friction.multipleOutletFactorHalfSpacing((int) in(row, "outlets"), m));
        });
    }

    private static void outlets(Map<String, Function<JsonNode, Map<String, Double>>> laws) {
        laws.put(
                "coefficient of discharge",
                row -> one(NozzleFlow.dischargeCoefficient(
                        imperialFlow(row), in(row, "diameter_in") * INCH, in(row, "head_ft") * FOOT)));
        laws.put("theoretical nozzle discharge", row -> one(nozzle(row, in(row, "C"), "pressure_psi")));
        laws.put("sprinkler nozzle discharge", row -> one(nozzle(row, in(row, "Cd"), "pressure_psi")));
        laws.put("hydrant/orifice discharge", row -> one(nozzle(row, in(row, "Cd"), "pitot_psi")));
        laws.put(
                "precipitation rate",
                row -> one(NozzleFlow.applicationRate(in(row, "flow_gpm") * GPM, in(row, "area_ft2") * FOOT * FOOT)
                        * 3600
                        / INCH));
        laws.put("leak flow ratio", row -> one(Leak.flowRatio(in(row, "p0_m"), in(row, "p1_m"), in(row, "N1"))));
        laws.put("DU and CU", row -> {
            double[] catches = StreamSupport.stream(
                            row.get("inputs").get("catch").spliterator(), false)
                    .mapToDouble(JsonNode::doubleValue)
                    .toArray();
            return Map.of("DU", 100 * Uniformity.lowerQuarter(catches), "CU", 100 * Uniformity.christiansen(catches));
        });
    }

    private static void surges(Map<String, Function<JsonNode, Map<String, Double>>> laws) {
        laws.put(
                "Joukowsky surge",
                row -> one(Surge.headRise(in(row, "wave_speed_ft_s") * FOOT, in(row, "velocity_change_ft_s") * FOOT)
                        / FOOT
                        * in(row, "psi_per_ft")));
        laws.put(
                "reflection time",
                row -> one(Surge.reflectionTime(in(row, "length_ft") * FOOT, in(row, "wave_speed_ft_s") * FOOT)));
        laws.put("surge per 1 ft/s", row -> {
            double stiffness = in(row, "K_psi") / in(row, "E_psi");
            assertEquals(Surge.WATER_OVER_PVC, stiffness);
            double speed = Surge.waveSpeed(in(row, "DR"), stiffness);
            return one(Surge.pressureRise(Friction.WATER_DENSITY_KG_M3, speed, FOOT) / PSI);
        });
    }

    private static void parts(Map<String, Function<JsonNode, Map<String, Double>>> laws) {
        laws.put(
                "water meter pressure loss",
                row -> one(meter(text(row.get("inputs"), "size_in")).lossLimit(in(row, "flow_gpm") * GPM) / PSI_HEAD));
        laws.put("backflow device pressure loss", row -> backflow(text(row.get("inputs"), "type")));
        laws.put("straight length upstream of a point-velocity", row -> {
            var sensor = pointSensor(text(row.get("inputs"), "disturbance"));
            return Map.of("at_mean_velocity_point", sensor.atMeanVelocityPoint(), "on_axis", sensor.onAxis());
        });
        laws.put("straight length for an orifice meter, beta 0.5", row -> {
            var orifice = orificeMeter(text(row.get("inputs"), "fitting"));
            return Map.of("A", orifice.full(), "B", orifice.reduced());
        });
        laws.put(
                "common rule for insertion",
                row -> Map.of("upstream", StraightPipe.RULE_UPSTREAM, "downstream", StraightPipe.RULE_DOWNSTREAM));
    }

    private static PipeSizes.Size size(JsonNode row) {
        String quantity = text(row, "quantity");
        PipeSizes.WallClass wall = quantity.contains("Sch 40")
                ? PipeSizes.WallClass.SCHEDULE_40
                : quantity.contains("Class 160")
                        ? PipeSizes.WallClass.CLASS_160
                        : quantity.contains("Class 200") ? PipeSizes.WallClass.CLASS_200 : null;
        assertNotNull(wall, quantity);
        return PipeSizes.find(wall, in(row, "nominal_in")).orElseThrow();
    }

    private static double friction(JsonNode row, double feet) {
        return Friction.hazenWilliams(
                feet * FOOT,
                in(row, "inner_diameter_in") * INCH,
                in(row, "C"),
                in(row, "flow_gpm") * GPM,
                Constants.TEXTBOOK);
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

    private static double nozzle(JsonNode row, double coefficient, String pressure) {
        return NozzleFlow.discharge(coefficient, in(row, "diameter_in") * INCH, in(row, pressure) * PSI_HEAD) / GPM;
    }

    private static MeterSize meter(String size) {
        return switch (size) {
            case "5/8" -> MeterSize.FIVE_EIGHTHS;
            case "3/4" -> MeterSize.THREE_QUARTERS;
            case "1" -> MeterSize.ONE;
            case "1-1/2" -> MeterSize.ONE_AND_A_HALF;
            case "2" -> MeterSize.TWO;
            default -> throw new AssertionError("no meter of " + size);
        };
    }

    /** All points of the curve; each must lie in the row's range. */
    private static Map<String, Double> backflow(String type) {
        BackflowKind kind =
                switch (type) {
                    case "reduced-pressure assembly" -> BackflowKind.REDUCED_PRESSURE;
                    case "pressure vacuum breaker" -> BackflowKind.PRESSURE_VACUUM_BREAKER;
                    default -> throw new AssertionError("no curve for a " + type);
                };
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
            case "fully open plug valve" -> StraightPipe.BeforePointSensor.PLUG_VALVE;
            default -> throw new AssertionError("no length after a " + disturbance);
        };
    }

    private static StraightPipe.NearOrificeMeter orificeMeter(String fitting) {
        return switch (fitting) {
            case "single 90 degree bend" -> StraightPipe.NearOrificeMeter.BEND;
            case "two 90 degree bends in perpendicular planes" ->
                StraightPipe.NearOrificeMeter.BENDS_IN_PERPENDICULAR_PLANES;
            case "downstream side, any fitting" -> StraightPipe.NearOrificeMeter.DOWNSTREAM;
            default -> throw new AssertionError("no length for a " + fitting);
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
