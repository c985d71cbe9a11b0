package provingyard.scenario;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import provingyard.scenario.Problem.Code;

/** The plumbing holds together: what sits in pipes lies within them, water reaches each zone, each zone waters. */
final class PlumbingChecks {

    /** A fitting may lie this far beyond its pipe's end, in m: lengths are measured on paper. */
    private static final double TOLERANCE = 0.01;

    private final JsonNode tree;
    private final JsonNode plumbing;
    private final Findings findings;
    private final Map<String, JsonNode> junctions = new LinkedHashMap<>();
    private final Map<String, JsonNode> pipes = new LinkedHashMap<>();

    PlumbingChecks(JsonNode tree, Findings findings) {
        this.tree = tree;
        this.plumbing = tree.path("plumbing");
        this.findings = findings;
        plumbing.path("junctions").forEach(j -> junctions.put(j.path("id").asText(), j));
        plumbing.path("pipes").forEach(p -> pipes.put(p.path("id").asText(), p));
    }

    void run() {
        supply();
        for (int i = 0; i < plumbing.path("fittings").size(); i++) {
            JsonNode fitting = plumbing.path("fittings").path(i);
            String at = "/plumbing/fittings/" + i;
            along(fitting, at);
            needs(fitting, at);
        }
        for (int i = 0; i < tree.path("faults").size(); i++) {
            fault(tree.path("faults").path(i), "/faults/" + i);
        }
        sizes();
        zones();
    }

    private void supply() {
        JsonNode supply = plumbing.path("supply");
        String kind = supply.path("kind").asText();
        int points = supply.path("points").size();
        int wanted = kind.equals("curve") ? 1 : kind.equals("pump") ? 3 : points;
        if (points != wanted) {
            findings.error(Code.SCH_COUNT, "/plumbing/supply/points", points + "", wanted + "", wanted + "");
        }
        double pressure = supply.path("pressure").asDouble(Double.NaN);
        if (!kind.equals("pump") && pressure <= 0) {
            findings.error(Code.REF_NEEDS, "/plumbing/supply", kind, "pressure");
        }
        double flowing = supply.at("/points/0/pressure").asDouble(Double.NaN);
        if (kind.equals("curve") && flowing >= pressure) {
            findings.error(
                    Code.QTY_RANGE, "/plumbing/supply/points/0/pressure", pascal(flowing), "0 Pa", pascal(pressure));
        }
    }

    private static String pascal(double value) {
        return YardChecks.metres(value) + " Pa";
    }

    private void along(JsonNode item, String at) {
        String pipe = item.path("on").asText();
        double along = item.path("along").asDouble(Double.NaN);
        double length = pipes.containsKey(pipe) ? length(pipes.get(pipe)) : Double.NaN;
        if (along > length + TOLERANCE) {
            findings.error(Code.GEO_ALONG, at + "/along", YardChecks.metres(along), pipe, YardChecks.metres(length));
        }
    }

    private void needs(JsonNode fitting, String at) {
        String kind = fitting.path("kind").asText();
        if (kind.equals("masterValve") && fitting.path("normally").isNull()) {
            findings.error(Code.REF_NEEDS, at, kind, "normally");
        }
        if (kind.equals("regulator") && fitting.path("setting").asDouble(Double.NaN) == 0) {
            findings.error(Code.REF_NEEDS, at, kind, "setting");
        }
    }

    private void fault(JsonNode fault, String at) {
        if (pipes.containsKey(fault.path("on").asText())) {
            along(fault, at);
        }
        String kind = fault.path("kind").asText();
        boolean opens = kind.endsWith("Break") || kind.endsWith("Leak");
        boolean house = kind.equals("houseRuns");
        if ((opens || house) && fault.path("opening").asDouble(Double.NaN) == 0) {
            findings.error(Code.REF_NEEDS, at, kind, "opening");
        }
        if (opens
                && !fault.path("on").isNull()
                && !pipes.containsKey(fault.path("on").asText())) {
            ReferenceChecks.unknown(
                    findings,
                    new FormPass.Name("pipe", fault.path("on").asText(), at + "/on"),
                    List.copyOf(pipes.keySet()));
        }
        if (house && !meters().contains(fault.path("on").asText())) {
            ReferenceChecks.unknown(
                    findings, new FormPass.Name("meter", fault.path("on").asText(), at + "/on"), meters());
        }
    }

    private List<String> meters() {
        List<String> meters = new ArrayList<>();
        plumbing.path("fittings").forEach(f -> {
            if (f.path("kind").asText().equals("meter")) {
                meters.add(f.path("id").asText());
            }
        });
        return meters;
    }

