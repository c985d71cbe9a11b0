package provingyard.world.electric;

import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The circuit of a wiring under given conditions.
 *
 * <p>Nodes: {@code hot} and {@code return} of the transformer, {@code COM}, {@code terminal:t}, each wire at each distance
 * where something is on it ({@code wire@metres}, beyond a cut there {@code wire@metres+}), {@code joint:box} where the
 * common's joint is, {@code lead:valve} between joint and coil, and {@code earth}.
 */
final class WiringCircuit {

    static final String EARTH = "earth";
    private static final double BRIDGE_OHMS = 0.01;

    private final Wiring wiring;
    private final Conditions conditions;
    private final Circuit circuit = new Circuit();

    private WiringCircuit(Wiring wiring, Conditions conditions) {
        this.wiring = wiring;
        this.conditions = conditions;
    }

    /** Power off and all outputs off, for direct current. */
    static Circuit dead(Wiring wiring, Conditions conditions) {
        WiringCircuit made = new WiringCircuit(wiring, conditions);
        made.field(0, Set.of());
        return made.circuit;
    }

    /**
     * Power on.
     *
     * @param seated valves whose plunger is in
     */
    static Circuit live(Wiring wiring, Conditions conditions, Panel panel, Set<String> seated) {
        WiringCircuit made = new WiringCircuit(wiring, conditions);
        made.controller(panel);
        made.field(pulsation(wiring), seated);
        return made.circuit;
    }

    /** w = 2 pi f in 1/s. */
    static double pulsation(Wiring wiring) {
        return 2 * Math.PI * wiring.transformer().hertz();
    }

    private void controller(Panel panel) {
        Transformer transformer = wiring.transformer();
        if (!transformer.silent()) {
            Complex inner = Complex.real(transformer.ohms());
            circuit.join("transformer", "return", "hot", inner, Complex.real(transformer.volts()));
        }
        if (panel.bypass()) {
            resistor("loop", "return", Wiring.COMMON, BRIDGE_OHMS);
        } else if (closed(panel)) {
            resistor("loop", "return", Wiring.COMMON, wiring.sensor().ohms(conditions.celsius()));
        }
        for (Output output : wiring.outputs()) {
            if (panel.on().contains(output.terminal()) && !output.dead()) {
                resistor("output:" + output.terminal(), "hot", terminal(output.terminal()), output.ohms());
            }
        }
    }

    private boolean closed(Panel panel) {
        return switch (wiring.sensor().state()) {
            case HEALTHY -> !panel.sensorHolds();
            case OPEN -> false;
            case SHORTED -> true;
        };
    }

    private void field(double w, Set<String> seated) {
        if (wiring.earthOhms() < Double.POSITIVE_INFINITY) {
            resistor("earthing", Wiring.COMMON, EARTH, wiring.earthOhms());
        }
        common();
        for (ZoneWire wire : wiring.wires()) {
            String from = terminal(wire.terminal());
            String end = lay(wire.valve(), from, wire.gauge(), wire.cuts(), 0, wiring.length(wire.valve()));
            splice(wire, end);
            coil(circuit, wire, joint(wire.box()), w, conditions.celsius(), seated.contains(wire.valve()));
        }
        for (int i = 0; i < wiring.shorts().size(); i++) {
            WireShort s = wiring.shorts().get(i);
            resistor("short:" + i, place(s.wire(), s.metres()), place(s.other(), s.metres()), s.ohms());
        }
    }

    private void common() {
        double at = 0;
        String from = Wiring.COMMON;
        for (Box box : wiring.boxes()) {
            CommonWire wire = wiring.common();
            String arrival = lay(Wiring.COMMON, from, wire.gauge(), wire.cuts(), at, box.metres());
            double wetness = conditions.wetnessAt(box.id());
            resistor(
                    "common:" + box.id(), arrival, joint(box.id()), box.common().ohms(wetness));
            leak("common-leak:" + box.id(), arrival, box.common().leakOhms(), wetness);
            from = joint(box.id());
            at = box.metres();
        }
    }

