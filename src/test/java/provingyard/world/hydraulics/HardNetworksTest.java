package provingyard.world.hydraulics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Large yards with everything that makes a solver stumble, each answer checked against the laws themselves. */
@Tag("unit")
class HardNetworksTest {

    /** How the yard gets its water. */
    enum Feed {
        TOWN,
        PUMP,
        REGULATOR
    }

    /** A yard on a slope: a feed, a mainline closed to a ring, zones with two laterals and an inert leak on the main. */
    private static Network yard(int zones, int heads, Feed feed, boolean darcy) {
        NetworkBuilder b = Network.builder().source("S", feed == Feed.PUMP ? 2 : 60);
        b.node("a", 0).node("m0", 0);
        b.valve("meter", "S", "a", 0.1, 4, true);
        switch (feed) {
            case TOWN -> b.device("feed", "a", "m0", new double[] {0, 0.01, 0.03}, new double[] {4, 5, 8}, true);
            case PUMP -> b.pump("feed", "a", "m0", new double[] {0, 0.015, 0.03}, new double[] {60, 52, 30}, true);
            default -> b.prv("feed", "a", "m0", 0.1, 3, 35, true);
        }
        for (int z = 0; z < zones; z++) {
            double height = 0.6 * z;
            b.node("m" + (z + 1), height).node("z" + z, height);
            pipe(b, "main" + z, "m" + z, "m" + (z + 1), 15, 0.1, darcy);
            b.valve("v" + z, "m" + (z + 1), "z" + z, 0.04, 6, true);
            for (int h = 0; h < heads; h++) {
                String id = z + "_" + h;
                b.node("h" + id, height + 0.05 * h);
                pipe(b, "l" + id, h < 2 ? "z" + z : "h" + z + "_" + (h - 2), "h" + id, 4.5, 0.03, darcy);
                b.outlet("o" + id, "h" + id, 1e-5, h % 5 == 4 ? 0.1 : 0.5);
            }
        }
        pipe(b, "ring", "m0", "m" + zones, 40, 0.08, darcy);
        b.outlet("break", "m1", 0, 0.5);
        assertEquals(List.of(), b.problems());
        return b.build();
    }

    private static void pipe(NetworkBuilder b, String id, String from, String to, double m, double d, boolean darcy) {
        if (darcy) {
            b.darcyPipe(id, from, to, m, d, 1.5e-6, 1.1386e-6, 0.3, false, true);
        } else {
            b.pipe(id, from, to, m, d, 150, 0.3, false, true);
        }
    }

    /** Converged, water balanced, every open link and every outlet on its law, and nothing known where nothing flows. */
    private static void check(NetworkState s) {
        Network net = s.network();
        assertEquals(SolveStatus.CONVERGED, s.status(), s.problem());
        assertTrue(s.massImbalance() <= 1e-10, () -> "mass imbalance " + s.massImbalance());
        for (int l = 0; l < net.linkCount(); l++) {
            if (s.linkState(l) == LinkState.OPEN && !s.isIsolated(net.from(l)) && !s.isIsolated(net.to(l))) {
                double drop = s.head(net.from(l)) - s.head(net.to(l));
                assertEquals(
                        net.headLoss(l, s.flow(l)), drop, 1e-6, net.linkIds().get(l));
            }
        }
        for (int o = 0; o < net.outletCount(); o++) {
            String id = net.outletIds().get(o);
            int node = id.equals("break") ? net.node("m1") : net.node("h" + id.substring(1));
            if (s.isIsolated(node)) {
                assertTrue(Double.isNaN(s.head(node)) && s.outletFlow(o) == 0, id);
            } else {
                // A millimetre of pressure is where a compensating outlet's law bends down to zero.
                double p = s.pressureHead(node);
                double law = p <= 0 ? 0 : s.outletK(o) * Math.pow(p, s.outletN(o));
                assertEquals(law, s.outletFlow(o), p < 2e-3 ? 1e-5 : 1e-9, id);
            }
        }
    }

    private static void checkWarmAndCold(NetworkSolver solver, NetworkState s) {
        solver.solve(s);
        check(s);
        NetworkState cold = s.copy();
        cold.forget();
        solver.solve(cold);
        check(cold);
        for (int i = 0; i < s.network().nodeCount(); i++) {
            assertEquals(cold.head(i), s.head(i), 1e-6, s.network().nodeIds().get(i));
        }
    }

    @ParameterizedTest(name = "600 nodes fed by {0}: all open, a third of the zones shut, the main broken, mended")
    @EnumSource(Feed.class)
    void largeYardSurvivesADay(Feed feed) {
        liveThroughADay(yard(24, 23, feed, false));
    }

    @ParameterizedTest(name = "120 nodes by Darcy-Weisbach fed by {0}")
    @EnumSource(Feed.class)
    void darcyYardSurvivesADay(Feed feed) {
        liveThroughADay(yard(8, 13, feed, true));
    }

