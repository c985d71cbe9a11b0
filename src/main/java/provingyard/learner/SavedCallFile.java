package provingyard.learner;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;

/** How a service call that was left stands in a learner's file. */
final class SavedCallFile {

    private SavedCallFile() {}

    static void write(ObjectNode node, SavedCall call) {
        node.put("content", call.content());
        node.put("engine", call.engine());
        node.put("seed", call.seed());
        node.put("deal", call.deal());
        node.put("mode", call.mode());
        write(node.putArray("tests"), call.tests());
        SavedCall.Finding finding = call.finding();
        if (finding != null) {
            ObjectNode stated = node.putObject("finding");
            stated.put("repairClass", finding.repairClass());
            stated.put("confidence", finding.confidence());
            write(stated.putArray("after"), finding.after());
        }
    }

    private static void write(ArrayNode array, List<String> texts) {
        texts.forEach(array::add);
    }

    static SavedCall read(JsonNode node) throws LearnerFile.Amiss {
        return new SavedCall(
                LearnerFile.text(node, "content"),
                LearnerFile.text(node, "engine"),
                LearnerFile.number(node, "seed"),
                (int) LearnerFile.number(node, "deal"),
                LearnerFile.text(node, "mode"),
                texts(node, "tests"),
                node.has("finding") ? finding(LearnerFile.object(node, "finding")) : null);
    }

    private static SavedCall.Finding finding(JsonNode node) throws LearnerFile.Amiss {
        LearnerFile.kind(node.path("confidence").isNumber(), node, "confidence");
        return new SavedCall.Finding(
                LearnerFile.text(node, "repairClass"), node.get("confidence").doubleValue(), texts(node, "after"));
    }

    private static List<String> texts(JsonNode node, String name) throws LearnerFile.Amiss {
        List<String> texts = new ArrayList<>();
        for (JsonNode text : LearnerFile.array(node, name)) {
            LearnerFile.kind(text.isTextual(), node, name);
            texts.add(text.textValue());
        }
        return texts;
    }
}
