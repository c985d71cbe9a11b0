package provingyard.world.electric;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What is to be measured with the power on and outputs on, once plungers and protection have come to rest; all values root
 * mean square and without an instrument's error.
 *
 * <p>All plungers start out. Those whose coil pulls hard enough go in, which raises their impedance, until no more follow;
 * one that is in but no longer held chatters. If the transformer then gives more than its protection stands, that opens,
 * and nothing has volts. Low-voltage side only.
 */
public final class LiveReadings {

    /** Input resistance of the voltmeter in ohm (common practice for digital meters, no source). */
    private static final double VOLTMETER_OHMS = 10e6;

    private final Wiring wiring;
    private final Conditions conditions;
    private final Panel panel;
    private final Set<String> seated = new LinkedHashSet<>();
    private final Circuit.Solution solution;
    private final Wiring acting;
    private final Fuse fuse;

    /** What a valve's plunger does. */
    public enum Plunger {
        OUT,
        /** Goes in and falls back, again and again. */
        CHATTERS,
        IN
    }

    /** What the protection does. */
    public enum Fuse {
        HOLDS,
        /** Opens under this load. */
        OPENS,
        /** Was blown before. */
        BLOWN
    }

    private LiveReadings(Wiring wiring, Conditions conditions, Panel panel) {
        this.wiring = wiring;
        this.conditions = conditions;
        this.panel = panel;
        Circuit.Solution loaded = settle();
        boolean opens = loaded.amps("transformer").size() > wiring.transformer().limit();
        fuse = wiring.transformer().blown() ? Fuse.BLOWN : opens ? Fuse.OPENS : Fuse.HOLDS;
        if (opens) {
            seated.clear();
        }
        acting = opens ? wiring.with(wiring.transformer().asBlown(true)) : wiring;
        solution = opens ? circuit().solve() : loaded;
    }

    /** The readings of a wiring; a terminal that it does not have is an {@link IllegalArgumentException}. */
    public static LiveReadings of(Wiring wiring, Conditions conditions, Panel panel) {
        panel.on().forEach(t -> known(wiring, t));
        return new LiveReadings(wiring, conditions, panel);
    }

    static void known(Wiring wiring, String terminal) {
        boolean there = terminal.equals(Wiring.COMMON)
                || wiring.outputs().stream().anyMatch(o -> o.terminal().equals(terminal));
        if (!there) {
            throw new IllegalArgumentException("Terminal " + terminal + " is unknown");
        }
    }

    private Circuit.Solution settle() {
        Circuit.Solution now =
                WiringCircuit.live(wiring, conditions, panel, seated).solve();
        while (goIn(now)) {
            now = WiringCircuit.live(wiring, conditions, panel, seated).solve();
        }
        return now;
    }

    private boolean goIn(Circuit.Solution now) {
        List<String> going = new ArrayList<>();
        for (ZoneWire wire : wiring.wires()) {
            if (!seated.contains(wire.valve())
                    && pull(now, wire, false) >= wire.coil().pullInAmps()) {
                going.add(wire.valve());
            }
        }
        return seated.addAll(going);
    }

    private double pull(Circuit.Solution now, ZoneWire wire, boolean in) {
        Complex amps = now.amps(WiringCircuit.coilBranch(wire.valve()));
        return wire.coil().pull(amps, WiringCircuit.pulsation(wiring), conditions.celsius(), in);
    }

    private Circuit circuit() {
        return WiringCircuit.live(acting, conditions, panel, seated);
    }

    /** V between two terminals ({@link Wiring#COMMON} or an output's). */
    public double volts(String terminal, String other) {
        known(wiring, terminal);
        known(wiring, other);
        return between(WiringCircuit.terminal(terminal), WiringCircuit.terminal(other));
    }

    /** V between a valve's coil's leads in its box. */
    public double voltsAtCoil(String valve) {
        ZoneWire wire = wiring.wire(valve);
        return between(WiringCircuit.lead(valve), WiringCircuit.joint(wire.box()));
    }

    private double between(String node, String other) {
        Circuit metered = circuit();
        metered.join("voltmeter", node, other, Complex.real(VOLTMETER_OHMS));
        return metered.solve().volts(node, other).size();
    }

    /** A in the wires at an output's terminal, as a clamp around them shows. */
    public double amps(String terminal) {
        known(wiring, terminal);
        return solution.amps("output:" + terminal).size();
    }

    /** A that the transformer gives. */
    public double supplied() {
        return solution.amps("transformer").size();
    }

    /** What the protection does. */
    public Fuse fuse() {
        return fuse;
    }

    /** What a valve's plunger does. */
    public Plunger plunger(String valve) {
        ZoneWire wire = wiring.wire(valve);
        if (!seated.contains(valve)) {
            return Plunger.OUT;
        }
        return pull(solution, wire, true) >= wire.coil().holdAmps() ? Plunger.IN : Plunger.CHATTERS;
    }

    /** Valves whose plunger is in and held, in the wiring's order. */
    public Set<String> drawn() {
        Set<String> drawn = new LinkedHashSet<>();
        wiring.wires().stream()
                .map(ZoneWire::valve)
                .filter(v -> plunger(v) == Plunger.IN)
                .forEach(drawn::add);
        return drawn;
    }

    /**
     * Which valves each output draws when it is on alone, by terminal in the wiring's order; an output is dead where it
     * draws none. Sensor dry and not bypassed.
     */
    public static Map<String, Set<String>> drawnByOutput(Wiring wiring, Conditions conditions) {
        Map<String, Set<String>> all = new LinkedHashMap<>();
        for (Output output : wiring.outputs()) {
            all.put(
                    output.terminal(),
                    of(wiring, conditions, Panel.running(output.terminal())).drawn());
        }
        return all;
    }

    /** Complex power in VA that the transformer's source gives. */
    Complex given() {
        return solution.given();
    }

    /** Complex power in VA that all resistances and inductances take. */
    Complex taken() {
        return solution.taken();
    }
}
