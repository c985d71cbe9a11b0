package provingyard.world.ground;

/**
 * Water budgets of plantings as landscape practice and a state's ordinance write them, in the customary units of their
 * sources (inches of water, square feet, gallons).
 */
public final class LandscapeBudget {

    /** Gallons in one inch of water over one square foot, as the ordinance rounds it. */
    private static final double GALLONS_PER_INCH_SQUARE_FOOT = 0.62;

    private LandscapeBudget() {}

    /**
     * Landscape coefficient KL = species x density x microclimate. Source: University of California and Department of
     * Water Resources 2000, A Guide to Estimating Irrigation Water Needs of Landscape Plantings.
     */
    public static double landscapeCoefficient(double species, double density, double microclimate) {
        return species * density * microclimate;
    }

    /** Water to apply = KL x ET0 / efficiency, in the unit of the reference evapotranspiration. Same source. */
    public static double toApply(double landscapeCoefficient, double reference, double efficiency) {
        return landscapeCoefficient * reference / efficiency;
    }

    /**
     * Maximum applied water allowance in gallons a year: 0.62 ET0 (factor x area + (1 - factor) x special). Source: 23
     * CCR 492.4 (factor 0.7 in 2009; 0.55 residential and 0.45 other in the form now in force).
     *
     * @param reference inches a year
     * @param area whole landscape area in square feet
     * @param special special landscape area in square feet
     */
    public static double allowance(double reference, double factor, double area, double special) {
        return reference * GALLONS_PER_INCH_SQUARE_FOOT * (factor * area + (1 - factor) * special);
    }

    /**
     * Estimated total water use in gallons a year: 0.62 ET0 (sum of plant factor x area / efficiency + special). Same
     * source.
     */
    public static double estimatedUse(double reference, double factorAreas, double efficiency, double special) {
        return reference * GALLONS_PER_INCH_SQUARE_FOOT * (factorAreas / efficiency + special);
    }
}
