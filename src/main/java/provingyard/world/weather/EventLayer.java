package provingyard.world.weather;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;
import provingyard.numeric.RandomStreams;
import provingyard.scenario.WeatherPlan.Event;

/**
 * The author's events, laid over a series in their order. Ramps and lengths not given by the author are own choices,
 * no source.
 */
final class EventLayer {

    /** Most wind of a calm night in m/s at 2 m. */
    static final double CALM = 0.8;

    private static final int HOUR = 60;
    private static final int WIND_EDGE = 10;
    private static final double STORM_CLOUD = 0.95;
    private static final int STORM_CLOUD_EDGE = 30;

    private final MinuteFields fields;
    private final SeasonSun sun;
    private final double dewPointBelowLow;
    private final RandomStreams streams;

    EventLayer(MinuteFields fields, SeasonSun sun, double dewPointBelowLow, RandomStreams streams) {
        this.fields = fields;
        this.sun = sun;
        this.dewPointBelowLow = dewPointBelowLow;
        this.streams = streams;
    }

    /** The same events on evenly drawn days of the season: an event's day is a matter of luck in another season. */
    static List<Event> drawn(List<Event> events, int days, UniformRandomProvider random) {
        List<Event> moved = new ArrayList<>();
        for (Event e : events) {
            int day = 1 + random.nextInt(days);
            moved.add(new Event(e.kind(), day, e.at(), e.lasts(), e.low(), e.depth(), e.speed(), e.from()));
        }
        return moved;
    }

    /** Lays the events over the series; what lies outside the season has no effect. */
    void lay(List<Event> events) {
        for (int i = 0; i < events.size(); i++) {
            Event event = events.get(i);
            switch (event.kind()) {
                case CLEAR_CALM_NIGHT -> clearCalmNight(event);
                case STORM -> storm(event, streams.sequence("weather.event." + i));
                case WIND -> wind(event);
                case DRY -> dry(begin(event), end(event));
            }
        }
    }

    private static int begin(Event event) {
        int minute = event.at() == null ? 0 : event.at().toSecondOfDay() / 60;
        return (event.day() - 1) * SeasonSun.MINUTES + minute;
    }

    /** Without a length, an event lasts to the end of its day. */
    private static int end(Event event) {
        return event.lasts() > 0.0
                ? begin(event) + Math.max(1, (int) Math.round(event.lasts() / 60.0))
                : event.day() * SeasonSun.MINUTES;
    }

    private void dry(int from, int to) {
        for (int t = Math.max(0, from); t < Math.min(fields.ticks(), to); t++) {
            fields.rain[t] = 0.0;
        }
    }

    /** In place of what would have fallen in this time, with cloud from half an hour before to half an hour after. */
    private void storm(Event event, UniformRandomProvider random) {
        int from = begin(event);
        int to = end(event);
        if (from < 0 || event.depth() == null) {
            return;
        }
        dry(from, to);
        RainBursts.fillSpell(fields.rain, from, to - from, event.depth(), random);
        for (int t = Math.max(0, from - STORM_CLOUD_EDGE); t < Math.min(fields.ticks(), to + STORM_CLOUD_EDGE); t++) {
            double share = Math.min(1.0, Math.min(t - from, to - t) / (double) STORM_CLOUD_EDGE + 1.0);
            fields.cloud(t, Math.max(fields.cloud[t], STORM_CLOUD * share));
        }
    }

    /** The mean wind of the time at 2 m becomes the event's, gusts keep their pattern; ten minutes in and out. */
    private void wind(Event event) {
        int from = Math.max(0, begin(event));
        int to = Math.min(fields.ticks(), end(event));
        if (to <= from) {
            return;
        }
        double sum = 0.0;
        for (int t = from; t < to; t++) {
            sum += fields.wind[t];
        }
        double mean = sum / (to - from);
        for (int t = Math.max(0, from - WIND_EDGE); t < Math.min(fields.ticks(), to + WIND_EDGE); t++) {
            double share = ramp(t, from - WIND_EDGE, from) * (1.0 - ramp(t, to - 1, to - 1 + WIND_EDGE));
            if (event.speed() != null) {
                double speed = mean > 0.0 ? fields.wind[t] * event.speed() / mean : event.speed();
                fields.wind[t] += (speed - fields.wind[t]) * share;
            }
            if (event.from() != null) {
                double turn = WindPattern.turn(fields.windFrom[t], event.from());
                fields.windFrom[t] = WindPattern.circle(fields.windFrom[t] + turn * share);
            }
        }
    }

    /**
     * The night before the day's morning: clear from an hour after sunset, calm and dry, the air falling from its
     * value at sunset along the night curve of {@link TemperatureCurve} to the event's low, and back to the day's own
     * course by the time of the high. A first night begins with the season.
     */
    private void clearCalmNight(Event event) {
        int day = event.day() - 1;
        if (day < 0 || day >= sun.days() || event.low() == null) {
            return;
        }
        int dusk = Math.max(0, (int) Math.round(sun.sunsetTick(day - 1)));
        int dawn = TemperatureCurve.lowTick(sun, day);
        int high = Math.min(fields.ticks() - 1, TemperatureCurve.highTick(sun, day));
        cool(dusk, dawn, high, event.low());
        moisten(dusk, dawn, high, event.low() - dewPointBelowLow);
        clearAndCalm(dusk, dawn);
        dry(dusk, dawn + HOUR);
    }

    private void cool(int dusk, int dawn, int high, double low) {
        double start = fields.air[dusk];
        double was = fields.air[dawn];
        for (int t = dusk; t <= dawn; t++) {
            fields.air[t] = TemperatureCurve.night(start, low, (t - dusk) / (double) (dawn - dusk));
        }
        for (int t = dawn + 1; t <= high; t++) {
            fields.air[t] += (low - was) * (1.0 - smooth(t, dawn, high));
        }
    }

    /** The dew point falls with the air where it would lie higher; it never rises by this. */
    private void moisten(int dusk, int dawn, int high, double dewPoint) {
        double fall = Math.min(0.0, dewPoint - fields.dewPoint[dawn]);
        for (int t = dusk; t <= high; t++) {
            fields.dewPoint[t] += fall * (t <= dawn ? ramp(t, dusk, dawn) : 1.0 - smooth(t, dawn, high));
        }
    }

    private void clearAndCalm(int dusk, int dawn) {
        double most = 0.0;
        int end = Math.min(fields.ticks(), dawn + 2 * HOUR);
        for (int t = dusk; t < end; t++) {
            most = Math.max(most, fields.wind[t]);
        }
        double calming = most > CALM ? CALM / most : 1.0;
        // A night that begins with the season has no hour to come in.
        int enter = dusk == 0 ? -HOUR : dusk;
        for (int t = dusk; t < end; t++) {
            double share = ramp(t, enter, enter + HOUR) * (1.0 - ramp(t, dawn + HOUR, end));
            fields.wind[t] *= 1.0 + (calming - 1.0) * share;
            fields.cloud(t, fields.cloud[t] * (1.0 - share));
        }
    }

    /** 0 before {@code from}, 1 after {@code to}, straight between. */
    private static double ramp(double t, double from, double to) {
        return Math.max(0.0, Math.min(1.0, (t - from) / (to - from)));
    }

    /** As the ramp, with level ends. */
    private static double smooth(double t, double from, double to) {
        double x = ramp(t, from, to);
        return x * x * (3.0 - 2.0 * x);
    }
}
