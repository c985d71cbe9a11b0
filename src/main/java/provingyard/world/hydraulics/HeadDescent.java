package provingyard.world.hydraulics;

import java.util.Arrays;

/**
 * A slow and sure way to good heads, for when Newton's steps on heads and flows run in a circle (breaks that leave
 * compensating outlets near zero pressure are such a case).
 *
 * <p>With the states of regulators and what they pass held, the answer minimises the network's co-content, a convex
 * function of the heads whose gradient is the imbalance of each node (Collins et al. 1978). Each step goes along
 * Newton's direction as far as the slope along it falls, so it cannot circle. Flows follow from the heads by turning
 * each law round.
 */
final class HeadDescent {

    private static final int STEPS = 60;
    private static final int CUTS = 40;
    /** Good enough to hand back: sum of imbalances, m3/s. */
    private static final double ENOUGH_M3_S = 1e-9;

    private final Network net;
    private final LinkLaws laws;
    private final LiveParts live;
    private final NewtonStep step;
    private final HeadSystem system;
    private final double[] origin;
    private final double[] direction;
    private final double[] imbalance;

    HeadDescent(Network net, LinkLaws laws, LiveParts live, NewtonStep step, HeadSystem system) {
        this.net = net;
        this.laws = laws;
        this.live = live;
        this.step = step;
        this.system = system;
        origin = new double[net.nodeCount()];
        direction = new double[net.nodeCount()];
        imbalance = new double[net.nodeCount()];
    }

    /** Moves the state's heads, flows and outlet flows towards the answer. */
    void improve(NetworkState s) {
        setFlows(s);
        for (int i = 0; i < STEPS && balance(s) > ENOUGH_M3_S; i++) {
            step.assemble(s);
            system.factor();
            System.arraycopy(s.head, 0, origin, 0, origin.length);
            System.arraycopy(system.moveHeads(s.head), 0, direction, 0, direction.length);
            search(s);
        }
    }

    /** Goes along the direction to where the slope is at most a third of the first, by bisection. */
    private void search(NetworkState s) {
        double first = slopeAlong(s);
        double low = 0;
        double high = 1;
        double share = 1;
        for (int cut = 0; cut < CUTS; cut++) {
            for (int a = 0; a < live.slotCount; a++) {
                int slot = live.slots[a];
                s.head[slot] = origin[slot] + share * direction[slot];
            }
            setFlows(s);
            double slope = slopeAlong(s);
            if (Math.abs(slope) <= Math.abs(first) / 3 || (slope < 0 && share == 1)) {
                return;
            }
            if (slope > 0) {
                high = share;
            } else {
                low = share;
            }
            share = 0.5 * (low + high);
        }
    }

    /** Slope of the co-content along the direction; negative while it falls. */
    private double slopeAlong(NetworkState s) {
        balance(s);
        double slope = 0;
        for (int a = 0; a < live.slotCount; a++) {
            slope -= imbalance[live.slots[a]] * direction[live.slots[a]];
        }
        return slope;
    }

    /** Inflow less outflow of each node, with held nodes pulled to their head; returns the sum of sizes, m3/s. */
    private double balance(NetworkState s) {
        Arrays.fill(imbalance, 0);
        for (int a = 0; a < live.linkCount; a++) {
            int l = live.links[a];
            imbalance[net.from[l]] -= s.flow[l];
            imbalance[net.to[l]] += s.flow[l];
            if (net.isPrv[l] && s.prv[l] == NetworkState.PRV_ACTIVE) {
                imbalance[net.to[l]] += NewtonStep.HOLD * (net.prvHead[l] - s.head[net.to[l]]);
            }
        }
        for (int a = 0; a < live.outletCount; a++) {
            imbalance[net.outletSlot[live.outlets[a]]] -= s.outletFlow[live.outlets[a]];
        }
        double sum = 0;
        for (int a = 0; a < live.slotCount; a++) {
            sum += Math.abs(imbalance[live.slots[a]]);
        }
        return sum;
    }

    private void setFlows(NetworkState s) {
        for (int a = 0; a < live.linkCount; a++) {
            int l = live.links[a];
            double drop = s.head[net.from[l]] - s.head[net.to[l]];
            if (!net.isPrv[l] || s.prv[l] == NetworkState.PRV_OPEN) {
                s.flow[l] = laws.flow(l, drop, s.flow[l]);
            } else if (s.prv[l] == NetworkState.PRV_CLOSED) {
                s.flow[l] = drop / LinkLaws.REVERSE;
            }
        }
        for (int a = 0; a < live.outletCount; a++) {
            int o = live.outlets[a];
            int slot = net.outletSlot[o];
            s.outletFlow[o] = s.law[o].flow(s.k[o], s.head[slot] - net.elevation[slot]);
        }
    }
}
