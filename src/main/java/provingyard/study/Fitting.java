package provingyard.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import provingyard.scenario.SensorKind;
import provingyard.setup.FlowWatch;
import provingyard.setup.Interlock;
import provingyard.setup.Placement;
import provingyard.setup.SetUp;

/**
 * One sensor with what belongs to it.
 *
 * @param placement where it is and how it is set
 * @param interlock what the controller does with it; null for none
 * @param watch how its flow is watched; null for all but flow sensors
 */
record Fitting(Placement placement, Interlock interlock, FlowWatch watch) {

    /** The fittings of a kind in a set-up, in the order of placing. */
    static List<Fitting> of(SetUp setUp, SensorKind kind) {
        List<Fitting> fittings = new ArrayList<>();
        for (Placement placement : setUp.of(kind)) {
            Interlock interlock = setUp.interlocks().stream()
                    .filter(i -> i.sensor().equals(placement.id()))
                    .findFirst()
                    .orElse(null);
            fittings.add(new Fitting(placement, interlock, kind == SensorKind.FLOW ? setUp.flowWatch() : null));
        }
        return fittings;
    }

    /** The set-up with this fitting, in the place of one with the same id. */
    SetUp into(SetUp setUp) {
        SetUp next = setUp.with(placement);
        if (interlock != null) {
            next = next.with(interlock);
        }
        return watch == null ? next : next.with(watch);
    }

    /** A set-up without any sensor of a kind. */
    static SetUp without(SetUp setUp, SensorKind kind) {
        SetUp next = setUp;
        for (Placement placement : setUp.of(kind)) {
            next = next.without(placement.id());
        }
        return kind == SensorKind.FLOW ? next.with(FlowWatch.OFF) : next;
    }

    /** The id that the n-th sensor of a kind gets, counted from 1. */
    static String id(SensorKind kind, int number) {
        return kind.name().toLowerCase(Locale.ROOT) + "-" + number;
    }

    /** The same with the id of the n-th sensor of its kind. */
    Fitting numbered(int number) {
        String id = id(placement.kind(), number);
        Interlock named = interlock == null ? null : new Interlock(id, interlock.action(), interlock.zones());
        return new Fitting(named(placement, id), named, watch == null ? null : watching(watch, id));
    }

    private static Placement named(Placement placement, String id) {
        if (placement instanceof Placement.Rain r) {
            return new Placement.Rain(id, r.at(), r.mount(), r.height(), r.trip(), r.vent());
        }
        if (placement instanceof Placement.Wind w) {
            return new Placement.Wind(id, w.at(), w.mount(), w.height(), w.trip(), w.rearm(), w.averaging(), w.hold());
        }
        if (placement instanceof Placement.Freeze f) {
            return new Placement.Freeze(id, f.at(), f.mount(), f.height(), f.below(), f.rearm());
        }
        if (placement instanceof Placement.Soil s) {
            return new Placement.Soil(id, s.at(), s.depth(), s.soil(), s.dry(), s.wet());
        }
        Placement.Flow f = (Placement.Flow) placement;
        return new Placement.Flow(id, f.on(), f.along(), f.size(), f.pulses(), f.offset());
    }

    private static FlowWatch watching(FlowWatch w, String sensor) {
        return new FlowWatch(
                sensor,
                w.expected(),
                w.record(),
                w.high(),
                w.low(),
                w.settling(),
                w.averaging(),
                w.onZone(),
                w.unscheduled(),
                w.unscheduledAfter(),
                w.onUnscheduled());
    }

    /** The same with the sensor placed or set otherwise. */
    Fitting with(Placement other) {
        return new Fitting(other, interlock, watch);
    }

    /** The same with another action on some zones (none named: all). */
    Fitting with(Interlock.Action action, List<String> zones) {
        return new Fitting(placement, new Interlock(placement.id(), action, zones), watch);
    }

    /** The same with each of some actions on the zones that it acts on now. */
    List<Fitting> actions(Interlock.Action... actions) {
        List<String> zones = interlock == null ? List.of() : interlock.zones();
        List<Fitting> fittings = new ArrayList<>();
        for (Interlock.Action action : actions) {
            fittings.add(with(action, zones));
        }
        return fittings;
    }

    /** The same with another watch. */
    Fitting with(FlowWatch other) {
        return new Fitting(placement, interlock, other);
    }
}
