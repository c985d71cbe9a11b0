package provingyard.control;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import provingyard.scenario.Schedule;

/**
 * A schedule in whole minutes, zones by index. Runs are scaled by the seasonal percentage and cut down to whole minutes
 * (at most what was programmed); what comes to less than a minute does not run.
 */
final class Program {

    private static final int MINUTE = 60;
    private static final int HOUR = 60;

    /** A zone's run: its zone index, minutes in all, longest part and least soak in minutes. */
    record Entry(int zone, int minutes, int part, int soak) {}

    private final Schedule schedule;
    private final LocalDate first;
    private final List<Entry> entries;
    private final int[] starts;

    Program(Schedule schedule, List<String> zones, LocalDate first) {
        this.schedule = schedule;
        this.first = first;
        starts = schedule.starts().stream()
                .mapToInt(t -> t.getHour() * HOUR + t.getMinute())
                .sorted()
                .distinct()
                .toArray();
        entries = new ArrayList<>();
        for (Schedule.ZoneRun run : schedule.zones()) {
            int zone = zones.indexOf(run.zone());
            int minutes = (int) Math.floor(run.runs() * schedule.seasonal() / MINUTE + 1e-9);
            if (zone >= 0 && minutes > 0) {
                int part = run.cycle() > 0 ? Math.max(1, (int) Math.floor(run.cycle() / MINUTE + 1e-9)) : minutes;
                int soak = (int) Math.ceil(run.soak() / MINUTE - 1e-9);
                entries.add(new Entry(zone, minutes, part, Math.max(0, soak)));
            }
        }
    }

    /** The zones that run, in order. */
    List<Entry> entries() {
        return entries;
    }

    /** Whether a start time falls on this minute of a watering day. */
    boolean startsAt(LocalDateTime clock) {
        int minute = clock.getHour() * HOUR + clock.getMinute();
        for (int start : starts) {
            if (start == minute) {
                return isWateringDay(clock.toLocalDate());
            }
        }
        return false;
    }

    private boolean isWateringDay(LocalDate day) {
        if (schedule.every() > 0) {
            return ChronoUnit.DAYS.between(first, day) % schedule.every() == 0;
        }
        return schedule.days().contains(day.getDayOfWeek());
    }

    /**
     * Whether the ordinance lets water run in this minute: the calendar day is among the allowed days (none listed: all),
     * and the time lies in a window (none listed: all day). A window over midnight needs both its days allowed.
     */
    boolean allowedAt(LocalDateTime clock) {
        Schedule.Allowed allowed = schedule.allowed();
        List<DayOfWeek> days = allowed.days();
        if (!days.isEmpty() && !days.contains(clock.getDayOfWeek())) {
            return false;
        }
        if (allowed.windows().isEmpty()) {
            return true;
        }
        int minute = clock.getHour() * HOUR + clock.getMinute();
        for (Schedule.Window window : allowed.windows()) {
            if (within(minute, window)) {
                return true;
            }
        }
        return false;
    }

    private static boolean within(int minute, Schedule.Window window) {
        int from = window.from().getHour() * HOUR + window.from().getMinute();
        int to = window.to().getHour() * HOUR + window.to().getMinute();
        if (from == to) {
            return true;
        }
        return from < to ? minute >= from && minute < to : minute >= from || minute < to;
    }
}
