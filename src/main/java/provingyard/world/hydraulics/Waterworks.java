package provingyard.world.hydraulics;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import provingyard.scenario.FaultPlan;
import provingyard.scenario.Plumbing;
import provingyard.scenario.Point;
import provingyard.scenario.Scenario;

/**
 * The site's plumbing made ready: which valves are open and which faults act decide all flows. Each configuration is
 * solved once, from a cold start, and kept; so the answer depends on the configuration alone and not on the way to it.
 * Safe for several threads.
 */
public final class Waterworks {

    /** A configuration: zone and master valves that stand open, what people hold, faults that act, rising. */
    private record Configuration(long zones, long masters, Hands hands, List<Integer> faults) {

        boolean acts(int fault) {
            return Collections.binarySearch(faults, fault) >= 0;
        }

        boolean opens(int zone) {
            return (zones >> zone & 1) != 0;
        }

        boolean opensMaster(int master) {
            return (masters >> master & 1) != 0;
        }
    }

    private final Scenario scenario;
    private final PlumbingGraph graph;
    private final Network network;
    private final List<Plumbing.Fitting> zones = new ArrayList<>();
    private final List<Plumbing.Fitting> masters = new ArrayList<>();
    private final Map<String, String> tapNodes = new HashMap<>();
    private final Map<Configuration, WaterFlows> known = new ConcurrentHashMap<>();

    private Waterworks(Scenario scenario) {
        this.scenario = scenario;
        graph = PlumbingGraph.of(scenario);
        for (Plumbing.Fitting fitting : scenario.plumbing().fittings()) {
            if (fitting.kind() == Plumbing.FittingKind.ZONE_VALVE) {
                zones.add(fitting);
            } else if (fitting.kind() == Plumbing.FittingKind.MASTER_VALVE) {
                masters.add(fitting);
            }
        }
        network = PlumbingNetwork.of(scenario, graph);
        graph.taps().forEach(t -> tapNodes.put(t.id(), t.node()));
    }

    /** The plumbing of a site; at most 63 zones. */
    public static Waterworks of(Scenario scenario) {
        return new Waterworks(scenario);
    }

    /** Zone valve ids, in the document's order. */
    public List<String> zones() {
        return zones.stream().map(Plumbing.Fitting::id).toList();
    }

    /** Master valve ids, in the document's order. */
    public List<String> masters() {
        return masters.stream().map(Plumbing.Fitting::id).toList();
    }

    /** Whether water stands behind the master valve while nothing runs (also where there is none). */
    public boolean masterOpenAtRest() {
        return masters.stream().allMatch(m -> m.normally() == Plumbing.Normally.OPEN);
    }

    /** The drawn way of a pipe. */
    public PipePath path(String pipe) {
        return graph.paths().get(pipe);
    }

    /** Pipes on which no zone valve's water runs: service and mainline, in the document's order. */
    public List<String> mainline() {
        List<String> main = new ArrayList<>();
        for (Plumbing.Pipe pipe : scenario.plumbing().pipes()) {
            boolean lateral = graph.laterals().values().stream().anyMatch(l -> l.contains(pipe.id()));
            if (!lateral) {
                main.add(pipe.id());
            }
        }
        return main;
    }

    /** Inner diameter of a pipe in m. */
    public double innerDiameter(String pipe) {
        Plumbing.Pipe plan = scenario.plumbing().pipes().stream()
                .filter(p -> p.id().equals(pipe))
                .findFirst()
                .orElseThrow();
        return PlumbingGraph.size(graph.make(plan), plan.size()).inner();
    }

    /**
     * Straight pipe around a place: m to the next bend, fitting, tap or pipe end, up the way and down the way.
     *
     * @return upstream and downstream length
     */
    public double[] straight(String pipe, double along) {
        double up = along;
        double down = path(pipe).length() - along;
        List<Double> disturbances = new ArrayList<>(path(pipe).corners());
        scenario.plumbing().fittings().stream()
                .filter(f -> f.on().equals(pipe))
                .forEach(f -> disturbances.add(f.along()));
        graph.parts().stream()
                .filter(p -> p.pipe().equals(pipe) && p.start() > 0)
                .forEach(p -> {
                    boolean tapped = graph.taps().stream()
                            .anyMatch(t -> t.node().equals(p.from()) && !t.id().startsWith("leak-"));
                    if (tapped) {
                        disturbances.add(p.start());
                    }
                });
        for (double at : disturbances) {
            if (at <= along) {
                up = Math.min(up, along - at);
            } else {
                down = Math.min(down, at - along);
            }
        }
        return new double[] {up, down};
    }

