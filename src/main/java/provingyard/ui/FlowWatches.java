package provingyard.ui;

import java.util.ArrayList;
import java.util.List;
import provingyard.setup.FlowWatch;

/** A flow watch in the making: each step gives one with one thing changed. */
record FlowWatches(FlowWatch watch) {

    static FlowWatches of(FlowWatch watch) {
        return new FlowWatches(watch);
    }

    /** The same flow watch on another sensor, or on none (null). */
    static FlowWatch watching(FlowWatch w, String sensor) {
        return of(w).sensor(sensor).watch();
    }

    FlowWatches sensor(String sensor) {
        return new FlowWatches(watch.watching(sensor));
    }

    FlowWatches high(double high) {
        return make(high, watch.low(), watch.settling(), watch.averaging());
    }

    FlowWatches low(double low) {
        return make(watch.high(), low, watch.settling(), watch.averaging());
    }

    FlowWatches settling(double settling) {
        return make(watch.high(), watch.low(), settling, watch.averaging());
    }

    FlowWatches averaging(double averaging) {
        return make(watch.high(), watch.low(), watch.settling(), averaging);
    }

    FlowWatches onZone(FlowWatch.Action action) {
        return act(action, watch.unscheduled(), watch.onUnscheduled());
    }

    FlowWatches unscheduled(double flow) {
        return act(watch.onZone(), flow, watch.onUnscheduled());
    }

    FlowWatches onUnscheduled(FlowWatch.Action action) {
        return act(watch.onZone(), watch.unscheduled(), action);
    }

    /** Zones without a typed flow get theirs recorded on their next run, or not. */
    FlowWatches record(boolean record) {
        return expect(watch.expected(), record);
    }

    /** A zone's expected flow in m3/s as typed; NaN to take it back. */
    FlowWatches expected(String zone, double flow) {
        List<FlowWatch.Expected> next = new ArrayList<>(watch.expected());
        next.removeIf(e -> e.zone().equals(zone));
        if (!Double.isNaN(flow)) {
            next.add(new FlowWatch.Expected(zone, flow));
        }
        return expect(next, watch.record());
    }

    private FlowWatches expect(List<FlowWatch.Expected> expected, boolean record) {
        return new FlowWatches(new FlowWatch(
                watch.sensor(),
                expected,
                record,
                watch.high(),
                watch.low(),
                watch.settling(),
                watch.averaging(),
                watch.onZone(),
                watch.unscheduled(),
                watch.unscheduledAfter(),
                watch.onUnscheduled()));
    }

    private FlowWatches make(double high, double low, double settling, double averaging) {
        return new FlowWatches(new FlowWatch(
                watch.sensor(),
                watch.expected(),
                watch.record(),
                high,
                low,
                settling,
                averaging,
                watch.onZone(),
                watch.unscheduled(),
                watch.unscheduledAfter(),
                watch.onUnscheduled()));
    }

    private FlowWatches act(FlowWatch.Action onZone, double unscheduled, FlowWatch.Action onUnscheduled) {
        return new FlowWatches(new FlowWatch(
                watch.sensor(),
                watch.expected(),
                watch.record(),
                watch.high(),
                watch.low(),
                watch.settling(),
                watch.averaging(),
                onZone,
                unscheduled,
                watch.unscheduledAfter(),
                onUnscheduled));
    }
}
