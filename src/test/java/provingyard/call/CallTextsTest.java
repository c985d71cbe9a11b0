package provingyard.call;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import provingyard.text.Texts;

/** Keys of texts that are made from the names of tests, answers and tools. */
class CallTextsTest {

    private static final Set<Tool> HANDS_ON = Set.of(Tool.MULTIMETER, Tool.RECORDS, Tool.SENSOR_CHECK);

    @Test
    void testsAnswersAndToolsHaveTheirTexts() {
        Texts texts = Texts.of("call", "en");
        Set<String> missing = new TreeSet<>();
        Set<String> kinds = new TreeSet<>(Set.of(SensorKit.FLOW, SensorKit.TESTER));
        for (FieldTest test : CallSites.of("quillback-clinic", 14).tests()) {
            if (HANDS_ON.contains(test.tool())) {
                kinds.add(test.kind());
            }
            if (kinds.contains(test.kind()) && test.measure() instanceof FieldTest.Measure.Answers answers) {
                answers.keys().stream()
                        .map(k -> "answer." + k)
                        .filter(k -> !texts.has(k))
                        .forEach(missing::add);
            }
        }
        for (String kind : kinds) {
            Set.of("test." + kind + ".name", "test." + kind + ".does").stream()
                    .filter(k -> !texts.has(k))
                    .forEach(missing::add);
        }
        for (Tool tool : Tool.values()) {
            if (!texts.has("tool." + tool.name())) {
                missing.add("tool." + tool.name());
            }
        }
        assertTrue(kinds.size() >= 14, kinds.toString());
        assertTrue(missing.isEmpty(), missing.toString());
    }
}