    /** Where a leak or break of the scenario is. */
    public Point leakAt(int fault) {
        FaultPlan plan = scenario.faults().get(fault);
        return path(graph.leakPipe(plan)).pointAt(graph.leakAlong(plan));
    }

    /**
     * What flows while nobody touches anything.
     *
     * @param open zones that the controller opens, in the document's order
     * @param masterOpen whether the controller lets the master valve be open
     * @param faults bit i is set while the scenario's i-th fault acts; the first 63 can
     */
    public WaterFlows flows(boolean[] open, boolean masterOpen, long faults) {
        return flows(open, masterOpen, Hands.OFF, acting(faults));
    }

    /** The scenario's faults of a mask: bit i stands for the i-th, of the first 63. */
    public List<Integer> acting(long faults) {
        List<Integer> acting = new ArrayList<>();
        for (int i = 0; i < Math.min(scenario.faults().size(), Long.SIZE - 1); i++) {
            if ((faults >> i & 1) != 0) {
                acting.add(i);
            }
        }
        return acting;
    }

    /**
     * What flows.
     *
     * @param open zones that the controller opens, in the document's order
     * @param masterOpen whether the controller lets the master valve be open
     * @param hands valves that people hold
     * @param acting the scenario's faults that act
     */
    public WaterFlows flows(boolean[] open, boolean masterOpen, Hands hands, Collection<Integer> acting) {
        long mask = 0;
        for (int i = 0; i < open.length; i++) {
            mask |= open[i] ? 1L << i : 0;
        }
        return flows(mask, masterOpen ? -1L : 0, hands, acting);
    }

    /**
     * What flows.
     *
     * @param open zone and master valves that stand open, by id
     * @param hands valves that people hold
     * @param acting the scenario's faults that act
     */
    public WaterFlows flows(Set<String> open, Hands hands, Collection<Integer> acting) {
        return flows(mask(zones, open), mask(masters, open), hands, acting);
    }

    private static long mask(List<Plumbing.Fitting> valves, Set<String> open) {
        long mask = 0;
        for (int i = 0; i < valves.size(); i++) {
            mask |= open.contains(valves.get(i).id()) ? 1L << i : 0;
        }
        return mask;
    }

    private WaterFlows flows(long open, long openMasters, Hands hands, Collection<Integer> acting) {
        long ofMasters = openMasters & (1L << masters.size()) - 1;
        List<Integer> faults = acting.stream()
                .filter(i -> isHydraulic(scenario.faults().get(i).kind()))
                .distinct()
                .sorted()
                .toList();
        Configuration configuration = new Configuration(open, ofMasters, hands, faults);
        WaterFlows flows = known.get(configuration);
        if (flows == null) {
            flows = solve(configuration);
            known.put(configuration, flows);
        }
        return flows;
    }

    /** Whether a kind of fault is one of pipes, valves, heads or supply. */
    public static boolean isHydraulic(FaultPlan.Kind kind) {
        return switch (kind) {
            case MAINLINE_BREAK,
                    MAINLINE_LEAK,
                    LATERAL_BREAK,
                    HOUSE_RUNS,
                    VALVE_STUCK_OPEN,
                    VALVE_WEEPS,
                    VALVE_STUCK_SHUT,
                    MASTER_STUCK_OPEN,
                    MASTER_STUCK_SHUT,
                    VALVE_PARTLY_SHUT,
                    FILTER_CLOGGED,
                    SUPPLY_LOW,
                    REGULATOR_LOW,
                    HEAD_BROKEN,
                    NOZZLE_CLOGGED -> true;
            default -> false;
        };
    }

