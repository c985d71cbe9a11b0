package provingyard.scenario;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The shipped catalogue, and a site's own entries laid over it. */
final class Shelf {

    static final String PATH = "shared/reference/catalogue.json";
    static final List<String> SECTIONS = List.of("soils", "plants", "pavings", "nozzles", "pipes");

    private static final ObjectNode TREE = load();

    private Shelf() {}

    /** The shipped catalogue in inner units; a copy. */
    static ObjectNode tree() {
        return TREE.deepCopy();
    }

    /** The shipped catalogue. */
    static Catalogue shipped() {
        Findings findings = new Findings(PATH, SourceMap.NONE, "");
        return Binding.bind(TREE, Catalogue.class, findings);
    }

    /** Reads the catalogue; it was held against its schema when the program was built. */
    private static ObjectNode load() {
        try (InputStream in = Sites.resource(PATH)) {
            LocatedJson json = LocatedJson.read(PATH, new String(in.readAllBytes(), StandardCharsets.UTF_8));
            Findings findings = new Findings(PATH, json.places(), "");
            Form form = Form.load("shared/schema/catalogue.schema.json");
            JsonNode tree = new FormPass(form, findings).run(json.root());
            if (findings.hasErrors()) {
                throw new IllegalStateException(findings.sorted().get(0).line("en"));
            }
            ((ObjectNode) tree).remove("remarks");
            return (ObjectNode) tree;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The shipped catalogue with a site's entries: one with a shipped id takes its place, others follow. */
    static ObjectNode merged(JsonNode own) {
        ObjectNode merged = tree();
        for (String section : SECTIONS) {
            Map<String, JsonNode> entries = new LinkedHashMap<>();
            merged.get(section).forEach(e -> entries.put(e.path("id").asText(), e));
            own.path(section).forEach(e -> entries.put(e.path("id").asText(), e));
            ((ArrayNode) merged.get(section)).removeAll().addAll(entries.values());
        }
        return merged;
    }

    /** Ids of a section of a catalogue. */
    static List<String> ids(JsonNode catalogue, String section) {
        List<String> ids = new ArrayList<>();
        catalogue.path(section).forEach(e -> ids.add(e.path("id").asText()));
        return ids;
    }
}
