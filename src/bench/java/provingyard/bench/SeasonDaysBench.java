package provingyard.bench;

import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** The clinic for more and more days. */
@State(Scope.Benchmark)
public class SeasonDaysBench {

    /** Days lived. */
    @Param({"8", "15", "30", "60"})
    public int days;

    private Clinic clinic;
    private Beats beats;

    /** Lives the season, to warm up and to know its beats. */
    @Setup
    public void open() {
        clinic = Clinic.shipped(days);
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
