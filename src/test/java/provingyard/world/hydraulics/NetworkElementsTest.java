package provingyard.world.hydraulics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Each part of a network by itself, against its law worked by hand. */
@Tag("unit")
class NetworkElementsTest {

    private static NetworkState solved(NetworkBuilder builder) {
        assertEquals(List.of(), builder.problems());
        Network net = builder.build();
        NetworkState s = net.newState();
        assertEquals(SolveStatus.CONVERGED, new NetworkSolver(net).solve(s), s.problem());
        assertTrue(s.massImbalance() < 1e-10);
        return s;
    }

    private static double head(NetworkState s, String id) {
        return s.head(s.network().node(id));
    }

    private static double flow(NetworkState s, String id) {
        return s.flow(s.network().link(id));
    }

    private static LinkState state(NetworkState s, String id) {
        return s.linkState(s.network().link(id));
    }

    private static NetworkState regulated(double sourceHead, double otherHead) {
        NetworkBuilder b = Network.builder()
                .source("S", sourceHead)
                .node("a", 0)
                .node("r", 2)
                .node("e", 0)
                .pipe("p1", "S", "a", 50, 0.04, 150, 0, false, true)
                .prv("prv", "a", "r", 0.03, 4, 20, true)
                .pipe("p2", "r", "e", 30, 0.03, 150, 0, false, true)
                .outlet("o", "e", 2e-4, 0.5);
        if (!Double.isNaN(otherHead)) {
            b.source("T", otherHead).pipe("p3", "T", "e", 10, 0.05, 150, 0, false, true);
        }
        return solved(b);
    }

    @Test
    void regulatorHoldsItsSetting() {
        NetworkState s = regulated(50, Double.NaN);
        assertEquals(LinkState.ACTIVE, state(s, "prv"));
        assertEquals(22, head(s, "r"), 1e-9);
        assertEquals(20, s.pressureHead(s.network().node("r")), 1e-9);
        assertTrue(head(s, "a") > 40);
        assertEquals(flow(s, "p2"), flow(s, "prv"), 1e-12);
        assertEquals(flow(s, "p1"), flow(s, "prv"), 1e-12);
    }

    @Test
    void regulatorWithTooLittlePressureStandsOpen() {
        NetworkState s = regulated(18, Double.NaN);
        assertEquals(LinkState.OPEN, state(s, "prv"));
        double loss = Friction.minorLoss(4, 0.03, flow(s, "prv"), Constants.TEXTBOOK);
        assertEquals(head(s, "a") - loss, head(s, "r"), 1e-7);
        assertTrue(flow(s, "prv") > 1e-5);
    }

    @Test
    void regulatorShutsAgainstHigherPressureBehind() {
        NetworkState s = regulated(50, 40);
        assertEquals(LinkState.CLOSED, state(s, "prv"));
        assertEquals(0, flow(s, "prv"), 1e-10);
        assertTrue(head(s, "r") > 22 && head(s, "a") > 49.99);
    }

    @Test
    void pumpMeetsTheSystemOnItsCurve() {
        NetworkState s = solved(Network.builder()
                .source("S", 5)
                .node("a", 0)
                .node("b", 10)
                .pump("pump", "S", "a", new double[] {0, 1e-3, 2e-3}, new double[] {40, 35, 20}, true)
                .pipe("p", "a", "b", 40, 0.03, 140, 1, false, true)
                .outlet("o", "b", 2e-4, 0.5));
        double c = Math.log(20.0 / 5) / Math.log(2);
        double gain = 40 - 5 / Math.pow(1e-3, c) * Math.pow(flow(s, "pump"), c);
        assertEquals(5 + gain, head(s, "a"), 1e-7);
        assertEquals(LinkState.OPEN, state(s, "pump"));
    }

    @Test
    void pumpAgainstTooMuchHeadIsOff() {
        NetworkState s = solved(Network.builder()
                .source("S", 5)
                .source("T", 60)
                .node("a", 0)
                .pump("pump", "S", "a", new double[] {0, 1e-3, 2e-3}, new double[] {40, 35, 20}, true)
                .pipe("p", "T", "a", 40, 0.03, 140, 1, false, true)
                .outlet("o", "a", 1e-5, 0.5));
        assertEquals(LinkState.CLOSED, state(s, "pump"));
        assertEquals(0, flow(s, "pump"));
        assertTrue(head(s, "a") > 55);
    }

    @Test
    void checkValveStopsReverseFlow() {
        NetworkState s = solved(Network.builder()
                .source("S", 30)
                .source("T", 50)
                .node("a", 0)
                .pipe("check", "S", "a", 10, 0.03, 150, 0, true, true)
                .pipe("p", "T", "a", 10, 0.03, 150, 0, false, true)
                .outlet("o", "a", 1e-5, 0.5));
        assertEquals(LinkState.CLOSED, state(s, "check"));
        assertEquals(0, flow(s, "check"));
        assertEquals(50, head(s, "a"), 0.1);
    }

