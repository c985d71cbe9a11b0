package provingyard.world.hydraulics;

import java.util.List;
import provingyard.numeric.Deterministic;
import provingyard.scenario.Catalogue;
import provingyard.scenario.FaultPlan;
import provingyard.scenario.Plumbing;
import provingyard.scenario.Scenario;

/**
 * Turns a site's plumbing into the {@link Network} that is solved: pipes, valves and devices in their order, an outlet
 * for each head, drip line and leak. Faults are in it from the first, but do nothing: leaks have a factor of zero and
 * ways past weeping valves are shut.
 */
final class PlumbingNetwork {

    /** Density of water times standard gravity, N/m3 (1000 kg/m3, 9.80665 m/s2). */
    static final double WEIGHT_N_M3 = 9806.65;

    /** Discharge coefficient of a sharp-edged orifice (handbook value 0.6 to 0.62). */
    private static final double ORIFICE = 0.61;

    /** Pressure head in m at which leaks with other exponents than 0.5 pass what a plain orifice passes. */
    private static final double LEAK_REFERENCE_M = 30;

    /** Kinematic viscosity of water at 15 °C, m2/s. */
    private static final double VISCOSITY_M2_S = 1.1386e-6;

    /** Where the loss curve of a one-way device ends, m/s; beyond, the loss grows with the square of flow. */
    private static final double FASTEST_M_S = 6;

    private static final int CURVE_POINTS = 24;

    private final Scenario scenario;
    private final PlumbingGraph graph;
    private final NetworkBuilder builder = Network.builder();

    private PlumbingNetwork(Scenario scenario, PlumbingGraph graph) {
        this.scenario = scenario;
        this.graph = graph;
    }

    /** The network of a site, whose graph is at hand. */
    static Network of(Scenario scenario, PlumbingGraph graph) {
        return new PlumbingNetwork(scenario, graph).build();
    }

    /** Id of the narrow way past a valve that weeps by a fault of this index. */
    static String weepId(int fault) {
        return "weep-" + fault;
    }

    /** Id of the way that a fault of this index puts in the place of a fitting: a narrower valve, a lower regulator. */
    static String insteadId(int fault) {
        return "instead-" + fault;
    }

    private Network build() {
        Plumbing plumbing = scenario.plumbing();
        for (PlumbingGraph.Node node : graph.nodes()) {
            if (node.id().equals(plumbing.supply().junction())) {
                supply(plumbing.supply(), node);
            } else {
                builder.node(node.id(), node.elevation());
            }
        }
        graph.parts().forEach(this::pipe);
        graph.devices().forEach(this::device);
        graph.taps().forEach(this::outlet);
        return builder.build();
    }

    private void supply(Plumbing.Supply supply, PlumbingGraph.Node node) {
        double z = node.elevation();
        List<Plumbing.FlowingPoint> points = supply.points();
        switch (supply.kind()) {
            case FIXED -> builder.source(node.id(), z + supply.pressure() / WEIGHT_N_M3);
            case CURVE ->
                builder.supply(
                        node.id(),
                        z,
                        z + supply.pressure() / WEIGHT_N_M3,
                        points.get(0).flow(),
                        z + points.get(0).pressure() / WEIGHT_N_M3);
            case PUMP -> {
                builder.source(node.id() + ".suction", z);
                builder.node(node.id(), z);
                double[] flows =
                        points.stream().mapToDouble(Plumbing.FlowingPoint::flow).toArray();
                double[] lifts = points.stream()
                        .mapToDouble(p -> p.pressure() / WEIGHT_N_M3)
                        .toArray();
                builder.pump(node.id() + ".pump", node.id() + ".suction", node.id(), flows, lifts, true);
            }
        }
    }

    private void pipe(PlumbingGraph.Part part) {
        Plumbing.Pipe plan = scenario.plumbing().pipes().stream()
                .filter(p -> p.id().equals(part.pipe()))
                .findFirst()
                .orElseThrow();
        Catalogue.PipeMake make = graph.make(plan);
        double inner = PlumbingGraph.size(make, plan.size()).inner();
        if (scenario.plumbing().friction() == Plumbing.Friction.DARCY_WEISBACH) {
            builder.darcyPipe(
                    part.id(),
                    part.from(),
                    part.to(),
                    part.length(),
                    inner,
                    make.roughness(),
                    VISCOSITY_M2_S,
                    part.losses(),
                    false,
                    true);
        } else {
            builder.pipe(
                    part.id(),
                    part.from(),
                    part.to(),
                    part.length(),
                    inner,
                    make.hazenWilliams(),
                    part.losses(),
                    false,
                    true);
        }
    }

    private void device(PlumbingGraph.Device device) {
        Plumbing.Fitting f = device.fitting();
        switch (f.kind()) {
            case BACKFLOW_PREVENTER, CHECK_VALVE -> oneWay(f.id(), device, f.losses(), true);
            case REGULATOR ->
                builder.prv(f.id(), device.from(), device.to(), f.size(), f.losses(), f.setting() / WEIGHT_N_M3, true);
            case ZONE_VALVE -> {
                builder.valve(f.id(), device.from(), device.to(), f.size(), f.losses(), false);
                weep(device);
            }
            default -> builder.valve(f.id(), device.from(), device.to(), f.size(), f.losses(), true);
        }
        for (int i = 0; i < scenario.faults().size(); i++) {
            if (f.id().equals(scenario.faults().get(i).on())) {
                instead(device, i, scenario.faults().get(i));
            }
        }
    }

