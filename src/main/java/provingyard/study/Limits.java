package provingyard.study;

import java.util.ArrayList;
import java.util.List;
import provingyard.scenario.Kit;
import provingyard.scenario.Scenario;
import provingyard.scenario.SensorKind;
import provingyard.setup.Cost;
import provingyard.setup.SetUp;

/** What a site lets a trainee do: its budget, the number of each kind in its kit, and its locks. */
record Limits(Scenario scenario) {

    /** The kinds that may be placed. */
    List<SensorKind> kinds() {
        List<SensorKind> kinds = new ArrayList<>();
        for (SensorKind kind : SensorKind.values()) {
            if (most(kind) > 0) {
                kinds.add(kind);
            }
        }
        return kinds;
    }

    /** How many of a kind may be placed. */
    int most(SensorKind kind) {
        Kit.Item item = scenario.kit().item(kind);
        return item == null || scenario.locks().sensors().contains(kind) ? 0 : item.most();
    }

    /** Whether a set-up keeps within them. */
    boolean keeps(SetUp setUp) {
        for (SensorKind kind : SensorKind.values()) {
            if (setUp.of(kind).size() > most(kind)) {
                return false;
            }
        }
        boolean clock = setUp.schedule() == null || !scenario.locks().schedule();
        return clock && Cost.of(setUp, scenario.kit()).withinBudget();
    }
}
