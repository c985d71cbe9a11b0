package provingyard.bench;

import java.util.Arrays;
import provingyard.numeric.FixedPower;

/**
 * What one step of Newton's method costs at the very least on a tree of as many nodes, every pipe with a power law and
 * every node with an outlet: the laws, one elimination from the leaves up, one substitution down, the new flows.
 * Nothing else: no test whether it is done, no parts that may be shut, no loops.
 */
final class BareStep {

    private static final FixedPower POWER = FixedPower.withExponent(0.852);

    private static final int LANES = 16;

    private final int nodes;
    private final int[] parent;
    private final double[] resistance;
    private final double[] flow;
    private final double[] head;
    private final double[] outflow;
    private final double[] diagonal;
    private final double[] right;
    private final double[] conductance;
    private final double[] misfit;
    private final double[] change;

    /** Side by side so many chains of pipes, as laterals are, from their ends to a source. */
    BareStep(int nodes) {
        this.nodes = nodes;
        parent = new int[nodes];
        for (int i = 0; i < nodes; i++) {
            parent[i] = Math.min(nodes, i + LANES);
        }
        resistance = filled(1e5, nodes);
        flow = filled(1e-4, nodes);
        head = filled(30, nodes + 1);
        outflow = filled(5e-5, nodes);
        diagonal = new double[nodes + 1];
        right = new double[nodes + 1];
        conductance = new double[nodes];
        misfit = new double[nodes];
        change = new double[nodes + 1];
    }

    private static double[] filled(double value, int length) {
        double[] array = new double[length];
        Arrays.fill(array, value);
        return array;
    }

    double run() {
        Arrays.fill(diagonal, 0);
        Arrays.fill(right, 0);
        for (int i = 0; i < nodes; i++) {
            double part = resistance[i] * POWER.of(flow[i]);
            double g = 1 / (1.852 * part);
            double miss = part * flow[i] - (head[parent[i]] - head[i]);
            double pressure = outflow[i] * outflow[i] * 1e10;
            double gOutlet = outflow[i] / (2 * pressure);
            conductance[i] = g;
            misfit[i] = miss;
            diagonal[i] += g + gOutlet;
            diagonal[parent[i]] += g;
            right[i] += flow[i] - miss * g + (pressure - head[i]) * gOutlet - outflow[i];
            right[parent[i]] -= flow[i] - miss * g;
        }
        for (int i = 0; i < nodes; i++) {
            double factor = conductance[i] / diagonal[i];
            diagonal[parent[i]] -= factor * conductance[i];
            right[parent[i]] += factor * right[i];
        }
        double sum = 0;
        for (int i = nodes - 1; i >= 0; i--) {
            change[i] = (right[i] + conductance[i] * change[parent[i]]) / diagonal[i];
            // The flows are worked out but not kept: every call does the same work.
            sum += flow[i] + (change[parent[i]] - change[i] - misfit[i]) * conductance[i];
            sum += outflow[i] + change[i] * 1e-6;
        }
        return sum;
    }
}
