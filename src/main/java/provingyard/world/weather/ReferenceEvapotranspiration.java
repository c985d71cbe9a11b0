package provingyard.world.weather;

/**
 * Reference evapotranspiration of short, well-watered grass, in mm per day or hour.
 *
 * <p>Sources: FAO-56 (Allen et al. 1998) eq. 6 and 53; ASCE-EWRI 2005, "The ASCE standardized reference
 * evapotranspiration equation", eq. 1 and table 1 (short reference); Hargreaves and Samani 1985 as FAO-56 eq. 52.
 * T + 273 in the denominator and the hourly numerator 37 as printed. Radiation in MJ/m2, temperatures in °C, wind in
 * m/s at 2 m, pressures in kPa.
 */
public final class ReferenceEvapotranspiration {

    /** Water evaporated by one MJ/m2, in mm; FAO-56 eq. 20. */
    private static final double MM_PER_MJ = 0.408;

    private static final double DAILY_NUMERATOR = 900.0;
    private static final double HOURLY_NUMERATOR = 37.0;
    private static final double FAO_DENOMINATOR = 0.34;
    private static final double ASCE_DAY = 0.24;
    private static final double ASCE_NIGHT = 0.96;

    private ReferenceEvapotranspiration() {}

    /**
     * FAO-56 Penman-Monteith of a day in mm/d; eq. 6.
     *
     * @param air mean of the day's extremes in °C
     * @param saturation mean saturation vapour pressure es in kPa
     * @param vapourPressure actual vapour pressure ea in kPa
     * @param wind m/s at 2 m
     * @param net net radiation Rn in MJ/m2/d
     * @param soilHeat G in MJ/m2/d, 0 for a day
     * @param gamma psychrometric constant in kPa/K
     */
    public static double daily(
            double air,
            double saturation,
            double vapourPressure,
            double wind,
            double net,
            double soilHeat,
            double gamma) {
        return penmanMonteith(
                air, saturation - vapourPressure, wind, net - soilHeat, gamma, DAILY_NUMERATOR, FAO_DENOMINATOR);
    }

    /** Soil heat flux G of an hour in MJ/m2/h: 0.1 Rn by day, 0.5 Rn by night (Rn below 0); FAO-56 eq. 45 and 46. */
    public static double hourlySoilHeat(double net) {
        return net < 0.0 ? 0.5 * net : 0.1 * net;
    }

    /** Soil heat flux G in MJ/m2/d of a month between mean temperatures in °C of the last month and this; eq. 44. */
    public static double monthlySoilHeat(double lastMonth, double thisMonth) {
        return 0.14 * (thisMonth - lastMonth);
    }

    /**
     * FAO-56 Penman-Monteith of an hour in mm/h; eq. 53. May be slightly negative by night.
     *
     * @param air mean of the hour in °C
     * @param vapourPressure ea in kPa
     * @param wind m/s at 2 m
     * @param net Rn in MJ/m2/h
     * @param gamma kPa/K
     */
    public static double hourly(double air, double vapourPressure, double wind, double net, double gamma) {
        return hourly(air, vapourPressure, wind, net, gamma, FAO_DENOMINATOR);
    }

    /** ASCE standardised short reference of an hour in mm/h (Cn 37, Cd 0.24 by day, 0.96 by night); as above. */
    public static double hourlyAsceShort(double air, double vapourPressure, double wind, double net, double gamma) {
        return hourly(air, vapourPressure, wind, net, gamma, net < 0.0 ? ASCE_NIGHT : ASCE_DAY);
    }

    private static double hourly(double air, double ea, double wind, double net, double gamma, double denominator) {
        double deficit = Psychrometrics.saturationVapourPressure(air) - ea;
        double energy = net - hourlySoilHeat(net);
        return penmanMonteith(air, deficit, wind, energy, gamma, HOURLY_NUMERATOR, denominator);
    }

    private static double penmanMonteith(
            double air,
            double deficit,
            double wind,
            double energy,
            double gamma,
            double numerator,
            double denominator) {
        double slope = Psychrometrics.slope(air);
        double radiative = MM_PER_MJ * slope * energy;
        double aerodynamic = gamma * numerator / (air + 273.0) * wind * deficit;
        return (radiative + aerodynamic) / (slope + gamma * (1.0 + denominator * wind));
    }

    /** Hargreaves and Samani 1985 in mm/d from mean, high and low in °C and Ra in MJ/m2/d; FAO-56 eq. 52. */
    public static double hargreavesSamani(double air, double high, double low, double ra) {
        return 0.0023 * (air + 17.8) * Math.sqrt(Math.max(0.0, high - low)) * MM_PER_MJ * ra;
    }

    /**
     * FAO-56 Penman-Monteith of a day in mm/d with no more than temperatures and wind: dew point = low - {@code
     * dewPointBelowLow} (FAO-56 eq. 48 and annex 6), Rs from the temperature range, at most Rso (eq. 50).
     *
     * @param adjustment {@link Radiation#INTERIOR} or {@link Radiation#COASTAL}
     * @param elevation m
     * @param ra MJ/m2/d
     */
    public static double fromTemperatures(
            double high,
            double low,
            double dewPointBelowLow,
            double wind,
            double adjustment,
            double elevation,
            double ra) {
        double clear = Radiation.clearSky(elevation, ra);
        double rs = Math.min(clear, Radiation.fromTemperatureRange(high, low, ra, adjustment));
        double ea = Psychrometrics.vapourPressureOfDewPoint(low - dewPointBelowLow);
        double net = Radiation.net(
                Radiation.netShortWave(rs, Radiation.REFERENCE_ALBEDO),
                Radiation.netLongWaveDaily(high, low, ea, rs / clear));
        double gamma = Psychrometrics.psychrometricConstant(Psychrometrics.atmosphericPressure(elevation));
        double es = Psychrometrics.meanSaturationVapourPressure(high, low);
        return daily((high + low) / 2.0, es, ea, wind, net, 0.0, gamma);
    }
}
