package provingyard.bench;

import org.openjdk.jmh.annotations.Param;

/** The clinic for more and more days. */
public class SeasonDaysBench extends SeasonMeasures {

    /** Days lived. */
    @Param({"8", "15", "30", "60"})
    public int days;

    @Override
    Clinic clinic() {
        return Clinic.shipped(days);
    }
}
