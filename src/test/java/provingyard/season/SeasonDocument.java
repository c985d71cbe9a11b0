package provingyard.season;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import provingyard.scenario.Scenario;
import provingyard.setup.References;
import provingyard.setup.SetUp;

/** A site's document in a test: a tree that can be changed, and read as any file is, so that it is proved valid. */
record SeasonDocument(ObjectNode root) {

    /** JSON that may stand in single quotes. */
    static final JsonMapper JSON =
            JsonMapper.builder().enable(JsonReadFeature.ALLOW_SINGLE_QUOTES).build();

    /** A tree from a text in single or double quotes. */
    static ObjectNode tree(String text) {
        try {
            return (ObjectNode) JSON.readTree(text);
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException(text, e);
        }
    }

    static SeasonDocument of(String text) {
        return new SeasonDocument(tree(text));
    }

    /** A document of its own that can be changed. */
    SeasonDocument copy() {
        return new SeasonDocument(root.deepCopy());
    }

    /** A list by its path, such as {@code /yard/trees}. */
    ArrayNode list(String path) {
        return (ArrayNode) root.at(path);
    }

    /** A part by its path. */
    ObjectNode part(String path) {
        return (ObjectNode) root.at(path);
    }

    Scenario scenario() {
        return References.readWithSite("random.json", root.toString()).orThrow();
    }

    /** The document's textbook set-up. */
    SetUp setUp(Scenario scenario) {
        return References.textbook(scenario).orElseThrow();
    }

    /** The season's first minute. */
    Season season() {
        Scenario scenario = scenario();
        return Season.begin(Site.of(scenario), setUp(scenario));
    }

    /** The season lived to its end. */
    Season lived() {
        Season season = season();
        season.liveToEnd();
        return season;
    }
}
