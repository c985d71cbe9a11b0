package provingyard.call;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static provingyard.call.CallSites.answer;
import static provingyard.call.CallSites.number;
import static provingyard.call.CallSites.suspect;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import provingyard.scenario.FaultPlan;
import provingyard.scenario.FaultPlan.Kind;

/**
 * Signatures of faults of pipes, valves, heads and supply, as hydraulics and the trade's reasoning have them; computed on
 * the clinic's plumbing (normally closed or open master valve, isolation valves, filter). Flows in m3/s, pressures in Pa.
 */
@Tag("unit")
class PipeSignaturesTest {

    private static final double LITRE_A_MINUTE = 1e-3 / 60;
    private static final CallSite SITE = CallSites.of("quillback-clinic", 10);
    private static final List<String> ZONES = List.of("zone-1", "zone-2", "zone-3");

    private static double meter(Case wrong) {
        return number(SITE, "readMeter", wrong) / LITRE_A_MINUTE;
    }

    private static double run(String zone, Case wrong) {
        return number(SITE, "runZone:" + zone, wrong);
    }

    private static double head(String zone, Case wrong) {
        return number(SITE, "headPressure:" + zone, wrong);
    }

    private static double standing(Case wrong) {
        return number(SITE, "staticPressure", wrong);
    }

    private static Case largest(Kind kind) {
        int best = -1;
        for (int i = 0; i < SITE.faults().size(); i++) {
            FaultPlan fault = SITE.faults().get(i);
            boolean larger =
                    best < 0 || fault.opening() > SITE.faults().get(best).opening();
            best = fault.kind() == kind && larger ? i : best;
        }
        return Case.of(best);
    }

    @Test
    void soundSystemsReadNothingAtRestAndRunWell() {
        assertEquals(0, meter(Case.SOUND), 1e-9);
        for (String zone : ZONES) {
            assertEquals("allWell", answer(SITE, "walkZone:" + zone, Case.SOUND));
            assertEquals("runs", answer(SITE, "openByHand:" + zone, Case.SOUND));
        }
    }

    @Test
    void aMainlineBreakDrawsMuchAtRestAndTakesPressure() {
        Case broken = largest(Kind.MAINLINE_BREAK);
        assertTrue(meter(broken) > 60, "L/min at rest: " + meter(broken));
        assertTrue(standing(broken) < 0.97 * standing(Case.SOUND));
        assertTrue(head("zone-1", broken) < head("zone-1", Case.SOUND));
    }

    @Test
    void aSmallMainlineLeakDrawsLittleAndLeavesPressuresNearNormal() {
        Case leak = suspect(SITE, Kind.MAINLINE_LEAK);
        assertTrue(meter(leak) > 0.5 && meter(leak) < 6, "L/min at rest: " + meter(leak));
        assertEquals(standing(Case.SOUND), standing(leak), 0.01 * standing(Case.SOUND));
    }

    @Test
    void anIsolationValveTellsWhichSideOfItAMainLeaks() {
        List<FieldTest> valves =
                SITE.tests().stream().filter(t -> t.kind().equals("isolate")).toList();
        assertTrue(valves.size() >= 2);
        boolean stops = false;
        boolean goesOn = false;
        for (int i = 0; i < SITE.faults().size(); i++) {
            if (SITE.faults().get(i).kind() == Kind.MAINLINE_BREAK) {
                double left = number(SITE, valves.get(0).id(), Case.of(i)) / LITRE_A_MINUTE;
                stops |= left < 1e-6;
                goesOn |= left > 10;
                assertTrue(left < 1e-6 || left > 10, "all or nothing, not " + left);
            }
        }
        assertTrue(stops && goesOn, "the valve splits the main");
    }

