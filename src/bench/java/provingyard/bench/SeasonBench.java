package provingyard.bench;

import org.openjdk.jmh.annotations.Param;

/** A whole season of the clinic (30 days, 5,742 cells, 7 zones, 60 heads, nights of frost, a main break). */
public class SeasonBench extends SeasonMeasures {

    /** The set-up lived. */
    @Param({"textbook", "clock"})
    public String setUp;

    @Override
    Clinic clinic() {
        return Clinic.shipped(setUp.equals("clock"));
    }
}
