package provingyard.call;

import java.util.List;
import java.util.Set;
import provingyard.scenario.Scenario;
import provingyard.world.electric.Conditions;
import provingyard.world.electric.Panel;
import provingyard.world.electric.ValveWires;
import provingyard.world.electric.Wiring;
import provingyard.world.electric.ZoneWire;

/** A site's wiring in each case, and which valves it draws when the controller runs a zone. Safe for several threads. */
final class Wires {

    /** Soil around cables in irrigated ground. */
    static final Conditions SOIL = ValveWires.SOIL;

    private final ValveWires wires;

    /** The wires of a site whose scenario lists all possible faults. */
    Wires(Scenario scenario, Wiring sound) {
        wires = ValveWires.of(scenario, sound);
    }

    /** A valve whose coil is in a box; zones before masters. */
    static String valveIn(Wiring wiring, String box) {
        return wiring.wires().stream()
                .filter(w -> w.box().equals(box))
                .map(ZoneWire::valve)
                .findFirst()
                .orElseThrow();
    }

    /** Terminal of a valve as it should be. */
    String terminal(String valve) {
        return wires.terminal(valve);
    }

    /** The wiring without fault. */
    Wiring sound() {
        return wires.sound();
    }

    /** The wiring in a case. */
    Wiring in(Case wrong) {
        return wires.with(wrong.faults());
    }

    /** Valves whose plungers come in while the controller runs a zone: of a sound one, and its normally closed master. */
    Set<String> drawn(Case wrong, String zone, boolean bypass) {
        return wires.drawn(panel(zone, bypass), wrong.faults());
    }

    /** Zone and master valves that stand open while the controller runs a zone; a normally open master unless drawn. */
    Set<String> open(Case wrong, String zone, boolean bypass) {
        return wires.open(panel(zone, bypass), wrong.faults());
    }

    /** The controller's outputs while it runs a zone: the zone's and that of a normally closed master valve. */
    Panel running(String zone) {
        return wires.panel(List.of(zone), true);
    }

    private Panel panel(String zone, boolean bypass) {
        return bypass ? running(zone).bypassed() : running(zone);
    }
}
