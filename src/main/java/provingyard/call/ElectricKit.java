package provingyard.call;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import provingyard.call.FieldTest.Measure;
import provingyard.call.FieldTest.Quantity;
import provingyard.diagnosis.Action.Leg;
import provingyard.diagnosis.Instrument;
import provingyard.diagnosis.SiteState;
import provingyard.world.electric.Cut;
import provingyard.world.electric.LiveReadings;
import provingyard.world.electric.OhmReadings;
import provingyard.world.electric.Panel;
import provingyard.world.electric.Wiring;
import provingyard.world.electric.ZoneWire;

/**
 * Tests of the controller's low-voltage side: volts, ohms and amperes by the circuit of the wiring, a swap of wires by the
 * circuit and the pipes, the wire locator by the wire's length. All minutes and accuracies are common practice, no source.
 * Mains electricity is no test.
 */
final class ElectricKit implements TestKit {

    static final String VOLTS = "voltsAtTerminal";
    static final String OHMS = "ohmsToCommon";
    static final String COIL = "ohmsAtCoil";
    static final String CLAMP = "clampAmps";
    static final String SWAP = "swapOutput";
    static final String TRACE = "traceWire";

    /** Answers of {@link #SWAP}, in order. */
    static final List<String> RUNS = List.of("runs", "doesNotRun");

    /** End of the ohmmeter's range in ohm: what no way joins shows as this. */
    static final double OPEN_OHMS = 2000;

    /** Metres beyond the last box that the wire locator can show. */
    private static final double BEYOND = 5;

    private static final Instrument VOLTMETER = new Instrument(0.05, 0.02, 0.1, 0, 40);
    private static final Instrument OHMMETER = new Instrument(0.2, 0.01, 0.1, 0, OPEN_OHMS);
    private static final Instrument CLAMP_METER = new Instrument(0.005, 0.05, 0.01, 0, 5);

    /** What is asked of which wiring: most cases share the sound one. */
    private record Asked(String kind, String zone, Wiring wiring, boolean bypass) {}

    private final Ground ground;
    private final Wires wires;
    private final Map<Asked, Double> numbers = new ConcurrentHashMap<>();
    private final Map<Asked, Set<String>> drawn = new ConcurrentHashMap<>();
    private final List<String> zones;
    private final List<FieldTest> tests;

    ElectricKit(Ground ground) {
        this.ground = ground;
        wires = ground.wires();
        zones = ground.pipes().zones();
        tests = all();
    }

    private List<FieldTest> all() {
        List<FieldTest> all = new ArrayList<>();
        zones.forEach(z -> all.add(atController(VOLTS, z, 2, number(Quantity.VOLTS, VOLTMETER), z)));
        zones.forEach(z -> all.add(atController(OHMS, z, 2, number(Quantity.OHMS, OHMMETER), null)));
        zones.forEach(z -> all.add(inBox(COIL, z, 8, number(Quantity.OHMS, OHMMETER))));
        zones.forEach(z -> all.add(atController(CLAMP, z, 3, number(Quantity.AMPERES, CLAMP_METER), z)));
        if (zones.size() > 1) {
            zones.forEach(z -> all.add(swap(z)));
        }
        Wiring wiring = wires.sound();
        Instrument locator = new Instrument(0.5, 0, 0.1, 0, wiring.length(Wiring.COMMON) + BEYOND);
        zones.forEach(z -> all.add(trace(z, number(Quantity.METRES, locator))));
        return List.copyOf(all);
    }

    private static Measure number(Quantity quantity, Instrument instrument) {
        return new Measure.Number(quantity, instrument, 0);
    }

    private FieldTest atController(String kind, String zone, double minutes, Measure measure, String runs) {
        return test(kind, zone, List.of(new Leg(CallSite.CONTROLLER, minutes, Map.of())), measure, runs);
    }

    private FieldTest inBox(String kind, String zone, double minutes, Measure measure) {
        return test(kind, zone, List.of(new Leg(box(zone), minutes, Map.of())), measure, null);
    }

