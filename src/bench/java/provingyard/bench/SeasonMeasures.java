package provingyard.bench;

import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** A season of the clinic, and beside it what its beats touch at the least; which clinic, the classes say. */
@State(Scope.Thread)
public abstract class SeasonMeasures {

    private Clinic clinic;
    private Beats beats;

    /** The clinic to be lived in. */
    abstract Clinic clinic();

    /** Lives the season, to warm up and to know its beats. */
    @Setup
    public void open() {
        clinic = clinic();
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