    private static void liveThroughADay(Network net) {
        NetworkState s = net.newState();
        NetworkSolver solver = new NetworkSolver(net);
        int leak = net.outlet("break");
        checkWarmAndCold(solver, s);
        for (int z = 0; net.linkIds().contains("v" + z); z += 3) {
            s.setOpen(net.link("v" + z), false);
        }
        checkWarmAndCold(solver, s);
        assertTrue(s.isIsolated(net.node("z0")) && s.isIsolated(net.node("h0_1")));
        double before = s.flow(net.link("meter"));
        s.setOutletK(leak, 0.3);
        checkWarmAndCold(solver, s);
        assertTrue(s.flow(net.link("meter")) > 1.5 * before, "the break draws more than the yard did");
        assertTrue(s.pressureHead(net.node("m1")) < 0.1, "pressure at the break " + s.pressureHead(net.node("m1")));
        s.setOutletK(leak, 0);
        checkWarmAndCold(solver, s);
        assertEquals(before, s.flow(net.link("meter")), 1e-9);
    }

    @Test
    void everythingShutIsStill() {
        Network net = yard(8, 13, Feed.TOWN, false);
        NetworkState s = net.newState();
        NetworkSolver solver = new NetworkSolver(net);
        solver.solve(s);
        for (int z = 0; z < 8; z++) {
            s.setOpen(net.link("v" + z), false);
        }
        checkWarmAndCold(solver, s);
        assertEquals(0, s.flow(net.link("meter")), 1e-10);
    }

    @Test
    void eachValveSwapOfALargeYardIsSolvedWithinTenSteps() {
        Network net = yard(24, 23, Feed.TOWN, false);
        NetworkState s = net.newState();
        NetworkSolver solver = new NetworkSolver(net);
        for (int z = 1; z < 24; z++) {
            s.setOpen(net.link("v" + z), false);
        }
        for (int round = 0; round < 2; round++) {
            for (int z = 0; z < 24; z++) {
                s.setOpen(net.link("v" + z), false);
                s.setOpen(net.link("v" + (z + 1) % 24), true);
                solver.solve(s);
                check(s);
                assertTrue(round == 0 || s.iterations() <= 10, "steps " + s.iterations());
            }
        }
    }

    @ParameterizedTest(name = "a nozzle {0} times as large is followed in the coarse and in the fine accuracy")
    @ValueSource(doubles = {0.5, 1.3, 40})
    void coarseAndFineAgreeAsTheySay(double times) {
        Network net = yard(24, 23, Feed.TOWN, false);
        NetworkState coarse = net.newState();
        NetworkSolver solver = new NetworkSolver(net, SolverSettings.COARSE);
        solver.solve(coarse);
        coarse.setOutletK(7, times * coarse.outletK(7));
        NetworkState fine = coarse.copy();
        assertEquals(SolveStatus.CONVERGED, solver.solve(coarse));
        assertTrue(coarse.relativeFlowChange() <= 1e-5);
        assertEquals(SolveStatus.CONVERGED, new NetworkSolver(net).solve(fine));
        assertTrue(fine.relativeFlowChange() <= 1e-8);
        for (int i = 0; i < net.nodeCount(); i++) {
            assertEquals(fine.head(i), coarse.head(i), 1e-3, net.nodeIds().get(i));
        }
    }

    /** Bounds and starting flows belong to the state, so it may go from one solver to another. */
    @Test
    void aStateMayChangeItsSolver() {
        Network net = yard(8, 13, Feed.TOWN, false);
        NetworkState s = net.newState();
        NetworkSolver first = new NetworkSolver(net);
        NetworkSolver second = new NetworkSolver(net);
        int outlet = net.outlet("o0_0");
        for (double times : new double[] {1, 30, 0, 90, 0.01}) {
            s.setOutletK(outlet, 1e-5 * times);
            checkWarmAndCold(first, s);
            s.setOutletK(outlet, 2e-5 * times);
            checkWarmAndCold(second, s);
        }
    }

    @Test
    void resultsKeepTheNamesOfWhatWasBuilt() {
        NetworkState s = Network.builder()
                .source("S", 30)
                .node("far", 0)
                .node("near", 0)
                .outlet("atFar", "far", 1e-5, 0.5)
                .outlet("atNear", "near", 4e-5, 0.5)
                .pipe("second", "near", "far", 10, 0.03, 150, 0, false, true)
                .pipe("first", "S", "near", 10, 0.03, 150, 0, true, true)
                .build()
                .newState();
        Network net = s.network();
        assertEquals(SolveStatus.CONVERGED, new NetworkSolver(net).solve(s));
        assertEquals(1e-5 * Math.sqrt(s.head(net.node("far"))), s.outletFlow(net.outlet("atFar")), 1e-12);
        assertEquals(4e-5 * Math.sqrt(s.head(net.node("near"))), s.outletFlow(net.outlet("atNear")), 1e-12);
        assertEquals(s.outletFlow(0), s.flow(net.link("second")), 1e-12);
        assertEquals(s.outletFlow(0) + s.outletFlow(1), s.flow(net.link("first")), 1e-12);
        assertTrue(net.isOneWay(net.link("first")) && !net.isOneWay(net.link("second")));
    }
}
