package provingyard.learner;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import provingyard.drill.Family;
import provingyard.drill.Form;
import provingyard.drill.Progress;
import provingyard.drill.Result;
import provingyard.learner.LearnerStore.Trouble;
import provingyard.quantity.UnitSystem;
import provingyard.scenario.Scenario;
import provingyard.scenario.Sites;
import provingyard.setup.History;
import provingyard.setup.References;
import provingyard.setup.SetUp;

class LearnerStoreTest {

    private static final Look LOOK = new Look("es", UnitSystem.METRIC, "dark", 150, true);

    @TempDir
    Path folder;

    private LearnerStore store() {
        return new LearnerStore(folder);
    }

    private Path file(String name) {
        return folder.resolve("learners").resolve(name);
    }

    private void lay(String name, String text) throws IOException {
        Files.createDirectories(file(name).getParent());
        Files.writeString(file(name), text);
    }

    private static Scenario site() {
        return Sites.open("tansy-row").orThrow();
    }

    private static Learner trained() {
        Scenario site = site();
        SetUp textbook = References.textbook(site).orElseThrow();
        List<History.Change> changes =
                List.of(new History.Change(0, SetUp.CLOCK_ALONE), new History.Change(1500, textbook));
        SavedSeason season = SavedSeason.of(site.contentHash(), "6", 24_480, changes, List.of(2000L));
        return Learner.fresh("learner-1", "Ana", LOOK)
                .on("tansy-row", p -> p.lived(71).lived(92).lived(60).with(season))
                .on("quillback-clinic", p -> p.lived(null))
                .on("sumac-bend", p -> p.leaving(left()))
                .following("firstRain")
                .drilled(p -> p.begun()
                        .after(Family.HYDRAULIC, Result.shown(1))
                        .after(Family.HYDRAULIC, new Result(Form.HALF, 1, 83, true))
                        .after(Family.NONE, new Result(Form.WHOLE, 1, 40, false))
                        .choosing(Family.SENSOR, false));
    }

    @Test
    void filesFromBeforeTheDrillDeckStillLoad() throws IOException {
        Learner plain = Learner.fresh("learner-1", "Ana", LOOK).on("tansy-row", p -> p.lived(71));
        String older = LearnerFile.write(plain);
        assertFalse(older.contains("drill"), older);
        lay("learner-1.json", older);
        assertEquals(List.of(plain), store().all().learners());
        assertEquals(Progress.NONE, store().all().learners().get(0).drill());
    }

    @Test
    void progressInTheDrillDeckIsKept() {
        store().save(trained());
        Progress kept = store().all().learners().get(0).drill();
        assertEquals(1, kept.sessions());
        assertEquals(Form.WHOLE, kept.at(Family.HYDRAULIC).next());
        assertEquals(83, kept.at(Family.HYDRAULIC).results().get(1).points());
        assertEquals(1, kept.at(Family.HYDRAULIC).support().row());
        assertFalse(kept.at(Family.SENSOR).support().explains());
        assertEquals(Form.EXAMPLE, kept.at(Family.ELECTRICAL).next());
    }

    private static SavedCall left() {
        SavedCall.Finding finding = new SavedCall.Finding("main:m/2", 0.9, List.of("locate", "repair:main:m/2"));
        return new SavedCall("abc", "7", -31L, 2, "EXAM", List.of("readMeter", "isolate:iso-c"), finding);
    }

    @Test
    void aCallThatWasLeftIsKept() {
        store().save(trained());
        Learner ana = store().all().learners().get(0);
        assertEquals(left(), ana.at("sumac-bend").call());
        assertNull(ana.at("tansy-row").call());
        Learner ended = ana.on("sumac-bend", p -> p.lived(80).leaving(null));
        store().save(ended);
        assertNull(store().all().learners().get(0).at("sumac-bend").call());
    }

    @Test
    void aFileFromBeforeCallsWereKeptLoads() throws IOException {
        lay("learner-1.json", """
                {"version": 1, "name": "Ana", "lastSite": "", "followed": [],
                 "look": {"language": "en", "units": "US", "theme": "light", "textSize": 100, "still": false},
                 "sites": {"sumac-bend": {"best": 71, "seasons": 2}}}
                """);
        LearnerStore.Found found = store().all();
        assertEquals(List.of(), found.troubles());
        assertEquals(71, found.learners().get(0).at("sumac-bend").best());
        assertNull(found.learners().get(0).at("sumac-bend").call());
    }

    @Test
    void aCallThatIsNoneMakesTheFileBroken() throws IOException {
        store().save(trained());
        String text = Files.readString(file("learner-1.json"));
        assertTrue(text.contains("\"isolate:iso-c\""));
        lay("learner-1.json", text.replace("\"isolate:iso-c\"", "7"));
        assertEquals(
                List.of(Trouble.Kind.BROKEN),
                store().all().troubles().stream().map(Trouble::kind).toList());
    }

    @Test
    void whatIsWrittenReadsBackEqual() {
        Learner ana = trained();
        assertEquals(List.of(), store().save(ana).stream().toList());
        LearnerStore.Found found = store().all();
        assertEquals(List.of(ana), found.learners());
        assertEquals(List.of(), found.troubles());
        assertEquals(92, ana.at("tansy-row").best());
        assertEquals(3, ana.at("tansy-row").seasons());
        assertNull(ana.at("quillback-clinic").best());
        SavedSeason season = found.learners().get(0).at("tansy-row").season();
        assertEquals(trained().at("tansy-row").season().changes(site()), season.changes(site()));
        assertEquals(2, season.changes(site()).orElseThrow().size());
    }

