package provingyard.diagnosis;

import java.util.Arrays;
import provingyard.numeric.Deterministic;

/**
 * Joint probability of repair class and reading on a set of cells, and the bits that the reading tells about the class.
 * Keeps its arrays from one test to the next, so that ranking allocates nothing per point.
 */
final class Masses {

    private static final double LOG_2 = Deterministic.log(2);

    private int classes;
    private int cells;
    private double[] mass = new double[0];
    private double[] total = new double[0];
    private double[] reached = new double[0];
    private double[] logTotal = new double[0];

    void clear(int classes, int cells) {
        this.classes = classes;
        this.cells = cells;
        if (mass.length < classes * cells) {
            mass = new double[classes * cells];
        }
        if (total.length < cells) {
            total = new double[cells];
            reached = new double[cells];
            logTotal = new double[cells];
        }
        Arrays.fill(mass, 0, classes * cells, 0);
    }

    /** Adds probability (or density) of a reading in a cell together with a class. */
    void add(int repairClass, int cell, double probability) {
        mass[repairClass * cells + cell] += probability;
    }

    /**
     * Bits that the cell tells about the class: the sum over cells of {@code w sum_R m_R log2(m_R / (P_R m))}, which is
     * the expected divergence of the belief after from the belief before. No cell's part is negative. What lies outside
     * the cells is left to outliers, which tell nothing.
     *
     * @param weights width of each cell where masses are densities; null for probabilities
     * @param prior probability of each class, adding up to 1
     * @param keep share of readings that are no outliers
     * @param floor probability (or density) of an outlier in each cell
     */
    double bits(double[] weights, Belief prior, double keep, double floor) {
        sumUp(prior, keep, floor);
        double sum = 0;
        for (int c = 0; c < classes; c++) {
            sum += ofClass(c, prior.ofClass(c), weights, keep, floor);
        }
        if (floor > 0) {
            sum += ofOutliers(weights, floor);
        }
        return sum / LOG_2;
    }

    private void sumUp(Belief prior, double keep, double floor) {
        Arrays.fill(total, 0, cells, 0);
        Arrays.fill(reached, 0, cells, 0);
        for (int c = 0; c < classes; c++) {
            double p = prior.ofClass(c);
            for (int i = 0, at = c * cells; i < cells; i++, at++) {
                if (mass[at] > 0) {
                    total[i] += mass[at];
                    reached[i] += p;
                }
            }
        }
        for (int i = 0; i < cells; i++) {
            total[i] = keep * total[i] + floor;
            logTotal[i] = total[i] > 0 ? Deterministic.log(total[i]) : 0;
        }
    }

    private double ofClass(int repairClass, double p, double[] weights, double keep, double floor) {
        double logP = Deterministic.log(p);
        double sum = 0;
        for (int i = 0, at = repairClass * cells; i < cells; i++, at++) {
            if (mass[at] > 0) {
                double m = keep * mass[at] + floor * p;
                double part = m * (Deterministic.log(m) - logP - logTotal[i]);
                sum += weights == null ? part : part * weights[i];
            }
        }
        return sum;
    }

    /** Classes that come to a cell by outliers only. */
    private double ofOutliers(double[] weights, double floor) {
        double logFloor = Deterministic.log(floor);
        double sum = 0;
        for (int i = 0; i < cells; i++) {
            double part = (1 - reached[i]) * floor * (logFloor - logTotal[i]);
            sum += weights == null ? part : part * weights[i];
        }
        return sum;
    }
}
