package provingyard.world.weather;

import java.time.LocalDate;
import provingyard.numeric.Deterministic;

/**
 * Where the sun stands and what it would give without an atmosphere.
 *
 * <p>Source unless said: FAO-56 (Allen et al. 1998), chapter 3. Latitudes here in radians, as printed there; times in
 * hours of the place's standard time. The day number J is 1 on 1 January. Between the polar circles only in the sense
 * that beyond them the sunset hour angle is held at 0 (polar night) or pi (polar day).
 */
public final class SolarGeometry {

    /** Solar constant in MJ/m2/min; FAO-56 eq. 21. */
    public static final double SOLAR_CONSTANT = 0.0820;

    private static final double MJ_PER_MINUTE_IN_WATT = 1e6 / 60.0;
    private static final double HOURS_TO_RADIANS = Math.PI / 12.0;

    private SolarGeometry() {}

    /** Number of the day in its year, 1 to 366. */
    public static int dayNumber(LocalDate date) {
        return date.getDayOfYear();
    }

    /** Solar declination in rad; FAO-56 eq. 24. */
    public static double declination(int dayNumber) {
        return 0.409 * Deterministic.sin(2.0 * Math.PI / 365.0 * dayNumber - 1.39);
    }

    /** Inverse relative distance of earth and sun, dimensionless; FAO-56 eq. 23. */
    public static double inverseDistance(int dayNumber) {
        return 1.0 + 0.033 * Deterministic.cos(2.0 * Math.PI / 365.0 * dayNumber);
    }

    /** Sunset hour angle in rad at a latitude in rad; FAO-56 eq. 25. */
    public static double sunsetHourAngle(double latitude, int dayNumber) {
        double x = -Deterministic.tan(latitude) * Deterministic.tan(declination(dayNumber));
        return Deterministic.acos(Math.max(-1.0, Math.min(1.0, x)));
    }

    /** Daylight hours N; FAO-56 eq. 34. */
    public static double daylightHours(double latitude, int dayNumber) {
        return 24.0 / Math.PI * sunsetHourAngle(latitude, dayNumber);
    }

    /** Seasonal correction of solar time in h; FAO-56 eq. 32 and 33. */
    public static double seasonalCorrection(int dayNumber) {
        double b = 2.0 * Math.PI * (dayNumber - 81) / 364.0;
        return 0.1645 * Deterministic.sin(2.0 * b) - 0.1255 * Deterministic.cos(b) - 0.025 * Deterministic.sin(b);
    }

    /**
     * Clock time of solar noon in hours of standard time; FAO-56 eq. 31.
     *
     * @param longitude degrees east
     * @param utcOffset offset of standard time in s
     */
    public static double solarNoon(double longitude, double utcOffset, int dayNumber) {
        double zoneMeridian = utcOffset / 240.0;
        return 12.0 + (zoneMeridian - longitude) / 15.0 - seasonalCorrection(dayNumber);
    }

    /** Solar hour angle in rad, negative before noon, at a clock hour; FAO-56 eq. 31. */
    public static double hourAngle(double clockHour, double solarNoon) {
        return (clockHour - solarNoon) * HOURS_TO_RADIANS;
    }

    /** Extraterrestrial radiation Ra in MJ/m2/d; FAO-56 eq. 21. */
    public static double dailyRa(double latitude, int dayNumber) {
        double sunset = sunsetHourAngle(latitude, dayNumber);
        return between(-sunset, sunset, latitude, dayNumber);
    }

    /**
     * Extraterrestrial radiation Ra in MJ/m2 of the hour from {@code clockHour}; FAO-56 eq. 28, the hour clipped at
     * sunrise and sunset, 0 by night.
     */
    public static double hourlyRa(double latitude, int dayNumber, double clockHour, double solarNoon) {
        double sunset = sunsetHourAngle(latitude, dayNumber);
        double from = Math.max(-sunset, hourAngle(clockHour, solarNoon));
        double to = Math.min(sunset, hourAngle(clockHour + 1.0, solarNoon));
        return to > from ? between(from, to, latitude, dayNumber) : 0.0;
    }

    private static double between(double from, double to, double latitude, int dayNumber) {
        double declination = declination(dayNumber);
        double up = (to - from) * Deterministic.sin(latitude) * Deterministic.sin(declination);
        double across = Deterministic.cos(latitude)
                * Deterministic.cos(declination)
                * (Deterministic.sin(to) - Deterministic.sin(from));
        return 12.0 * 60.0 / Math.PI * SOLAR_CONSTANT * inverseDistance(dayNumber) * (up + across);
    }

    /** Extraterrestrial radiation on the flat in W/m2 at this sine of the sun's altitude, 0 by night; FAO-56 eq. 28. */
    public static double momentaryRa(double sineOfAltitude, int dayNumber) {
        return MJ_PER_MINUTE_IN_WATT * SOLAR_CONSTANT * inverseDistance(dayNumber) * Math.max(0.0, sineOfAltitude);
    }

    /**
     * Sine of the sun's altitude over a flat horizon, without refraction; FAO-56 annex 3, eq. 3-15.
     *
     * @param latitude rad
     * @param declination rad
     * @param hourAngle rad
     */
    public static double sineOfAltitude(double latitude, double declination, double hourAngle) {
        double sine = Deterministic.sin(latitude) * Deterministic.sin(declination)
                + Deterministic.cos(latitude) * Deterministic.cos(declination) * Deterministic.cos(hourAngle);
        return Math.max(-1.0, Math.min(1.0, sine));
    }

    /** Bearing of the sun in degrees from north over east, 0 to 360; spherical trigonometry, angles in rad. */
    public static double bearing(double latitude, double declination, double hourAngle) {
        double east = -Deterministic.cos(declination) * Deterministic.sin(hourAngle);
        double north = Deterministic.sin(declination) * Deterministic.cos(latitude)
                - Deterministic.cos(declination) * Deterministic.sin(latitude) * Deterministic.cos(hourAngle);
        double degrees = Math.toDegrees(Deterministic.atan2(east, north));
        return degrees < 0.0 ? degrees + 360.0 : degrees;
    }
}
