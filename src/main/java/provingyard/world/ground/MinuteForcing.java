package provingyard.world.ground;

/**
 * The weather of one minute over the yard, as plain values.
 *
 * @param rain depth in m
 * @param reference reference evapotranspiration in m
 * @param air °C at 2 m
 * @param dewPoint °C
 * @param wind m/s at 2 m
 * @param sun global radiation on the flat in W/m2
 * @param cloud 0 clear to 1 overcast
 * @param sunAltitude degrees
 * @param sunBearing degrees
 */
public record MinuteForcing(
        double rain,
        double reference,
        double air,
        double dewPoint,
        double wind,
        double sun,
        double cloud,
        double sunAltitude,
        double sunBearing) {}
