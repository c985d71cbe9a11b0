package provingyard.world.ground;

/**
 * Water of a root zone between wilting point and field capacity.
 *
 * <p>Source: Allen, Pereira, Raes and Smith 1998, FAO Irrigation and Drainage Paper 56, chapter 8 (equations 82 to 85).
 * Depths are in one length unit throughout (m in the simulator, mm in the published examples).
 */
public final class SoilWater {

    private SoilWater() {}

    /** Total available water TAW = (fieldCapacity - wiltingPoint) x roots; contents as volume shares (eq. 82). */
    public static double totalAvailable(double fieldCapacity, double wiltingPoint, double roots) {
        return (fieldCapacity - wiltingPoint) * roots;
    }

    /** Readily available water RAW = p x TAW (eq. 83). */
    public static double readilyAvailable(double totalAvailable, double depletion) {
        return depletion * totalAvailable;
    }

    /**
     * Allowable depletion at a crop evapotranspiration other than 5 mm/d: p + 0.04 (5 - ETc), held within 0.1 and 0.8
     * (FAO-56 Table 22, note).
     *
     * @param depletion p of the table
     * @param cropMillimetresPerDay ETc in mm/d
     */
    public static double adjustedDepletion(double depletion, double cropMillimetresPerDay) {
        return Math.min(0.8, Math.max(0.1, depletion + 0.04 * (5 - cropMillimetresPerDay)));
    }

    /** Stress coefficient Ks = (TAW - Dr) / ((1 - p) TAW), held within 0 and 1 (eq. 84); Dr is the depletion. */
    public static double stress(double totalAvailable, double depleted, double depletion) {
        return Math.min(1, Math.max(0, (totalAvailable - depleted) / ((1 - depletion) * totalAvailable)));
    }

    /** How a day's stress is found: from the depletion at its start, or after the day's water was added. */
    public enum DayOrder {
        STRESS_AT_START,
        WATER_FIRST
    }

    /** A day's outcome: Ks, actual evapotranspiration, deep percolation and depletion at its end. */
    public record Day(double stress, double evapotranspiration, double percolation, double depleted) {}

    /**
     * One day of the root-zone balance (eq. 85): Dr' = Dr - water + ETa + DP, DP = max(0, water - ETa - Dr); water added
     * first drains before the plants draw.
     *
     * @param depleted Dr at the day's start
     * @param water rain less runoff, plus net irrigation
     * @param crop ETc of the day without stress
     * @param depletion p, adjusted
     */
    public static Day day(
            DayOrder order, double depleted, double water, double crop, double totalAvailable, double depletion) {
        if (order == DayOrder.STRESS_AT_START) {
            double ks = stress(totalAvailable, depleted, depletion);
            double drawn = ks * crop;
            double percolation = Math.max(0, water - drawn - depleted);
            return new Day(ks, drawn, percolation, Math.min(totalAvailable, depleted - water + drawn + percolation));
        }
        double percolation = Math.max(0, water - depleted);
        double wetted = depleted - water + percolation;
        double ks = stress(totalAvailable, wetted, depletion);
        return new Day(ks, ks * crop, percolation, Math.min(totalAvailable, wetted + ks * crop));
    }
}
