package provingyard.world.weather;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import provingyard.numeric.RandomStreams;
import provingyard.scenario.Place;
import provingyard.scenario.WeatherPlan;
import provingyard.scenario.WeatherPlan.Event;
import provingyard.scenario.WeatherPlan.Source;
import provingyard.scenario.WeatherPlan.SourceKind;

/**
 * The open-field weather of a season by the minute; immutable. Tick 0 is 00:00 standard time of the first day.
 *
 * <p>Wind of a file without {@code windMeasuredAt} is taken as measured at 10 m (airport practice), of scripted days
 * as at 2 m; both are brought to 2 m by FAO-56 eq. 47. Seeded streams: {@code weather.rain}, {@code
 * weather.temperature}, {@code weather.wind} (generator), {@code weather.bursts}, {@code weather.gusts}, {@code
 * weather.direction}, {@code weather.event.<n>}, {@code weather.draw} and {@code weather.draw.events} (other seasons).
 */
public final class WeatherSeries {

    private static final double FILE_WIND_HEIGHT = 10.0;
    private static final int MINUTES_OF_HOUR = 60;
    private static final double WATT_HOUR_IN_MJ = 0.0036;

    private final LocalDate from;
    private final int days;
    private final SeasonSun sun;
    private final double[] reference;
    private final Weather[] minutes;

    private WeatherSeries(LocalDate from, MinuteFields fields, SeasonSun sun, double elevation) {
        this.from = from;
        this.days = sun.days();
        this.sun = sun;
        reference = reference(fields, elevation);
        minutes = new Weather[fields.ticks()];
        for (int t = 0; t < minutes.length; t++) {
            minutes[t] = minute(fields, t);
        }
    }

    private Weather minute(MinuteFields fields, int t) {
        return new Weather(
                fields.air[t],
                fields.dewPoint[t],
                fields.wind[t],
                fields.windFrom[t],
                fields.sun[t],
                fields.cloud[t],
                fields.rain[t],
                reference[t / MINUTES_OF_HOUR],
                sun.altitude()[t],
                sun.bearing()[t]);
    }

    /**
     * The season's own weather.
     *
     * @param plan source and events
     * @param place latitude, longitude, elevation and standard time
     * @param from the first day
     * @param days number of days, at least 1
     * @param streams the season's random streams
     * @param files opens the data files below the shared reference folder
     * @throws WeatherDataException if a data file is missing, broken, or does not hold the season
     */
    public static WeatherSeries of(
            WeatherPlan plan, Place place, LocalDate from, int days, RandomStreams streams, DataFiles files) {
        return new Maker(plan, place, from, days, streams, files, false).make();
    }

    /**
     * Another season of the same climate, for studies. Measured and hourly sources: blocks of five recorded days of
     * any year, within 15 days of the calendar; generated: the generator on these streams; scripted: the same days
     * shuffled. Events keep their kind and size and fall on evenly drawn days. Bursts, gusts and directions are new.
     *
     * @param streamsOfDraw random streams of this draw, from a seed of its own
     */
    public static WeatherSeries drawn(
            WeatherPlan plan, Place place, LocalDate from, int days, RandomStreams streamsOfDraw, DataFiles files) {
        return new Maker(plan, place, from, days, streamsOfDraw, files, true).make();
    }

