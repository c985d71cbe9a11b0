package provingyard.bench;

import org.openjdk.jmh.annotations.Param;

/** Ten days of the clinic, cut into ever more cells. */
public class SeasonCellsBench extends SeasonMeasures {

    private static final int DAYS = 10;

    /** About how many cells. */
    @Param({"1000", "5000", "22000", "100000"})
    public int cells;

    @Override
    Clinic clinic() {
        return Clinic.cut(cells, DAYS);
    }
}
