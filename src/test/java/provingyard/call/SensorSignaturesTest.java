package provingyard.call;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static provingyard.call.CallSites.answer;
import static provingyard.call.CallSites.number;
import static provingyard.call.CallSites.suspect;

import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import provingyard.diagnosis.Action;
import provingyard.diagnosis.SiteState;
import provingyard.scenario.FaultPlan;
import provingyard.scenario.FaultPlan.Kind;
import provingyard.scenario.Sites;

/** Each fault of sensors and program shows as a technician would expect it to; all come from sensors, controller, pipes. */
class SensorSignaturesTest {

    private static final CallSite CLINIC = CallSites.of("quillback-clinic", 14);
    private static final CallSite COURT = CallSites.of("sorrel-court", 20);
    private static final CallSite FIELD = CallSites.of("teasel-field", 20);
    private static final CallSite STEPS = CallSites.of("burdock-steps", 14);

    private static double probability(CallSite site, String answer, Case wrong) {
        FieldTest test = site.test("readRecords").orElseThrow();
        int index = ((FieldTest.Measure.Answers) test.measure()).keys().indexOf(answer);
        Expected.Odds odds = (Expected.Odds) site.expected(test, site.start(), wrong);
        return odds.probabilities().get(index);
    }

    private static double amount(CallSite site, Case wrong) {
        return site.faults().get(wrong.faults().get(0)).amount();
    }

    private static void assertRecordsTell(CallSite site, String answer, Kind kind) {
        assertEquals("asPlanned", answer(site, "readRecords", Case.SOUND));
        assertEquals(1, probability(site, "asPlanned", Case.SOUND));
        assertTrue(
                probability(site, answer, suspect(site, kind)) >= 0.5,
                kind + " on " + site.scenario().id());
    }

    @Test
    void anExtraStartAndAWrongPercentageAreReadInTheProgramWhileTheWiresAreGood() {
        for (CallSite site : List.of(CLINIC, COURT, FIELD, STEPS)) {
            assertEquals(1, probability(site, "extraRuns", suspect(site, Kind.EXTRA_START)));
            assertEquals(1, probability(site, "longerRuns", suspect(site, Kind.SEASONAL_WRONG)));
            for (Kind kind : List.of(Kind.EXTRA_START, Kind.SEASONAL_WRONG)) {
                Case wrong = suspect(site, kind);
                for (String test : List.of("voltsAtTerminal:zone-1", "ohmsToCommon:zone-1", "runZone:zone-1")) {
                    assertEquals(number(site, test, Case.SOUND), number(site, test, wrong), test);
                }
            }
        }
    }

    @Test
    void aRainSensorStuckWetLetsNothingRunUntilItIsBypassed() {
        assertRecordsTell(STEPS, "nothingRan", Kind.RAIN_STUCK);
        Case wrong = suspect(STEPS, Kind.RAIN_STUCK);
        assertEquals("alreadyTripped", answer(STEPS, "wetRainSensor:rain-1", wrong));
        assertEquals("trips", answer(STEPS, "wetRainSensor:rain-1", Case.SOUND));
        assertEquals(0, number(STEPS, "runZone:zone-1", wrong), 1e-6);
        assertEquals("runs", answer(STEPS, "bypassSensors", wrong));
        assertEquals("doesNotRun", answer(STEPS, "bypassSensors", suspect(STEPS, Kind.TRANSFORMER_DEAD)));
    }

    @Test
    void aRainSensorThatNeverTripsDoesNotTripUnderWaterAndLetsZonesRunAfterRain() {
        assertRecordsTell(FIELD, "ranInRain", Kind.RAIN_STUCK_DRY);
        assertEquals("doesNotTrip", answer(FIELD, "wetRainSensor:rain-1", suspect(FIELD, Kind.RAIN_STUCK_DRY)));
    }

    @Test
    void aFreezeSensorThatReadsWarmDiffersFromTheThermometerAndLetsZonesRunInTheCold() {
        assertRecordsTell(COURT, "ranInFrost", Kind.FREEZE_READS_WARM);
        Case wrong = suspect(COURT, Kind.FREEZE_READS_WARM);
        double sound = number(COURT, "compareFreeze:freeze-1", Case.SOUND);
        assertTrue(Math.abs(sound) < 1.5, "sound one is off by " + sound);
        assertEquals(sound + amount(COURT, wrong), number(COURT, "compareFreeze:freeze-1", wrong), 1e-9);
    }

    @Test
    void aSeizedWindSensorDoesNotTurnAndLetsZonesRunInWind() {
        assertRecordsTell(FIELD, "ranInWind", Kind.WIND_SEIZED);
        assertEquals("stuck", answer(FIELD, "spinCups:wind-1", suspect(FIELD, Kind.WIND_SEIZED)));
        assertEquals("turns", answer(FIELD, "spinCups:wind-1", Case.SOUND));
    }

    @Test
    void aSoilSensorInAVoidShowsLessThanTheCoreAndLetsZonesRunOnWetSoil() {
        assertRecordsTell(STEPS, "ranOnWetSoil", Kind.SOIL_VOID);
        double sound = number(STEPS, "soilCore:soil-1", Case.SOUND);
        assertTrue(Math.abs(sound) < 0.03, "sound one is off by " + sound);
        assertTrue(number(STEPS, "soilCore:soil-1", suspect(STEPS, Kind.SOIL_VOID)) < sound - 0.06);
    }

