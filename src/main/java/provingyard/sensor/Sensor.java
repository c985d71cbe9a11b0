package provingyard.sensor;

import java.util.Locale;
import provingyard.numeric.RandomStreams;
import provingyard.scenario.Scenario;
import provingyard.scenario.SensorKind;
import provingyard.setup.Placement;

/** One placed sensor with its state. Mutable, lives in one season; copies go their own way. */
abstract sealed class Sensor permits RainSensor, WindSensor, FreezeSensor, FlowSensor, SoilSensor {

    /** What it shows, as in {@link Readings.Reading}. */
    double shown;

    boolean tripped;
    boolean dry;
    boolean wireCut;
    int pulses;

    private final String id;
    private final SensorKind kind;
    private final String kindName;
    private Surroundings around;
    private Readings.Reading last;

    Sensor(Placement placement) {
        id = placement.id();
        kind = placement.kind();
        kindName = placement.kind().name().toLowerCase(Locale.ROOT);
    }

    /** A new sensor; its unit's own quirks come from streams named after the placement's id. */
    static Sensor of(Placement placement, Scenario scenario, RandomStreams streams) {
        if (placement instanceof Placement.Rain p) {
            return new RainSensor(p, streams);
        }
        if (placement instanceof Placement.Wind p) {
            return new WindSensor(p, streams);
        }
        if (placement instanceof Placement.Freeze p) {
            return new FreezeSensor(p, streams);
        }
        if (placement instanceof Placement.Flow p) {
            return new FlowSensor(p, streams);
        }
        return new SoilSensor((Placement.Soil) placement, scenario.catalogue(), streams);
    }

    /** Key of one of a sensor's streams, such as {@code sensor.rain-1.noise}. */
    static long key(RandomStreams streams, Placement placement, String what) {
        return streams.key("sensor." + placement.id() + "." + what);
    }

    /** Where it is and how it is set. */
    abstract Placement placement();

    /** Reads the truth of one minute. */
    final void minute(long tick, Surroundings truth, SensorFaults faults) {
        if (truth != around) {
            around = truth;
            settle(truth);
        }
        minute(tick, faults);
    }

    /** Finds its place in surroundings that it has not read before. */
    abstract void settle(Surroundings truth);

    /** Reads the truth of one minute at its place. */
    abstract void minute(long tick, SensorFaults faults);

    /** What it shows since the last minute; the last reading again while it shows the same. */
    final Readings.Reading reading() {
        boolean same = last != null
                && last.shown() == shown
                && last.tripped() == tripped
                && last.dry() == dry
                && last.wireCut() == wireCut
                && last.pulses() == pulses;
        if (!same) {
            last = new Readings.Reading(id, kind, shown, tripped, dry, wireCut, pulses);
        }
        return last;
    }

    /** Shows what another shows. */
    final void showAs(Sensor other) {
        shown = other.shown;
        tripped = other.tripped;
        dry = other.dry;
        wireCut = other.wireCut;
        pulses = other.pulses;
    }

    /** The true value at the sensor's place in the last minute, in the unit of its reading. */
    abstract double truth();

    /** The same in the same state. */
    abstract Sensor copy();

    /** The same sensor at the same place with other settings, its state kept; null when it was moved. */
    abstract Sensor reset(Placement next);

    /** Whether a fault's target means this sensor: its id, or the name of its kind. */
    final boolean isNamed(String on) {
        return id.equals(on) || kindName.equals(on);
    }
}
