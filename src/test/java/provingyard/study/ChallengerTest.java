package provingyard.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import provingyard.scenario.Point;
import provingyard.season.Site;
import provingyard.setup.Mount;
import provingyard.setup.Placement;
import provingyard.setup.References;
import provingyard.setup.SetUp;

class ChallengerTest {

    private static final List<Integer> DRAWS = Draws.trial();
    private static Site site;
    private static SetUp textbook;

    @BeforeAll
    static void open() {
        // Soil that begins nearly dry: a week without water costs plants.
        site = TinySites.week(t -> TinySites.replaced(t, "\"soilAtStart\": \"75 %\"", "\"soilAtStart\": \"30 %\""));
        textbook = References.textbook(site.scenario()).orElseThrow();
    }

    private static Mark mark(SetUp setUp) {
        try (Trials trials = new Trials(site, Progress.SILENT)) {
            return MarkSearch.of(site, setUp, trials, Draws.from(1, 2));
        }
    }

    private static Challenger tried(SetUp mark, SetUp challenger) {
        try (Trials trials = new Trials(site, Progress.SILENT)) {
            return Challenger.of(site, mark(mark), challenger, trials, DRAWS);
        }
    }

    /** A set-up whose sensors all stand under the eave and that therefore only costs money. */
    private static SetUp careless() {
        return References.careless(site.scenario()).orElseThrow();
    }

    @Test
    void aClearlyBetterSetUpTakesTheMarksPlace() {
        Challenger tried = tried(mostlyShut(), textbook);
        assertTrue(tried.wins(), tried.toString());
        Mark won = tried.won().orElseThrow();
        assertEquals(textbook, won.setUp());
        assertEquals(tried.meanChallenger(), won.meanMark(), 0);
        assertEquals(DRAWS.size(), won.draws());
        assertTrue(tried.meanMark() - tried.meanChallenger() > tried.needed());
    }

    /** A rain sensor low in the spray that hardly dries: it holds the watering itself. */
    private static SetUp mostlyShut() {
        Placement.Rain r = (Placement.Rain) textbook.sensors().get(0);
        return textbook.with(new Placement.Rain(r.id(), new Point(4.5, 3.2), Mount.POST, 0.5, 0.003, 0));
    }

    @Test
    void aWorseOneAndTheMarkItselfDoNot() {
        assertFalse(tried(textbook, mostlyShut()).wins());
        Challenger same = tried(textbook, textbook);
        assertFalse(same.wins());
        assertEquals(same.meanMark(), same.meanChallenger(), 0);
    }

    @Test
    void oneBeyondTheBudgetDoesNot() {
        Placement.Rain r = (Placement.Rain) textbook.sensors().get(0);
        SetUp two = textbook.with(new Placement.Rain("rain-2", r.at(), r.mount(), r.height(), r.trip(), r.vent()));
        assertFalse(tried(mostlyShut(), two).wins(), "the kit has one");
    }

    @Test
    void luckIsNotEnough() {
        assertEquals(0, Challenger.standardError(new double[] {2, 2, 2}), 0);
        // Mean 4, squares 4 + 0 + 4, variance 8 / 2, error sqrt(4 / 3).
        assertEquals(Math.sqrt(4.0 / 3), Challenger.standardError(new double[] {2, 4, 6}), 1e-12);
        assertEquals(Double.POSITIVE_INFINITY, Challenger.standardError(new double[] {5}));
        Challenger tried = tried(careless(), SetUp.CLOCK_ALONE);
        assertTrue(tried.meanMark() > tried.meanChallenger(), "a sensor that does nothing costs its price");
    }

    @Test
    void stopsWhenAsked() {
        Progress impatient = new Progress() {
            @Override
            public void at(int done, int of) {
                assertTrue(done <= of);
            }

            @Override
            public boolean cancelled() {
                return true;
            }
        };
        Mark mark = mark(textbook);
        assertThrows(CancellationException.class, () -> Challenger.of(site, mark, textbook, impatient));
        assertThrows(CancellationException.class, () -> Hindsight.search(site, mark, impatient));
    }
}
