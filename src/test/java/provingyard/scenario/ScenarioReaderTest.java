package provingyard.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.DayOfWeek;
import java.util.List;
import org.junit.jupiter.api.Test;

class ScenarioReaderTest {

    static String complete() {
        try (InputStream in = ScenarioReaderTest.class.getResourceAsStream("complete.json")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void readsACompleteSite() {
        Read<Scenario> read = ScenarioReader.read("complete.json", complete());
        assertEquals(List.of(), read.errors().stream().map(p -> p.line("en")).toList());
        Scenario site = read.value();
        assertEquals("test-yard", site.id());
        assertEquals(18.288, site.yard().size().x(), 1e-12);
        assertEquals(
                List.of(DayOfWeek.MONDAY, DayOfWeek.WEDNESDAY, DayOfWeek.FRIDAY),
                site.schedule().days());
        assertEquals("topsoil", site.catalogue().soils().get(7).id());
        assertTrue(site.setUps().textbook().isObject());
    }
}
