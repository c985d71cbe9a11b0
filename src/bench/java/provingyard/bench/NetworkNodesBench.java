package provingyard.bench;

import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import provingyard.world.hydraulics.SolverSettings;

/** A warm solve to 1e-8 after one head of a fully open yard changed, for more and more nodes. */
public class NetworkNodesBench {

    /** A yard, solved, and a tree of as many nodes. */
    @State(Scope.Thread)
    public static class Sizes {

        /** Nodes. */
        @Param({"60", "240", "1200", "6000"})
        public int nodes;

        private SolvedYard yard;
        private BareStep step;

        /** Builds both. */
        @Setup
        public void build() {
            yard = new SolvedYard(nodes, SolverSettings.DEFAULT, true);
            step = new BareStep(nodes);
        }
    }

    /** One head got another nozzle. */
    @Benchmark
    public double outlet(Sizes of) {
        of.yard.changeOutlet();
        return of.yard.solve();
    }

    /** One bare step. */
    @Benchmark
    public double floor(Sizes of) {
        return of.step.run();
    }
}
