package provingyard.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import provingyard.scenario.ScenarioReader;
import provingyard.scenario.Sites;
import provingyard.score.Loss;
import provingyard.season.Season;
import provingyard.season.Site;
import provingyard.setup.References;
import provingyard.setup.SetUp;

class MarkStoreTest {

    private static Site site;
    private static SetUp textbook;

    @TempDir
    Path home;

    @BeforeAll
    static void openASiteThatShipsNoMark() throws IOException {
        try (InputStream in = Sites.resource("scenarios/tansy-row.json")) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            String other = text.replaceFirst("\"id\": \"tansy-row\"", "\"id\": \"tansy-lane\"");
            site = Site.of(ScenarioReader.read("tansy-lane.json", other).orThrow());
        }
        assertEquals("tansy-lane", site.scenario().id());
        textbook = References.textbook(site.scenario()).orElseThrow();
    }

    @BeforeEach
    void name() {
        System.setProperty("provingyard.home", home.toString());
    }

    @AfterEach
    void forget() {
        System.clearProperty("provingyard.home");
    }

    private static Loss loss(double amount) {
        return new Loss(Arrays.stream(Loss.Kind.values())
                .map(k -> new Loss.Entry(k, amount * k.ordinal(), 1.5))
                .toList());
    }

    private static Mark mark(String content, String engine) {
        return new Mark(
                "tansy-lane", content, engine, textbook, 41.5, 12.25, 6, new Mark.OwnSeason(loss(3), loss(0.1 + 0.2)));
    }

    @Test
    void whatIsKeptIsFoundEqual() {
        assertEquals(Optional.empty(), MarkStore.find(site));
        Mark mark = mark(site.contentHash(), Season.ENGINE);
        assertTrue(MarkStore.save(mark));
        assertTrue(Files.isRegularFile(home.resolve("marks/tansy-lane.json")));
        assertEquals(Optional.of(mark), MarkStore.find(site));
    }

    @Test
    void aMarkOfAnotherDocumentOrEngineDoesNotCount() {
        Optional<Mark> without = MarkStore.find(site);
        assertTrue(MarkStore.save(mark("0".repeat(64), Season.ENGINE)));
        assertEquals(without, MarkStore.find(site));
        assertTrue(MarkStore.save(mark(site.contentHash(), Season.ENGINE + "-other")));
        assertEquals(without, MarkStore.find(site));
    }

    @Test
    void brokenFilesCountAsNone() throws IOException {
        Optional<Mark> without = MarkStore.find(site);
        assertTrue(MarkStore.save(mark(site.contentHash(), Season.ENGINE)));
        Path file = home.resolve("marks/tansy-lane.json");
        String good = Files.readString(file);
        assertTrue(good.contains("\"rain\"") && good.contains("\"setUp\""), good);
        for (String text : new String[] {
            "",
            "[]",
            good.substring(0, good.length() / 2),
            good.replace("\"rain\"", "\"rian\""),
            good.replace("\"setUp\"", "\"other\""),
            good.replace("\"own\"", "\"other\""),
            good.replace("\"DRIFT\"", "\"DRIFTS\"")
        }) {
            Files.writeString(file, text);
            assertEquals(without, MarkStore.find(site), text);
        }
        Files.writeString(file, good);
        assertTrue(MarkStore.find(site).isPresent(), "the file as it was is read");
    }

    @Test
    void aFolderThatCannotBeWrittenIsSaidAndNothingMore() throws IOException {
        Path file = Files.writeString(home.resolve("file"), "here");
        System.setProperty("provingyard.home", file.toString());
        assertFalse(MarkStore.save(mark(site.contentHash(), Season.ENGINE)));
    }

    @Test
    void aChallengerGoesBeforeTheMarkItBeatAndNeverForClasses() throws IOException {
        Mark base = mark(site.contentHash(), Season.ENGINE);
        Mark better = new Mark(base.site(), base.content(), base.engine(), SetUp.CLOCK_ALONE, 40, 10, 24, base.own());
        assertFalse(MarkStore.keepChallenger(site, better), "there is no mark that it could have beaten");
        assertTrue(MarkStore.save(base));
        assertTrue(MarkStore.keepChallenger(site, better));
        assertEquals(Optional.of(better), MarkStore.find(site));
        assertEquals(Optional.empty(), MarkStore.shipped(site), "this site ships none");
        Mark other = new Mark(base.site(), base.content(), base.engine(), other(), 40, 11, 6, base.own());
        assertTrue(MarkStore.save(other));
        assertEquals(Optional.of(other), MarkStore.find(site), "it beat another one");
        assertTrue(MarkStore.save(base));
        assertEquals(Optional.of(better), MarkStore.find(site));
        Path file = home.resolve("marks/challengers/tansy-lane.json");
        Files.writeString(file, Files.readString(file).replace(site.contentHash(), "0".repeat(64)));
        assertEquals(Optional.of(base), MarkStore.find(site), "it was tried on another document");
        Files.writeString(file, "[");
        assertEquals(Optional.of(base), MarkStore.find(site), "broken files count as none");
    }

    private static SetUp other() {
        return References.careless(site.scenario()).orElseThrow();
    }

    @Test
    void classesUseTheShippedMarkWhateverIsKept() {
        Site shipped = Site.of(Sites.open("tansy-row").orThrow());
        Optional<Mark> mark = MarkStore.shipped(shipped);
        Mark better = new Mark(
                "tansy-row",
                shipped.contentHash(),
                Season.ENGINE,
                SetUp.CLOCK_ALONE,
                40,
                10,
                24,
                new Mark.OwnSeason(loss(3), loss(2)));
        assertTrue(mark.isPresent());
        assertTrue(MarkStore.keepChallenger(shipped, better));
        assertEquals(Optional.of(better), MarkStore.find(shipped));
        assertEquals(mark, MarkStore.shipped(shipped));
    }
}
