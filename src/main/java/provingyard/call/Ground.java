package provingyard.call;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import provingyard.diagnosis.Action;
import provingyard.diagnosis.SafetyGates;
import provingyard.diagnosis.SiteState;
import provingyard.scenario.FaultPlan;
import provingyard.scenario.Plumbing;
import provingyard.scenario.Plumbing.FittingKind;
import provingyard.scenario.Point;
import provingyard.scenario.Scenario;
import provingyard.setup.Placement;
import provingyard.setup.SetUp;
import provingyard.world.electric.Wiring;
import provingyard.world.hydraulics.Hands;
import provingyard.world.hydraulics.WaterFlows;
import provingyard.world.hydraulics.Waterworks;

/**
 * What all families of tests stand on: the site with all its possible faults, its pipes, wires and places.
 */
final class Ground {

    /** Minutes to turn a valve and let it settle (common practice, no source). */
    static final double TURN = 2;

    /** Minutes to relieve the pressure behind it. */
    private static final double RELIEVE = 2;

    /** Metres before a fitting at which what presses on it is looked up. */
    private static final double BEFORE = 0.01;

    private static final double SEEN = 0.1;

    private final Scenario scenario;
    private final SetUp installed;
    private final Suspects suspects;
    private final Waterworks pipes;
    private final Wires wires;
    private final Map<String, Point> places = new LinkedHashMap<>();
    private final LastDays days;

    /** The ground of a site whose scenario lists all possible faults. */
    Ground(Scenario scenario, SetUp installed, Suspects suspects, Wiring wiring) {
        this.scenario = scenario;
        this.installed = installed;
        this.suspects = suspects;
        pipes = Waterworks.of(scenario);
        wires = new Wires(scenario, wiring);
        places.put(CallSite.CONTROLLER, Wiring.controllerOf(scenario));
        for (Plumbing.Fitting fitting : scenario.plumbing().fittings()) {
            places.put(fitting.id(), pipes.path(fitting.on()).pointAt(fitting.along()));
        }
        scenario.plumbing().heads().forEach(h -> places.put(h.id(), h.at()));
        wiring.boxes().forEach(b -> places.put(b.id(), b.at()));
        installed.sensors().forEach(this::sensor);
        for (String pipe : pipes.mainline()) {
            for (double along : suspects.cells(pipe)) {
                places.put(suspects.cellClass(pipe, along), pipes.path(pipe).pointAt(along));
            }
        }
        days = new LastDays(this);
    }

    private void sensor(Placement placement) {
        places.put(placement.id(), place(placement));
    }

    private Point place(Placement placement) {
        if (placement instanceof Placement.Flow flow) {
            return pipes.path(flow.on()).pointAt(flow.along());
        }
        if (placement instanceof Placement.Rain rain) {
            return rain.at();
        }
        if (placement instanceof Placement.Wind wind) {
            return wind.at();
        }
        return placement instanceof Placement.Freeze freeze ? freeze.at() : ((Placement.Soil) placement).at();
    }

    /** All families of tests. */
    List<TestKit> kits() {
        return List.of(
                new PipeKit(this),
                new FilterKit(this),
                new HouseKit(this),
                new DecayKit(this),
                new ZoneKit(this),
                new WalkKit(this),
                new ElectricKit(this),
                new SensorKit(this));
    }

    /** Fittings of a kind in the document's order. */
    List<Plumbing.Fitting> fittings(FittingKind kind) {
        return scenario.plumbing().fittings().stream()
                .filter(f -> f.kind() == kind)
                .toList();
    }

    /** The fitting at the point of connection: backflow preventer, else the first that can be shut. */
    String pointOfConnection() {
        for (FittingKind kind :
                List.of(FittingKind.BACKFLOW_PREVENTER, FittingKind.ISOLATION_VALVE, FittingKind.METER)) {
            if (!fittings(kind).isEmpty()) {
                return fittings(kind).get(0).id();
            }
        }
        return scenario.plumbing().fittings().get(0).id();
    }

    /**
     * The meter and its stop, where all water can be read and shut, so that a leak right behind it stops too; where there is
     * none, what stands at the point of connection.
     */
    String meter() {
        List<Plumbing.Fitting> meters = fittings(FittingKind.METER);
        return meters.isEmpty() ? pointOfConnection() : meters.get(0).id();
    }

    /** What flows while nothing runs. */
    WaterFlows atRest(SiteState state, Case wrong) {
        boolean[] none = new boolean[pipes.zones().size()];
        return pipes.flows(none, pipes.masterOpenAtRest(), hands(state), wrong.faults());
    }

    /** What flows while the controller runs a zone, through the valves that its wires draw. */
    WaterFlows running(String zone, SiteState state, Case wrong) {
        Set<String> drawn = wires.drawn(wrong, zone, Handled.bypassed(state));
        return through(drawn, true, hands(state), wrong);
    }

    /**
     * What flows through the valves that wires draw; a normally open master valve stands open.
     *
     * @param allowed whether no alarm holds the master valve shut
     */
    WaterFlows through(Set<String> drawn, boolean allowed, Hands hands, Case wrong) {
        boolean[] open = new boolean[pipes.zones().size()];
        for (int z = 0; z < open.length; z++) {
            open[z] = drawn.contains(pipes.zones().get(z));
        }
        boolean master = pipes.masterOpenAtRest()
                || fittings(FittingKind.MASTER_VALVE).stream().anyMatch(f -> drawn.contains(f.id()));
        return pipes.flows(open, allowed && master, hands, wrong.faults());
    }

