package provingyard.world.ground;

import java.util.Arrays;

/** Slab columns with a film of water and ice each: temperatures in °C (surface first), depths in m of water. */
final class Columns {

    final int stride;
    final double[] t;
    final double[] film;
    final double[] ice;

    Columns(int count, int stride, double temperature) {
        this.stride = stride;
        t = new double[count * stride];
        Arrays.fill(t, temperature);
        film = new double[count];
        ice = new double[count];
    }

    private Columns(Columns from) {
        stride = from.stride;
        t = from.t.clone();
        film = from.film.clone();
        ice = from.ice.clone();
    }

    Columns copy() {
        return new Columns(this);
    }

    boolean dry(int i) {
        return film[i] == 0 && ice[i] == 0;
    }

    /** Takes over another column's temperatures, film and ice. */
    void take(int i, Columns from, int j) {
        System.arraycopy(from.t, j * from.stride, t, i * stride, stride);
        film[i] = from.film[j];
        ice[i] = from.ice[j];
    }

    /** Largest difference in K from another column, at the surface and in the slab. */
    double apart(int i, Columns other, int j, int nodes) {
        double most = 0;
        for (int n = 0; n < nodes; n += 2) {
            most = Math.max(most, Math.abs(t[i * stride + n] - other.t[j * stride + n]));
        }
        return most;
    }

    /** Adds water of a temperature; its heat mixes with film and surface node. */
    void pour(int i, double water, double temperature, PavementSlab slab) {
        double heat = water * Freezing.WATER * Freezing.WATER_HEAT;
        double held = slab.surfaceCapacity() + film[i] * Freezing.WATER * Freezing.WATER_HEAT;
        t[i * stride] = (t[i * stride] * held + temperature * heat) / (held + heat);
        film[i] += water;
        settle(i, held + heat);
    }

    /**
     * Passes time over a column: radiation, convection, evaporation or dew, conduction, then freezing or melting by the
     * energy at hand.
     *
     * @return water lost to the air in m; negative where dew fell
     */
    double pass(int i, Exposure exposure, SurfaceAir air, double absorbed, double deep, double seconds) {
        PavementSlab slab = exposure.slab;
        double emissivity = exposure.paving.emissivity();
        int at = i * stride;
        int steps = slab.substeps(seconds);
        double dt = seconds / steps;
        double lostSum = 0;
        for (int n = 0; n < steps; n++) {
            double surface = t[at];
            double lost = evaporated(i, surface, air, dt);
            double fromFilm = Math.min(lost, film[i]);
            double latent = lost * SurfaceHeat.VAPORISATION + (lost - fromFilm) * Freezing.FUSION;
            double flux = absorbed
                    - emissivity * SurfaceHeat.radiated(surface)
                    + air.convection * (air.air - surface)
                    - latent * Freezing.WATER / dt;
            film[i] -= fromFilm;
            ice[i] -= lost - fromFilm;
            lostSum += lost;
            double extra = film[i] * Freezing.WATER * Freezing.WATER_HEAT;
            slab.conduct(t, at, flux, extra, deep, dt);
            settle(i, slab.surfaceCapacity() + extra);
        }
        return lostSum;
    }

    /** Water that evaporates in a sub-step, no more than there is; negative for dew. Ice goes at the same pressure. */
    private double evaporated(int i, double surface, SurfaceAir air, double seconds) {
        double deficit = SurfaceAir.saturation(surface) - air.vapour;
        double possible = air.convection
                / SurfaceHeat.PSYCHROMETRIC
                * deficit
                * seconds
                / (Freezing.WATER * SurfaceHeat.VAPORISATION);
        return Math.min(possible, film[i] + ice[i]);
    }

    /** Freezes what the cold of the surface node can freeze, or melts what its warmth can melt. */
    private void settle(int i, double capacity) {
        int at = i * stride;
        double perDepth = Freezing.FUSION * Freezing.WATER;
        if (t[at] < 0 && film[i] > 0) {
            double freezes = Math.min(film[i], -t[at] * capacity / perDepth);
            film[i] -= freezes;
            ice[i] += freezes;
            t[at] += freezes * perDepth / capacity;
        } else if (t[at] > 0 && ice[i] > 0) {
            double melts = Math.min(ice[i], t[at] * capacity / perDepth);
            ice[i] -= melts;
            film[i] += melts;
            t[at] -= melts * perDepth / capacity;
        }
    }
}
