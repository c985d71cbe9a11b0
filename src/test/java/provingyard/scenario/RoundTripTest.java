package provingyard.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import provingyard.setup.References;
import provingyard.setup.SetUp;
import provingyard.setup.SetUpReader;
import provingyard.setup.SetUpWriter;

class RoundTripTest {

    @Test
    void completeSiteReadsBackEqual() {
        backAndForth(ScenarioReader.read("complete.json", ScenarioReaderTest.complete())
                .orThrow());
    }

    @TestFactory
    Stream<DynamicTest> shippedSitesReadBackEqual() {
        Stream<DynamicTest> shipped = Sites.list().stream()
                .filter(Sites.Site::shipped)
                .map(s -> DynamicTest.dynamicTest(
                        s.id(), () -> backAndForth(Sites.open(s.id()).orThrow())));
        DynamicTest catalogue = DynamicTest.dynamicTest(
                "the shipped catalogue is never written",
                () -> assertTrue(!written().contains("sandy-loam")));
        return Stream.concat(Stream.of(catalogue), shipped);
    }

    private static String written() {
        return ScenarioWriter.write(ScenarioReader.read("complete.json", ScenarioReaderTest.complete())
                .orThrow());
    }

    private static void backAndForth(Scenario site) {
        String text = ScenarioWriter.write(site);
        Scenario again = ScenarioReader.read("written.json", text).orThrow();
        assertEquals(site, again);
        assertEquals(text, ScenarioWriter.write(again));
        References.careless(site).ifPresent(s -> backAndForth(s, site));
        References.textbook(site).ifPresent(s -> backAndForth(s, site));
    }

    private static void backAndForth(SetUp setUp, Scenario site) {
        String text = SetUpWriter.write(setUp);
        assertEquals(setUp, SetUpReader.read("written.json", text, site).orThrow());
        assertEquals(
                setUp, SetUpReader.read("tree", SetUpWriter.tree(setUp), site).orThrow());
    }
}
