package provingyard.world.ground;

/**
 * The air that spray flies through.
 *
 * @param wind m/s at 2 m
 * @param windFrom bearing in degrees
 * @param humidity percent
 * @param sunAltitude degrees
 */
public record SprayAir(double wind, double windFrom, double humidity, double sunAltitude) {

    /** From a minute's weather and the wind's bearing. */
    public static SprayAir of(MinuteForcing weather, double windFrom) {
        return new SprayAir(
                weather.wind(),
                windFrom,
                SurfaceHeat.humidity(weather.air(), weather.dewPoint()),
                weather.sunAltitude());
    }
}
