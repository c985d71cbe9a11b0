package provingyard.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import provingyard.quantity.Dimension;
import provingyard.quantity.In;
import provingyard.quantity.Parsed;
import provingyard.quantity.Quantities;
import provingyard.setup.Placement;
import provingyard.setup.SetUp;
import provingyard.setup.SetUpReader;

/** Schemas and records say the same, both ways. */
class SchemaAgreesTest {

    private final List<String> differences = new ArrayList<>();

    @Test
    void scenarioAgreesWithItsRecords() {
        compare(ScenarioReader.form(), ScenarioReader.form().schema(), null, Scenario.class, "Scenario");
        assertEquals(List.of(), differences);
    }

    @Test
    void setUpAgreesWithItsRecords() {
        Form form = SetUpReader.form();
        compare(form, form.schema(), null, SetUp.class, "SetUp");
        for (Class<?> kind : Placement.class.getPermittedSubclasses()) {
            ObjectNode instance = com.fasterxml.jackson.databind.node.JsonNodeFactory.instance.objectNode();
            instance.put("kind", kind.getSimpleName().toLowerCase(Locale.ROOT));
            compare(form, form.schema().at("/definitions/placement"), instance, kind, kind.getSimpleName());
        }
        assertEquals(List.of(), differences);
    }

    @Test
    void catalogueAgreesWithItsRecords() {
        Form form = Form.load("shared/schema/catalogue.schema.json");
        compare(form, form.schema(), null, Catalogue.class, "Catalogue");
        assertEquals(List.of(), differences);
    }