    /** Each pipe's size is one of its make. */
    private void sizes() {
        Map<String, List<Double>> makes = new LinkedHashMap<>();
        tree.at("/catalogue/pipes").forEach(m -> {
            List<Double> sizes = new ArrayList<>();
            m.path("sizes").forEach(s -> sizes.add(s.path("nominal").asDouble()));
            makes.put(m.path("id").asText(), sizes);
        });
        for (int i = 0; i < plumbing.path("pipes").size(); i++) {
            JsonNode pipe = plumbing.path("pipes").path(i);
            List<Double> sizes = makes.get(pipe.path("make").asText());
            double size = pipe.path("size").asDouble(Double.NaN);
            if (sizes != null && sizes.stream().noneMatch(s -> Math.abs(s - size) < 1e-4) && size > 0) {
                List<String> listed = new ArrayList<>();
                sizes.forEach(s -> listed.add(inches(s)));
                String found = inches(size);
                findings.add(
                        Severity.ERROR,
                        Code.SCH_CHOICE,
                        "/plumbing/pipes/" + i + "/size",
                        found,
                        List.of(String.join(", ", listed)),
                        "");
            }
        }
    }

    private static String inches(double metres) {
        return YardChecks.metres(metres / 0.0254) + " in";
    }

    private void zones() {
        Set<String> watered = new LinkedHashSet<>();
        plumbing.path("heads").forEach(h -> watered.add(h.path("zone").asText()));
        plumbing.path("drips").forEach(d -> watered.add(d.path("zone").asText()));
        Set<String> running = new LinkedHashSet<>();
        tree.at("/schedule/zones").forEach(z -> running.add(z.path("zone").asText()));
        Set<String> reached = reached(plumbing.at("/supply/junction").asText());
        for (int i = 0; i < plumbing.path("fittings").size(); i++) {
            JsonNode fitting = plumbing.path("fittings").path(i);
            if (fitting.path("kind").asText().equals("zoneValve")) {
                zone(fitting, "/plumbing/fittings/" + i, watered, running, reached);
            }
        }
    }

    private void zone(JsonNode valve, String at, Set<String> watered, Set<String> running, Set<String> reached) {
        String id = valve.path("id").asText();
        if (!watered.contains(id)) {
            findings.error(Code.REF_EMPTY_ZONE, at, id);
        }
        if (!running.contains(id)) {
            findings.warn(Code.REF_NO_RUN, at, id);
        }
        JsonNode pipe = pipes.get(valve.path("on").asText());
        boolean joined = pipe != null && junctions.containsKey(pipe.path("from").asText());
        boolean supplied = junctions.containsKey(plumbing.at("/supply/junction").asText());
        if (joined && supplied && !reached.contains(pipe.path("from").asText())) {
            findings.error(Code.REF_CUT_OFF, at, id);
        }
    }

    /** Junctions that pipes join to one. */
    private Set<String> reached(String from) {
        Map<String, List<String>> next = new LinkedHashMap<>();
        for (JsonNode pipe : pipes.values()) {
            String a = pipe.path("from").asText();
            String b = pipe.path("to").asText();
            next.computeIfAbsent(a, k -> new ArrayList<>()).add(b);
            next.computeIfAbsent(b, k -> new ArrayList<>()).add(a);
        }
        Set<String> reached = new LinkedHashSet<>(List.of(from));
        Deque<String> open = new ArrayDeque<>(reached);
        while (!open.isEmpty()) {
            for (String other : next.getOrDefault(open.removeFirst(), List.of())) {
                if (reached.add(other)) {
                    open.addLast(other);
                }
            }
        }
        return reached;
    }

    /** Given or drawn length of a pipe in m; NaN where its ends are not known. */
    private double length(JsonNode pipe) {
        if (pipe.path("length").isNumber()) {
            return pipe.path("length").asDouble();
        }
        JsonNode at = at(pipe.path("from").asText());
        double length = 0;
        for (JsonNode corner : pipe.path("via")) {
            length += distance(at, corner);
            at = corner;
        }
        return length + distance(at, at(pipe.path("to").asText()));
    }

    private JsonNode at(String junction) {
        return junctions.containsKey(junction) ? junctions.get(junction).path("at") : plumbing.path("no such place");
    }

    private static double distance(JsonNode a, JsonNode b) {
        double dx = b.path(0).asDouble(Double.NaN) - a.path(0).asDouble(Double.NaN);
        double dy = b.path(1).asDouble(Double.NaN) - a.path(1).asDouble(Double.NaN);
        return Math.sqrt(dx * dx + dy * dy);
    }
}
