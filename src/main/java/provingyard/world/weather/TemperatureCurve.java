package provingyard.world.weather;

import java.util.List;
import provingyard.numeric.Deterministic;

/**
 * Air temperature and dew point by the minute from daily extremes.
 *
 * <p>Parton and Logan 1981, Agric. Meteorol. 23, 205: by day a truncated sine from the low about sunrise to the high
 * after noon, by night an exponential fall; their constants for air at 1.5 m (from memory): high 1.86 h after noon,
 * night coefficient 2.20, low 0.17 h before sunrise. The night is scaled so that it ends at the next day's low exactly
 * (Goudriaan and van Laar 1994, from memory). Each day's low is met about its sunrise and its high after its noon; a
 * front that brought a calendar day's extreme at midnight is so moved to the usual hour.
 */
final class TemperatureCurve {

    /** Lag of the high after solar noon, minutes. */
    static final double HIGH_LAG = 1.86 * 60.0;
    /** Lag of the low after sunrise, minutes. */
    static final double LOW_LAG = -0.17 * 60.0;

    private static final double NIGHT_COEFFICIENT = 2.20;
    private static final double NIGHT_END = Deterministic.exp(-NIGHT_COEFFICIENT);

    private final List<DayValues> days;
    private final SeasonSun sun;

    TemperatureCurve(List<DayValues> days, SeasonSun sun) {
        this.days = days;
        this.sun = sun;
    }

    /** Tick of the day's low, a whole minute so that the series meets it. */
    static int lowTick(SeasonSun sun, int day) {
        return (int) Math.round(sun.sunriseTick(day) + LOW_LAG);
    }

    /** Tick of the day's high. */
    static int highTick(SeasonSun sun, int day) {
        return (int) Math.round(sun.noonTick(day) + HIGH_LAG + LOW_LAG);
    }

    /** Temperature at share {@code passed} (0 to 1) of a night that falls (or rises) from one value to another. */
    static double night(double from, double to, double passed) {
        double decay = Deterministic.exp(-NIGHT_COEFFICIENT * passed);
        return to + (from - to) * (decay - NIGHT_END) / (1.0 - NIGHT_END);
    }

    /** Fills air and dew point; the days before the first and after the last repeat them. */
    void fill(MinuteFields fields) {
        for (int day = 0; day < sun.days(); day++) {
            int midnight = day * SeasonSun.MINUTES;
            int low = lowTick(sun, day);
            int sunset = (int) Math.floor(sun.sunsetTick(day));
            int end = midnight + SeasonSun.MINUTES;
            fillNight(fields.air, midnight, Math.min(end, low), day - 1);
            for (int t = Math.max(midnight, low); t <= Math.min(sunset, end - 1); t++) {
                fields.air[t] = dayAir(t, day);
            }
            fillNight(fields.air, Math.max(midnight, sunset + 1), end, day);
            for (int t = midnight; t < end; t++) {
                fields.dewPoint[t] = Math.min(fields.air[t], dewPoint(t, day));
            }
        }
    }

    private double dayAir(double t, int day) {
        DayValues values = values(day);
        double low = lowTick(sun, day);
        double span = 2.0 * (sun.noonTick(day) + HIGH_LAG + LOW_LAG - low);
        return values.low() + (values.high() - values.low()) * Deterministic.sin(Math.PI * (t - low) / span);
    }

    private void fillNight(double[] air, int from, int to, int evening) {
        double sunset = sun.sunsetTick(evening);
        double end = lowTick(sun, evening + 1);
        double atSunset = dayAir(sunset, evening);
        double atEnd = values(evening + 1).low();
        for (int t = from; t < to; t++) {
            air[t] = night(atSunset, atEnd, (t - sunset) / (end - sunset));
        }
    }

    /** Dew point runs straight from one morning's low to the next. */
    private double dewPoint(int t, int day) {
        int before = t < lowTick(sun, day) ? day - 1 : day;
        double from = lowTick(sun, before);
        double to = lowTick(sun, before + 1);
        double share = (t - from) / (to - from);
        return values(before).dewPoint() * (1.0 - share) + values(before + 1).dewPoint() * share;
    }

    private DayValues values(int day) {
        return days.get(Math.max(0, Math.min(days.size() - 1, day)));
    }
}
