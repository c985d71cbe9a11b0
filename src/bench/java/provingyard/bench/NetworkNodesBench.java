package provingyard.bench;

import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import provingyard.world.hydraulics.NetworkSolver;
import provingyard.world.hydraulics.NetworkState;
import provingyard.world.hydraulics.SolveStatus;
import provingyard.world.hydraulics.SolverSettings;

/** A warm solve to 1e-8 after one head of a fully open yard changed, for more and more nodes. */
public class NetworkNodesBench {

    /** A solved yard. */
    @State(Scope.Thread)
    public static class Yard {

        /** Size of the yard. */
        @Param({"60", "240", "1200", "6000"})
        public int nodes;

        private NetworkState state;
        private NetworkSolver solver;
        private int at;

        /** Builds the yard and solves it cold. */
        @Setup
        public void build() {
            SprinklerYard yard = SprinklerYard.ofNodes(nodes);
            state = yard.network().newState();
            solver = new NetworkSolver(yard.network(), SolverSettings.DEFAULT);
            solve();
        }

        /** Swaps one nozzle, each head in turn: one third larger, and back the next time round. */
        void changeOutlet() {
            int heads = state.network().outletCount();
            int head = (int) ((at * 7L) % heads);
            boolean isLarge = state.outletK(head) > SprinklerYard.HEAD_K;
            state.setOutletK(head, isLarge ? SprinklerYard.HEAD_K : SprinklerYard.HEAD_K * 4 / 3);
            at = (at + 1) % (1 << 20);
        }

        double solve() {
            if (solver.solve(state) != SolveStatus.CONVERGED) {
                throw new IllegalStateException(state.problem());
            }
            return state.relativeFlowChange();
        }
    }

    /** One bare step. */
    @State(Scope.Thread)
    public static class Step {

        /** Nodes of the tree. */
        @Param({"60", "240", "1200", "6000"})
        public int nodes;

        private BareStep step;

        /** Grows the tree. */
        @Setup
        public void build() {
            step = new BareStep(nodes);
        }
    }

    /** One head got another nozzle. */
    @Benchmark
    public double outlet(Yard yard) {
        yard.changeOutlet();
        return yard.solve();
    }

    /** One bare step. */
    @Benchmark
    public double floor(Step floor) {
        return floor.step.run();
    }
}
