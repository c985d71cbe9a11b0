package provingyard.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import provingyard.scenario.SensorKind;
import provingyard.setup.FlowWatch;
import provingyard.setup.Interlock;
import provingyard.setup.Placement;
import provingyard.setup.SetUp;

/**
 * Set-ups put together from the choices of two. A kind of sensor comes with its interlocks, flow sensors with the flow
 * watch. Sensors keep their ids, since each draws its own noise by its id; see {@link #apart} for where two ids meet.
 */
final class Mix {

    private Mix() {}

    /** One set-up's choices where they are among the {@code kept}, the other's for the rest. Ids must not meet. */
    static SetUp of(SetUp own, Set<Choice> kept, SetUp rest) {
        List<Placement> sensors = new ArrayList<>();
        List<Interlock> interlocks = new ArrayList<>();
        for (SensorKind kind : SensorKind.values()) {
            SetUp from = kept.contains(Choice.of(kind)) ? own : rest;
            sensors.addAll(from.of(kind));
            interlocks.addAll(interlocks(from, kind));
        }
        FlowWatch watch = (kept.contains(Choice.FLOW) ? own : rest).flowWatch();
        return new SetUp(sensors, interlocks, watch, kept.contains(Choice.SCHEDULE) ? own.schedule() : rest.schedule());
    }

    /** The set-up without a kind of sensor. */
    static SetUp without(SetUp setUp, SensorKind kind) {
        SetUp next = setUp;
        for (Placement placement : setUp.of(kind)) {
            next = next.without(placement.id());
        }
        return kind == SensorKind.FLOW ? next.with(FlowWatch.OFF) : next;
    }

    /** The set-up with a kind of sensor as another one has it, in place of its own. */
    static SetUp with(SetUp setUp, SensorKind kind, SetUp other) {
        SetUp next = without(setUp, kind);
        SetUp theirs = apart(other, Set.of(kind), ids(next));
        for (Placement placement : theirs.of(kind)) {
            next = next.with(placement);
        }
        for (Interlock interlock : interlocks(theirs, kind)) {
            next = next.with(interlock);
        }
        return kind == SensorKind.FLOW ? next.with(theirs.flowWatch()) : next;
    }

    /** What the controller does when sensors of a kind trip. */
    static List<Interlock> interlocks(SetUp setUp, SensorKind kind) {
        List<String> ids = setUp.of(kind).stream().map(Placement::id).toList();
        return setUp.interlocks().stream().filter(i -> ids.contains(i.sensor())).toList();
    }

    /** Ids of what is placed. */
    static List<String> ids(SetUp setUp) {
        return setUp.sensors().stream().map(Placement::id).toList();
    }

    /** The set-up with its sensors of some kinds renamed where somebody else has their ids; otherwise as it is. */
    static SetUp apart(SetUp setUp, Set<SensorKind> kinds, List<String> taken) {
        SetUp next = setUp;
        for (Placement placement : setUp.sensors()) {
            if (kinds.contains(placement.kind()) && taken.contains(placement.id())) {
                next = renamed(next, placement, free(placement.id(), taken, ids(next)));
            }
        }
        return next;
    }

    private static String free(String id, List<String> taken, List<String> own) {
        int number = 2;
        while (taken.contains(id + "-" + number) || own.contains(id + "-" + number)) {
            number++;
        }
        return id + "-" + number;
    }

    private static SetUp renamed(SetUp setUp, Placement placement, String name) {
        String id = placement.id();
        FlowWatch watch = setUp.flowWatch();
        return new SetUp(
                setUp.sensors().stream()
                        .map(s -> s.equals(placement) ? s.named(name) : s)
                        .toList(),
                setUp.interlocks().stream()
                        .map(i -> i.sensor().equals(id) ? new Interlock(name, i.action(), i.zones()) : i)
                        .toList(),
                id.equals(watch.sensor()) ? watch.watching(name) : watch,
                setUp.schedule());
    }
}
