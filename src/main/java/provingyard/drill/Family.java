package provingyard.drill;

import provingyard.call.CallSite;
import provingyard.scenario.FaultPlan;

/** Faults that are learned together, because the same way of thinking finds them. */
public enum Family {
    /** Pipes, heads, valves, filters and the supply. */
    HYDRAULIC,
    /** Wires, splices and coils. */
    ELECTRICAL,
    /** The controller: its outputs, its transformer, its program. */
    CONTROLLER,
    /** What sensors feel and what they tell. */
    SENSOR,
    /** Nothing is wrong. */
    NONE;

    /** The family of a kind of fault. */
    public static Family of(FaultPlan.Kind kind) {
        return switch (kind) {
            case MAINLINE_BREAK,
                    MAINLINE_LEAK,
                    LATERAL_BREAK,
                    HOUSE_RUNS,
                    VALVE_STUCK_OPEN,
                    VALVE_WEEPS,
                    VALVE_STUCK_SHUT,
                    MASTER_STUCK_OPEN,
                    MASTER_STUCK_SHUT,
                    VALVE_PARTLY_SHUT,
                    FILTER_CLOGGED,
                    SUPPLY_LOW,
                    REGULATOR_LOW,
                    HEAD_BROKEN,
                    NOZZLE_CLOGGED -> HYDRAULIC;
            case COIL_OPEN, COIL_SHORTED, WIRE_CUT, COMMON_CUT, SPLICE_BAD, ZONES_ON_ONE_OUTPUT -> ELECTRICAL;
            case OUTPUT_DEAD, TRANSFORMER_DEAD, EXTRA_START, SEASONAL_WRONG -> CONTROLLER;
            case RAIN_STUCK,
                    RAIN_STUCK_DRY,
                    WIND_SEIZED,
                    FREEZE_READS_WARM,
                    FLOW_JAMMED,
                    FLOW_FACTOR_WRONG,
                    SOIL_VOID -> SENSOR;
        };
    }

    /** The family of a hypothesis of a site; the first one is that nothing is wrong. */
    static Family of(CallSite site, int hypothesis) {
        return hypothesis == 0 ? NONE : of(site.faults().get(hypothesis - 1).kind());
    }
}
