package provingyard.world.hydraulics;

import provingyard.numeric.Deterministic;
import provingyard.numeric.FixedPower;

/** Head losses of full round pipes in steady flow. SI units; flows may be negative, losses then are too. */
public final class Friction {

    /** Kinematic viscosity of water at 15 C, m2/s (standard tables). */
    public static final double WATER_VISCOSITY_M2_S = 1.1386e-6;

    /** Density of water, kg/m3 (rounded; 999.1 at 15 C). */
    public static final double WATER_DENSITY_KG_M3 = 1000;

    /** Velocity above which a pipe is a caution, m/s: 5 ft/s (pipe sizing tables; a design rule, not a law). */
    public static final double VELOCITY_CAUTION_M_S = 5 * 0.3048;

    private static final double LAMINAR_REYNOLDS = 2000;
    private static final double TURBULENT_REYNOLDS = 4000;
    private static final double LN10 = Deterministic.log(10);
    private static final double SWAMEE_AT_4000 = 5.74 / Deterministic.pow(TURBULENT_REYNOLDS, 0.9);
    private static final FixedPower POWER_0_9 = FixedPower.withExponent(0.9);

    private Friction() {}

    /**
     * Hazen-Williams head loss, m: h = A L q^1.852 / (C^1.852 d^4.871) (Williams and Hazen 1905; SI constant A of
     * general hydraulics texts).
     *
     * @param lengthM L, m
     * @param diameterM inner diameter d, m
     * @param c Hazen-Williams coefficient C
     * @param flowM3s q, m3/s
     */
    public static double hazenWilliams(
            double lengthM, double diameterM, double c, double flowM3s, Constants constants) {
        double size = Deterministic.pow(Math.abs(flowM3s), Constants.HAZEN_FLOW_EXPONENT);
        return Math.copySign(hazenResistance(lengthM, diameterM, c, constants) * size, flowM3s);
    }

    /** The factor r of h = r q^1.852, m/(m3/s)^1.852; symbols as in {@link #hazenWilliams}. */
    public static double hazenResistance(double lengthM, double diameterM, double c, Constants constants) {
        return constants.hazen()
                * lengthM
                / (Deterministic.pow(c, Constants.HAZEN_FLOW_EXPONENT)
                        * Deterministic.pow(diameterM, Constants.HAZEN_DIAMETER_EXPONENT));
    }

    /**
     * Darcy-Weisbach head loss, m: h = f D L q^2 / d^5 with D = 8 / (pi^2 g).
     *
     * @param roughnessM absolute roughness e of the wall, m
     * @param viscosityM2s kinematic viscosity nu, m2/s
     */
    public static double darcyWeisbach(
            double lengthM,
            double diameterM,
            double roughnessM,
            double viscosityM2s,
            double flowM3s,
            Constants constants) {
        double re = reynolds(flowM3s, diameterM, viscosityM2s, constants);
        if (re == 0) {
            return 0;
        }
        double d2 = diameterM * diameterM;
        double resistance = constants.darcy() * lengthM / (d2 * d2 * diameterM);
        return resistance * darcyFactor(re, roughnessM / diameterM) * flowM3s * Math.abs(flowM3s);
    }

    /** Reynolds number Re = 4 |q| / (pi d nu). */
    public static double reynolds(double flowM3s, double diameterM, double viscosityM2s, Constants constants) {
        return constants.reynolds() * 4 * Math.abs(flowM3s) / (Math.PI * diameterM * viscosityM2s);
    }

    /**
     * Darcy friction factor f. Re up to 2000: 64/Re (Hagen-Poiseuille). From 4000: f = 0.25 / log10(e/(3.7 d) +
     * 5.74/Re^0.9)^2 (Swamee and Jain 1976). Between: the cubic that joins both with equal slopes (Dunlop 1991).
     *
     * @param reynolds Re, above zero
     * @param relativeRoughness e/d
     */
    public static double darcyFactor(double reynolds, double relativeRoughness) {
        if (reynolds <= LAMINAR_REYNOLDS) {
            return 64 / reynolds;
        }
        if (reynolds >= TURBULENT_REYNOLDS) {
            double half = LN10 * 0.5 / Deterministic.log(relativeRoughness / 3.7 + 5.74 / POWER_0_9.of(reynolds));
            return half * half;
        }
        double fa = dunlopFa(relativeRoughness);
        double fb = dunlopFb(relativeRoughness, fa);
        double r = reynolds / LAMINAR_REYNOLDS;
        return dunlopX1(fa, fb) + r * (dunlopX2(fa, fb) + r * (dunlopX3(fa, fb) + r * dunlopX4(fa, fb)));
    }

