package provingyard.world.electric;

import provingyard.numeric.Deterministic;

/**
 * Resistance of copper wire.
 *
 * <p>American wire gauge n has the diameter d = 0.127 mm * 92^((36 - n) / 39) (ASTM B258). A solid wire of length l has
 * R = rho l / (pi d^2 / 4). Resistivity rho = 1.7241e-8 ohm m at 20 °C and its temperature coefficient 0.00393 per K are
 * those of annealed copper (International Annealed Copper Standard, IEC 60028). Valid for solid wire; the lay of
 * stranded wire adds about 2 %. The wire's reactance is left out: about 0.03 ohm for 100 m of a pair at 60 Hz.
 */
public final class Copper {

    /** Resistivity of annealed copper at 20 °C in ohm m: 1/58 ohm mm2/m (IEC 60028). */
    public static final double RESISTIVITY = 1.7241e-8;

    /** Rise of resistance per K from 20 °C (IEC 60028). */
    public static final double PER_KELVIN = 0.00393;

    private static final double REFERENCE_CELSIUS = 20;

    private Copper() {}

    /** Diameter in m of a gauge from 0 to 40. */
    public static double diameter(int gauge) {
        if (gauge < 0 || gauge > 40) {
            throw new IllegalArgumentException("Wire gauge " + gauge + " is not between 0 and 40");
        }
        return 0.127e-3 * Deterministic.pow(92, (36 - gauge) / 39.0);
    }

    /** Ohms per m of a solid wire of a gauge at a temperature in °C. */
    public static double ohmsPerMetre(int gauge, double celsius) {
        double d = diameter(gauge);
        return warmed(RESISTIVITY / (Math.PI * d * d / 4), celsius);
    }

    /** Ohms at a temperature in °C of copper that has {@code ohms} at 20 °C. */
    public static double warmed(double ohms, double celsius) {
        return ohms * (1 + PER_KELVIN * (celsius - REFERENCE_CELSIUS));
    }
}
