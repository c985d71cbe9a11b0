package provingyard;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The flow, and who may know whom. The table below is the one that DEVELOPERS.md shows. */
class ArchitectureTest {

    private static final String FLOW = "scenario -> world (yard, weather, hydraulics, ground) -> sensor -> control"
            + " -> season -> score -> screen";

    private static final Map<String, Set<String>> MAY_KNOW = new LinkedHashMap<>();

    static {
        may("numeric");
        may("text");
        may("quantity");
        may("scenario", "quantity");
        may("setup", "scenario", "quantity");
        may("learner", "drill", "setup", "scenario", "quantity");
        may("world.yard", "scenario", "quantity", "numeric");
        may("world.weather", "world.yard", "scenario", "quantity", "numeric");
        may("world.hydraulics", "scenario", "quantity", "numeric");
        may("world.ground", "world.yard", "scenario", "quantity", "numeric");
        may("world.electric", "scenario", "quantity", "numeric");
        may(
                "sensor",
                "world.yard",
                "world.weather",
                "world.hydraulics",
                "world.ground",
                "setup",
                "scenario",
                "quantity",
                "numeric");
        may("control", "sensor", "setup", "scenario", "quantity", "numeric");
        may(
                "season",
                "world.yard",
                "world.weather",
                "world.hydraulics",
                "world.ground",
                "world.electric",
                "control",
                "sensor",
                "setup",
                "scenario",
                "quantity",
                "numeric");
        may("score", "season", "scenario", "quantity", "numeric");
        may("study", "season", "score", "setup", "scenario", "quantity", "numeric");
        may("diagnosis", "season", "score", "setup", "scenario", "quantity", "numeric");
        may(
                "call",
                "diagnosis",
                "season",
                "control",
                "sensor",
                "world.electric",
                "world.hydraulics",
                "score",
                "setup",
                "scenario",
                "quantity",
                "numeric");
        may("drill", "call", "diagnosis", "scenario", "quantity", "numeric");
        may("picture", "season", "score", "setup", "scenario", "quantity", "numeric", "text");
        may("report", "picture", "score", "study", "season", "setup", "scenario", "quantity", "numeric", "text");
        may(
                "cli",
                "call",
                "diagnosis",
                "report",
                "picture",
                "study",
                "score",
                "season",
                "control",
                "sensor",
                "world.yard",
                "world.weather",
                "world.hydraulics",
                "world.ground",
                "setup",
                "scenario",
                "quantity",
                "numeric",
                "text");
        may(
                "ui",
                "call",
                "diagnosis",
                "drill",
                "learner",
                "report",
                "picture",
                "study",
                "score",
                "season",
                "setup",
                "scenario",
                "quantity",
                "numeric",
                "text");
    }

    private static JavaClasses classes;

    private static void may(String name, String... others) {
        MAY_KNOW.put(name, new TreeSet<>(List.of(others)));
    }

    @BeforeAll
    static void read() {
        classes = new ClassFileImporter()
                .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                .importPackages("provingyard");
        assertTrue(classes.size() > 50, "classes were read");
    }

    @Test
    void arrowsRunOneWay() {
        Set<String> wrong = new TreeSet<>();
        for (JavaClass from : classes) {
            String name = packageOf(from);
            if (name.isEmpty()) {
                continue;
            }
            from.getDirectDependenciesFromSelf().stream()
                    .map(d -> d.getTargetClass().getBaseComponentType())
                    .filter(t -> t.getPackageName().startsWith("provingyard."))
                    .forEach(t -> {
                        String other = packageOf(t);
                        if (!other.equals(name)
                                && !MAY_KNOW.getOrDefault(name, Set.of()).contains(other)) {
                            wrong.add(name + " must not know " + other + ": " + from.getName() + " -> " + t.getName());
                        }
                    });
        }
        assertTrue(wrong.isEmpty(), () -> String.join("\n", wrong));
    }

    @Test
    void everyPackageIsInTheTableAndSaysWhatItIs() throws IOException {
        Set<String> seen = new TreeSet<>();
        classes.forEach(c -> seen.add(packageOf(c)));
        seen.remove("");
        for (String name : seen) {
            assertTrue(MAY_KNOW.containsKey(name), name + " is missing in the table of allowed arrows");
            Path info = Path.of("src/main/java/provingyard", name.replace('.', '/'), "package-info.java");
            assertTrue(Files.exists(info), info + " is missing");
        }
    }

    @Test
    void onlyTheWindowKnowsJavaFx() {
        noClasses()
                .that()
                .resideInAPackage("provingyard..")
                .and()
                .resideOutsideOfPackage("provingyard.ui..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("javafx..", "org.controlsfx..", "atlantafx..")
                .because("simulation, scoring and reports run without a screen")
                .check(classes);
    }

    @Test
    void theCoreHasNoClockNoDiceAndOnlyRepeatableFunctions() throws IOException {
        List<String> wrong = new ArrayList<>();
        Set<String> core = new TreeSet<>(MAY_KNOW.keySet());
        core.removeAll(List.of("ui", "cli", "report", "picture"));
        String banned = ".*(\\bMath\\.(exp|pow|log|log10|sin|cos|tan|asin|acos|atan|atan2|hypot|cbrt|sinh|cosh|tanh"
                + "|random)\\(|new Random\\(|ThreadLocalRandom|System\\.(currentTimeMillis|nanoTime)|Instant\\.now"
                + "|LocalDate(Time)?\\.now|UUID\\.randomUUID|\\.parallel(Stream)?\\().*";
        for (String name : core) {
            Path folder = Path.of("src/main/java/provingyard", name.replace('.', '/'));
            if (!Files.isDirectory(folder)) {
                continue;
            }
            try (var files = Files.list(folder)) {
                for (Path file :
                        files.filter(f -> f.toString().endsWith(".java")).toList()) {
                    List<String> lines = Files.readAllLines(file);
                    for (int i = 0; i < lines.size(); i++) {
                        String line = lines.get(i).strip();
                        if (!line.startsWith("*") && !line.startsWith("//") && line.matches(banned)) {
                            wrong.add(file + ":" + (i + 1) + ": " + line);
                        }
                    }
                }
            }
        }
        assertTrue(wrong.isEmpty(), () -> "Use numeric.Deterministic or RandomStreams:\n" + String.join("\n", wrong));
    }

    @Test
    void theFlowIsTheSameInTheDocuments() throws IOException {
        for (String file : List.of("README.md", "DEVELOPERS.md")) {
            assertTrue(Files.readString(Path.of(file)).contains(FLOW), file + " does not show the flow: " + FLOW);
        }
    }

    @Test
    void theDevelopersTableIsThisTable() throws IOException {
        StringBuilder table = new StringBuilder("| package | may know |\n| --- | --- |\n");
        MAY_KNOW.forEach((name, others) -> table.append("| `")
                .append(name)
                .append("` | ")
                .append(others.isEmpty() ? "–" : String.join(", ", others))
                .append(" |\n"));
        String guide = Files.readString(Path.of("DEVELOPERS.md"));
        assertTrue(guide.contains(table), () -> "DEVELOPERS.md must contain this table:\n" + table);
        assertEquals(MAY_KNOW.size(), table.toString().lines().count() - 2);
    }

    private static String packageOf(JavaClass type) {
        String name = type.getPackageName();
        if (name.equals("provingyard")) {
            return "";
        }
        String rest = name.substring("provingyard.".length());
        String[] parts = rest.split("\\.");
        return parts[0].equals("world") && parts.length > 1 ? parts[0] + "." + parts[1] : parts[0];
    }
}
