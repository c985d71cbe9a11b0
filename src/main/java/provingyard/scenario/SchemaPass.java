package provingyard.scenario;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.ValidationMessage;
import java.util.ArrayList;
import java.util.List;
import provingyard.quantity.Nearest;
import provingyard.scenario.Problem.Code;

/** Checks a document against the standard keywords of its form, and says in our own words what is wrong. */
final class SchemaPass {

    private final Form form;
    private final JsonNode document;
    private final Findings findings;

    SchemaPass(Form form, JsonNode document, Findings findings) {
        this.form = form;
        this.document = document;
        this.findings = findings;
    }

    void run() {
        for (ValidationMessage message : form.validator().validate(document)) {
            say(message);
        }
    }

    private void say(ValidationMessage message) {
        String pointer = message.getInstanceLocation().toString();
        JsonNode value = document.at(pointer);
        String found = value.isValueNode() ? value.asText() : kind(value);
        ObjectNode view = form.viewAt(document, pointer);
        JsonNode rules = view == null ? form.schema() : view;
        switch (message.getType()) {
            case "additionalProperties" -> unknown(pointer, message.getProperty(), rules);
            case "required" -> findings.error(Code.SCH_MISSING, pointer, message.getProperty());
            case "type" ->
                findings.error(
                        Code.SCH_KIND, pointer, shown(value), rules.path("type").asText());
            case "enum" -> choice(pointer, found, rules.path("enum"));
            case "const" ->
                findings.error(
                        Code.SCH_CHOICE, pointer, found, rules.path("const").asText());
            case "minimum", "maximum" ->
                findings.error(
                        Code.SCH_RANGE,
                        pointer,
                        found,
                        rules.path("minimum").asText(),
                        rules.path("maximum").asText());
            case "pattern" ->
                findings.error(
                        Code.SCH_PATTERN, pointer, found, rules.path("pattern").asText());
            case "minItems", "maxItems" ->
                findings.error(
                        Code.SCH_COUNT,
                        pointer,
                        value.size() + "",
                        rules.path("minItems").asText("0"),
                        rules.path("maxItems").asText());
            case "minLength", "maxLength" ->
                findings.error(
                        Code.SCH_LENGTH,
                        pointer,
                        found,
                        rules.path("minLength").asText("0"),
                        rules.path("maxLength").asText());
            case "uniqueItems" -> findings.error(Code.SCH_TWICE, pointer, found);
            default -> findings.error(Code.SCH_RULE, pointer, found, message.getType());
        }
    }

    private void unknown(String pointer, String name, JsonNode rules) {
        List<String> known = new ArrayList<>();
        rules.path("properties").fieldNames().forEachRemaining(known::add);
        String maybe = Nearest.of(name, known).orElse("");
        findings.errorAtKey(
                Code.SCH_UNKNOWN, pointer + SourceMap.step(name), name, List.of(String.join(", ", known)), maybe);
    }

    private void choice(String pointer, String found, JsonNode choices) {
        List<String> names = new ArrayList<>();
        choices.forEach(c -> names.add(c.asText()));
        findings.add(
                Severity.ERROR,
                Code.SCH_CHOICE,
                pointer,
                found,
                List.of(String.join(", ", names)),
                Nearest.of(found, names).orElse(""));
    }

    private static String shown(JsonNode value) {
        return value.isTextual() ? '"' + value.asText() + '"' : value.isValueNode() ? value.asText() : kind(value);
    }

    private static String kind(JsonNode value) {
        return value.isObject() ? "{\u2026}" : value.isArray() ? "[\u2026]" : value.asText();
    }
}