    @Test
    void schemasAreDraft7AndDescribeEveryProperty() {
        for (String name : List.of("scenario", "setup", "catalogue")) {
            Form form = Form.load("shared/schema/" + name + ".schema.json");
            var meta = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V7)
                    .getSchema(com.networknt.schema.SchemaLocation.of("http://json-schema.org/draft-07/schema#"));
            assertEquals(Set.of(), meta.validate(form.schema()), name);
            described(form, form.schema(), name);
            form.schema()
                    .path("definitions")
                    .fields()
                    .forEachRemaining(d -> described(form, d.getValue(), name + " " + d.getKey()));
        }
        assertEquals(List.of(), differences);
    }

    private void described(Form form, JsonNode part, String at) {
        part.path("properties").fields().forEachRemaining(p -> {
            ObjectNode view = form.view(p.getValue(), null);
            for (String needed : List.of("title", "description", "examples")) {
                if (!view.has(needed)) {
                    differences.add(at + "." + p.getKey() + " has no " + needed);
                }
            }
            boolean bounded =
                    !view.path("type").asText().matches("number|integer") || view.has("minimum") && view.has("maximum");
            boolean ranged = !view.has("x-quantity") || view.has("x-min") && view.has("x-max");
            if (!bounded || !ranged) {
                differences.add(at + "." + p.getKey() + " has no range");
            }
            examples(view, at + "." + p.getKey());
        });
    }

    /** Examples and usual values of quantities can be read and lie in their range. */
    private void examples(ObjectNode view, String at) {
        if (!view.has("x-quantity")) {
            return;
        }
        Dimension dimension = FormPass.dimension(view.get("x-quantity").asText());
        double low = inner(dimension, view.get("x-min"), at);
        double high = inner(dimension, view.get("x-max"), at);
        double example = inner(dimension, view.get("examples").get(0), at);
        double usual = view.has("default") ? inner(dimension, view.get("default"), at) : low;
        if (!(low <= example && example <= high && low <= usual && usual <= high)) {
            differences.add(at + " has an example or a usual value out of its range");
        }
    }

    private double inner(Dimension dimension, JsonNode text, String at) {
        if (Quantities.parse(dimension, text.asText()) instanceof Parsed.Value value) {
            return value.inner();
        }
        differences.add(at + ": " + text + " is no quantity");
        return Double.NaN;
    }

    private void compare(Form form, JsonNode part, JsonNode instance, Class<?> record, String at) {
        ObjectNode view = form.view(part, instance);
        Set<String> components = new TreeSet<>();
        for (RecordComponent component : record.getRecordComponents()) {
            components.add(component.getName());
            JsonNode property = view.path("properties").get(component.getName());
            if (property == null) {
                differences.add(at + "." + component.getName() + " is not in the schema");
            } else {
                type(
                        form,
                        property,
                        component.getGenericType(),
                        component.getAnnotation(In.class),
                        at + "." + component.getName());
            }
        }
        view.path("properties").fieldNames().forEachRemaining(name -> {
            boolean aside = name.equals("remarks") || name.equals("$schema") || name.equals("kind") && instance != null;
            if (!components.contains(name) && !aside) {
                differences.add(at + "." + name + " is not in the record");
            }
        });
    }

    private void type(Form form, JsonNode part, Type type, In in, String at) {
        ObjectNode view = form.view(part, null);
        String quantity = view.path("x-quantity").asText("");
        String wanted = in == null ? "" : camel(in.value().name());
        boolean matches = quantity.equals(wanted);
        if (!matches) {
            differences.add(at + ": quantity '" + quantity + "', record '" + wanted + "'");
        }
        if (type instanceof ParameterizedType list) {
            expect(view, "array", at);
            type(form, view.get("items"), list.getActualTypeArguments()[0], null, at + "[]");
        } else if (type == Point.class || type == Schedule.Window.class) {
            expect(view, "array", at);
            boolean point = "length".equals(view.at("/items/x-quantity").asText());
            assertEquals(type == Point.class, point, at);
        } else if (type == Placement.class) {
            assertTrue(view.has("x-by"), at);
        } else if (type instanceof Class<?> plain && plain.isRecord()) {
            expect(view, "object", at);
            compare(form, part, null, plain, at);
        } else if (type instanceof Class<?> plain && plain.isEnum()) {
            choices(view, plain, at);
        } else if (wanted.isEmpty()) {
            simple(view, (Class<?>) type, at);
        } else {
            expect(view, "string", at);
        }
    }

    private void simple(ObjectNode view, Class<?> type, String at) {
        if (type == boolean.class) {
            expect(view, "boolean", at);
        } else if (type == int.class || type == long.class || type == Integer.class) {
            expect(view, "integer", at);
        } else if (type == double.class || type == Double.class) {
            expect(view, "number", at);
        } else if (type == String.class) {
            assertTrue(
                    view.has("enum")
                            || view.has("const")
                            || view.path("type").asText().equals("string"),
                    at);
        } else if (type == LocalTime.class || type == LocalDate.class) {
            expect(view, "string", at);
        } else {
            expect(view, "object", at);
        }
    }

    private void choices(ObjectNode view, Class<?> type, String at) {
        Set<String> allowed = new TreeSet<>();
        view.path("enum").forEach(e -> allowed.add(e.asText()));
        Set<String> constants = new TreeSet<>();
        for (Object constant : type.getEnumConstants()) {
            constants.add(constant instanceof DayOfWeek day ? Binding.name(day) : camel(((Enum<?>) constant).name()));
        }
        if (type == DayOfWeek.class) {
            // Full names are another spelling of the same day.
            allowed.removeIf(name -> name.length() > 3);
        }
        if (!allowed.equals(constants)) {
            differences.add(at + ": schema " + allowed + ", record " + constants);
        }
    }

    private void expect(ObjectNode view, String type, String at) {
        if (!view.path("type").asText().equals(type)) {
            differences.add(at + ": type '" + view.path("type").asText() + "', wanted '" + type + "'");
        }
    }

    private static String camel(String constant) {
        StringBuilder name = new StringBuilder();
        for (String word : constant.toLowerCase(Locale.ROOT).split("_")) {
            name.append(name.isEmpty() ? word : Character.toUpperCase(word.charAt(0)) + word.substring(1));
        }
        return name.toString();
    }
}
