package provingyard.control;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import provingyard.control.ControlEvent.Kind;
import provingyard.scenario.SensorKind;
import provingyard.sensor.Readings;

/** The events of one minute, and which sensors were open in the last one. Mutable. */
final class Notes {

    private final Set<String> tripped = new LinkedHashSet<>();
    private List<Readings.Reading> before = List.of();
    private List<ControlEvent> events = List.of();

    /** The same in the same state; a minute's events stay behind. */
    Notes copy() {
        Notes other = new Notes();
        other.tripped.addAll(tripped);
        other.before = before;
        return other;
    }

    /** Begins a minute with what sensors did since the last one. */
    void begin(long tick, Readings last) {
        events = List.of();
        List<Readings.Reading> all = last.all();
        for (int i = 0; i < all.size(); i++) {
            if (i >= before.size() || !alike(all.get(i), before.get(i))) {
                look(tick, all.get(i));
            }
        }
        before = all;
    }

    /** Whether two readings are of one sensor whose contact did not move between them. */
    private static boolean alike(Readings.Reading a, Readings.Reading b) {
        return a == b || a.open() == b.open() && a.kind() == b.kind() && a.id().equals(b.id());
    }

    private void look(long tick, Readings.Reading reading) {
        boolean now = reading.open() && reading.kind() != SensorKind.FLOW;
        if (now && tripped.add(reading.id())) {
            add(trip(tick, Kind.SENSOR_TRIPPED, reading));
        } else if (!now && tripped.remove(reading.id())) {
            add(trip(tick, Kind.SENSOR_REARMED, reading));
        }
    }

    private static ControlEvent trip(long tick, Kind kind, Readings.Reading reading) {
        return new ControlEvent(tick, kind, reading.id(), "", Map.of("shown", reading.shown()));
    }

    void add(ControlEvent event) {
        if (events.isEmpty()) {
            events = new ArrayList<>();
        }
        events.add(event);
    }

    /** What happened in this minute, in order. */
    List<ControlEvent> events() {
        return List.copyOf(events);
    }
}
