package provingyard.world.ground;

import java.util.Arrays;

/**
 * Slab columns of one paving, one for each of its classes, each under a film of water and ice of even depth: temperatures
 * in °C (surface first), depths in m of water. A column that no cell belongs to is worked out like all others, and means
 * nothing.
 *
 * <p>Columns lie side by side, one array for each node, so that a step is a few plain loops over all of them.
 */
final class Columns {

    private static final double WATER_CAPACITY = Freezing.WATER * Freezing.WATER_HEAT;
    private static final double FUSION = Freezing.WATER * Freezing.FUSION;

    /** Heat that a surface radiates more for each K it is warmer, up to 60 °C, in W/(m2 K). */
    private static final double RADIATES = 8.5;

    private final PavementSlab slab;
    private final double emissivity;
    private final int count;
    private final double[][] t;
    private final double[] film;
    private final double[] ice;
    /** What the last pass would have evaporated from a wet column had there been water enough, in m; negative for dew. */
    private final double[] potential;
    /** What the last pass froze, in m; negative for melted. */
    private final double[] frozen;
    /** What the last pass lost to the air, in m; negative where dew fell. */
    private final double[] lost;

    private final double[] possible;
    private final double[] down;
    private final double[] capacity;
    /** Whether some column may carry film or ice. */
    private boolean carriesWater;
    /** Whether the last pass met neither water nor dew. */
    private boolean bare;

    /** So many columns, bare and of one temperature. */
    Columns(int classes, PavementSlab slab, double emissivity, double temperature) {
        this.slab = slab;
        this.emissivity = emissivity;
        count = classes;
        t = new double[slab.nodes()][classes];
        for (double[] node : t) {
            Arrays.fill(node, temperature);
        }
        film = new double[classes];
        ice = new double[classes];
        potential = new double[classes];
        frozen = new double[classes];
        lost = new double[classes];
        possible = new double[classes];
        down = new double[classes];
        capacity = new double[classes];
    }

    private Columns(Columns from) {
        slab = from.slab;
        emissivity = from.emissivity;
        count = from.count;
        t = Arrays.stream(from.t).map(double[]::clone).toArray(double[][]::new);
        film = from.film.clone();
        ice = from.ice.clone();
        potential = from.potential.clone();
        frozen = from.frozen.clone();
        lost = from.lost.clone();
        possible = new double[count];
        down = new double[count];
        capacity = new double[count];
        carriesWater = from.carriesWater;
        bare = from.bare;
    }

    Columns copy() {
        return new Columns(this);
    }

    /** Surface temperature of a class in °C. */
    double surface(int k) {
        return t[0][k];
    }

    /** Film of a class in m. */
    double film(int k) {
        return film[k];
    }

    /** Ice of a class in m of water. */
    double ice(int k) {
        return ice[k];
    }

    /** Lays a film and ice (m) on a class. */
    void cover(int k, double filmDepth, double iceDepth) {
        film[k] = filmDepth;
        ice[k] = iceDepth;
        carriesWater |= filmDepth + iceDepth > 0;
    }

    /** What the last pass would have evaporated from a class that carried water, in m. */
    double potential(int k) {
        return potential[k];
    }

    /** What the last pass froze on a class in m. */
    double frozen(int k) {
        return frozen[k];
    }

    /** What the last pass lost from a class to the air in m. */
    double lost(int k) {
        return lost[k];
    }

    /** Whether some surface is colder; that of a column without cells counts as well. */
    boolean anyColder(double celsius) {
        double[] surfaces = t[0];
        for (int k = 0; k < count; k++) {
            if (surfaces[k] < celsius) {
                return true;
            }
        }
        return false;
    }

    /** Takes {@code more} cells among {@code members} from a class's column elsewhere: heat is shared out among all. */
    void join(int k, int members, int more, Columns from) {
        for (int i = 0; i < t.length; i++) {
            t[i][k] = (members * t[i][k] + more * from.t[i][k]) / (members + more);
        }
    }

    /** Mixes poured water (mean depth in m, °C) with the surface of a class. */
    void pour(int k, double water, double temperature) {
        double heat = water * WATER_CAPACITY;
        double held = slab.surfaceCapacity();
        t[0][k] = (t[0][k] * held + temperature * heat) / (held + heat);
    }

    /**
     * Passes time over all columns: radiation, convection, evaporation or dew, conduction, then freezing or melting by the
     * energy at hand.
     *
     * @param takenUp sun and longwave that each class takes up in W/m2
     * @param deep temperature of the deep ground in °C
     */
    void pass(SurfaceAir air, double[] takenUp, double deep, double seconds) {
        if (!bare) {
            Arrays.fill(potential, 0);
            Arrays.fill(frozen, 0);
            Arrays.fill(lost, 0);
        }
        bare = !carriesWater && !anyColder(air.dewPoint);
        int steps = bare ? slab.substeps(seconds, air.convection + RADIATES) : slab.substeps(seconds);
        double dt = seconds / steps;
        for (int n = 0; n < steps; n++) {
            if (bare) {
                tradeBare(air.convection, air.air, takenUp);
                slab.conduct(t, down, capacity, deep, dt, count);
            } else {
                air.evaporation(t[0], possible, dt, count);
                trade(air.convection, air.air, takenUp, dt);
                slab.conduct(t, down, capacity, deep, dt, count);
                settle();
            }
        }
        carriesWater = !bare && anyWater();
    }

    /** Trade of surfaces that carry no water and are warmer than the dew point. */
    private void tradeBare(double convection, double airTemperature, double[] takenUp) {
        double[] surfaces = t[0];
        double held = slab.surfaceCapacity();
        for (int k = 0; k < count; k++) {
            double surface = surfaces[k];
            down[k] = takenUp[k] - radiated(surface) + convection * (airTemperature - surface);
            capacity[k] = held;
        }
    }

    private double radiated(double surface) {
        double kelvin = surface + SurfaceHeat.KELVIN;
        double square = kelvin * kelvin;
        return emissivity * (SurfaceHeat.STEFAN_BOLTZMANN * square * square);
    }

    /** Surfaces' trade with air and sky over a sub-step; leaves the heat flux into them and their heat capacities. */
    private void trade(double convection, double airTemperature, double[] takenUp, double dt) {
        double[] surfaces = t[0];
        double held = slab.surfaceCapacity();
        for (int k = 0; k < count; k++) {
            double surface = surfaces[k];
            double gone = Math.min(possible[k], film[k] + ice[k]);
            double fromFilm = Math.min(gone, film[k]);
            double latent = gone * SurfaceHeat.VAPORISATION + (gone - fromFilm) * Freezing.FUSION;
            down[k] = takenUp[k]
                    - radiated(surface)
                    + convection * (airTemperature - surface)
                    - latent * Freezing.WATER / dt;
            film[k] -= fromFilm;
            ice[k] -= gone - fromFilm;
            lost[k] += gone;
            potential[k] += possible[k];
            capacity[k] = held + film[k] * WATER_CAPACITY;
        }
    }

    /** Freezes what the cold of the surface nodes can freeze, or melts what their warmth can melt. */
    private void settle() {
        double[] surfaces = t[0];
        for (int k = 0; k < count; k++) {
            double turns = Math.max(-ice[k], Math.min(film[k], -surfaces[k] * capacity[k] / FUSION));
            film[k] -= turns;
            ice[k] += turns;
            frozen[k] += turns;
            surfaces[k] += turns * FUSION / capacity[k];
        }
    }

    private boolean anyWater() {
        for (int k = 0; k < count; k++) {
            if (film[k] + ice[k] > 0) {
                return true;
            }
        }
        return false;
    }
}
