package provingyard.world.hydraulics;

import java.util.Arrays;

/**
 * Solves heads and flows of a {@link NetworkState} by the global gradient method (Todini and Pilati 1988; Todini and
 * Rossman 2013): Newton's method on the laws of all links and outlets and the continuity of all nodes at once, reduced
 * to a symmetric positive definite system for the heads.
 *
 * <p>Written in corrections: the system is solved for the change of the heads, so rounding of the heads themselves (50
 * m against losses of micrometres) does not reach the flows. Here is when to step, to switch regulators and to end; the
 * step itself is {@link NewtonStep}, its linear system {@link HeadSystem}.
 *
 * <p>A solver is bound to one network and holds its work arrays: one per thread. A warm solve allocates nothing.
 */
public final class NetworkSolver {

    /** A sum of flow changes this small is as good as none, m3/s: for a network where nothing flows. */
    private static final double STILL_M3_S = 1e-11;

    /** Part of the misfit allowed before the last step that may be left after it. */
    private static final double LEFT_SHARE = 0.01;

    /** After so many iterations without an answer Newton's steps are taken to run in a circle. */
    private static final int DESCEND_EVERY = 40;

    private static final double REVERSE_FLOW_M3_S = 1e-10;
    private static final double HEAD_M = 1e-7;

    private final Network net;
    private final SolverSettings settings;
    private final LinkLaws laws;
    private final LiveParts live;
    private final HeadDescent descent;
    private final HeadSystem system;
    private final NewtonStep step;

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
        step = new NewtonStep(network, laws, live, system);
        descent = new HeadDescent(network, laws, live, step, system);
    }

    /** Solves in place, from the state's last solution if it has one. Anything but CONVERGED is not an answer. */
    public SolveStatus solve(NetworkState s) {
        if (s.network != net) {
            throw new IllegalArgumentException("the state belongs to another network");
        }
        boolean isSameSystem = live.update(s) && s.boundsKnown && s.status == SolveStatus.CONVERGED;
        boolean mayRespond = isSameSystem && system.isFactored() && live.prvCount == 0;
        updateLimits(s);
        start(s);
        if (followNewK(s, mayRespond) && mayRespond) {
            step.respond(s);
        }
        s.status = iterate(s) ? SolveStatus.CONVERGED : SolveStatus.NOT_CONVERGED;
        s.relativeFlowChange = step.flowSum() > 0 ? step.changeSum() / step.flowSum() : 0;
        s.headResidualM = Math.max(step.misfit(), system.largestChange);
        return s.status;
    }

    /**
     * Newton's steps. One ends them when it was small and the laws held before it; they hold far better after it. If they
     * did not quite hold before, the next step's assembly looks at them again, and that step may not be needed.
     */
    private boolean iterate(NetworkState s) {
        step.assemble(s);
        for (int i = 1; i <= settings.maxIterations(); i++) {
            step.take(s);
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
            step.assemble(s);
            if (mayEnd && step.misfit() <= LEFT_SHARE * settings.headResidualM()) {
                return true;
            }
        }
        return false;
    }

    private boolean isConverged() {
        return isSmallStep() && step.misfit() <= settings.headResidualM();
    }

    private boolean isSmallStep() {
        double change = step.changeSum();
        boolean flowsStand = change <= settings.relativeFlowChange() * step.flowSum() || change <= STILL_M3_S;
        return flowsStand && !step.turned() && system.largestChange <= settings.headResidualM();
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
                    step.follow(o, k / s.solvedK[o], old - s.outletFlow[o]);
                }
                s.solvedK[o] = k;
                isNew = true;
            }
        }
        return isNew;
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
                s.flow[l] = next == NetworkState.PRV_CLOSED ? NewtonStep.SHUT : Math.max(s.flow[l], net.startFlow[l]);
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
