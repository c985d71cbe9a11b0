package provingyard.season;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import provingyard.world.ground.Flows;
import provingyard.world.ground.Frost;
import provingyard.world.ground.Ground;
import provingyard.world.ground.GroundSettings;
import provingyard.world.ground.MinuteForcing;
import provingyard.world.ground.Totals;
import provingyard.world.weather.HourlyWeather;
import provingyard.world.weather.StoredHeat;
import provingyard.world.weather.Weather;
import provingyard.world.weather.WeatherSeries;

/**
 * What all seasons of one site under one weather have in common, whatever their set-ups: the weather and the heat it
 * leaves in walls, the ground at the first minute, and the unwatered twin, kept as it was at each midnight that some
 * season asked for, with the frost of each of its beats and what it came to at each hour. Safe for several threads; who asks first or last does not
 * matter.
 */
final class Course {

    private static final int MINUTES_A_DAY = 1440;
    private static final int HOUR = 60;

    /** What the twin came to at some minute. */
    record Sums(Totals totals, Flows flows) {

        static Sums of(Ground twin) {
            return new Sums(twin.totals(), twin.flows());
        }
    }

    private final WeatherSeries weather;
    private final StoredHeat.Series heat;
    private final List<Ground> midnights = new ArrayList<>();
    private final Map<Long, Frost> frosts = new HashMap<>();
    private final Map<Long, Sums> sums = new HashMap<>();
    private HourlyWeather hours;

    Course(Site site, WeatherSeries weather) {
        this.weather = weather;
        heat = StoredHeat.Series.of(weather);
        GroundSettings settings = new GroundSettings(
                site.scenario().costs().stressAllowed(),
                meanAir(weather),
                GroundSettings.usual(0).supply(),
                site.scenario().season().soilAtStart());
        Ground first = new Ground(site.cells(), settings);
        midnights.add(first);
        sums.put(0L, Sums.of(first));
    }

    /** The weather. */
    WeatherSeries weather() {
        return weather;
    }

    /** The weather by the hour; not to be changed. */
    synchronized HourlyWeather hours() {
        hours = hours == null ? weather.hours() : hours;
        return hours;
    }

    /** The heat of walls after each minute. */
    StoredHeat.Series heat() {
        return heat;
    }

    /** The ground before the first minute; not to be changed. */
    Ground start() {
        return midnight(0);
    }

    /** What the ground sees of a minute's weather. */
    static MinuteForcing forcing(Weather w) {
        return new MinuteForcing(
                w.rain(),
                w.reference(),
                w.air(),
                w.dewPoint(),
                w.wind(),
                w.sun(),
                w.cloud(),
                w.sunAltitude(),
                w.sunBearing());
    }

    /** The unwatered ground after so many days; not to be changed. */
    private synchronized Ground midnight(int day) {
        while (midnights.size() <= day) {
            Ground next = midnights.get(midnights.size() - 1).copy();
            liveDay(next);
            midnights.add(next);
        }
        return midnights.get(day);
    }

    private void liveDay(Ground twin) {
        long until = twin.minute() + MINUTES_A_DAY;
        while (twin.minute() < until) {
            live(twin, twin.minute() + IceLog.BEAT);
            if (twin.frozen()) {
                frosts.put(twin.minute(), twin.frost());
            }
            if (twin.minute() % HOUR == 0) {
                sums.put(twin.minute(), Sums.of(twin));
            }
        }
    }

    /** The twin's ice after so many minutes, at the end of a beat of the ice log. */
    private synchronized Frost frost(long minutes) {
        midnight((int) ((minutes + MINUTES_A_DAY - 1) / MINUTES_A_DAY));
        return frosts.getOrDefault(minutes, Frost.NONE);
    }

    /** What the twin came to after so many whole hours, in minutes. */
    private synchronized Sums sums(long minutes) {
        midnight((int) ((minutes + MINUTES_A_DAY - 1) / MINUTES_A_DAY));
        return sums.get(minutes);
    }

    private void live(Ground twin, long until) {
        while (twin.minute() < until) {
            twin.step(forcing(weather.at(twin.minute())), null);
        }
    }

    private static double meanAir(WeatherSeries weather) {
        double sum = 0;
        int hours = 0;
        for (long t = 0; t < (long) Math.min(weather.days(), 10) * MINUTES_A_DAY; t += 60) {
            sum += weather.at(t).air();
            hours++;
        }
        return sum / hours;
    }

    /** One season's view of the unwatered twin, which lives minutes of its own only when asked within a day. */
    static final class Twin {

        private final Course course;
        private Ground own;

        Twin(Course course) {
            this.course = course;
        }

        /** The same view, which then goes its own way. */
        Twin copy() {
            Twin copy = new Twin(course);
            copy.own = own == null ? null : own.copy();
            return copy;
        }

        /** The twin's ice after so many minutes, at the end of a beat of the ice log. */
        Frost frostAfter(long minutes) {
            return course.frost(minutes);
        }

        /** What the twin came to after so many minutes. */
        Sums sumsAfter(long minutes) {
            return minutes % HOUR == 0 ? course.sums(minutes) : Sums.of(after(minutes));
        }

        /** The twin after so many minutes; not to be changed. */
        Ground after(long minutes) {
            int day = (int) (minutes / MINUTES_A_DAY);
            long midnight = (long) day * MINUTES_A_DAY;
            if (minutes == midnight) {
                return course.midnight(day);
            }
            if (own == null || own.minute() < midnight || own.minute() > minutes) {
                own = course.midnight(day).copy();
            }
            course.live(own, minutes);
            return own;
        }
    }
}
