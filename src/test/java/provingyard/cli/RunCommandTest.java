package provingyard.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import provingyard.scenario.Sites;
import provingyard.score.Loss;
import provingyard.season.LivedSeasons;
import provingyard.season.Season;
import provingyard.season.Site;
import provingyard.setup.References;
import provingyard.setup.SetUp;
import provingyard.setup.SetUpWriter;
import provingyard.study.Mark;
import provingyard.study.MarkStore;
import provingyard.text.Texts;

class RunCommandTest {

    /** Fails when something follows the object. */
    private static final ObjectMapper JSON = new ObjectMapper().enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS);

    @TempDir
    static Path home;

    /** A site of which no mark is shipped. */
    private static Path row;

    @TempDir
    Path folder;

    @BeforeAll
    static void keepMarksAside() throws IOException {
        System.setProperty("provingyard.home", home.toString());
        String own = Files.readString(Path.of("scenarios/tansy-row.json"));
        String id = "\"id\": \"tansy-row\"";
        assertTrue(own.contains(id), "the site's id stands as expected");
        row = Files.writeString(home.resolve("row.json"), own.replaceFirst(id, "\"id\": \"other-row\""));
    }

    @AfterAll
    static void forget() {
        System.clearProperty("provingyard.home");
    }

    private static JsonNode json(String... args) throws IOException {
        Shell shell = Shell.type(args);
        assertEquals(Main.GOOD, shell.code(), shell.seen());
        return JSON.readTree(shell.out());
    }

    @Test
    void theObjectHasAllFieldsAndItsNumbersAddUp() throws IOException {
        JsonNode run = json("run", row.toString(), "--setup", "textbook", "--days", "3", "--json");
        assertEquals("other-row", run.get("site").asText());
        assertEquals(1207, run.get("seed").asLong());
        assertEquals(3, run.get("days").asInt());
        assertTrue(run.get("score").isNull());
        assertEquals("NOT_LIVED", run.get("scoreReason").asText());
        assertTrue(run.get("loss").get("clock").asDouble() > 0);
        assertTrue(run.get("loss").get("trainee").asDouble() > 0);
        assertTrue(run.get("loss").get("mark").isNull());
        JsonNode water = run.get("water");
        double in = water.get("supplied").asDouble() + water.get("rain").asDouble();
        double out = sum(water, "evapotranspiration drift walkEvaporation runoff below offSite leaked storeChange");
        assertTrue(in > 0.5 && in < 20, "m3 in three days on a small yard: " + in);
        assertEquals(in, out, 1e-6 * in);
        JsonNode irrigation = run.get("irrigation");
        double supplied = irrigation.get("supplied").asDouble();
        assertEquals(water.get("supplied").asDouble(), supplied, 1e-9);
        assertEquals(
                supplied, sum(irrigation, "used drift overspray runoff below leaked storeChange"), 1e-6 * supplied);
        assertEquals(0, run.get("ice").get("areaHours").asDouble());
        assertEquals(0, run.get("ice").get("mornings").asInt());
        for (String count : List.of("happened", "found", "missed", "falseAlarms")) {
            assertTrue(run.get("leaks").get(count).isInt(), count);
        }
        assertTrue(run.get("closure").asDouble() < 1e-9);
        assertTrue(run.get("ledgerHash").asText().matches("[0-9a-f]{16,}"));
    }

    private static double sum(JsonNode node, String names) {
        double sum = 0;
        for (String name : names.split(" ")) {
            assertTrue(node.path(name).isNumber(), name);
            sum += node.get(name).asDouble();
        }
        return sum;
    }

    @Test
    void theSameSeedLivesTheSameSeasonAndAnotherAnother() throws IOException {
        String once = hash("7");
        assertEquals(once, hash("7"));
        assertNotEquals(once, hash("8"));
    }

    private static String hash(String seed) throws IOException {
        return json("run", "tansy-row", "--days", "2", "--seed", seed, "--json")
                .get("ledgerHash")
                .asText();
    }

    @Test
    void withoutASetUpTheClockIsAlone() throws IOException {
        JsonNode loss = json("run", "tansy-row", "--days", "2", "--json").get("loss");
        assertEquals(loss.get("clock").asDouble(), loss.get("trainee").asDouble(), 0);
    }

    @Test
    void aSetUpFileLivesLikeTheReferenceItHolds() throws IOException {
        var site = Sites.open("tansy-row").orThrow();
        Path file = folder.resolve("mine.json");
        Files.writeString(file, SetUpWriter.write(References.textbook(site).orElseThrow()));
        assertEquals(
                json("run", "tansy-row", "--days", "2", "--setup", "textbook", "--json"),
                json("run", "tansy-row", "--days", "2", "--setup", file.toString(), "--json"));
    }

    @Test
    void onlyTheOwnWholeSeasonBesideAFittingMarkHasPoints() throws IOException {
        Site site = Site.of(Sites.open(row.toString()).orThrow());
        var textbook = References.textbook(site.scenario()).orElseThrow();
        double meanGap = 1000;
        Loss clock = LivedSeasons.loss(site, SetUp.CLOCK_ALONE);
        Mark.OwnSeason own = new Mark.OwnSeason(clock, LivedSeasons.loss(site, textbook));
        String[] whole = {"run", row.toString(), "--setup", "careless", "--json"};
        assertTrue(MarkStore.save(
                new Mark("other-row", site.contentHash(), "another engine", textbook, meanGap, 0, 6, own)));
        assertEquals("MARK_NOT_KNOWN", json(whole).get("scoreReason").asText());
        assertTrue(
                MarkStore.save(new Mark("other-row", site.contentHash(), Season.ENGINE, textbook, meanGap, 0, 6, own)));
        try {
            JsonNode run = json(whole);
            JsonNode loss = run.get("loss");
            assertEquals(clock.total(), loss.get("clock").asDouble());
            assertEquals(own.mark().total(), loss.get("mark").asDouble());
            assertEquals(
                    100 * (loss.get("clock").asDouble() - loss.get("trainee").asDouble()) / (meanGap / 2),
                    run.get("score").asDouble(),
                    1e-9);
            assertFalse(run.has("scoreReason"));
            JsonNode other = json("run", row.toString(), "--days", "2", "--setup", "mark", "--json");
            assertEquals("NOT_LIVED", other.get("scoreReason").asText());
            assertEquals(
                    other.get("loss").get("mark").asDouble(),
                    other.get("loss").get("trainee").asDouble(),
                    0);
            JsonNode weather = json("run", row.toString(), "--seed", "9", "--json");
            assertEquals("NOT_LIVED", weather.get("scoreReason").asText());
        } finally {
            Files.delete(home.resolve("marks/other-row.json"));
        }
    }

    @Test
    void theTextSaysAllInTheLanguageAndTheUnitsAskedFor() {
        Shell english = Shell.type("run", "tansy-row", "--days", "2", "--units", "us");
        assertEquals(Main.GOOD, english.code(), english.seen());
        assertTrue(english.out().contains("Evapotranspiration"), english.out());
        assertTrue(english.out().contains("gal"), english.out());
        assertFalse(english.out().contains("m³") || english.out().contains("\u00a0L"), english.out());
        Shell spanish = Shell.type("run", "tansy-row", "--days", "2", "--lang", "es");
        assertTrue(spanish.out().contains("La parte del riego"), spanish.out());
        assertTrue(spanish.out().contains("\u00a0L"), spanish.out());
        assertFalse(english.out().contains("[[") || spanish.out().contains("[["), "a text is missing");
    }

    @Test
    void theReportStandsAloneWithItsPicture() throws IOException {
        Path out = folder.resolve("new/report");
        Shell shell = Shell.type(
                "run", "tansy-row", "--days", "2", "--setup", "careless", "--json", "--report", out.toString());
        assertEquals(Main.GOOD, shell.code(), shell.seen());
        assertEquals("tansy-row", JSON.readTree(shell.out()).get("site").asText());
        String page = Files.readString(out.resolve("report.html"));
        assertTrue(page.contains("src=\"data:image/png;base64,"), "the picture is in the page");
        assertFalse(page.contains("src=\"http") || page.contains("<script") || page.contains("<link"));
        assertFalse(page.contains("[["), "a text is missing");
        assertEquals(1280, ImageIO.read(out.resolve("yard.png").toFile()).getWidth());
        for (String name : List.of("report.pdf", "ledger.csv", "events.csv", "owner.html", "owner.pdf")) {
            assertTrue(Files.size(out.resolve(name)) > 1000, name);
        }
        assertEquals(1, shell.err().lines().count(), shell.err());
        assertTrue(shell.err().contains("over 20 other seasons"), "what is waited for is said");
    }

    @Test
    void aFileOfTheReportsThatCannotBeWrittenIsSaidInOneLine() throws IOException {
        Path out = folder.resolve("report");
        Files.createDirectories(out.resolve("events.csv"));
        Shell shell = Shell.type("run", "tansy-row", "--days", "1", "--report", out.toString());
        assertEquals(Main.BAD_INPUT, shell.code(), shell.seen());
        assertEquals(2, shell.err().lines().count(), "what is worked out, and what went wrong: " + shell.err());
        assertTrue(shell.err().contains("events.csv"), shell.err());
    }

    @Test
    void aNameFromOutsideDoesNotBecomeMarkupInTheReport() throws IOException {
        Path sly = folder.resolve("<script>alert(1)<b>.json");
        var site = Sites.open("tansy-row").orThrow();
        Files.writeString(sly, SetUpWriter.write(References.textbook(site).orElseThrow()));
        Path yard = folder.resolve("sly-site.json");
        String own = Files.readString(Path.of("scenarios/tansy-row.json"));
        String title = "\"title\": { \"en\": \"Tansy Row\"";
        assertTrue(own.contains(title), "the site's title stands as expected");
        Files.writeString(yard, own.replace(title, "\"title\": { \"en\": \"<script>alert(2)</script>\""));
        Path out = folder.resolve("report");
        Shell shell = Shell.type(
                "run", yard.toString(), "--days", "1", "--setup", sly.toString(), "--report", out.toString());
        assertEquals(Main.GOOD, shell.code(), shell.seen());
        String page = Files.readString(out.resolve("report.html"));
        assertFalse(page.contains("<script"), "markup came in");
        assertTrue(page.contains("&lt;script&gt;alert(1)&lt;b&gt;"));
        assertTrue(page.contains("<h1>Debrief, &lt;script&gt;alert(2)&lt;/script&gt;</h1>"));
    }

    @Test
    void aReportThatCannotBeWrittenIsSaidBeforeTheSeasonIsLived() throws IOException {
        Path inTheWay = Files.writeString(folder.resolve("file"), "here");
        Shell shell = Shell.type("run", "tansy-row", "--days", "2", "--report", inTheWay.toString());
        assertEquals(Main.BAD_INPUT, shell.code());
        assertEquals("", shell.out());
        assertEquals(1, shell.err().lines().count(), shell.err());
        assertTrue(shell.err().contains(inTheWay.toString()), shell.err());
    }

    /** No plumbing that the reader lets through is known to defeat the solver, so the decision is tried by itself. */
    @ParameterizedTest
    @ValueSource(strings = {"en", "es"})
    void aSeasonWhosePipesCouldNotBeSolvedIsACheckThatDidNotHold(String language) {
        StringWriter said = new StringWriter();
        assertEquals(1, RunCommand.verdict(17, Texts.of("cli", language), new PrintWriter(said, true)));
        assertEquals(1, said.toString().lines().count(), said.toString());
        assertTrue(said.toString().contains("17"), said.toString());
        assertFalse(said.toString().contains("[["), "a text is missing");
    }

    @Test
    void aSeasonWhosePipesWereSolvedSaysNothingOfThem() {
        StringWriter said = new StringWriter();
        assertEquals(0, RunCommand.verdict(0, Texts.of("cli", "en"), new PrintWriter(said, true)));
        assertEquals("", said.toString());
    }
}
