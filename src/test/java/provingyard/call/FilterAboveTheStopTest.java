package provingyard.call;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import provingyard.diagnosis.SafetyGates;
import provingyard.diagnosis.SiteState;
import provingyard.scenario.Plumbing.Fitting;
import provingyard.scenario.Sites;
import provingyard.world.hydraulics.Hands;
import provingyard.world.hydraulics.Waterworks;

/** No water presses on a filter that is opened, wherever it stands. */
@Tag("unit")
class FilterAboveTheStopTest {

    private static final CallSite SITE =
            CallSite.of(Sites.open("spikenard-rise").orThrow());

    private static double pressureIn(String filter, SiteState state) {
        Waterworks pipes = SITE.ground().pipes();
        Fitting fitting = SITE.scenario().plumbing().fittings().stream()
                .filter(f -> f.id().equals(filter))
                .findFirst()
                .orElseThrow();
        Hands hands = SITE.ground().hands(state);
        boolean[] none = new boolean[pipes.zones().size()];
        double within = pipes.flows(none, true, hands, List.of()).pressureAt(fitting.on(), fitting.along() + 0.01);
        return Double.isNaN(within) ? 0 : within;
    }

    @Test
    void theWaterIsShutBeforeIt() {
        for (String filter : List.of("filter-main", "filter-7")) {
            FieldTest inspect = SITE.test("inspectFilter:" + filter).orElseThrow();
            assertEquals(Set.of(), SafetyGates.breaches(inspect.action(), SITE.start()));
            assertEquals(0, pressureIn(filter, inspect.action().after(SITE.start())), filter);
        }
        assertTrue(pressureIn("filter-main", SITE.start()) > 100e3);
    }

    /** What the meter's stop relieved says nothing of what stands above it. */
    @Test
    void theStopAloneDoesNotMakeItSafe() {
        SiteState other =
                SITE.test("inspectFilter:filter-7").orElseThrow().action().after(SITE.start());
        assertEquals(SafetyGates.RELIEVED, other.condition(SafetyGates.PRESSURE));
        SiteState then =
                SITE.test("inspectFilter:filter-main").orElseThrow().action().after(other);
        assertEquals(Handled.SHUT, then.condition(Handled.valve("filter-main")));
    }

    @Test
    void itsRepairShutsTheSameAndTheNextTestOpensIt() {
        SiteState mended =
                Mending.repair(SITE, "filterClogged:filter-main").action().after(SITE.start());
        assertEquals(Handled.SHUT, mended.condition(Handled.valve("filter-main")));
        SiteState next = SITE.test("runZone:zone-1").orElseThrow().action().after(mended);
        assertEquals("", next.condition(Handled.valve("filter-main")));
        assertEquals("", next.condition(SafetyGates.PRESSURE));
    }
}
