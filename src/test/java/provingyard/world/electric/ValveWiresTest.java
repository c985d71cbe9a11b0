package provingyard.world.electric;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import provingyard.scenario.FaultPlan;
import provingyard.scenario.FaultPlan.Kind;
import provingyard.scenario.Plumbing.Fitting;
import provingyard.scenario.Plumbing.FittingKind;
import provingyard.scenario.Scenario;
import provingyard.scenario.Sites;

/** Which valves stand open on sound and on faulty wires, on shipped sites. */
@Tag("unit")
class ValveWiresTest {

    private static FaultPlan fault(Kind kind, String on, double along, double amount) {
        return new FaultPlan(kind, on, along, 0, 0.5, amount, null, 0);
    }

    private static ValveWires wires(String site, FaultPlan... faults) {
        Scenario scenario = Sites.open(site).orThrow();
        return ValveWires.of(scenario.with(scenario.catalogue(), scenario.yard(), List.of(faults)));
    }

    private static List<Integer> all(FaultPlan... faults) {
        List<Integer> acting = new ArrayList<>();
        for (int i = 0; i < faults.length; i++) {
            acting.add(i);
        }
        return acting;
    }

    /** Valves open on the row, whose master valve is normally closed, while a zone runs and all faults act. */
    private static Set<String> onTheRow(String zone, FaultPlan... faults) {
        ValveWires wires = wires("tansy-row", faults);
        return wires.open(wires.panel(List.of(zone), true), all(faults));
    }

    private static Set<String> onTheClinic(String zone, FaultPlan... faults) {
        ValveWires wires = wires("quillback-clinic", faults);
        return wires.open(wires.panel(List.of(zone), true), all(faults));
    }

    @ParameterizedTest
    @ValueSource(strings = {"burdock-steps", "quillback-clinic", "sorrel-court", "tansy-row", "teasel-field"})
    void soundWiresOpenWhatTheControllerWantsAndNothingElse(String site) {
        ValveWires wires = wires(site);
        for (Fitting zone : Sites.open(site).orThrow().plumbing().fittings()) {
            if (zone.kind() == FittingKind.ZONE_VALVE) {
                Set<String> wanted = new LinkedHashSet<>(Set.of("master"));
                wanted.add(zone.id());
                assertEquals(wanted, wires.open(wires.panel(List.of(zone.id()), true), List.of()));
            }
        }
        assertEquals(Set.of(), wires.open(wires.panel(List.of(), false), List.of()), "shut by an alarm");
    }

    @Test
    void aNormallyOpenMasterValveIsDrawnToBeShut() {
        ValveWires clinic = wires("quillback-clinic");
        Panel run = clinic.panel(List.of("zone-1"), true);
        assertEquals(Set.of("zone-1"), clinic.drawn(run, List.of()));
        Panel alarm = clinic.panel(List.of(), false);
        assertEquals(Set.of("master"), clinic.drawn(alarm, List.of()));
        ValveWires row = wires("tansy-row");
        assertEquals(Set.of("zone-1", "master"), row.drawn(row.panel(List.of("zone-1"), true), List.of()));
        assertEquals(Set.of(), row.panel(List.of(), false).on());
    }

    @Test
    void whatIsWrongWithOneValvesWireLeavesTheOthersAlone() {
        List<FaultPlan> own = List.of(
                fault(Kind.COIL_OPEN, "zone-2", 0, 0),
                fault(Kind.WIRE_CUT, "zone-2", 2, 0),
                fault(Kind.WIRE_CUT, "zone-2", 1e4, 0),
                fault(Kind.WIRE_CUT, "zone-2", 0, 0),
                fault(Kind.SPLICE_BAD, "zone-2", 0, 200),
                fault(Kind.OUTPUT_DEAD, "zone-2", 0, 0));
        for (FaultPlan fault : own) {
            assertEquals(
                    Set.of("master"), onTheRow("zone-2", fault), fault.kind().name());
            assertEquals(
                    Set.of("master", "zone-1"),
                    onTheRow("zone-1", fault),
                    fault.kind().name());
        }
    }

    /** A coil that is out takes 24 V through 30 ohm and 52 ohm of reactance; a few ohms more in a joint do no harm. */
    @Test
    void aBadJointMattersByItsOhms() {
        assertEquals(Set.of("master", "zone-2"), onTheRow("zone-2", fault(Kind.SPLICE_BAD, "zone-2", 0, 1)));
        double reactance = 2 * Math.PI * 60 * 0.1378;
        double amps = 27 / Math.hypot(3 + 30 + 60, reactance);
        assertTrue(amps < 0.28, "already dry, 60 ohm leave less than pulls in");
        assertEquals(Set.of("master"), onTheRow("zone-2", fault(Kind.SPLICE_BAD, "zone-2", 0, 60)));
    }