    /** What a fault makes of a fitting, shut until it acts; then the fitting itself is shut and this is open. */
    private void instead(PlumbingGraph.Device device, int index, FaultPlan fault) {
        Plumbing.Fitting f = device.fitting();
        switch (fault.kind()) {
            case VALVE_PARTLY_SHUT, FILTER_CLOGGED -> {
                double losses = (f.losses() + 1) * fault.amount();
                if (isOneWay(f)) {
                    oneWay(insteadId(index), device, losses, false);
                } else {
                    builder.valve(insteadId(index), device.from(), device.to(), f.size(), losses, false);
                }
            }
            case REGULATOR_LOW -> {
                double held = f.setting() * (1 - fault.amount()) / WEIGHT_N_M3;
                builder.prv(insteadId(index), device.from(), device.to(), f.size(), f.losses(), held, false);
            }
            default -> {
                // Other faults change what is there.
            }
        }
    }

    /** Head in m that a share of the supply's pressure is worth: of a pump, of its lift at no flow. */
    static double supplyShare(Plumbing.Supply supply, double share) {
        boolean pump = supply.kind() == Plumbing.SupplyKind.PUMP;
        double pressure = pump ? supply.points().get(0).pressure() : supply.pressure();
        return share * pressure / WEIGHT_N_M3;
    }

    /** Id of the fixed head that feeds the site. */
    static String sourceId(Plumbing.Supply supply) {
        return switch (supply.kind()) {
            case FIXED -> supply.junction();
            case CURVE -> supply.junction() + ".static";
            case PUMP -> supply.junction() + ".suction";
        };
    }

    private static boolean isOneWay(Plumbing.Fitting fitting) {
        return fitting.kind() == Plumbing.FittingKind.BACKFLOW_PREVENTER
                || fitting.kind() == Plumbing.FittingKind.CHECK_VALVE;
    }

    /** Loss = opening loss + K velocity heads; nothing flows back. */
    private void oneWay(String id, PlumbingGraph.Device device, double coefficient, boolean open) {
        Plumbing.Fitting f = device.fitting();
        double area = Math.PI / 4 * f.size() * f.size();
        double[] flows = new double[CURVE_POINTS + 1];
        double[] losses = new double[CURVE_POINTS + 1];
        for (int i = 0; i <= CURVE_POINTS; i++) {
            double v = FASTEST_M_S * i / CURVE_POINTS;
            flows[i] = v * area;
            losses[i] = f.opensAt() / WEIGHT_N_M3 + coefficient * v * v / (2 * Constants.GRAVITY_M_S2);
        }
        builder.device(id, device.from(), device.to(), flows, losses, open);
    }

    /** A second, narrow way past a valve that may weep: an orifice of the fault's opening, as a loss coefficient. */
    private void weep(PlumbingGraph.Device device) {
        Plumbing.Fitting f = device.fitting();
        for (int i = 0; i < scenario.faults().size(); i++) {
            FaultPlan fault = scenario.faults().get(i);
            if (fault.kind() == FaultPlan.Kind.VALVE_WEEPS && fault.on().equals(f.id())) {
                double ratio = Math.PI / 4 * f.size() * f.size() / (ORIFICE * fault.opening());
                builder.valve(weepId(i), device.from(), device.to(), f.size(), ratio * ratio, false);
            }
        }
    }

    private void outlet(PlumbingGraph.Tap tap) {
        for (Plumbing.Head head : scenario.plumbing().heads()) {
            if (head.id().equals(tap.id())) {
                Catalogue.Nozzle nozzle = nozzle(head.nozzle());
                double share = nozzle.scalesWithArc() ? head.sweep() / 360 : 1;
                builder.outlet(tap.id(), tap.node(), factor(nozzle, share), nozzle.exponent());
                return;
            }
        }
        for (Plumbing.DripLine drip : scenario.plumbing().drips()) {
            if (drip.id().equals(tap.id())) {
                Catalogue.Nozzle nozzle = nozzle(drip.nozzle());
                builder.outlet(tap.id(), tap.node(), factor(nozzle, drip.emitters()), nozzle.exponent());
                return;
            }
        }
        for (int i = 0; i < scenario.faults().size(); i++) {
            if (PlumbingGraph.leakId(i).equals(tap.id())) {
                builder.outlet(tap.id(), tap.node(), 0, scenario.faults().get(i).leakExponent());
            }
        }
    }

    /** k of q = k p^n, p in m of water, through a nozzle's design point. */
    private static double factor(Catalogue.Nozzle nozzle, double times) {
        return times * nozzle.flow() / Deterministic.pow(nozzle.pressure() / WEIGHT_N_M3, nozzle.exponent());
    }

    private Catalogue.Nozzle nozzle(String id) {
        return scenario.catalogue().nozzles().stream()
                .filter(n -> n.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** k of a leak q = k p^N1: Cd A sqrt(2 g p) for N1 = 0.5; else scaled to pass the same at the reference pressure. */
    static double leakFactor(FaultPlan fault) {
        double plain = ORIFICE * fault.opening() * Math.sqrt(2 * Constants.GRAVITY_M_S2);
        return plain * Deterministic.pow(LEAK_REFERENCE_M, 0.5 - fault.leakExponent());
    }
}
