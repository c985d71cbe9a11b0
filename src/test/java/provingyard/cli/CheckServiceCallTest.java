package provingyard.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each mistake of a service call's document is one located message, and nothing more is said. */
class CheckServiceCallTest {

    private static final String SEEN = "\"seen\": [{ \"test\": \"readMeter\", \"above\": \"1 L/min\" }]";
    private static final String DEALS = "\"deals\": [[0], [1], [2], [3], [4], [5], [6]]";

    @TempDir
    Path folder;

    private Shell check(String old, String mistake, String... options) throws IOException {
        String text = Files.readString(Path.of("scenarios/sumac-bend.json"));
        assertTrue(text.contains(old), old);
        Path file = Files.writeString(folder.resolve("call.json"), text.replace(old, mistake));
        return Shell.type(java.util.stream.Stream.concat(
                        java.util.stream.Stream.of("check", file.toString()), List.of(options).stream())
                .toArray(String[]::new));
    }

    private static void assertOne(Shell shell, String... parts) {
        assertEquals(Main.BAD_INPUT, shell.code(), shell.seen());
        List<String> problems = shell.out()
                .lines()
                .filter(l -> l.contains("call.json:") && l.contains(" /call/"))
                .toList();
        assertEquals(1, problems.size(), shell.seen());
        for (String part : parts) {
            assertTrue(problems.get(0).contains(part), part + " in " + problems.get(0));
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{ \"test\": \"readMetre\", \"above\": \"1 L/min\" }|/call/seen/0/test|REF-UNKNOWN|readMeter",
                "{ \"test\": \"walkZone\", \"answers\": [\"weak\"] }|/call/seen/0/test|REF-UNKNOWN|walkZone:zone-1",
                "{ \"test\": \"makeSafe\", \"answers\": [\"dry\"] }|/call/seen/0/test|REF-UNKNOWN|makeSafe",
                "{ \"test\": \"readMeter\" }|/call/seen/0|REF-NEEDS|above",
                "{ \"test\": \"readMeter\", \"answers\": [\"weak\"], \"above\": \"1 L/min\" }|/call/seen/0/answers|REF-SEEN|above",
                "{ \"test\": \"walkZone:zone-1\" }|/call/seen/0|REF-NEEDS|answers",
                "{ \"test\": \"walkZone:zone-1\", \"answers\": [\"weeak\"] }|/call/seen/0/answers/0|SCH-CHOICE|\"weak\"",
                "{ \"test\": \"walkZone:zone-1\", \"answers\": [\"weak\"], \"above\": \"1 L/min\" }|/call/seen/0/above|REF-SEEN|answers",
                "{ \"test\": \"staticPressure\", \"above\": \"1 L/min\" }|/call/seen/0/test|REF-UNSEEN|staticPressure"
            })
    void whatTheOwnerSawIsAnOutcomeOfATestOfTheSite(String seen, String at, String code, String part)
            throws IOException {
        Shell shell = check(SEEN, "\"seen\": [" + seen + "]");
        assertOne(shell, " " + at + " ", code, part);
    }

    @Test
    void testsAreNamedByKindsThatTheSiteHas() throws IOException {
        assertOne(
                check(DEALS, DEALS + ", \"tests\": [\"readMeter\", \"readMetre\"]"),
                " /call/tests/1 ",
                "REF-UNKNOWN",
                "readMeter");
        assertOne(
                check(DEALS, DEALS + ", \"tests\": [\"isolate\"]"),
                " /call/seen/0/test ",
                "REF-UNKNOWN",
                "isolate:iso-a");
    }

    @Test
    void dealsAndArrivalFitTheDocument() throws IOException {
        assertOne(check(DEALS, "\"deals\": [[0], [7]]"), " /call/deals/1/0 ", "SCH-RANGE", "from 0 to 6");
        assertOne(
                check("\"arrives\": { \"day\": 14", "\"arrives\": { \"day\": 99"),
                " /call/arrives/day ",
                "GEO-DAY",
                "Day 99");
        assertOne(
                check("\"arrives\": { \"day\": 14", "\"arrives\": { \"day\": 18"),
                " /call/arrives/day ",
                "SCH-RANGE",
                "from 1 to 17");
    }

    @Test
    void itIsSaidInSpanishToo() throws IOException {
        Shell shell =
                check(SEEN, "\"seen\": [{ \"test\": \"staticPressure\", \"above\": \"1 L/min\" }]", "--lang", "es");
        assertOne(shell, "Ningún dueño puede haber visto");
    }

    @Test
    void theShippedCallsAreGood() {
        for (String id : List.of("sedge-nook", "sumac-bend", "spikenard-rise")) {
            Shell shell = Shell.type("check", "scenarios/" + id + ".json");
            assertEquals(Main.GOOD, shell.code(), shell.seen());
        }
    }
}
