package provingyard.world.hydraulics;

import java.util.Arrays;

/**
 * What changes in a network: links open or closed, outlets' k and n, heads of the sources, and the last solution, which
 * the next solve starts from. Not for several threads at once.
 *
 * <p>Indices are those of {@link Network}; the arrays inside go by place. Results are those of the last {@link NetworkSolver#solve}; an isolated node
 * has head NaN and all flows there are zero.
 */
public final class NetworkState {

    static final byte PRV_ACTIVE = 0;
    static final byte PRV_OPEN = 1;
    static final byte PRV_CLOSED = 2;

    final Network network;
    final boolean[] open;
    final double[] k;
    final OutletLaw[] law;
    /** k that each outlet's flow belongs to: that of the last solve. */
    final double[] solvedK;
    /** 1 / k^2 of outlets with n = 0.5, whose pressure is q^2 / k^2. */
    final double[] inverseKSquared;
    /** Whether an outlet has n = 0.5 and a k of which {@link #inverseKSquared} is finite. */
    final boolean[] isRoot;
    /** Heads by slot, m; those of nodes not live are kept as a start for later. */
    final double[] head;

    final double[] flow;
    final double[] outletFlow;
    final byte[] prv;
    final boolean[] liveNode;
    final boolean[] liveLink;
    final boolean[] liveOutlet;
    private final double[] balance;

    /** Counts changes of what is live, and of the kind of an outlet's law. */
    long structureVersion;
    /** Highest head there can be, m, and each outlet's flow there for the k that its flow belongs to, m3/s. */
    double highestHead;

    final double[] outletLimit;
    /** False after a change of a source's head or an outlet's exponent. */
    boolean boundsKnown;

    boolean started;
    SolveStatus status = SolveStatus.NOT_SOLVED;
    int iterations;
    double relativeFlowChange = Double.NaN;
    double headResidualM = Double.NaN;

    NetworkState(Network network) {
        this.network = network;
        open = network.startsOpen.clone();
        k = new double[network.outletCount()];
        law = new OutletLaw[k.length];
        inverseKSquared = new double[k.length];
        isRoot = new boolean[k.length];
        solvedK = new double[k.length];
        outletLimit = new double[k.length];
        for (int o = 0; o < k.length; o++) {
            int place = network.outletPlace[o];
            law[place] = OutletLaw.withExponent(network.outletN[o]);
            keepK(place, network.outletK[o]);
        }
        head = network.fixedHead.clone();
        flow = new double[network.linkCount()];
        outletFlow = new double[k.length];
        prv = new byte[network.linkCount()];
        liveNode = new boolean[head.length];
        liveLink = new boolean[flow.length];
        liveOutlet = new boolean[k.length];
        balance = new double[head.length];
    }

    private NetworkState(NetworkState o) {
        network = o.network;
        open = o.open.clone();
        k = o.k.clone();
        law = o.law.clone();
        inverseKSquared = o.inverseKSquared.clone();
        isRoot = o.isRoot.clone();
        solvedK = o.solvedK.clone();
        head = o.head.clone();
        flow = o.flow.clone();
        outletFlow = o.outletFlow.clone();
        prv = o.prv.clone();
        liveNode = o.liveNode.clone();
        liveLink = o.liveLink.clone();
        liveOutlet = o.liveOutlet.clone();
        balance = new double[head.length];
        structureVersion = o.structureVersion;
        highestHead = o.highestHead;
        outletLimit = o.outletLimit.clone();
        boundsKnown = o.boundsKnown;
        started = o.started;
        status = o.status;
        iterations = o.iterations;
        relativeFlowChange = o.relativeFlowChange;
        headResidualM = o.headResidualM;
    }

    /** An independent copy, solution included. */
    public NetworkState copy() {
        return new NetworkState(this);
    }

    /** The network this is a state of. */
    public Network network() {
        return network;
    }

    /** Opens or closes a link (a pump: runs or stands). */
    public void setOpen(int link, boolean isOpen) {
        int place = network.linkPlace[link];
        if (open[place] != isOpen) {
            open[place] = isOpen;
            structureVersion++;
        }
    }

    /** Whether a link is open by hand or control. */
    public boolean isOpen(int link) {
        return open[network.linkPlace[link]];
    }

