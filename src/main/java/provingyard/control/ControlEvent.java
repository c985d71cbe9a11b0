package provingyard.control;

import java.util.Map;

/**
 * Something that the controller did or saw.
 *
 * @param tick minute of the season
 * @param kind what happened
 * @param subject zone or sensor id
 * @param cause why: a sensor's id, or one of the causes named here; empty where the kind says it all
 * @param values numbers that belong to it by name, in SI units, in a fixed order
 */
public record ControlEvent(long tick, Kind kind, String subject, String cause, Map<String, Double> values) {

    /** The ordinance does not allow it now. */
    public static final String WINDOW = "window";

    /** The zone is locked out. */
    public static final String LOCK_OUT = "lock-out";

    /** The master valve was shut by an alarm. */
    public static final String MASTER = "master";

    /** Flow was too high, too low, or unscheduled. */
    public static final String FLOW = "flow";

    /** The schedule was changed. */
    public static final String SET_UP = "set-up";

    /** Held too long, or until the zone's next start. */
    public static final String HELD = "held";

    /** A zone is run by hand. */
    public static final String BY_HAND = "by-hand";

    /** Kinds; the season has kinds of the same names. */
    public enum Kind {
        ZONE_ON,
        ZONE_OFF,
        START_SKIPPED,
        RUN_PAUSED,
        RUN_RESUMED,
        RUN_SHUT,
        SENSOR_TRIPPED,
        SENSOR_REARMED,
        FLOW_HIGH,
        FLOW_LOW,
        FLOW_UNSCHEDULED,
        ZONE_LOCKED_OUT,
        MASTER_SHUT,
        EXPECTED_RECORDED
    }
}
