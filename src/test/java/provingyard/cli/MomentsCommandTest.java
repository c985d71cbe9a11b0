package provingyard.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import org.junit.jupiter.api.Test;

class MomentsCommandTest {

    /** Fails when something follows the object. */
    private static final ObjectMapper JSON = new ObjectMapper().enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS);

    @Test
    void tellsTheMomentsWithCauseCostAndRemedy() {
        Shell row = Shell.type("moments", "tansy-row", "--setup", "careless");
        assertEquals(Main.GOOD, row.code(), row.seen());
        assertTrue(row.out().startsWith("Jul 13, 05:00"), row.out());
        assertTrue(row.out().contains("Hang it under open sky."), row.out());
        assertTrue(row.err().isEmpty());
        Shell spanish = Shell.type("moments", "tansy-row", "--setup", "careless", "--lang", "es", "--units", "us");
        assertTrue(spanish.out().contains("Cuélguelo a cielo abierto."), spanish.out());
        assertTrue(spanish.out().contains("gal"), spanish.out());
    }

    @Test
    void jsonIsOneObjectInTheSameOrder() throws IOException {
        Shell top = Shell.type("moments", "tansy-row", "--json");
        Shell all = Shell.type("moments", "tansy-row", "--json", "--all");
        JsonNode few = JSON.readTree(top.out()).get("moments");
        JsonNode many = JSON.readTree(all.out()).get("moments");
        assertTrue(few.size() < many.size(), few.size() + " of " + many.size());
        JsonNode first = many.get(0);
        assertEquals(few.get(0), first);
        assertEquals("WATERED_WET_SOIL", first.get("what").asText());
        assertEquals("NO_SENSOR", first.get("why").asText());
        assertEquals("RAIN", first.get("sensor").asText());
        assertTrue(first.get("readings").get("CAUGHT").isNull(), "there is no sensor that caught rain");
        assertTrue(first.get("readings").get("FELL").asDouble() > 0.006);
        for (int i = 1; i < many.size(); i++) {
            double before = Math.abs(many.get(i - 1).get("money").asDouble());
            assertTrue(before >= Math.abs(many.get(i).get("money").asDouble()));
        }
    }

    @Test
    void badInputGetsOneMessage() {
        for (String[] typed : new String[][] {
            {"moments"}, {"moments", "no-such-site"}, {"moments", "tansy-row", "--setup", "no-such-file"}
        }) {
            Shell bad = Shell.type(typed);
            assertEquals(Main.BAD_INPUT, bad.code());
            assertTrue(bad.out().isEmpty());
            assertTrue(!bad.err().isBlank() && !bad.err().contains("\tat "), bad.err());
        }
    }
}