    @Test
    void aFlowSensorIsHeldAgainstTheMeter() {
        Case factor = suspect(CLINIC, Kind.FLOW_FACTOR_WRONG);
        double sound = number(CLINIC, "compareFlow:flow-1", Case.SOUND);
        assertEquals(1, sound, 0.03);
        assertEquals(amount(CLINIC, factor) * sound, number(CLINIC, "compareFlow:flow-1", factor), 0.01);
        Case jammed = suspect(CLINIC, Kind.FLOW_JAMMED);
        assertEquals(0, number(CLINIC, "compareFlow:flow-1", jammed));
        assertEquals(number(CLINIC, "runZone:zone-1", Case.SOUND), number(CLINIC, "runZone:zone-1", jammed));
    }

    @Test
    void eachFlowSensorIsComparedWhileAZoneRunsWhoseWaterPassesIt() {
        CallSite mews = CallSite.of(Sites.open("lovage-mews").orThrow());
        List<FieldTest> compared = mews.tests().stream()
                .filter(t -> t.kind().equals("compareFlow"))
                .toList();
        assertEquals(2, compared.size());
        compared.forEach(t -> assertEquals(1, number(mews, t.id(), Case.SOUND), 0.1, t.id()));
    }

    @Test
    void valvesLeftShutAreOpenedBeforeAZoneIsRun() {
        Action isolate = CLINIC.test("isolate:iso-a").orElseThrow().action();
        SiteState shut = isolate.after(CLINIC.start());
        for (String id : List.of("bypassSensors", "swapOutput:zone-7", "compareFlow:flow-1")) {
            FieldTest test = CLINIC.test(id).orElseThrow();
            assertEquals(
                    CLINIC.expected(test, CLINIC.start(), Case.SOUND), CLINIC.expected(test, shut, Case.SOUND), id);
            double whenFound = test.action().minutes(SiteState.at(shut.standing(), Map.of()), CLINIC::walk);
            double more = test.action().minutes(shut, CLINIC::walk) - whenFound;
            assertTrue(more >= Ground.TURN, id + " takes " + more + " min more");
        }
    }

    @Test
    void aMainlineBreakRaisesTheFlowAlarmOfAControllerThatWatches() {
        FaultPlan last = CLINIC.faults().stream()
                .filter(f -> f.kind() == Kind.MAINLINE_BREAK)
                .reduce((a, b) -> b)
                .orElseThrow();
        assertEquals(1, probability(CLINIC, "flowAlarm", suspect(CLINIC, Kind.MAINLINE_BREAK, last.on())));
        assertEquals(1, probability(FIELD, "asPlanned", suspect(FIELD, Kind.MAINLINE_BREAK)), "no flow sensor there");
    }

    @Test
    void anAuthorsFaultBeginsWhenTheAuthorSays() {
        CallSite longAgo = stuckSince(8);
        CallSite today = stuckSince(14);
        assertEquals(1, probability(longAgo, "nothingRan", Case.of(longAgo.authored(0))));
        assertEquals(1, probability(today, "asPlanned", Case.of(today.authored(0))));
    }

    private static CallSite stuckSince(int day) {
        FaultPlan.When when = new FaultPlan.When(day, LocalTime.of(6, 0));
        FaultPlan stuck = new FaultPlan(Kind.RAIN_STUCK, "rain", 0, 0, 0.5, 0, when, 0);
        return CallSites.of("burdock-steps", 14, List.of(stuck));
    }

    @Test
    void onlyInstalledSensorsCanBeTested() {
        CallSite row = CallSites.of("tansy-row", 20);
        Set<String> kinds = row.tests().stream().map(FieldTest::kind).collect(Collectors.toCollection(TreeSet::new));
        assertTrue(kinds.contains("wetRainSensor"));
        for (String absent : List.of("compareFreeze", "spinCups", "soilCore", "compareFlow")) {
            assertFalse(kinds.contains(absent), absent);
        }
    }

    @Test
    void theBypassStaysOnUntilItIsPutBack() {
        Action bypass = CLINIC.test("bypassSensors").orElseThrow().action();
        SiteState on = bypass.after(CLINIC.start());
        assertTrue(Handled.bypassed(on));
        assertTrue(bypass.minutes(on, CLINIC::walk) >= 1, "running the zone once more takes its time");
        SiteState back = CLINIC.test("putBack").orElseThrow().action().after(on);
        assertFalse(Handled.bypassed(back));
        assertEquals(CLINIC.start().configuration(), back.configuration());
    }

    @Test
    void aBackflowTesterIsAskedForAndNothingHereTouchesAssemblyOrMains() {
        FieldTest tester = CLINIC.test("orderBackflowTester").orElseThrow();
        assertEquals(Action.Kind.REQUEST, tester.action().kind());
        assertFalse(tester.action().kind().judged());
        CLINIC.tests().forEach(t -> {
            assertFalse(t.action().risks().contains(Action.Risk.OPENS_BACKFLOW), t.id());
            assertFalse(t.action().risks().contains(Action.Risk.TOUCHES_MAINS), t.id());
        });
    }

    @Test
    void anotherLookAtTheSameSiteSaysTheSameToTheBit() {
        CallSite again = CallSites.of("teasel-field", 20);
        Case seized = suspect(FIELD, Kind.WIND_SEIZED);
        for (FieldTest test : FIELD.tests()) {
            if (test.measure() != null
                    && List.of(Tool.MULTIMETER, Tool.RECORDS, Tool.SENSOR_CHECK).contains(test.tool())) {
                FieldTest other = again.test(test.id()).orElseThrow();
                assertEquals(FIELD.expected(test, FIELD.start(), seized), again.expected(other, again.start(), seized));
            }
        }
    }
}
