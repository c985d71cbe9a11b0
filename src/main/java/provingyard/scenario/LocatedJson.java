package provingyard.scenario;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
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

    /** One reading. */
    private record Pass(String text, SourceMap places, Findings findings) {

        JsonNode root() {
            try (JsonParser parser = FACTORY.createParser(text)) {
                if (parser.nextToken() == null) {
                    findings.error(Code.SYN_EMPTY, "", "");
                    return null;
                }
                JsonNode root = value(parser, "");
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

        private JsonNode value(JsonParser parser, String pointer) throws IOException {
            JsonLocation at = parser.currentTokenLocation();
            places.value(pointer, at.getLineNr(), at.getColumnNr());
            return switch (parser.currentToken()) {
                case START_OBJECT -> object(parser, pointer);
                case START_ARRAY -> array(parser, pointer);
                case VALUE_STRING -> NODES.textNode(parser.getText());
                case VALUE_NUMBER_INT -> integer(parser);
                case VALUE_NUMBER_FLOAT -> NODES.numberNode(parser.getDoubleValue());
                case VALUE_TRUE -> NODES.booleanNode(true);
                case VALUE_FALSE -> NODES.booleanNode(false);
                default -> NODES.nullNode();
            };
        }

        private static JsonNode integer(JsonParser parser) throws IOException {
            return switch (parser.getNumberType()) {
                case INT -> NODES.numberNode(parser.getIntValue());
                case LONG -> NODES.numberNode(parser.getLongValue());
                default -> NODES.numberNode(parser.getBigIntegerValue());
            };
        }

        private JsonNode object(JsonParser parser, String pointer) throws IOException {
            ObjectNode object = NODES.objectNode();
            while (parser.nextToken() == JsonToken.FIELD_NAME) {
                String name = parser.currentName();
                JsonLocation at = parser.currentTokenLocation();
                String child = pointer + SourceMap.step(name);
                if (object.has(name)) {
                    findings.error(Code.SYN_DUPLICATE, spot(at), child, name);
                }
                places.key(child, at.getLineNr(), at.getColumnNr());
                parser.nextToken();
                object.set(name, value(parser, child));
            }
            return object;
        }

        private JsonNode array(JsonParser parser, String pointer) throws IOException {
            ArrayNode array = NODES.arrayNode();
            while (parser.nextToken() != JsonToken.END_ARRAY) {
                array.add(value(parser, pointer + "/" + array.size()));
            }
            return array;
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
