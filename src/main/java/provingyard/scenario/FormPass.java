package provingyard.scenario;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import provingyard.quantity.Dimension;
import provingyard.quantity.Parsed;
import provingyard.quantity.Parsed.Refused;
import provingyard.quantity.Parsed.Value;
import provingyard.quantity.Quantities;
import provingyard.scenario.Problem.Code;

/**
 * Goes through a document with its form: turns quantities into numbers of the inner unit, fills in what was left out
 * and says so, and gathers ids, references and places. Wrong values become null and a problem.
 */
final class FormPass {

    /** An id that is declared or named. */
    record Name(String kind, String id, String pointer) {}

    /** A point that should lie on the yard. */
    record OnYard(double x, double y, String pointer) {}

    private static final Map<String, Dimension> DIMENSIONS =
            Arrays.stream(Dimension.values()).collect(Collectors.toMap(d -> camelCase(d.name()), d -> d));
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final Form form;
    private final Findings findings;
    private final List<Name> ids = new ArrayList<>();
    private final List<Name> references = new ArrayList<>();
    private final List<OnYard> onYard = new ArrayList<>();
    private final Map<String, Double> limits = new HashMap<>();

    FormPass(Form form, Findings findings) {
        this.form = form;
        this.findings = findings;
    }

    List<Name> ids() {
        return ids;
    }

    List<Name> references() {
        return references;
    }

    List<OnYard> onYard() {
        return onYard;
    }

    /** The document completed and in inner units. */
    JsonNode run(JsonNode document) {
        return value(form.schema(), document, "");
    }

    private JsonNode value(JsonNode part, JsonNode value, String pointer) {
        ObjectNode view = form.view(part, value);
        if (view.has("x-opaque")) {
            return value;
        }
        gather(view, value, pointer);
        if (view.has("x-quantity")) {
            return value.isTextual() ? quantity(view, value.asText(), pointer) : NODES.nullNode();
        }
        JsonNode result = view.path("type").asText().equals("integer") ? integer(value) : value;
        if (value.isObject() && view.has("properties")) {
            result = object(view, (ObjectNode) value, pointer);
        } else if (value.isArray() && view.has("items")) {
            result = array(view, (ArrayNode) value, pointer);
        }
        if (view.has("x-place")) {
            place(result, pointer);
        }
        return result;
    }

    /** A whole number that was written with a point or an exponent, which a schema allows. */
    private static JsonNode integer(JsonNode value) {
        boolean whole = value.isDouble() && value.doubleValue() == Math.rint(value.doubleValue());
        return whole && value.canConvertToLong() ? NODES.numberNode(value.longValue()) : value;
    }

    private void gather(ObjectNode view, JsonNode value, String pointer) {
        if (value.isTextual() && view.has("x-id")) {
            ids.add(new Name(view.get("x-id").asText(), value.asText(), pointer));
        }
        if (value.isTextual() && view.has("x-ref")) {
            references.add(new Name(view.get("x-ref").asText(), value.asText(), pointer));
        }
        if (value.isTextual() && view.has("x-date") && !isDate(value.asText())) {
            findings.error(Code.SCH_DATE, pointer, value.asText());
        }
        if (value.isObject()
                && view.has("x-text")
                && value.path("es").asText("").isBlank()) {
            findings.warn(Code.TXT_SPANISH, pointer, value.path("en").asText(""));
        }
    }

    private static boolean isDate(String text) {
        try {
            LocalDate.parse(text);
            return true;
        } catch (DateTimeException e) {
            return false;
        }
    }

