package provingyard.scenario;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ContainerNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import provingyard.scenario.Problem.Code;
import provingyard.scenario.SourceMap.Spot;

/**
 * A JSON text as a tree whose values know where they stand. Strict JSON (RFC 8259), within limits, so that no text can
 * cost more than a fixed amount of work for each of its characters.
 *
 * @param root the tree, or null when the text is no JSON
 * @param places where each value stands
 * @param problems syntax errors; doubled property names are collected, other errors end the reading
 */
public record LocatedJson(JsonNode root, SourceMap places, List<Problem> problems) {

    /** Longest text, in characters. */
    public static final int LONGEST = 5_000_000;

    /** Deepest nesting of objects and arrays. */
    public static final int DEEPEST = 50;

    private static final int LONGEST_STRING = 100_000;
    private static final int LONGEST_NUMBER = 50;
    private static final int LONGEST_NAME = 1000;
    private static final long MOST_TOKENS = 500_000;
    private static final int SNIPPET = 24;
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final JsonFactory FACTORY = JsonFactory.builder()
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(DEEPEST)
                    .maxStringLength(LONGEST_STRING)
                    .maxNumberLength(LONGEST_NUMBER)
                    .maxNameLength(LONGEST_NAME)
                    .maxDocumentLength(LONGEST + 1L)
                    .maxTokenCount(MOST_TOKENS)
                    .build())
            .build();

    /** Reads a text. */
    public static LocatedJson read(String file, String text) {
        SourceMap places = new SourceMap();
        Findings findings = new Findings(file, places, "");
        String plain = text.startsWith("\ufeff") ? text.substring(1) : text;
        if (plain.length() > LONGEST) {
            findings.error(Code.SYN_LIMIT, "", plain.length() + "", "5 MB");
            return new LocatedJson(null, places, findings.sorted());
        }
        JsonNode root = new Pass(plain, places, findings).root();
        return new LocatedJson(findings.hasErrors() && root == null ? null : root, places, findings.sorted());
    }

    /** An object or array that is being read. */
    private static final class Open {
        private final ContainerNode<?> node;
        private final String pointer;
        private String name;

        Open(ContainerNode<?> node, String pointer) {
            this.node = node;
            this.pointer = pointer;
        }

        /** Pointer of the next value. */
        String next() {
            return pointer + (name == null ? "/" + node.size() : SourceMap.step(name));
        }

        void take(JsonNode value) {
            if (node instanceof ArrayNode array) {
                array.add(value);
            } else {
                ((ObjectNode) node).set(name, value);
            }
        }
    }

    /** One reading. */
    private record Pass(String text, SourceMap places, Findings findings) {

        JsonNode root() {
            try (JsonParser parser = FACTORY.createParser(text)) {
                if (parser.nextToken() == null) {
                    findings.error(Code.SYN_EMPTY, "", "");
                    return null;
                }
                JsonNode root = value(parser);
                if (parser.nextToken() != null) {
                    Spot spot = spot(parser.currentTokenLocation());
                    findings.error(Code.SYN_TRAILING, spot, "", snippet(parser.currentTokenLocation()));
                }
                return root;
            } catch (StreamConstraintsException e) {
                JsonLocation at = e.getLocation();
                findings.error(Code.SYN_LIMIT, spot(at), "", snippet(at), "50");
            } catch (JsonEOFException e) {
                findings.error(Code.SYN_ENDS_EARLY, spot(e.getLocation()), "", "");
            } catch (JsonProcessingException e) {
                notJson(e.getLocation());
            } catch (IOException e) {
                findings.error(Code.SYN_NOT_JSON, "", "");
            }
            return null;
        }

        private void notJson(JsonLocation at) {
            int offset = offset(at);
            String rest = text.substring(Math.min(offset, text.length()));
            String before = text.substring(0, Math.min(offset, text.length())).stripTrailing();
            Code code = Code.SYN_NOT_JSON;
            if (rest.startsWith("//") || rest.startsWith("/*") || rest.startsWith("#")) {
                code = Code.SYN_COMMENT;
            } else if ((rest.startsWith("}") || rest.startsWith("]")) && before.endsWith(",")) {
                code = Code.SYN_COMMA;
            }
            findings.error(code, spot(at), "", snippet(at));
        }

        /**
         * The value that begins at the parser's token, with all that it holds. One loop with the open objects and arrays on a
         * stack: a method that calls itself costs a start half a second of compiling.
         */
        private JsonNode value(JsonParser parser) throws IOException {
            Deque<Open> open = new ArrayDeque<>();
            JsonNode root = null;
            do {
                switch (parser.currentToken()) {
                    case FIELD_NAME -> name(parser, open.element());
                    case END_OBJECT, END_ARRAY -> open.pop();
                    default -> {
                        String pointer = open.isEmpty() ? "" : open.element().next();
                        JsonNode value = begin(parser, pointer);
                        if (open.isEmpty()) {
                            root = value;
                        } else {
                            open.element().take(value);
                        }
                        if (value instanceof ContainerNode<?> container) {
                            open.push(new Open(container, pointer));
                        }
                    }
                }
            } while (!open.isEmpty() && parser.nextToken() != null);
            return root;
        }

        private void name(JsonParser parser, Open object) throws IOException {
            String name = parser.currentName();
            JsonLocation at = parser.currentTokenLocation();
            String child = object.pointer + SourceMap.step(name);
            if (object.node.has(name)) {
                findings.error(Code.SYN_DUPLICATE, spot(at), child, name);
            }
            places.key(child, at.getLineNr(), at.getColumnNr());
            object.name = name;
        }

        /** A value without what it holds. */
        private JsonNode begin(JsonParser parser, String pointer) throws IOException {
            JsonLocation at = parser.currentTokenLocation();
            places.value(pointer, at.getLineNr(), at.getColumnNr());
            return switch (parser.currentToken()) {
                case START_OBJECT -> NODES.objectNode();
                case START_ARRAY -> NODES.arrayNode();
                case VALUE_STRING -> NODES.textNode(parser.getText());
                case VALUE_NUMBER_INT -> integer(parser);
                case VALUE_NUMBER_FLOAT -> decimal(parser, pointer);
                case VALUE_TRUE -> NODES.booleanNode(true);
                case VALUE_FALSE -> NODES.booleanNode(false);
                default -> NODES.nullNode();
            };
        }

        private JsonNode decimal(JsonParser parser, String pointer) throws IOException {
            double value = parser.getDoubleValue();
            if (Double.isInfinite(value)) {
                findings.error(Code.SYN_NUMBER, pointer, parser.getText());
                return NODES.nullNode();
            }
            return NODES.numberNode(value);
        }

        private static JsonNode integer(JsonParser parser) throws IOException {
            return switch (parser.getNumberType()) {
                case INT -> NODES.numberNode(parser.getIntValue());
                case LONG -> NODES.numberNode(parser.getLongValue());
                default -> NODES.numberNode(parser.getBigIntegerValue());
            };
        }

        private static Spot spot(JsonLocation at) {
            return at == null ? new Spot(1, 1) : new Spot(Math.max(1, at.getLineNr()), Math.max(1, at.getColumnNr()));
        }

        /** Offset of the character that the location means; the parser stands just behind an odd one. */
        private int offset(JsonLocation at) {
            if (at == null || at.getCharOffset() < 0) {
                return 0;
            }
            return (int) Math.min(at.getCharOffset(), text.length());
        }

        private String snippet(JsonLocation at) {
            int from = offset(at);
            String rest = text.substring(from, Math.min(text.length(), from + SNIPPET));
            return rest.lines().findFirst().orElse("").strip();
        }
    }
}