    /** Sets an outlet's k, m3/s at 1 m, zero or more; zero makes it inert. */
    public void setOutletK(int outlet, double newK) {
        if (!(newK >= 0 && newK < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("outlet k " + newK + " is not zero or more");
        }
        int place = network.outletPlace[outlet];
        if (k[place] != newK) {
            if (k[place] == 0 || newK == 0) {
                structureVersion++;
            }
            keepK(place, newK);
        }
    }

    private void keepK(int place, double newK) {
        k[place] = newK;
        inverseKSquared[place] = 1 / (newK * newK);
        boolean root = law[place].exponent() == 0.5 && inverseKSquared[place] < Double.POSITIVE_INFINITY;
        if (root != isRoot[place]) {
            structureVersion++;
        }
        isRoot[place] = root;
    }

    /** Sets an outlet's exponent n, 0.05 to 2. Allocates, unlike the other setters. */
    public void setOutletN(int outlet, double newN) {
        if (!(newN >= OutletLaw.LEAST_EXPONENT && newN <= OutletLaw.GREATEST_EXPONENT)) {
            throw new IllegalArgumentException("outlet exponent " + newN + " is outside 0.05 to 2");
        }
        int place = network.outletPlace[outlet];
        if (law[place].exponent() != newN) {
            structureVersion++;
            boundsKnown = false;
            law[place] = OutletLaw.withExponent(newN);
            keepK(place, k[place]);
        }
    }

    /** An outlet's k. */
    public double outletK(int outlet) {
        return k[network.outletPlace[outlet]];
    }

    /** An outlet's n. */
    public double outletN(int outlet) {
        return law[network.outletPlace[outlet]].exponent();
    }

    /** Sets the fixed head of a source, m. */
    public void setSourceHead(int node, double headM) {
        if (!network.isSource(node) || !(Math.abs(headM) < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("node " + node + " is no source, or head " + headM + " is not finite");
        }
        head[network.slotOf[node]] = headM;
        boundsKnown = false;
    }

    /** Forgets the last solution, so that the next solve starts cold. */
    public void forget() {
        started = false;
        status = SolveStatus.NOT_SOLVED;
    }

    /** How the last solve ended. */
    public SolveStatus status() {
        return status;
    }

    /** Iterations of the last solve. */
    public int iterations() {
        return iterations;
    }

    /** Sum of flow changes over sum of flows in the last iteration. */
    public double relativeFlowChange() {
        return relativeFlowChange;
    }

    /** Largest misfit of a law when last looked at, or change of a head in the last iteration, m. */
    public double headResidual() {
        return headResidualM;
    }

    /** Whether no open path joins the node to a source. One-way links count in their direction only. */
    public boolean isIsolated(int node) {
        return !liveNode[network.slotOf[node]];
    }

    /** Total head of a node, m; NaN when isolated. */
    public double head(int node) {
        int slot = network.slotOf[node];
        return liveNode[slot] ? head[slot] : Double.NaN;
    }

    /** Pressure head of a node above its elevation, m; NaN when isolated. It may be negative. */
    public double pressureHead(int node) {
        return head(node) - network.elevation(node);
    }

    /** Flow of a link, m3/s, positive from its first node to its second. */
    public double flow(int link) {
        return flowAt(network.linkPlace[link]);
    }

    private double flowAt(int place) {
        if (!liveLink[place]) {
            return 0;
        }
        double q = flow[place];
        return q < 0 && network.laws.isOneWay(place) ? 0 : q;
    }

    /** Flow out of an outlet, m3/s, never negative. */
    public double outletFlow(int outlet) {
        return outletFlowAt(network.outletPlace[outlet]);
    }

    private double outletFlowAt(int place) {
        return liveOutlet[place] && outletFlow[place] > 0 ? outletFlow[place] : 0;
    }

    /** What a link does: closed also where a one-way link is held shut by pressure. */
    public LinkState linkState(int link) {
        int place = network.linkPlace[link];
        if (!liveLink[place]) {
            return open[place] && !network.isPrv[place] ? LinkState.OPEN : LinkState.CLOSED;
        }
        if (network.isPrv[place] && prv[place] != PRV_OPEN) {
            return prv[place] == PRV_ACTIVE ? LinkState.ACTIVE : LinkState.CLOSED;
        }
        boolean heldShut = network.laws.isOneWay(place) && flow[place] * LinkLaws.REVERSE < -1e-4;
        return heldShut ? LinkState.CLOSED : LinkState.OPEN;
    }

    /** Largest misfit of inflow and outflow over all nodes but sources, m3/s, from the flows as reported. */
    public double massImbalance() {
        Arrays.fill(balance, 0);
        for (int l = 0; l < flow.length; l++) {
            balance[network.from[l]] -= flowAt(l);
            balance[network.to[l]] += flowAt(l);
        }
        for (int o = 0; o < k.length; o++) {
            balance[network.outletSlot[o]] -= outletFlowAt(o);
        }
        double worst = 0;
        for (int slot = 0; slot < network.junctions; slot++) {
            worst = Math.max(worst, Math.abs(balance[slot]));
        }
        return worst;
    }

    /** What is wrong with the last solve as a sentence, or null when it converged. */
    public String problem() {
        return switch (status) {
            case CONVERGED -> null;
            case NOT_SOLVED -> "the network was not solved yet";
            case NOT_CONVERGED ->
                "the network did not converge in " + iterations + " iterations (flow change " + relativeFlowChange
                        + ", misfit " + headResidualM + " m)";
        };
    }
}
