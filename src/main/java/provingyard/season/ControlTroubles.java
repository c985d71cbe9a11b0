package provingyard.season;

import java.util.ArrayList;
import java.util.List;
import provingyard.control.ControlFaults;
import provingyard.scenario.FaultPlan;
import provingyard.scenario.Scenario;

/** What the acting faults do to the controller's program. */
public final class ControlTroubles {

    private static final double MINUTES_AN_HOUR = 60;

    private ControlTroubles() {}

    static ControlFaults of(Scenario scenario, long active) {
        if (active == 0) {
            return ControlFaults.NONE;
        }
        List<FaultPlan> acting = new ArrayList<>();
        for (int i = 0; i < scenario.faults().size(); i++) {
            if ((active >> i & 1) != 0) {
                acting.add(scenario.faults().get(i));
            }
        }
        return of(acting);
    }

    /** The same for a list of acting faults; those that change no program count for nothing. */
    public static ControlFaults of(List<FaultPlan> acting) {
        double seasonal = 1;
        List<Integer> extra = new ArrayList<>();
        for (FaultPlan plan : acting) {
            if (plan.kind() == FaultPlan.Kind.SEASONAL_WRONG) {
                seasonal *= plan.amount();
            } else if (plan.kind() == FaultPlan.Kind.EXTRA_START) {
                extra.add((int) Math.round(plan.amount() * MINUTES_AN_HOUR));
            }
        }
        return new ControlFaults(seasonal, extra);
    }
}
