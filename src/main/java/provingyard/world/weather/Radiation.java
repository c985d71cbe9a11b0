package provingyard.world.weather;

/**
 * Short-wave and long-wave radiation at the ground.
 *
 * <p>Source unless said: FAO-56 (Allen et al. 1998), chapter 3. Radiation in MJ/m2 per day or hour, temperatures in
 * °C, vapour pressure in kPa.
 */
public final class Radiation {

    /** Angström's a: share of Ra on overcast days; FAO-56 eq. 35. */
    public static final double ANGSTROM_A = 0.25;
    /** Angström's b: a + b is the share of Ra on clear days; FAO-56 eq. 35. */
    public static final double ANGSTROM_B = 0.50;
    /** Albedo of the reference grass; FAO-56 eq. 38. */
    public static final double REFERENCE_ALBEDO = 0.23;
    /** Adjustment for interior places of radiation from the temperature range, K^-0.5; FAO-56 eq. 50. */
    public static final double INTERIOR = 0.16;
    /** Adjustment for coasts of radiation from the temperature range, K^-0.5; FAO-56 eq. 50. */
    public static final double COASTAL = 0.19;

    private static final double STEFAN_BOLTZMANN_DAY = 4.903e-9;
    private static final double STEFAN_BOLTZMANN_HOUR = 2.043e-10;
    private static final double LEAST_RATIO = 0.3;

    private Radiation() {}

    /** Global radiation Rs from hours of sunshine n of N possible; FAO-56 eq. 35. */
    public static double fromSunshine(double sunshineHours, double daylightHours, double ra) {
        return (ANGSTROM_A + ANGSTROM_B * sunshineHours / daylightHours) * ra;
    }

    /** Global radiation Rs from the day's temperature range (Hargreaves and Samani 1982); FAO-56 eq. 50, unbounded. */
    public static double fromTemperatureRange(double high, double low, double ra, double adjustment) {
        return adjustment * Math.sqrt(Math.max(0.0, high - low)) * ra;
    }

    /** Share of Ra that reaches the ground at {@code elevation} m under a clear sky; FAO-56 eq. 37. */
    public static double clearSkyShare(double elevation) {
        return 0.75 + 2e-5 * elevation;
    }

    /** Clear-sky radiation Rso; FAO-56 eq. 37. */
    public static double clearSky(double elevation, double ra) {
        return clearSkyShare(elevation) * ra;
    }

    /**
     * Share of the clear-sky radiation under this cloud cover (0 to 1): Angström's line with a = 0.25 and b = 0.50,
     * relative sunshine read as 1 - cloud (practice of FAO-56, no source for the minute), from 1 down to 1/3.
     */
    public static double shareUnderCloud(double cloud) {
        return (ANGSTROM_A + ANGSTROM_B * (1.0 - cloud)) / (ANGSTROM_A + ANGSTROM_B);
    }

    /** Cloud cover, 0 to 1, under which this share of the clear-sky radiation arrives; inverse of the line above. */
    public static double cloudOfShare(double shareOfClearSky) {
        double sunshine = (shareOfClearSky * (ANGSTROM_A + ANGSTROM_B) - ANGSTROM_A) / ANGSTROM_B;
        return 1.0 - Math.max(0.0, Math.min(1.0, sunshine));
    }

    /** Net short-wave radiation Rns; FAO-56 eq. 38. */
    public static double netShortWave(double rs, double albedo) {
        return (1.0 - albedo) * rs;
    }

    /**
     * Net outgoing long-wave radiation Rnl of a day in MJ/m2/d; FAO-56 eq. 39.
     *
     * @param ratio Rs/Rso, held between 0.3 and 1 (ASCE-EWRI 2005, eq. 18: cloudiness function 0.05 to 1)
     */
    public static double netLongWaveDaily(double high, double low, double vapourPressure, double ratio) {
        double emitted = STEFAN_BOLTZMANN_DAY * (fourth(high) + fourth(low)) / 2.0;
        return emitted * openness(vapourPressure, ratio);
    }

    /** Net outgoing long-wave radiation Rnl of an hour in MJ/m2/h; FAO-56 eq. 39 with sigma/24, ratio as above. */
    public static double netLongWaveHourly(double air, double vapourPressure, double ratio) {
        return STEFAN_BOLTZMANN_HOUR * fourth(air) * openness(vapourPressure, ratio);
    }

    /** Net radiation Rn; FAO-56 eq. 40. */
    public static double net(double netShortWave, double netLongWave) {
        return netShortWave - netLongWave;
    }

    private static double openness(double vapourPressure, double ratio) {
        double held = Math.max(LEAST_RATIO, Math.min(1.0, ratio));
        return (0.34 - 0.14 * Math.sqrt(vapourPressure)) * (1.35 * held - 0.35);
    }

    private static double fourth(double celsius) {
        double square = (celsius + 273.16) * (celsius + 273.16);
        return square * square;
    }
}
