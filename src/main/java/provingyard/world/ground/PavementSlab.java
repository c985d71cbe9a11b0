package provingyard.world.ground;

import java.util.Arrays;
import provingyard.scenario.Catalogue.Paving;

/**
 * A slab on soil as a column of nodes: node 0 is the surface with half a cell of slab, then a node at each cell border,
 * down to deep ground of given temperature 0.2 m below the slab. Explicit finite differences with stable sub-steps.
 *
 * <p>Soil below: 0.3 W/(m K), 1600 kg/m3, 800 J/(kg K) (Bentz 2000, NISTIR 6551, Table 1).
 */
public final class PavementSlab {

    /** Of the soil below: conductivity in W/(m K), heat capacity in J/(m3 K), depth in m, cells. */
    static final double SOIL_CONDUCTIVITY = 0.3;

    static final double SOIL_HEAT = 1600 * 800;
    static final double SOIL_DEPTH = 0.2;
    static final int SOIL_CELLS = 4;

    private static final double SLAB_CELL = 0.025;

    /** Largest usual coefficient of heat that leaves the surface, for stability, in W/(m2 K); more only in warm gales. */
    private static final double SURFACE = 80;

    private final int nodes;
    private final double[] capacity;
    private final double[] conductance;
    private final double[] perCapacity;
    private final double inside;

    /** The column of a paving, cells of about 25 mm. */
    public PavementSlab(Paving paving) {
        int slab = Math.max(2, (int) Math.round(paving.thickness() / SLAB_CELL));
        nodes = slab + SOIL_CELLS;
        capacity = new double[nodes];
        conductance = new double[nodes];
        double slabCell = paving.thickness() / slab;
        double slabHeat = paving.density() * paving.specificHeat();
        double soilCell = SOIL_DEPTH / SOIL_CELLS;
        for (int i = 0; i < nodes; i++) {
            boolean inSlab = i < slab;
            conductance[i] = inSlab ? paving.conductivity() / slabCell : SOIL_CONDUCTIVITY / soilCell;
            double below = inSlab ? slabHeat * slabCell : SOIL_HEAT * soilCell;
            double above = i == 0 ? 0 : i <= slab ? slabHeat * slabCell : SOIL_HEAT * soilCell;
            capacity[i] = (below + above) / 2;
        }
        perCapacity = Arrays.stream(capacity).map(c -> 1 / c).toArray();
        double stable = Double.POSITIVE_INFINITY;
        for (int i = 1; i < nodes; i++) {
            stable = Math.min(stable, capacity[i] / (conductance[i - 1] + conductance[i]));
        }
        inside = stable;
    }

    /** Nodes of the column, the surface first. */
    public int nodes() {
        return nodes;
    }

    /** Sub-steps that keep a step of so many seconds stable, whatever lies on the surface. */
    public int substeps(double seconds) {
        return substeps(seconds, SURFACE);
    }

    /** Sub-steps that keep a step of so many seconds stable while the surface gives off heat at a rate in W/(m2 K). */
    int substeps(double seconds, double leaves) {
        double stable = Math.min(inside, capacity[0] / (conductance[0] + leaves));
        return (int) Math.ceil(seconds / (0.9 * stable));
    }

    /** Heat that the surface node holds in J/(m2 K). */
    public double surfaceCapacity() {
        return capacity[0];
    }

    /**
     * One sub-step.
     *
     * @param t temperatures in °C, this column from index {@code at}
     * @param flux heat into the surface in W/m2
     * @param extra heat capacity of a film on the surface in J/(m2 K)
     * @param deep temperature of the deep ground in °C
     * @param seconds no longer than a stable sub-step
     */
    public void conduct(double[] t, int at, double flux, double extra, double deep, double seconds) {
        double down = conductance[0] * (t[at] - t[at + 1]);
        t[at] += seconds * (flux - down) / (capacity[0] + extra);
        for (int i = 1; i < nodes; i++) {
            double below = i + 1 < nodes ? t[at + i + 1] : deep;
            double on = conductance[i] * (t[at + i] - below);
            t[at + i] += seconds * (down - on) * perCapacity[i];
            down = on;
        }
    }

    /**
     * One sub-step of many columns at once, each like {@link #conduct(double[], int, double, double, double, double)}.
     *
     * @param t temperatures in °C, one array for each node
     * @param flux heat into each surface in W/m2; used up
     * @param surface heat capacity of each surface node with what lies on it in J/(m2 K)
     * @param deep temperature of the deep ground in °C
     * @param seconds no longer than a stable sub-step
     * @param count columns
     */
    void conduct(double[][] t, double[] flux, double[] surface, double deep, double seconds, int count) {
        head(t[0], t[1], flux, surface, conductance[0], seconds, count);
        for (int i = 1; i + 1 < nodes; i++) {
            node(t[i], t[i + 1], flux, conductance[i], perCapacity[i], seconds, count);
        }
        foot(t[nodes - 1], flux, deep, seconds, count);
    }

    private static void head(
            double[] t, double[] below, double[] flux, double[] capacity, double conductance, double dt, int count) {
        for (int p = 0; p < count; p++) {
            double down = conductance * (t[p] - below[p]);
            t[p] += dt * (flux[p] - down) / capacity[p];
            flux[p] = down;
        }
    }

    private static void node(
            double[] t, double[] below, double[] flux, double conductance, double perCapacity, double dt, int count) {
        for (int p = 0; p < count; p++) {
            double on = conductance * (t[p] - below[p]);
            t[p] += dt * (flux[p] - on) * perCapacity;
            flux[p] = on;
        }
    }

    private void foot(double[] t, double[] flux, double deep, double dt, int count) {
        double conducts = conductance[nodes - 1];
        double perHeat = perCapacity[nodes - 1];
        for (int p = 0; p < count; p++) {
            double on = conducts * (t[p] - deep);
            t[p] += dt * (flux[p] - on) * perHeat;
        }
    }
}
