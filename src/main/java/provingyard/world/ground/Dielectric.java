package provingyard.world.ground;

/** Water content and permittivity, as soil moisture probes use them. */
public final class Dielectric {

    private Dielectric() {}

    /**
     * Volumetric water content of a mineral soil from its apparent permittivity (1): -5.3e-2 + 2.92e-2 K - 5.5e-4 K^2 +
     * 4.3e-6 K^3. Source: Topp, Davis and Annan 1980, Water Resources Research 16:574. Good to about 0.013 (from memory)
     * and not beyond K of about 40.
     */
    public static double waterContent(double permittivity) {
        double k = permittivity;
        return -5.3e-2 + k * (2.92e-2 + k * (-5.5e-4 + k * 4.3e-6));
    }

    /**
     * Relative permittivity of free water at a temperature in °C: 78.54 (1 - 4.579e-3 (T - 25)), the linear term only
     * (coefficients read in a secondary source).
     */
    public static double waterPermittivity(double celsius) {
        return 78.54 * (1 - 4.579e-3 * (celsius - 25));
    }
}