    @Test
    void aLateralBreakShowsOnlyWhileItsZoneRuns() {
        Case broken = suspect(SITE, Kind.LATERAL_BREAK);
        String pipe = SITE.faults().get(broken.faults().get(0)).on();
        String zone = SITE.repairClass(broken.faults().get(0)).substring("lateral:".length());
        assertEquals(0, meter(broken), 1e-9);
        assertTrue(run(zone, broken) > 1.1 * run(zone, Case.SOUND), pipe);
        assertTrue(head(zone, broken) < head(zone, Case.SOUND));
    }

    @Test
    void aValveStuckOpenDrawsItsZonesFlowAtRest() {
        Case stuck = suspect(SITE, Kind.VALVE_STUCK_OPEN, "zone-1");
        assertEquals(run("zone-1", Case.SOUND) / LITRE_A_MINUTE, meter(stuck), 0.15 * meter(stuck));
        assertEquals("anotherRuns", answer(SITE, "walkZone:zone-2", stuck));
    }

    @Test
    void aWeepingValveDrawsLittle() {
        double weep = meter(suspect(SITE, Kind.VALVE_WEEPS, "zone-2"));
        assertTrue(weep > 0.2 && weep < 6, "L/min " + weep);
    }

    @Test
    void aValveThatWillNotOpenStaysShutByHandToo() {
        Case stuck = suspect(SITE, Kind.VALVE_STUCK_SHUT, "zone-2");
        assertEquals("nothingRuns", answer(SITE, "walkZone:zone-2", stuck));
        assertEquals("doesNotRun", answer(SITE, "openByHand:zone-2", stuck));
        assertEquals("allWell", answer(SITE, "walkZone:zone-1", stuck));
    }

    @Test
    void aHalfShutValveAndALowSupplyDifferInStandingPressure() {
        Case halfShut = suspect(SITE, Kind.VALVE_PARTLY_SHUT);
        assertEquals(standing(Case.SOUND), standing(halfShut), 1);
        Case low = suspect(SITE, Kind.SUPPLY_LOW);
        assertTrue(standing(low) < 0.8 * standing(Case.SOUND));
        assertTrue(ZONES.stream().allMatch(z -> head(z, low) < 0.9 * head(z, Case.SOUND)));
        assertTrue(SITE.tests().stream()
                .filter(t -> t.kind().equals("headPressure"))
                .anyMatch(t -> number(SITE, t.id(), halfShut) < 0.995 * number(SITE, t.id(), Case.SOUND)));
    }

    @Test
    void aBrokenHeadIsAGeyserAndAClogADrySpot() {
        Case broken = suspect(SITE, Kind.HEAD_BROKEN);
        String zone = SITE.repairClass(broken.faults().get(0)).substring("headBroken:".length());
        assertEquals("geyser", answer(SITE, "walkZone:" + zone, broken));
        assertTrue(run(zone, broken) > run(zone, Case.SOUND));
        Case clogged = suspect(SITE, Kind.NOZZLE_CLOGGED);
        assertEquals("drySpot", answer(SITE, "walkZone:" + zone, clogged));
        assertTrue(run(zone, clogged) < run(zone, Case.SOUND));
    }

    @Test
    void aMasterValveStuckShutStopsAllZones() {
        Case shut = suspect(SITE, Kind.MASTER_STUCK_SHUT);
        ZONES.forEach(z -> assertEquals("nothingRuns", answer(SITE, "walkZone:" + z, shut)));
        assertNotEquals("nothingRuns", answer(SITE, "walkZone:zone-1", suspect(SITE, Kind.MASTER_STUCK_OPEN)));
    }

    @Test
    void whereALeakIsHeardProbedAndDug() {
        Case broken = largest(Kind.MAINLINE_BREAK);
        String cell = SITE.repairClass(broken.faults().get(0));
        assertEquals("loud", answer(SITE, "listen:" + cell, broken));
        assertEquals("leaks", answer(SITE, "dig:" + cell, broken));
        assertEquals("silent", answer(SITE, "listen:" + cell, Case.SOUND));
        assertEquals("sound", answer(SITE, "dig:" + cell, Case.SOUND));
        assertEquals("dry", answer(SITE, "probe:" + cell, Case.SOUND));
    }
}