    private WaterFlows solve(Configuration configuration) {
        NetworkState state = network.newState();
        for (int z = 0; z < zones.size(); z++) {
            state.setOpen(network.link(zones.get(z).id()), configuration.opens(z));
        }
        for (int m = 0; m < masters.size(); m++) {
            state.setOpen(network.link(masters.get(m).id()), configuration.opensMaster(m));
        }
        configuration.hands().opened().forEach(id -> state.setOpen(network.link(id), true));
        for (int i : configuration.faults()) {
            apply(state, i, scenario.faults().get(i));
        }
        configuration.faults().forEach(i -> shutIfStuck(state, scenario.faults().get(i)));
        for (int i : configuration.faults()) {
            putInstead(state, i, scenario.faults().get(i), configuration.hands());
        }
        configuration.hands().shut().forEach(id -> shut(state, id, configuration));
        new NetworkSolver(network).solve(state);
        return read(state, configuration);
    }

    private void apply(NetworkState state, int index, FaultPlan fault) {
        switch (fault.kind()) {
            case MAINLINE_BREAK, MAINLINE_LEAK, LATERAL_BREAK, HOUSE_RUNS ->
                state.setOutletK(network.outlet(PlumbingGraph.leakId(index)), PlumbingNetwork.leakFactor(fault));
            case VALVE_STUCK_OPEN, MASTER_STUCK_OPEN -> state.setOpen(network.link(fault.on()), true);
            case VALVE_WEEPS -> state.setOpen(network.link(PlumbingNetwork.weepId(index)), true);
            case HEAD_BROKEN -> scale(state, fault.on(), 1 + fault.amount());
            case NOZZLE_CLOGGED -> scale(state, fault.on(), Math.max(0, 1 - fault.amount()));
            case SUPPLY_LOW -> {
                Plumbing.Supply supply = scenario.plumbing().supply();
                int source = network.node(PlumbingNetwork.sourceId(supply));
                double lost = PlumbingNetwork.supplyShare(supply, fault.amount());
                state.setSourceHead(source, network.fixedHead[network.slotOf[source]] - lost);
            }
            default -> {
                // Faults of sensors and wires do not touch the water; valves that stick shut come last.
            }
        }
    }

    /** A valve that sticks shut lets nothing through, also where another of its faults would hold it open. */
    private void shutIfStuck(NetworkState state, FaultPlan fault) {
        if (fault.kind() == FaultPlan.Kind.VALVE_STUCK_SHUT || fault.kind() == FaultPlan.Kind.MASTER_STUCK_SHUT) {
            state.setOpen(network.link(fault.on()), false);
        }
    }

    /** A clogged filter, a half shut valve or a low regulator takes the place of the sound one. */
    private void putInstead(NetworkState state, int index, FaultPlan fault, Hands hands) {
        boolean replaces =
                switch (fault.kind()) {
                    case VALVE_PARTLY_SHUT, FILTER_CLOGGED, REGULATOR_LOW -> true;
                    default -> false;
                };
        if (replaces) {
            state.setOpen(network.link(fault.on()), false);
            state.setOpen(
                    network.link(PlumbingNetwork.insteadId(index)),
                    !hands.shut().contains(fault.on()));
        }
    }

    /** Hands shut what is not stuck open. */
    private void shut(NetworkState state, String fitting, Configuration configuration) {
        boolean stuck = configuration.faults().stream()
                .map(scenario.faults()::get)
                .anyMatch(f -> f.on().equals(fitting)
                        && (f.kind() == FaultPlan.Kind.VALVE_STUCK_OPEN
                                || f.kind() == FaultPlan.Kind.MASTER_STUCK_OPEN));
        if (!stuck) {
            state.setOpen(network.link(fitting), false);
        }
    }

    private void scale(NetworkState state, String head, double by) {
        int outlet = network.outlet(head);
        state.setOutletK(outlet, state.outletK(outlet) * by);
    }

