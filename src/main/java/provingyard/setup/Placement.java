package provingyard.setup;

import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import provingyard.quantity.Dimension;
import provingyard.quantity.In;
import provingyard.scenario.Point;
import provingyard.scenario.SensorKind;

/** One sensor: where it is, how it is mounted and set. The five kinds are its only forms. */
@JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
@JsonSubTypes({
    @JsonSubTypes.Type(value = Placement.Rain.class, name = "rain"),
    @JsonSubTypes.Type(value = Placement.Wind.class, name = "wind"),
    @JsonSubTypes.Type(value = Placement.Freeze.class, name = "freeze"),
    @JsonSubTypes.Type(value = Placement.Flow.class, name = "flow"),
    @JsonSubTypes.Type(value = Placement.Soil.class, name = "soil")
})
public sealed interface Placement {

    /** Stable name within the set-up, such as {@code rain-1}. */
    String id();

    /** Which of the five. */
    SensorKind kind();

    /** The same under another name. */
    Placement named(String other);

    /**
     * A rain sensor.
     *
     * @param at place in m
     * @param height m above ground
     * @param trip set point: depth in m
     * @param vent opening of the drying vent, 0 shut (dries slowly) to 1 open
     */
    record Rain(
            String id,
            Point at,
            Mount mount,
            @In(Dimension.LENGTH) double height,
            @In(Dimension.LENGTH) double trip,
            @In(Dimension.FRACTION) double vent)
            implements Placement {
        @Override
        public SensorKind kind() {
            return SensorKind.RAIN;
        }

        @Override
        public Placement named(String other) {
            return new Rain(other, at, mount, height, trip, vent);
        }
    }

    /**
     * A wind sensor.
     *
     * @param trip mean speed in m/s at which it trips
     * @param rearm lower speed in m/s at which it re-arms
     * @param averaging window in s
     * @param hold least time tripped in s
     */
    record Wind(
            String id,
            Point at,
            Mount mount,
            @In(Dimension.LENGTH) double height,
            @In(Dimension.SPEED) double trip,
            @In(Dimension.SPEED) double rearm,
            @In(Dimension.DURATION) double averaging,
            @In(Dimension.DURATION) double hold)
            implements Placement {
        @Override
        public SensorKind kind() {
            return SensorKind.WIND;
        }

        @Override
        public Placement named(String other) {
            return new Wind(other, at, mount, height, trip, rearm, averaging, hold);
        }
    }

    /**
     * A freeze sensor.
     *
     * @param below °C under which it trips
     * @param rearm °C at which it re-arms, above {@code below}
     */
    record Freeze(
            String id,
            Point at,
            Mount mount,
            @In(Dimension.LENGTH) double height,
            @In(Dimension.TEMPERATURE) double below,
            @In(Dimension.TEMPERATURE) double rearm)
            implements Placement {
        @Override
        public SensorKind kind() {
            return SensorKind.FREEZE;
        }

        @Override
        public Placement named(String other) {
            return new Freeze(other, at, mount, height, below, rearm);
        }
    }

    /**
     * A flow sensor.
     *
     * @param on pipe id
     * @param along m from the pipe's {@code from} end
     * @param size nominal body size in m
     * @param pulses pulses per litre typed into the controller
     * @param offset m3/s typed into the controller: frequency = K (Q + offset)
     */
    record Flow(
            String id,
            String on,
            @In(Dimension.LENGTH) double along,
            @In(Dimension.LENGTH) double size,
            @In(Dimension.PULSES) double pulses,
            @In(Dimension.FLOW) double offset)
            implements Placement {
        @Override
        public SensorKind kind() {
            return SensorKind.FLOW;
        }

        @Override
        public Placement named(String other) {
            return new Flow(other, on, along, size, pulses, offset);
        }
    }

    /**
     * A soil moisture sensor.
     *
     * @param depth m below the surface
     * @param soil soil type set in the controller: catalogue id
     * @param dry volume share at or under which the soil is dry
     * @param wet volume share at or above which it is wet
     */
    record Soil(
            String id,
            Point at,
            @In(Dimension.LENGTH) double depth,
            String soil,
            @In(Dimension.FRACTION) double dry,
            @In(Dimension.FRACTION) double wet)
            implements Placement {
        @Override
        public SensorKind kind() {
            return SensorKind.SOIL;
        }

        @Override
        public Placement named(String other) {
            return new Soil(other, at, depth, soil, dry, wet);
        }
    }
}
