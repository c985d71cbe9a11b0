package provingyard.world.ground;

/**
 * Runoff of a day's rain by curve number. Source: USDA NRCS, TR-55 (1986), equations 2-1 to 2-4, with the initial
 * abstraction 0.2 S. For daily checks; the simulator itself infiltrates minute by minute.
 */
public final class CurveNumber {

    private CurveNumber() {}

    /** Potential retention S = 25400 / CN - 254, in mm. */
    public static double retention(double curveNumber) {
        return 25400 / curveNumber - 254;
    }

    /** Runoff Q = (P - 0.2 S)^2 / (P + 0.8 S) in mm for rain P in mm; 0 up to 0.2 S. */
    public static double runoff(double rainMillimetres, double curveNumber) {
        double retention = retention(curveNumber);
        double excess = rainMillimetres - 0.2 * retention;
        return excess <= 0 ? 0 : excess * excess / (rainMillimetres + 0.8 * retention);
    }
}
