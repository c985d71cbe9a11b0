package provingyard.bench;

import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** A whole season of the clinic (30 days, 5,742 cells, 7 zones, 60 heads, nights of frost, a main break). */
@State(Scope.Benchmark)
public class SeasonBench {

    /** The set-up lived. */
    @Param({"textbook", "clock"})
    public String setUp;

    private Clinic clinic;
    private Beats beats;

    /** Lives the season, to warm up and to know its beats. */
    @Setup
    public void open() {
        clinic = Clinic.shipped(setUp.equals("clock"));
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
