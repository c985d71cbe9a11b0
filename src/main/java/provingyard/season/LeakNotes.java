package provingyard.season;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import provingyard.scenario.FaultPlan;
import provingyard.scenario.SensorKind;
import provingyard.season.Chronicle.FalseAlarm;
import provingyard.season.Chronicle.Leak;
import provingyard.setup.Placement;
import provingyard.world.hydraulics.WaterFlows;

/** Notes what each leak lost and what of it passed the flow sensor, and the false alarms. Mutable. */
final class LeakNotes {

    private static final double SECONDS = 60;
    private static final double LEAST_FLOW = 1e-7;

    /** What one fault lost since it began last. */
    private static final class Lost {
        long first = Chronicle.NEVER;
        double volume;
        double afterFound;
        double flow;
        boolean idle;
        double share;
        double passes = Double.NaN;
        boolean broken;
    }

    private record Key(int fault, long began) {}

    private final Season season;
    private final Map<Key, Lost> lost = new LinkedHashMap<>();
    private final List<FalseAlarm> falseAlarms = new ArrayList<>();
    /** What flowed in the minute that the controller judges, the one before its decision. */
    private WaterFlows judged;

    LeakNotes(Season season) {
        this.season = season;
    }

    /** Takes the minute that the season has just lived, with its events. */
    void minute(long t, List<SeasonEvent> events) {
        if (season.faultsActive() != 0) {
            season.leakLog().tell((fault, began, found, repair) -> {
                if (repair > t && (season.faultsActive() & 1L << fault) != 0) {
                    lose(t, fault, began, found);
                }
            });
        }
        for (SeasonEvent event : events) {
            if (event.kind() == SeasonEvent.Kind.FALSE_ALARM) {
                falseAlarms.add(falseAlarm(t, event.subject(), events));
            }
        }
        judged = season.flows();
    }

    private void lose(long t, int fault, long began, long found) {
        double flow = season.flows().lost(fault);
        if (flow <= LEAST_FLOW) {
            return;
        }
        Lost sum = lost.computeIfAbsent(new Key(fault, began), k -> new Lost());
        if (sum.first == Chronicle.NEVER) {
            sum.first = t;
            sum.broken = isBroken(1);
        }
        boolean quiet = season.commands().openZone() < 0;
        if (quiet && !sum.idle || Double.isNaN(sum.passes)) {
            // Between runs it is told most clearly; such a minute replaces one within a run.
            look(sum, fault, flow, quiet);
        }
        sum.volume += flow * SECONDS;
        sum.afterFound += found < t ? flow * SECONDS : 0;
        sum.flow = Math.max(sum.flow, flow);
        sum.idle |= quiet;
    }

    private void look(Lost sum, int fault, double flow, boolean quiet) {
        WaterFlows now = season.flows();
        WaterFlows sound = season.standing().flows(season.site(), season.faultsActive() & ~(1L << fault));
        double zone = quiet ? 0 : sound.zones()[season.commands().openZone()];
        sum.share = zone > 0 ? flow / zone : 0;
        Placement.Flow sensor = sensor();
        sum.passes = sensor == null
                ? Double.NaN
                : (now.at(sensor.on(), sensor.along()) - sound.at(sensor.on(), sensor.along())) / flow;
    }

    /** The watched flow sensor, or the first one placed where none is watched; null without any. */
    private Placement.Flow sensor() {
        List<Placement> placed = season.setUp().of(SensorKind.FLOW);
        String watched = season.setUp().flowWatch().sensor();
        return (Placement.Flow) placed.stream()
                .filter(p -> p.id().equals(watched))
                .findFirst()
                .orElse(placed.isEmpty() ? null : placed.get(0));
    }

    /** Whether the flow sensor is jammed, or shows less than so many times the truth for a wrong factor. */
    private boolean isBroken(double factorBelow) {
        List<FaultPlan> faults = season.site().scenario().faults();
        return season.site().waterworks().acting(season.faultsActive()).stream()
                .map(faults::get)
                .anyMatch(f -> f.kind() == FaultPlan.Kind.FLOW_JAMMED
                        || f.kind() == FaultPlan.Kind.FLOW_FACTOR_WRONG && f.amount() < factorBelow);
    }

    private FalseAlarm falseAlarm(long t, String subject, List<SeasonEvent> events) {
        double shown = Double.NaN;
        double expected = Double.NaN;
        for (SeasonEvent event : events) {
            boolean alarm =
                    event.kind() == SeasonEvent.Kind.FLOW_HIGH || event.kind() == SeasonEvent.Kind.FLOW_UNSCHEDULED;
            if (alarm && event.subject().equals(subject)) {
                shown = event.values().get("flow");
                expected =
                        event.values().getOrDefault("expected", event.values().get("limit"));
            }
        }
        Placement.Flow sensor = sensor();
        boolean placed = sensor != null;
        double truth = placed && judged != null ? judged.at(sensor.on(), sensor.along()) : Double.NaN;
        boolean straight =
                placed && season.site().siting().straightEnough(new Siting.OnPipe(sensor.on(), sensor.along()));
        return new FalseAlarm(t, subject, shown, expected, truth, straight, isBroken(Double.POSITIVE_INFINITY));
    }

    /** The leaks so far, in the order of their begin. */
    List<Leak> leaks(long tick) {
        List<Leak> leaks = new ArrayList<>();
        season.leakLog().tell((fault, began, found, repair) -> {
            FaultPlan plan = season.site().scenario().faults().get(fault);
            Lost sum = lost.getOrDefault(new Key(fault, began), new Lost());
            leaks.add(new Leak(
                    fault,
                    plan.kind(),
                    plan.on(),
                    began,
                    sum.first,
                    found == Long.MAX_VALUE ? Chronicle.NEVER : found,
                    repair > tick ? Chronicle.NEVER : repair,
                    sum.volume,
                    sum.afterFound,
                    sum.flow,
                    sum.idle,
                    sum.share,
                    sum.passes,
                    sum.broken));
        });
        return leaks;
    }

    List<FalseAlarm> falseAlarms() {
        return falseAlarms;
    }
}
