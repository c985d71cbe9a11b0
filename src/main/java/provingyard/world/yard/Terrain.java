package provingyard.world.yard;

import java.util.Arrays;

/**
 * Elevation of cells from the falls that the surfaces are drawn with: the heights whose differences between neighbours
 * fit the wanted falls best (least squares; a Poisson equation solved by conjugate gradients, Hestenes and Stiefel
 * 1952). Drawn falls of neighbouring surfaces need not fit together, the heights do.
 */
final class Terrain {

    private static final double ACCURACY = 1e-8;

    private final int nx;
    private final int ny;
    private final double[] weightEast;
    private final double[] weightNorth;

    private Terrain(int nx, int ny, boolean[] loose) {
        this.nx = nx;
        this.ny = ny;
        weightEast = new double[nx * ny];
        weightNorth = new double[nx * ny];
        for (int i = 0; i < nx * ny; i++) {
            weightEast[i] = i % nx == nx - 1 ? 0 : loose[i] || loose[i + 1] ? 0.01 : 1;
            weightNorth[i] = i / nx == ny - 1 ? 0 : loose[i] || loose[i + nx] ? 0.01 : 1;
        }
    }

    /**
     * Heights in m, mean 0.
     *
     * @param riseEast wanted rise toward the east in m per m, by cell
     * @param riseNorth wanted rise toward the north in m per m, by cell
     * @param loose cells whose falls matter little (below buildings)
     */
    static double[] fit(int nx, int ny, double cell, double[] riseEast, double[] riseNorth, boolean[] loose) {
        Terrain t = new Terrain(nx, ny, loose);
        double[] right = new double[nx * ny];
        for (int i = 0; i < nx * ny; i++) {
            if (t.weightEast[i] > 0) {
                double rise = t.weightEast[i] * cell * 0.5 * (riseEast[i] + riseEast[i + 1]);
                right[i + 1] += rise;
                right[i] -= rise;
            }
            if (t.weightNorth[i] > 0) {
                double rise = t.weightNorth[i] * cell * 0.5 * (riseNorth[i] + riseNorth[i + nx]);
                right[i + nx] += rise;
                right[i] -= rise;
            }
        }
        return t.solve(right);
    }

    private double[] solve(double[] right) {
        int n = right.length;
        double[] z = new double[n];
        double[] residual = right.clone();
        double[] direction = right.clone();
        double[] image = new double[n];
        double square = dot(residual, residual);
        double enough = square * ACCURACY * ACCURACY;
        for (int step = 0; step < 4 * n && square > enough; step++) {
            apply(direction, image);
            double length = square / dot(direction, image);
            for (int i = 0; i < n; i++) {
                z[i] += length * direction[i];
                residual[i] -= length * image[i];
            }
            double next = dot(residual, residual);
            double keep = next / square;
            for (int i = 0; i < n; i++) {
                direction[i] = residual[i] + keep * direction[i];
            }
            square = next;
        }
        return centred(z);
    }

    /** The weighted grid Laplacian. */
    private void apply(double[] z, double[] out) {
        Arrays.fill(out, 0);
        for (int i = 0; i < z.length; i++) {
            if (weightEast[i] > 0) {
                double pull = weightEast[i] * (z[i + 1] - z[i]);
                out[i] -= pull;
                out[i + 1] += pull;
            }
            if (weightNorth[i] > 0) {
                double pull = weightNorth[i] * (z[i + nx] - z[i]);
                out[i] -= pull;
                out[i + nx] += pull;
            }
        }
    }

    private static double[] centred(double[] z) {
        double sum = 0;
        for (double v : z) {
            sum += v;
        }
        for (int i = 0; i < z.length; i++) {
            z[i] -= sum / z.length;
        }
        return z;
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}
