package provingyard.world.hydraulics;

import java.util.Arrays;

/**
 * Which nodes, links and outlets take part in a solve: those joined to a source by open links, one-way links in their
 * direction only. Found by a flood from the sources when a link opens or closes or an outlet turns inert; allocates
 * nothing.
 */
final class LiveParts {

    private final Network net;
    private final int[] linkStart;
    private final int[] linkAt;
    private final int[] outletStart;
    private final int[] outletAt;
    private final int[] queue;
    private final boolean[] reached;

    private NetworkState state;
    private long version;

    /** Live unknown slots, rising. */
    final int[] slots;

    final int[] links;
    final int[] outlets;
    final int[] prvs;
    int slotCount;
    int linkCount;
    /** How many of the links are plain; they come first. */
    int plainCount;

    int outletCount;
    /** How many of the outlets have n = 0.5; they come first. */
    int rootCount;

    int prvCount;

    LiveParts(Network network) {
        net = network;
        int nodes = network.nodeCount();
        int n = network.linkCount();
        int[] ends = new int[2 * n];
        for (int l = 0; l < n; l++) {
            ends[2 * l] = network.from[l];
            ends[2 * l + 1] = network.to[l];
        }
        linkStart = starts(ends, nodes);
        linkAt = grouped(ends, linkStart);
        for (int i = 0; i < linkAt.length; i++) {
            linkAt[i] /= 2;
        }
        outletStart = starts(network.outletSlot, nodes);
        outletAt = grouped(network.outletSlot, outletStart);
        queue = new int[nodes];
        reached = new boolean[nodes];
        slots = new int[network.junctions];
        links = new int[n];
        outlets = new int[network.outletCount()];
        prvs = new int[n];
    }

    private static int[] starts(int[] group, int groups) {
        int[] start = new int[groups + 1];
        for (int g : group) {
            start[g + 1]++;
        }
        for (int g = 0; g < groups; g++) {
            start[g + 1] += start[g];
        }
        return start;
    }

    private static int[] grouped(int[] group, int[] start) {
        int[] next = start.clone();
        int[] members = new int[group.length];
        for (int i = 0; i < group.length; i++) {
            members[next[group[i]]++] = i;
        }
        return members;
    }

    /** Brings the lists up to date with a state. */
    void update(NetworkState s) {
        if (state == s && version == s.structureVersion) {
            return;
        }
        state = s;
        version = s.structureVersion;
        flood(s, s.liveNode, false);
        slotCount = 0;
        for (int slot = 0; slot < net.junctions; slot++) {
            if (s.liveNode[slot]) {
                slots[slotCount++] = slot;
            }
        }
        linkCount = 0;
        plainCount = 0;
        prvCount = 0;
        for (int l = 0; l < links.length; l++) {
            s.liveLink[l] = s.open[l] && s.liveNode[net.from[l]] && s.liveNode[net.to[l]];
            if (s.liveLink[l]) {
                links[linkCount++] = l;
                if (l < net.plainLinks) {
                    plainCount++;
                }
                if (net.isPrv[l]) {
                    prvs[prvCount++] = l;
                }
            }
        }
        outletCount = 0;
        for (int o = 0; o < outlets.length; o++) {
            s.liveOutlet[o] = s.k[o] > 0 && s.liveNode[net.outletSlot[o]];
            if (s.liveOutlet[o] && isRoot(s, o)) {
                outlets[outletCount++] = o;
            }
        }
        rootCount = outletCount;
        for (int o = 0; o < outlets.length && outletCount < s.k.length; o++) {
            if (s.liveOutlet[o] && !isRoot(s, o)) {
                outlets[outletCount++] = o;
            }
        }
    }

    private static boolean isRoot(NetworkState s, int o) {
        return s.law[o].exponent() == 0.5 && s.inverseKSquared[o] < Double.POSITIVE_INFINITY;
    }

    /** Whether every way from a source to a slot leads through a regulator that is shut. */
    boolean hangsOnShutRegulators(NetworkState s, int slot) {
        flood(s, reached, true);
        return !reached[slot];
    }

    private void flood(NetworkState s, boolean[] seen, boolean heedRegulators) {
        Arrays.fill(seen, false);
        int tail = 0;
        for (int slot = net.junctions; slot < seen.length; slot++) {
            seen[slot] = true;
            queue[tail++] = slot;
        }
        for (int headOfQueue = 0; headOfQueue < tail; headOfQueue++) {
            int slot = queue[headOfQueue];
            for (int i = linkStart[slot]; i < linkStart[slot + 1]; i++) {
                int l = linkAt[i];
                boolean forward = net.from[l] == slot;
                int other = forward ? net.to[l] : net.from[l];
                boolean shut = heedRegulators && net.isPrv[l] && s.prv[l] == NetworkState.PRV_CLOSED;
                if (s.open[l] && !shut && !seen[other] && (forward || !net.laws.isOneWay(l))) {
                    seen[other] = true;
                    queue[tail++] = other;
                }
            }
        }
    }

    /** Flow that a regulator must pass for its end node to balance, m3/s. */
    double demandBehind(NetworkState s, int regulator) {
        int slot = net.to[regulator];
        double demand = 0;
        for (int i = linkStart[slot]; i < linkStart[slot + 1]; i++) {
            int l = linkAt[i];
            if (l != regulator && s.liveLink[l]) {
                demand += net.from[l] == slot ? s.flow[l] : -s.flow[l];
            }
        }
        for (int i = outletStart[slot]; i < outletStart[slot + 1]; i++) {
            int o = outletAt[i];
            demand += s.liveOutlet[o] ? s.outletFlow[o] : 0;
        }
        return demand;
    }
}
