package provingyard.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import provingyard.scenario.Schedule;
import provingyard.scenario.SensorKind;

/**
 * All that a trainee decides, as one immutable value; every gesture makes a new one.
 *
 * @param sensors what is placed, in the order of placing
 * @param interlocks what the controller does when a sensor trips
 * @param flowWatch how the controller watches flow
 * @param schedule the trainee's schedule, or null for the site's own
 */
public record SetUp(List<Placement> sensors, List<Interlock> interlocks, FlowWatch flowWatch, Schedule schedule) {

    /** The clock alone: no sensor, the site's schedule. */
    public static final SetUp CLOCK_ALONE = new SetUp(List.of(), List.of(), FlowWatch.OFF, null);

    public SetUp {
        sensors = List.copyOf(sensors);
        interlocks = List.copyOf(interlocks);
    }

    /** The placements of a kind. */
    public List<Placement> of(SensorKind kind) {
        return sensors.stream().filter(s -> s.kind() == kind).toList();
    }

    /** The placement with an id. */
    public Optional<Placement> sensor(String id) {
        return sensors.stream().filter(s -> s.id().equals(id)).findFirst();
    }

    /** The same with a sensor placed, or replaced where the id is there already. */
    public SetUp with(Placement placement) {
        List<Placement> next = new ArrayList<>(sensors);
        int at = -1;
        for (int i = 0; i < next.size(); i++) {
            if (next.get(i).id().equals(placement.id())) {
                at = i;
            }
        }
        if (at < 0) {
            next.add(placement);
        } else {
            next.set(at, placement);
        }
        return new SetUp(next, interlocks, flowWatch, schedule);
    }

    /** The same without a sensor and its interlocks. */
    public SetUp without(String id) {
        return new SetUp(
                sensors.stream().filter(s -> !s.id().equals(id)).toList(),
                interlocks.stream().filter(i -> !i.sensor().equals(id)).toList(),
                flowWatch,
                schedule);
    }

    /** The same with an interlock, which replaces the sensor's earlier one. */
    public SetUp with(Interlock interlock) {
        List<Interlock> next = new ArrayList<>(interlocks.stream()
                .filter(i -> !i.sensor().equals(interlock.sensor()))
                .toList());
        next.add(interlock);
        return new SetUp(sensors, next, flowWatch, schedule);
    }

    /** The same with another flow watch. */
    public SetUp with(FlowWatch watch) {
        return new SetUp(sensors, interlocks, watch, schedule);
    }

    /** The same with another schedule; null for the site's own. */
    public SetUp withSchedule(Schedule other) {
        return new SetUp(sensors, interlocks, flowWatch, other);
    }
}
