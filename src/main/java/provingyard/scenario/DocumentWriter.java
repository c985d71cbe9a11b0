package provingyard.scenario;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import provingyard.quantity.Quantities;

/**
 * Writes records as a document of a form: numbers that are quantities become the shortest text that reads back as the
 * same double; what is absent, or an empty list where that is usual, is left out.
 */
public final class DocumentWriter {

    private static final int WIDTH = 110;
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private DocumentWriter() {}

    /**
     * A record as JSON text.
     *
     * @param form the document's form
     * @param schema relative address of the schema, for editors
     * @param record the document's root record
     */
    public static String write(Form form, String schema, Object record) {
        ObjectNode document = NODES.objectNode();
        document.put("$schema", schema);
        document.setAll(tree(form, record));
        StringBuilder text = new StringBuilder();
        print(document, 0, text);
        return text.append('\n').toString();
    }

    /** A record as a tree of quantities with units. */
    public static ObjectNode tree(Form form, Object record) {
        return (ObjectNode) written(form, form.schema(), Binding.tree(record));
    }

    private static JsonNode written(Form form, JsonNode part, JsonNode value) {
        ObjectNode view = form.view(part, value);
        if (view.has("x-opaque")) {
            return value;
        }
        if (view.has("x-quantity") && value.isNumber()) {
            String text =
                    Quantities.exact(FormPass.dimension(view.get("x-quantity").asText()), value.doubleValue());
            return NODES.textNode(text);
        }
        if (value instanceof ArrayNode array) {
            ArrayNode result = NODES.arrayNode();
            array.forEach(each -> result.add(written(form, view.path("items"), each)));
            return result;
        }
        return value instanceof ObjectNode object ? object(form, view, object) : value;
    }

    private static ObjectNode object(Form form, ObjectNode view, ObjectNode value) {
        ObjectNode result = NODES.objectNode();
        Iterator<Map.Entry<String, JsonNode>> fields = value.fields();
        while (fields.hasNext()) {
            Map.Entry<String, JsonNode> field = fields.next();
            JsonNode part = view.path("properties").path(field.getKey());
            boolean empty = field.getValue().isArray() && field.getValue().isEmpty();
            boolean usuallyEmpty =
                    part.path("default").isArray() && part.path("default").isEmpty();
            if (part.isObject() && !field.getValue().isNull() && !(empty && usuallyEmpty)) {
                result.set(field.getKey(), written(form, part, field.getValue()));
            }
        }
        return result;
    }

    /** Short values stay on one line, longer ones are broken; two spaces a level. */
    private static void print(JsonNode node, int indent, StringBuilder out) {
        String line = oneLine(node);
        if (!node.isContainerNode() || node.isEmpty() || indent > 0 && indent + line.length() <= WIDTH) {
            out.append(line);
            return;
        }
        String inner = "\n" + " ".repeat(indent + 2);
        List<String> names = new ArrayList<>();
        node.fieldNames().forEachRemaining(names::add);
        out.append(node.isObject() ? '{' : '[');
        for (int i = 0; i < node.size(); i++) {
            out.append(i == 0 ? "" : ",").append(inner);
            if (node.isObject()) {
                out.append(quoted(names.get(i))).append(": ");
            }
            print(node.isObject() ? node.get(names.get(i)) : node.get(i), indent + 2, out);
        }
        out.append("\n").append(" ".repeat(indent)).append(node.isObject() ? '}' : ']');
    }

    private static String oneLine(JsonNode node) {
        List<String> parts = new ArrayList<>();
        if (node instanceof ObjectNode object) {
            object.fields().forEachRemaining(f -> parts.add(quoted(f.getKey()) + ": " + oneLine(f.getValue())));
            return "{" + String.join(", ", parts) + "}";
        }
        if (node instanceof ArrayNode array) {
            array.forEach(each -> parts.add(oneLine(each)));
            return "[" + String.join(", ", parts) + "]";
        }
        return node.isTextual() ? quoted(node.asText()) : node.toString();
    }

    private static String quoted(String text) {
        try {
            return Binding.mapperOfRecords().writeValueAsString(text);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a text that is no text", e);
        }
    }
}