    private record Maker(
            WeatherPlan plan,
            Place place,
            LocalDate from,
            int days,
            RandomStreams streams,
            DataFiles files,
            boolean other) {

        WeatherSeries make() {
            if (days < 1) {
                throw new IllegalArgumentException("a season has at least one day, not " + days);
            }
            SeasonSun sun = new SeasonSun(place, from, days);
            MinuteFields fields = new MinuteFields(days * SeasonSun.MINUTES);
            if (plan.source().kind() == SourceKind.HOURLY) {
                fillFromHours(fields, sun);
            } else {
                fillFromDays(fields, sun);
            }
            new EventLayer(fields, sun, plan.source().dewPointBelowMinimum(), streams).lay(events());
            hold(fields);
            return new WeatherSeries(from, fields, sun, place.elevation());
        }

        private void fillFromHours(MinuteFields fields, SeasonSun sun) {
            HourlyRecords records = HourlyRecords.read(plan.source(), files);
            List<LocalDate> dates = other
                    ? DateChoice.drawn(from, days, records.dates(), streams.sequence("weather.draw"), records.file())
                    : DateChoice.own(from, days, records.dates(), records.file());
            records.fill(fields, dates, windFactor(), sun, streams.sequence("weather.bursts"));
        }

        private void fillFromDays(MinuteFields fields, SeasonSun sun) {
            List<DayValues> values = values(sun.clearSkyShare());
            new TemperatureCurve(values, sun).fill(fields);
            DailyRain.fill(fields.rain, values, streams.sequence("weather.bursts"));
            CloudCurve.fill(fields, values, sun);
            WindPattern wind = new WindPattern(streams);
            wind.fillSpeed(fields.wind, values, from, DiurnalShape.read(files));
            wind.fillDirection(fields.windFrom, plan.source().windRose());
        }

        private List<DayValues> values(double clearSkyShare) {
            Source source = plan.source();
            return switch (source.kind()) {
                case MEASURED -> measured(MeasuredDays.read(source, files), clearSkyShare);
                case GENERATED ->
                    WeatherGenerator.read(source, files).days(from, days, windFactor(), clearSkyShare, streams);
                case SCRIPTED ->
                    other
                            ? ScriptedDays.drawn(source, days, windFactor(), streams.sequence("weather.draw"))
                            : ScriptedDays.own(source, days, windFactor());
                case HOURLY -> throw new IllegalStateException("hours are no days");
            };
        }

        private List<DayValues> measured(MeasuredDays record, double clearSkyShare) {
            List<LocalDate> dates = other
                    ? DateChoice.drawn(from, days, record.dates(), streams.sequence("weather.draw"), record.file())
                    : DateChoice.own(from, days, record.dates(), record.file());
            return record.days(dates, plan.source(), windFactor(), clearSkyShare);
        }

        private List<Event> events() {
            List<Event> events = plan.events() == null ? List.of() : plan.events();
            return other ? EventLayer.drawn(events, days, streams.sequence("weather.draw.events")) : events;
        }

        private double windFactor() {
            double height = plan.source().windMeasuredAt();
            if (height > 0.0) {
                return Psychrometrics.windFactor(height);
            }
            return plan.source().kind() == SourceKind.SCRIPTED ? 1.0 : Psychrometrics.windFactor(FILE_WIND_HEIGHT);
        }

        private static void hold(MinuteFields fields) {
            for (int t = 0; t < fields.ticks(); t++) {
                fields.dewPoint[t] = Math.min(fields.air[t], fields.dewPoint[t]);
                fields.cloud[t] = Math.max(0.0, Math.min(1.0, fields.cloud[t]));
            }
        }
    }

    /** Reference evapotranspiration by the hour in m per minute: FAO-56 hourly from the hour's means, at least 0. */
    private static double[] reference(MinuteFields fields, double elevation) {
        double gamma = Psychrometrics.psychrometricConstant(Psychrometrics.atmosphericPressure(elevation));
        double[] reference = new double[fields.ticks() / MINUTES_OF_HOUR];
        for (int hour = 0; hour < reference.length; hour++) {
            double air = mean(fields.air, hour);
            double ea = Psychrometrics.vapourPressureOfDewPoint(mean(fields.dewPoint, hour));
            double rs = mean(fields.sun, hour) * WATT_HOUR_IN_MJ;
            double share = Radiation.shareUnderCloud(mean(fields.cloud, hour));
            double net = Radiation.net(
                    Radiation.netShortWave(rs, Radiation.REFERENCE_ALBEDO),
                    Radiation.netLongWaveHourly(air, ea, share));
            double mm = ReferenceEvapotranspiration.hourly(air, ea, mean(fields.wind, hour), net, gamma);
            reference[hour] = Math.max(0.0, mm) / 1000.0 / MINUTES_OF_HOUR;
        }
        return reference;
    }

    private static double mean(double[] values, int hour) {
        return sum(values, hour) / MINUTES_OF_HOUR;
    }

