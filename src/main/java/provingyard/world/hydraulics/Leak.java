package provingyard.world.hydraulics;

import provingyard.numeric.Deterministic;

/** Leaks and breaks as outlets q = k p^n (k in m3/s at 1 m of head, p in m). */
public final class Leak {

    private Leak() {}

    /**
     * k of an orifice (n = 0.5): q = Cd A sqrt(2 g h) (Torricelli, with a discharge coefficient).
     *
     * @param dischargeCoefficient Cd, about 0.6 for a sharp edge
     * @param areaM2 A, m2
     */
    public static double orificeK(double dischargeCoefficient, double areaM2) {
        return dischargeCoefficient * areaM2 * Math.sqrt(2 * Constants.GRAVITY_M_S2);
    }

    /**
     * k of a split whose area grows with head, A = A0 + m h (FAVAD; May 1994, Cassa and van Zyl 2013): its flow is an
     * orifice of A0 with n = 0.5 and this outlet with n = 1.5 side by side.
     *
     * @param slopeM2PerM m, m2 per m of head
     */
    public static double splitK(double dischargeCoefficient, double slopeM2PerM) {
        return orificeK(dischargeCoefficient, slopeM2PerM);
    }

    /** k of a leak that passes a known flow, m3/s, at a known pressure head, m, with exponent n (N1, 0.5 to 1.5). */
    public static double kFromFlow(double flowM3s, double pressureHeadM, double n) {
        return flowM3s / Deterministic.pow(pressureHeadM, n);
    }

    /** Flow at one pressure over flow at another: (p1/p0)^N1 (FAVAD practice form; from memory). */
    public static double flowRatio(double p0M, double p1M, double n1) {
        return Deterministic.pow(p1M / p0M, n1);
    }
}
