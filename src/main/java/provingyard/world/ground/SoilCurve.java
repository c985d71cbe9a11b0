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
    private final double perContent;
    private final double[] conductivity = new double[STEPS + 2];
    private final double[] drive = new double[STEPS + 2];

    SoilCurve(Soil soil) {
        this.soil = soil;
        perContent = STEPS / soil.saturation();
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

    /** The integral of conductivity over suction up to a content, as a share of the one up to saturation. */
    double drive(double content) {
        return read(drive, content);
    }

    /**
     * Speed at which a wetted zone takes water down, as a share of the saturated conductivity: gravity, and capillary drive
     * over its depth.
     *
     * @param content of the zone
     * @param conductivityBelow {@link #conductivity} of the soil under it
     * @param driveBelow {@link #drive} of the soil under it, less than 1
     * @param pull suction head at the front over the zone's depth and over 1 less the drive below
     */
    double speed(double content, double conductivityBelow, double driveBelow, double pull) {
        double place = Math.min(STEPS, Math.max(0, content * perContent));
        int i = (int) place;
        double part = place - i;
        double conducts = conductivity[i] + part * (conductivity[i + 1] - conductivity[i]);
        double draws = drive[i] + part * (drive[i + 1] - drive[i]);
        return conducts - conductivityBelow + pull * Math.max(0, draws - driveBelow);
    }

    private double read(double[] table, double content) {
        double place = Math.min(STEPS, Math.max(0, content * perContent));
        int i = (int) place;
        return table[i] + (place - i) * (table[i + 1] - table[i]);
    }
}
