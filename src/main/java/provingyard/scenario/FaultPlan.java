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
 * @param on id of the pipe, fitting or head; the supply's junction; for sensor faults the sensor kind's name; {@code
 *     controller} for what is wrong in the controller itself
 * @param along m from the pipe's {@code from} end (pipes only)
 * @param opening orifice area in m2 (breaks and leaks, and what is open in a house)
 * @param leakExponent N1 of the fixed-and-variable-area leak law, 0.5 to 1.5
 * @param amount size of other faults in their own measure, see {@link Kind} (0 where unused)
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

    /** Kinds of fault; in brackets what {@code amount} means. Electrical ones are on a zone valve unless said. */
    @EnumNaming(CamelCaseStrategy.class)
    public enum Kind {
        MAINLINE_BREAK,
        MAINLINE_LEAK,
        LATERAL_BREAK,
        VALVE_STUCK_OPEN,
        VALVE_WEEPS,
        /** Its diaphragm does not lift, or its flow control is shut. */
        VALVE_STUCK_SHUT,
        /** The master valve stays open whatever the controller wants. */
        MASTER_STUCK_OPEN,
        /** The master valve stays shut. */
        MASTER_STUCK_SHUT,
        /** An isolation valve is half shut (times its loss coefficient, with 1 velocity head added to it). */
        VALVE_PARTLY_SHUT,
        /** A filter or the backflow preventer's strainer is clogged (times its loss, as for a half shut valve). */
        FILTER_CLOGGED,
        /** The supply gives less (share of its static pressure that is lost). */
        SUPPLY_LOW,
        /**
         * Water runs in the house or building that the meter serves as well; {@code on} is the meter, behind which the house's
         * branch leaves. What runs there leaves the site by the house's drain and is counted as leaked.
         */
        HOUSE_RUNS,
        /** A regulator holds too little (share of its setting that is lost). */
        REGULATOR_LOW,
        /** A head's nozzle is gone or its body broken (share of its flow that is added). */
        HEAD_BROKEN,
        /** A head is clogged (share of its flow that is lost). */
        NOZZLE_CLOGGED,
        COIL_OPEN,
        /** The coil's leads touch (ohms). */
        COIL_SHORTED,
        /** The valve's own wire is cut; {@code along} is the distance on the wire's route. */
        WIRE_CUT,
        /** The common is cut beyond the box of this valve. */
        COMMON_CUT,
        /** A bad joint at the valve (ohms when dry). */
        SPLICE_BAD,
        OUTPUT_DEAD,
        /** On the controller: its transformer gives nothing. */
        TRANSFORMER_DEAD,
        /** The valve's wire sits on the output of the zone before it (of the second, for the first). */
        ZONES_ON_ONE_OUTPUT,
        /** On the controller: a second start that nobody wants (hours after the first). */
        EXTRA_START,
        /** On the controller: the seasonal percentage is wrong (times what it should be). */
        SEASONAL_WRONG,
        RAIN_STUCK,
        /** The rain sensor never trips: stuck dry or its wire bridged. */
        RAIN_STUCK_DRY,
        WIND_SEIZED,
        /** (K that it reads too warm.) */
        FREEZE_READS_WARM,
        FLOW_JAMMED,
        /** The flow sensor is set to a wrong pulse factor (what it shows, times the truth). */
        FLOW_FACTOR_WRONG,
        SOIL_VOID
    }

    /** Day of the season (1 is the first) and time. */
    public record When(int day, LocalTime at) {}
}
