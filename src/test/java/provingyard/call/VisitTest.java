package provingyard.call;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import provingyard.diagnosis.SiteState;
import provingyard.scenario.FaultPlan.Kind;
import provingyard.season.Snapshot;

/** The yard lives on while a technician tests: its books close, and it does what the instruments say. */
@Tag("unit")
class VisitTest {

    private static final CallSite SITE = CallSites.of("quillback-clinic", 10);

    static Stream<Case> cases() {
        return Stream.of(
                Case.SOUND,
                CallSites.suspect(SITE, Kind.MAINLINE_BREAK),
                CallSites.suspect(SITE, Kind.LATERAL_BREAK),
                CallSites.suspect(SITE, Kind.VALVE_STUCK_OPEN),
                CallSites.suspect(SITE, Kind.VALVE_STUCK_SHUT),
                CallSites.suspect(SITE, Kind.COIL_OPEN),
                CallSites.suspect(SITE, Kind.SPLICE_BAD),
                CallSites.suspect(SITE, Kind.VALVE_PARTLY_SHUT));
    }

    /** What runs in the season while a zone is run for its flow is what the meter's model says. */
    @ParameterizedTest
    @MethodSource("cases")
    void theYardDoesWhatInstrumentsRead(Case wrong) {
        for (FieldTest test : SITE.tests()) {
            if (!test.kind().equals("runZone") && !test.kind().equals("readMeter")) {
                continue;
            }
            Visit visit = Visit.arrive(SITE, wrong);
            visit.watch(test, SITE.start());
            double read = ((Expected.Number) SITE.expected(test, SITE.start(), wrong)).value();
            assertEquals(read, visit.supply(), 1e-5 * Math.max(read, 1e-5), test.id());
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void theBooksCloseAndTheSameTestsGiveTheSameBits(Case wrong) {
        List<String> tests =
                List.of("readMeter", "runZone:zone-2", "walkZone:zone-4", "makeSafe", "locate", "readMeter");
        Call one = Call.begin(SITE, new Deal(0, wrong), 3);
        Call other = Call.begin(SITE, new Deal(0, wrong), 3);
        String before = one.yardHash();
        for (String test : tests) {
            one.act(test);
            other.act(test);
            assertTrue(one.yard().ledger().water().closure() <= 1e-9);
            assertEquals(one.yardHash(), other.yardHash());
        }
        assertNotEquals(before, one.yardHash());
        assertEquals(one.yardHash(), one.fork(tests.size()).yardHash());
    }

    @Test
    void aZoneThatIsWalkedSpraysAndWetsItsLawnAndNothingElseRuns() {
        Call call = Call.begin(SITE, new Deal(0, Case.SOUND), 1);
        double supplied = call.yard().ledger().water().supplied();
        Call.Note note = call.act("walkZone:zone-3");
        List<Snapshot.Zone> open =
                note.seen().zones().stream().filter(Snapshot.Zone::open).toList();
        assertEquals(List.of("zone-3"), open.stream().map(Snapshot.Zone::id).toList());
        assertTrue(note.seen().heads().stream().anyMatch(Snapshot.Head::spraying));
        double ran = call.yard().ledger().water().supplied() - supplied;
        assertEquals(open.get(0).flow() * 6 * 60, ran, 0.02 * ran);
        assertEquals(0, call.litres(), 1e-9);
        assertNull(call.act("readMeter").seen());
        assertTrue(call.yard().heads().stream().noneMatch(Snapshot.Head::spraying));
    }

    /** The program is off: through the two nights until marks come no zone runs. */
    @Test
    void nothingRunsByItselfWhileMarksAreWaitedFor() {
        Call call = Call.begin(SITE, new Deal(0, Case.SOUND), 1);
        double supplied = call.yard().ledger().water().supplied();
        long tick = call.yard().tick();
        call.act("locate");
        assertEquals(supplied, call.yard().ledger().water().supplied(), 1e-12);
        assertTrue(call.yard().tick() - tick >= 2 * 1440);
    }

    @Test
    void theClockGoesByTheMinutesOnSite() {
        Call call = Call.begin(SITE, new Deal(0, CallSites.suspect(SITE, Kind.MAINLINE_BREAK)), 1);
        long tick = call.yard().tick();
        Stream.of("readMeter", "runZone:zone-1", "runZone:zone-5", "look:main-2")
                .forEach(call::act);
        assertEquals(call.minutes(), call.yard().tick() - tick, 0.51);
    }

    @Test
    void aRepairEndsTheLoss() {
        Case broken = CallSites.suspect(SITE, Kind.MAINLINE_BREAK);
        Call call = Call.begin(SITE, new Deal(0, broken), 1);
        call.act("readMeter");
        assertTrue(call.litres() > 0);
        String place = SITE.repairClass(broken.faults().get(0));
        call.act("makeSafe");
        call.act("locate");
        call.state(new Call.Finding(place, 0.99));
        call.repair();
        call.act("putBack");
        double lost = call.litres();
        call.verify();
        assertEquals(lost, call.litres(), 1e-9);
    }

    /** Faults of a case have their places in it, whatever their numbers among the site's many suspects. */
    @Test
    void twoFaultsAreRepairedOneByOne() {
        Case first = CallSites.suspect(SITE, Kind.COIL_OPEN);
        Case second = CallSites.suspect(SITE, Kind.MAINLINE_BREAK);
        Case both = new Case(List.of(first.faults().get(0), second.faults().get(0)));
        Visit visit = Visit.arrive(SITE, both);
        SiteState start = SITE.start();
        FieldTest meter = SITE.test("readMeter").orElseThrow();
        visit.live(meter, start, start);
        double lost = visit.lost();
        assertTrue(lost > 0);
        visit.repair(both.faults().indexOf(second.faults().get(0)));
        visit.live(meter, start, start);
        // The minute in which the repair is done is the first without it.
        assertEquals(lost, visit.lost(), 1e-9);
    }
}
