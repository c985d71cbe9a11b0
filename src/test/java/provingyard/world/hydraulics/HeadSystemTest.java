package provingyard.world.hydraulics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.apache.commons.rng.UniformRandomProvider;
import provingyard.numeric.RandomStreams;

/** The linear system by itself, on the patterns of random yards, some of whose valves are shut. */
class HeadSystemTest {

    /** Random conductances of a yard's links and outlets, and what its nodes draw. */
    private static final class Yard {

        final Network net;
        final LiveParts live;
        final double[] conductance;
        final double[] outlet;
        final double[] draw;

        Yard(long seed, boolean loops) {
            net = RandomYards.yard(seed, new RandomYards.Parts(loops, false, false, false));
            live = new LiveParts(net);
            NetworkState state = net.newState();
            UniformRandomProvider random = new RandomStreams(seed).sequence("system");
            for (int l = 0; l < net.linkCount(); l++) {
                state.setOpen(l, !net.linkIds().get(l).startsWith("v") || random.nextDouble() < 0.7);
            }
            live.update(state);
            conductance = random.doubles(net.linkCount(), 1e-5, 1e-2).toArray();
            outlet = random.doubles(net.nodeCount(), 0, 1e-4).toArray();
            draw = random.doubles(net.nodeCount(), 0, 1e-4).toArray();
        }

        HeadSystem factored() {
            HeadSystem system = new HeadSystem(net, live);
            for (int a = 0; a < live.linkCount; a++) {
                int l = live.links[a];
                system.addLink(net.entry[l], net.from[l], net.to[l], conductance[l], 0);
            }
            for (int a = 0; a < live.slotCount; a++) {
                int slot = live.slots[a];
                system.addOutlet(slot, outlet[slot], -draw[slot]);
            }
            system.factor();
            return system;
        }

        double[] heads(HeadSystem system) {
            double[] heads = new double[net.nodeCount()];
            system.moveHeads(heads);
            return heads;
        }

        /** Inflow less outflow of each live slot at these heads, m3/s. */
        double[] imbalance(double[] heads) {
            double[] balance = new double[net.nodeCount()];
            for (int a = 0; a < live.linkCount; a++) {
                int l = live.links[a];
                double flow = conductance[l] * (heads[net.from[l]] - heads[net.to[l]]);
                balance[net.from[l]] -= flow;
                balance[net.to[l]] += flow;
            }
            for (int slot = 0; slot < balance.length; slot++) {
                balance[slot] -= outlet[slot] * heads[slot] + draw[slot];
            }
            return balance;
        }

        void assertBalanced(double[] heads) {
            double[] balance = imbalance(heads);
            for (int a = 0; a < live.slotCount; a++) {
                assertEquals(0, balance[live.slots[a]], 1e-15, "slot " + live.slots[a]);
            }
        }
    }

    @Property(tries = 100)
    void everyNodeBalances(@ForAll long seed, @ForAll boolean loops) {
        Yard yard = new Yard(seed, loops);
        double[] heads = yard.heads(yard.factored());
        yard.assertBalanced(heads);
        assertTrue(Arrays.stream(heads).min().orElseThrow() < 0, "water is drawn, so heads fall");
    }

    @Property(tries = 100)
    void strengthenedFactorsAreThoseOfTheStrongerSystem(@ForAll long seed, @ForAll boolean loops) {
        Yard yard = new Yard(seed, loops);
        HeadSystem system = yard.factored();
        UniformRandomProvider random = new RandomStreams(seed).sequence("stronger");
        for (int i = 0; i < 3; i++) {
            int slot = yard.live.slots[random.nextInt(yard.live.slotCount)];
            double more = yard.outlet[slot] * (-0.5 + 3 * random.nextDouble());
            yard.outlet[slot] += more;
            system.strengthen(slot, more);
        }
        system.clearRight();
        for (int a = 0; a < yard.live.slotCount; a++) {
            system.addInflow(yard.live.slots[a], -yard.draw[yard.live.slots[a]]);
        }
        system.sweep();
        yard.assertBalanced(yard.heads(system));
    }
}
