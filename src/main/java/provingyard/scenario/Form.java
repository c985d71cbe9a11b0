package provingyard.scenario;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.PathType;
import com.networknt.schema.SchemaValidatorsConfig;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.IdentityHashMap;
import java.util.Iterator;
import java.util.Map;

/**
 * The form of one kind of document: a draft-07 schema with our own keywords.
 *
 * <ul>
 *   <li>{@code x-quantity}: a text with a unit, of the named dimension; {@code x-min}, {@code x-max} its range
 *   <li>{@code x-id}, {@code x-ref}: declares, or names, an id of a kind
 *   <li>{@code x-absent}: may be left out and is then nothing
 *   <li>{@code x-text}: a text in both languages
 *   <li>{@code x-place}: points that lie on the yard
 *   <li>{@code x-opaque}: read by somebody else
 * </ul>
 */
public final class Form {

    private final JsonNode schema;
    /** Made when first asked for: it costs more than reading a document. */
    private JsonSchema validator;

    /** Views that no value decides, by the identity of their part; never changed after loading. */
    private final Map<JsonNode, ObjectNode> views = new IdentityHashMap<>();

    private Form(JsonNode schema) {
        this.schema = schema;
        keepViews(schema);
    }

    private void keepViews(JsonNode part) {
        if (part.isObject() && !decided(part)) {
            views.put(part, joined(part, null));
        }
        part.forEach(this::keepViews);
    }

    /** Whether a value decides what the part says. */
    private boolean decided(JsonNode part) {
        boolean decided =
                part.has("$ref") && decided(definition(part.get("$ref").asText()));
        for (JsonNode each : part.path("allOf")) {
            decided |= each.has("if") || decided(each);
        }
        return decided;
    }

    /**
     * Loads a schema of the program's own.
     *
     * @param path resource such as {@code shared/schema/scenario.schema.json}
     */
    public static Form load(String path) {
        try (InputStream in = Sites.resource(path)) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            ObjectNode schema = (ObjectNode) LocatedJson.read(path, text).root();
            // Editors resolve the relative $id; the validator wants an absolute one, and needs none.
            schema.remove("$id");
            return new Form(schema);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The schema's root. */
    JsonNode schema() {
        return schema;
    }

    /** The validator of the standard keywords. */
    synchronized JsonSchema validator() {
        if (validator == null) {
            SchemaValidatorsConfig config = SchemaValidatorsConfig.builder()
                    .pathType(PathType.JSON_POINTER)
                    .build();
            validator =
                    JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V7).getSchema(schema, config);
        }
        return validator;
    }

    /**
     * What the schema says about a value: references followed, parts that apply joined.
     *
     * @param part a part of the schema
     * @param instance the value, which decides between alternatives by its kind; may be null
     */
    ObjectNode view(JsonNode part, JsonNode instance) {
        ObjectNode known = views.get(part);
        return known != null ? known : joined(part, instance);
    }

    private ObjectNode joined(JsonNode part, JsonNode instance) {
        ObjectNode view = JsonNodeFactory.instance.objectNode().setAll((ObjectNode) part);
        JsonNode reference = view.remove("$ref");
        if (reference != null) {
            join(view, view(definition(reference.asText()), instance));
        }
        JsonNode all = view.remove("allOf");
        if (all != null) {
            for (JsonNode each : all) {
                JsonNode applies = each.has("if") ? chosen(each, instance) : each;
                if (applies != null) {
                    join(view, view(applies, instance));
                }
            }
        }
        return view;
    }

    private static JsonNode chosen(JsonNode branch, JsonNode instance) {
        JsonNode wanted = branch.at("/if/properties/kind/const");
        boolean same = instance != null && wanted.equals(instance.get("kind"));
        return same ? branch.get("then") : null;
    }

    private JsonNode definition(String reference) {
        return schema.at(reference.substring(1));
    }

    private static void join(ObjectNode into, ObjectNode from) {
        Iterator<Map.Entry<String, JsonNode>> fields = from.fields();
        while (fields.hasNext()) {
            Map.Entry<String, JsonNode> field = fields.next();
            JsonNode mine = into.get(field.getKey());
            if (mine == null) {
                into.set(field.getKey(), field.getValue());
            } else if (mine instanceof ObjectNode object && field.getKey().equals("properties")) {
                // The parts of a view belong to the schema and are not changed.
                ObjectNode both = JsonNodeFactory.instance.objectNode().setAll(object);
                into.set("properties", both.setAll((ObjectNode) field.getValue()));
            }
        }
    }

    /** What the schema says about the value at a pointer of a document; null where it says nothing. */
    ObjectNode viewAt(JsonNode document, String pointer) {
        ObjectNode view = view(schema, document);
        JsonNode value = document;
        for (String step :
                pointer.isEmpty() ? new String[0] : pointer.substring(1).split("/", -1)) {
            String name = step.replace("~1", "/").replace("~0", "~");
            JsonNode part;
            if (value instanceof ArrayNode array) {
                value = array.get(Integer.parseInt(name));
                part = view.get("items");
            } else {
                value = value == null ? null : value.get(name);
                part = view.path("properties").get(name);
            }
            if (!(part instanceof ObjectNode)) {
                return null;
            }
            view = view(part, value);
        }
        return view;
    }
}
