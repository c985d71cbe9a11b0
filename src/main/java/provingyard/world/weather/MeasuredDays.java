package provingyard.world.weather;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.NavigableSet;
import java.util.TreeMap;
import provingyard.scenario.WeatherPlan.Source;

/**
 * Daily records of one location.
 *
 * <p>File: CSV with the columns {@code location,date,precipitation,temp_max,temp_min,wind,weather}: ISO dates, mm
 * (snow as water), °C, m/s at the source's {@code windMeasuredAt}; {@code weather} is not read.
 */
final class MeasuredDays {

    private static final List<String> COLUMNS =
            List.of("location", "date", "precipitation", "temp_max", "temp_min", "wind");
    private static final double COLDEST = -90.0;
    private static final double HOTTEST = 60.0;

    private record Row(double rain, double high, double low, double wind) {}

    private final String file;
    private final NavigableMap<LocalDate, Row> rows = new TreeMap<>();

    private MeasuredDays(String file) {
        this.file = file;
    }

    /** Reads the records of the source's location. */
    static MeasuredDays read(Source source, DataFiles files) {
        CsvTable table = CsvTable.read(files, source.file(), COLUMNS);
        MeasuredDays days = new MeasuredDays(source.file());
        for (int i = 0; i < table.size(); i++) {
            if (table.text(i, "location").equals(source.location())) {
                days.add(table, i);
            }
        }
        if (days.rows.isEmpty()) {
            throw new WeatherDataException(source.file(), 0, "has no rows of location '" + source.location() + "'");
        }
        return days;
    }

    private void add(CsvTable table, int i) {
        Row row = new Row(
                table.number(i, "precipitation", 0.0, 2000.0) / 1000.0,
                table.number(i, "temp_max", COLDEST, HOTTEST),
                table.number(i, "temp_min", COLDEST, HOTTEST),
                table.number(i, "wind", 0.0, 100.0));
        if (row.high < row.low) {
            throw table.problem(i, "temp_max " + row.high + " is below temp_min " + row.low);
        }
        LocalDate date = table.date(i, "date");
        if (rows.put(date, row) != null) {
            throw table.problem(i, date + " occurs twice");
        }
    }

    /** The days of these dates, in their order. */
    List<DayValues> days(List<LocalDate> dates, Source source, double windFactor, double clearSkyShare) {
        List<DayValues> days = new ArrayList<>();
        for (LocalDate date : dates) {
            Row row = rows.get(date);
            days.add(DayValues.fromTemperatures(
                    row.high, row.low, source.dewPointBelowMinimum(), row.wind * windFactor, row.rain, clearSkyShare));
        }
        return days;
    }

    /** The dates on record. */
    NavigableSet<LocalDate> dates() {
        return rows.navigableKeySet();
    }

    String file() {
        return file;
    }
}
