package provingyard.world.hydraulics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.management.ManagementFactory;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.apache.commons.rng.UniformRandomProvider;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import provingyard.numeric.Deterministic;
import provingyard.numeric.RandomStreams;

/** Laws that hold for any yard, tried on random ones. */
class RandomYardsPropertyTest {

    private static void change(NetworkState s, UniformRandomProvider random) {
        Network net = s.network();
        for (int l = 0; l < net.linkCount(); l++) {
            if (net.linkIds().get(l).startsWith("v") && random.nextDouble() < 0.3) {
                s.setOpen(l, !s.isOpen(l));
            }
        }
        if (random.nextDouble() < 0.6) {
            int o = random.nextInt(net.outletCount());
            double pick = random.nextDouble();
            double share = pick < 0.3 ? 1 : pick < 0.8 ? 40 : pick < 0.9 ? 0.1 : 0;
            s.setOutletK(o, net.outletK[o] * share);
        }
        if (net.isSource(0) && random.nextDouble() < 0.3) {
            s.setSourceHead(0, 2 + 60 * random.nextDouble());
        }
    }

    private static void checkAnswer(NetworkState s) {
        Network net = s.network();
        assertEquals(SolveStatus.CONVERGED, s.status(), s.problem());
        assertTrue(s.massImbalance() <= 1e-9, () -> "mass imbalance " + s.massImbalance());
        for (int o = 0; o < net.outletCount(); o++) {
            assertTrue(s.outletFlow(o) >= 0);
        }
        for (int i = 0; i < net.nodeCount(); i++) {
            assertEquals(s.isIsolated(i), Double.isNaN(s.head(i)));
        }
        for (int l = 0; l < net.linkCount(); l++) {
            assertTrue(s.isOpen(l) || s.flow(l) == 0);
            boolean joined = !s.isIsolated(net.from(l)) && !s.isIsolated(net.to(l)) && s.isOpen(l);
            if (joined && s.linkState(l) == LinkState.OPEN && s.flow(l) != 0) {
                double drop = s.head(net.from(l)) - s.head(net.to(l));
                assertEquals(
                        net.headLoss(l, s.flow(l)), drop, 1e-6, net.linkIds().get(l));
            }
        }
        checkRegulators(s);
    }

    /** A regulator never lets more than its set pressure by, holds it while it can, and shuts only against reverse flow. */
    private static void checkRegulators(NetworkState s) {
        Network net = s.network();
        for (int l = 0; l < net.linkCount(); l++) {
            int place = net.linkPlace[l];
            if (net.isPrv[place] && s.liveLink[place]) {
                String id = net.linkIds().get(l);
                double before = s.head(net.from(l));
                double behind = s.head(net.to(l));
                double set = net.prvHead[place];
                switch (s.linkState(l)) {
                    case OPEN -> assertTrue(behind <= set + 1e-6, () -> id + " open at " + (behind - set));
                    case ACTIVE -> {
                        assertEquals(set, behind, 1e-6, id);
                        assertTrue(before >= set - 1e-6, () -> id + " holds more than there is before it");
                    }
                    case CLOSED ->
                        assertTrue(
                                behind >= Math.min(set, before) - 1e-6,
                                () -> id + " shut with pressure missing behind it");
                }
            }
        }
    }

    @Property(tries = 300)
    void everyYardSolvesColdAndWarmAlike(
            @ForAll long seed, @ForAll boolean loops, @ForAll boolean odd, @ForAll boolean any, @ForAll boolean darcy) {
        checkColdAndWarmAlike(seed, new RandomYards.Parts(loops, odd, any, darcy));
    }

    /** Here a warm solve once took more than 40 iterations and ended before it had looked at its open regulator. */
    @Test
    @Tag("unit")
    void aLongSolveLooksAtItsRegulatorsBeforeItEnds() {
        checkColdAndWarmAlike(-143781, new RandomYards.Parts(false, true, true, true));
    }

    private static void checkColdAndWarmAlike(long seed, RandomYards.Parts parts) {
        Network net = RandomYards.yard(seed, parts);
        NetworkSolver solver = new NetworkSolver(net);
        NetworkState warm = net.newState();
        UniformRandomProvider random = new RandomStreams(seed).sequence("changes");
        for (int c = 0; c < 5; c++) {
            change(warm, random);
            solver.solve(warm);
            checkAnswer(warm);
            NetworkState cold = warm.copy();
            cold.forget();
            solver.solve(cold);
            checkAnswer(cold);
            for (int i = 0; i < net.nodeCount(); i++) {
                assertEquals(warm.head(i), cold.head(i), 1e-6, net.nodeIds().get(i));
            }
        }
    }