    private FieldTest swap(String zone) {
        List<Leg> legs = new ArrayList<>(ground.allOpen(false));
        legs.add(new Leg(CallSite.CONTROLLER, 3, Map.of()));
        return test(SWAP, zone, legs, new Measure.Answers(RUNS), neighbour(zone));
    }

    /** The sender is clipped on at the controller, then the route is walked to the box. */
    private FieldTest trace(String zone, Measure measure) {
        List<Leg> legs = List.of(new Leg(CallSite.CONTROLLER, 5, Map.of()), new Leg(box(zone), 20, Map.of()));
        return test(TRACE, zone, legs, measure, null);
    }

    private FieldTest test(String kind, String zone, List<Leg> legs, Measure measure, String runs) {
        String last = legs.get(legs.size() - 1).place();
        return FieldTest.plain(kind, zone, ground.places().get(last), Tool.MULTIMETER, legs, measure, runs);
    }

    private String box(String zone) {
        return wires.sound().wire(zone).box();
    }

    /** The zone after another in the document's order, the first after the last. */
    private String neighbour(String zone) {
        return zones.get((zones.indexOf(zone) + 1) % zones.size());
    }

    @Override
    public List<FieldTest> tests() {
        return tests;
    }

    @Override
    public Expected expected(FieldTest test, SiteState state, Case wrong) {
        Asked asked = new Asked(test.kind(), test.target(), wires.in(wrong), Handled.bypassed(state));
        if (test.kind().equals(SWAP)) {
            return Expected.Odds.sure(isSeenSwapped(asked, state, wrong) ? 0 : 1, RUNS.size());
        }
        return new Expected.Number(numbers.computeIfAbsent(asked, this::number));
    }

    private double number(Asked asked) {
        String zone = asked.zone();
        String terminal = wires.terminal(zone);
        OhmReadings ohms = new OhmReadings(asked.wiring(), Wires.SOIL);
        return switch (asked.kind()) {
            case VOLTS -> live(asked).volts(terminal, Wiring.COMMON);
            case OHMS -> Math.min(ohms.toCommon(terminal), OPEN_OHMS);
            case COIL -> Math.min(ohms.coil(zone), OPEN_OHMS);
            case CLAMP -> live(asked).amps(terminal);
            case TRACE -> signalEnds(zone, asked.wiring());
            default -> throw new IllegalArgumentException(asked.kind() + " is no electrical test");
        };
    }

    private LiveReadings live(Asked asked) {
        return LiveReadings.of(asked.wiring(), Wires.SOIL, panel(asked.zone(), asked.bypass()));
    }

    private Panel panel(String zone, boolean bypass) {
        Panel panel = wires.running(zone);
        return bypass ? panel.bypassed() : panel;
    }

    /** Whether a zone's water is seen with what is on its terminal and on its neighbour's put in each other's place. */
    private boolean isSeenSwapped(Asked asked, SiteState state, Case wrong) {
        Set<String> in = drawn.computeIfAbsent(asked, this::drawnSwapped);
        return ground.isSeen(asked.zone(), ground.through(in, true, ground.hands(state), wrong));
    }

    private Set<String> drawnSwapped(Asked asked) {
        String neighbour = neighbour(asked.zone());
        String own = wires.terminal(asked.zone());
        String good = wires.terminal(neighbour);
        Wiring changed = asked.wiring();
        for (ZoneWire wire : asked.wiring().wires()) {
            if (wire.terminal().equals(own)) {
                changed = changed.moved(wire.valve(), good);
            } else if (wire.terminal().equals(good)) {
                changed = changed.moved(wire.valve(), own);
            }
        }
        return LiveReadings.of(changed, Wires.SOIL, panel(neighbour, asked.bypass()))
                .drawn();
    }

    /** Metres along the route at which a signal on a zone's wire ends: its first cut, or else its box. */
    private static double signalEnds(String zone, Wiring wiring) {
        return wiring.wire(zone).cuts().stream().mapToDouble(Cut::metres).min().orElse(wiring.length(zone));
    }
}
