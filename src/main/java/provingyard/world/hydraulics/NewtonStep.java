package provingyard.world.hydraulics;

import java.util.Arrays;

/**
 * One step of Newton's method on the laws of all links and outlets: assembles the system of the heads from the laws at a
 * state's heads and flows, and takes the step that its solution asks for.
 *
 * <p>Most of a yard are pipes and open valves with a {@linkplain LinkLaw.Power plain law} and outlets with n = 0.5:
 * these have loops of their own, without choices; all else takes the general way. A dry outlet leaves the system until
 * its pressure rises above zero; a shut one-way link stays in it with a very high resistance; a regulator that holds its
 * pressure fixes its end's head, and its flow follows from continuity there.
 */
final class NewtonStep {

    /** Conductance that holds a regulator's end at its set head, m3/s per m. */
    static final double HOLD = 1e10;
    /** A flow just below zero: a one-way link that shuts starts from here. */
    static final double SHUT = -Double.MIN_NORMAL;

    private static final double HEAD_M = 1e-7;

    private final Network net;
    private final LinkLaws laws;
    private final LiveParts live;
    private final HeadSystem system;
    private final double[] linkMisfit;
    private final double[] linkConductance;
    private final double[] outletMisfit;
    private final double[] outletConductance;

    private double changeSum;
    private double flowSum;
    private double misfit;
    private boolean turned;

    NewtonStep(Network network, LinkLaws laws, LiveParts live, HeadSystem system) {
        net = network;
        this.laws = laws;
        this.live = live;
        this.system = system;
        linkMisfit = new double[network.linkCount()];
        linkConductance = new double[network.linkCount()];
        outletMisfit = new double[network.outletCount()];
        outletConductance = new double[network.outletCount()];
    }

    /** Sum of the sizes of the last step's changes of flow, m3/s. */
    double changeSum() {
        return changeSum;
    }

    /** Sum of the sizes of all flows after the last step, m3/s. */
    double flowSum() {
        return flowSum;
    }

    /** The largest misfit of a law at the last assembly, m. */
    double misfit() {
        return misfit;
    }

    /** Whether an outlet fell dry or began to flow in the last step. */
    boolean turned() {
        return turned;
    }

    /** Brings the factored system up to date with an outlet whose k grew by a ratio and whose flow changed. */
    void follow(int o, double ratio, double inflow) {
        int slot = net.outletSlot[o];
        // Never more than half is taken away: then no pivot falls below half, nor to rounding's dust.
        double more = outletConductance[o] * Math.max(ratio - 1, -0.5);
        outletConductance[o] += more;
        system.strengthen(slot, more);
        system.addInflow(slot, inflow);
    }

    /**
     * How heads and flows answer to new outlets, by the factors that the state's last solve ended with: a step of Newton's
     * method for the price of two substitutions. All laws held at the end of that solve, so none is looked at; the steps
     * that follow look at them all.
     */
    void respond(NetworkState s) {
        Arrays.fill(linkMisfit, 0);
        Arrays.fill(outletMisfit, 0);
        system.sweep();
        system.moveHeads(s.head);
        move(s);
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

    /** Solves the assembled system, moves the heads and all flows. */
    void take(NetworkState s) {
        system.factor();
        system.moveHeads(s.head);
        move(s);
    }

    /** Flows as the change of the heads asks for. */
    private void move(NetworkState s) {
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
}
