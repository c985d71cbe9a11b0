package provingyard.scenario;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import provingyard.quantity.Nearest;
import provingyard.scenario.FormPass.Name;
import provingyard.scenario.Problem.Code;

/** Each id once, and each named id there. */
final class ReferenceChecks {

    private static final Map<String, String> CATALOGUE =
            Map.of("soil", "soils", "plant", "plants", "paving", "pavings", "nozzle", "nozzles", "pipeMake", "pipes");

    /** So many known names are listed in a message. */
    private static final int LISTED = 12;

    private final JsonNode tree;
    private final FormPass pass;
    private final Findings findings;

    ReferenceChecks(JsonNode tree, FormPass pass, Findings findings) {
        this.tree = tree;
        this.pass = pass;
        this.findings = findings;
    }

    void run() {
        ids();
        Map<String, Set<String>> known = new LinkedHashMap<>();
        for (Name reference : pass.references()) {
            Set<String> ids = known.computeIfAbsent(reference.kind(), kind -> new LinkedHashSet<>(known(kind)));
            if (!ids.contains(reference.id())) {
                unknown(findings, reference, List.copyOf(ids));
            }
        }
    }

    private void ids() {
        ObjectNode shipped = Shelf.tree();
        Map<String, Name> seen = new LinkedHashMap<>();
        for (Name name : pass.ids()) {
            String section = CATALOGUE.get(name.kind());
            String space = section != null ? section : "site";
            Name first = seen.putIfAbsent(space + " " + name.id(), name);
            if (first != null) {
                findings.error(Code.REF_TWICE, name.pointer(), name.id(), first.pointer());
            }
            if (section != null && Shelf.ids(shipped, section).contains(name.id())) {
                findings.add(Severity.NOTE, Code.REF_REPLACES, name.pointer(), name.id(), List.of(), "");
            }
        }
    }

    /** Says that a named thing is not there. */
    static void unknown(Findings findings, Name reference, List<String> known) {
        if (findings.full()) {
            return;
        }
        String maybe = Nearest.of(reference.id(), known).orElse("");
        String more = known.size() > LISTED ? ", \u2026" : "";
        String listed = String.join(", ", known.subList(0, Math.min(LISTED, known.size()))) + more;
        List<String> details = List.of(reference.kind(), listed);
        findings.add(Severity.ERROR, Code.REF_UNKNOWN, reference.pointer(), reference.id(), details, maybe);
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
                known.addAll(declared("junction"));
                known.addAll(List.of("rain", "wind", "freeze", "flow", "soil", "controller"));
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