    @Test
    void aShortedCoilTakesEverythingDownWhileItsZoneRuns() {
        FaultPlan shorted = fault(Kind.COIL_SHORTED, "zone-2", 0, 2);
        assertEquals(Set.of(), onTheRow("zone-2", shorted), "the master valve as well");
        assertEquals(Set.of("master", "zone-1"), onTheRow("zone-1", shorted));
        assertEquals(Set.of("master"), onTheClinic("zone-2", shorted), "a normally open one rests open");
    }

    @Test
    void aDeadTransformerOpensNothing() {
        FaultPlan dead = fault(Kind.TRANSFORMER_DEAD, "controller", 0, 0);
        assertEquals(Set.of(), onTheRow("zone-1", dead));
        assertEquals(Set.of("master"), onTheClinic("zone-1", dead));
        ValveWires clinic = wires("quillback-clinic", dead);
        assertEquals(Set.of("master"), clinic.open(clinic.panel(List.of(), false), List.of(0)), "no alarm shuts it");
    }

    @Test
    void aCutCommonTakesAllValvesInBoxesBeyond() {
        Wiring wiring = wires("teasel-field").sound();
        assertTrue(wiring.boxes().size() > 2);
        String near = wiring.boxes().get(1).id();
        String last = wiring.boxes().get(wiring.boxes().size() - 1).id();
        String cutAt = valveIn(wiring, near);
        ValveWires wires = wires("teasel-field", fault(Kind.COMMON_CUT, cutAt, 0, 0));
        for (ZoneWire wire : wiring.wires()) {
            if (!wire.valve().equals("master")) {
                boolean before =
                        wiring.box(wire.box()).metres() <= wiring.box(near).metres();
                Set<String> open = wires.open(wires.panel(List.of(wire.valve()), true), List.of(0));
                assertEquals(before, open.contains(wire.valve()), wire.valve());
            }
        }
        String end = valveIn(wiring, last);
        ValveWires beyondAll = wires("teasel-field", fault(Kind.COMMON_CUT, end, 0, 0));
        assertEquals(beyondAll.sound(), beyondAll.with(List.of(0)), "nothing lies beyond the last box");
    }

    private static String valveIn(Wiring wiring, String box) {
        return wiring.wires().stream()
                .filter(w -> w.box().equals(box))
                .findFirst()
                .orElseThrow()
                .valve();
    }

    @Test
    void twoZonesOnOneOutputRunTogetherOrNotAtAll() {
        FaultPlan third = fault(Kind.ZONES_ON_ONE_OUTPUT, "zone-3", 0, 0);
        assertEquals(Set.of("master", "zone-2", "zone-3"), onTheRow("zone-2", third));
        assertEquals(Set.of("master"), onTheRow("zone-3", third), "its own output is empty");
        FaultPlan first = fault(Kind.ZONES_ON_ONE_OUTPUT, "zone-1", 0, 0);
        assertEquals(Set.of("master", "zone-1", "zone-2"), onTheRow("zone-2", first));
    }

    @Test
    void aStuckRainSensorsLoopIsBrokenUntilItIsBypassed() {
        FaultPlan stuck = fault(Kind.RAIN_STUCK, "rain", 0, 0);
        ValveWires wires = wires("tansy-row", stuck);
        Panel run = wires.panel(List.of("zone-1"), true);
        assertEquals(Set.of(), wires.open(run, List.of(0)));
        assertEquals(Set.of("master", "zone-1"), wires.open(run.bypassed(), List.of(0)));
        assertFalse(ValveWires.isElectric(Kind.RAIN_STUCK), "a season has its sensors hold");
    }

    @Test
    void faultsOfOneCaseActTogetherInAnyOrder() {
        FaultPlan coil = fault(Kind.COIL_OPEN, "zone-2", 0, 0);
        FaultPlan both = fault(Kind.ZONES_ON_ONE_OUTPUT, "zone-3", 0, 0);
        assertEquals(Set.of("master", "zone-3"), onTheRow("zone-2", coil, both));
        assertEquals(Set.of("master", "zone-3"), onTheRow("zone-2", both, coil));
    }
}
