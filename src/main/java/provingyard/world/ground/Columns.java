package provingyard.world.ground;

import java.util.Arrays;

/**
 * Slab columns, one for each class of paved cells, each under a film of water and ice of even depth: temperatures in °C
 * (surface first), depths in m of water.
 */
final class Columns {

    private static final double WATER_CAPACITY = Freezing.WATER * Freezing.WATER_HEAT;
    private static final double FUSION = Freezing.WATER * Freezing.FUSION;

    final double[] film;
    final double[] ice;
    /** What the last pass would have evaporated had there been water enough, in m; negative for dew. */
    final double[] potential;
    /** What the last pass froze, in m; negative for melted. */
    final double[] frozen;

    private final int stride;
    private final double[] t;

    Columns(int count, int stride, double temperature) {
        this.stride = stride;
        t = new double[count * stride];
        Arrays.fill(t, temperature);
        film = new double[count];
        ice = new double[count];
        potential = new double[count];
        frozen = new double[count];
    }

    private Columns(Columns from) {
        stride = from.stride;
        t = from.t.clone();
        film = from.film.clone();
        ice = from.ice.clone();
        potential = from.potential.clone();
        frozen = from.frozen.clone();
    }

    Columns copy() {
        return new Columns(this);
    }

    /** Surface temperature in °C. */
    double surface(int k) {
        return t[k * stride];
    }

    /** Takes one more cell among {@code members}: its column's heat is shared out among all. */
    void join(int k, int members, Columns from) {
        for (int i = k * stride; i < (k + 1) * stride; i++) {
            t[i] = (members * t[i] + from.t[i]) / (members + 1);
        }
    }

    /** Mixes poured water (mean depth in m, °C) with the surface. */
    void pour(int k, double water, double temperature, PavementSlab slab) {
        double heat = water * WATER_CAPACITY;
        double held = slab.surfaceCapacity();
        t[k * stride] = (t[k * stride] * held + temperature * heat) / (held + heat);
    }

    /**
     * Passes time over a column: radiation, convection, evaporation or dew, conduction, then freezing or melting by the
     * energy at hand.
     *
     * @return water lost to the air in m; negative where dew fell
     */
    double pass(int k, Exposure exposure, SurfaceAir air, double absorbed, double deep, double seconds) {
        PavementSlab slab = exposure.slab;
        double emissivity = exposure.paving.emissivity();
        int at = k * stride;
        int steps = slab.substeps(seconds);
        double dt = seconds / steps;
        double lostSum = 0;
        potential[k] = 0;
        frozen[k] = 0;
        for (int n = 0; n < steps; n++) {
            double surface = t[at];
            double possible = air.evaporation(surface, dt);
            potential[k] += possible;
            double lost = Math.min(possible, film[k] + ice[k]);
            double fromFilm = Math.min(lost, film[k]);
            double latent = lost * SurfaceHeat.VAPORISATION + (lost - fromFilm) * Freezing.FUSION;
            double flux = absorbed
                    - emissivity * SurfaceHeat.radiated(surface)
                    + air.convection * (air.air - surface)
                    - latent * Freezing.WATER / dt;
            film[k] -= fromFilm;
            ice[k] -= lost - fromFilm;
            lostSum += lost;
            double extra = film[k] * WATER_CAPACITY;
            slab.conduct(t, at, flux, extra, deep, dt);
            settle(k, slab.surfaceCapacity() + extra);
        }
        return lostSum;
    }

    /** Freezes what the cold of the surface node can freeze, or melts what its warmth can melt. */
    private void settle(int k, double capacity) {
        int at = k * stride;
        double turns = 0;
        if (t[at] < 0) {
            turns = Math.min(film[k], -t[at] * capacity / FUSION);
        } else if (t[at] > 0) {
            turns = -Math.min(ice[k], t[at] * capacity / FUSION);
        }
        film[k] -= turns;
        ice[k] += turns;
        frozen[k] += turns;
        t[at] += turns * FUSION / capacity;
    }
}
