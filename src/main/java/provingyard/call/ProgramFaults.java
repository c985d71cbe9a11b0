package provingyard.call;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import provingyard.scenario.FaultPlan;
import provingyard.scenario.Schedule;

/** What faults of the program make of a schedule. */
final class ProgramFaults {

    private static final double MINUTES = 60;

    private ProgramFaults() {}

    /** The schedule that the site should have. */
    static Schedule wanted(Ground ground) {
        Schedule own = ground.installed().schedule();
        return own == null ? ground.scenario().schedule() : own;
    }

    /** The schedule that is in the controller where these faults act. */
    static Schedule in(Schedule wanted, List<FaultPlan> acting) {
        Schedule schedule = wanted;
        for (FaultPlan fault : acting) {
            schedule = switch (fault.kind()) {
                case EXTRA_START -> startedAgain(schedule, fault.amount());
                case SEASONAL_WRONG -> scaled(schedule, fault.amount());
                default -> schedule;
            };
        }
        return schedule;
    }

    private static Schedule startedAgain(Schedule s, double hours) {
        List<LocalTime> starts = new ArrayList<>(s.starts());
        s.starts().stream()
                .min(LocalTime::compareTo)
                .ifPresent(first -> starts.add(first.plusMinutes(Math.round(hours * MINUTES))));
        return new Schedule(s.zones(), s.days(), s.every(), starts, s.seasonal(), s.allowed());
    }

    private static Schedule scaled(Schedule s, double times) {
        return new Schedule(s.zones(), s.days(), s.every(), s.starts(), s.seasonal() * times, s.allowed());
    }
}
