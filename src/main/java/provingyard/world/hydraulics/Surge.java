package provingyard.world.hydraulics;

/** Pressure surge when flow is stopped quickly. A caution to show, not part of the steady solution. */
public final class Surge {

    /** Speed of sound in free water, m/s: 4660 ft/s (PVC pipe handbooks; from memory). */
    public static final double FREE_WAVE_SPEED_M_S = 4660 * 0.3048;

    /** Bulk modulus of water over Young's modulus of PVC: 300,000 psi over 400,000 psi (AWWA M23; from memory). */
    public static final double WATER_OVER_PVC = 0.75;

    private Surge() {}

    /**
     * Wave speed in a pipe, m/s: a = a0 / sqrt(1 + (K/E) (DR - 2)) (thin-walled pipe; PVC pipe handbooks, AWWA M23).
     *
     * @param dimensionRatio DR, outer diameter over wall, above 2
     * @param bulkOverYoung K/E, bulk modulus of water over Young's modulus of the wall
     */
    public static double waveSpeed(double dimensionRatio, double bulkOverYoung) {
        return FREE_WAVE_SPEED_M_S / Math.sqrt(1 + bulkOverYoung * (dimensionRatio - 2));
    }

    /**
     * Rise of pressure when the velocity changes by dv faster than a wave runs to the far end and back, Pa: rho a dv
     * (Joukowsky 1898).
     *
     * @param densityKgM3 rho, kg/m3
     * @param waveSpeedMS a, m/s
     * @param velocityChangeMS dv, m/s
     */
    public static double pressureRise(double densityKgM3, double waveSpeedMS, double velocityChangeMS) {
        return densityKgM3 * waveSpeedMS * velocityChangeMS;
    }

    /** The same rise as head, m: a dv / g. */
    public static double headRise(double waveSpeedMS, double velocityChangeMS) {
        return waveSpeedMS * velocityChangeMS / Constants.GRAVITY_M_S2;
    }

    /** Time a wave takes to the far end and back, s: 2 L / a. A slower shut-off gives a smaller surge. */
    public static double reflectionTime(double lengthM, double waveSpeedMS) {
        return 2 * lengthM / waveSpeedMS;
    }
}
