package provingyard.world.ground;

import provingyard.numeric.Deterministic;
import provingyard.scenario.Catalogue.Soil;

/**
 * How a soil's conductivity and capillary drive fall with its water content.
 *
 * <p>Power laws on S = theta / theta_s as Campbell 1974; the exponent b from field capacity (33 kPa) and wilting point
 * (1500 kPa): b = ln(1500/33) / ln(fieldCapacity / wiltingPoint), as Saxton and Rawls 2006 (from memory). Conductivity
 * ratio S^(2b + 3); the integral of conductivity over suction, as a ratio to saturation, S^(b + 3) as Ogden and Saghafian
 * 1997 use it (from memory). Both are kept as tables, read by linear interpolation.
 */
final class SoilCurve {

    private static final int STEPS = 512;

    final Soil soil;
    private final double[] conductivity = new double[STEPS + 2];
    private final double[] drive = new double[STEPS + 2];

    SoilCurve(Soil soil) {
        this.soil = soil;
        double b = Deterministic.log(1500.0 / 33) / Deterministic.log(soil.fieldCapacity() / soil.wiltingPoint());
        for (int i = 0; i <= STEPS + 1; i++) {
            double s = Math.min(1, (double) i / STEPS);
            conductivity[i] = Deterministic.pow(s, 2 * b + 3);
            drive[i] = Deterministic.pow(s, b + 3);
        }
    }

    /** Conductivity at a content as a share of the saturated one. */
    double conductivity(double content) {
        return read(conductivity, content);
    }

    /** Capillary drive between an ambient and a wetter content as a share of the suction head at the front. */
    double drive(double ambient, double wetter) {
        double low = read(drive, ambient);
        return low >= 1 ? 0 : Math.max(0, (read(drive, wetter) - low) / (1 - low));
    }

    private double read(double[] table, double content) {
        double place = Math.min(1, Math.max(0, content / soil.saturation())) * STEPS;
        int i = (int) place;
        return table[i] + (place - i) * (table[i + 1] - table[i]);
    }
}
