package provingyard.world.electric;

import java.util.Map;

/**
 * What the wires lie in.
 *
 * @param celsius temperature of copper in °C
 * @param wetness of the soil (degree of saturation, 0 to 1) where nothing else is said
 * @param at wetness by id of valve box
 */
public record Conditions(double celsius, double wetness, Map<String, Double> at) {

    /** Dry soil at 20 °C, at which wire tables are given. */
    public static final Conditions DRY = everywhere(20, 0);

    public Conditions {
        at = Map.copyOf(at);
        share(wetness);
        at.values().forEach(Conditions::share);
    }

    /** The same wetness everywhere. */
    public static Conditions everywhere(double celsius, double wetness) {
        return new Conditions(celsius, wetness, Map.of());
    }

    /** Wetness at a valve box. */
    double wetnessAt(String box) {
        return at.getOrDefault(box, wetness);
    }

    /**
     * Ohms to earth of bare copper in soil of wetness w: R = R(saturated) / w^2, infinite in dry soil. Soil's conductivity
     * rises with the square of its saturation (G. E. Archie 1942, second law, exponent about 2; found in clean sands,
     * clays conduct more when dry).
     */
    static double leak(double saturatedOhms, double wetness) {
        return saturatedOhms / (wetness * wetness);
    }

    private static void share(double wetness) {
        if (!(wetness >= 0 && wetness <= 1)) {
            throw new IllegalArgumentException("Wetness " + wetness + " is not between 0 and 1");
        }
    }

    static void above(double value, String what) {
        if (!(value > 0)) {
            throw new IllegalArgumentException(what + " must be above 0, not " + value);
        }
    }
}