    @Test
    void aSetUpThatTheSiteDoesNotTakeIsNoSeason() {
        SavedSeason season = trained().at("tansy-row").season();
        JsonNode odd = season.changes().get(1).setUp().deepCopy();
        ((com.fasterxml.jackson.databind.node.ObjectNode) odd.path("sensors").path(0)).put("trip", "9 miles");
        SavedSeason wrong = new SavedSeason(
                season.content(), season.engine(), 10, List.of(new SavedSeason.Change(0, odd)), List.of());
        assertTrue(season.changes(site()).isPresent());
        assertTrue(wrong.changes(site()).isEmpty());
    }

    @Test
    void twoLearnersKeepApartAndTheLastIsRemembered() {
        LearnerStore store = store();
        Learner ana = trained();
        store.save(ana);
        assertEquals("learner-2", store.freeId());
        Learner ben = Learner.fresh("learner-2", "Ben", LOOK.theme("light"));
        store.save(ben);
        store.remember(ben.id());
        assertEquals(List.of(ana, ben), store.all().learners());
        assertEquals("learner-2", store.last());
        store.remove(ana.id());
        assertEquals(List.of(ben), store.all().learners());
        assertEquals("learner-1", store.freeId());
    }

    @Test
    void aBrokenFileIsKeptAsItIsAndSaidOnce() throws IOException {
        for (String broken : List.of(
                "{ \"version\": 1, \"name\": ",
                "[]",
                "{ \"version\": 1, \"name\": 7 }",
                "{ \"version\": 0 }",
                LearnerFile.write(trained()).replace("\"tick\" : 1500", "\"tick\" : 0"),
                LearnerFile.write(trained()).replace("\"HALF\"", "\"QUARTER\""))) {
            lay("learner-1.json", broken);
            LearnerStore.Found found = store().all();
            assertEquals(List.of(), found.learners(), broken);
            assertEquals(1, found.troubles().size(), broken);
            Trouble trouble = found.troubles().get(0);
            assertEquals(Trouble.Kind.BROKEN, trouble.kind());
            assertEquals(broken, Files.readString(trouble.file()));
            assertFalse(Files.exists(file("learner-1.json")));
            assertEquals("learner-2", store().freeId(), "no new learner takes a broken one's name");
            assertEquals(List.of(), store().all().troubles(), "said once");
        }
        try (Stream<Path> files = Files.list(file(""))) {
            assertEquals(6, files.count(), "all six are still there");
        }
    }

    @Test
    void whatIsNoTextIsBroken() throws IOException {
        byte[] bytes = {(byte) 0xC3, (byte) 0x28, 0, (byte) 0xFF};
        Files.createDirectories(file(""));
        Files.write(file("learner-1.json"), bytes);
        Trouble trouble = store().all().troubles().get(0);
        assertEquals(Trouble.Kind.BROKEN, trouble.kind());
        assertArrayEquals(bytes, Files.readAllBytes(trouble.file()));
    }

    @Test
    void aNewerFileIsLeftAlone() throws IOException {
        String newer = LearnerFile.write(trained()).replace("\"version\" : 1", "\"version\" : 2");
        lay("learner-1.json", newer);
        LearnerStore.Found found = store().all();
        assertEquals(List.of(), found.learners());
        assertEquals(List.of(new Trouble(Trouble.Kind.NEWER, file("learner-1.json"))), found.troubles());
        assertEquals(newer, Files.readString(file("learner-1.json")));
        assertNotEquals("learner-1", store().freeId());
    }

    @Test
    void aWriteThatFailsLeavesWhatWasThere() throws IOException {
        Learner ana = trained();
        store().save(ana);
        String before = Files.readString(file("learner-1.json"));
        // A folder in the place of the fresh file: the write cannot even begin.
        Files.createDirectories(file("learner-1.json.new"));
        assertEquals(
                Trouble.Kind.NOT_WRITTEN,
                store().save(ana.named("Other")).orElseThrow().kind());
        assertEquals(before, Files.readString(file("learner-1.json")));
        Files.delete(file("learner-1.json.new"));
        // Half a file from a stop in the middle of a write is not taken for a learner, nor in the next one's way.
        lay("learner-1.json.new", before.substring(0, 40));
        assertEquals(List.of(ana), store().all().learners());
        assertTrue(store().save(ana.named("Other")).isEmpty());
        assertEquals("Other", store().all().learners().get(0).name());
        assertFalse(Files.exists(file("learner-1.json.new")));
    }

    @Test
    void namesAndLooksAreHeldWithinTheirLimits() {
        assertEquals("Ana", Learner.fresh("a", "", LOOK).named("  Ana ").name());
        assertEquals(
                Learner.LONGEST_NAME,
                Learner.fresh("a", "", LOOK).named("x".repeat(99)).name().length());
        assertEquals(200, LOOK.textSize(900).textSize());
        assertEquals(80, LOOK.textSize(1).textSize());
        assertEquals("light", LOOK.theme("pink").theme());
        assertEquals(UnitSystem.METRIC, Look.first("es", "MX").units());
        assertEquals(UnitSystem.US, Look.first("en", "US").units());
    }
}
