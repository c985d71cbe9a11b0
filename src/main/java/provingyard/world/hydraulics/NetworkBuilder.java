package provingyard.world.hydraulics;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import provingyard.numeric.Deterministic;

/**
 * Collects the parts of a {@link Network} and the problems with them. Add nodes and sources before the links that join
 * them. Every method may be called with anything; what is wrong is a {@link Problem}, and {@link #build} then refuses.
 */
public final class NetworkBuilder {

    /** Flow a pipe starts the first solve with: 0.3 m/s (own choice, of no effect on the answer). */
    private static final double START_VELOCITY_M_S = 0.3;

    private final Constants constants;
    private final List<Problem> problems = new ArrayList<>();
    private final Map<String, Integer> nodes = new LinkedHashMap<>();
    private final List<Double> elevations = new ArrayList<>();
    private final List<Double> fixedHeads = new ArrayList<>();
    private final List<Network.LinkSpec> links = new ArrayList<>();
    private final List<Network.OutletSpec> outlets = new ArrayList<>();
    private String place;

    NetworkBuilder(Constants constants) {
        this.constants = constants;
    }

    /** Names the place, for example a JSON pointer, of what is added next; null names objects by their id. */
    public NetworkBuilder at(String place) {
        this.place = place;
        return this;
    }

    /** The problems so far. */
    public List<Problem> problems() {
        return List.copyOf(problems);
    }

    /** A node with an elevation, m. */
    public NetworkBuilder node(String id, double elevationM) {
        if (finite(id, "elevation", elevationM)) {
            addNode(id, elevationM, Double.NaN);
        }
        return this;
    }

    /** A source with a fixed total head, m. */
    public NetworkBuilder source(String id, double headM) {
        if (finite(id, "head", headM)) {
            addNode(id, 0, headM);
        }
        return this;
    }

    /**
     * A supply known by its static head and one flowing test: head = h0 - b q^1.852 through both points (the form of
     * hydrant flow tests, NFPA 291). The node {@code id} carries the head that is left; a fixed head {@code id.static}
     * and a link {@code id.supply} are added behind it.
     *
     * @param elevationM elevation of the node, m
     * @param staticHeadM total head at no flow, m
     * @param testFlowM3s flow of the test, m3/s, above zero
     * @param testHeadM total head at that flow, m, not above the static head
     */
    public NetworkBuilder supply(
            String id, double elevationM, double staticHeadM, double testFlowM3s, double testHeadM) {
        if (!finite(id, "elevation", elevationM)
                || !finite(id, "static head", staticHeadM)
                || !positive(id, "test flow", testFlowM3s)
                || !finite(id, "test head", testHeadM)) {
            return this;
        }
        if (testHeadM > staticHeadM) {
            report(id, "test head " + testHeadM, "at most the static head " + staticHeadM);
            return this;
        }
        double b = (staticHeadM - testHeadM) / Deterministic.pow(testFlowM3s, Constants.HAZEN_FLOW_EXPONENT);
        addNode(id, elevationM, Double.NaN);
        addNode(id + ".static", elevationM, staticHeadM);
        addLink(
                id + ".supply",
                LinkKind.SUPPLY,
                id + ".static",
                id,
                new Shape(0, Double.NaN, false, true, 0, testFlowM3s / 2),
                new LinkLaw.Power(b, 0));
        return this;
    }

    /**
     * A pipe by Hazen-Williams.
     *
     * @param lengthM length, m
     * @param diameterM inner diameter, m
     * @param hazenC Hazen-Williams C
     * @param minorK minor loss coefficient on the pipe's own velocity head
     * @param check no reverse flow
     * @param open open or closed at first
     */
    public NetworkBuilder pipe(
            String id,
            String from,
            String to,
            double lengthM,
            double diameterM,
            double hazenC,
            double minorK,
            boolean check,
            boolean open) {
        if (pipeIsFine(id, lengthM, diameterM, minorK) && positive(id, "Hazen-Williams C", hazenC)) {
            LinkLaw law = new LinkLaw.Power(
                    Friction.hazenResistance(lengthM, diameterM, hazenC, constants),
                    Friction.minorResistance(minorK, diameterM, constants));
            addLink(id, LinkKind.PIPE, from, to, bore(lengthM, diameterM, check, open, 0), law);
        }
        return this;
    }

