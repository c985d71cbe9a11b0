package provingyard.world.weather;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.NavigableMap;
import java.util.NavigableSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.commons.rng.UniformRandomProvider;
import provingyard.scenario.WeatherPlan.Source;

/**
 * Hourly records of one place.
 *
 * <p>File: CSV with the columns {@code time,air_C,dew_point_C,wind_m_s,wind_from_deg,sun_W_m2,rain_mm}; {@code time} is
 * the begin of the hour in standard time ({@code 2013-11-05T06:00}), the others are the hour's means, wind at the
 * source's {@code windMeasuredAt}, and rain its depth. A day counts only with all its 24 hours.
 *
 * <p>To the minute: straight lines between the middles of the hours; sun follows the clear sky within its hour, so
 * that the hour's mean is kept; rain falls as one seeded burst within its hour. Cloud is read from sun over clear sky
 * where the sun stands over 0.3 rad (ASCE-EWRI 2005, hourly Rs/Rso), and runs straight in between.
 */
final class HourlyRecords {

    private static final List<String> COLUMNS =
            List.of("time", "air_C", "dew_point_C", "wind_m_s", "wind_from_deg", "sun_W_m2", "rain_mm");
    private static final int HOURS = 24;
    private static final double HIGH_ENOUGH = Math.toDegrees(0.3);
    private static final double UNKNOWN_CLOUD = 0.5;

    private record Row(double air, double dewPoint, double wind, double windFrom, double sun, double rain) {}

    private final String file;
    private final NavigableMap<LocalDate, Row[]> days = new TreeMap<>();

    private HourlyRecords(String file) {
        this.file = file;
    }

    /** Reads the file. */
    static HourlyRecords read(Source source, DataFiles files) {
        CsvTable table = CsvTable.read(files, source.file(), COLUMNS);
        HourlyRecords records = new HourlyRecords(source.file());
        for (int i = 0; i < table.size(); i++) {
            records.add(table, i);
        }
        return records;
    }

    private void add(CsvTable table, int i) {
        LocalDateTime time = table.time(i, "time");
        if (time.getMinute() != 0 || time.getSecond() != 0) {
            throw table.problem(i, "time is " + time + "; a full hour is expected");
        }
        Row row = new Row(
                table.number(i, "air_C", -90.0, 60.0),
                table.number(i, "dew_point_C", -100.0, 40.0),
                table.number(i, "wind_m_s", 0.0, 100.0),
                table.number(i, "wind_from_deg", 0.0, 360.0),
                table.number(i, "sun_W_m2", 0.0, 1500.0),
                table.number(i, "rain_mm", 0.0, 500.0) / 1000.0);
        Row[] day = days.computeIfAbsent(time.toLocalDate(), date -> new Row[HOURS]);
        if (day[time.getHour()] != null) {
            throw table.problem(i, time + " occurs twice");
        }
        day[time.getHour()] = row;
    }

    /** The dates with all their hours. */
    NavigableSet<LocalDate> dates() {
        NavigableSet<LocalDate> complete = new TreeSet<>();
        days.forEach((date, rows) -> {
            if (isComplete(rows)) {
                complete.add(date);
            }
        });
        return complete;
    }

    private static boolean isComplete(Row[] rows) {
        for (Row row : rows) {
            if (row == null) {
                return false;
            }
        }
        return true;
    }

    String file() {
        return file;
    }

    /** Fills all fields from the hours of these dates. */
    void fill(
            MinuteFields fields,
            List<LocalDate> dates,
            double windFactor,
            SeasonSun sun,
            UniformRandomProvider random) {
        Row[] hours = new Row[dates.size() * HOURS];
        for (int day = 0; day < dates.size(); day++) {
            System.arraycopy(days.get(dates.get(day)), 0, hours, day * HOURS, HOURS);
        }
        double[] cloud = clouds(hours, sun);
        for (int t = 0; t < fields.ticks(); t++) {
            double place = Math.max(0.0, Math.min(hours.length - 1.0, (t + 0.5) / 60.0 - 0.5));
            int before = (int) place;
            int after = Math.min(hours.length - 1, before + 1);
            fill(fields, t, hours[before], hours[after], place - before, windFactor);
            fields.cloud[t] = mix(cloud[before], cloud[after], place - before);
        }
        for (int hour = 0; hour < hours.length; hour++) {
            RainBursts.fillSpell(fields.rain, hour * 60, 60, hours[hour].rain, random);
            spreadSun(fields.sun, hour, hours[hour].sun, sun.clearSky());
        }
    }

    private static void fill(MinuteFields fields, int t, Row before, Row after, double share, double windFactor) {
        fields.air[t] = mix(before.air, after.air, share);
        fields.dewPoint[t] = Math.min(fields.air[t], mix(before.dewPoint, after.dewPoint, share));
        fields.wind[t] = mix(before.wind, after.wind, share) * windFactor;
        double turn = WindPattern.turn(before.windFrom, after.windFrom);
        fields.windFrom[t] = WindPattern.circle(before.windFrom + turn * share);
    }

    private static double mix(double before, double after, double share) {
        return before * (1.0 - share) + after * share;
    }

    private static void spreadSun(double[] sun, int hour, double mean, double[] clearSky) {
        double clear = hourMean(clearSky, hour);
        for (int t = hour * 60; t < hour * 60 + 60; t++) {
            sun[t] = clear > 0.0 ? mean * clearSky[t] / clear : 0.0;
        }
    }

    private static double hourMean(double[] values, int hour) {
        double sum = 0.0;
        for (int t = hour * 60; t < hour * 60 + 60; t++) {
            sum += values[t];
        }
        return sum / 60.0;
    }

    private static double[] clouds(Row[] hours, SeasonSun sun) {
        double[] cloud = new double[hours.length];
        int known = -1;
        for (int hour = 0; hour < hours.length; hour++) {
            if (sun.altitude()[hour * 60 + 30] < HIGH_ENOUGH) {
                continue;
            }
            cloud[hour] = Radiation.cloudOfShare(hours[hour].sun / hourMean(sun.clearSky(), hour));
            for (int i = known + 1; i < hour; i++) {
                double share = known < 0 ? 1.0 : (i - known) / (double) (hour - known);
                cloud[i] = mix(known < 0 ? 0.0 : cloud[known], cloud[hour], share);
            }
            known = hour;
        }
        for (int i = known + 1; i < hours.length; i++) {
            cloud[i] = known < 0 ? UNKNOWN_CLOUD : cloud[known];
        }
        return cloud;
    }
}