    @Test
    void nodeFedOnlyAgainstACheckValveIsIsolated() {
        NetworkState s = solved(Network.builder()
                .source("S", 30)
                .node("a", 0)
                .pipe("check", "a", "S", 10, 0.03, 150, 0, true, true)
                .outlet("o", "a", 1e-5, 0.5));
        assertTrue(s.isIsolated(s.network().node("a")) && Double.isNaN(head(s, "a")));
        assertEquals(0, s.outletFlow(0));
    }

    @Test
    void deviceLosesWhatItsCurveSays() {
        double[] flows = {0, 5e-4, 1e-3};
        double[] losses = {5, 6, 9};
        NetworkState s = solved(Network.builder()
                .source("S", 40)
                .node("a", 0)
                .device("bfp", "S", "a", flows, losses, true)
                .outlet("o", "a", 1.3e-4, 0.5));
        double q = flow(s, "bfp");
        assertTrue(q > 5e-4 && q < 1e-3, "flow " + q);
        assertEquals(6 + 3 * (q - 5e-4) / 5e-4, 40 - head(s, "a"), 1e-7);
    }

    @Test
    void deviceBelowItsThresholdPassesNothing() {
        NetworkState s = solved(Network.builder()
                .source("S", 40)
                .node("a", 36)
                .device("bfp", "S", "a", new double[] {0, 1e-3}, new double[] {5, 6}, true)
                .outlet("o", "a", 1.3e-4, 0.5));
        assertEquals(0, s.outletFlow(0));
        assertEquals(0, flow(s, "bfp"));
        assertEquals(35, head(s, "a"), 1e-6);
    }

    @Test
    void supplyCurvePassesThroughBothPoints() {
        Network net = Network.builder()
                .supply("S", 0, 45, 2e-3, 30)
                .outlet("o", "S", 2e-3 / Math.sqrt(30), 0.5)
                .build();
        NetworkState s = net.newState();
        NetworkSolver solver = new NetworkSolver(net);
        assertEquals(SolveStatus.CONVERGED, solver.solve(s));
        assertEquals(30, head(s, "S"), 1e-7);
        assertEquals(2e-3, flow(s, "S.supply"), 1e-10);
        s.setOutletK(0, 0);
        assertEquals(SolveStatus.CONVERGED, solver.solve(s));
        assertEquals(45, head(s, "S"), 1e-7);
    }

    @ParameterizedTest(name = "an outlet with n = {0} keeps q = k p^n")
    @ValueSource(doubles = {0.05, 0.1, 0.3, 0.5, 1, 1.15, 1.5})
    void outletLaw(double n) {
        NetworkState s = solved(Network.builder()
                .source("S", 25)
                .node("a", 3)
                .pipe("p", "S", "a", 60, 0.016, 150, 1, false, true)
                .outlet("o", "a", 2e-5, n));
        assertEquals(2e-5 * Math.pow(head(s, "a") - 3, n), s.outletFlow(0), 1e-12);
    }

    @Test
    void darcyPipeLosesWhatTheFormulaSays() {
        for (double k : new double[] {2e-6, 1e-5, 2e-5, 1e-4}) {
            NetworkState s = solved(Network.builder()
                    .source("S", 25)
                    .node("a", 0)
                    .darcyPipe("p", "S", "a", 10, 0.0209, 1.5e-6, 1.1386e-6, 0, false, true)
                    .outlet("o", "a", k, 0.5));
            double h = Friction.darcyWeisbach(10, 0.0209, 1.5e-6, 1.1386e-6, flow(s, "p"), Constants.TEXTBOOK);
            assertEquals(25 - h, head(s, "a"), 1e-8);
        }
    }

    @Test
    void tooFewIterationsAreReported() {
        Network net = RandomYards.yard(3, new RandomYards.Parts(true, true, true, false));
        NetworkState s = net.newState();
        assertEquals(SolveStatus.NOT_CONVERGED, new NetworkSolver(net, new SolverSettings(1e-8, 1e-6, 2)).solve(s));
        assertNotNull(s.problem());
        assertTrue(s.problem().contains("2 iterations"));
        assertThrows(IllegalStateException.class, () -> NeutralNetworkFile.write(s));
    }

    @Test
    void everyProblemIsCollected() {
        NetworkBuilder b = Network.builder()
                .node("a", 0)
                .node("a", 1)
                .source("S", Double.NaN)
                .pipe("p", "a", "nowhere", -1, 0, 150, 0, false, true)
                .pipe("q", "a", "nowhere", 1, 0.02, 150, 0, false, true)
                .valve("v", "a", "a", 0.02, 1, true)
                .device("d", "a", "a", new double[] {0, 1}, new double[] {2, 1}, true)
                .pump("u", "a", "a", new double[] {0, 1, 2}, new double[] {1, 2, 3}, true)
                .outlet("o", "a", -1, 3);
        assertEquals(10, b.problems().size(), b.problems()::toString);
        assertEquals(
                "a: a second node or source 'a', allowed: unique ids",
                b.problems().get(0).toString());
        assertThrows(IllegalStateException.class, b::build);
    }
}
