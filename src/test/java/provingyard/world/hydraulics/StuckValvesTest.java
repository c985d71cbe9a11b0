package provingyard.world.hydraulics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import provingyard.scenario.FaultPlan;
import provingyard.scenario.Scenario;
import provingyard.scenario.Sites;

/** Two faults of one valve: what they do together does not depend on which is listed first. */
@Tag("unit")
class StuckValvesTest {

    private static final Scenario SITE = Sites.open("tansy-row").orThrow();

    private static FaultPlan fault(FaultPlan.Kind kind) {
        return new FaultPlan(kind, "zone-1", 0, 0, 0.5, 0, null, 0);
    }

    private static Scenario with(FaultPlan... faults) {
        return SITE.with(SITE.catalogue(), SITE.yard(), List.of(faults));
    }

    private static double supply(long active, FaultPlan... faults) {
        Waterworks works = Waterworks.of(with(faults));
        return works.flows(new boolean[works.zones().size()], true, active).supply();
    }

    @Test
    void aValveThatSticksShutLetsNothingThroughWhateverIsListedFirst() {
        FaultPlan open = fault(FaultPlan.Kind.VALVE_STUCK_OPEN);
        FaultPlan shut = fault(FaultPlan.Kind.VALVE_STUCK_SHUT);
        assertTrue(supply(1, open, shut) > 1e-4, "stuck open alone it waters");
        assertEquals(0, supply(3, open, shut), 1e-12);
        assertEquals(0, supply(3, shut, open), 1e-12);
    }
}
