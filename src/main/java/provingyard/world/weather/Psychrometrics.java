package provingyard.world.weather;

import provingyard.numeric.Deterministic;

/**
 * Vapour, pressure and wet bulb of the air, and wind brought to 2 m.
 *
 * <p>Source unless said: Allen, Pereira, Raes and Smith 1998, "Crop evapotranspiration", FAO Irrigation and Drainage
 * Paper 56 (below: FAO-56). Pressures in kPa, as printed there; temperatures in °C.
 */
public final class Psychrometrics {

    /** Height in m to which wind is brought. */
    public static final double REFERENCE_HEIGHT = 2.0;

    private Psychrometrics() {}

    /** Saturation vapour pressure e0(T) in kPa over water at {@code air} °C; FAO-56 eq. 11. */
    public static double saturationVapourPressure(double air) {
        return 0.6108 * Deterministic.exp(17.27 * air / (air + 237.3));
    }

    /** Slope of the saturation vapour pressure curve in kPa/K at {@code air} °C; FAO-56 eq. 13. */
    public static double slope(double air) {
        double t = air + 237.3;
        return 4098.0 * saturationVapourPressure(air) / (t * t);
    }

    /** Mean saturation vapour pressure in kPa of a day with these extremes in °C; FAO-56 eq. 12. */
    public static double meanSaturationVapourPressure(double high, double low) {
        return (saturationVapourPressure(high) + saturationVapourPressure(low)) / 2.0;
    }

    /** Atmospheric pressure in kPa at {@code elevation} m; FAO-56 eq. 7 (standard atmosphere at 20 °C). */
    public static double atmosphericPressure(double elevation) {
        return 101.3 * Deterministic.pow((293.0 - 0.0065 * elevation) / 293.0, 5.26);
    }

    /** Psychrometric constant in kPa/K at {@code pressure} kPa; FAO-56 eq. 8. */
    public static double psychrometricConstant(double pressure) {
        return 0.665e-3 * pressure;
    }

    /** Actual vapour pressure in kPa of air with this dew point in °C; FAO-56 eq. 14. */
    public static double vapourPressureOfDewPoint(double dewPoint) {
        return saturationVapourPressure(dewPoint);
    }

    /** Actual vapour pressure in kPa from the day's extremes in °C and its humidity extremes in %; FAO-56 eq. 17. */
    public static double vapourPressureOfHumidity(double high, double low, double humidityMax, double humidityMin) {
        return (saturationVapourPressure(low) * humidityMax + saturationVapourPressure(high) * humidityMin) / 200.0;
    }

    /** Actual vapour pressure in kPa from the day's extremes in °C and its mean humidity in %; FAO-56 eq. 19. */
    public static double vapourPressureOfMeanHumidity(double high, double low, double humidity) {
        return humidity / 100.0 * meanSaturationVapourPressure(high, low);
    }

    /**
     * Actual vapour pressure in kPa by a psychrometer; FAO-56 eq. 15 and 16.
     *
     * @param dry dry bulb in °C
     * @param wet wet bulb in °C
     * @param pressure kPa
     * @param coefficient 1/K: 0.000662 Asmann type, 0.0008 natural ventilation, 0.0012 indoors
     */
    public static double vapourPressureOfPsychrometer(double dry, double wet, double pressure, double coefficient) {
        return saturationVapourPressure(wet) - coefficient * pressure * (dry - wet);
    }

    /** Dew point in °C of air with {@code vapourPressure} kPa; the inverse of FAO-56 eq. 14. */
    public static double dewPoint(double vapourPressure) {
        double x = Deterministic.log(vapourPressure / 0.6108);
        return 237.3 * x / (17.27 - x);
    }

    /** Relative humidity as a fraction, 0 to 1, from air and dew point in °C; FAO-56 eq. 10. */
    public static double relativeHumidity(double air, double dewPoint) {
        return Math.min(1.0, saturationVapourPressure(dewPoint) / saturationVapourPressure(air));
    }

    /**
     * Wet-bulb temperature in °C at sea-level pressure; Stull 2011, J. Appl. Meteorol. Climatol. 50, 2267, eq. 1
     * (valid for 5 to 99 % and -20 to 50 °C but not where both are low; error -1 to +0.65 K).
     *
     * @param air °C
     * @param humidity relative humidity in %
     */
    public static double wetBulb(double air, double humidity) {
        return air * Deterministic.atan(0.151977 * Math.sqrt(humidity + 8.313659))
                + Deterministic.atan(air + humidity)
                - Deterministic.atan(humidity - 1.676331)
                + 0.00391838 * humidity * Math.sqrt(humidity) * Deterministic.atan(0.023101 * humidity)
                - 4.686035;
    }

    /** Factor that brings wind measured at {@code height} m over short grass to 2 m; FAO-56 eq. 47. */
    public static double windFactor(double height) {
        return 4.87 / Deterministic.log(67.8 * height - 5.42);
    }
}
