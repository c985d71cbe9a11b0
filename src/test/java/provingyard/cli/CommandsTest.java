package provingyard.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CommandsTest {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Path NETWORKS = Path.of("shared/reference/hydraulics");

    @TempDir
    Path folder;

    @Test
    void eachCommandExplainsItselfInBothLanguages() {
        Map<String, List<String>> said = Map.of(
                "en", List.of("Usage:", "Show this help"),
                "es", List.of("Uso:", "Muestra esta ayuda"));
        for (String command : List.of("", "run ", "shares ", "worth ", "check ", "network ", "picture ")) {
            List<String> pages = new ArrayList<>();
            said.forEach((language, parts) -> {
                Shell shell = Shell.type((command + "--help --lang " + language).split(" "));
                assertEquals(Main.GOOD, shell.code(), shell.seen());
                parts.forEach(p -> assertTrue(shell.out().contains(p), p + " in\n" + shell.out()));
                assertFalse(shell.out().contains("[["), shell.out());
                pages.add(shell.out());
            });
            assertNotEquals(pages.get(0), pages.get(1));
        }
        String all = Shell.type("--help").out();
        assertTrue(all.contains("Name all problems of scenario files"), "the commands are described\n" + all);
    }

    @Test
    void withoutACommandTheHelpIsShown() {
        Shell shell = Shell.type("--lang", "es");
        assertEquals(Main.GOOD, shell.code());
        assertTrue(shell.out().contains("Órdenes:"), shell.out());
    }

    @Test
    void theShippedSitesAreGood() {
        Shell shell = Shell.type("check", "scenarios/tansy-row.json", "scenarios/quillback-clinic.json");
        assertEquals(Main.GOOD, shell.code(), shell.seen());
        assertEquals(2, shell.out().lines().count(), shell.out());
    }

    @Test
    void notesComeWhenAskedForAndAreNotErrors() {
        Shell shell = Shell.type("check", "--verbose", "scenarios/tansy-row.json");
        assertEquals(Main.GOOD, shell.code());
        assertTrue(shell.out().contains("DEF-FILLED note"), shell.out());
    }

    @Test
    void tenMistakesAreTenLocatedLines() throws IOException {
        String text = Files.readString(Path.of("src/test/resources/provingyard/scenario/complete.json"));
        String[][] mistakes = {
            {"\"level\": 3", "\"level\": 9"},
            {"\"subtitle\"", "\"subtitel\""},
            {"\"cell\": \"2 ft\"", "\"cell\": \"2 fet\""},
            {"\"base\": \"lawn\"", "\"base\": \"lown\""},
            {"\"kind\": \"bed\"", "\"kind\": \"bedd\""},
            {"\"pressure\": \"72 psi\"", "\"pressure\": \"72\""},
            {"\"nozzle\": \"rotor-25\"", "\"nozzle\": \"rotor-52\""},
            {"\"along\": \"12 ft\"", "\"along\": \"120 ft\""},
            {"\"budget\": \"900 USD\"", "\"budget\": \"9,5 USD\""},
            {"\"from\": \"2013-11-01\"", "\"from\": \"2013-13-01\""},
        };
        for (String[] mistake : mistakes) {
            assertTrue(text.contains(mistake[0]), mistake[0]);
            text = text.replace(mistake[0], mistake[1]);
        }
        Path file = Files.writeString(folder.resolve("ten.json"), text);
        Pattern located =
                Pattern.compile(Pattern.quote(file.toString()) + ":[1-9]\\d*:[1-9]\\d*: [A-Z]{3}-[A-Z_-]+ .+");
        for (String language : List.of("en", "es")) {
            Shell shell = Shell.type("check", file.toString(), "--lang", language);
            assertEquals(Main.BAD_INPUT, shell.code());
            long lines = shell.out().lines().filter(located.asMatchPredicate()).count();
            assertTrue(lines >= 10, shell.out());
        }
    }

    @Test
    void aGoodFileDoesNotHideABadOne() throws IOException {
        Path bad = Files.writeString(folder.resolve("bad.json"), "{}");
        assertEquals(
                Main.BAD_INPUT,
                Shell.type("check", bad.toString(), "scenarios/tansy-row.json").code());
    }

    @Test
    void theNetworkIsSolvedLikeTheReferenceEngine() throws IOException {
        Shell shell = Shell.type("network", NETWORKS.resolve("v01.network.json").toString());
        assertEquals(Main.GOOD, shell.code(), shell.seen());
        JsonNode found = JSON.readTree(shell.out()).get("heads_m");
        JsonNode expected =
                JSON.readTree(NETWORKS.resolve("v01.expected.json").toFile()).get("heads_m");
        assertEquals(expected.size(), found.size());
        // The command uses textbook constants, the reference engine its own rounded ones.
        expected.fields()
                .forEachRemaining(e -> assertEquals(
                        e.getValue().asDouble(), found.get(e.getKey()).asDouble(), 0.02, e.getKey()));
    }

    @Test
    void thePictureHasTheSizeAskedFor() throws IOException {
        Path file = folder.resolve("yard.png");
        Shell shell = Shell.type("picture", "tansy-row", "--out", file.toString(), "--size", "640x400");
        assertEquals(Main.GOOD, shell.code(), shell.seen());
        BufferedImage picture = ImageIO.read(file.toFile());
        assertEquals(640, picture.getWidth());
        assertEquals(400, picture.getHeight());
    }

    @Test
    void aLaterMinuteAndAnotherThemeGiveAnotherPicture() throws IOException {
        byte[] first = picture("--minute", "0");
        assertFalse(java.util.Arrays.equals(first, picture("--minute", "420", "--setup", "textbook")));
        assertFalse(java.util.Arrays.equals(first, picture("--minute", "0", "--theme", "dark")));
        assertTrue(java.util.Arrays.equals(first, picture("--minute", "0")));
    }

    private byte[] picture(String... more) throws IOException {
        Path file = folder.resolve("p.png");
        List<String> args = new ArrayList<>(List.of("picture", "tansy-row", "--size", "320x200", "--out"));
        args.add(file.toString());
        args.addAll(List.of(more));
        Shell shell = Shell.type(args.toArray(String[]::new));
        assertEquals(Main.GOOD, shell.code(), shell.seen());
        return Files.readAllBytes(file);
    }
}
