package provingyard.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import provingyard.scenario.Problem.Code;

class SitesTest {

    @Test
    void opensAFileByItsPath(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("test-yard.json"), ScenarioReaderTest.complete());
        assertEquals("test-yard", Sites.open(file.toString()).orThrow().id());
    }

    @Test
    void anUnknownSiteIsAProblem() {
        for (String name : new String[] {"no-such-site", "", "a\u0000b", "../../x", "."}) {
            Read<Scenario> read = Sites.open(name);
            assertFalse(read.ok());
            assertEquals(Code.REF_SITE, read.errors().get(0).code());
        }
    }

    @Test
    void everySiteOfTheListOpens() {
        for (Sites.Site site : Sites.list()) {
            if (site.shipped()) {
                assertEquals(site.id(), Sites.open(site.id()).orThrow().id());
            }
        }
    }

    /** What is shipped is held against its schema here, and therefore not at each start. */
    @Test
    void everythingShippedHoldsItsSchema() throws IOException {
        for (Sites.Site site : Sites.list()) {
            assertTrue(!site.shipped() || holds(site.where(), ScenarioReader.form()), site.id());
        }
        assertTrue(holds(Shelf.PATH, Form.load("shared/schema/catalogue.schema.json")));
    }

    private static boolean holds(String path, Form form) throws IOException {
        try (InputStream in = Sites.resource(path)) {
            LocatedJson json = LocatedJson.read(path, new String(in.readAllBytes(), StandardCharsets.UTF_8));
            return form.validator().validate(json.root()).isEmpty();
        }
    }

    @Test
    void resourcesAreFoundAndNothingOutside() throws IOException {
        try (InputStream in = Sites.resource("shared/reference/catalogue.json")) {
            assertTrue(in.read() > 0);
        }
        for (String path : new String[] {"../pom.xml", "/etc/hosts", "shared/../pom.xml", "shared/no-such", "C:\\x"}) {
            assertThrows(FileNotFoundException.class, () -> Sites.resource(path), path);
        }
    }

    @Test
    void theShippedCatalogueHasItsParts() {
        Catalogue catalogue = Shelf.shipped();
        assertTrue(catalogue.soils().stream()
                .allMatch(s -> s.wiltingPoint() < s.fieldCapacity() && s.fieldCapacity() < s.saturation()));
        assertTrue(catalogue.nozzles().stream()
                .allMatch(n -> n.lowest() < n.pressure() && n.pressure() < n.highest() && n.flow() > 0));
        assertTrue(catalogue.pipes().stream()
                .flatMap(m -> m.sizes().stream())
                .allMatch(s -> s.wall() < s.inner() / 4 && Math.abs(s.inner() / s.nominal() - 1) < 0.46));
        for (Catalogue.Nozzle nozzle : catalogue.nozzles()) {
            boolean matched = nozzle.scalesWithArc() && nozzle.exponent() == 0.5;
            // Application rate in a square of the nozzle's radius, in mm/h.
            double rate = nozzle.flow() / (nozzle.radius() * nozzle.radius()) * 3.6e6;
            boolean plausible = nozzle.id().startsWith("spray") ? rate > 38 && rate < 41 : rate > 10 && rate < 15.3;
            assertTrue(!matched || plausible, nozzle.id() + " " + rate);
        }
    }
}