    private WaterFlows read(NetworkState state, Configuration configuration) {
        Plumbing plumbing = scenario.plumbing();
        int n = plumbing.heads().size();
        double[] heads = new double[n];
        double[] pressures = new double[n];
        double supply = 0;
        for (int i = 0; i < n; i++) {
            String id = plumbing.heads().get(i).id();
            heads[i] = state.outletFlow(network.outlet(id));
            pressures[i] = PlumbingNetwork.WEIGHT_N_M3 * state.pressureHead(network.node(tapNode(id)));
            supply += heads[i];
        }
        double[] drips = new double[plumbing.drips().size()];
        for (int i = 0; i < drips.length; i++) {
            drips[i] = state.outletFlow(network.outlet(plumbing.drips().get(i).id()));
            supply += drips[i];
        }
        double[] zoneFlows = new double[zones.size()];
        double[] zonePressures = new double[zones.size()];
        for (PlumbingGraph.Device device : graph.devices()) {
            int z = zones.indexOf(device.fitting());
            if (z >= 0) {
                zoneFlows[z] = state.flow(network.link(device.fitting().id()));
                zonePressures[z] = PlumbingNetwork.WEIGHT_N_M3 * state.pressureHead(network.node(device.to()));
            }
        }
        double[] faults = new double[scenario.faults().size()];
        double leaked = 0;
        for (int i = 0; i < faults.length; i++) {
            faults[i] = lost(state, configuration, i, zoneFlows, heads);
            leaked += PlumbingGraph.leaks(scenario.faults().get(i)) ? faults[i] : 0;
        }
        return new WaterFlows(
                heads,
                pressures,
                drips,
                faults,
                zoneFlows,
                zonePressures,
                parts(state),
                leaked,
                supply + leaked,
                state.problem());
    }

    private String tapNode(String id) {
        return tapNodes.get(id);
    }

    private double lost(NetworkState state, Configuration configuration, int i, double[] zoneFlows, double[] heads) {
        FaultPlan fault = scenario.faults().get(i);
        if (!configuration.acts(i)) {
            return 0;
        }
        return switch (fault.kind()) {
            case MAINLINE_BREAK, MAINLINE_LEAK, LATERAL_BREAK, HOUSE_RUNS ->
                state.outletFlow(network.outlet(PlumbingGraph.leakId(i)));
            case VALVE_STUCK_OPEN -> {
                int z = zones().indexOf(fault.on());
                yield isWanted(configuration, z) ? 0 : zoneFlows[z];
            }
            case VALVE_WEEPS -> {
                int z = zones().indexOf(fault.on());
                yield isWanted(configuration, z) ? 0 : state.flow(network.link(PlumbingNetwork.weepId(i)));
            }
            case HEAD_BROKEN -> {
                int h = headIndex(fault.on());
                yield heads[h] * fault.amount() / (1 + fault.amount());
            }
            default -> 0;
        };
    }

    /** Whether the controller or people want a zone's water. */
    private boolean isWanted(Configuration configuration, int zone) {
        return configuration.opens(zone)
                || configuration.hands().opened().contains(zones.get(zone).id());
    }

    private int headIndex(String id) {
        List<Plumbing.Head> heads = scenario.plumbing().heads();
        for (int i = 0; i < heads.size(); i++) {
            if (heads.get(i).id().equals(id)) {
                return i;
            }
        }
        throw new IllegalArgumentException("no head " + id);
    }

    private Map<String, List<WaterFlows.PartFlow>> parts(NetworkState state) {
        Map<String, List<WaterFlows.PartFlow>> all = new LinkedHashMap<>();
        for (PlumbingGraph.Part part : graph.parts()) {
            all.computeIfAbsent(part.pipe(), p -> new ArrayList<>())
                    .add(new WaterFlows.PartFlow(
                            part.start(),
                            state.flow(network.link(part.id())),
                            PlumbingNetwork.WEIGHT_N_M3 * state.pressureHead(network.node(part.from()))));
        }
        return all;
    }

    /** Zones' laterals by zone valve id. */
    public Map<String, Set<String>> laterals() {
        return graph.laterals();
    }

    /**
     * The part of the plumbing around a place that hands cut off while no zone runs.
     *
     * @param along m from the pipe's {@code from} end
     * @param shut fittings that are shut
     */
    public ClosedSection closed(String pipe, double along, Set<String> shut) {
        return ClosedSection.around(graph, scenario.plumbing(), pipe, along, shut);
    }
}
