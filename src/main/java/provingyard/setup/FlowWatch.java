package provingyard.setup;

import com.fasterxml.jackson.databind.EnumNamingStrategies.CamelCaseStrategy;
import com.fasterxml.jackson.databind.annotation.EnumNaming;
import java.util.List;
import provingyard.quantity.Dimension;
import provingyard.quantity.In;

/**
 * How the controller watches flow.
 *
 * @param sensor placement id of the flow sensor, or null when flow is not watched
 * @param expected expected flow of zones
 * @param record zones without a typed expected flow get theirs recorded on their first run
 * @param high share of the expected flow above which a zone is too high (1.03 to 2)
 * @param low share below which it is too low (0 is off)
 * @param settling s after a zone opens in which flow is not judged
 * @param averaging s over which flow is averaged
 * @param onZone what is done when a zone is too high or too low
 * @param unscheduled m3/s above which flow with all valves shut is an alarm
 * @param unscheduledAfter s that such flow must last
 * @param onUnscheduled what is done then
 */
public record FlowWatch(
        String sensor,
        List<Expected> expected,
        boolean record,
        @In(Dimension.FRACTION) double high,
        @In(Dimension.FRACTION) double low,
        @In(Dimension.DURATION) double settling,
        @In(Dimension.DURATION) double averaging,
        Action onZone,
        @In(Dimension.FLOW) double unscheduled,
        @In(Dimension.DURATION) double unscheduledAfter,
        Action onUnscheduled) {

    /** Flow is not watched. */
    public static final FlowWatch OFF =
            new FlowWatch(null, List.of(), true, 1.3, 0, 120, 60, Action.ALARM, 2e-3 / 60, 600, Action.ALARM);

    public FlowWatch {
        expected = List.copyOf(expected);
    }

    /** The same watch on another sensor, or on none (null). */
    public FlowWatch watching(String other) {
        return new FlowWatch(
                other,
                expected,
                record,
                high,
                low,
                settling,
                averaging,
                onZone,
                unscheduled,
                unscheduledAfter,
                onUnscheduled);
    }

    /** A zone's expected flow in m3/s. */
    public record Expected(String zone, @In(Dimension.FLOW) double flow) {}

    /** What the controller does. */
    @EnumNaming(CamelCaseStrategy.class)
    public enum Action {
        /** Alarm only. */
        ALARM,
        /** Shut the zone, go on with the next. */
        SHUT_ZONE,
        /** Shut the master valve; nothing runs until re-armed. */
        SHUT_MASTER
    }
}
