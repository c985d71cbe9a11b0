package provingyard.season;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.UnaryOperator;

/** The same site written down in another way: mirrored, shifted, renamed, reordered, in other units. */
final class Rewritten {

    private static final Set<String> NAMING = Set.of("id", "on", "from", "to", "junction", "zone", "base", "sensor");

    /** Lists whose order says nothing; surfaces are painted, events are laid over, zones run in their order. */
    private static final List<String> UNORDERED = List.of(
            "/yard/structures",
            "/yard/trees",
            "/yard/vents",
            "/yard/hollows",
            "/plumbing/junctions",
            "/plumbing/pipes",
            "/plumbing/fittings",
            "/plumbing/heads",
            "/plumbing/drips",
            "/faults",
            "/setUps/textbook/sensors",
            "/setUps/textbook/interlocks");

    /** A unit's name in US files, its size in the metric one, and what is added. */
    private record Unit(String name, double size, double add) {}

    private static final Map<String, Unit> US = Map.of(
            "m", new Unit("ft", 0.3048, 0),
            "mm", new Unit("in", 25.4, 0),
            "m/s", new Unit("mph", 0.44704, 0),
            "mm2", new Unit("in2", 645.16, 0),
            "kPa", new Unit("psi", 6.894757293168361, 0),
            "L/min", new Unit("gpm", 3.785411784, 0),
            "°C", new Unit("°F", 5 / 9.0, 32));

    private Rewritten() {}

    /** East becomes west: places, falls, arcs and winds. */
    static SeasonDocument mirrored(SeasonDocument plain) {
        SeasonDocument out = plain.copy();
        double east = metres(out.list("/yard/size").get(0));
        points(out, (x, y) -> new double[] {east - x, y});
        for (JsonNode surface : out.list("/yard/surfaces")) {
            turn((ObjectNode) surface.get("slope"), "toward", 0);
        }
        for (JsonNode event : out.list("/weather/events")) {
            turn((ObjectNode) event, "from", 0);
        }
        for (JsonNode head : out.list("/plumbing/heads")) {
            turn((ObjectNode) head, "from", number(head.get("sweep").asText()));
        }
        return out;
    }

    private static void turn(ObjectNode of, String name, double sweep) {
        if (of.has(name)) {
            double turned = (720 - number(of.get(name).asText()) - sweep) % 360;
            of.put(name, turned + " deg");
        }
    }

    /** All things some metres further east and north, in a yard of the same size. */
    static SeasonDocument shifted(SeasonDocument plain, double east, double north) {
        SeasonDocument out = plain.copy();
        points(out, (x, y) -> new double[] {x + east, y + north});
        return out;
    }

    /** Every place but the yard's size. */
    private static void points(SeasonDocument out, BiFunction<Double, Double, double[]> move) {
        JsonNode size = out.part("/yard").get("size").deepCopy();
        arrays(out.root(), move);
        out.part("/yard").set("size", size);
    }

    private static void arrays(JsonNode in, BiFunction<Double, Double, double[]> move) {
        boolean point = in.isArray() && in.size() == 2 && in.get(0).asText().endsWith(" m");
        if (point) {
            double[] moved = move.apply(metres(in.get(0)), metres(in.get(1)));
            ((ArrayNode) in).removeAll().add(moved[0] + " m").add(moved[1] + " m");
        } else {
            in.forEach(part -> arrays(part, move));
        }
    }

    /** Other ids on yard and plumbing, in another order of the alphabet; sensors keep theirs, which key their noise. */
    static SeasonDocument renamed(SeasonDocument plain) {
        Map<String, String> names = new LinkedHashMap<>();
        for (String part : List.of("/yard", "/plumbing")) {
            plain.root().at(part).findValuesAsText("id").forEach(id -> names.put(id, "n" + (999 - names.size())));
        }
        SeasonDocument out = plain.copy();
        rename(out.root(), names);
        return out;
    }

    private static void rename(JsonNode in, Map<String, String> names) {
        if (in instanceof ObjectNode object) {
            object.properties().forEach(field -> {
                String known = names.get(field.getValue().asText());
                if (NAMING.contains(field.getKey()) && known != null) {
                    field.setValue(new TextNode(known));
                }
            });
        }
        in.forEach(part -> rename(part, names));
    }

    /** Every list whose order says nothing, shuffled. */
    static SeasonDocument reordered(SeasonDocument plain, long seed) {
        SeasonDocument out = plain.copy();
        Random random = new Random(seed);
        for (String path : UNORDERED) {
            List<JsonNode> items = new ArrayList<>();
            out.list(path).forEach(items::add);
            Collections.shuffle(items, random);
            out.list(path).removeAll().addAll(items);
        }
        return out;
    }

    /** The metric file in US units. */
    static SeasonDocument inUsUnits(SeasonDocument plain) {
        return texts(plain, text -> {
            String[] said = text.split(" ");
            Unit unit = said.length == 2 ? US.get(said[1]) : null;
            return unit == null ? text : plainNumber(number(text) / unit.size() + unit.add()) + " " + unit.name();
        });
    }

    private static String plainNumber(double value) {
        return new BigDecimal(value, MathContext.DECIMAL64).toPlainString();
    }

    private static SeasonDocument texts(SeasonDocument plain, UnaryOperator<String> change) {
        SeasonDocument out = plain.copy();
        texts(out.root(), change);
        return out;
    }

    private static void texts(JsonNode in, UnaryOperator<String> change) {
        if (in instanceof ObjectNode object) {
            object.properties().stream()
                    .filter(f -> f.getValue().isTextual())
                    .forEach(f ->
                            f.setValue(new TextNode(change.apply(f.getValue().asText()))));
        } else if (in instanceof ArrayNode array) {
            for (int i = 0; i < array.size(); i++) {
                if (array.get(i).isTextual()) {
                    array.set(i, new TextNode(change.apply(array.get(i).asText())));
                }
            }
        }
        in.forEach(part -> texts(part, change));
    }

    static double metres(JsonNode length) {
        return number(length.asText());
    }

    private static double number(String quantity) {
        return Double.parseDouble(quantity.substring(0, quantity.indexOf(' ')));
    }
}
