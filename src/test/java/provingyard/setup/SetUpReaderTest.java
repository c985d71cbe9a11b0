package provingyard.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import provingyard.scenario.Point;
import provingyard.scenario.Problem;
import provingyard.scenario.Problem.Code;
import provingyard.scenario.Read;
import provingyard.scenario.Scenario;
import provingyard.scenario.ScenarioReader;

class SetUpReaderTest {

    private static final String TEXT = complete();
    private static final Scenario SITE =
            ScenarioReader.read("complete.json", TEXT).orThrow();

    private static String complete() {
        try (InputStream in = SetUpReaderTest.class.getResourceAsStream("/provingyard/scenario/complete.json")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void readsTheReferenceSetUps() {
        SetUp textbook = References.textbook(SITE).orElseThrow();
        Placement.Rain rain = (Placement.Rain) textbook.sensors().get(0);
        assertEquals(0.006, rain.trip(), 1e-12);
        assertEquals(List.of("zone-1", "zone-2"), textbook.interlocks().get(1).zones());
        assertEquals(FlowWatch.Action.SHUT_MASTER, textbook.flowWatch().onUnscheduled());
        Placement.Freeze wall = (Placement.Freeze)
                References.careless(SITE).orElseThrow().sensors().get(0);
        assertEquals(3, wall.below(), 1e-12);
        assertTrue(References.readWithSite("complete.json", TEXT).ok());
    }

    @Test
    void anEmptySetUpIsTheClockAlone() {
        assertEquals(SetUp.CLOCK_ALONE, SetUpReader.read("a", "{}", SITE).orThrow());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"trip\":\"6 mm\"|\"trip\":\"30 mm\"|QTY_RANGE|/sensors/0/trip",
                "[\"45 ft\",\"20 ft\"]|[\"45 ft\",\"200 ft\"]|GEO_OUTSIDE|/sensors/0/at",
                "\"along\":\"15 ft\"|\"along\":\"150 ft\"|GEO_ALONG|/sensors/2/along",
                "\"on\":\"main-1\"|\"on\":\"main-7\"|REF_UNKNOWN|/sensors/2/on",
                "\"rearm\":\"41 °F\"|\"rearm\":\"35 °F\"|PLA_ORDER|/sensors/1/rearm",
                "\"sensor\":\"rain-1\"|\"sensor\":\"rain-2\"|REF_UNKNOWN|/interlocks/0/sensor",
                "\"action\":\"skip\"|\"action\":\"block\"|SET_ACTION|/interlocks/0/action",
                "\"zone-2\"|\"zone-9\"|REF_UNKNOWN|/interlocks/1/zones/1",
                "\"sensor\":\"flow-1\"|\"sensor\":\"rain-1\"|REF_UNKNOWN|/flowWatch/sensor",
                "\"high\":\"120 %\"|\"high\":\"102 %\"|QTY_RANGE|/flowWatch/high",
                "\"mount\":\"post\"|\"mount\":\"pole\"|SCH_CHOICE|/sensors/0/mount",
                "\"id\":\"freeze-1\"|\"id\":\"rain-1\"|REF_TWICE|/sensors/1/id",
                "\"kind\":\"rain\"|\"kind\":\"hail\"|SCH_CHOICE|/sensors/0/kind",
                "\"kind\":\"rain\"|\"kind\":\"wind\"|SET_LOCKED|/sensors/0",
                "\"vent\":\"50 %\"|\"vont\":\"50 %\"|SCH_UNKNOWN|/sensors/0/vont",
            })
    void eachMistakeHasItsNameAndPlace(String part, String other, Code code, String pointer) {
        String text = SITE.setUps().textbook().toString();
        assertTrue(text.contains(part), part + " in " + text);
        Read<SetUp> read = SetUpReader.read("a.json", text.replace(part, other), SITE);
        assertFalse(read.ok());
        List<String> errors =
                read.errors().stream().map(p -> p.code() + "|" + p.pointer()).toList();
        assertTrue(errors.contains(code + "|" + pointer), errors.toString());
    }

    @Test
    void problemsOfReferenceSetUpsStandWhereTheyAreInTheSite() {
        String part = "\"trip\": \"6 mm\"";
        int offset = TEXT.indexOf(part);
        int line =
                (int) TEXT.substring(0, offset).chars().filter(c -> c == '\n').count() + 1;
        Read<Scenario> read = References.readWithSite("a.json", TEXT.replace(part, "\"trip\": \"60 mm\""));
        assertFalse(read.ok());
        Problem problem = read.errors().get(0);
        assertEquals("/setUps/textbook/sensors/0/trip", problem.pointer());
        assertEquals(line, problem.line());
    }

    @Test
    void setUpsMadeByHandAreHeldAgainstTheSite() {
        Placement rain = new Placement.Rain("rain-1", new Point(3, 3), Mount.POST, 1.8, 0.006, 0.5);
        Placement second = new Placement.Rain("rain-2", new Point(4, 3), Mount.POST, 1.8, 0.006, 0.5);
        SetUp one = SetUp.CLOCK_ALONE.with(rain);
        assertEquals(List.of(), SetUpReader.check(one, SITE));
        assertEquals(
                Code.SET_MOST, SetUpReader.check(one.with(second), SITE).get(0).code());
        assertEquals(
                Code.SET_LOCKED,
                SetUpReader.check(one.withSchedule(otherSchedule()), SITE)
                        .get(0)
                        .code());
        assertEquals(List.of(), SetUpReader.check(one.withSchedule(SITE.schedule()), SITE));
    }

    private static provingyard.scenario.Schedule otherSchedule() {
        var own = SITE.schedule();
        return new provingyard.scenario.Schedule(
                own.zones(), own.days(), own.every(), own.starts(), 0.5, own.allowed());
    }

    @Test
    void budgetAndKitAreHardLimits() {
        String dear = TEXT.replace("\"budget\": \"900 USD\"", "\"budget\": \"300 USD\"");
        Scenario poor = ScenarioReader.read("a", dear).orThrow();
        SetUp textbook = References.textbook(SITE).orElseThrow();
        assertEquals(new Cost(510, 390), Cost.of(textbook, SITE.kit()));
        assertFalse(Cost.of(textbook, poor.kit()).withinBudget());
        assertEquals(
                List.of(Code.SET_BUDGET),
                SetUpReader.check(textbook, poor).stream().map(Problem::code).toList());
        Scenario bare = ScenarioReader.read("a", TEXT.replace("\"rain\": {\"price\": \"60 USD\"}, ", ""))
                .orThrow();
        assertEquals(
                List.of(Code.SET_NOT_IN_KIT),
                SetUpReader.check(textbook, bare).stream().map(Problem::code).toList());
    }
}
