package provingyard.scenario;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** Holds a tree against a form, for documents of other packages. */
public final class FormReader {

    private FormReader() {}

    /**
     * The document completed and in inner units; what is wrong goes to the findings.
     *
     * @return null when the document is no object
     */
    public static ObjectNode complete(Form form, JsonNode document, Findings findings) {
        new SchemaPass(form, document, findings).run();
        return completeChecked(form, document, findings);
    }

    /** As {@link #complete}, for a document that was held against the form's schema before. */
    public static ObjectNode completeChecked(Form form, JsonNode document, Findings findings) {
        return document.isObject() ? (ObjectNode) new FormPass(form, findings).run(document) : null;
    }
}
