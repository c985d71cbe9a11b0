package provingyard.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import provingyard.reference.ReferenceRow;
import provingyard.scenario.Catalogue.Paving;
import provingyard.scenario.Catalogue.Plant;
import provingyard.scenario.Catalogue.Soil;

/** Soils, plants and pavings of the shipped catalogue against published tables. */
public class CatalogueValuesTest {

    private static final Catalogue CATALOGUE = Shelf.shipped();
    private static final double CM_PER_HOUR = 0.01 / 3600;

    /** Whether a row is compared with the catalogue here. */
    public static boolean check(ReferenceRow row) {
        return soil(row).isPresent()
                || row.id().matches("fao56-t(12|22)-turf-.*|nist-concrete|asphalt-props|albedo-.*");
    }

    /** The catalogue's soil that a row is about, if it has it. */
    private static Optional<Soil> soil(ReferenceRow row) {
        return row.id().matches("(rawls83|fao56-t19)-.*")
                ? CATALOGUE.soils().stream()
                        .filter(s -> s.id().equals(row.id().replaceFirst("rawls83-|fao56-t19-", "")))
                        .findFirst()
                : Optional.empty();
    }

    private static Stream<ReferenceRow> rows(String ids) {
        return ReferenceRow.all().stream().filter(row -> row.id().matches(ids)).filter(CatalogueValuesTest::check);
    }

    static Stream<ReferenceRow> infiltration() {
        return rows("rawls83-.*");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("infiltration")
    void soilsTakeInWaterAsTheTableSays(ReferenceRow row) {
        Soil soil = soil(row).orElseThrow();
        assertEquals(row.expected().get("porosity").doubleValue(), soil.saturation(), 1e-12);
        assertEquals(row.expected().get("psi_cm").doubleValue() / 100, soil.suction(), 1e-12);
        assertEquals(row.expected().get("K_cm_h").doubleValue() * CM_PER_HOUR, soil.conductivity(), 1e-15);
    }

    static Stream<ReferenceRow> holding() {
        return rows("fao56-t19-.*");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("holding")
    void soilsHoldWaterWithinTheTablesRanges(ReferenceRow row) {
        Soil soil = soil(row).orElseThrow();
        within(row.expected().get("theta_fc"), soil.fieldCapacity());
        within(row.expected().get("theta_wp"), soil.wiltingPoint());
        within(row.expected().get("available"), soil.fieldCapacity() - soil.wiltingPoint());
    }

    static Stream<ReferenceRow> turf() {
        return rows("fao56-t(12|22)-turf-.*");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("turf")
    void turfHasThePublishedCoefficientOrDepletion(ReferenceRow row) {
        Plant plant = CATALOGUE.plants().stream()
                .filter(p -> p.id().equals(row.id().replaceFirst("fao56-t\\d+-turf-(\\w+)", "$1-season-turf")))
                .findFirst()
                .orElseThrow();
        if (row.expected().isArray()) {
            assertEquals(row.expected().get(1).doubleValue(), plant.coefficient(), "mid season");
        } else {
            assertEquals(row.expected().get("p").doubleValue(), plant.depletion());
        }
    }

    static Stream<ReferenceRow> pavings() {
        return rows("nist-concrete|asphalt-props|albedo-.*");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("pavings")
    void pavingsArePublishedOnes(ReferenceRow row) {
        JsonNode expected = row.expected();
        Paving concrete = paving("concrete");
        Paving asphalt = paving("asphalt");
        switch (row.id()) {
            case "nist-concrete" -> {
                JsonNode published = expected.get("concrete");
                assertEquals(published.get("k_W_mK").doubleValue(), concrete.conductivity());
                assertEquals(published.get("c_J_kgK").doubleValue(), concrete.specificHeat());
                assertEquals(published.get("rho").doubleValue(), concrete.density());
            }
            case "asphalt-props" -> {
                double heat = asphalt.specificHeat() * asphalt.density() / 1e6;
                within(expected.get("k_W_mK"), asphalt.conductivity());
                assertEquals(expected.get("k_mean").doubleValue(), asphalt.conductivity());
                within(expected.get("heat_capacity_MJ_m3K"), heat);
                assertEquals(expected.get("C_mean").doubleValue(), heat, 0.01);
                within(expected.get("emissivity"), asphalt.emissivity());
                within(expected.get("albedo_aged"), asphalt.albedo());
            }
            default -> within(expected.get("concrete"), concrete.albedo());
        }
    }

    private static Paving paving(String id) {
        return CATALOGUE.pavings().stream()
                .filter(p -> p.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static void within(JsonNode range, double value) {
        assertTrue(
                value >= range.get(0).doubleValue() - 1e-12
                        && value <= range.get(1).doubleValue() + 1e-12,
                () -> value + " is outside " + range);
    }
}
