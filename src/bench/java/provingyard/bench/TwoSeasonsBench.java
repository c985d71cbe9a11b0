package provingyard.bench;

import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** Seasons of the clinic, each thread its own; run on one thread and on two. */
@State(Scope.Thread)
public class TwoSeasonsBench {

    private Clinic clinic;
    private Beats beats;

    /** Lives the season, to warm up and to know its beats. */
    @Setup
    public void open() {
        clinic = Clinic.shipped(false);
        beats = Beats.of(clinic.warmUp());
    }

    /** The season. */
    @Benchmark
    public double season() {
        return clinic.live().ledger().water().supplied();
    }

    /** The state that the season's beats touch, streamed. */
    @Benchmark
    public double floor() {
        return beats.stream();
    }
}
