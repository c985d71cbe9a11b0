package provingyard.world.ground;

/** Freezing of thin water films by energy alone. */
public final class Freezing {

    /** Latent heat of fusion in J/kg. */
    public static final double FUSION = 334e3;

    /** Density of water in kg/m3. */
    public static final double WATER = 1000;

    /** Specific heat of water in J/(kg K). */
    public static final double WATER_HEAT = 4186;

    private Freezing() {}

    /** Seconds in which a film (m) already at 0 °C freezes when it loses {@code flux} W/m2 and nothing comes back. */
    public static double time(double film, double flux) {
        return FUSION * WATER * film / flux;
    }

    /**
     * Seconds in which a film (m) at 0 °C freezes on a thick cold slab by conduction alone: the semi-infinite solid takes
     * 2 b dT sqrt(t / pi). Source: Carslaw and Jaeger (from memory).
     *
     * @param colder K by which the slab lies below 0 °C
     * @param effusivity b = sqrt(k rho c) in W s^0.5/(m2 K)
     */
    public static double timeOnSlab(double film, double colder, double effusivity) {
        double root = FUSION * WATER * film / (2 * effusivity * colder);
        return Math.PI * root * root;
    }
}
