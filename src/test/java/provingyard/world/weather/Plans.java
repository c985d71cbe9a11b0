package provingyard.world.weather;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import provingyard.numeric.RandomStreams;
import provingyard.scenario.Place;
import provingyard.scenario.WeatherPlan;
import provingyard.scenario.WeatherPlan.Day;
import provingyard.scenario.WeatherPlan.Event;
import provingyard.scenario.WeatherPlan.EventKind;
import provingyard.scenario.WeatherPlan.Source;
import provingyard.scenario.WeatherPlan.SourceKind;

/** Weather plans and places for the tests. */
final class Plans {

    static final String NOAA = "weather/noaa-daily-seattle-newyork-2012-2015.csv";
    static final String GENERATOR = "weather-soil/generator-parameters.json";
    static final Place EAST = new Place(null, 40.6, -74.0, 9.0, -5.0 * 3600.0);
    static final Place WEST = new Place(null, 47.45, -122.3, 130.0, -8.0 * 3600.0);
    static final LocalDate NOVEMBER = LocalDate.of(2013, 11, 1);

    private Plans() {}

    static WeatherPlan measured(String location, Event... events) {
        return new WeatherPlan(new Source(SourceKind.MEASURED, NOAA, location, 1.0, null, 10.0, null), List.of(events));
    }

    static WeatherPlan generated(String location, Event... events) {
        return new WeatherPlan(
                new Source(SourceKind.GENERATED, GENERATOR, location, 1.0, null, 10.0, null), List.of(events));
    }

    static WeatherPlan hourly(String file) {
        return new WeatherPlan(new Source(SourceKind.HOURLY, file, null, 1.0, null, 10.0, null), List.of());
    }

    static WeatherPlan scripted(Day... days) {
        return new WeatherPlan(new Source(SourceKind.SCRIPTED, null, null, 2.0, null, 2.0, List.of(days)), null);
    }

    static Event clearCalmNight(int day, double low) {
        return new Event(EventKind.CLEAR_CALM_NIGHT, day, null, 0.0, low, null, null, null);
    }

    static Event storm(int day, String at, double depth, double lasts) {
        return new Event(EventKind.STORM, day, LocalTime.parse(at), lasts, null, depth, null, null);
    }

    static Event wind(int day, String at, double speed, double from, double lasts) {
        return new Event(EventKind.WIND, day, LocalTime.parse(at), lasts, null, null, speed, from);
    }

    static Event dry(int day, double lasts) {
        return new Event(EventKind.DRY, day, null, lasts, null, null, null, null);
    }

    static WeatherSeries november(long seed, Event... events) {
        return WeatherSeries.of(
                measured("New York", events), EAST, NOVEMBER, 30, new RandomStreams(seed), Reference.FILES);
    }

    /** Data files held in memory, the others as always. */
    static DataFiles with(Map<String, String> texts) {
        return path -> texts.containsKey(path)
                ? new java.io.ByteArrayInputStream(texts.get(path).getBytes(java.nio.charset.StandardCharsets.UTF_8))
                : Reference.FILES.open(path);
    }

    static double sum(java.util.function.IntToDoubleFunction value, int from, int to) {
        double sum = 0.0;
        for (int t = from; t < to; t++) {
            sum += value.applyAsDouble(t);
        }
        return sum;
    }

    static double least(WeatherSeries series, int from, int to) {
        return IntStream.range(from, to).mapToDouble(series::air).min().orElseThrow();
    }
}
