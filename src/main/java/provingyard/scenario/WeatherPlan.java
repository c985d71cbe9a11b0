package provingyard.scenario;

import com.fasterxml.jackson.databind.EnumNamingStrategies.CamelCaseStrategy;
import com.fasterxml.jackson.databind.annotation.EnumNaming;
import java.time.LocalTime;
import java.util.List;
import provingyard.quantity.Dimension;
import provingyard.quantity.In;

/** The season's weather: a source, and events laid over it in their order. */
public record WeatherPlan(Source source, List<Event> events) {

    /** Where the base series comes from. */
    @EnumNaming(CamelCaseStrategy.class)
    public enum SourceKind {
        /** Daily data from a CSV file, disaggregated to the minute. */
        MEASURED,
        /** Hourly data from a CSV file. */
        HOURLY,
        /** The seeded generator with monthly parameters from a file. */
        GENERATED,
        /** Days written by the author; a shorter list repeats. */
        SCRIPTED
    }

    /**
     * The base of the weather.
     *
     * @param kind where it comes from
     * @param file data or parameter file below {@code shared/reference/}; absent for scripted days
     * @param location which location in the file
     * @param dewPointBelowMinimum K by which the dew point lies under the day's minimum where the data lack it
     *     (0 humid, 2 to 3 dry: practice of FAO-56, annex 6)
     * @param windRose relative frequency of wind from N, NE, E, SE, S, SW, W, NW
     * @param windMeasuredAt height of the wind measurement in m
     * @param days scripted days
     */
    public record Source(
            SourceKind kind,
            String file,
            String location,
            @In(Dimension.TEMPERATURE_DIFFERENCE) double dewPointBelowMinimum,
            List<Double> windRose,
            @In(Dimension.LENGTH) double windMeasuredAt,
            List<Day> days) {}

    /**
     * One scripted day.
     *
     * @param rain depth in m
     * @param rainAt when the rain begins
     * @param rainLasts s
     * @param sunshine share of the possible sunshine
     * @param wind the day's mean in m/s
     */
    public record Day(
            @In(Dimension.TEMPERATURE) double high,
            @In(Dimension.TEMPERATURE) double low,
            @In(Dimension.LENGTH) double rain,
            LocalTime rainAt,
            @In(Dimension.DURATION) double rainLasts,
            @In(Dimension.FRACTION) double sunshine,
            @In(Dimension.SPEED) double wind) {}

    /** What an event does. */
    @EnumNaming(CamelCaseStrategy.class)
    public enum EventKind {
        /** The night into the day is clear and calm and falls to {@code low}. */
        CLEAR_CALM_NIGHT,
        /** Rain of {@code depth} from {@code at} within {@code lasts}. */
        STORM,
        /** Mean wind {@code speed} from {@code from} while it lasts. */
        WIND,
        /** No rain falls while it lasts. */
        DRY
    }

    /**
     * An author's event.
     *
     * @param day day of the season, 1 is the first
     * @param at begin
     * @param lasts s
     * @param low °C, clear calm nights only (null elsewhere)
     * @param depth m, storms only (null elsewhere)
     * @param speed m/s, wind only (null elsewhere)
     * @param from bearing in degrees, wind only (null elsewhere)
     */
    public record Event(
            EventKind kind,
            int day,
            LocalTime at,
            @In(Dimension.DURATION) double lasts,
            @In(Dimension.TEMPERATURE) Double low,
            @In(Dimension.LENGTH) Double depth,
            @In(Dimension.SPEED) Double speed,
            @In(Dimension.ANGLE) Double from) {}
}
