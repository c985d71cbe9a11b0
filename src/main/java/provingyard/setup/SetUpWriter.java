package provingyard.setup;

import com.fasterxml.jackson.databind.node.ObjectNode;
import provingyard.scenario.DocumentWriter;

/** Writes set-ups as JSON whose reading gives an equal set-up. */
public final class SetUpWriter {

    private SetUpWriter() {}

    /** The set-up's text. */
    public static String write(SetUp setUp) {
        return DocumentWriter.write(SetUpReader.form(), "../shared/schema/setup.schema.json", setUp);
    }

    /** The set-up as a tree, to stand within another document. */
    public static ObjectNode tree(SetUp setUp) {
        return DocumentWriter.tree(SetUpReader.form(), setUp);
    }
}
