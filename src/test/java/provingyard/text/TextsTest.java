package provingyard.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import provingyard.scenario.SensorKind;
import provingyard.score.Loss;
import provingyard.score.Score;
import provingyard.study.Choice;

class TextsTest {

    private static final Path FOLDER = Path.of("src/main/resources/provingyard/text");
    private static final Path CODE = Path.of("src/main/java/provingyard");
    private static final Pattern PLACE = Pattern.compile("\\{(\\d+)");
    private static final Pattern LITERAL =
            Pattern.compile("\"([a-z]+(?:\\.(?!(?:html|pdf|css|csv|png|json)\")[A-Za-z]+)+)\"");

    private static List<String> parts() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            List<String> parts = files.map(f -> f.getFileName().toString())
                    .filter(n -> n.endsWith("_en.properties"))
                    .map(n -> n.substring(0, n.length() - "_en.properties".length()))
                    .sorted()
                    .toList();
            assertTrue(parts.containsAll(List.of("cli", "ui")), parts.toString());
            return parts;
        }
    }

    private static Set<String> places(String text) {
        Set<String> places = new TreeSet<>();
        Matcher found = PLACE.matcher(text);
        while (found.find()) {
            places.add(found.group(1));
        }
        return places;
    }

    @Test
    void bothLanguagesHaveTheSameKeysAndPlaces() throws IOException {
        for (String part : parts()) {
            Map<String, String> en = Texts.of(part, "en").all();
            Map<String, String> es = Texts.of(part, "es").all();
            assertEquals(en.keySet(), es.keySet(), part);
            en.forEach((key, text) -> assertEquals(places(text), places(es.get(key)), part + " " + key));
        }
    }

    @Test
    void noTextIsEmptyOrHasATypewritersApostrophe() throws IOException {
        for (String part : parts()) {
            for (String language : Texts.LANGUAGES) {
                Texts.of(part, language).all().forEach((key, text) -> {
                    assertFalse(text.isBlank(), part + " " + language + " " + key);
                    // It would quote what follows in a MessageFormat.
                    assertFalse(text.contains("'"), part + " " + language + " " + key);
                });
            }
        }
    }

    @Test
    void noKeyStandsTwiceInAFile() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            for (Path file : files.toList()) {
                Set<String> seen = new TreeSet<>();
                for (String line : Files.readAllLines(file)) {
                    if (line.contains("=") && !line.startsWith("#")) {
                        assertTrue(seen.add(line.substring(0, line.indexOf('='))), file + ": " + line);
                    }
                }
            }
        }
    }

    /** A literal that begins like a known key of a package's texts is a key, and so must be in one of them. */
    @Test
    void everyKeyInTheCodeIsThere() throws IOException {
        Map<String, List<String>> used = Map.of(
                "cli",
                List.of("cli"),
                "ui",
                List.of("ui", "callreview"),
                "report",
                List.of("report", "debrief", "ui"),
                "diagnosis",
                List.of("diagnosis"));
        Map<String, Integer> atLeast =
                Map.of("cli", 30, "ui", 30, "callreview", 60, "report", 100, "debrief", 10, "diagnosis", 30);
        Map<String, Integer> known = new TreeMap<>();
        List<String> missing = new ArrayList<>();
        for (String code : used.keySet()) {
            List<Texts> texts =
                    used.get(code).stream().map(part -> Texts.of(part, "en")).toList();
            for (Path file : files(code)) {
                Matcher found = LITERAL.matcher(Files.readString(file));
                while (found.find()) {
                    String key = found.group(1);
                    for (int i = 0; i < texts.size(); i++) {
                        known.merge(used.get(code).get(i), texts.get(i).has(key) ? 1 : 0, Integer::sum);
                    }
                    boolean isKey = texts.stream().anyMatch(t -> beginnings(t).contains(beginning(key)));
                    if (isKey && texts.stream().noneMatch(t -> t.has(key))) {
                        missing.add(file + ": " + key);
                    }
                }
            }
        }
        assertEquals(List.of(), missing);
        List<String> named = new ArrayList<>(parts());
        // Its keys are made from the names of tests, answers and tools: CallTextsTest.
        named.remove("call");
        for (String part : named) {
            assertTrue(known.get(part) > atLeast.get(part), part + " has keys in its code: " + known.get(part));
        }
    }

    private static Set<String> beginnings(Texts texts) {
        Set<String> beginnings = new TreeSet<>();
        texts.all().keySet().forEach(k -> beginnings.add(beginning(k)));
        return beginnings;
    }

    private static String beginning(String key) {
        return key.substring(0, key.indexOf('.') + 1);
    }

    private static List<Path> files(String name) throws IOException {
        List<Path> all = new ArrayList<>();
        if (name.equals("cli")) {
            all.add(CODE.resolve("Launcher.java"));
        }
        try (Stream<Path> files = Files.walk(CODE.resolve(name))) {
            files.filter(f -> f.toString().endsWith(".java")).forEach(all::add);
        }
        return all;
    }

    @Test
    void keysThatAreMadeFromNamesAreThere() {
        for (String part : List.of("cli", "ui")) {
            Texts texts = Texts.of(part, "en");
            for (Loss.Kind kind : Loss.Kind.values()) {
                assertTrue(texts.has("loss." + kind.name()), part + " " + kind);
            }
            for (Score.Reason reason : Score.Reason.values()) {
                assertTrue(texts.has("reason." + reason.name()), part + " " + reason);
            }
        }
        for (SensorKind kind : SensorKind.values()) {
            assertTrue(Texts.of("ui", "en").has("sensor." + kind.name()), kind.name());
        }
        for (Choice choice : Choice.values()) {
            assertTrue(Texts.of("cli", "en").has("choice." + choice.name()), choice.name());
        }
    }
}
