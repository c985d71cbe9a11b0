package provingyard.scenario;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import provingyard.setup.References;
import provingyard.setup.SetUpReader;

/** A value of a wrong kind, anywhere in a site or a set-up, gives problems and never an exception. */
class WrongKindsTest {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Scenario SITE =
            ScenarioReader.read("complete.json", ScenarioReaderTest.complete()).orThrow();

    static Stream<String> wrong() {
        return Stream.of("{\"a\": {\"b\": 1}, \"c\": 2}", "[[{}], 1, \"x\"]", "{}", "[]", "\"x\"", "7", "true", "null");
    }

    /** Pointers of all objects and lists below a node. */
    private static List<String> containers(JsonNode node, String at) {
        List<String> all = new ArrayList<>();
        if (node instanceof ObjectNode object) {
            object.fieldNames().forEachRemaining(n -> all.addAll(below(object.get(n), at + SourceMap.step(n))));
        } else if (node instanceof ArrayNode array) {
            for (int i = 0; i < array.size(); i++) {
                all.addAll(below(array.get(i), at + "/" + i));
            }
        }
        return all;
    }

    private static List<String> below(JsonNode node, String at) {
        List<String> all = containers(node, at);
        if (node.isContainerNode()) {
            all.add(at);
        }
        return all;
    }

    private static JsonNode replaced(JsonNode document, String pointer, JsonNode by) {
        JsonNode copy = document.deepCopy();
        int slash = pointer.lastIndexOf('/');
        JsonNode around = copy.at(pointer.substring(0, slash));
        String name = pointer.substring(slash + 1);
        if (around instanceof ObjectNode object) {
            object.set(name, by);
        } else {
            ((ArrayNode) around).set(Integer.parseInt(name), by);
        }
        return copy;
    }

    @ParameterizedTest
    @MethodSource("wrong")
    void inASite(String wrong) throws IOException {
        JsonNode site = JSON.readTree(ScenarioReaderTest.complete());
        for (String pointer : containers(site, "")) {
            String text = replaced(site, pointer, JSON.readTree(wrong)).toString();
            Read<Scenario> read = assertDoesNotThrow(() -> References.readWithSite("wrong.json", text), pointer);
            assertFalse(read.value() == null && read.errors().isEmpty(), pointer);
        }
    }

    @ParameterizedTest
    @MethodSource("wrong")
    void inASetUp(String wrong) throws IOException {
        JsonNode textbook = SITE.setUps().textbook();
        for (String pointer : containers(textbook, "")) {
            JsonNode spoilt = replaced(textbook, pointer, JSON.readTree(wrong));
            var read = assertDoesNotThrow(() -> SetUpReader.read("wrong.json", spoilt.toString(), SITE), pointer);
            assertFalse(read.value() == null && read.errors().isEmpty(), pointer);
            assertDoesNotThrow(() -> SetUpReader.readChecked("wrong.json", spoilt, SITE), pointer);
        }
    }
}
