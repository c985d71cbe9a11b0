package provingyard.world.weather;

import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;

/** Lets each day's rain fall: in its spell where the author wrote one, else in seeded bursts within the day. */
final class DailyRain {

    private DailyRain() {}

    static void fill(double[] rain, List<DayValues> days, UniformRandomProvider random) {
        for (int day = 0; day < days.size(); day++) {
            DayValues values = days.get(day);
            int start = day * SeasonSun.MINUTES;
            if (values.rain() <= 0.0) {
                continue;
            }
            if (values.spell() == null) {
                RainBursts.fillDay(rain, start, values.rain(), random);
            } else {
                DayValues.RainSpell spell = values.spell();
                RainBursts.fillSpell(rain, start + spell.start(), spell.minutes(), values.rain(), random);
            }
        }
    }
}
