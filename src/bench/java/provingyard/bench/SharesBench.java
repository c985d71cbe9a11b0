package provingyard.bench;

import java.util.Optional;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import provingyard.season.Season;
import provingyard.setup.References;
import provingyard.setup.SetUp;
import provingyard.study.Progress;
import provingyard.study.Shares;
import provingyard.study.SharesStudy;

/**
 * What each of the clinic's five choices cost: 31 seasons beside the trainee's own, on all cores. The floor is one season
 * on one core. The ratio is at best about 34 by the number of cores, since seasons between careless and textbook take a
 * tenth longer than the textbook's; on a busy machine it is more.
 */
@State(Scope.Benchmark)
public class SharesBench {

    private Clinic clinic;
    private Season careless;

    /** Lives the trainee's season, and others, to warm up. */
    @Setup
    public void open() {
        clinic = Clinic.shipped(false);
        clinic.warmUp();
        SetUp setUp = References.careless(clinic.site().scenario()).orElseThrow();
        careless = new Clinic(clinic.site(), setUp, clinic.days()).live();
    }

    /** The shares, the mark's season not yet known. */
    @Benchmark
    public Shares shares() {
        return SharesStudy.of(careless, clinic.setUp(), Optional.empty(), Progress.SILENT);
    }

    /** One season. */
    @Benchmark
    public double floor() {
        return clinic.live().ledger().water().supplied();
    }
}
