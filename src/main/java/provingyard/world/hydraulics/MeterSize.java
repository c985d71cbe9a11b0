package provingyard.world.hydraulics;

/**
 * Displacement water meters and the pressure loss their standard allows (AWWA C700 limits, read from a one-page table;
 * the loss is taken to grow with the square of flow from the rated point, within 4 % of the table, 10 % at worst).
 */
public enum MeterSize {
    /** 5/8 in: 15 psi at 20 gpm. */
    FIVE_EIGHTHS(20, 15),
    /** 3/4 in: 15 psi at 30 gpm. */
    THREE_QUARTERS(30, 15),
    /** 1 in: 15 psi at 50 gpm. */
    ONE(50, 15),
    /** 1 1/2 in: 20 psi at 100 gpm. */
    ONE_AND_A_HALF(100, 20),
    /** 2 in: 20 psi at 160 gpm. */
    TWO(160, 20);

    private static final double GPM_M3_S = 3.785411784e-3 / 60;
    private static final double PSI_PA = 6894.757293168;

    private final double ratedFlowM3s;
    private final double ratedLossM;

    MeterSize(double gpm, double psi) {
        ratedFlowM3s = gpm * GPM_M3_S;
        ratedLossM = psi * PSI_PA / (Friction.WATER_DENSITY_KG_M3 * Constants.GRAVITY_M_S2);
    }

    /** Flow at the rated point, m3/s. */
    public double ratedFlow() {
        return ratedFlowM3s;
    }

    /** Greatest head loss allowed at a flow, m: rated loss (q / rated flow)^2. */
    public double lossLimit(double flowM3s) {
        double share = flowM3s / ratedFlowM3s;
        return ratedLossM * share * share;
    }

    /** Minor loss coefficient K on a diameter that gives this loss in a {@link NetworkBuilder#valve}. */
    public double minorK(double diameterM, Constants constants) {
        return lossLimit(1) / Friction.minorResistance(1, diameterM, constants);
    }
}
