package provingyard.world.hydraulics;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Which nodes, links and outlets take part in a solve: those joined to a source by open links, one-way links in their
 * direction only. Found from the sources on when a link opens or closes or an outlet turns inert; allocates
 * nothing.
 */
final class LiveParts {

    private final Network net;
    private final int[] linkStart;
    private final int[] linkAt;
    private final int[] outletStart;
    private final int[] outletAt;
    /** All links in the order in which water from the sources comes to them while all are open. */
    private final int[] wave;
    /** Whether some node can be reached in two ways: the wave has more links than it has nodes. */
    private final boolean hasLoops;

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
        wave = wave();
        long nodesInWave = Arrays.stream(wave)
                .flatMap(l -> IntStream.of(network.from[l], network.to[l]))
                .filter(slot -> slot < network.junctions)
                .distinct()
                .count();
        hasLoops = wave.length > nodesInWave;
        outletStart = starts(network.outletSlot, nodes);
        outletAt = grouped(network.outletSlot, outletStart);
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

    private int[] wave() {
        Set<Integer> order = new LinkedHashSet<>();
        ArrayDeque<Integer> queue = new ArrayDeque<>();
        boolean[] seen = new boolean[net.nodeCount()];
        for (int slot = net.junctions; slot < seen.length; slot++) {
            seen[slot] = true;
            queue.add(slot);
        }
        while (!queue.isEmpty()) {
            int slot = queue.poll();
            for (int i = linkStart[slot]; i < linkStart[slot + 1]; i++) {
                int l = linkAt[i];
                order.add(l);
                int other = net.from[l] == slot ? net.to[l] : net.from[l];
                if (!seen[other]) {
                    seen[other] = true;
                    queue.add(other);
                }
            }
        }
        // Links that no source is joined to are in no wave: they stay dead.
        return order.stream().mapToInt(l -> l).toArray();
    }

    /** Brings the lists up to date with a state; true when they were so since the last call. */
    boolean update(NetworkState s) {
        if (state == s && version == s.structureVersion) {
            return true;
        }
        state = s;
        version = s.structureVersion;
        flood(s, s.liveNode, false);
        listSlots(s);
        listLinks(s);
        listOutlets(s);
        return false;
    }

    private void listSlots(NetworkState s) {
        slotCount = 0;
        for (int slot = 0; slot < slots.length; slot++) {
            if (s.liveNode[slot]) {
                slots[slotCount++] = slot;
            }
        }
    }

    private void listLinks(NetworkState s) {
        plainCount = listLinks(s, 0, net.plainLinks, 0);
        linkCount = listLinks(s, net.plainLinks, links.length, plainCount);
        prvCount = 0;
        for (int a = plainCount; a < linkCount; a++) {
            if (net.isPrv[links[a]]) {
                prvs[prvCount++] = links[a];
            }
        }
    }

    /** Lists the live links of a range of places, after so many others; returns how many there are then. */
    private int listLinks(NetworkState s, int begin, int end, int others) {
        int count = others;
        for (int l = begin; l < end; l++) {
            boolean isLive = s.open[l] && s.liveNode[net.from[l]] && s.liveNode[net.to[l]];
            s.liveLink[l] = isLive;
            if (isLive) {
                links[count++] = l;
            }
        }
        return count;
    }

    private void listOutlets(NetworkState s) {
        int roots = 0;
        int all = 0;
        for (int o = 0; o < outlets.length; o++) {
            boolean isLive = s.k[o] > 0 && s.liveNode[net.outletSlot[o]];
            s.liveOutlet[o] = isLive;
            if (isLive) {
                all++;
                if (s.isRoot[o]) {
                    outlets[roots++] = o;
                }
            }
        }
        rootCount = roots;
        outletCount = roots;
        for (int o = 0; outletCount < all; o++) {
            if (s.liveOutlet[o] && !s.isRoot[o]) {
                outlets[outletCount++] = o;
            }
        }
    }

    /** Whether every way from a source to a slot leads through a regulator that is shut. */
    boolean hangsOnShutRegulators(NetworkState s, int slot) {
        flood(s, reached, true);
        return !reached[slot];
    }

    /**
     * Goes along the wave until nothing new is reached: once in a tree; in loops again, since shut links may make the
     * water come another way round.
     */
    private void flood(NetworkState s, boolean[] seen, boolean heedRegulators) {
        Arrays.fill(seen, 0, net.junctions, false);
        Arrays.fill(seen, net.junctions, seen.length, true);
        boolean grows;
        do {
            grows = false;
            for (int l : wave) {
                boolean a = seen[net.from[l]];
                boolean b = seen[net.to[l]];
                if (a != b && s.open[l] && (a || !net.laws.isOneWay(l)) && !(heedRegulators && isShutRegulator(s, l))) {
                    seen[net.from[l]] = true;
                    seen[net.to[l]] = true;
                    grows = true;
                }
            }
        } while (grows && hasLoops);
    }

    private boolean isShutRegulator(NetworkState s, int l) {
        return net.isPrv[l] && s.prv[l] == NetworkState.PRV_CLOSED;
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