    /** A stretch of a wire between two distances, with its cuts and touches; the node at its end. */
    private String lay(String wire, String node, int gauge, List<Cut> cuts, double start, double end) {
        TreeMap<Double, Double> leaks = new TreeMap<>();
        cuts.forEach(c -> leaks.put(c.metres(), c.leakOhms()));
        TreeSet<Double> stops = new TreeSet<>(leaks.keySet());
        stops.add(end);
        wiring.shorts().stream()
                .filter(s -> s.wire().equals(wire) || s.other().equals(wire))
                .forEach(s -> stops.add(s.metres()));
        String from = node;
        double at = start;
        for (double stop : stops.subSet(start, false, end, true)) {
            String to = place(wire, stop);
            double ohms = (stop - at) * Copper.ohmsPerMetre(gauge, conditions.celsius());
            resistor("wire:" + to, from, to, ohms);
            from = leaks.containsKey(stop) ? cut(to, leaks.get(stop), wetnessNear(stop)) : to;
            at = stop;
        }
        return from;
    }

    /** Both bare ends of a cut; the node beyond it. */
    private String cut(String near, double leakOhms, double wetness) {
        String beyond = near + "+";
        leak("cut:" + near, near, leakOhms, wetness);
        leak("cut:" + beyond, beyond, leakOhms, wetness);
        return beyond;
    }

    private void splice(ZoneWire wire, String end) {
        double wetness = conditions.wetnessAt(wire.box());
        resistor(
                "splice:" + wire.valve(), end, lead(wire.valve()), wire.splice().ohms(wetness));
        leak("leak:" + wire.valve(), end, wire.splice().leakOhms(), wetness);
    }

    /** A coil between its lead and another node. */
    private static void coil(Circuit to, ZoneWire wire, String other, double w, double celsius, boolean seated) {
        Coil coil = wire.coil();
        if (!coil.open()) {
            to.join(coilBranch(wire.valve()), lead(wire.valve()), other, coil.impedance(w, celsius, seated));
        }
        if (coil.shortOhms() < Double.POSITIVE_INFINITY) {
            to.join("coil-short:" + wire.valve(), lead(wire.valve()), other, Complex.real(coil.shortOhms()));
        }
    }

    /** A coil alone with its leads off the wires: nodes {@code lead:valve} and {@code other lead}. */
    static Circuit coilAlone(ZoneWire wire, Conditions conditions) {
        Circuit alone = new Circuit();
        coil(alone, wire, "other lead", 0, conditions.celsius(), false);
        return alone;
    }

    private double wetnessNear(double metres) {
        Box nearest = wiring.boxes().get(0);
        for (Box box : wiring.boxes()) {
            if (Math.abs(box.metres() - metres) < Math.abs(nearest.metres() - metres)) {
                nearest = box;
            }
        }
        return conditions.wetnessAt(nearest.id());
    }

    private void resistor(String id, String from, String to, double ohms) {
        circuit.join(id, from, to, Complex.real(ohms));
    }

    private void leak(String id, String from, double saturatedOhms, double wetness) {
        double ohms = Conditions.leak(saturatedOhms, wetness);
        if (ohms < Double.POSITIVE_INFINITY) {
            resistor(id, from, EARTH, ohms);
        }
    }

    /** Terminal of an output, or of the common. */
    static String terminal(String mark) {
        return mark.equals(Wiring.COMMON) ? mark : "terminal:" + mark;
    }

    private static String place(String wire, double metres) {
        return wire + "@" + metres;
    }

    static String joint(String box) {
        return "joint:" + box;
    }

    static String lead(String valve) {
        return "lead:" + valve;
    }

    static String coilBranch(String valve) {
        return "coil:" + valve;
    }
}
