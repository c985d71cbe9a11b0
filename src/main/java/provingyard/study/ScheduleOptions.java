package provingyard.study;

import java.time.Duration;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import provingyard.scenario.Schedule;
import provingyard.scenario.Schedule.ZoneRun;
import provingyard.setup.SetUp;

/** What can be chosen about the schedule where the site leaves it open; what the ordinance allows stays. */
record ScheduleOptions(Schedule site) {

    private static final int[] EVERY = {1, 2, 3, 4};

    /** Parts that a run is cut into, and s of soak between them. */
    private static final int[] PARTS = {1, 2, 3};

    private static final double SOAK = 1800;
    private static final double LEAST_SEASONAL = 0.3;
    private static final double MOST_SEASONAL = 1.6;

    /** s; a zone's run goes from nothing to so many times what the site's schedule gives it. */
    private static final double STEP = 60;

    private static final double MOST_RUN = 2;

    /** Hours between starts that are looked at. */
    private static final int HOURS = 2;

    /** A set-up's schedule with one thing switched: its days, its start, cycle and soak. */
    List<SetUp> switches(SetUp setUp) {
        Schedule now = of(setUp);
        List<Schedule> all = new ArrayList<>(List.of(site));
        for (int every : EVERY) {
            all.add(new Schedule(now.zones(), List.of(), every, now.starts(), now.seasonal(), now.allowed()));
        }
        for (LocalTime start : starts()) {
            all.add(new Schedule(now.zones(), now.days(), now.every(), List.of(start), now.seasonal(), now.allowed()));
        }
        for (int parts : PARTS) {
            all.add(zones(now, zone -> cut(zone, parts)));
        }
        return all.stream().map(s -> with(setUp, s)).toList();
    }

    /** The seasonal percentage and each zone's run. */
    List<Dial<SetUp>> dials(SetUp setUp) {
        Schedule now = of(setUp);
        List<Dial<SetUp>> dials = new ArrayList<>();
        dials.add(new Dial<>(LEAST_SEASONAL, MOST_SEASONAL, 0.05, now.seasonal(), v -> with(setUp, seasonal(now, v))));
        for (int i = 0; i < now.zones().size(); i++) {
            ZoneRun zone = now.zones().get(i);
            double most = MOST_RUN
                    * site.zones().stream()
                            .filter(z -> z.zone().equals(zone.zone()))
                            .mapToDouble(ZoneRun::runs)
                            .max()
                            .orElse(zone.runs());
            dials.add(new Dial<>(
                    0, most, STEP, zone.runs(), v -> with(setUp, zones(now, z -> z == zone ? runs(z, v) : z))));
        }
        return dials;
    }

    private Schedule of(SetUp setUp) {
        return setUp.schedule() == null ? site : setUp.schedule();
    }

    /** The site's own schedule is written as none. */
    private SetUp with(SetUp setUp, Schedule schedule) {
        return setUp.withSchedule(schedule.equals(site) ? null : schedule);
    }

    private static Schedule seasonal(Schedule s, double share) {
        return new Schedule(s.zones(), s.days(), s.every(), s.starts(), share, s.allowed());
    }

    private static Schedule zones(Schedule s, UnaryOperator<ZoneRun> each) {
        List<ZoneRun> zones = s.zones().stream().map(each).toList();
        return new Schedule(zones, s.days(), s.every(), s.starts(), s.seasonal(), s.allowed());
    }

    private static ZoneRun runs(ZoneRun zone, double runs) {
        return new ZoneRun(zone.zone(), runs, zone.cycle(), zone.soak());
    }

    private static ZoneRun cut(ZoneRun zone, int parts) {
        double cycle = parts == 1 ? 0 : Math.ceil(zone.runs() / parts / STEP) * STEP;
        return new ZoneRun(zone.zone(), zone.runs(), cycle, parts == 1 ? 0 : SOAK);
    }

    /** Every other hour within what the ordinance allows. */
    private List<LocalTime> starts() {
        List<LocalTime> starts = new ArrayList<>();
        for (Schedule.Window window : site.allowed().windows()) {
            long minutes = Duration.between(window.from(), window.to()).toMinutes();
            long open = minutes <= 0 ? minutes + Duration.ofDays(1).toMinutes() : minutes;
            for (long hour = 0; 60 * hour < open; hour += HOURS) {
                starts.add(window.from().plusHours(hour));
            }
        }
        return starts;
    }
}
