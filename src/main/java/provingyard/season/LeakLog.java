package provingyard.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.IntToDoubleFunction;
import provingyard.scenario.FaultPlan;
import provingyard.scenario.Scenario;

/**
 * What becomes of the season's faults: when each begins, which alarms found it, when it was seen by people, and when it
 * is repaired.
 *
 * <p>An alarm of the flow watch finds the losses of water that run at that minute; with none running it is a false
 * alarm. What an alarm finds is repaired after the time that the scenario states, and then the controller is re-armed.
 * A loss of at least {@link #SEEN_FROM} m3/s comes up through the ground and is seen by people at nine in the morning
 * at least two hours after it began (common practice, no source), who shut its water by hand and call for repair: the
 * loss ends there, but the flow watch did not find it.
 *
 * <p>Of faults that were dealt from outside nobody is told but whoever was called: they act until {@link #repair}.
 */
final class LeakLog {

    /** Flow in m3/s from which a leak shows at the surface (common practice, no source). */
    static final double SEEN_FROM = 0.5e-3;

    private static final int MINUTES_A_DAY = 1440;
    private static final int SEEN_AT = 9 * 60;
    private static final int SEEN_AFTER = 2 * 60;
    private static final double LEAST_FLOW = 1e-7;

    /** One fault that has begun. */
    private record Case(int fault, boolean losesWater, long began, long foundAt, long repairAt) {

        static final long NEVER = Long.MAX_VALUE;

        Case found(long tick, long repair) {
            return new Case(fault, losesWater, began, tick, Math.min(repairAt, repair));
        }

        Case repaired(long tick) {
            return new Case(fault, losesWater, began, foundAt, Math.min(repairAt, tick));
        }

        Case seen(long repair) {
            return new Case(fault, losesWater, began, foundAt, Math.min(repairAt, repair));
        }
    }

    private final Scenario scenario;
    private final FaultTimeline timeline;
    private final long repairTicks;
    private final List<Case> cases;
    private int next;
    private int falseAlarms;
    private long rearmAt;
    private long faultsActive;
    private long due;

    LeakLog(Scenario scenario, FaultTimeline timeline) {
        this.scenario = scenario;
        this.timeline = timeline;
        this.repairTicks = Math.round(scenario.season().repairAfter() / 60);
        this.cases = new ArrayList<>();
        this.rearmAt = Case.NEVER;
    }

    private LeakLog(LeakLog other) {
        scenario = other.scenario;
        timeline = other.timeline;
        repairTicks = other.repairTicks;
        cases = new ArrayList<>(other.cases);
        next = other.next;
        falseAlarms = other.falseAlarms;
        rearmAt = other.rearmAt;
        faultsActive = other.faultsActive;
        due = other.due;
    }

    LeakLog copy() {
        return new LeakLog(this);
    }

    /** Bit i is set while the scenario's i-th fault acts. */
    long active() {
        return faultsActive;
    }

    /** Begins and repairs what is due at this minute. */
    List<SeasonEvent> begin(long tick) {
        if (tick < due) {
            return List.of();
        }
        List<SeasonEvent> events = new ArrayList<>();
        while (next < timeline.begins().size() && timeline.begins().get(next).tick() <= tick) {
            int fault = timeline.begins().get(next++).fault();
            FaultPlan plan = scenario.faults().get(fault);
            cases.add(new Case(fault, losesWater(plan), tick, Case.NEVER, Case.NEVER));
            events.add(new SeasonEvent(tick, SeasonEvent.Kind.FAULT_HAPPENED, plan.on(), Map.of()));
        }
        due = next < timeline.begins().size() ? timeline.begins().get(next).tick() : Case.NEVER;
        faultsActive = 0;
        for (Case c : cases) {
            if (c.repairAt() > tick) {
                faultsActive |= 1L << c.fault();
                due = Math.min(due, c.repairAt());
            }
        }
        return events;
    }

    /** Repairs a fault that has begun, from a minute on that was not lived. */
    void repair(int fault, long tick) {
        for (int i = 0; i < cases.size(); i++) {
            if (cases.get(i).fault() == fault) {
                replace(i, cases.get(i).repaired(tick));
            }
        }
    }

