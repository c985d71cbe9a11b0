package provingyard.world.hydraulics;

import provingyard.numeric.Deterministic;

/**
 * The constants inside the loss laws, so that the same solver can use a textbook's or a reference engine's.
 *
 * @param hazen A in h = A L q^1.852 / (C^1.852 d^4.871), SI units
 * @param minor B in h = B K q^2 / d^4, s2/m; exactly 8 / (pi^2 g)
 * @param darcy D in h = D f L q^2 / d^5, s2/m; exactly 8 / (pi^2 g)
 * @param reynolds factor on Re = 4 q / (pi d nu); exactly 1
 */
public record Constants(double hazen, double minor, double darcy, double reynolds) {

    /** Standard gravity, m/s2 (defined value, CGPM 1901). */
    public static final double GRAVITY_M_S2 = 9.80665;

    /** Exponent of flow in the Hazen-Williams formula. */
    public static final double HAZEN_FLOW_EXPONENT = 1.852;

    /** Exponent of diameter in the Hazen-Williams formula. */
    public static final double HAZEN_DIAMETER_EXPONENT = 4.871;

    /** Textbook values: 10.67 (general hydraulics texts) and standard gravity. */
    public static final Constants TEXTBOOK =
            new Constants(10.67, 8 / (Math.PI * Math.PI * GRAVITY_M_S2), 8 / (Math.PI * Math.PI * GRAVITY_M_S2), 1.0);

    /**
     * The reference engine's values (EPANET 2): 4.727 and 0.02517 in feet and cubic feet per second, g = 32.2 ft/s2 and
     * 28.317 litres per cubic foot, turned into SI. Used to compare with its results.
     */
    public static final Constants REFERENCE_ENGINE = referenceEngine();

    private static Constants referenceEngine() {
        double foot = 0.3048;
        double cubicFoot = 0.028317;
        double squareLaw = Deterministic.pow(foot, 5) / (cubicFoot * cubicFoot);
        double hazen = 4.727
                * Deterministic.pow(foot, HAZEN_DIAMETER_EXPONENT)
                / Deterministic.pow(cubicFoot, HAZEN_FLOW_EXPONENT);
        double darcy = squareLaw / (2 * 32.2 * (Math.PI / 4) * (Math.PI / 4));
        return new Constants(hazen, 0.02517 * squareLaw, darcy, foot * foot * foot / cubicFoot);
    }
}