    private ObjectNode object(ObjectNode view, ObjectNode value, String pointer) {
        ObjectNode result = NODES.objectNode();
        List<String> filled = new ArrayList<>();
        Iterator<Map.Entry<String, JsonNode>> properties =
                view.get("properties").fields();
        while (properties.hasNext()) {
            Map.Entry<String, JsonNode> property = properties.next();
            String name = property.getKey();
            JsonNode given = value.get(name);
            boolean aside = name.equals("$schema") || name.equals("remarks") && !pointer.isEmpty();
            if (!aside) {
                JsonNode usual = form.view(property.getValue(), given).get("default");
                if (given == null && usual != null && usual.isValueNode()) {
                    filled.add(name + " " + usual.asText());
                }
                JsonNode taken = given != null ? given : usual != null ? usual : NODES.nullNode();
                result.set(name, value(property.getValue(), taken, pointer + SourceMap.step(name)));
            }
        }
        if (!filled.isEmpty()) {
            findings.add(Severity.NOTE, Code.DEF_FILLED, pointer, String.join(", ", filled), List.of(), "");
        }
        return result;
    }

    private ArrayNode array(ObjectNode view, ArrayNode value, String pointer) {
        ArrayNode result = NODES.arrayNode();
        for (int i = 0; i < value.size(); i++) {
            result.add(value(view.get("items"), value.get(i), pointer + "/" + i));
        }
        return result;
    }

    private void place(JsonNode value, String pointer) {
        if (value.isArray()
                && value.size() == 2
                && value.get(0).isNumber()
                && value.get(1).isNumber()) {
            onYard.add(new OnYard(value.get(0).doubleValue(), value.get(1).doubleValue(), pointer));
        } else if (value.isArray()) {
            for (int i = 0; i < value.size(); i++) {
                if (value.get(i).isArray()) {
                    place(value.get(i), pointer + "/" + i);
                }
            }
        }
    }

    private JsonNode quantity(ObjectNode view, String text, String pointer) {
        Dimension dimension = dimension(view.get("x-quantity").asText());
        Parsed parsed = Quantities.parse(dimension, text);
        if (parsed instanceof Refused refused) {
            refuse(refused, dimension, text, pointer);
            return NODES.nullNode();
        }
        double inner = ((Value) parsed).inner();
        String low = view.path("x-min").asText("");
        String high = view.path("x-max").asText("");
        if (!low.isEmpty() && inner < inner(dimension, low) || !high.isEmpty() && inner > inner(dimension, high)) {
            findings.error(Code.QTY_RANGE, pointer, text, low, high);
        }
        return NODES.numberNode(inner);
    }

    private void refuse(Refused refused, Dimension dimension, String text, String pointer) {
        Code code =
                switch (refused.reason()) {
                    case EMPTY, NO_NUMBER -> Code.QTY_NUMBER;
                    case COMMA -> Code.QTY_COMMA;
                    case NO_UNIT -> Code.QTY_NO_UNIT;
                    case UNKNOWN_UNIT -> Code.QTY_UNIT;
                    case TOO_LONG, ZERO_DENOMINATOR, NOT_FINITE -> Code.QTY_SIZE;
                };
        String units = String.join(", ", Quantities.symbols(dimension));
        List<String> details = List.of(refused.found(), units, Quantities.example(dimension));
        findings.add(Severity.ERROR, code, pointer, text, details, refused.maybe());
    }

    private double inner(Dimension dimension, String limit) {
        return limits.computeIfAbsent(dimension + limit, key -> limit(dimension, limit));
    }

    private static double limit(Dimension dimension, String limit) {
        if (Quantities.parse(dimension, limit) instanceof Value value) {
            return value.inner();
        }
        throw new IllegalStateException("the schema's limit is no quantity: " + limit);
    }

    private static String camelCase(String constant) {
        StringBuilder name = new StringBuilder();
        for (String word : constant.toLowerCase(Locale.ROOT).split("_")) {
            name.append(name.isEmpty() ? word : word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1));
        }
        return name.toString();
    }

    /** The dimension that a schema names, in camel case. */
    static Dimension dimension(String name) {
        Dimension dimension = DIMENSIONS.get(name);
        if (dimension == null) {
            throw new IllegalStateException("the schema names no dimension: " + name);
        }
        return dimension;
    }
}
