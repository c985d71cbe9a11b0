package provingyard.scenario;

import com.fasterxml.jackson.databind.EnumNamingStrategies.CamelCaseStrategy;
import com.fasterxml.jackson.databind.annotation.EnumNaming;
import java.time.LocalTime;
import provingyard.quantity.Dimension;
import provingyard.quantity.In;

/**
 * A fault that can happen.
 *
 * @param kind what breaks
 * @param on id of the pipe, fitting or head; for sensor faults the sensor kind's name
 * @param along m from the pipe's {@code from} end (pipes only)
 * @param opening orifice area in m2 (breaks and leaks)
 * @param leakExponent N1 of the fixed-and-variable-area leak law, 0.5 to 1.5
 * @param amount size of other faults in their own measure (0 where unused): K for a freeze sensor's offset, share
 *     for a clog
 * @param when when it happens in the site's own season; null when only by its rate
 * @param rate mean occurrences per season, for draws of other seasons
 */
public record FaultPlan(
        Kind kind,
        String on,
        @In(Dimension.LENGTH) double along,
        @In(Dimension.AREA) double opening,
        double leakExponent,
        double amount,
        When when,
        @In(Dimension.OCCURRENCE) double rate) {

    /** Kinds of fault. */
    @EnumNaming(CamelCaseStrategy.class)
    public enum Kind {
        MAINLINE_BREAK,
        MAINLINE_LEAK,
        LATERAL_BREAK,
        VALVE_STUCK_OPEN,
        VALVE_WEEPS,
        VALVE_STUCK_SHUT,
        HEAD_BROKEN,
        NOZZLE_CLOGGED,
        RAIN_STUCK,
        WIND_SEIZED,
        FREEZE_READS_WARM,
        FLOW_JAMMED,
        SOIL_VOID
    }

    /** Day of the season (1 is the first) and time. */
    public record When(int day, LocalTime at) {}
}
