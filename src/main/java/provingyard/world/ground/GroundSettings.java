package provingyard.world.ground;

/**
 * What a ground starts from and is judged by.
 *
 * @param allowedStress Ks that the lesson allows: dryness counts below it
 * @param deepGround temperature in °C below the pavements at the start; it follows the air with 20 days' lag
 * @param supply temperature of irrigation water in °C (mains water of some 10 °C in the cold half-year: common practice)
 * @param startWetness share of the available water in the soil at the start, 0 to 1
 */
public record GroundSettings(double allowedStress, double deepGround, double supply, double startWetness) {

    /** Ks 0.8 allowed, water at 10 °C, soil at 70 % of its available water. */
    public static GroundSettings usual(double deepGround) {
        return new GroundSettings(0.8, deepGround, 10, 0.7);
    }
}
