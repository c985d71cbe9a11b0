package provingyard.control;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import provingyard.scenario.Schedule;

/**
 * A schedule in whole minutes, zones by index. Runs are scaled by the seasonal percentage and cut down to whole minutes
 * (at most what was programmed); what comes to less than a minute does not run.
 */
final class Program {

    private static final int MINUTE = 60;
    private static final int HOUR = 60;
    private static final int DAY = 24 * HOUR;

    /** A zone's run: its zone index, minutes in all, longest part and least soak in minutes. */
    record Entry(int zone, int minutes, int part, int soak) {}

    private final Schedule schedule;
    private final DayOfWeek first;
    private final List<Entry> entries;
    private final int[] starts;

    /** A schedule for a season that begins at midnight of a day of the week, with what is wrong in it. */
    Program(Schedule schedule, List<String> zones, DayOfWeek first, ControlFaults wrong) {
        this.schedule = schedule;
        this.first = first;
        starts = schedule.starts().stream()
                .mapToInt(Program::minuteOf)
                .flatMap(start -> withExtra(start, wrong))
                .sorted()
                .distinct()
                .toArray();
        entries = new ArrayList<>();
        for (Schedule.ZoneRun run : schedule.zones()) {
            int zone = zones.indexOf(run.zone());
            int minutes = (int) Math.floor(run.runs() * schedule.seasonal() * wrong.seasonal() / MINUTE + 1e-9);
            if (zone >= 0 && minutes > 0) {
                int part = run.cycle() > 0 ? Math.max(1, (int) Math.floor(run.cycle() / MINUTE + 1e-9)) : minutes;
                int soak = (int) Math.ceil(run.soak() / MINUTE - 1e-9);
                entries.add(new Entry(zone, minutes, part, Math.max(0, soak)));
            }
        }
    }

    private static IntStream withExtra(int start, ControlFaults wrong) {
        IntStream extra = wrong.extraStarts().stream().mapToInt(after -> Math.floorMod(start + after, DAY));
        return IntStream.concat(IntStream.of(start), extra);
    }

    /** The zones that run, in order. */
    List<Entry> entries() {
        return entries;
    }

    /** Whether a start time falls on this minute of the season, and its day is a watering day. */
    boolean startsAt(long tick) {
        int minute = (int) (tick % DAY);
        for (int start : starts) {
            if (start == minute) {
                return isWateringDay(tick / DAY);
            }
        }
        return false;
    }

    private boolean isWateringDay(long day) {
        if (schedule.every() > 0) {
            return day % schedule.every() == 0;
        }
        return schedule.days().contains(first.plus(day));
    }

    /**
     * Whether the ordinance lets water run in this minute: the calendar day is among the allowed days (none listed: all),
     * and the time lies in a window (none listed: all day). A window over midnight needs both its days allowed.
     */
    boolean allowedAt(long tick) {
        Schedule.Allowed allowed = schedule.allowed();
        List<DayOfWeek> days = allowed.days();
        if (!days.isEmpty() && !days.contains(first.plus(tick / DAY))) {
            return false;
        }
        if (allowed.windows().isEmpty()) {
            return true;
        }
        int minute = (int) (tick % DAY);
        for (Schedule.Window window : allowed.windows()) {
            if (within(minute, window)) {
                return true;
            }
        }
        return false;
    }

    private static boolean within(int minute, Schedule.Window window) {
        int from = minuteOf(window.from());
        int to = minuteOf(window.to());
        if (from == to) {
            return true;
        }
        return from < to ? minute >= from && minute < to : minute >= from || minute < to;
    }

    private static int minuteOf(LocalTime time) {
        return time.getHour() * HOUR + time.getMinute();
    }
}
