package provingyard.world.hydraulics;

/**
 * Backflow preventers with a usual loss curve for a {@link NetworkBuilder#device} (general plumbing practice, 7 to 15
 * and 1.5 to 5 psi in normal service; from memory: no standard table could be read). A yard's document may carry the
 * maker's curve instead.
 */
public enum BackflowKind {
    /** Reduced-pressure assembly: a large constant part, the springs of its two checks. */
    REDUCED_PRESSURE(7.5, 9, 10.5, 14),
    /** Pressure vacuum breaker. */
    PRESSURE_VACUUM_BREAKER(1.5, 2, 2.8, 5);

    private static final double PSI_PA = 6894.757293168;
    private static final double[] SHARES = {0, 0.25, 0.5, 1};

    private final double[] lossesPsi;

    BackflowKind(double... lossesPsi) {
        this.lossesPsi = lossesPsi;
    }

    /** Flows of the curve's points, m3/s, for a device of a rated flow. */
    public double[] flows(double ratedFlowM3s) {
        double[] flows = new double[SHARES.length];
        for (int i = 0; i < flows.length; i++) {
            flows[i] = SHARES[i] * ratedFlowM3s;
        }
        return flows;
    }

    /** Head losses at those points, m. */
    public double[] losses() {
        double[] losses = new double[lossesPsi.length];
        for (int i = 0; i < losses.length; i++) {
            losses[i] = lossesPsi[i] * PSI_PA / (Friction.WATER_DENSITY_KG_M3 * Constants.GRAVITY_M_S2);
        }
        return losses;
    }
}
