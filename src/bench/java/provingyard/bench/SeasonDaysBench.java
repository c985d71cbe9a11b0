package provingyard.bench;

import org.openjdk.jmh.annotations.Param;

/** The clinic for more and more days, whose weather repeats. */
public class SeasonDaysBench extends SeasonMeasures {

    /** Days lived. */
    @Param({"8", "16", "32", "64"})
    public int days;

    @Override
    Clinic clinic() {
        return Clinic.repeating(days);
    }
}
