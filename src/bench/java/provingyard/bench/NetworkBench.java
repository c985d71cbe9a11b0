package provingyard.bench;

import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import provingyard.world.hydraulics.SolverSettings;

/**
 * Warm solves of a sprinkler yard after one thing changed. The floor is one bare step of the method on a tree of as
 * many nodes; a solve takes one and a half to five.
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

        private SolvedYard solved;

        /** Builds the yard and solves it cold. */
        @Setup
        public void build() {
            SolverSettings settings = accuracy == 1e-8 ? SolverSettings.DEFAULT : SolverSettings.COARSE;
            solved = new SolvedYard(nodes, settings, zones == Zones.ALL);
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
        yard.solved.changeOutlet();
        return yard.solved.solve();
    }

    /** Another zone is open, or shut. */
    @Benchmark
    public double valve(Yard yard) {
        yard.solved.swapValves();
        return yard.solved.solve();
    }

    /** One bare step. */
    @Benchmark
    public double floor(Step floor) {
        return floor.step.run();
    }
}
