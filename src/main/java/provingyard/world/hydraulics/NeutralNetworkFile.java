package provingyard.world.hydraulics;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;

/**
 * Reads a pipe network from the neutral JSON format described in {@code shared/reference/hydraulics/README.md}, and
 * writes a solution. What is wrong with a file is collected as {@link Problem}s with JSON pointers.
 */
public final class NeutralNetworkFile {

    private static final ObjectMapper JSON = JsonMapper.builder()
            .enable(DeserializationFeature.FAIL_ON_READING_DUP_TREE_KEY)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .disable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS)
            .build();

    private final List<Problem> problems = new ArrayList<>();
    private final NetworkBuilder builder;
    private boolean darcy;
    private double viscosity;

    private NeutralNetworkFile(Constants constants) {
        builder = Network.builder(constants);
    }

    /**
     * What reading gave.
     *
     * @param network the network, null when there are problems
     * @param problems all problems found, in reading order
     */
    public record Reading(Network network, List<Problem> problems) {}

    /** Reads the text of a network file. */
    public static Reading read(String text, Constants constants) {
        return new NeutralNetworkFile(constants).readText(text);
    }

    private Reading readText(String text) {
        try {
            JsonNode root = JSON.readTree(text);
            if (root == null || !root.isObject()) {
                problem("", "no JSON object", "an object");
            } else {
                readRoot(root);
            }
        } catch (JsonProcessingException e) {
            String where = e.getLocation() == null
                    ? "text"
                    : "line " + e.getLocation().getLineNr() + ", column "
                            + e.getLocation().getColumnNr();
            problem(where, e.getOriginalMessage(), "well-formed JSON with unique keys");
        }
        problems.addAll(builder.problems());
        return problems.isEmpty() ? new Reading(builder.build(), List.of()) : new Reading(null, List.copyOf(problems));
    }

    private void readRoot(JsonNode root) {
        String friction = text(root, "", "friction");
        if (friction != null && !friction.equals("HW") && !friction.equals("DW")) {
            problem("/friction", "'" + friction + "'", "HW or DW");
        }
        darcy = "DW".equals(friction);
        viscosity = darcy ? number(root, "", "kinematic_viscosity_m2_s") : Double.NaN;
        each(root, "nodes", true, this::readNode);
        each(root, "sources", true, this::readSource);
        each(root, "links", true, this::readLink);
        each(root, "outlets", false, this::readOutlet);
    }

    private interface Part {
        void read(JsonNode part, String pointer);
    }

    private void each(JsonNode root, String field, boolean required, Part reader) {
        JsonNode list = root.get(field);
        if (list == null || !list.isArray()) {
            if (required || list != null) {
                problem("/" + field, list == null ? "missing" : "not an array", "an array");
            }
            return;
        }
        for (int i = 0; i < list.size(); i++) {
            String pointer = "/" + field + "/" + i;
            if (list.get(i).isObject()) {
                builder.at(pointer);
                reader.read(list.get(i), pointer);
            } else {
                problem(pointer, "not an object", "an object");
            }
        }
    }

    private void readNode(JsonNode node, String at) {
        String id = text(node, at, "id");
        double elevation = number(node, at, "elevation_m");
        if (id != null && !Double.isNaN(elevation)) {
            builder.node(id, elevation);
        }
    }

    private void readSource(JsonNode source, String at) {
        String id = text(source, at, "id");
        double head = number(source, at, "head_m");
        if (id != null && !Double.isNaN(head)) {
            builder.source(id, head);
        }
    }

    private void readOutlet(JsonNode outlet, String at) {
        String id = text(outlet, at, "id");
        String node = text(outlet, at, "node");
        double k = number(outlet, at, "k");
        double n = number(outlet, at, "n");
        if (id != null && node != null && !Double.isNaN(k) && !Double.isNaN(n)) {
            builder.outlet(id, node, k, n);
        }
    }

    private void readLink(JsonNode link, String at) {
        int before = problems.size();
        Ends ends = new Ends(text(link, at, "id"), text(link, at, "from"), text(link, at, "to"), isOpen(link, at));
        String type = text(link, at, "type");
        if (type == null) {
            return;
        }
        switch (type) {
            case "pipe" -> readPipe(link, at, ends, before);
            case "valve" -> {
                double diameter = number(link, at, "diameter_m");
                double k = number(link, at, "minor_k", 0);
                if (problems.size() == before) {
                    builder.valve(ends.id, ends.from, ends.to, diameter, k, ends.open);
                }
            }
            case "prv" -> {
                double diameter = number(link, at, "diameter_m");
                double k = number(link, at, "minor_k", 0);
                double setting = number(link, at, "setting_m");
                if (problems.size() == before) {
                    builder.prv(ends.id, ends.from, ends.to, diameter, k, setting, ends.open);
                }
            }
            case "pump" -> {
                double[][] curve = curve(link, at);
                if (problems.size() == before) {
                    builder.pump(ends.id, ends.from, ends.to, curve[0], curve[1], ends.open);
                }
            }
            case "device" -> {
                double[][] curve = curve(link, at);
                if (problems.size() == before) {
                    builder.device(ends.id, ends.from, ends.to, curve[0], curve[1], ends.open);
                }
            }
            default -> problem(at + "/type", "'" + type + "'", "pipe, valve, prv, pump or device");
        }
    }

    private record Ends(String id, String from, String to, boolean open) {}

    private void readPipe(JsonNode link, String at, Ends e, int before) {
        double length = number(link, at, "length_m");
        double diameter = number(link, at, "diameter_m");
        double rough = darcy ? number(link, at, "roughness_mm") / 1000 : number(link, at, "hw_c");
        double k = number(link, at, "minor_k", 0);
        boolean check = flag(link, at, "check");
        if (problems.size() > before) {
            return;
        }
        if (!darcy) {
            builder.pipe(e.id, e.from, e.to, length, diameter, rough, k, check, e.open);
        } else if (!Double.isNaN(viscosity)) {
            builder.darcyPipe(e.id, e.from, e.to, length, diameter, rough, viscosity, k, check, e.open);
        }
    }

    private double[][] curve(JsonNode link, String at) {
        JsonNode points = link.get("curve_m3s_m");
        String pointer = at + "/curve_m3s_m";
        if (points == null || !points.isArray()) {
            problem(pointer, points == null ? "missing" : "not an array", "an array of [flow, head] points");
            return new double[2][0];
        }
        double[][] curve = new double[2][points.size()];
        for (int i = 0; i < points.size(); i++) {
            JsonNode point = points.get(i);
            boolean fine = point.isArray()
                    && point.size() == 2
                    && point.get(0).isNumber()
                    && point.get(1).isNumber();
            if (!fine) {
                problem(pointer + "/" + i, "not a point", "[flow m3/s, head m]");
            } else {
                curve[0][i] = point.get(0).doubleValue();
                curve[1][i] = point.get(1).doubleValue();
            }
        }
        return curve;
    }

    private boolean isOpen(JsonNode link, String at) {
        JsonNode status = link.get("status");
        if (status == null) {
            return true;
        }
        String value = status.isTextual() ? status.textValue() : status.toString();
        if (!value.equals("open") && !value.equals("closed")) {
            problem(at + "/status", "'" + value + "'", "open or closed");
        }
        return !value.equals("closed");
    }

    private boolean flag(JsonNode part, String at, String field) {
        JsonNode value = part.get(field);
        if (value != null && !value.isBoolean()) {
            problem(at + "/" + field, value.toString(), "true or false");
        }
        return value != null && value.asBoolean();
    }

    private String text(JsonNode part, String at, String field) {
        JsonNode value = part.get(field);
        if (value == null || !value.isTextual() || value.textValue().isEmpty()) {
            problem(at + "/" + field, value == null ? "missing" : value.toString(), "a text");
            return null;
        }
        return value.textValue();
    }

    private double number(JsonNode part, String at, String field, double otherwise) {
        return part.has(field) ? number(part, at, field) : otherwise;
    }

    /** NaN, with a problem reported, when there is no finite number. */
    private double number(JsonNode part, String at, String field) {
        JsonNode value = part.get(field);
        boolean fine = value != null && value.isNumber() && Math.abs(value.doubleValue()) < Double.POSITIVE_INFINITY;
        if (!fine) {
            problem(at + "/" + field, value == null ? "missing" : value.toString(), "a number");
            return Double.NaN;
        }
        return value.doubleValue();
    }

    private void problem(String pointer, String what, String allowed) {
        problems.add(new Problem(pointer, what, allowed));
    }

    /**
     * The solution as JSON text: {@code heads_m} (null = isolated), {@code flows_m3_s}, {@code outlets_m3_s}, {@code
     * states} (check valves and devices: open or closed; regulators: active, open or closed; pumps: running or off),
     * {@code isolated_nodes}. Call it with a converged state only: anything else is a defect.
     */
    public static String write(NetworkState s) {
        if (s.status() != SolveStatus.CONVERGED) {
            throw new IllegalStateException(s.problem());
        }
        Network net = s.network();
        ObjectNode root = JSON.createObjectNode();
        ObjectNode heads = root.putObject("heads_m");
        for (int i = 0; i < net.nodeCount(); i++) {
            if (s.isIsolated(i)) {
                heads.putNull(net.nodeIds().get(i));
            } else {
                heads.put(net.nodeIds().get(i), s.head(i));
            }
        }
        ObjectNode flows = root.putObject("flows_m3_s");
        ObjectNode states = JSON.createObjectNode();
        for (int l = 0; l < net.linkCount(); l++) {
            flows.put(net.linkIds().get(l), s.flow(l));
            if (net.isOneWay(l)) {
                states.put(net.linkIds().get(l), stateName(net.kind(l), s.linkState(l)));
            }
        }
        ObjectNode outlets = root.putObject("outlets_m3_s");
        for (int o = 0; o < net.outletCount(); o++) {
            outlets.put(net.outletIds().get(o), s.outletFlow(o));
        }
        root.set("states", states);
        var isolated = root.putArray("isolated_nodes");
        for (int i = 0; i < net.nodeCount(); i++) {
            if (s.isIsolated(i)) {
                isolated.add(net.nodeIds().get(i));
            }
        }
        return root.toPrettyString();
    }

    private static String stateName(LinkKind kind, LinkState state) {
        if (kind == LinkKind.PUMP) {
            return state == LinkState.OPEN ? "running" : "off";
        }
        return switch (state) {
            case OPEN -> "open";
            case CLOSED -> "closed";
            case ACTIVE -> "active";
        };
    }
}
