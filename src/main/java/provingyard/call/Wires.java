package provingyard.call;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import provingyard.scenario.FaultPlan;
import provingyard.world.electric.Conditions;
import provingyard.world.electric.Cut;
import provingyard.world.electric.ElectricFault;
import provingyard.world.electric.LiveReadings;
import provingyard.world.electric.Panel;
import provingyard.world.electric.Splice;
import provingyard.world.electric.Wiring;
import provingyard.world.electric.ZoneWire;

/** A site's wiring in each case, and which valves it draws when the controller runs a zone. Safe for several threads. */
final class Wires {

    /** Soil around cables in irrigated ground, °C and degree of saturation (common practice, no source). */
    static final Conditions SOIL = Conditions.everywhere(15, 0.5);

    /** Earth leak of a cut end in saturated soil in ohm (common practice, no source). */
    private static final double CUT_END_OHMS = 5e3;

    /** A bad joint is this many times its dry resistance when wet, and leaks so many ohms (no source). */
    private static final double WET_TIMES = 6;

    private static final double SPLICE_LEAK_OHMS = 20e3;

    private record Key(Case wrong, String zone, boolean bypass) {}

    private final Wiring sound;
    private final List<String> zones;
    private final List<String> withRuns;
    private final List<FaultPlan> faults;
    private final Map<Case, Wiring> wirings = new ConcurrentHashMap<>();
    private final Map<Key, Set<String>> drawn = new ConcurrentHashMap<>();

    /**
     * The wires of a site.
     *
     * @param withRuns valves whose outputs are on with each run: normally closed master valves
     */
    Wires(Wiring sound, List<String> zones, List<String> withRuns, List<FaultPlan> faults) {
        this.sound = sound;
        this.zones = List.copyOf(zones);
        this.withRuns = List.copyOf(withRuns);
        this.faults = faults;
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
        return sound.wire(valve).terminal();
    }

    /** The wiring without fault. */
    Wiring sound() {
        return sound;
    }

    /** The wiring in a case. */
    Wiring in(Case wrong) {
        return wirings.computeIfAbsent(wrong, w -> {
            Wiring wiring = sound;
            for (int fault : w.faults()) {
                Optional<ElectricFault> change = change(faults.get(fault));
                wiring = change.isPresent() ? change.get().in(wiring) : wiring;
            }
            return wiring;
        });
    }

    /** Valves whose plungers come in while the controller runs a zone, the master valve's with it. */
    Set<String> drawn(Case wrong, String zone, boolean bypass) {
        return drawn.computeIfAbsent(new Key(wrong, zone, bypass), k -> {
            Panel panel = running(zone);
            LiveReadings live = LiveReadings.of(in(wrong), SOIL, bypass ? panel.bypassed() : panel);
            return new LinkedHashSet<>(live.drawn());
        });
    }

    /** The controller's outputs while it runs a zone. */
    Panel running(String zone) {
        List<String> on = new ArrayList<>(List.of(terminal(zone)));
        withRuns.forEach(v -> on.add(terminal(v)));
        return Panel.running(on.toArray(String[]::new));
    }

    private Optional<ElectricFault> change(FaultPlan fault) {
        String on = fault.on();
        return Optional.ofNullable(
                switch (fault.kind()) {
                    case COIL_OPEN -> new ElectricFault.CoilOpen(on);
                    case COIL_SHORTED -> new ElectricFault.CoilShort(on, fault.amount());
                    case WIRE_CUT -> new ElectricFault.WireCut(on, new Cut(fault.along(), CUT_END_OHMS));
                    case COMMON_CUT ->
                        new ElectricFault.CommonOpenAfter(sound.wire(on).box());
                    case SPLICE_BAD ->
                        new ElectricFault.BadSplice(
                                on, new Splice(fault.amount(), WET_TIMES * fault.amount(), SPLICE_LEAK_OHMS));
                    case OUTPUT_DEAD -> new ElectricFault.OutputDead(terminal(on));
                    case TRANSFORMER_DEAD -> new ElectricFault.TransformerDead();
                    case ZONES_ON_ONE_OUTPUT -> new ElectricFault.TwoOnOne(on, before(on));
                    case RAIN_STUCK -> new ElectricFault.SensorOpen();
                    case RAIN_STUCK_DRY -> new ElectricFault.SensorShorted();
                    default -> null;
                });
    }

    /** The zone before another in the document's order; of the first, the second. */
    private String before(String zone) {
        int at = zones.indexOf(zone);
        return zones.get(at == 0 ? 1 : at - 1);
    }
}
