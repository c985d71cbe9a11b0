package provingyard.world.hydraulics;

/**
 * When the solver stops.
 *
 * @param relativeFlowChange sum of flow changes over sum of flows in one iteration, below which it may stop
 * @param headResidualM largest misfit of a link's or outlet's law before that iteration, and largest change of a
 *     head in it, m
 * @param maxIterations tries before it reports that it did not converge
 */
public record SolverSettings(double relativeFlowChange, double headResidualM, int maxIterations) {

    /** 1e-8 and 1e-6 m, 300 iterations. */
    public static final SolverSettings DEFAULT = new SolverSettings(1e-8, 1e-6, 300);
}
