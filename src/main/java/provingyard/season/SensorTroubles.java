package provingyard.season;

import java.util.ArrayList;
import java.util.List;
import provingyard.scenario.FaultPlan;
import provingyard.scenario.Scenario;
import provingyard.sensor.SensorFaults;

/** What the acting faults do to the sensors. */
public final class SensorTroubles {

    private SensorTroubles() {}

    static SensorFaults of(Scenario scenario, long active) {
        if (active == 0) {
            return SensorFaults.NONE;
        }
        List<FaultPlan> acting = new ArrayList<>();
        for (int i = 0; i < scenario.faults().size(); i++) {
            if ((active >> i & 1) != 0) {
                acting.add(scenario.faults().get(i));
            }
        }
        return of(acting);
    }

    /** The same for a list of acting faults; those that break no sensor count for nothing. */
    public static SensorFaults of(List<FaultPlan> acting) {
        List<SensorFaults.Fault> faults = new ArrayList<>();
        for (FaultPlan plan : acting) {
            SensorFaults.Kind kind = kind(plan);
            if (kind != null) {
                faults.add(new SensorFaults.Fault(kind, plan.on(), plan.amount()));
            }
        }
        return faults.isEmpty() ? SensorFaults.NONE : new SensorFaults(faults);
    }

    /** Whether a fault breaks a sensor. */
    static boolean isOne(FaultPlan plan) {
        return kind(plan) != null;
    }

    private static SensorFaults.Kind kind(FaultPlan plan) {
        return switch (plan.kind()) {
            case RAIN_STUCK -> SensorFaults.Kind.RAIN_STUCK_WET;
            case RAIN_STUCK_DRY -> SensorFaults.Kind.RAIN_STUCK_DRY;
            case WIND_SEIZED -> SensorFaults.Kind.WIND_SEIZED;
            case FREEZE_READS_WARM -> SensorFaults.Kind.FREEZE_READS_WARM;
            case FLOW_JAMMED -> SensorFaults.Kind.FLOW_JAMMED;
            case FLOW_FACTOR_WRONG -> SensorFaults.Kind.FLOW_FACTOR_WRONG;
            case SOIL_VOID -> SensorFaults.Kind.SOIL_VOID;
            default -> null;
        };
    }
}
