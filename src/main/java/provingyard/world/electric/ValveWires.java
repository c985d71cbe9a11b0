package provingyard.world.electric;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import provingyard.scenario.FaultPlan;
import provingyard.scenario.Plumbing;
import provingyard.scenario.Scenario;

/**
 * A site's valves on their wires: what each of the scenario's faults makes of the wiring, and which valves stand open when
 * the controller switches outputs on. Each question is worked out once and kept. Safe for several threads.
 *
 * <p>What happened before does not matter: protection that opens under one run's load is taken as closed again for the
 * next one.
 */
public final class ValveWires {

    /** Soil around cables in irrigated ground, °C and degree of saturation (common practice, no source). */
    public static final Conditions SOIL = Conditions.everywhere(15, 0.5);

    /** Earth leak of a cut end in saturated soil in ohm (common practice, no source). */
    private static final double CUT_END_OHMS = 5e3;

    /** A bad joint is this many times its dry resistance when wet, and leaks so many ohms (no source). */
    private static final double WET_TIMES = 6;

    private static final double SPLICE_LEAK_OHMS = 20e3;

    /** Place in m of a cut at the controller's terminals. */
    private static final double FIRST_PLACE = 1e-3;

    private record Key(List<Integer> faults, Panel panel) {}

    private final Wiring sound;
    private final List<FaultPlan> faults;
    private final List<String> zones = new ArrayList<>();
    /** Master valves, and whether each is normally open. */
    private final Map<String, Boolean> masters = new LinkedHashMap<>();

    private final Map<List<Integer>, Wiring> wirings = new ConcurrentHashMap<>();
    private final Map<Key, Set<String>> drawn = new ConcurrentHashMap<>();

    private ValveWires(Scenario scenario, Wiring sound) {
        this.sound = sound;
        faults = scenario.faults();
        for (Plumbing.Fitting fitting : scenario.plumbing().fittings()) {
            if (fitting.kind() == Plumbing.FittingKind.ZONE_VALVE) {
                zones.add(fitting.id());
            } else if (fitting.kind() == Plumbing.FittingKind.MASTER_VALVE) {
                masters.put(fitting.id(), fitting.normally() == Plumbing.Normally.OPEN);
            }
        }
    }

    /** The site's valves on the usual wiring. */
    public static ValveWires of(Scenario scenario) {
        return of(scenario, Wiring.usual(scenario));
    }

    /** The site's valves on a wiring without fault. */
    public static ValveWires of(Scenario scenario, Wiring sound) {
        return new ValveWires(scenario, sound);
    }

    /** Whether a kind of fault is one of coils, wires, joints, outputs or the transformer. */
    public static boolean isElectric(FaultPlan.Kind kind) {
        return switch (kind) {
            case COIL_OPEN,
                    COIL_SHORTED,
                    WIRE_CUT,
                    COMMON_CUT,
                    SPLICE_BAD,
                    OUTPUT_DEAD,
                    TRANSFORMER_DEAD,
                    ZONES_ON_ONE_OUTPUT -> true;
            default -> false;
        };
    }

    /** The wiring without fault. */
    public Wiring sound() {
        return sound;
    }

    /** Terminal of a valve as it should be. */
    public String terminal(String valve) {
        return sound.wire(valve).terminal();
    }

    /** The wiring while some of the scenario's faults act; a stuck rain sensor's loop is broken or bridged. */
    public Wiring with(Collection<Integer> acting) {
        return wirings.computeIfAbsent(ordered(acting), all -> {
            Wiring wiring = sound;
            for (int fault : all) {
                Optional<ElectricFault> change = change(faults.get(fault));
                wiring = change.isPresent() ? change.get().in(wiring) : wiring;
            }
            return wiring;
        });
    }

    /**
     * The controller's outputs.
     *
     * @param running zones that it wants to run
     * @param masterOpen whether it wants the master valve open: one that is normally open gets its output to be shut
     */
    public Panel panel(Collection<String> running, boolean masterOpen) {
        Set<String> on = new LinkedHashSet<>();
        running.forEach(zone -> on.add(terminal(zone)));
        masters.forEach((master, restsOpen) -> {
            if (restsOpen != masterOpen) {
                on.add(terminal(master));
            }
        });
        return Panel.running(on.toArray(String[]::new));
    }

    /** Valves whose plungers are in while outputs are on and some faults act. */
    public Set<String> drawn(Panel panel, Collection<Integer> acting) {
        return drawn.computeIfAbsent(
                new Key(ordered(acting), panel),
                k -> LiveReadings.of(with(k.faults()), SOIL, panel).drawn());
    }

    /** Zone and master valves that stand open while outputs are on and some faults act, in the document's order. */
    public Set<String> open(Panel panel, Collection<Integer> acting) {
        Set<String> in = drawn(panel, acting);
        Set<String> open = new LinkedHashSet<>();
        masters.forEach((master, restsOpen) -> {
            if (restsOpen != in.contains(master)) {
                open.add(master);
            }
        });
        zones.stream().filter(in::contains).forEach(open::add);
        return open;
    }

    private static List<Integer> ordered(Collection<Integer> acting) {
        return acting.stream().distinct().sorted().toList();
    }

    private Optional<ElectricFault> change(FaultPlan fault) {
        String on = fault.on();
        return Optional.ofNullable(
                switch (fault.kind()) {
                    case COIL_OPEN -> new ElectricFault.CoilOpen(on);
                    case COIL_SHORTED -> new ElectricFault.CoilShort(on, fault.amount());
                    case WIRE_CUT -> new ElectricFault.WireCut(on, new Cut(within(on, fault.along()), CUT_END_OHMS));
                    case COMMON_CUT -> commonCut(sound.wire(on).box());
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

    /** A place on a valve's wire: where that is beyond its ends, which no document can know, the nearest one. */
    private double within(String valve, double along) {
        return Math.max(FIRST_PLACE, Math.min(along, Math.nextDown(sound.length(valve))));
    }

    /** Beyond the last box there is nothing to be cut. */
    private ElectricFault commonCut(String box) {
        boolean last = sound.boxes().indexOf(sound.box(box)) == sound.boxes().size() - 1;
        return last ? null : new ElectricFault.CommonOpenAfter(box);
    }

    /** The zone before another in the document's order; of the first, the second; of the only one, itself. */
    private String before(String zone) {
        int at = zones.indexOf(zone);
        return zones.get(at > 0 ? at - 1 : Math.min(1, zones.size() - 1));
    }
}