    @Property(tries = 300)
    void newOutletsAreAnsweredWarmAsCold(
            @ForAll long seed, @ForAll boolean loops, @ForAll boolean odd, @ForAll boolean any, @ForAll boolean darcy) {
        Network net = RandomYards.yard(seed, new RandomYards.Parts(loops, odd, any, darcy));
        NetworkSolver warmSolver = new NetworkSolver(net);
        NetworkState warm = net.newState();
        warmSolver.solve(warm);
        UniformRandomProvider random = new RandomStreams(seed).sequence("outlets");
        for (int c = 0; c < 8; c++) {
            int changes = 1 + random.nextInt(3);
            for (int i = 0; i < changes; i++) {
                int o = random.nextInt(net.outletCount());
                warm.setOutletK(o, net.outletK[o] * Deterministic.pow(10, 4 * random.nextDouble() - 2.5));
            }
            warmSolver.solve(warm);
            checkAnswer(warm);
            NetworkState cold = warm.copy();
            cold.forget();
            new NetworkSolver(net).solve(cold);
            for (int i = 0; i < net.nodeCount(); i++) {
                assertEquals(cold.head(i), warm.head(i), 1e-6, net.nodeIds().get(i));
            }
        }
    }

    /** A copy has no factors at hand, so it shows what a solve takes that looks at every law from the start. */
    @Property(tries = 20)
    void factorsKeptFromTheLastSolveSpareIterations(@ForAll long seed, @ForAll boolean loops) {
        Network net = RandomYards.yard(seed, new RandomYards.Parts(loops, false, false, false));
        NetworkSolver solver = new NetworkSolver(net);
        NetworkSolver other = new NetworkSolver(net);
        NetworkState s = net.newState();
        solver.solve(s);
        int kept = 0;
        int plain = 0;
        for (int o = 0; o < net.outletCount(); o++) {
            s.setOutletK(o, net.outletK[o] * 4 / 3);
            NetworkState copy = s.copy();
            solver.solve(s);
            other.solve(copy);
            kept += s.iterations();
            plain += copy.iterations();
        }
        assertTrue(kept < plain, kept + " against " + plain);
    }

    /** Holds for trees; a loop may send the new flow another way, and a regulator only for its own branch. */
    @Property(tries = 200)
    void anOutletAddedDownstreamOnlyRaisesTheMetersFlow(@ForAll long seed, @ForAll boolean any) {
        Network net = RandomYards.yard(seed, new RandomYards.Parts(false, false, any, false));
        NetworkSolver solver = new NetworkSolver(net);
        NetworkState s = net.newState();
        UniformRandomProvider random = new RandomStreams(seed).sequence("leak");
        int leak = random.nextInt(net.outletCount());
        double k = net.outletK[leak];
        int meter = net.link("meter");
        s.setOutletK(leak, 0);
        double before = 0;
        for (double share : new double[] {0, 0.01, 0.3, 1, 5, 40}) {
            s.setOutletK(leak, k * share);
            assertEquals(SolveStatus.CONVERGED, solver.solve(s), s.problem());
            assertTrue(s.flow(meter) >= before - 1e-12, before + " then " + s.flow(meter));
            before = s.flow(meter);
        }
    }

    @Property(tries = 20)
    void aSolveIsRepeatableToTheBit(@ForAll long seed) {
        double[] first = coldHeads(seed);
        double[] second = coldHeads(seed);
        for (int i = 0; i < first.length; i++) {
            assertEquals(Double.doubleToRawLongBits(first[i]), Double.doubleToRawLongBits(second[i]));
        }
    }

    private static double[] coldHeads(long seed) {
        Network net = RandomYards.yard(seed, new RandomYards.Parts(true, true, true, true));
        NetworkState s = net.newState();
        new NetworkSolver(net).solve(s);
        double[] heads = new double[net.nodeCount()];
        for (int i = 0; i < heads.length; i++) {
            heads[i] = s.head(i);
        }
        return heads;
    }

    @Property(tries = 3)
    void aWarmSolveAllocatesNothing(@ForAll long seed, @ForAll boolean darcy) {
        Network net = RandomYards.yard(seed, new RandomYards.Parts(true, true, true, darcy));
        NetworkSolver solver = new NetworkSolver(net);
        NetworkState s = net.newState();
        solver.solve(s);
        solveOften(net, solver, s);
        var threads = (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
        long least = Long.MAX_VALUE;
        for (int attempt = 0; attempt < 5; attempt++) {
            long before = threads.getCurrentThreadAllocatedBytes();
            solveOften(net, solver, s);
            least = Math.min(least, threads.getCurrentThreadAllocatedBytes() - before);
        }
        assertTrue(least < 5_000, "bytes in 1000 solves: " + least);
    }

    private static void solveOften(Network net, NetworkSolver solver, NetworkState s) {
        int valve = net.link("v0");
        for (int i = 0; i < 1000; i++) {
            s.setOpen(valve, i % 2 == 0);
            s.setOutletK(0, net.outletK[0] * (1 + i % 5));
            solver.solve(s);
        }
    }
}