    /** A pipe by Darcy-Weisbach: roughness in m, kinematic viscosity in m2/s; the rest as {@link #pipe}. */
    public NetworkBuilder darcyPipe(
            String id,
            String from,
            String to,
            double lengthM,
            double diameterM,
            double roughnessM,
            double viscosityM2s,
            double minorK,
            boolean check,
            boolean open) {
        if (pipeIsFine(id, lengthM, diameterM, minorK)
                && notNegative(id, "roughness", roughnessM)
                && positive(id, "viscosity", viscosityM2s)) {
            double d2 = diameterM * diameterM;
            LinkLaw law = new LinkLaw.Darcy(
                    constants.darcy() * lengthM / (d2 * d2 * diameterM),
                    roughnessM / diameterM,
                    Friction.reynolds(1, diameterM, viscosityM2s, constants),
                    Friction.minorResistance(minorK, diameterM, constants));
            addLink(id, LinkKind.PIPE, from, to, bore(lengthM, diameterM, check, open, 0), law);
        }
        return this;
    }

    /** A valve, meter or fitting: loss = minorK velocity heads on its diameter, m. */
    public NetworkBuilder valve(String id, String from, String to, double diameterM, double minorK, boolean open) {
        if (positive(id, "diameter", diameterM) && notNegative(id, "minor loss coefficient", minorK)) {
            LinkLaw law = new LinkLaw.Power(0, Friction.minorResistance(minorK, diameterM, constants));
            addLink(id, LinkKind.VALVE, from, to, bore(0, diameterM, false, open, 0), law);
        }
        return this;
    }

    /**
     * A pressure reducing valve: holds the pressure head {@code settingM} at its end while it can; with too little
     * pressure before it, it stands open with its minor loss; it passes no reverse flow. Its end must be a node, not a
     * source.
     */
    public NetworkBuilder prv(
            String id, String from, String to, double diameterM, double minorK, double settingM, boolean open) {
        if (positive(id, "diameter", diameterM)
                && notNegative(id, "minor loss coefficient", minorK)
                && notNegative(id, "setting", settingM)) {
            if (nodes.containsKey(to) && !Double.isNaN(fixedHeads.get(nodes.get(to)))) {
                report(id, "a regulator that ends at the source '" + to + "'", "a node");
                return this;
            }
            LinkLaw law = new LinkLaw.Power(0, Friction.minorResistance(minorK, diameterM, constants));
            addLink(id, LinkKind.PRV, from, to, bore(0, diameterM, true, open, settingM), law);
        }
        return this;
    }

    /**
     * A device with a measured loss curve and no reverse flow, for example a backflow preventer. Between the points the
     * loss runs straight; beyond the last it grows with the square of flow. A loss at zero flow is the threshold below
     * which nothing passes (the spring of a reduced-pressure assembly).
     *
     * @param flowsM3s flows, m3/s, the first 0, rising
     * @param lossesM head losses, m, not falling (so that there is one answer)
     */
    public NetworkBuilder device(String id, String from, String to, double[] flowsM3s, double[] lossesM, boolean open) {
        if (curveIsFine(id, flowsM3s, lossesM)) {
            double start = flowsM3s[flowsM3s.length - 1] / 4;
            LinkLaw law = new LinkLaw.Curve(flowsM3s.clone(), lossesM.clone());
            addLink(id, LinkKind.DEVICE, from, to, new Shape(0, Double.NaN, true, open, 0, start), law);
        }
        return this;
    }

    /**
     * A pump that lifts from its first to its second node, by three points of its curve; no reverse flow.
     *
     * @param flowsM3s three flows, m3/s: 0, and two rising
     * @param liftsM three head gains, m, falling, the first above zero
     */
    public NetworkBuilder pump(String id, String from, String to, double[] flowsM3s, double[] liftsM, boolean open) {
        boolean fine = flowsM3s.length == 3
                && liftsM.length == 3
                && flowsM3s[0] == 0
                && flowsM3s[1] > 0
                && flowsM3s[2] > flowsM3s[1]
                && liftsM[0] > liftsM[1]
                && liftsM[1] > liftsM[2]
                && liftsM[2] > Double.NEGATIVE_INFINITY
                && liftsM[0] < Double.POSITIVE_INFINITY
                && liftsM[0] > 0
                && flowsM3s[2] < Double.POSITIVE_INFINITY;
        if (!fine) {
            report(id, "a pump curve of other points", "three points [flow, lift]: flow 0 and rising, lift falling");
            return this;
        }
        LinkLaw.PumpCurve law = LinkLaw.PumpCurve.through(liftsM[0], flowsM3s[1], liftsM[1], flowsM3s[2], liftsM[2]);
        if (!(law.c() <= 20)) {
            report(id, "a pump curve with exponent " + law.c(), "exponent of at most 20");
            return this;
        }
        addLink(id, LinkKind.PUMP, from, to, new Shape(0, Double.NaN, true, open, 0, flowsM3s[1]), law);
        return this;
    }

