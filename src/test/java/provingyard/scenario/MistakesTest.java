package provingyard.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import provingyard.scenario.Problem.Code;

class MistakesTest {

    /** Replaces a part of the complete site, which must be there. */
    private static String with(String text, String part, String other) {
        assertTrue(text.contains(part), part);
        return text.replace(part, other);
    }

    @Test
    void tenMistakesInOneFileAreTenLocatedProblems() {
        String text = ScenarioReaderTest.complete();
        text = with(text, "\"level\": 3", "\"level\": 9");
        text = with(text, "\"subtitle\"", "\"subtitel\"");
        text = with(text, "\"cell\": \"2 ft\"", "\"cell\": \"2 fet\"");
        text = with(text, "\"base\": \"lawn\"", "\"base\": \"lown\"");
        text = with(text, "\"kind\": \"bed\"", "\"kind\": \"bedd\"");
        text = with(text, "\"pressure\": \"72 psi\"", "\"pressure\": \"72\"");
        text = with(text, "\"from\": \"tee-1\", \"to\": \"end-1\"", "\"from\": \"tee-1\", \"to\": \"end-9\"");
        text = with(text, "\"nozzle\": \"rotor-25\"", "\"nozzle\": \"rotor-52\"");
        text = with(text, "\"along\": \"12 ft\"", "\"along\": \"120 ft\"");
        text = with(text, "\"budget\": \"900 USD\"", "\"budget\": \"9,5 USD\"");
        text = with(text, "\"at\": [\"8 ft\", \"30 ft\"]", "\"at\": [\"80 ft\", \"30 ft\"]");
        text = with(text, "\"from\": \"2013-11-01\"", "\"from\": \"2013-13-01\"");
        Read<Scenario> read = ScenarioReader.read("mistakes.json", text);
        assertNull(read.value());
        assertCode(read, Code.SCH_RANGE, "/level", 8, 12, "");
        assertCode(read, Code.SCH_UNKNOWN, "/subtitel", 6, 3, "subtitle");
        assertCode(read, Code.SCH_MISSING, "", 1, 1, "");
        assertCode(read, Code.QTY_UNIT, "/yard/cell", 44, 13, "ft");
        assertCode(read, Code.REF_UNKNOWN, "/yard/base", 45, 13, "lawn");
        assertCode(read, Code.SCH_CHOICE, "/yard/surfaces/2/kind", 51, 31, "bed");
        assertCode(read, Code.QTY_NO_UNIT, "/plumbing/supply/pressure", 66, 67, "Pa");
        assertCode(read, Code.REF_UNKNOWN, "/plumbing/pipes/1/to", 76, 46, "end-1");
        assertCode(read, Code.REF_UNKNOWN, "/plumbing/heads/2/nozzle", 93, 75, "rotor-25");
        assertCode(read, Code.GEO_ALONG, "/faults/0/along", 114, 56, "");
        assertCode(read, Code.QTY_COMMA, "/kit/budget", 109, 15, "9.5 USD");
        assertCode(read, Code.GEO_OUTSIDE, "/yard/trees/0/at", 59, 37, "");
        assertCode(read, Code.SCH_DATE, "/season/from", 21, 22, "");
        assertEquals(13, read.errors().size(), String.join("\n", lines(read)));
    }

    private static List<String> lines(Read<Scenario> read) {
        return read.errors().stream().map(p -> p.line("en")).toList();
    }

