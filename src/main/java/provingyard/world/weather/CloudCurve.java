package provingyard.world.weather;

import java.util.List;

/**
 * Cloud and global radiation by the minute from the days' sunshine: the day's cloud from sunrise to sunset, straight
 * from one day's to the next over the night, at least 0.9 in an hour with rain (own rules, no source); global
 * radiation is the clear sky's times the share that comes through.
 */
final class CloudCurve {

    private static final double RAIN_CLOUD = 0.9;

    private CloudCurve() {}

    /** Fills cloud and sun; rain must be there already. */
    static void fill(MinuteFields fields, List<DayValues> days, SeasonSun sun) {
        boolean wet = false;
        for (int t = 0; t < fields.ticks(); t++) {
            wet = t % 60 == 0 ? rainInHour(fields.rain, t) : wet;
            double cloud = cloud(t, days, sun);
            fields.cloud[t] = wet ? Math.max(RAIN_CLOUD, cloud) : cloud;
            fields.sun[t] = sun.clearSky()[t] * Radiation.shareUnderCloud(fields.cloud[t]);
        }
    }

    private static double cloud(int t, List<DayValues> days, SeasonSun sun) {
        int day = t / SeasonSun.MINUTES;
        if (t < sun.sunriseTick(day)) {
            return night(t, day - 1, days, sun);
        }
        return t > sun.sunsetTick(day) ? night(t, day, days, sun) : cloudOf(days, day);
    }

    private static double night(int t, int evening, List<DayValues> days, SeasonSun sun) {
        double from = sun.sunsetTick(evening);
        double to = sun.sunriseTick(evening + 1);
        double share = (t - from) / (to - from);
        return cloudOf(days, evening) * (1.0 - share) + cloudOf(days, evening + 1) * share;
    }

    private static double cloudOf(List<DayValues> days, int day) {
        return 1.0 - days.get(Math.max(0, Math.min(days.size() - 1, day))).sunshine();
    }

    private static boolean rainInHour(double[] rain, int start) {
        for (int i = start; i < start + 60; i++) {
            if (rain[i] > 0.0) {
                return true;
            }
        }
        return false;
    }
}