    /**
     * An outlet q = k p^n, p the pressure head in m, q in m3/s, never negative. k = 0 is an inert place for a later
     * leak. Sources have no outlets.
     *
     * @param n 0.05 to 2
     */
    public NetworkBuilder outlet(String id, String node, double k, double n) {
        boolean fine = notNegative(id, "k", k);
        if (!(n >= OutletLaw.LEAST_EXPONENT && n <= OutletLaw.GREATEST_EXPONENT)) {
            report(id, "outlet exponent " + n, OutletLaw.LEAST_EXPONENT + " to " + OutletLaw.GREATEST_EXPONENT);
            fine = false;
        }
        Integer at = known(id, node);
        if (at != null && !Double.isNaN(fixedHeads.get(at))) {
            report(id, "an outlet at the source '" + node + "'", "a node");
            fine = false;
        }
        if (outlets.stream().anyMatch(o -> o.id().equals(id))) {
            report(id, "a second outlet '" + id + "'", "unique ids");
            fine = false;
        }
        if (fine && at != null) {
            outlets.add(new Network.OutletSpec(id, at, k, n));
        }
        return this;
    }

    /** The network. Building one with problems is a defect of the caller: look at {@link #problems} first. */
    public Network build() {
        if (!problems.isEmpty()) {
            throw new IllegalStateException("network has problems: " + problems);
        }
        double[] elevation = elevations.stream().mapToDouble(d -> d).toArray();
        double[] fixed = fixedHeads.stream().mapToDouble(d -> d).toArray();
        return new Network(List.copyOf(nodes.keySet()), elevation, fixed, links, outlets);
    }

    private record Shape(
            double lengthM, double diameterM, boolean oneWay, boolean open, double settingM, double startFlow) {}

    private static Shape bore(double lengthM, double diameterM, boolean oneWay, boolean open, double settingM) {
        double start = START_VELOCITY_M_S * Math.PI / 4 * diameterM * diameterM;
        return new Shape(lengthM, diameterM, oneWay, open, settingM, start);
    }

    private void addNode(String id, double elevationM, double headM) {
        if (nodes.containsKey(id)) {
            report(id, "a second node or source '" + id + "'", "unique ids");
            return;
        }
        nodes.put(id, nodes.size());
        elevations.add(elevationM);
        fixedHeads.add(headM);
    }

    private void addLink(String id, LinkKind kind, String from, String to, Shape s, LinkLaw law) {
        Integer a = known(id, from);
        Integer b = known(id, to);
        if (links.stream().anyMatch(l -> l.id().equals(id))) {
            report(id, "a second link '" + id + "'", "unique ids");
        } else if (a != null && b != null && a.equals(b)) {
            report(id, "a link from '" + from + "' to itself", "two different nodes");
        } else if (a != null && b != null) {
            links.add(new Network.LinkSpec(
                    id, kind, a, b, s.lengthM, s.diameterM, s.oneWay, s.open, s.settingM, s.startFlow, law));
        }
    }

    private Integer known(String id, String node) {
        Integer at = nodes.get(node);
        if (at == null) {
            report(id, "unknown node '" + node + "'", "an id from the nodes or sources");
        }
        return at;
    }

    private boolean pipeIsFine(String id, double lengthM, double diameterM, double minorK) {
        return positive(id, "length", lengthM)
                & positive(id, "diameter", diameterM)
                & notNegative(id, "minor loss coefficient", minorK);
    }

    private boolean curveIsFine(String id, double[] flows, double[] losses) {
        boolean fine = flows.length >= 2 && flows.length == losses.length && flows[0] == 0 && losses[0] >= 0;
        for (int i = 1; fine && i < flows.length; i++) {
            fine = flows[i] > flows[i - 1]
                    && losses[i] >= losses[i - 1]
                    && flows[i] < Double.POSITIVE_INFINITY
                    && losses[i] < Double.POSITIVE_INFINITY;
        }
        if (!fine) {
            report(
                    id,
                    "a loss curve of other points",
                    "two or more points: flow 0 and rising, loss 0 or more, not falling");
        }
        return fine;
    }

    private boolean finite(String id, String what, double value) {
        return check(id, what, value, Math.abs(value) < Double.POSITIVE_INFINITY, "a finite number");
    }

    private boolean positive(String id, String what, double value) {
        return check(id, what, value, value > 0 && value < Double.POSITIVE_INFINITY, "above 0");
    }

    private boolean notNegative(String id, String what, double value) {
        return check(id, what, value, value >= 0 && value < Double.POSITIVE_INFINITY, "0 or more");
    }

    private boolean check(String id, String what, double value, boolean fine, String allowed) {
        if (!fine) {
            report(id, what + " " + value, allowed);
        }
        return fine;
    }

    private void report(String id, String what, String allowed) {
        problems.add(new Problem(place == null ? id : place, what, allowed));
    }
}
