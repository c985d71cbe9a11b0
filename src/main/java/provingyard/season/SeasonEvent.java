package provingyard.season;

import java.util.Map;

/**
 * Something that happened, for the ribbon, the records and the debrief.
 *
 * @param tick minute of the season, 0 is the first
 * @param kind what happened
 * @param subject id of the zone, sensor, pipe or walk it happened to
 * @param cause what brought it about: a sensor's id, {@code window}, {@code lock-out}, {@code master}, {@code flow},
 *     {@code set-up}, {@code held} or {@code by-hand}; empty where nothing did
 * @param values numbers that belong to it by name, in SI units, in a fixed order (never null)
 */
public record SeasonEvent(long tick, Kind kind, String subject, String cause, Map<String, Double> values) {

    /** An event without a cause. */
    public SeasonEvent(long tick, Kind kind, String subject, Map<String, Double> values) {
        this(tick, kind, subject, "", values);
    }

    /** Kinds of event. */
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
        FALSE_ALARM,
        FAULT_HAPPENED,
        FAULT_FOUND,
        WALK_ICED,
        WALK_CLEAR,
        RAIN_BEGAN,
        RAIN_ENDED,
        PLANTS_DRY,
        PLANTS_DIED,
        EXPECTED_RECORDED,
        SET_UP_CHANGED,
        /** The pipes' flows could not be worked out from this minute on; what follows cannot be trusted. */
        PIPES_NOT_SOLVED
    }
}
