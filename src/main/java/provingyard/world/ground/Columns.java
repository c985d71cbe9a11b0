package provingyard.world.ground;

import java.util.Arrays;

/**
 * Slab columns of one paving, one for each of its classes that has cells, each under a film of water and ice of even
 * depth: temperatures in °C (surface first), depths in m of water.
 *
 * <p>Live columns lie side by side, one array for each node, so that a step is a few plain loops over all of them.
 */
final class Columns {

    private static final double WATER_CAPACITY = Freezing.WATER * Freezing.WATER_HEAT;
    private static final double FUSION = Freezing.WATER * Freezing.FUSION;

    /** Heat that a surface radiates more for each K it is warmer, up to 60 °C, in W/(m2 K). */
    private static final double RADIATES = 8.5;

    private final PavementSlab slab;
    private final double emissivity;
    private final double[][] t;
    private final double[] film;
    private final double[] ice;
    /** What the last pass would have evaporated from a wet column had there been water enough, in m; negative for dew. */
    private final double[] potential;
    /** What the last pass froze, in m; negative for melted. */
    private final double[] frozen;
    /** What the last pass lost to the air, in m; negative where dew fell. */
    private final double[] lost;

    private final double[] absorbed;
    private final double[] possible;
    private final double[] down;
    private final double[] capacity;
    private final int[] place;
    private final int[] classAt;
    private int live;
    /** Whether some live column may carry film or ice. */
    private boolean carriesWater;

    /** Room for {@code classes} columns, none of them live. */
    Columns(int classes, PavementSlab slab, double emissivity) {
        this.slab = slab;
        this.emissivity = emissivity;
        t = new double[slab.nodes()][classes];
        film = new double[classes];
        ice = new double[classes];
        potential = new double[classes];
        frozen = new double[classes];
        lost = new double[classes];
        absorbed = new double[classes];
        possible = new double[classes];
        down = new double[classes];
        capacity = new double[classes];
        place = new int[classes];
        Arrays.fill(place, -1);
        classAt = new int[classes];
    }

    /** Makes a column live for each class, of one temperature and bare. */
    void fill(double temperature) {
        for (double[] node : t) {
            Arrays.fill(node, temperature);
        }
        for (int k = 0; k < place.length; k++) {
            place[k] = k;
            classAt[k] = k;
        }
        live = place.length;
    }

    private Columns(Columns from) {
        slab = from.slab;
        emissivity = from.emissivity;
        t = new double[from.t.length][];
        for (int i = 0; i < t.length; i++) {
            t[i] = from.t[i].clone();
        }
        film = from.film.clone();
        ice = from.ice.clone();
        potential = from.potential.clone();
        frozen = from.frozen.clone();
        lost = from.lost.clone();
        absorbed = from.absorbed.clone();
        possible = from.possible.clone();
        down = from.down.clone();
        capacity = from.capacity.clone();
        place = from.place.clone();
        classAt = from.classAt.clone();
        live = from.live;
        carriesWater = from.carriesWater;
    }

    Columns copy() {
        return new Columns(this);
    }

    /** Number of live columns. */
    int live() {
        return live;
    }

    /** Surface temperature of a live class in °C. */
    double surface(int k) {
        return t[0][place[k]];
    }

    /** Film of a live class in m. */
    double film(int k) {
        return film[place[k]];
    }

    /** Ice of a live class in m of water. */
    double ice(int k) {
        return ice[place[k]];
    }

    /** Lays a film and ice (m) on a live class. */
    void cover(int k, double filmDepth, double iceDepth) {
        film[place[k]] = filmDepth;
        ice[place[k]] = iceDepth;
        carriesWater |= filmDepth + iceDepth > 0;
    }

    /** What the last pass would have evaporated from a live class that carried water, in m. */
    double potential(int k) {
        return potential[place[k]];
    }

    /** What the last pass froze on a live class in m. */
    double frozen(int k) {
        return frozen[place[k]];
    }

    /** What the last pass lost from a class to the air in m; 0 for one that is not live. */
    double lost(int k) {
        return place[k] < 0 ? 0 : lost[place[k]];
    }

    /** Whether some live surface is colder than a temperature in °C. */
    boolean anyColder(double celsius) {
        for (int p = 0; p < live; p++) {
            if (t[0][p] < celsius) {
                return true;
            }
        }
        return false;
    }

    /** Whether some live column carries ice. */
    boolean anyIce() {
        for (int p = 0; p < live; p++) {
            if (ice[p] > 0) {
                return true;
            }
        }
        return false;
    }

