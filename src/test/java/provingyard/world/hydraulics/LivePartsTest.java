package provingyard.world.hydraulics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.apache.commons.rng.UniformRandomProvider;
import provingyard.numeric.RandomStreams;

/** What is joined to a source, against a search from node to node. */
class LivePartsTest {

    @Property(tries = 200)
    void aNodeIsLiveIfWaterCanComeToIt(@ForAll long seed, @ForAll boolean loops, @ForAll boolean odd) {
        Network net = RandomYards.yard(seed, new RandomYards.Parts(loops, odd, false, false));
        LiveParts live = new LiveParts(net);
        NetworkState s = net.newState();
        UniformRandomProvider random = new RandomStreams(seed).sequence("shut");
        for (int change = 0; change < 5; change++) {
            for (int l = 0; l < net.linkCount(); l++) {
                s.setOpen(l, random.nextDouble() < 0.9);
            }
            live.update(s);
            boolean[] reached = new boolean[net.nodeCount()];
            for (int i = 0; i < reached.length; i++) {
                if (net.isSource(i)) {
                    search(s, i, reached);
                }
            }
            for (int i = 0; i < reached.length; i++) {
                assertEquals(reached[i], !s.isIsolated(i), net.nodeIds().get(i));
            }
        }
    }

    private static void search(NetworkState s, int node, boolean[] reached) {
        Network net = s.network();
        reached[node] = true;
        for (int l = 0; l < net.linkCount(); l++) {
            if (s.isOpen(l) && net.from(l) == node && !reached[net.to(l)]) {
                search(s, net.to(l), reached);
            } else if (s.isOpen(l) && net.to(l) == node && !net.isOneWay(l) && !reached[net.from(l)]) {
                search(s, net.from(l), reached);
            }
        }
    }
}
