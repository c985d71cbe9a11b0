package provingyard.world.weather;

/**
 * What a day's minutes are made from.
 *
 * @param high °C
 * @param low °C
 * @param dewPoint °C about the time of the low
 * @param sunshine share of the possible sunshine, 0 to 1
 * @param wind the day's mean in m/s at 2 m
 * @param rain depth in m (snow as water)
 * @param spell when the rain falls; null leaves it to seeded bursts
 */
record DayValues(double high, double low, double dewPoint, double sunshine, double wind, double rain, RainSpell spell) {

    /** Rain written by the hour: first minute of the day and number of minutes. */
    record RainSpell(int start, int minutes) {}

    /** Least cloud of a wet day, and the depth in m from which it is overcast: own rule, no source. */
    private static final double WET_DAY_CLOUD = 0.5;

    private static final double OVERCAST_DEPTH = 0.010;

    /**
     * A day of which only temperatures, wind and rain are known.
     *
     * <p>Sunshine: Rs = 0.16 sqrt(high - low) Ra (Hargreaves and Samani 1982, interior places; FAO-56 eq. 50), at
     * most Rso, turned into relative sunshine by Angström's line; on a wet day cloud is at least 0.5, rising to 1 at
     * 10 mm (own rule, no source).
     *
     * @param dewPointBelowLow K
     * @param clearSkyShare Rso/Ra of the place
     */
    static DayValues fromTemperatures(
            double high, double low, double dewPointBelowLow, double wind, double rain, double clearSkyShare) {
        double share = Radiation.fromTemperatureRange(high, low, 1.0, Radiation.INTERIOR) / clearSkyShare;
        double cloud = Radiation.cloudOfShare(Math.min(1.0, share));
        if (rain > 0.0) {
            double least = WET_DAY_CLOUD + (1.0 - WET_DAY_CLOUD) * Math.min(1.0, rain / OVERCAST_DEPTH);
            cloud = Math.max(cloud, least);
        }
        return new DayValues(high, low, low - dewPointBelowLow, 1.0 - cloud, wind, rain, null);
    }
}
