package provingyard.call;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static provingyard.call.CallSites.answer;
import static provingyard.call.CallSites.number;
import static provingyard.call.CallSites.suspect;

import java.util.List;
import org.junit.jupiter.api.Test;
import provingyard.diagnosis.SiteState;
import provingyard.scenario.FaultPlan;
import provingyard.scenario.FaultPlan.Kind;
import provingyard.world.electric.Wiring;

/** Each electrical fault shows as a technician would expect it to; all numbers come from circuit and pipes. */
class ElectricSignaturesTest {

    private static final CallSite SITE = CallSites.of("quillback-clinic", 14);
    private static final Wiring WIRING = Wiring.usual(SITE.scenario());
    private static final List<String> ZONES =
            List.of("zone-1", "zone-2", "zone-3", "zone-4", "zone-5", "zone-6", "zone-7");
    private static final String ZONE = "zone-3";
    private static final double OPEN = ElectricKit.OPEN_OHMS;

    private static double ohms(String zone, Case wrong) {
        return number(SITE, "ohmsToCommon:" + zone, wrong);
    }

    private static double atCoil(Case wrong) {
        return number(SITE, "ohmsAtCoil:" + ZONE, wrong);
    }

    private static double volts(String zone, Case wrong) {
        return number(SITE, "voltsAtTerminal:" + zone, wrong);
    }

    private static double amps(String zone, Case wrong) {
        return number(SITE, "clampAmps:" + zone, wrong);
    }

    private static double metered(String zone, Case wrong) {
        return number(SITE, "runZone:" + zone, wrong);
    }

    private static FaultPlan fault(Case wrong) {
        return SITE.faults().get(wrong.faults().get(0));
    }

    private static void assertOthersAreSound(String but, Case wrong) {
        ZONES.stream()
                .filter(z -> !z.equals(but))
                .forEach(z -> assertEquals(ohms(z, Case.SOUND), ohms(z, wrong), 0.1, z));
    }

    @Test
    void aSoundZoneHasVoltsTensOfOhmsAndRuns() {
        for (String zone : ZONES) {
            assertEquals(26, volts(zone, Case.SOUND), 2, zone);
            assertEquals(31, ohms(zone, Case.SOUND), 4, zone);
            assertEquals(0.27, amps(zone, Case.SOUND), 0.05, zone);
            assertEquals(WIRING.length(zone), number(SITE, "traceWire:" + zone, Case.SOUND), 1e-12, zone);
            assertEquals("runs", answer(SITE, "swapOutput:" + zone, Case.SOUND), zone);
        }
    }

    @Test
    void anOpenCoilIsOpenAtBothEndsAndTheZoneRunsByHandOnly() {
        Case wrong = suspect(SITE, Kind.COIL_OPEN, ZONE);
        assertEquals(OPEN, ohms(ZONE, wrong));
        assertEquals(OPEN, atCoil(wrong));
        assertEquals(27, volts(ZONE, wrong), 0.5);
        assertEquals(0, amps(ZONE, wrong), 1e-3);
        assertEquals(0, metered(ZONE, wrong), 1e-6);
        assertEquals("runs", answer(SITE, "openByHand:" + ZONE, wrong));
        assertEquals("doesNotRun", answer(SITE, "swapOutput:" + ZONE, wrong));
        assertOthersAreSound(ZONE, wrong);
    }

    @Test
    void aCutWireIsOpenAtTheControllerWhileTheCoilIsGoodAndTheLocatorEndsAtTheCut() {
        Case wrong = suspect(SITE, Kind.WIRE_CUT, ZONE);
        assertEquals(OPEN, ohms(ZONE, wrong));
        assertEquals(atCoil(Case.SOUND), atCoil(wrong), 1e-9);
        double ends = number(SITE, "traceWire:" + ZONE, wrong);
        assertEquals(fault(wrong).along(), ends, 1e-9);
        assertTrue(ends < WIRING.length(ZONE) - 1);
        assertEquals("runs", answer(SITE, "openByHand:" + ZONE, wrong));
        assertOthersAreSound(ZONE, wrong);
    }

    @Test
    void aCutCommonLeavesAllZonesBeyondOpenAndThoseBeforeItNormal() {
        int seen = 0;
        for (int i = 0; i < SITE.faults().size(); i++) {
            FaultPlan fault = SITE.faults().get(i);
            if (fault.kind() != Kind.COMMON_CUT) {
                continue;
            }
            double last = WIRING.length(fault.on());
            for (String zone : ZONES) {
                boolean beyond = WIRING.length(zone) > last;
                double expected = beyond ? OPEN : ohms(zone, Case.SOUND);
                assertEquals(expected, ohms(zone, Case.of(i)), 1e-6, fault.on() + " " + zone);
                assertEquals(beyond, metered(zone, Case.of(i)) < 1e-6, fault.on() + " " + zone);
                seen += beyond ? 1 : 0;
            }
        }
        assertTrue(seen > ZONES.size(), "cuts before and between boxes were seen");
    }