    /** Re df/dRe of {@link #darcyFactor}, for Newton's method. */
    static double darcyFactorSlope(double reynolds, double relativeRoughness) {
        if (reynolds <= LAMINAR_REYNOLDS) {
            return -64 / reynolds;
        }
        if (reynolds >= TURBULENT_REYNOLDS) {
            double viscous = 5.74 / POWER_0_9.of(reynolds);
            double inside = relativeRoughness / 3.7 + viscous;
            double log = Deterministic.log(inside);
            double half = LN10 * 0.5 / log;
            return 2 * half * half * 0.9 * viscous / (log * inside);
        }
        double fa = dunlopFa(relativeRoughness);
        double fb = dunlopFb(relativeRoughness, fa);
        double r = reynolds / LAMINAR_REYNOLDS;
        return r * (dunlopX2(fa, fb) + r * (2 * dunlopX3(fa, fb) + r * 3 * dunlopX4(fa, fb)));
    }

    /** Minor loss, m: h = K v^2 / (2 g) = B K q^2 / d^4. */
    public static double minorLoss(double k, double diameterM, double flowM3s, Constants constants) {
        return minorResistance(k, diameterM, constants) * flowM3s * Math.abs(flowM3s);
    }

    /** The factor of q^2 in {@link #minorLoss}, s2/m5. */
    static double minorResistance(double k, double diameterM, Constants constants) {
        double d2 = diameterM * diameterM;
        return constants.minor() * k / (d2 * d2);
    }

    /** Mean velocity in a full round pipe, m/s: v = 4 q / (pi d^2). */
    public static double velocity(double flowM3s, double diameterM) {
        return 4 * flowM3s / (Math.PI * diameterM * diameterM);
    }

    /**
     * Christiansen's factor F: friction loss of a lateral with equally spaced equal outlets = F x the loss of the same
     * pipe carrying all flow to its end. F = 1/(m+1) + 1/(2N) + sqrt(m-1)/(6 N^2), first outlet one full spacing from
     * the inlet (Christiansen 1942).
     *
     * @param outlets N, at least 1
     * @param m exponent of flow in the friction formula (Hazen-Williams 1.852)
     */
    public static double multipleOutletFactor(int outlets, double m) {
        double n = outlets;
        return 1 / (m + 1) + 1 / (2 * n) + Math.sqrt(m - 1) / (6 * n * n);
    }

    /** F with the first outlet half a spacing from the inlet: (2 N F - 1) / (2 N - 1) (Jensen and Fratini 1957). */
    public static double multipleOutletFactorHalfSpacing(int outlets, double m) {
        return (2 * outlets * multipleOutletFactor(outlets, m) - 1) / (2 * outlets - 1);
    }

    private static double dunlopFa(double relativeRoughness) {
        double y3 = -2 / LN10 * Deterministic.log(relativeRoughness / 3.7 + SWAMEE_AT_4000);
        return 1 / (y3 * y3);
    }

    private static double dunlopFb(double relativeRoughness, double fa) {
        double y2 = relativeRoughness / 3.7 + SWAMEE_AT_4000;
        double y3 = 1 / Math.sqrt(fa);
        return fa * (2 - 3.6 / LN10 * SWAMEE_AT_4000 / (y2 * y3));
    }

    private static double dunlopX1(double fa, double fb) {
        return 7 * fa - fb;
    }

    private static double dunlopX2(double fa, double fb) {
        return 0.128 - 17 * fa + 2.5 * fb;
    }

    private static double dunlopX3(double fa, double fb) {
        return -0.128 + 13 * fa - 2 * fb;
    }

    private static double dunlopX4(double fa, double fb) {
        return 0.032 - 3 * fa + 0.5 * fb;
    }
}
