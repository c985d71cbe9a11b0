package provingyard.world.hydraulics;

import java.util.Arrays;

/**
 * Solves heads and flows of a {@link NetworkState} by the global gradient method (Todini and Pilati 1988; Todini and
 * Rossman 2013): Newton's method on the laws of all links and outlets and the continuity of all nodes at once, reduced
 * to a symmetric positive definite system for the heads.
 *
 * <p>Written in corrections: the system is solved for the change of the heads, so rounding of the heads themselves (50
 * m against losses of micrometres) does not reach the flows. A dry outlet leaves the system until its pressure rises
 * above zero; a shut one-way link stays in it with a very high resistance; a regulator that holds its pressure fixes its
 * end's head, and its flow follows from continuity there.
 *
 * <p>Most of a yard are pipes and open valves with a {@linkplain LinkLaw.Power plain law} and outlets with n = 0.5:
 * these have loops of their own, without choices; all else takes the general way.
 *
 * <p>A solver is bound to one network and holds its work arrays: one per thread. A warm solve allocates nothing.
 */
public final class NetworkSolver {

    /** Conductance that holds a regulator's end at its set head, m3/s per m. */
    static final double HOLD = 1e10;
    /** A sum of flow changes this small is as good as none, m3/s: for a network where nothing flows. */
    private static final double STILL_M3_S = 1e-11;

    /** Part of the misfit allowed before the last step that may be left after it. */
    private static final double LEFT_SHARE = 0.01;

    /** After so many iterations without an answer Newton's steps are taken to run in a circle. */
    private static final int DESCEND_EVERY = 40;

    private static final double REVERSE_FLOW_M3_S = 1e-10;
    private static final double HEAD_M = 1e-7;
    /** A flow just below zero: a one-way link that shuts starts from here. */
    private static final double SHUT = -Double.MIN_NORMAL;

    private final Network net;
    private final SolverSettings settings;
    private final LinkLaws laws;
    private final LiveParts live;
    private final HeadDescent descent;
    private final HeadSystem system;
    private final double[] linkMisfit;
    private final double[] linkConductance;
    private final double[] outletMisfit;
    private final double[] outletConductance;

    private double changeSum;
    private double flowSum;
    private double misfit;
    /** Whether an outlet fell dry or began to flow in the last iteration. */
    private boolean turned;

    /** A solver with default settings. */
    public NetworkSolver(Network network) {
        this(network, SolverSettings.DEFAULT);
    }

    /** A solver with settings of its own. */
    public NetworkSolver(Network network, SolverSettings settings) {
        this.net = network;
        this.settings = settings;
        laws = network.laws.forSolver();
        live = new LiveParts(network);
        system = new HeadSystem(network, live);
        descent = new HeadDescent(network, laws, live, this, system);
        linkMisfit = new double[network.linkCount()];
        linkConductance = new double[network.linkCount()];
        outletMisfit = new double[network.outletCount()];
        outletConductance = new double[network.outletCount()];
    }

    /** Solves in place, from the state's last solution if it has one. Anything but CONVERGED is not an answer. */
    public SolveStatus solve(NetworkState s) {
        if (s.network != net) {
            throw new IllegalArgumentException("the state belongs to another network");
        }
        boolean isSameSystem = live.update(s) && s.boundsKnown && s.status == SolveStatus.CONVERGED;
        boolean mayRespond = isSameSystem && system.isFactored && live.prvCount == 0;
        updateLimits(s);
        start(s);
        if (followNewK(s, mayRespond) && mayRespond) {
            respond(s);
        }
        s.status = iterate(s) ? SolveStatus.CONVERGED : SolveStatus.NOT_CONVERGED;
        s.relativeFlowChange = flowSum > 0 ? changeSum / flowSum : 0;
        s.headResidualM = Math.max(misfit, system.largestChange);
        return s.status;
    }

    /**
     * Newton's steps. One ends them when it was small and the laws held before it; they hold far better after it. If they
     * did not quite hold before, the next step's assembly looks at them again, and that step may not be needed.
     */
    private boolean iterate(NetworkState s) {
        assemble(s);
        for (int i = 1; i <= settings.maxIterations(); i++) {
            system.factor();
            system.moveHeads(s.head);
            step(s);
            s.iterations = i;
            boolean settled = live.prvCount == 0 || regulatorsStand(s, i);
            if (settled && isConverged()) {
                return true;
            }
            boolean mayEnd = settled && isSmallStep();
            if ((i + 1) % DESCEND_EVERY == 0) {
                descent.improve(s);
                mayEnd = false;
            }
            assemble(s);
            if (mayEnd && misfit <= LEFT_SHARE * settings.headResidualM()) {
                return true;
            }
        }
        return false;
    }

