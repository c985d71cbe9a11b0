package provingyard.world.weather;

/**
 * A series by the hour, for plots: one entry per hour of the season. The arrays are the caller's own copies.
 *
 * @param air mean in °C
 * @param lowest lowest air temperature in °C
 * @param dewPoint mean in °C
 * @param wind mean in m/s at 2 m
 * @param sun mean global radiation in W/m2
 * @param cloud mean cover, 0 to 1
 * @param rain depth in m
 * @param reference reference evapotranspiration in m, never negative
 */
public record HourlyWeather(
        double[] air,
        double[] lowest,
        double[] dewPoint,
        double[] wind,
        double[] sun,
        double[] cloud,
        double[] rain,
        double[] reference) {

    /** Number of hours. */
    public int hours() {
        return air.length;
    }
}
