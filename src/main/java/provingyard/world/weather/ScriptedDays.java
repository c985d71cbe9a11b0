package provingyard.world.weather;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;
import provingyard.scenario.WeatherPlan.Day;
import provingyard.scenario.WeatherPlan.Source;

/** Days written by the author; a shorter list repeats. */
final class ScriptedDays {

    private ScriptedDays() {}

    /** The season's days in the author's order. */
    static List<DayValues> own(Source source, int days, double windFactor) {
        List<Day> script = script(source);
        List<DayValues> values = new ArrayList<>();
        for (int i = 0; i < days; i++) {
            values.add(values(script.get(i % script.size()), source, windFactor));
        }
        return values;
    }

    /** The same days shuffled (Fisher and Yates, in Durstenfeld's form of 1964). */
    static List<DayValues> drawn(Source source, int days, double windFactor, UniformRandomProvider random) {
        List<DayValues> values = own(source, days, windFactor);
        for (int i = values.size() - 1; i > 0; i--) {
            int j = random.nextInt(i + 1);
            DayValues kept = values.get(i);
            values.set(i, values.get(j));
            values.set(j, kept);
        }
        return values;
    }

    private static List<Day> script(Source source) {
        if (source.days() == null || source.days().isEmpty()) {
            throw new WeatherDataException("weather", 0, "the scripted source has no days");
        }
        return source.days();
    }

    private static DayValues values(Day day, Source source, double windFactor) {
        DayValues.RainSpell spell = day.rainAt() == null || !(day.rainLasts() > 0.0)
                ? null
                : new DayValues.RainSpell(
                        day.rainAt().toSecondOfDay() / 60, Math.max(1, (int) Math.round(day.rainLasts() / 60.0)));
        double sunshine = Math.max(0.0, Math.min(1.0, day.sunshine()));
        double dewPoint = day.low() - source.dewPointBelowMinimum();
        return new DayValues(day.high(), day.low(), dewPoint, sunshine, day.wind() * windFactor, day.rain(), spell);
    }
}