    /**
     * Takes {@code more} cells among {@code members}, from a live class of other columns: the column's heat is shared out
     * among all. The first makes the column live, under no water.
     */
    void join(int k, int members, int more, Columns from) {
        if (members == 0) {
            place[k] = live;
            classAt[live++] = k;
            cover(k, 0, 0);
        }
        int here = place[k];
        int there = from.place[k];
        for (int i = 0; i < t.length; i++) {
            t[i][here] = (members * t[i][here] + more * from.t[i][there]) / (members + more);
        }
    }

    /** Ends the column of a class whose last cell has gone; the last live one takes its place. */
    void end(int k) {
        int hole = place[k];
        int last = --live;
        int moved = classAt[last];
        for (double[] node : t) {
            node[hole] = node[last];
        }
        film[hole] = film[last];
        ice[hole] = ice[last];
        potential[hole] = potential[last];
        frozen[hole] = frozen[last];
        lost[hole] = lost[last];
        place[moved] = hole;
        classAt[hole] = moved;
        place[k] = -1;
    }

    /** Mixes poured water (mean depth in m, °C) with the surface of a live class. */
    void pour(int k, double water, double temperature) {
        double heat = water * WATER_CAPACITY;
        double held = slab.surfaceCapacity();
        int p = place[k];
        t[0][p] = (t[0][p] * held + temperature * heat) / (held + heat);
    }

    /**
     * Passes time over all live columns: radiation, convection, evaporation or dew, conduction, then freezing or melting
     * by the energy at hand.
     *
     * @param takenUp sun and longwave that each class takes up in W/m2
     * @param deep temperature of the deep ground in °C
     */
    void pass(SurfaceAir air, double[] takenUp, double deep, double seconds) {
        if (live == 0) {
            return;
        }
        for (int p = 0; p < live; p++) {
            absorbed[p] = takenUp[classAt[p]];
        }
        Arrays.fill(potential, 0, live, 0);
        Arrays.fill(frozen, 0, live, 0);
        Arrays.fill(lost, 0, live, 0);
        boolean bare = !carriesWater && !anyColder(air.dewPoint);
        int steps = bare ? slab.substeps(seconds, air.convection + RADIATES) : slab.substeps(seconds);
        double dt = seconds / steps;
        for (int n = 0; n < steps; n++) {
            if (bare) {
                tradeBare(air.convection, air.air);
                slab.conduct(t, down, capacity, deep, dt, live);
            } else {
                air.evaporation(t[0], possible, dt, live);
                trade(air.convection, air.air, dt);
                slab.conduct(t, down, capacity, deep, dt, live);
                settle();
            }
        }
    }

    /** Trade of surfaces that carry no water and are warmer than the dew point. */
    private void tradeBare(double convection, double airTemperature) {
        double[] surfaces = t[0];
        double held = slab.surfaceCapacity();
        for (int p = 0; p < live; p++) {
            double surface = surfaces[p];
            down[p] = absorbed[p] - radiated(surface) + convection * (airTemperature - surface);
            capacity[p] = held;
        }
    }

    private double radiated(double surface) {
        double kelvin = surface + SurfaceHeat.KELVIN;
        double square = kelvin * kelvin;
        return emissivity * (SurfaceHeat.STEFAN_BOLTZMANN * square * square);
    }

    /** Surfaces' trade with air and sky over a sub-step; leaves the heat flux into them and their heat capacities. */
    private void trade(double convection, double airTemperature, double dt) {
        double[] surfaces = t[0];
        double held = slab.surfaceCapacity();
        for (int p = 0; p < live; p++) {
            double surface = surfaces[p];
            double gone = Math.min(possible[p], film[p] + ice[p]);
            double fromFilm = Math.min(gone, film[p]);
            double latent = gone * SurfaceHeat.VAPORISATION + (gone - fromFilm) * Freezing.FUSION;
            down[p] = absorbed[p]
                    - radiated(surface)
                    + convection * (airTemperature - surface)
                    - latent * Freezing.WATER / dt;
            film[p] -= fromFilm;
            ice[p] -= gone - fromFilm;
            lost[p] += gone;
            potential[p] += possible[p];
            capacity[p] = held + film[p] * WATER_CAPACITY;
        }
    }

    /** Freezes what the cold of the surface nodes can freeze, or melts what their warmth can melt. */
    private void settle() {
        double[] surfaces = t[0];
        carriesWater = false;
        for (int p = 0; p < live; p++) {
            double turns = Math.max(-ice[p], Math.min(film[p], -surfaces[p] * capacity[p] / FUSION));
            film[p] -= turns;
            ice[p] += turns;
            frozen[p] += turns;
            surfaces[p] += turns * FUSION / capacity[p];
            carriesWater |= film[p] + ice[p] > 0;
        }
    }
}
