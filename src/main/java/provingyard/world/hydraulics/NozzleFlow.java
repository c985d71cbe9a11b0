package provingyard.world.hydraulics;

/** Flow of nozzles and orifices, and what it means on the ground. */
public final class NozzleFlow {

    private NozzleFlow() {}

    /**
     * Flow of a round opening, m3/s: q = Cd (pi/4) d^2 sqrt(2 g h). In US units 29.83 Cd d^2 sqrt(p) gpm.
     *
     * @param dischargeCoefficient Cd; 1 in theory, about 0.97 for a good sprinkler nozzle
     * @param diameterM d, m
     * @param pressureHeadM h, m, zero or more
     */
    public static double discharge(double dischargeCoefficient, double diameterM, double pressureHeadM) {
        return Leak.orificeK(dischargeCoefficient, area(diameterM)) * Math.sqrt(pressureHeadM);
    }

    /** Discharge coefficient of a round opening from a measured flow; symbols as in {@link #discharge}. */
    public static double dischargeCoefficient(double flowM3s, double diameterM, double pressureHeadM) {
        return flowM3s / discharge(1, diameterM, pressureHeadM);
    }

    /** k of q = k p^n through a known point, m3/s at 1 m: a head's catalogue flow at its pressure head. */
    public static double kFromPoint(double flowM3s, double pressureHeadM, double n) {
        return Leak.kFromFlow(flowM3s, pressureHeadM, n);
    }

    /** Application rate, m/s: flow over area. In US units 96.25 gpm / ft2 in/h (231 x 60 / 144). */
    public static double applicationRate(double flowM3s, double areaM2) {
        return flowM3s / areaM2;
    }

    private static double area(double diameterM) {
        return Math.PI / 4 * diameterM * diameterM;
    }
}
