package provingyard.call;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static provingyard.call.CallSites.number;
import static provingyard.call.CallSites.suspect;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import provingyard.diagnosis.Action;
import provingyard.diagnosis.Declaration;
import provingyard.diagnosis.Policies;
import provingyard.diagnosis.ServiceRun;
import provingyard.diagnosis.Trust;
import provingyard.scenario.FaultPlan.Kind;
import provingyard.scenario.Sites;

/** Water that runs at the meter and not in the irrigation. */
@Tag("unit")
class HouseSideTest {

    private static final double LITRE_A_MINUTE = 1e-3 / 60;
    private static final CallSite SITE = CallSite.of(Sites.open("sumac-bend").orThrow());
    private static final Case HOUSE = suspect(SITE, Kind.HOUSE_RUNS);

    private static double meter(String test, Case wrong) {
        return number(SITE, test, wrong) / LITRE_A_MINUTE;
    }

    @Test
    void theMeterMovesOnWithTheIrrigationShut() {
        double runs = meter("readMeter", HOUSE);
        assertTrue(runs > 2 && runs < 12, "L/min " + runs);
        assertEquals(runs, meter(HouseKit.HOUSE, HOUSE), 0.01 * runs);
        SITE.tests().stream()
                .filter(t -> t.kind().equals("isolate"))
                .forEach(t -> assertEquals(runs, meter(t.id(), HOUSE), 0.01 * runs, t.id()));
        assertEquals(0, meter(HouseKit.HOUSE, Case.SOUND), 1e-9);
    }

    @Test
    void aLeakOfTheMainStopsWithIt() {
        for (int i = 0; i < 7; i++) {
            Case leak = Case.of(SITE.authored(i));
            assertTrue(meter("readMeter", leak) > 1);
            assertEquals(0, meter(HouseKit.HOUSE, leak), 1e-9);
        }
        assertEquals(0, number(SITE, DecayKit.WHOLE, HOUSE), 1e-12);
    }

    @Test
    void theReferenceTellsItFromTheMain() {
        Deal deal = new Deal(0, HOUSE);
        for (long seed = 1; seed <= 3; seed++) {
            ServiceRun run = Judge.play(SITE, deal, Policies.best(SITE, Trust.USUAL), seed);
            assertEquals(Suspects.HOUSE, run.declared());
            assertEquals(Declaration.Hit.RIGHT, Judge.hit(SITE, deal, run.declared()));
            assertTrue(run.steps().stream().noneMatch(s -> s.kind() == Action.Kind.DIG));
        }
    }

    /** The yard's books are proven after each test. */
    @Test
    void theOwnerIsToldAndThePlumberStopsIt() {
        Call call = Call.begin(SITE, new Deal(0, HOUSE), 1);
        call.act("readMeter");
        call.act(HouseKit.HOUSE);
        double lost = call.litres();
        double minutes = call.minutes();
        assertEquals(meter("readMeter", HOUSE) * minutes, lost, 0.1 * lost);
        call.state(new Call.Finding(Suspects.HOUSE, 0.9));
        assertTrue(call.repairHazards().isEmpty());
        assertEquals(List.of(SITE.ground().meter()), places(call.repair()));
        call.act("putBack");
        assertEquals(0, call.running(), 1e-12);
        assertTrue(call.verify().reading() != null);
    }

    private static List<String> places(Call.Note note) {
        return note.test().action().legs().stream().map(Action.Leg::place).toList();
    }

    @Test
    void theShutOffIsOpenedAgainForTheNextTest() {
        Call call = Call.begin(SITE, new Deal(0, HOUSE), 1);
        call.act(HouseKit.HOUSE);
        assertEquals("shut", call.state().condition(Handled.valve("backflow")));
        call.act("runZone:zone-1");
        assertEquals("", call.state().condition(Handled.valve("backflow")));
    }

    @Test
    void whereTheMeterServesTheIrrigationAloneNobodySuspectsTheHouse() {
        CallSite alone = CallSites.of("quillback-clinic", 10);
        assertFalse(alone.hypotheses().classes().contains(Suspects.HOUSE));
        assertFalse(alone.test(HouseKit.HOUSE).isPresent());
        assertThrows(IllegalArgumentException.class, () -> suspect(alone, Kind.HOUSE_RUNS));
    }
}
