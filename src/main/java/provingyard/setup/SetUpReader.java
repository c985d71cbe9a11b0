package provingyard.setup;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import provingyard.scenario.Binding;
import provingyard.scenario.Findings;
import provingyard.scenario.Form;
import provingyard.scenario.FormReader;
import provingyard.scenario.LocatedJson;
import provingyard.scenario.Problem;
import provingyard.scenario.Read;
import provingyard.scenario.Scenario;
import provingyard.scenario.SourceMap;

/** Reads set-ups and holds them against their site: kit, budget, locks, places, ranges, names. */
public final class SetUpReader {

    private static final Form FORM = Form.load("shared/schema/setup.schema.json");

    private SetUpReader() {}

    /** The form of a set-up's document. */
    public static Form form() {
        return FORM;
    }

    /** Reads a set-up file for a site. */
    public static Read<SetUp> read(String fileName, String text, Scenario site) {
        LocatedJson json = LocatedJson.read(fileName, text);
        if (json.root() == null) {
            return new Read<>(null, json.problems(), json.places());
        }
        Findings findings = new Findings(fileName, json.places(), "");
        json.problems().forEach(findings::take);
        return read(FormReader.complete(FORM, json.root(), findings), site, findings, json.places());
    }

    /** Reads a set-up that was held against its schema before, such as one that is shipped. */
    public static Read<SetUp> readChecked(String fileName, JsonNode node, Scenario site) {
        Findings findings = new Findings(fileName, SourceMap.NONE, "");
        return read(FormReader.completeChecked(FORM, node, findings), site, findings, SourceMap.NONE);
    }

    /** Reads a set-up that is there as JSON already, without places. */
    public static Read<SetUp> read(String fileName, JsonNode node, Scenario site) {
        return read(fileName, node, site, SourceMap.NONE, "");
    }

    /**
     * Reads a set-up that stands within another document.
     *
     * @param places where that document's values stand
     * @param base pointer of the set-up within it
     */
    public static Read<SetUp> read(String fileName, JsonNode node, Scenario site, SourceMap places, String base) {
        Findings findings = new Findings(fileName, places, base);
        return read(FormReader.complete(FORM, node, findings), site, findings, places);
    }

    private static Read<SetUp> read(ObjectNode tree, Scenario site, Findings findings, SourceMap places) {
        SetUp setUp = null;
        if (tree != null) {
            tree.remove("remarks");
            new SetUpChecks(tree, site, findings).run();
            setUp = findings.hasErrors() ? null : Binding.bind(tree, SetUp.class, findings);
        }
        return new Read<>(setUp, findings.sorted(), places);
    }

    /**
     * What a site has against a set-up that was made by hand: kit, budget, locks, places, names.
     *
     * @return problems whose pointers name the part, such as {@code /sensors/0/at}
     */
    public static List<Problem> check(SetUp setUp, Scenario site) {
        Findings findings = new Findings("", SourceMap.NONE, "");
        new SetUpChecks(Binding.tree(setUp), site, findings).run();
        return findings.sorted();
    }
}