    private boolean isConverged() {
        return isSmallStep() && misfit <= settings.headResidualM();
    }

    private boolean isSmallStep() {
        boolean flowsStand = changeSum <= settings.relativeFlowChange() * flowSum || changeSum <= STILL_M3_S;
        return flowsStand && !turned && system.largestChange <= settings.headResidualM();
    }

    /** No outlet can pass more than at the highest head there is; Newton's steps are held to that. */
    private void updateLimits(NetworkState s) {
        if (s.boundsKnown) {
            return;
        }
        s.boundsKnown = true;
        double highestHead = Double.NEGATIVE_INFINITY;
        for (int slot = net.junctions; slot < s.head.length; slot++) {
            highestHead = Math.max(highestHead, s.head[slot]);
        }
        s.highestHead = highestHead + net.pumpLift;
        for (int o = 0; o < s.outletLimit.length; o++) {
            s.outletLimit[o] = limit(s, o, s.solvedK[o]);
            s.outletFlow[o] = Math.min(s.outletFlow[o], s.outletLimit[o]);
        }
    }

    private double limit(NetworkState s, int o, double k) {
        double most = Math.max(s.highestHead - net.elevation[net.outletSlot[o]], 1e-3);
        return s.law[o].flow(k, most);
    }

    private void start(NetworkState s) {
        if (!s.started) {
            s.started = true;
            Arrays.fill(s.head, 0, net.junctions, s.highestHead);
            System.arraycopy(net.startFlow, 0, s.flow, 0, s.flow.length);
            Arrays.fill(s.prv, NetworkState.PRV_ACTIVE);
            for (int o = 0; o < s.outletLimit.length; o++) {
                s.solvedK[o] = s.k[o];
                s.outletLimit[o] = limit(s, o, s.k[o]);
                s.outletFlow[o] = 0.7 * s.outletLimit[o];
            }
        }
    }

    /**
     * An outlet whose k changed starts from its new flow at the old pressure: then only its node's balance is off.
     *
     * @param inSystem whether to bring the factored system up to date with it
     * @return whether there is such an outlet
     */
    private boolean followNewK(NetworkState s, boolean inSystem) {
        boolean isNew = false;
        system.clearRight();
        for (int a = 0; a < live.outletCount; a++) {
            int o = live.outlets[a];
            double k = s.k[o];
            if (k != s.solvedK[o]) {
                int slot = net.outletSlot[o];
                double old = s.outletFlow[o];
                double q = s.solvedK[o] > 0
                        ? old / s.solvedK[o] * k
                        : s.law[o].flow(k, s.head[slot] - net.elevation[slot]);
                s.outletLimit[o] = limit(s, o, k);
                s.outletFlow[o] = Math.min(q, s.outletLimit[o]);
                if (inSystem) {
                    // Never more than half is taken away: then no pivot falls below half, nor to rounding's dust.
                    double more = outletConductance[o] * Math.max(k / s.solvedK[o] - 1, -0.5);
                    outletConductance[o] += more;
                    system.strengthen(slot, more);
                    system.addInflow(slot, old - s.outletFlow[o]);
                }
                s.solvedK[o] = k;
                isNew = true;
            }
        }
        return isNew;
    }

    /**
     * How heads and flows answer to new outlets, by the factors that the state's last solve ended with: a step of Newton's
     * method for the price of two substitutions. All laws held at the end of that solve, so none is looked at; the steps
     * that follow look at them all.
     */
    private void respond(NetworkState s) {
        Arrays.fill(linkMisfit, 0);
        Arrays.fill(outletMisfit, 0);
        system.sweep();
        system.moveHeads(s.head);
        step(s);
    }

