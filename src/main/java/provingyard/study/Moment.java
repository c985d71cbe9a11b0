package provingyard.study;

import java.util.List;
import provingyard.scenario.SensorKind;

/**
 * A stretch of the season that cost much, or in which something was saved that the clock alone would have lost.
 *
 * @param tick first minute of it, to which the yard is taken back
 * @param until the minute after its last
 * @param what what happened
 * @param why what brought it about
 * @param sensor the kind of sensor that it speaks of, or null
 * @param subjects ids of zones, walks, faults or sensors that it names, in order
 * @param amount how much: m3 (water, leaks), m2 h (ice), m2 d (plants), count (alarms)
 * @param money USD lost (positive) or saved (negative)
 * @param readings numbers that its sentence needs, in SI units, in the order that {@code why} fixes
 */
public record Moment(
        long tick,
        long until,
        What what,
        Why why,
        SensorKind sensor,
        List<String> subjects,
        double amount,
        double money,
        List<Double> readings) {

    /** What happened. */
    public enum What {
        WATERED_WET_SOIL,
        DRIFTED,
        ICED,
        LEAKED,
        FALSE_ALARM,
        WENT_DRY,
        SAVED_WATER,
        SAVED_DRIFT,
        SAVED_ICE,
        LEAK_SHUT
    }

    /** What brought it about; each has a sentence with cause, cost and remedy. */
    public enum Why {
        /** No such sensor on the site. */
        NO_SENSOR,
        /** It is placed, but the controller does nothing when it trips. */
        NOT_CONNECTED,
        /** Its place hides from it what it should see. */
        PLACE,
        /** Its place is right, its setting is not. */
        SETTING,
        /** The sensor was broken. */
        FAULT,
        /** It held for too long, or without need. */
        HELD,
        /** It did what it is for. */
        WORKED,
        /** Nothing of the kit could have helped; the schedule could. */
        SCHEDULE
    }

    public Moment {
        subjects = List.copyOf(subjects);
        readings = List.copyOf(readings);
    }
}
