package provingyard.bench;

import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** Ten days of the clinic, cut into ever more cells. */
@State(Scope.Benchmark)
public class SeasonCellsBench {

    private static final int DAYS = 10;

    /** About how many cells. */
    @Param({"1000", "5000", "22000", "100000"})
    public int cells;

    private Clinic clinic;
    private Beats beats;

    /** Lives the season, to warm up and to know its beats. */
    @Setup
    public void open() {
        clinic = Clinic.cut(cells, DAYS);
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
