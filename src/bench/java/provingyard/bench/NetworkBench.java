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

/**
 * Warm solves of a sprinkler yard after one thing changed. The floor is one bare step of the method on a tree of as
 * many nodes; a solve takes two to five.
 */
public class NetworkBench {

    /** Which zones water while something changes. */
    public enum Zones {
        /** All; the valve benchmark shuts one in turn. */
        ALL,
        /** One only; the valve benchmark lets the next take its place. */
        ONE
    }

    /** A solved yard. */
    @State(Scope.Thread)
    public static class Yard {

        /** Size of the yard. */
        @Param({"120", "600"})
        public int nodes;

        /** Relative flow change at which a solve may stop. */
        @Param({"1e-5", "1e-8"})
        public double accuracy;

        /** What waters. */
        @Param
        public Zones zones;

        private NetworkState state;
        private NetworkSolver solver;
        private int[] valves;
        private int[] heads;
        private int at;

        /** Builds the yard and solves it cold. */
        @Setup
        public void build() {
            SprinklerYard yard = SprinklerYard.ofNodes(nodes);
            state = yard.network().newState();
            solver = new NetworkSolver(
                    yard.network(), accuracy == 1e-8 ? SolverSettings.DEFAULT : SolverSettings.COARSE);
            valves = new int[yard.zones()];
            for (int z = 0; z < valves.length; z++) {
                valves[z] = yard.valve(z);
                state.setOpen(valves[z], zones == Zones.ALL || z == 0);
            }
            heads = new int
                    [zones == Zones.ALL
                            ? yard.network().outletCount()
                            : yard.network().outletCount() / valves.length];
            for (int h = 0; h < heads.length; h++) {
                heads[h] = h;
            }
            solve();
        }

        /** Swaps one nozzle, each head in turn: one third larger, and back the next time round. */
        void changeOutlet() {
            int head = heads[(int) ((at * 7L) % heads.length)];
            boolean isLarge = state.outletK(head) > SprinklerYard.HEAD_K;
            state.setOutletK(head, isLarge ? SprinklerYard.HEAD_K : SprinklerYard.HEAD_K * 4 / 3);
            at = (at + 1) % (1 << 20);
        }

        /** Moves the open zone, or the shut one, by one. */
        void swapValves() {
            boolean watering = zones == Zones.ONE;
            state.setOpen(valves[at], !watering);
            at = (at + 1) % valves.length;
            state.setOpen(valves[at], watering);
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
        @Param({"120", "600"})
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

    /** Another zone is open, or shut. */
    @Benchmark
    public double valve(Yard yard) {
        yard.swapValves();
        return yard.solve();
    }

    /** One bare step. */
    @Benchmark
    public double floor(Step floor) {
        return floor.step.run();
    }
}