    /** The system at the state's heads and flows. */
    void assemble(NetworkState s) {
        system.clear();
        misfit = 0;
        assemblePlainLinks(s);
        assembleRootOutlets(s);
        for (int a = live.plainCount; a < live.linkCount; a++) {
            int l = live.links[a];
            if (net.isPrv[l] && s.prv[l] != NetworkState.PRV_OPEN) {
                assembleRegulator(s, l);
            } else {
                laws.evaluate(l, s.flow[l]);
                assembleLink(s, l, laws.loss, 1 / laws.slope);
            }
        }
        for (int a = live.rootCount; a < live.outletCount; a++) {
            int o = live.outlets[a];
            double q = s.outletFlow[o];
            if (q > 0) {
                double p = s.law[o].pressure(s.k[o], q);
                assembleOutlet(s, o, q, p, 1 / s.law[o].slope(s.k[o], q, p));
            } else {
                assembleDryOutlet(o);
            }
        }
    }

    private void assemblePlainLinks(NetworkState s) {
        for (int a = 0; a < live.plainCount; a++) {
            int l = live.links[a];
            laws.evaluatePlain(l, s.flow[l]);
            assembleLink(s, l, laws.loss, 1 / laws.slope);
        }
    }

    /** Outlets with n = 0.5: p = q^2 / k^2, dq/dp = q / 2 p. */
    private void assembleRootOutlets(NetworkState s) {
        for (int a = 0; a < live.rootCount; a++) {
            int o = live.outlets[a];
            double q = s.outletFlow[o];
            double pressurePerFlow = q * s.inverseKSquared[o];
            double p = q * pressurePerFlow;
            if (p > OutletLaw.LOW_PRESSURE_M) {
                assembleOutlet(s, o, q, p, 0.5 / pressurePerFlow);
            } else if (q > 0) {
                p = s.law[o].pressure(s.k[o], q);
                assembleOutlet(s, o, q, p, 1 / s.law[o].slope(s.k[o], q, p));
            } else {
                assembleDryOutlet(o);
            }
        }
    }

    private void assembleOutlet(NetworkState s, int o, double q, double p, double conductance) {
        int slot = net.outletSlot[o];
        double miss = p - (s.head[slot] - net.elevation[slot]);
        outletMisfit[o] = miss;
        outletConductance[o] = conductance;
        system.addOutlet(slot, conductance, miss * conductance - q);
        noteMisfit(miss);
    }

    private void assembleDryOutlet(int o) {
        outletMisfit[o] = 0;
        outletConductance[o] = 0;
    }

    /** A comparison, not {@code Math.max}, which is slow; a misfit that is no number shows in the flows' change. */
    private void noteMisfit(double miss) {
        double size = Math.abs(miss);
        if (size > misfit) {
            misfit = size;
        }
    }

    private void assembleLink(NetworkState s, int l, double loss, double conductance) {
        int from = net.from[l];
        int to = net.to[l];
        double miss = loss - (s.head[from] - s.head[to]);
        double q = s.flow[l] - miss * conductance;
        linkMisfit[l] = miss;
        linkConductance[l] = conductance;
        system.addLink(net.entry[l], from, to, conductance, q);
        noteMisfit(miss);
    }

    private void assembleRegulator(NetworkState s, int l) {
        if (s.prv[l] == NetworkState.PRV_CLOSED) {
            assembleLink(s, l, LinkLaws.REVERSE * s.flow[l], 1 / LinkLaws.REVERSE);
            return;
        }
        int to = net.to[l];
        double miss = net.prvHead[l] - s.head[to];
        system.hold(net.from[l], to, HOLD, miss, s.flow[l]);
        noteMisfit(miss);
    }

    private void step(NetworkState s) {
        changeSum = 0;
        flowSum = 0;
        turned = false;
        stepPlainLinks(s);
        stepRootOutlets(s);
        for (int a = live.plainCount; a < live.linkCount; a++) {
            int l = live.links[a];
            if (!(net.isPrv[l] && s.prv[l] == NetworkState.PRV_ACTIVE)) {
                stepLink(s, l);
            }
        }
        for (int a = live.rootCount; a < live.outletCount; a++) {
            stepOutlet(s, live.outlets[a]);
        }
        for (int a = 0; a < live.prvCount; a++) {
            int l = live.prvs[a];
            if (s.prv[l] == NetworkState.PRV_ACTIVE) {
                double q = live.demandBehind(s, l);
                count(q, s.flow[l]);
                s.flow[l] = q;
            }
        }
    }

    private void stepPlainLinks(NetworkState s) {
        double changes = 0;
        double flows = 0;
        for (int a = 0; a < live.plainCount; a++) {
            int l = live.links[a];
            double q = newtonFlow(s, l);
            changes += Math.abs(q - s.flow[l]);
            flows += Math.abs(q);
            s.flow[l] = q;
        }
        changeSum += changes;
        flowSum += flows;
    }

