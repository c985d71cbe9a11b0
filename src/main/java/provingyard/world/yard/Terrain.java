package provingyard.world.yard;

/**
 * Elevation of cells from the falls that the surfaces are drawn with: the heights whose differences between neighbours
 * fit the wanted falls best (least squares; a Poisson equation solved by conjugate gradients, Hestenes and Stiefel
 * 1952, scaled by the diagonal). Drawn falls of neighbouring surfaces need not fit together, the heights do.
 */
final class Terrain {

    private static final double ACCURACY = 1e-8;

    private final int nx;
    private final double[] weightEast;
    private final double[] weightNorth;
    /** Flow into each cell from the west and from the south. */
    private final double[] east;

    private final double[] north;

    private Terrain(int nx, int ny, boolean[] loose) {
        this.nx = nx;
        weightEast = new double[nx * ny];
        weightNorth = new double[nx * ny];
        east = new double[nx * ny + 1];
        north = new double[nx * ny + nx];
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
        double[] scale = scale();
        double[] z = new double[n];
        double[] residual = right.clone();
        double[] scaled = new double[n];
        times(residual, scale, scaled);
        double[] direction = scaled.clone();
        double[] image = new double[n];
        double square = dot(residual, scaled);
        double enough = square * ACCURACY * ACCURACY;
        for (int step = 0; step < 4 * n && square > enough; step++) {
            apply(direction, image);
            double length = square / dot(direction, image);
            addTimes(z, length, direction);
            addTimes(residual, -length, image);
            times(residual, scale, scaled);
            double next = dot(residual, scaled);
            turn(direction, next / square, scaled);
            square = next;
        }
        return centred(z);
    }

    /** One over the Laplacian's diagonal. */
    private double[] scale() {
        double[] scale = new double[weightEast.length];
        for (int i = 0; i < scale.length; i++) {
            double sum = weightEast[i] + weightNorth[i];
            sum += i > 0 ? weightEast[i - 1] : 0;
            sum += i >= nx ? weightNorth[i - nx] : 0;
            scale[i] = sum > 0 ? 1 / sum : 1;
        }
        return scale;
    }

    private static void times(double[] a, double[] b, double[] out) {
        for (int i = 0; i < out.length; i++) {
            out[i] = a[i] * b[i];
        }
    }

    private static void addTimes(double[] a, double times, double[] b) {
        for (int i = 0; i < a.length; i++) {
            a[i] += times * b[i];
        }
    }

    private static void turn(double[] direction, double keep, double[] by) {
        for (int i = 0; i < by.length; i++) {
            direction[i] = by[i] + keep * direction[i];
        }
    }

    /** The weighted grid Laplacian: what flows out of each cell less what flows in, in plain loops without a branch. */
    private void apply(double[] z, double[] out) {
        int n = z.length;
        for (int i = 0; i < n - 1; i++) {
            east[i + 1] = weightEast[i] * (z[i + 1] - z[i]);
        }
        for (int i = 0; i < n - nx; i++) {
            north[i + nx] = weightNorth[i] * (z[i + nx] - z[i]);
        }
        for (int i = 0; i < n; i++) {
            out[i] = east[i] - east[i + 1] + north[i] - north[i + nx];
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
