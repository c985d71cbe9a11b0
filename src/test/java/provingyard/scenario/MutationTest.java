package provingyard.scenario;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import provingyard.setup.References;
import provingyard.setup.SetUpReader;

/** Files that somebody or something has spoilt: always a site or an error with its place, never an exception. */
class MutationTest {

    private static final Pattern TOKEN =
            Pattern.compile("\"(?:[^\"\\\\]|\\\\.)*\"|-?\\d[\\d.eE+-]*|true|false|null|[\\[\\]{},:]");
    private static final List<String> ODD = List.of(
            "null",
            "true",
            "-1",
            "1e999",
            "123456789012345678901234567890",
            "\"\"",
            "\"-5 ft\"",
            "\"1/0 in\"",
            "{}",
            "[]",
            "[[]]",
            "{\"en\": 3}",
            "\"lawn\"",
            "\"1e308 m\"",
            "0.5",
            "\"\\u0000\"",
            "NaN",
            "'",
            "\"tee-1\"",
            "\"zone-1\"");
    private static final List<String> TEXTS = texts();
    private static final Scenario SITE =
            ScenarioReader.read("complete.json", ScenarioReaderTest.complete()).orThrow();

    private static List<String> texts() {
        List<String> texts = new ArrayList<>(List.of(ScenarioReaderTest.complete()));
        for (Sites.Site site : Sites.list()) {
            if (site.shipped()) {
                try (var in = Sites.resource(site.where())) {
                    texts.add(new String(in.readAllBytes(), StandardCharsets.UTF_8));
                } catch (IOException e) {
                    throw new IllegalStateException(e);
                }
            }
        }
        return texts;
    }

    @Property(tries = 2000)
    void spoiltSitesGiveProblemsAndNoException(@ForAll long seed) {
        Random random = new Random(seed);
        // Mostly the complete site: it is short and has everything once.
        String text = TEXTS.get(random.nextInt(8) > 0 ? 0 : random.nextInt(TEXTS.size()));
        for (int i = random.nextInt(4); i >= 0; i--) {
            text = spoilt(text, random);
        }
        Read<Scenario> read = ScenarioReader.read("spoilt.json", text);
        held(read);
        if (read.ok()) {
            References.check("spoilt.json", read);
            ScenarioReader.read("written.json", ScenarioWriter.write(read.value()))
                    .orThrow();
        }
    }

    @Property(tries = 1000)
    void spoiltSetUpsGiveProblemsAndNoException(@ForAll long seed) {
        Random random = new Random(seed);
        String text = SITE.setUps().textbook().toString();
        for (int i = random.nextInt(4); i >= 0; i--) {
            text = spoilt(text, random);
        }
        held(SetUpReader.read("spoilt.json", text, SITE));
    }

    private static void held(Read<?> read) {
        assertTrue(read.ok() || !read.errors().isEmpty());
        assertFalse(read.ok() && !read.errors().isEmpty());
        for (Problem problem : read.problems()) {
            assertTrue(problem.line() >= 1 && problem.column() >= 1);
            assertTrue(problem.pointer().isEmpty() || problem.pointer().startsWith("/"));
            assertFalse(problem.file().isEmpty());
            assertFalse(problem.line("en").isBlank() || problem.line("es").isBlank());
        }
    }

    private static String spoilt(String text, Random random) {
        List<int[]> tokens = new ArrayList<>();
        Matcher matcher = TOKEN.matcher(text);
        while (matcher.find()) {
            tokens.add(new int[] {matcher.start(), matcher.end()});
        }
        if (tokens.isEmpty()) {
            return text;
        }
        int[] token = tokens.get(random.nextInt(tokens.size()));
        int[] other = tokens.get(random.nextInt(tokens.size()));
        String before = text.substring(0, token[0]);
        String at = text.substring(token[0], token[1]);
        String after = text.substring(token[1]);
        return switch (random.nextInt(9)) {
            case 0 -> before + after;
            case 1 -> before + at + at + after;
            case 2 -> before + text.substring(other[0], other[1]) + after;
            case 3, 4 -> before + ODD.get(random.nextInt(ODD.size())) + after;
            case 5 -> before + (char) random.nextInt(0x500) + after;
            case 6 -> before + "[".repeat(random.nextInt(200)) + after;
            case 7 -> text.substring(0, token[0]);
            default -> before + "\"" + random.nextInt(1000) + " ft\"" + after;
        };
    }

    @Test
    void workIsBoundedForFilesMadeToBeSlow() {
        // Each of these took minutes if any step were quadratic in the file; the bound is on work: the reader either
        // refuses the file for its size or tokens, or stops listing errors.
        String refs = "{\"zone\": \"zome-1\", \"at\": [\"1 ft\", \"1 ft\"], \"nozzle\": \"spry\"},".repeat(20_000);
        held(ScenarioReader.read("a", "{\"plumbing\": {\"heads\": [" + refs + "{}]}}"));
        StringBuilder soils = new StringBuilder();
        for (int i = 0; i < 60_000; i++) {
            soils.append("{\"id\": \"s").append(i).append("\"},");
        }
        held(ScenarioReader.read("a", "{\"catalogue\": {\"soils\": [" + soils + "{}]}}"));
        held(ScenarioReader.read("a", "[".repeat(3_000_000)));
        held(ScenarioReader.read("a", "{\"x\": \"" + "a".repeat(4_000_000) + "\"}"));
        held(ScenarioReader.read("a", "[" + "1,".repeat(2_400_000) + "1]"));
        held(ScenarioReader.read("a", "9".repeat(4_000_000)));
        held(ScenarioReader.read("a", " ".repeat(6_000_000)));
    }
}
