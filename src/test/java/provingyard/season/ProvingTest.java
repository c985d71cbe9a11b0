package provingyard.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import provingyard.scenario.FaultPlan;
import provingyard.scenario.Scenario;
import provingyard.scenario.SensorKind;
import provingyard.scenario.Sites;
import provingyard.season.Proof.Finding;
import provingyard.season.Proof.Reaction;
import provingyard.season.Proof.Valve;
import provingyard.setup.FlowWatch;
import provingyard.setup.Interlock;
import provingyard.setup.Interlock.Action;
import provingyard.setup.Placement;
import provingyard.setup.References;
import provingyard.setup.SetUp;

/** Tests of placed sensors before the season: what is wrong shows, what is right passes, and nothing is left changed. */
class ProvingTest {

    private static Site clinic;
    private static SetUp textbook;

    @BeforeAll
    static void open() {
        clinic = Site.of(Sites.open("quillback-clinic").orThrow());
        textbook = References.textbook(clinic.scenario()).orElseThrow();
    }

    private static Proof prove(SetUp setUp, SensorKind kind, Proof.Test test) {
        return Proving.run(
                Season.begin(clinic, setUp), setUp, setUp.of(kind).get(0).id(), test);
    }

    /** Tests a sensor at the clinic with one fault from the first minute on. */
    private static Proof faulty(FaultPlan.Kind kind, String on, double amount, Proof.Test test) {
        Scenario plain = clinic.scenario();
        FaultPlan fault = new FaultPlan(kind, on, 0, 0, 0, amount, new FaultPlan.When(1, java.time.LocalTime.MIN), 0);
        Site site = Site.of(plain.with(plain.catalogue(), plain.yard(), List.of(fault)));
        Season season = Season.begin(site, textbook);
        season.advance();
        return Proving.run(season, textbook, textbook.of(test.kind()).get(0).id(), test);
    }

    private static SetUp acting(SensorKind kind, Action action) {
        return textbook.with(new Interlock(textbook.of(kind).get(0).id(), action, List.of()));
    }

    @Test
    void soundSensorsPassTheirTests() {
        for (Proof.Test test : Proof.Test.values()) {
            Proof proof = prove(textbook, test.kind(), test);
            assertTrue(proof.verdict().good(), test + ": " + proof.verdict());
            assertTrue(proof.minutes().get(0).valve() == Valve.OPEN, test + " runs a zone");
        }
    }

    @Test
    void sameSeedSameProofAndTheSeasonDoesNotNotice() {
        Season season = Season.begin(clinic, 5, 2, textbook);
        Season other = season.copy();
        while (season.tick() < 700) {
            season.advance();
            other.advance();
        }
        for (Proof.Test test : Proof.Test.values()) {
            String sensor = textbook.of(test.kind()).get(0).id();
            assertEquals(Proving.run(season, textbook, sensor, test), Proving.run(other, textbook, sensor, test));
        }
        Season untouched = Season.begin(clinic, 5, 2, textbook);
        untouched.liveToEnd();
        season.liveToEnd();
        assertEquals(untouched.ledgerHash(), season.ledgerHash());
        assertEquals(textbook, season.setUp(), "everything is back");
    }

    @Test
    void rainSensorTripsByItsUnitAndDriesBack() {
        Placement.Rain rain = (Placement.Rain) textbook.of(SensorKind.RAIN).get(0);
        Proof.Verdict verdict =
                prove(textbook, SensorKind.RAIN, Proof.Test.POUR).verdict();
        assertEquals(rain.trip(), verdict.setPoint(), 0);
        assertTrue(verdict.trippedAt() > 0.2 * rain.trip() && verdict.trippedAt() < 1.35 * rain.trip() + 5e-4);
        assertTrue(verdict.rearmedAfter() > verdict.trippedAfter());
        assertEquals(Reaction.START_DROPPED, verdict.reaction());
    }

    @Test
    void whatTheControllerDoesWithARunningZoneShows() {
        Proof held = prove(acting(SensorKind.RAIN, Action.PAUSE), SensorKind.RAIN, Proof.Test.POUR);
        assertEquals(Reaction.HELD, held.verdict().reaction());
        int tripped = held.verdict().trippedAfter();
        assertEquals(Valve.OPEN, held.minutes().get(tripped).valve());
        assertEquals(Valve.SHUT, held.minutes().get(tripped + 1).valve());
        int last = held.minutes().size() - 1;
        assertEquals(Valve.OPEN, held.minutes().get(last).valve(), "it goes on when the sensor re-arms");
        Proof shut = prove(acting(SensorKind.RAIN, Action.SHUT), SensorKind.RAIN, Proof.Test.POUR);
        assertEquals(Reaction.SHUT, shut.verdict().reaction());
        assertEquals(Valve.SHUT, shut.minutes().get(shut.minutes().size() - 1).valve());
        Proof none = prove(acting(SensorKind.RAIN, Action.NONE), SensorKind.RAIN, Proof.Test.POUR);
        assertEquals(Reaction.RAN_ON, none.verdict().reaction());
        assertTrue(none.verdict().findings().contains(Finding.NOT_OBEYED));
    }

    @Test
    void stuckRainSensorsShow() {
        Proof stuck = faulty(FaultPlan.Kind.RAIN_STUCK, "rain", 0, Proof.Test.POUR);
        assertTrue(stuck.verdict().findings().contains(Finding.TRIPPED_AT_REST));
        assertTrue(stuck.verdict().findings().contains(Finding.STAYS_TRIPPED));
    }

