package provingyard.world.hydraulics;

/**
 * When the solver stops.
 *
 * @param relativeFlowChange sum of flow changes over sum of flows in one iteration, below which it may stop
 * @param headResidualM largest misfit of a link's or outlet's law when last looked at, before that iteration or after
 *     it, and largest change of a head in it, m
 * @param maxIterations tries before it reports that it did not converge
 */
public record SolverSettings(double relativeFlowChange, double headResidualM, int maxIterations) {

    /** What the program itself solves to: 1e-8 and 1e-6 m. */
    public static final SolverSettings DEFAULT = new SolverSettings(1e-8, 1e-6, 300);

    /**
     * 1e-5 and 1e-2 m, for comparisons with engines that stop at a relative flow change of 1e-5. Newton's last step
     * leaves far less of the misfit than there was before it.
     */
    public static final SolverSettings COARSE = new SolverSettings(1e-5, 1e-2, 300);
}
