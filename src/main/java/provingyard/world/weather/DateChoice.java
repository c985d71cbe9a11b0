package provingyard.world.weather;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import org.apache.commons.rng.UniformRandomProvider;

/**
 * Which recorded date stands for which day of the season.
 *
 * <p>The season's own weather takes the season's own dates. Another season of the same climate is a moving-block
 * bootstrap (Künsch 1989): blocks of five days, each from a year of the record drawn evenly and shifted by -15 to +15
 * days from the season's calendar (block length and shift: own choice), so that spells within a block stay whole.
 */
final class DateChoice {

    private static final int BLOCK_DAYS = 5;
    private static final int SHIFT_DAYS = 15;
    private static final int TRIES = 1000;

    private DateChoice() {}

    /** The season's own dates; each must be on record. */
    static List<LocalDate> own(LocalDate from, int days, NavigableSet<LocalDate> recorded, String file) {
        List<LocalDate> dates = new ArrayList<>();
        for (int day = 0; day < days; day++) {
            LocalDate date = from.plusDays(day);
            if (!recorded.contains(date)) {
                throw new WeatherDataException(file, 0, "has no complete " + date + "; " + range(recorded));
            }
            dates.add(date);
        }
        return List.copyOf(dates);
    }

    /** Dates of another season of the same climate. */
    static List<LocalDate> drawn(
            LocalDate from, int days, NavigableSet<LocalDate> recorded, UniformRandomProvider random, String file) {
        if (recorded.isEmpty()) {
            throw new WeatherDataException(file, 0, range(recorded));
        }
        List<LocalDate> dates = new ArrayList<>();
        while (dates.size() < days) {
            int length = Math.min(BLOCK_DAYS, days - dates.size());
            LocalDate start = blockStart(from.plusDays(dates.size()), length, recorded, random, file);
            for (int i = 0; i < length; i++) {
                dates.add(start.plusDays(i));
            }
        }
        return List.copyOf(dates);
    }

    private static LocalDate blockStart(
            LocalDate date, int length, NavigableSet<LocalDate> recorded, UniformRandomProvider random, String file) {
        int firstYear = recorded.first().getYear();
        int years = recorded.last().getYear() - firstYear + 1;
        for (int i = 0; i < TRIES; i++) {
            int shift = random.nextInt(2 * SHIFT_DAYS + 1) - SHIFT_DAYS;
            LocalDate start = date.withYear(firstYear + random.nextInt(years)).plusDays(shift);
            if (isComplete(start, length, recorded)) {
                return start;
            }
        }
        throw new WeatherDataException(
                file, 0, "has no " + length + " days in a row within 15 days of any " + date + "; " + range(recorded));
    }

    private static boolean isComplete(LocalDate start, int length, NavigableSet<LocalDate> recorded) {
        for (int i = 0; i < length; i++) {
            if (!recorded.contains(start.plusDays(i))) {
                return false;
            }
        }
        return true;
    }

    private static String range(NavigableSet<LocalDate> recorded) {
        return recorded.isEmpty()
                ? "no day is on record"
                : "on record are days from " + recorded.first() + " to " + recorded.last();
    }
}