    private static void assertCode(Read<Scenario> read, Code code, String pointer, int line, int column, String maybe) {
        Problem found = read.problems().stream()
                .filter(p -> p.code() == code && p.pointer().equals(pointer))
                .findFirst()
                .orElseThrow(() -> new AssertionError(code + " " + pointer + "\n" + String.join("\n", lines(read))));
        assertEquals(line + ":" + column, found.line() + ":" + found.column(), found.line("en"));
        assertEquals(maybe, found.maybe(), found.line("en"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"id\": \"h-2\"|\"id\": \"h-1\"|REF_TWICE",
                "{\"id\": \"drip-a\", \"zone\": \"zone-3\"|{\"id\": \"drip-a\", \"zone\": \"zone-2\"|REF_EMPTY_ZONE",
                "\"from\": \"tee-1\", \"to\": \"end-2\"|\"from\": \"end-3\", \"to\": \"end-2\"|REF_CUT_OFF",
                "\"normally\": \"open\"|\"x-normally\": \"open\"|REF_NEEDS",
                "weather/noaa-daily|weather/noaa-dayly|REF_FILE",
                "\"file\": \"weather/noaa|\"file\": \"../weather/noaa|REF_FILE",
                "\"cell\": \"2 ft\"|\"cell\": \"1 in\"|QTY_RANGE",
                "\"work\": \"tune\"|\"work\": [\"tune\"]|SCH_CHOICE",
                "\"size\": [\"60 ft\", \"40 ft\"]|\"size\": [\"60 ft\"]|SCH_COUNT",
                "\"days\": [\"Mon\", \"Wednesday\", \"Fri\"]|\"days\": []|PLA_ORDER",
                "\"fieldCapacity\": \"28 %\"|\"fieldCapacity\": \"12 %\"|PLA_ORDER",
                "\"starts\": [\"05:00\"]|\"starts\": [\"5:00\"]|SCH_PATTERN",
                "\"base\": \"lawn\"|\"base\": \"bed-1\"|GEO_BASE",
                "\"size\": \"1 in\", \"make\"|\"size\": \"1.1 in\", \"make\"|SCH_CHOICE",
                "\"opening\": \"0.4 in2\"|\"opening\": \"0 in2\"|REF_NEEDS",
                "\"days\": 30|\"days\": 0|SCH_RANGE",
                "\"seasonsAYear\": 2.5|\"seasonsAYear\": 0|SCH_RANGE",
                "\"seasonsAYear\": 2.5|\"seasonsAYear\": 12.5|SCH_RANGE",
                "\"seasonsAYear\": 2.5|\"seasonsAYear\": \"two\"|SCH_KIND",
                "\"level\": 3|\"level\": 3, \"level\": 3|SYN_DUPLICATE",
                "\"level\": 3,|\"level\": 3|SYN_NOT_JSON",
                "[\"05:00\"]|[\"05:00\",]|SYN_COMMA",
                "\"level\": 3,|\"level\": 3, // three|SYN_COMMENT",
                "{\"en\": \"Test yard\"|{\"en\": \"\"|SCH_LENGTH",
            })
    void eachMistakeHasItsName(String part, String other, Code code) {
        Read<Scenario> read = ScenarioReader.read("a.json", with(ScenarioReaderTest.complete(), part, other));
        assertFalse(read.ok());
        assertTrue(read.errors().stream().anyMatch(p -> p.code() == code), String.join("\n", lines(read)));
    }

    @Test
    void namesWhatItFilledIn() {
        Read<Scenario> read = ScenarioReader.read("a.json", ScenarioReaderTest.complete());
        Problem note = read.problems().stream()
                .filter(p -> p.code() == Code.DEF_FILLED && p.pointer().equals("/plumbing/heads/1"))
                .findFirst()
                .orElseThrow();
        assertEquals("from 0 deg, sweep 360 deg", note.found());
    }

    @Test
    void missingSpanishIsAWarning() {
        String text = with(ScenarioReaderTest.complete(), ", \"es\": \"Todo una vez\"", "");
        Read<Scenario> read = ScenarioReader.read("a.json", text);
        assertEquals("Everything once", read.orThrow().subtitle().in("es"));
        assertTrue(read.problems().stream()
                .anyMatch(p -> p.line("es").startsWith("a.json:6:15: TXT-SPANISH advertencia /subtitle")));
    }

    @Test
    void messagesHaveTheSettledForm() {
        String text = with(ScenarioReaderTest.complete(), "\"nozzle\": \"rotor-25\"", "\"nozzle\": \"rotor-52\"");
        String line = ScenarioReader.read("a.json", text).errors().get(0).line("en");
        assertTrue(
                line.startsWith("a.json:93:75: REF-UNKNOWN error /plumbing/heads/2/nozzle \u2013 "
                        + "There is no nozzle \"rotor-52\" on this site \u2013 one of: spray-8, "),
                line);
        assertTrue(line.endsWith(" Maybe \"rotor-25\"?"), line);
    }

    @Test
    void everyCodeHasTextsInBothLanguages() {
        Set<String> wanted = new TreeSet<>(Set.of("maybe"));
        for (Severity severity : Severity.values()) {
            wanted.add("severity." + severity.name().toLowerCase(java.util.Locale.ROOT));
        }
        for (Code code : Code.values()) {
            wanted.add(code.key() + ".found");
            wanted.add(code.key() + ".allowed");
        }
        assertEquals(wanted, new TreeSet<>(ProblemTexts.of("en").keys()));
        assertEquals(wanted, new TreeSet<>(ProblemTexts.of("es").keys()));
    }
}
