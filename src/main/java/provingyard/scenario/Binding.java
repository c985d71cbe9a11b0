package provingyard.scenario;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.BeanDescription;
import com.fasterxml.jackson.databind.DeserializationConfig;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonDeserializer;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.JsonSerializer;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.deser.BeanDeserializerModifier;
import com.fasterxml.jackson.databind.deser.std.StdDelegatingDeserializer;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.type.CollectionType;
import com.fasterxml.jackson.databind.util.StdConverter;
import java.io.IOException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CompletableFuture;
import provingyard.scenario.Problem.Code;

/** Turns a completed tree in inner units into records, strictly. */
public final class Binding {

    private Binding() {}

    /** Gets ready in the background for records of a kind, which takes longer than reading a document. */
    static void prepare(Class<?> type) {
        CompletableFuture.runAsync(() -> Mapper.MAPPER.readerFor(type));
    }

    /**
     * Binds a tree; what does not fit becomes a problem.
     *
     * @return the record, or null
     */
    public static <T> T bind(JsonNode tree, Class<T> type, Findings findings) {
        try {
            return Mapper.MAPPER.treeToValue(tree, type);
        } catch (JsonProcessingException e) {
            findings.error(Code.SCH_BINDING, pointer(e), e.getOriginalMessage());
            return null;
        } catch (RuntimeException e) {
            // A record's own check; whatever it is, an author gets a sentence, not a trace.
            findings.error(Code.SCH_BINDING, "", String.valueOf(e.getMessage()));
            return null;
        }
    }

    private static String pointer(JsonProcessingException e) {
        StringBuilder pointer = new StringBuilder();
        if (e instanceof JsonMappingException mapping) {
            for (JsonMappingException.Reference step : mapping.getPath()) {
                pointer.append(
                        step.getFieldName() == null ? "/" + step.getIndex() : SourceMap.step(step.getFieldName()));
            }
        }
        return pointer.toString();
    }

    /** A record as a tree in inner units, as {@link #bind} takes it. */
    public static JsonNode tree(Object record) {
        return Mapper.MAPPER.valueToTree(record);
    }

    /** The mapper of the document's records. */
    static ObjectMapper mapperOfRecords() {
        return Mapper.MAPPER;
    }

    /** Made when first used, which may be in the background. */
    private static final class Mapper {
        static final ObjectMapper MAPPER = mapper();
    }

    private static ObjectMapper mapper() {
        return JsonMapper.builder()
                .enable(
                        DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES,
                        DeserializationFeature.FAIL_ON_MISSING_CREATOR_PROPERTIES)
                .disable(MapperFeature.ALLOW_COERCION_OF_SCALARS)
                .disable(DeserializationFeature.ACCEPT_FLOAT_AS_INT)
                .addModule(module())
                .build();
    }

    private static SimpleModule module() {
        SimpleModule module = new SimpleModule("provingyard");
        module.addDeserializer(LocalTime.class, reader(p -> LocalTime.parse(p.getText())));
        module.addDeserializer(LocalDate.class, reader(p -> LocalDate.parse(p.getText())));
        module.addDeserializer(DayOfWeek.class, reader(p -> weekday(p.getText())));
        module.addDeserializer(Scenario.ReferenceSetUps.class, reader(Binding::setUps));
        module.addSerializer(LocalTime.class, writer(LocalTime::toString));
        module.addSerializer(LocalDate.class, writer(LocalDate::toString));
        module.addSerializer(DayOfWeek.class, writer(Binding::name));
        module.setDeserializerModifier(new ImmutableLists());
        return module;
    }

    /** The weekday with a name of at least three letters. */
    private static DayOfWeek weekday(String name) {
        for (DayOfWeek day : DayOfWeek.values()) {
            if (name.length() >= 3 && day.name().startsWith(name.toUpperCase(Locale.ROOT))) {
                return day;
            }
        }
        throw new IllegalArgumentException(name);
    }

    /** A weekday as files have it: {@code Mon}. */
    static String name(DayOfWeek day) {
        return day.name().charAt(0) + day.name().substring(1, 3).toLowerCase(Locale.ROOT);
    }

    private static Scenario.ReferenceSetUps setUps(JsonParser parser) throws IOException {
        JsonNode node = parser.readValueAsTree();
        return new Scenario.ReferenceSetUps(object(node.get("careless")), object(node.get("textbook")));
    }

    private static JsonNode object(JsonNode node) {
        return node == null || node.isNull() ? null : node;
    }

    private interface Reading<T> {
        T read(JsonParser parser) throws IOException;
    }

    private static <T> JsonDeserializer<T> reader(Reading<T> reading) {
        return new JsonDeserializer<>() {
            @Override
            public T deserialize(JsonParser parser, DeserializationContext context) throws IOException {
                return reading.read(parser);
            }
        };
    }

    private static <T> JsonSerializer<T> writer(java.util.function.Function<T, String> text) {
        return new JsonSerializer<>() {
            @Override
            public void serialize(T value, JsonGenerator out, SerializerProvider provider) throws IOException {
                out.writeString(text.apply(value));
            }
        };
    }

    /** Lists of a document never change. */
    private static final class ImmutableLists extends BeanDeserializerModifier {
        private static final long serialVersionUID = 1;

        @Override
        public JsonDeserializer<?> modifyCollectionDeserializer(
                DeserializationConfig config, CollectionType type, BeanDescription bean, JsonDeserializer<?> reader) {
            if (!type.hasRawClass(List.class)) {
                return reader;
            }
            return new StdDelegatingDeserializer<Object>(
                    new StdConverter<Object, Object>() {
                        @Override
                        public Object convert(Object value) {
                            List<?> list = (List<?>) value;
                            return List.copyOf(list);
                        }
                    },
                    type,
                    reader);
        }
    }
}
