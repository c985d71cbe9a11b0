package provingyard.scenario;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import provingyard.quantity.Nearest;
import provingyard.scenario.FormPass.Name;
import provingyard.scenario.Problem.Code;

/** Each id once, and each named id there. */
final class ReferenceChecks {

    private static final Map<String, String> CATALOGUE =
            Map.of("soil", "soils", "plant", "plants", "paving", "pavings", "nozzle", "nozzles", "pipeMake", "pipes");

    private final JsonNode tree;
    private final FormPass pass;
    private final Findings findings;

    ReferenceChecks(JsonNode tree, FormPass pass, Findings findings) {
        this.tree = tree;
        this.pass = pass;
        this.findings = findings;
    }

    void run() {
        Map<String, Name> seen = new LinkedHashMap<>();
        for (Name name : pass.ids()) {
            String space = CATALOGUE.containsKey(name.kind()) ? name.kind() : "site";
            Name first = seen.putIfAbsent(space + " " + name.id(), name);
            if (first != null) {
                findings.error(Code.REF_TWICE, name.pointer(), name.id(), first.pointer());
            }
            replaced(name);
        }
        for (Name reference : pass.references()) {
            List<String> known = known(reference.kind());
            if (!known.contains(reference.id())) {
                unknown(findings, reference, known);
            }
        }
    }

    private void replaced(Name name) {
        String section = CATALOGUE.get(name.kind());
        if (section != null && Shelf.ids(Shelf.tree(), section).contains(name.id())) {
            findings.add(Severity.NOTE, Code.REF_REPLACES, name.pointer(), name.id(), List.of(), "");
        }
    }

    static void unknown(Findings findings, Name reference, List<String> known) {
        String maybe = Nearest.of(reference.id(), known).orElse("");
        String listed =
                known.size() > 12 ? String.join(", ", known.subList(0, 12)) + ", \u2026" : String.join(", ", known);
        findings.add(
                Severity.ERROR,
                Code.REF_UNKNOWN,
                reference.pointer(),
                reference.id(),
                List.of(reference.kind(), listed),
                maybe);
    }

    private List<String> known(String kind) {
        if (CATALOGUE.containsKey(kind)) {
            return Shelf.ids(tree.path("catalogue"), CATALOGUE.get(kind));
        }
        List<String> known = new ArrayList<>();
        switch (kind) {
            case "zone" ->
                tree.at("/plumbing/fittings").forEach(f -> {
                    if (f.path("kind").asText().equals("zoneValve")) {
                        known.add(f.path("id").asText());
                    }
                });
            case "faulty" -> {
                for (String declared : List.of("pipe", "fitting", "head", "drip")) {
                    known.addAll(declared(declared));
                }
                known.addAll(List.of("rain", "wind", "freeze", "flow", "soil"));
            }
            default -> known.addAll(declared(kind));
        }
        return known;
    }

    private List<String> declared(String kind) {
        return pass.ids().stream()
                .filter(n -> n.kind().equals(kind))
                .map(Name::id)
                .toList();
    }
}
