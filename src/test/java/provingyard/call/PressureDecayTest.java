package provingyard.call;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static provingyard.call.CallSites.number;
import static provingyard.call.CallSites.suspect;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import provingyard.scenario.FaultPlan.Kind;
import provingyard.scenario.Sites;

/** What a gauge on a shut section shows: nothing while it is tight, a fall while it leaks within. Pa/s. */
@Tag("unit")
class PressureDecayTest {

    private static final double KPA_A_MINUTE = 1e3 / 60;
    private static final CallSite SITE = CallSites.of("quillback-clinic", 10);

    private static List<FieldTest> sections() {
        return SITE.tests().stream()
                .filter(t -> t.kind().equals(DecayKit.SECTION))
                .toList();
    }

    private static List<Integer> leaks() {
        List<Integer> leaks = new ArrayList<>();
        for (int i = 0; i < SITE.faults().size(); i++) {
            Kind kind = SITE.faults().get(i).kind();
            if (kind == Kind.MAINLINE_LEAK || kind == Kind.MAINLINE_BREAK) {
                leaks.add(i);
            }
        }
        return leaks;
    }

    @Test
    void aSoundMainHoldsItsPressure() {
        assertEquals(0, number(SITE, DecayKit.WHOLE, Case.SOUND), 1e-12);
        assertTrue(sections().size() >= 2);
        sections().forEach(t -> assertEquals(0, number(SITE, t.id(), Case.SOUND), 1e-12, t.id()));
    }

    @Test
    void everyLeakIsInOneSectionOnly() {
        Set<String> fell = new HashSet<>();
        int unseen = 0;
        for (int leak : leaks()) {
            List<String> falling = sections().stream()
                    .map(FieldTest::id)
                    .filter(t -> number(SITE, t, Case.of(leak)) > KPA_A_MINUTE)
                    .toList();
            assertTrue(falling.size() <= 1, SITE.repairClass(leak) + " in " + falling);
            fell.addAll(falling);
            unseen += falling.isEmpty() ? 1 : 0;
            // What is above the backflow preventer cannot draw from the main.
            assertEquals(falling.isEmpty(), number(SITE, DecayKit.WHOLE, Case.of(leak)) == 0, SITE.repairClass(leak));
        }
        assertEquals(sections().size(), fell.size(), "leaks in " + fell);
        assertTrue(unseen < leaks().size() / 5, unseen + " of " + leaks().size());
    }

    /** A break empties it faster than a watch can tell: then what counts is the pressure that it had left the main. */
    @Test
    void theLargerTheLeakTheFasterTheFall() {
        List<Double> falls = leaks().stream()
                .filter(l -> SITE.repairClass(l).equals("main:main-4/2"))
                .map(l -> number(SITE, DecayKit.WHOLE, Case.of(l)))
                .toList();
        assertEquals(6, falls.size());
        for (int i = 1; i < 4; i++) {
            assertTrue(falls.get(i) > falls.get(i - 1), falls.toString());
        }
        assertTrue(falls.get(0) > 20 * KPA_A_MINUTE && falls.get(3) > 20 * falls.get(0), falls.toString());
        assertTrue(falls.get(5) > 1000 * KPA_A_MINUTE, falls.toString());
    }

    @Test
    void weepingAndStuckValvesLetItFallToo() {
        double weeps = number(SITE, DecayKit.WHOLE, suspect(SITE, Kind.VALVE_WEEPS, "zone-2"));
        double open = number(SITE, DecayKit.WHOLE, suspect(SITE, Kind.VALVE_STUCK_OPEN, "zone-2"));
        assertTrue(weeps > 20 * KPA_A_MINUTE && open > 5 * weeps, weeps + " and " + open);
        assertEquals(0, number(SITE, DecayKit.WHOLE, suspect(SITE, Kind.LATERAL_BREAK)), 1e-12);
        assertEquals(0, number(SITE, DecayKit.WHOLE, suspect(SITE, Kind.COIL_OPEN)), 1e-12);
    }

    @Test
    void aWideRingIsSplitWhereShuttingOneValveSplitsNothing() {
        CallSite ring = CallSite.of(Sites.open("mallow-quad").orThrow());
        Case leak = Case.of(ring.authored(3));
        List<String> falling = ring.tests().stream()
                .filter(t -> t.kind().equals(DecayKit.SECTION))
                .map(FieldTest::id)
                .filter(t -> number(ring, t, leak) > KPA_A_MINUTE)
                .toList();
        assertEquals(1, falling.size(), falling.toString());
        assertTrue(ring.tests().stream()
                .filter(t -> t.kind().equals("isolate"))
                .allMatch(t -> number(ring, t.id(), leak) > 0));
    }

    @Test
    void theValvesStayShutUntilTheyAreOpened() {
        FieldTest section = sections().get(1);
        Call call = Call.begin(SITE, new Deal(0, Case.SOUND), 1);
        call.act(section.id());
        assertEquals("shut", call.state().condition(Handled.valve(section.target())));
        call.act("putBack");
        assertEquals("", call.state().condition(Handled.valve(section.target())));
    }
}