    /** Whether a zone's water is seen: it takes a tenth of its usual flow at least (common practice, no source). */
    boolean isSeen(String zone, WaterFlows flows) {
        int z = pipes.zones().indexOf(zone);
        double usual = through(wires.drawn(Case.SOUND, zone, false), true, Hands.OFF, Case.SOUND)
                .zones()[z];
        return flows.zones()[z] >= SEEN * usual;
    }

    /** What flows while a zone's valve is opened by hand at its box, and the master valve with it. */
    WaterFlows byHand(String zone, SiteState state, Case wrong) {
        boolean[] none = new boolean[pipes.zones().size()];
        return pipes.flows(none, pipes.masterOpenAtRest(), opened(zone, hands(state)), wrong.faults());
    }

    /** Hands that open a zone's valve at its box, and the master valve with it, beside what they hold. */
    Hands opened(String zone, Hands now) {
        List<String> opened = new ArrayList<>(now.opened());
        opened.add(zone);
        fittings(FittingKind.MASTER_VALVE).forEach(f -> opened.add(f.id()));
        return Hands.of(opened, now.shut());
    }

    /** What flows while the main lives and nothing runs, with all valves as found. */
    WaterFlows byMaster(Case wrong) {
        boolean[] none = new boolean[pipes.zones().size()];
        return pipes.flows(none, true, Hands.OFF, wrong.faults());
    }

    /** The valves that hands hold in a state. */
    Hands hands(SiteState state) {
        return Handled.hands(scenario.plumbing(), state);
    }

    /**
     * What has a handle beside the meter's stop: the shut-off at the point of connection, the isolation valves, and filters
     * that the meter's stop does not cut off.
     */
    private Set<String> valves() {
        Set<String> valves = new LinkedHashSet<>(List.of(pointOfConnection()));
        fittings(FittingKind.ISOLATION_VALVE).forEach(f -> valves.add(f.id()));
        fittings(FittingKind.FILTER).stream().filter(this::isAboveTheStop).forEach(f -> valves.add(f.id()));
        return valves;
    }

    /**
     * The leg that makes a fitting safe to open: the water before it is shut and the pressure relieved. That is the meter's
     * stop, or where the fitting stands above it, its own shut-off right before it (common practice, no source).
     */
    Action.Leg relieved(String fitting) {
        String shut = fittings(FittingKind.FILTER).stream()
                .filter(f -> f.id().equals(fitting) && isAboveTheStop(f))
                .map(Plumbing.Fitting::id)
                .findFirst()
                .orElseGet(this::meter);
        Map<String, String> sets =
                Map.of(Handled.valve(shut), Handled.SHUT, SafetyGates.PRESSURE, SafetyGates.RELIEVED);
        return new Action.Leg(shut, TURN + RELIEVE, sets);
    }

    /** Whether water still presses on a fitting with the meter's stop shut. */
    private boolean isAboveTheStop(Plumbing.Fitting fitting) {
        boolean[] none = new boolean[pipes.zones().size()];
        Hands stop = Hands.of(List.of(), List.of(meter()));
        WaterFlows flows = pipes.flows(none, pipes.masterOpenAtRest(), stop, List.of());
        return flows.pressureAt(fitting.on(), fitting.along() - BEFORE) > 0;
    }

    /**
     * Legs that bring all valves into their usual state, each left out where it holds.
     *
     * @param mainAlive whether a master valve that rests shut is opened by hand, so that the main has pressure
     */
    List<Action.Leg> allOpen(boolean mainAlive) {
        List<Action.Leg> legs = new ArrayList<>();
        String first = meter();
        legs.add(new Action.Leg(first, TURN, Map.of(Handled.valve(first), "", SafetyGates.PRESSURE, "")));
        for (String valve : valves()) {
            if (!valve.equals(first)) {
                legs.add(new Action.Leg(valve, TURN, Map.of(Handled.valve(valve), "")));
            }
        }
        fittings(FittingKind.MASTER_VALVE).forEach(m -> legs.add(master(m, mainAlive)));
        return legs;
    }

    /** A master valve that was shut by hand for a test is let go; one that rests shut is opened where the main shall live. */
    private static Action.Leg master(Plumbing.Fitting master, boolean mainAlive) {
        String valve = Handled.valve(master.id());
        boolean restsOpen = master.normally() == Plumbing.Normally.OPEN;
        if (restsOpen || !mainAlive) {
            return new Action.Leg(master.id(), TURN, Map.of(valve, ""), Map.of(valve, Handled.SHUT));
        }
        return new Action.Leg(master.id(), TURN, Map.of(valve, Handled.OPEN));
    }

    /** The days before the arrival. */
    LastDays days() {
        return days;
    }

    /** The site; its faults are all that may be wrong. */
    Scenario scenario() {
        return scenario;
    }

    /** The set-up that is on the site. */
    SetUp installed() {
        return installed;
    }

    Suspects suspects() {
        return suspects;
    }

    /** A fault by its number. */
    FaultPlan fault(int index) {
        return scenario.faults().get(index);
    }

    Waterworks pipes() {
        return pipes;
    }

    Wires wires() {
        return wires;
    }

    /** Places by id: the controller, fittings, heads, boxes, sensors, cells of mainlines by their repair class. */
    Map<String, Point> places() {
        return places;
    }
}
