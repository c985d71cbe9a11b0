package provingyard.study;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import provingyard.scenario.FaultPlan;
import provingyard.scenario.SensorKind;
import provingyard.season.Chronicle;
import provingyard.setup.Placement;
import provingyard.setup.SetUp;
import provingyard.study.Moment.What;
import provingyard.study.Moment.Why;

/** Leaks that cost, leaks that were shut soon, and false alarms. */
final class FlowRules {

    private static final double MINUTE = 60;
    private static final double HALF = 0.5;

    /** Nominal size in m of the smallest body that a main takes, and so what a usual sensor can see. */
    private static final double SMALL_BODY = 0.0254;

    /** Share of a zone's flow over the expected one that a usual watch finds (lowest usual high limit, 105 %). */
    private static final double SEEN_SHARE = 0.05;

    private final Story story;

    FlowRules(Story story) {
        this.story = story;
    }

    /** Leaks missed, found late, or left to run after an alarm found them. */
    List<Moment> leaks() {
        double part = part(story.told());
        List<Moment> moments = new ArrayList<>();
        for (Chronicle.Leak leak : story.told().leaks()) {
            double fixed = isMissed(leak)
                    ? story.costs().missedLeak()
                    : isLate(leak) ? story.costs().lateLeak() : 0;
            double money = part * wasted(leak) * story.costs().water() + fixed;
            boolean cost = fixed > 0 || isLeftRunning(leak);
            if (cost && money >= Story.LEAST_MONEY) {
                Why why = why(leak);
                moments.add(new Moment(
                        leak.began(),
                        endOf(leak),
                        What.LEAKED,
                        why,
                        why == Why.SCHEDULE ? null : SensorKind.FLOW,
                        List.of(leak.on()),
                        leak.volume(),
                        money,
                        readings(leak).of(What.LEAKED)));
            }
        }
        return moments;
    }

    private long endOf(Chronicle.Leak leak) {
        return leak.ended() == Chronicle.NEVER ? story.told().tick() : leak.ended();
    }

    private Gauge.Readings readings(Chronicle.Leak leak) {
        long found = leak.found();
        return new Gauge.Readings()
                .put(Gauge.FLOW, leak.flow())
                .put(Gauge.FOUND_AFTER, found == Chronicle.NEVER ? Double.NaN : (found - leak.began()) * MINUTE)
                .put(Gauge.LASTED, (endOf(leak) - leak.began()) * MINUTE);
    }

    private static boolean isMissed(Chronicle.Leak leak) {
        return leak.found() == Chronicle.NEVER;
    }

    private boolean isLate(Chronicle.Leak leak) {
        long late = Math.round(story.costs().lateAfter() / MINUTE);
        return !isMissed(leak) && leak.found() - leak.began() > late;
    }

    /** Found in time, but most of its water was lost after the alarm. */
    private boolean isLeftRunning(Chronicle.Leak leak) {
        return !isMissed(leak) && !isLate(leak) && leak.afterFound() > HALF * leak.volume();
    }

    private Why why(Chronicle.Leak leak) {
        if (isLeftRunning(leak)) {
            return Why.SETTING;
        }
        if (!story.hasKind(SensorKind.FLOW, leak.began()) || !visible(leak)) {
            return Why.SCHEDULE;
        }
        SetUp setUp = story.setUpAt(leak.began());
        List<Placement> placed = setUp.of(SensorKind.FLOW);
        if (placed.isEmpty()) {
            return Why.NO_SENSOR;
        }
        String watched = setUp.flowWatch().sensor();
        if (placed.stream().noneMatch(p -> p.id().equals(watched))) {
            return Why.NOT_CONNECTED;
        }
        if (leak.broken()) {
            return Why.FAULT;
        }
        // Against the pipe's direction is water that passes as well: it is counted, whichever way the pipe was drawn.
        return Math.abs(leak.passes()) < HALF ? Why.PLACE : Why.SETTING;
    }

    /** Whether a usual sensor right behind the meter could tell it from none. */
    private boolean visible(Chronicle.Leak leak) {
        return leak.idle() && leak.flow() >= story.siting().cannotSeeBelow(SMALL_BODY) || leak.share() >= SEEN_SHARE;
    }

    /** m3 that the ledger counts as leaked; what a valve or a head lets go lands on the ground and counts there. */
    private static double wasted(Chronicle.Leak leak) {
        return leaves(leak.kind()) ? leak.volume() : 0;
    }

    private static boolean leaves(FaultPlan.Kind kind) {
        return switch (kind) {
            case MAINLINE_BREAK, MAINLINE_LEAK, LATERAL_BREAK -> true;
            default -> false;
        };
    }

    /** Takes the leaks' sum back to the ledger's, should it be more. */
    private static double part(Chronicle season) {
        double sum = season.leaks().stream().mapToDouble(FlowRules::wasted).sum();
        double whole = season.outcome().ledger().irrigation().leaked();
        return sum <= 0 ? 0 : Math.min(1, whole / sum);
    }

    /** Leaks that an alarm found in time and that were shut then, against the clock alone. */
    List<Moment> shut() {
        double part = part(story.clock());
        List<Moment> moments = new ArrayList<>();
        for (Chronicle.Leak leak : story.told().leaks()) {
            if (isMissed(leak) || isLate(leak) || isLeftRunning(leak)) {
                continue;
            }
            double volume = Math.max(0, clocks(leak, Chronicle.Leak::volume) - leak.volume());
            double water = Math.max(0, part * clocks(leak, FlowRules::wasted) - wasted(leak));
            double money = water * story.costs().water() + story.costs().missedLeak();
            if (money >= Story.LEAST_MONEY) {
                moments.add(new Moment(
                        leak.began(),
                        Math.min(story.told().tick(), leak.found() + 1),
                        What.LEAK_SHUT,
                        Why.WORKED,
                        SensorKind.FLOW,
                        List.of(leak.on()),
                        volume,
                        -money,
                        readings(leak).of(What.LEAK_SHUT)));
            }
        }
        return moments;
    }

    /** The same of the leak under the clock alone. */
    private double clocks(Chronicle.Leak leak, ToDoubleFunction<Chronicle.Leak> value) {
        return story.clock().leaks().stream()
                .filter(c -> c.fault() == leak.fault() && c.began() == leak.began())
                .mapToDouble(value)
                .findFirst()
                .orElse(0);
    }

    /** Alarms while nothing leaked. */
    List<Moment> falseAlarms() {
        List<Moment> moments = new ArrayList<>();
        for (Chronicle.FalseAlarm alarm : story.told().falseAlarms()) {
            if (story.costs().falseAlarm() >= Story.LEAST_MONEY) {
                Why why = alarm.broken() ? Why.FAULT : alarm.straight() ? Why.SETTING : Why.PLACE;
                moments.add(new Moment(
                        alarm.tick(),
                        alarm.tick() + 1,
                        What.FALSE_ALARM,
                        why,
                        SensorKind.FLOW,
                        List.of(alarm.subject()),
                        1,
                        story.costs().falseAlarm(),
                        new Gauge.Readings()
                                .put(Gauge.FLOW, alarm.shown())
                                .put(Gauge.EXPECTED, alarm.expected())
                                .put(Gauge.TRUTH, alarm.truth())
                                .of(What.FALSE_ALARM)));
            }
        }
        return moments;
    }
}