    /** Outlets that flow and go on to flow; the few others one by one. */
    private void stepRootOutlets(NetworkState s) {
        double changes = 0;
        double flows = 0;
        for (int a = 0; a < live.rootCount; a++) {
            int o = live.outlets[a];
            double old = s.outletFlow[o];
            double q = old + (system.change[net.outletSlot[o]] - outletMisfit[o]) * outletConductance[o];
            if (old > 0 && q > 0 && q <= s.outletLimit[o]) {
                changes += Math.abs(q - old);
                flows += q;
                s.outletFlow[o] = q;
            } else {
                stepOutlet(s, o);
            }
        }
        changeSum += changes;
        flowSum += flows;
    }

    private double newtonFlow(NetworkState s, int l) {
        return s.flow[l] + (system.change[net.from[l]] - system.change[net.to[l]] - linkMisfit[l]) * linkConductance[l];
    }

    private void stepLink(NetworkState s, int l) {
        int from = net.from[l];
        int to = net.to[l];
        double old = s.flow[l];
        double q = newtonFlow(s, l);
        if (laws.isOneWay(l)) {
            if (old >= 0 && q < 0) {
                q = SHUT;
            } else if (old < 0 && q > 0 && s.head[from] - s.head[to] - laws.lossAtRest(l) > HEAD_M) {
                q = net.startFlow[l];
            }
        }
        count(q, old);
        s.flow[l] = q;
    }

    private void stepOutlet(NetworkState s, int o) {
        int slot = net.outletSlot[o];
        double old = s.outletFlow[o];
        double pressure = s.head[slot] - net.elevation[slot];
        double q;
        if (old <= 0) {
            q = s.law[o].flow(s.k[o], Math.min(pressure, 1));
        } else {
            q = old + (system.change[slot] - outletMisfit[o]) * outletConductance[o];
            if (q <= 0) {
                // A law that is concave in flow (n above 1) may overshoot below zero while there is pressure.
                q = pressure > 0 ? 0.1 * old : 0;
            }
        }
        q = Math.min(q, s.outletLimit[o]);
        turned |= q > 0 != old > 0;
        count(q, old);
        s.outletFlow[o] = q;
    }

    private void count(double q, double old) {
        changeSum += Math.abs(q - old);
        flowSum += Math.abs(q);
    }

    /**
     * Lets each regulator take the state its heads ask for. When Newton's steps go on for long they wait with that until
     * the laws hold, and until they were looked at there is no answer.
     *
     * @return whether all were looked at and none changed
     */
    private boolean regulatorsStand(NetworkState s, int iteration) {
        boolean isSettled = isConverged();
        if (iteration > DESCEND_EVERY && !isSettled) {
            return false;
        }
        boolean stand = true;
        for (int a = 0; a < live.prvCount; a++) {
            int l = live.prvs[a];
            byte next = nextState(s, l);
            if (isSettled && next == NetworkState.PRV_CLOSED && live.hangsOnShutRegulators(s, net.to[l])) {
                // Nothing else feeds its end: the pressure above its setting would leak away.
                next = NetworkState.PRV_ACTIVE;
            }
            if (next != s.prv[l]) {
                stand = false;
                s.flow[l] = next == NetworkState.PRV_CLOSED ? SHUT : Math.max(s.flow[l], net.startFlow[l]);
                s.prv[l] = next;
            }
        }
        return stand;
    }

    private byte nextState(NetworkState s, int l) {
        double before = s.head[net.from[l]];
        double behind = s.head[net.to[l]];
        double set = net.prvHead[l];
        switch (s.prv[l]) {
            case NetworkState.PRV_ACTIVE:
                if (s.flow[l] < -REVERSE_FLOW_M3_S) {
                    return NetworkState.PRV_CLOSED;
                }
                laws.evaluate(l, Math.max(s.flow[l], 0));
                return before - laws.loss < set - HEAD_M ? NetworkState.PRV_OPEN : NetworkState.PRV_ACTIVE;
            case NetworkState.PRV_OPEN:
                return behind > set + HEAD_M ? NetworkState.PRV_ACTIVE : NetworkState.PRV_OPEN;
            default:
                if (behind >= set - HEAD_M || before <= behind + HEAD_M) {
                    return NetworkState.PRV_CLOSED;
                }
                return before >= set ? NetworkState.PRV_ACTIVE : NetworkState.PRV_OPEN;
        }
    }
}
