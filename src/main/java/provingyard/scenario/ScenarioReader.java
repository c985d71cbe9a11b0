package provingyard.scenario;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

/**
 * Reads a site. All problems are collected in five steps: syntax, form (schema), quantities and texts, references and
 * geometry, plausibility; then the tree becomes records.
 */
public final class ScenarioReader {

    private static final Form FORM = Form.load("shared/schema/scenario.schema.json");

    private ScenarioReader() {}

    /** The form of a site's document. */
    public static Form form() {
        return FORM;
    }

    /**
     * Reads a site.
     *
     * @param fileName how messages name the file
     * @param text its text
     * @return the site, or null when a problem is an error; and all problems
     */
    public static Read<Scenario> read(String fileName, String text) {
        return read(fileName, text, true);
    }

    /**
     * Reads a document that is part of the program: it was held against the schema when the program was built, and is
     * only held against it again if anything else is wrong with it.
     */
    static Read<Scenario> readShipped(String fileName, String text) {
        Read<Scenario> read = read(fileName, text, false);
        return read.value() == null ? read(fileName, text) : read;
    }

    private static Read<Scenario> read(String fileName, String text, boolean againstSchema) {
        LocatedJson json = LocatedJson.read(fileName, text);
        if (json.root() == null) {
            return new Read<>(null, json.problems(), json.places());
        }
        Findings findings = new Findings(fileName, json.places(), "");
        json.problems().forEach(findings::take);
        if (againstSchema) {
            new SchemaPass(FORM, json.root(), findings).run();
        }
        if (!json.root().isObject()) {
            return new Read<>(null, findings.sorted(), json.places());
        }
        FormPass pass = new FormPass(FORM, findings);
        ObjectNode tree = (ObjectNode) pass.run(json.root());
        JsonNode own = tree.path("catalogue");
        tree.set("catalogue", Shelf.merged(own));
        new ReferenceChecks(tree, pass, findings).run();
        new YardChecks(tree, pass, findings).run();
        new PlumbingChecks(tree, findings).run();
        new SeasonChecks(tree, own, findings).run();
        Scenario scenario = findings.hasErrors() ? null : Binding.bind(tree, Scenario.class, findings);
        return new Read<>(scenario, findings.sorted(), json.places());
    }
}