    @Test
    void seizedCupsShow() {
        Proof.Verdict verdict =
                faulty(FaultPlan.Kind.WIND_SEIZED, "wind", 0, Proof.Test.SPIN).verdict();
        assertEquals(0, verdict.reading(), 1e-12);
        assertTrue(verdict.findings().containsAll(List.of(Finding.NEVER_TRIPPED, Finding.READS_OFF)));
    }

    @Test
    void freezeSensorWithAnOffsetShowsIt() {
        Proof.Verdict sound =
                prove(textbook, SensorKind.FREEZE, Proof.Test.COOL).verdict();
        Proof.Verdict warm = faulty(FaultPlan.Kind.FREEZE_READS_WARM, "freeze", 2, Proof.Test.COOL)
                .verdict();
        assertEquals(2, warm.reading() - warm.reference() - (sound.reading() - sound.reference()), 0.2);
        assertTrue(warm.findings().contains(Finding.READS_OFF));
        assertTrue(warm.trippedAt() < sound.trippedAt(), "it trips when it is colder");
    }

    @Test
    void wrongPulseFactorShows() {
        Placement.Flow flow = (Placement.Flow) textbook.of(SensorKind.FLOW).get(0);
        Placement.Flow typed =
                new Placement.Flow(flow.id(), flow.on(), flow.along(), flow.size(), 1.5 * flow.pulses(), flow.offset());
        Proof.Verdict verdict =
                prove(textbook.with(typed), SensorKind.FLOW, Proof.Test.METER).verdict();
        assertTrue(verdict.findings().contains(Finding.READS_OFF));
        assertTrue(verdict.reading() < 0.75 * verdict.reference(), verdict.toString());
        Proof.Verdict right = prove(textbook, SensorKind.FLOW, Proof.Test.METER).verdict();
        assertEquals(right.reference(), right.reading(), 0.05 * right.reference());
        assertEquals(right.reference(), verdict.reference(), 1e-12, "the meter is the same");
    }

    @Test
    void tooLowALimitShutsTheZone() {
        Proof proof = prove(textbook, SensorKind.FLOW, Proof.Test.LIMIT);
        assertEquals(Reaction.SHUT, proof.verdict().reaction());
        assertEquals(Valve.OPEN, proof.minutes().get(0).valve());
        assertEquals(Valve.SHUT, proof.minutes().get(proof.minutes().size() - 1).valve());
        FlowWatch watch = textbook.flowWatch();
        FlowWatch alarm = new FlowWatch(
                watch.sensor(),
                watch.expected(),
                watch.record(),
                watch.high(),
                watch.low(),
                watch.settling(),
                watch.averaging(),
                FlowWatch.Action.ALARM,
                watch.unscheduled(),
                watch.unscheduledAfter(),
                watch.onUnscheduled());
        Proof.Verdict only =
                prove(textbook.with(alarm), SensorKind.FLOW, Proof.Test.LIMIT).verdict();
        assertEquals(Reaction.ALARM_ONLY, only.reaction());
        assertTrue(only.findings().contains(Finding.NOT_OBEYED));
        Proof.Verdict off = prove(textbook.with(FlowWatch.OFF), SensorKind.FLOW, Proof.Test.LIMIT)
                .verdict();
        assertTrue(off.findings().contains(Finding.NOT_WATCHED));
    }

    @Test
    void dryVoidShows() {
        Proof.Verdict sound = prove(textbook, SensorKind.SOIL, Proof.Test.CORE).verdict();
        Proof.Verdict dry =
                faulty(FaultPlan.Kind.SOIL_VOID, "soil", 0, Proof.Test.CORE).verdict();
        assertEquals(sound.reference(), sound.reading(), 0.02);
        assertTrue(dry.reading() < dry.reference() - 0.04, dry.toString());
        assertTrue(dry.findings().contains(Finding.READS_OFF));
    }

    @Test
    void aProofHoldsUntilItsSensorIsTouched() {
        Proof proof = prove(textbook, SensorKind.RAIN, Proof.Test.POUR);
        Proofs proofs = Proofs.NONE.with(proof, textbook);
        assertTrue(proofs.of(proof.sensor(), proof.test(), textbook).isPresent());
        assertFalse(proofs.unproven(textbook).contains(proof.sensor()));
        assertEquals(4, proofs.unproven(textbook).size());
        Placement.Rain rain = (Placement.Rain) textbook.of(SensorKind.RAIN).get(0);
        Placement.Rain other =
                new Placement.Rain(rain.id(), rain.at(), rain.mount(), rain.height(), rain.trip() / 2, rain.vent());
        assertTrue(proofs.unproven(textbook.with(other)).contains(rain.id()), "other set point");
        SetUp acts = acting(SensorKind.RAIN, Action.SHUT);
        assertTrue(proofs.unproven(acts).contains(rain.id()), "other action");
        SetUp wind = acting(SensorKind.WIND, Action.SHUT);
        assertFalse(proofs.unproven(wind).contains(rain.id()), "another sensor's settings change nothing");
        assertFalse(proofs.unproven(textbook.with(other).with(rain)).contains(rain.id()), "back again, it holds");
    }

    @Test
    void theTestsAreForTheirKinds() {
        Season season = Season.begin(clinic, textbook);
        assertThrows(IllegalArgumentException.class, () -> Proving.run(season, textbook, "none-9", Proof.Test.POUR));
        String wind = textbook.of(SensorKind.WIND).get(0).id();
        assertThrows(IllegalArgumentException.class, () -> Proving.run(season, textbook, wind, Proof.Test.POUR));
    }
}
