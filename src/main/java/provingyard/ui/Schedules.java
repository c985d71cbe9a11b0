package provingyard.ui;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import provingyard.scenario.Plumbing.FittingKind;
import provingyard.scenario.Scenario;
import provingyard.scenario.Schedule;
import provingyard.scenario.Schedule.ZoneRun;
import provingyard.season.Plan;
import provingyard.setup.SetUp;

/** A schedule in the making: each step gives one with one thing changed. */
record Schedules(Schedule schedule) {

    /** Most start times of a schedule, and greatest interval in days, as files have them. */
    static final int MOST_STARTS = 12;

    static final int MOST_DAYS = 31;

    private static final double MINUTE = 60;
    private static final int DAY = 1440;
    private static final int WEEK = 7;

    /**
     * What runs on one watering day.
     *
     * @param runs what the controller would run on it if no sensor held anything, in minutes of the season
     * @param asked minutes that the schedule asks for; more than runs where the allowed hours end first
     */
    record Pass(List<Plan.Run> runs, int asked) {

        /** Minutes of water. */
        int minutes() {
            return runs.stream().mapToInt(r -> (int) (r.to() - r.from())).sum();
        }

        long from() {
            return runs.stream().mapToLong(Plan.Run::from).min().orElse(0);
        }

        long to() {
            return runs.stream().mapToLong(Plan.Run::to).max().orElse(0);
        }
    }

    /** The schedule that a set-up runs on a site, with every zone of the site in it, those that never run at 0 min. */
    static Schedules of(SetUp setUp, Scenario site) {
        Schedule own = setUp.schedule() == null ? site.schedule() : setUp.schedule();
        List<ZoneRun> zones = new ArrayList<>(own.zones());
        site.plumbing().fittings().stream()
                .filter(f -> f.kind() == FittingKind.ZONE_VALVE)
                .filter(f -> zones.stream().noneMatch(z -> z.zone().equals(f.id())))
                .forEach(f -> zones.add(new ZoneRun(f.id(), 0, 0, 0)));
        return new Schedules(own).zones(zones);
    }

    /** The set-up with this schedule; with none of its own where it is the site's. */
    SetUp into(SetUp setUp, Scenario site) {
        boolean same = equals(of(SetUp.CLOCK_ALONE, site));
        return setUp.withSchedule(same ? null : schedule);
    }

    private Schedules zones(List<ZoneRun> zones) {
        return make(zones, schedule.days(), schedule.every(), schedule.starts(), schedule.seasonal());
    }

    private Schedules make(
            List<ZoneRun> zones, List<DayOfWeek> days, int every, List<LocalTime> starts, double seasonal) {
        return new Schedules(new Schedule(zones, days, every, starts, seasonal, schedule.allowed()));
    }

    /** Every so many days, from the season's first day. */
    Schedules every(int days) {
        int within = Math.max(1, Math.min(MOST_DAYS, days));
        return make(schedule.zones(), List.of(), within, schedule.starts(), schedule.seasonal());
    }

    /** On these weekdays, in the week's order; at least one, else nothing changes. */
    Schedules on(List<DayOfWeek> days) {
        List<DayOfWeek> sorted =
                Arrays.stream(DayOfWeek.values()).filter(days::contains).toList();
        return sorted.isEmpty() ? this : make(schedule.zones(), sorted, 0, schedule.starts(), schedule.seasonal());
    }

    /** With a weekday more, or without it where it is one of them. */
    Schedules toggled(DayOfWeek day) {
        List<DayOfWeek> days = new ArrayList<>(schedule.days());
        if (!days.remove(day)) {
            days.add(day);
        }
        return on(days);
    }

    /** With another time of one start. */
    Schedules start(int index, LocalTime time) {
        List<LocalTime> starts = new ArrayList<>(schedule.starts());
        starts.set(index, time);
        return starts(starts);
    }

    /** With one start more, two hours after the last one; the same where there are as many as can be. */
    Schedules oneMoreStart() {
        List<LocalTime> starts = new ArrayList<>(schedule.starts());
        if (starts.size() < MOST_STARTS) {
            starts.add(starts.get(starts.size() - 1).plusHours(2));
        }
        return starts(starts);
    }

    /** Without one start; the last one stays. */
    Schedules withoutStart(int index) {
        List<LocalTime> starts = new ArrayList<>(schedule.starts());
        if (starts.size() > 1) {
            starts.remove(index);
        }
        return starts(starts);
    }

    private Schedules starts(List<LocalTime> starts) {
        return make(schedule.zones(), schedule.days(), schedule.every(), starts, schedule.seasonal());
    }

    Schedules seasonal(double share) {
        return make(schedule.zones(), schedule.days(), schedule.every(), schedule.starts(), share);
    }

    /** A zone's run; one that the schedule does not have never runs. */
    ZoneRun of(String zone) {
        return schedule.zones().stream()
                .filter(z -> z.zone().equals(zone))
                .findFirst()
                .orElse(new ZoneRun(zone, 0, 0, 0));
    }

    /** With another run of a zone. */
    Schedules with(ZoneRun run) {
        return zones(schedule.zones().stream()
                .map(z -> z.zone().equals(run.zone()) ? run : z)
                .toList());
    }

    /** Reads a time of day as people type it: {@code 5}, {@code 5:30}, {@code 05.30}, {@code 0530}. */
    static Optional<LocalTime> time(String typed) {
        String text = typed.strip().replace('.', ':');
        if (text.matches("\\d{3,4}")) {
            text = text.substring(0, text.length() - 2) + ":" + text.substring(text.length() - 2);
        }
        if (!text.matches("\\d{1,2}(:\\d{2})?")) {
            return Optional.empty();
        }
        String[] parts = text.split(":");
        int hour = Integer.parseInt(parts[0]);
        int minute = parts.length > 1 ? Integer.parseInt(parts[1]) : 0;
        return hour < 24 && minute < 60 ? Optional.of(LocalTime.of(hour, minute)) : Optional.empty();
    }

    /** What runs on the first watering day, told by the controller itself. */
    Pass pass(Scenario site) {
        List<Plan.Run> week = Plan.of(site, schedule, (WEEK + 1) * DAY);
        long first = week.stream().mapToLong(Plan.Run::from).min().orElse(0);
        long next = (first / DAY + 1) * DAY + firstMinute();
        List<Plan.Run> runs = week.stream().filter(r -> r.from() < next).toList();
        int starts = (int) schedule.starts().stream().distinct().count();
        return new Pass(runs, asked() * starts);
    }

    private long firstMinute() {
        return schedule.starts().stream()
                .mapToInt(t -> t.toSecondOfDay() / 60)
                .min()
                .orElse(0);
    }

    /** Minutes of one start, each zone cut down to whole minutes as the controller does. */
    private int asked() {
        return schedule.zones().stream()
                .mapToInt(z -> (int) Math.floor(z.runs() * schedule.seasonal() / MINUTE + 1e-9))
                .sum();
    }
}