    @Test
    void aShortHasHardlyAnyOhmsAndOpensTheFuse() {
        Case wrong = suspect(SITE, Kind.COIL_SHORTED, ZONE);
        assertTrue(atCoil(wrong) < fault(wrong).amount(), "ohms " + atCoil(wrong));
        double wires = ohms(ZONE, Case.SOUND) - atCoil(Case.SOUND);
        assertEquals(wires + atCoil(wrong), ohms(ZONE, wrong), 1e-6, "what is left is the wires'");
        assertEquals(0, volts(ZONE, wrong), 1e-6);
        assertEquals(0, amps(ZONE, wrong), 1e-6);
        assertEquals(0, metered(ZONE, wrong), 1e-6);
        assertOthersAreSound(ZONE, wrong);
    }

    @Test
    void aBadSpliceHasManyOhmsMoreInMoistGroundThanDryAndWeakensTheCurrent() {
        Case wrong = suspect(SITE, Kind.SPLICE_BAD, ZONE);
        double more = ohms(ZONE, wrong) - ohms(ZONE, Case.SOUND);
        assertTrue(more > fault(wrong).amount() * 1.5 && ohms(ZONE, wrong) < OPEN, "ohms " + more);
        assertEquals(atCoil(Case.SOUND), atCoil(wrong), 1e-9);
        assertTrue(amps(ZONE, wrong) < 0.7 * amps(ZONE, Case.SOUND));
        assertTrue(amps(ZONE, wrong) > 0.05);
    }

    @Test
    void aDeadOutputHasNoVoltsOnGoodWiresAndTheZoneRunsOnAnother() {
        Case wrong = suspect(SITE, Kind.OUTPUT_DEAD, ZONE);
        assertEquals(0, volts(ZONE, wrong), 0.5);
        assertEquals(ohms(ZONE, Case.SOUND), ohms(ZONE, wrong), 1e-9);
        assertEquals("runs", answer(SITE, "swapOutput:" + ZONE, wrong));
        assertEquals("doesNotRun", answer(SITE, "swapOutput:zone-2", wrong));
        assertEquals(volts("zone-1", Case.SOUND), volts("zone-1", wrong), 1e-6);
    }

    @Test
    void aDeadTransformerHasNoVoltsAnywhereOnGoodWires() {
        Case wrong = suspect(SITE, Kind.TRANSFORMER_DEAD);
        for (String zone : ZONES) {
            assertEquals(0, volts(zone, wrong), 1e-6, zone);
            assertEquals(ohms(zone, Case.SOUND), ohms(zone, wrong), 1e-9, zone);
            assertEquals("doesNotRun", answer(SITE, "swapOutput:" + zone, wrong), zone);
        }
    }

    @Test
    void twoZonesOnOneOutputAreTwoCoilsInParallelAndRunTogether() {
        Case wrong = suspect(SITE, Kind.ZONES_ON_ONE_OUTPUT, ZONE);
        double a = ohms("zone-2", Case.SOUND);
        double b = ohms(ZONE, Case.SOUND);
        assertEquals(a * b / (a + b), ohms("zone-2", wrong), 1.5);
        assertEquals(OPEN, ohms(ZONE, wrong));
        assertEquals(2 * amps("zone-2", Case.SOUND), amps("zone-2", wrong), 0.05);
        double together = metered("zone-2", wrong);
        assertTrue(together > 1.3 * metered("zone-2", Case.SOUND), "the meter shows both");
        assertEquals(0, metered(ZONE, wrong), 1e-6);
    }

    @Test
    void aValveThatDoesNotOpenHasGoodElectricsAndRunsNeitherWay() {
        Case wrong = suspect(SITE, Kind.VALVE_STUCK_SHUT, ZONE);
        assertEquals(ohms(ZONE, Case.SOUND), ohms(ZONE, wrong), 1e-9);
        assertEquals(volts(ZONE, Case.SOUND), volts(ZONE, wrong), 1e-9);
        assertEquals("doesNotRun", answer(SITE, "openByHand:" + ZONE, wrong));
        assertEquals("doesNotRun", answer(SITE, "swapOutput:" + ZONE, wrong));
    }

    @Test
    void aBrokenSensorLoopTakesAllVoltsUntilItIsBypassed() {
        Case wrong = suspect(SITE, Kind.RAIN_STUCK);
        FieldTest test = SITE.test("voltsAtTerminal:" + ZONE).orElseThrow();
        SiteState bypassed = SITE.test("bypassSensors").orElseThrow().action().after(SITE.start());
        assertEquals(0, volts(ZONE, wrong), 1e-6);
        double now = ((Expected.Number) SITE.expected(test, bypassed, wrong)).value();
        assertEquals(volts(ZONE, Case.SOUND), now, 0.2);
    }
}
