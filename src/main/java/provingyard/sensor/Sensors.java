package provingyard.sensor;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import provingyard.numeric.RandomStreams;
import provingyard.scenario.Scenario;
import provingyard.setup.Placement;
import provingyard.setup.SetUp;

/**
 * All sensors of one set-up in one season, in the order of placing. Mutable; {@link #copy} for snapshots. Each sensor's
 * noise and quirks depend on (seed, its id, tick) alone: another sensor changes none of them.
 */
public final class Sensors {

    private final Scenario scenario;
    private final RandomStreams streams;
    private final List<Sensor> all;
    private Readings last = Readings.NONE;

    private Sensors(Scenario scenario, RandomStreams streams, List<Sensor> all) {
        this.scenario = scenario;
        this.streams = streams;
        this.all = all;
    }

    /** New sensors that have seen nothing yet. */
    public static Sensors of(Scenario scenario, SetUp setUp, RandomStreams streams) {
        List<Sensor> all = new ArrayList<>();
        for (Placement placement : setUp.sensors()) {
            all.add(Sensor.of(placement, scenario, streams));
        }
        return new Sensors(scenario, streams, all);
    }

    /** Reads one minute; the readings are what the controller sees in the next. */
    public Readings minute(long tick, Surroundings surroundings, SensorFaults faults) {
        for (Sensor sensor : all) {
            sensor.minute(tick, surroundings, faults);
        }
        return readings();
    }

    /**
     * What is shown now: after {@link #minute}, or before the first one (nothing tripped, values 0). The last readings
     * are given again while they say the same.
     */
    public Readings readings() {
        Readings.Reading[] shown = new Readings.Reading[all.size()];
        boolean same = last.size() == shown.length;
        for (int i = 0; i < shown.length; i++) {
            shown[i] = all.get(i).reading();
            same = same && shown[i] == last.all().get(i);
        }
        if (!same) {
            last = new Readings(List.of(shown));
        }
        return last;
    }

    /** The true value at a sensor's place in the last minute, in the unit of its reading. Not for the controller. */
    public OptionalDouble truth(String id) {
        for (Sensor sensor : all) {
            if (sensor.placement().id().equals(id)) {
                return OptionalDouble.of(sensor.truth());
            }
        }
        return OptionalDouble.empty();
    }

    /** The same in the same state. */
    public Sensors copy() {
        List<Sensor> copies = new ArrayList<>(all.size());
        for (Sensor sensor : all) {
            copies.add(sensor.copy());
        }
        return new Sensors(scenario, streams, copies);
    }

    /**
     * The sensors of another set-up from now on: those that stay at their place keep their state (water held, lag,
     * counts) under their new settings, moved and new ones have seen nothing yet.
     */
    public Sensors changed(SetUp next) {
        List<Sensor> carried = new ArrayList<>();
        for (Placement placement : next.sensors()) {
            Sensor kept = null;
            for (Sensor sensor : all) {
                if (sensor.placement().id().equals(placement.id())) {
                    kept = sensor.reset(placement);
                }
            }
            carried.add(kept != null ? kept : Sensor.of(placement, scenario, streams));
        }
        return new Sensors(scenario, streams, carried);
    }
}
