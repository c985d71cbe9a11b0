package provingyard.season;

import java.util.ArrayList;
import java.util.List;
import provingyard.control.ControlFaults;
import provingyard.scenario.FaultPlan;
import provingyard.scenario.Scenario;

/** What the acting faults do to the controller's program. */
final class ControlTroubles {

    private static final double MINUTES_AN_HOUR = 60;

    private ControlTroubles() {}

    static ControlFaults of(Scenario scenario, long active) {
        if (active == 0) {
            return ControlFaults.NONE;
        }
        double seasonal = 1;
        List<Integer> extra = new ArrayList<>();
        for (int i = 0; i < scenario.faults().size(); i++) {
            FaultPlan plan = scenario.faults().get(i);
            boolean acts = (active >> i & 1) != 0;
            if (acts && plan.kind() == FaultPlan.Kind.SEASONAL_WRONG) {
                seasonal *= plan.amount();
            } else if (acts && plan.kind() == FaultPlan.Kind.EXTRA_START) {
                extra.add((int) Math.round(plan.amount() * MINUTES_AN_HOUR));
            }
        }
        return new ControlFaults(seasonal, extra);
    }
}