    private static double sum(double[] values, int hour) {
        double sum = 0.0;
        for (int t = hour * MINUTES_OF_HOUR; t < (hour + 1) * MINUTES_OF_HOUR; t++) {
            sum += values[t];
        }
        return sum;
    }

    private static double lowest(double[] values, int hour) {
        double lowest = Double.POSITIVE_INFINITY;
        for (int t = hour * MINUTES_OF_HOUR; t < (hour + 1) * MINUTES_OF_HOUR; t++) {
            lowest = Math.min(lowest, values[t]);
        }
        return lowest;
    }

    /** The first day. */
    public LocalDate from() {
        return from;
    }

    /** Number of days. */
    public int days() {
        return days;
    }

    /** Number of ticks, 1440 a day; ticks run from 0 to one less. */
    public int ticks() {
        return minutes.length;
    }

    /** Everything of one minute. */
    public Weather at(long tick) {
        return minutes[(int) tick];
    }

    /** Air temperature in °C at 2 m. */
    public double air(long tick) {
        return at(tick).air();
    }

    /** Dew point in °C, never over the air temperature. */
    public double dewPoint(long tick) {
        return at(tick).dewPoint();
    }

    /** Wind in m/s at 2 m. */
    public double wind(long tick) {
        return at(tick).wind();
    }

    /** Bearing in degrees from which it blows. */
    public double windFrom(long tick) {
        return at(tick).windFrom();
    }

    /** Global radiation on the flat in W/m2. */
    public double sun(long tick) {
        return at(tick).sun();
    }

    /** Cloud cover, 0 clear to 1 overcast. */
    public double cloud(long tick) {
        return at(tick).cloud();
    }

    /** Rain of the minute in m. */
    public double rain(long tick) {
        return at(tick).rain();
    }

    /** Reference evapotranspiration of the minute in m. */
    public double reference(long tick) {
        return at(tick).reference();
    }

    /** The sun's height in degrees over the flat horizon, negative by night. */
    public double sunAltitude(long tick) {
        return at(tick).sunAltitude();
    }

    /** Bearing of the sun in degrees. */
    public double sunBearing(long tick) {
        return at(tick).sunBearing();
    }

    /** Clear-sky global radiation on the flat in W/m2 (FAO-56 eq. 37 on the minute's extraterrestrial radiation). */
    public double clearSky(long tick) {
        return sun.clearSky()[(int) tick];
    }

    /** Tick of sunrise on a day of the season, 0 is the first. */
    public long sunrise(int day) {
        return Math.round(sun.sunriseTick(day));
    }

    /** Tick of sunset on a day of the season, 0 is the first. */
    public long sunset(int day) {
        return Math.round(sun.sunsetTick(day));
    }

    /** The series by the hour, for plots. */
    public HourlyWeather hours() {
        int hours = reference.length;
        HourlyWeather plot = new HourlyWeather(
                new double[hours],
                new double[hours],
                new double[hours],
                new double[hours],
                new double[hours],
                new double[hours],
                new double[hours],
                new double[hours]);
        double[] air = all(Weather::air);
        fill(plot.air(), air, WeatherSeries::mean);
        fill(plot.lowest(), air, WeatherSeries::lowest);
        fill(plot.dewPoint(), all(Weather::dewPoint), WeatherSeries::mean);
        fill(plot.wind(), all(Weather::wind), WeatherSeries::mean);
        fill(plot.sun(), all(Weather::sun), WeatherSeries::mean);
        fill(plot.cloud(), all(Weather::cloud), WeatherSeries::mean);
        fill(plot.rain(), all(Weather::rain), WeatherSeries::sum);
        Arrays.setAll(plot.reference(), hour -> reference[hour] * MINUTES_OF_HOUR);
        return plot;
    }

    private double[] all(ToDoubleFunction<Weather> quantity) {
        return Arrays.stream(minutes).mapToDouble(quantity).toArray();
    }

    /** What an hour comes to in the values of all minutes. */
    private interface OfHour {
        double of(double[] minutes, int hour);
    }

    private static void fill(double[] hours, double[] minutes, OfHour ofHour) {
        Arrays.setAll(hours, hour -> ofHour.of(minutes, hour));
    }
}
