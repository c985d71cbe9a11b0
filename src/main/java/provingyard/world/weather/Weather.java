package provingyard.world.weather;

/**
 * The open-field weather of one minute at the yard's place.
 *
 * @param air air temperature in °C at 2 m
 * @param dewPoint °C
 * @param wind mean speed in m/s at 2 m
 * @param windFrom bearing in degrees from which it blows
 * @param sun global radiation on the flat in W/m2
 * @param cloud cover, 0 clear to 1 overcast (by night carried from the day's clearness)
 * @param rain depth of this minute in m
 * @param reference reference evapotranspiration of this minute in m (FAO-56 hourly, never negative here)
 * @param sunAltitude degrees over the horizon (negative by night)
 * @param sunBearing degrees
 */
public record Weather(
        double air,
        double dewPoint,
        double wind,
        double windFrom,
        double sun,
        double cloud,
        double rain,
        double reference,
        double sunAltitude,
        double sunBearing) {}
