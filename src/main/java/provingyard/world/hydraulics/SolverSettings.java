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

    /** Accuracy 1e-8: what the program itself solves to. */
    public static final SolverSettings DEFAULT = atAccuracy(1e-8);

    /** An accuracy as relative flow change, with heads to a hundred times as many metres (1e-8: 1e-6 m), 300 iterations. */
    public static SolverSettings atAccuracy(double relativeFlowChange) {
        return new SolverSettings(relativeFlowChange, 100 * relativeFlowChange, 300);
    }
}