    /** The minute at which a fault last began, by its index; 0 before it did. */
    long began(int fault) {
        long began = 0;
        for (Case c : cases) {
            began = c.fault() == fault ? c.began() : began;
        }
        return began;
    }

    private void replace(int index, Case by) {
        cases.set(index, by);
        due = Math.min(due, by.repairAt());
    }

    /** Whether repairs are done and the controller is to be re-armed at this minute. */
    boolean rearmIsDue(long tick) {
        if (tick < rearmAt) {
            return false;
        }
        rearmAt = Case.NEVER;
        return true;
    }

    /**
     * Takes a flow alarm.
     *
     * @param more whether more zones stand open than the controller wants: such an alarm finds no loss, but is right
     * @param lost m3/s that a fault loses at this minute, by its index
     */
    List<SeasonEvent> alarm(long tick, String subject, boolean more, IntToDoubleFunction lost) {
        List<SeasonEvent> events = new ArrayList<>();
        boolean running = more;
        for (int i = 0; i < cases.size(); i++) {
            Case c = cases.get(i);
            if (!acts(c) || !c.losesWater() || lost.applyAsDouble(c.fault()) <= LEAST_FLOW) {
                continue;
            }
            running = true;
            if (c.foundAt() == Case.NEVER) {
                replace(i, c.found(tick, repairAfterAlarm(tick)));
                String on = scenario.faults().get(c.fault()).on();
                events.add(new SeasonEvent(
                        tick, SeasonEvent.Kind.FAULT_FOUND, on, Map.of("after", (tick - c.began()) * 60.0)));
            }
        }
        if (!running) {
            falseAlarms++;
            events.add(new SeasonEvent(tick, SeasonEvent.Kind.FALSE_ALARM, subject, Map.of()));
        }
        rearmAt = Math.min(rearmAt, repairAfterAlarm(tick));
        return events;
    }

    private long repairAfterAlarm(long tick) {
        return timeline.dealt() ? Case.NEVER : tick + repairTicks;
    }

    /** Lets people see what shows at the surface. */
    void look(long tick, IntToDoubleFunction lost) {
        if (timeline.dealt() || tick % MINUTES_A_DAY != SEEN_AT) {
            return;
        }
        for (int i = 0; i < cases.size(); i++) {
            Case c = cases.get(i);
            boolean shows = acts(c)
                    && c.losesWater()
                    && tick - c.began() >= SEEN_AFTER
                    && lost.applyAsDouble(c.fault()) >= SEEN_FROM;
            if (shows && c.repairAt() == Case.NEVER) {
                replace(i, c.seen(tick + 1));
            }
        }
    }

    /** Takes each loss of water that began so far, in order. */
    void tell(Teller teller) {
        for (Case c : cases) {
            if (c.losesWater()) {
                teller.leak(c.fault(), c.began(), c.foundAt(), c.repairAt());
            }
        }
    }

    /** Takes one loss of water; ticks that have not come are {@link Long#MAX_VALUE}. */
    interface Teller {
        void leak(int fault, long began, long foundAt, long repairAt);
    }

    /** What became of the leaks so far. */
    Outcome.Leaks leaks() {
        long lateTicks = Math.round(scenario.costs().lateAfter() / 60);
        int happened = 0;
        int found = 0;
        int late = 0;
        for (Case c : cases) {
            if (c.losesWater()) {
                happened++;
                if (c.foundAt() != Case.NEVER) {
                    found++;
                    late += c.foundAt() - c.began() > lateTicks ? 1 : 0;
                }
            }
        }
        return new Outcome.Leaks(happened, found, late, falseAlarms);
    }

    private boolean acts(Case c) {
        return (faultsActive & 1L << c.fault()) != 0;
    }

    private static boolean losesWater(FaultPlan plan) {
        return switch (plan.kind()) {
            case MAINLINE_BREAK, MAINLINE_LEAK, LATERAL_BREAK, VALVE_STUCK_OPEN, VALVE_WEEPS, HEAD_BROKEN -> true;
            default -> false;
        };
    }
}
