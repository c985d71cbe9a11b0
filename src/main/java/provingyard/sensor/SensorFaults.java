package provingyard.sensor;

import java.util.List;

/** What is wrong with sensors now, as values; the season says which of its faults are active. */
public record SensorFaults(List<Fault> active) {

    /** Nothing is wrong. */
    public static final SensorFaults NONE = new SensorFaults(List.of());

    public SensorFaults {
        active = List.copyOf(active);
    }

    /** Kinds of trouble. */
    public enum Kind {
        /** The rain sensor's element is stuck swollen: always tripped. */
        RAIN_STUCK_WET,
        /** The rain sensor's element does not move: never tripped. */
        RAIN_STUCK_DRY,
        /** The rain sensor's radio is silent: the controller keeps the last state it heard. */
        RAIN_NO_RADIO,
        /** The cups do not turn. */
        WIND_SEIZED,
        /** The freeze sensor reads warmer by {@code amount} K. */
        FREEZE_READS_WARM,
        /** The wheel does not turn. */
        FLOW_JAMMED,
        /** A wrong pulse factor is typed in: {@code amount} times the truth is shown. */
        FLOW_FACTOR_WRONG,
        /** The soil probe stands in a dry void; {@code amount} is the void's share, 0 for a usual one. */
        SOIL_VOID,
        /** The sensor's wire is cut. */
        WIRE_CUT
    }

    /**
     * One trouble.
     *
     * @param kind what is wrong
     * @param on placement id, or a sensor kind's name as in files ({@code "rain"}) for all of that kind
     * @param amount size in the kind's own measure, 0 where unused
     */
    public record Fault(Kind kind, String on, double amount) {}

    /** Whether a sensor has a trouble. */
    boolean has(Kind kind, Sensor sensor) {
        return find(kind, sensor) != null;
    }

    /** Size of a sensor's trouble, 0 without it. */
    double amount(Kind kind, Sensor sensor) {
        Fault fault = find(kind, sensor);
        return fault == null ? 0 : fault.amount();
    }

    private Fault find(Kind kind, Sensor sensor) {
        for (int i = 0; i < active.size(); i++) {
            Fault fault = active.get(i);
            if (fault.kind() == kind && sensor.isNamed(fault.on())) {
                return fault;
            }
        }
        return null;
    }
}
