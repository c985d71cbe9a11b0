package provingyard.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The commands {@code shares} and {@code worth}. */
class SavingsCommandsTest {

    /** Fails when something follows the object. */
    private static final ObjectMapper JSON = new ObjectMapper().enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS);

    @TempDir
    static Path home;

    @BeforeAll
    static void keepMarksAside() {
        System.setProperty("provingyard.home", home.toString());
    }

    @AfterAll
    static void forget() {
        System.clearProperty("provingyard.home");
    }

    private static Shell good(String line) {
        Shell shell = Shell.type(line.split(" "));
        assertEquals(Main.GOOD, shell.code(), shell.seen());
        assertEquals("", shell.err());
        assertFalse(shell.out().contains("[["), shell.out());
        return shell;
    }

    private static JsonNode json(String line) throws IOException {
        return JSON.readTree(good(line + " --json").out());
    }

    @Test
    void sharesAddUpToWhatTheTwoRunsLose() throws IOException {
        JsonNode shares = json("shares quillback-clinic --setup careless");
        JsonNode loss = json("run quillback-clinic --setup careless").get("loss");
        double gap = loss.get("trainee").asDouble() - loss.get("mark").asDouble();
        assertEquals(gap, shares.get("gap").get("money").asDouble(), 1e-9);
        double sum = 0;
        for (JsonNode share : shares.get("shares")) {
            sum += share.get("money").asDouble();
        }
        assertEquals(gap, sum, 1e-9 * loss.get("trainee").asDouble());
        assertEquals(
                List.of("RAIN", "WIND", "FREEZE", "FLOW", "SOIL"),
                shares.get("shares").findValuesAsText("choice"));
        assertEquals("careless", shares.get("setUp").asText());
    }

    @Test
    void sharesAreShownInBothLanguagesAndUnits() {
        String metric = good("shares tansy-row").out();
        assertTrue(metric.contains("Set-up: the clock alone") && metric.contains("Rain sensor"), metric);
        assertTrue(metric.contains("Freeze sensor") && metric.contains("Whole gap"), metric);
        assertTrue(metric.contains("m²·h") && !metric.contains("ft²·h"), metric);
        String us = good("shares tansy-row --lang es --units us").out();
        assertTrue(us.contains("Sensor de lluvia") && us.contains("Diferencia entera"), us);
        assertTrue(us.contains("ft²·h") && us.contains("gal") && us.contains("0,00"), us);
    }

    @Test
    void withoutAMarkThereIsNothingToCompareWith() throws IOException {
        String own = Files.readString(Path.of("scenarios/tansy-row.json"));
        Path other = Files.writeString(home.resolve("row.json"), own.replace("\"tansy-row\"", "\"no-mark-row\""));
        for (String line : List.of("shares " + other + " --setup textbook", "worth " + other + " --setup mark")) {
            Shell shell = Shell.type(line.split(" "));
            assertEquals(Main.BAD_INPUT, shell.code());
            assertEquals("", shell.out());
            assertTrue(shell.err().contains("run " + other + " --search"), shell.err());
        }
    }

    @Test
    void worthHasSpreadPriceAndPayback() throws IOException {
        JsonNode worth = json("worth tansy-row --setup textbook --draws 3");
        assertEquals(3, worth.get("draws").asInt());
        assertEquals(401, worth.get("firstDraw").asInt());
        assertEquals(1, worth.get("seasonsAYear").asDouble());
        assertEquals(1, worth.get("kinds").size(), "no set-up of this site has a freeze sensor");
        JsonNode rain = worth.get("kinds").get(0);
        assertEquals("RAIN", rain.get("kind").asText());
        assertTrue(rain.get("placed").asBoolean());
        assertEquals(38, rain.get("price").asDouble());
        for (String measure : List.of("water", "ice", "money")) {
            JsonNode span = rain.get(measure);
            assertTrue(span.get("low").asDouble() <= span.get("high").asDouble(), measure);
        }
        double mean = rain.get("money").get("mean").asDouble();
        assertEquals(mean, rain.get("moneyAYear").asDouble());
        assertTrue(
                mean > 0
                        ? rain.get("paybackYears").asDouble() == 38 / mean
                        : rain.get("paybackYears").isNull());
        assertEquals(rain.get("money"), worth.get("whole").get("money"));
    }

    @Test
    void worthIsShownInBothLanguagesAndUnits() {
        String english = good("worth tansy-row --setup textbook --draws 2").out();
        assertTrue(english.contains("draws 401 to 402") && english.contains("Rain sensor, 38.00"), english);
        assertTrue(english.contains("Iced walks saved a season") && english.contains("m²·h"), english);
        String spanish = good("worth tansy-row --draws 2 --lang es --units us").out();
        assertTrue(spanish.contains("sin colocar: ahorraría"), spanish);
        assertTrue(spanish.contains("38,00") && spanish.contains("ft²·h"), spanish);
    }
}
