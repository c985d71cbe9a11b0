package provingyard.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static provingyard.study.TinySites.replaced;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import provingyard.numeric.RandomStreams;
import provingyard.scenario.SensorKind;
import provingyard.scenario.Sites;
import provingyard.season.Site;
import provingyard.setup.References;
import provingyard.setup.SetUp;
import provingyard.setup.SetUpReader;

class SearchTest {

    private static final List<Integer> DRAWS = Draws.from(1, 3);
    private static Site site;

    @BeforeAll
    static void open() {
        site = TinySites.week();
    }

    private static Mark search(Site where, long seed, int threads) {
        try (Trials trials = new Trials(where, Progress.SILENT, threads)) {
            return MarkSearch.search(where, seed, trials, new Search.Effort(DRAWS, 1, 2, 1, 1));
        }
    }

    @Test
    void findsTheSameWhateverTheThreads() {
        Mark one = search(site, 5, 1);
        assertEquals(one, search(site, 5, 3));
    }

    @Test
    void neverEndsBelowTheReferences() {
        Mark mark = search(site, 1, 2);
        try (Trials trials = new Trials(site, Progress.SILENT)) {
            for (SetUp reference : Search.references(site.scenario())) {
                assertTrue(mark.meanMark() <= trials.mean(reference, DRAWS));
            }
            assertEquals(mark.meanMark(), trials.mean(mark.setUp(), DRAWS), 0);
            assertEquals(mark.meanClock(), trials.mean(SetUp.CLOCK_ALONE, DRAWS), 0);
        }
        assertEquals(DRAWS.size(), mark.draws());
    }

    @Test
    void whatIsFoundCanBeSet() {
        assertEquals(List.of(), SetUpReader.check(search(site, 2, 2).setUp(), site.scenario()));
    }

    /** Only a dear freeze sensor would help nobody here; a budget below every price leaves the clock alone. */
    @Test
    void keepsTheBudget() {
        Site poor = TinySites.week(t -> replaced(t, "\"budget\": \"80 USD\"", "\"budget\": \"20 USD\""));
        assertEquals(SetUp.CLOCK_ALONE, search(poor, 1, 2).setUp());
    }

    @Test
    void findsNothingOfALockedKind() {
        Site locked = TinySites.week(t -> replaced(
                t, "\"locks\": { \"schedule\": true }", "\"locks\": { \"schedule\": true, \"sensors\": [\"rain\"] }"));
        assertEquals(List.of(), search(locked, 1, 2).setUp().of(SensorKind.RAIN));
    }

    /** The clock waters far too much and no sensor can be bought: only an open schedule can be turned down. */
    @Test
    void turnsAnOpenScheduleOnly() {
        Site locked = TinySites.week(SearchTest::flooded);
        Site open = TinySites.week(t -> replaced(flooded(t), "\"schedule\": true", "\"schedule\": false"));
        assertEquals(SetUp.CLOCK_ALONE, search(locked, 1, 2).setUp());
        Mark turned = search(open, 1, 2);
        assertEquals(
                open.scenario().schedule().allowed(), turned.setUp().schedule().allowed());
        assertTrue(turned.meanMark() < turned.meanClock());
        assertEquals(List.of(), SetUpReader.check(turned.setUp(), open.scenario()));
    }

    private static String flooded(String text) {
        String poor = replaced(text, "\"budget\": \"80 USD\"", "\"budget\": \"20 USD\"");
        return replaced(poor, "\"seasonal\": \"60 %\"", "\"seasonal\": \"300 %\"");
    }

    @Test
    void stopsWhenAsked() {
        AtomicInteger lived = new AtomicInteger();
        Progress impatient = new Progress() {
            @Override
            public void at(int done, int of) {
                lived.set(done);
            }

            @Override
            public boolean cancelled() {
                return lived.get() >= 10;
            }
        };
        assertThrows(CancellationException.class, () -> MarkSearch.search(site, impatient));
        assertEquals(10, lived.get());
    }

    @Test
    void saysHowFarItIs() {
        List<int[]> told = new ArrayList<>();
        Progress watch = new Progress() {
            @Override
            public void at(int done, int of) {
                told.add(new int[] {done, of});
            }

            @Override
            public boolean cancelled() {
                return false;
            }
        };
        try (Trials trials = new Trials(site, watch)) {
            MarkSearch.search(site, 1, trials, new Search.Effort(DRAWS, 1, 2, 1, 1));
            assertEquals(trials.lived(), told.size());
        }
        for (int i = 0; i < told.size(); i++) {
            assertEquals(i + 1, told.get(i)[0], "each season once");
            assertTrue(told.get(i)[1] >= told.get(i)[0]);
        }
        assertTrue(told.get(0)[1] > told.size() / 3 && told.get(0)[1] < told.size() * 3, "about " + told.get(0)[1]);
    }

    @Test
    void hindsightIsAtLeastAsGoodAsTheMarkInTheOwnSeason() {
        Mark mark = search(site, 1, 2);
        Hindsight.Bound bound = Hindsight.search(site, mark, Progress.SILENT);
        assertTrue(bound.loss().total() <= mark.own().mark().total());
        assertEquals(bound, Hindsight.search(site, mark, Progress.SILENT));
        assertEquals(List.of(), SetUpReader.check(bound.setUp(), site.scenario()));
    }

    @Test
    void otherSeedsLookAtOtherPlaces() {
        assertEquals(Spots.of(site, new RandomStreams(1)), Spots.of(site, new RandomStreams(1)));
        assertNotEquals(Spots.of(site, new RandomStreams(1)), Spots.of(site, new RandomStreams(2)));
        Spots.of(site, new RandomStreams(3))
                .forEach(s -> assertTrue(site.siting().planted(s)));
    }

    /** Every place, setting, switch and end of a dial passes the checks that a trainee's file passes. */
    @ParameterizedTest
    @ValueSource(strings = {"tansy-row", "quillback-clinic"})
    void whatIsTriedCanBeSet(String id) {
        Site shipped = Site.of(Sites.open(id).orThrow());
        Limits limits = new Limits(shipped.scenario());
        for (Options options : Search.options(shipped, limits, Spots.of(shipped, new RandomStreams(1)))) {
            List<Fitting> tried = new ArrayList<>(options.places());
            assertFalse(tried.isEmpty(), options.kind() + " has a place");
            References.textbook(shipped.scenario()).ifPresent(t -> tried.addAll(Fitting.of(t, options.kind())));
            for (Fitting place : List.copyOf(tried)) {
                tried.addAll(options.settings(place));
                tried.addAll(options.switches(place));
                for (Dial<Fitting> dial : options.dials(place)) {
                    tried.add(dial.turned(dial.low()));
                    tried.add(dial.turned(dial.high()));
                }
            }
            for (Fitting fitting : new HashSet<>(tried)) {
                SetUp alone = fitting.into(SetUp.CLOCK_ALONE);
                assertEquals(List.of(), SetUpReader.check(alone, shipped.scenario()), fitting.toString());
            }
        }
    }

    @Test
    void dialsTurnToWhatAHandCanSet() {
        Dial<Double> tenths = new Dial<>(0, 10, 0.1, 3, v -> v);
        assertEquals(3.3, tenths.turned(3.3333), 0);
        assertEquals(10, tenths.turned(11), 0);
        assertEquals(0, tenths.turned(-1), 0);
        assertEquals(50, new Dial<Double>(0, 100, 25, 0, v -> v).turned(60), 0);
    }

    @Test
    void purposesShareNoDraw() {
        Set<Integer> seen = new HashSet<>(List.of(Draws.OWN));
        List<Integer> search = Draws.from(1, Draws.MOST);
        List<Integer> study = Draws.from(Draws.STUDY_FROM, Draws.WORTH_FROM - Draws.STUDY_FROM);
        for (List<Integer> purpose : List.of(search, Draws.trial(), study)) {
            purpose.forEach(d -> assertTrue(seen.add(d) && d < Draws.WORTH_FROM, "draw " + d));
        }
        for (String id : List.of("tansy-row", "quillback-clinic")) {
            List<Integer> used = Draws.search(Sites.open(id).orThrow());
            assertTrue(search.containsAll(used) && used.size() >= Draws.FEWEST, id);
        }
    }

    @Test
    void paceFollowsTheClockItIsGiven() {
        long[] now = {5_000_000_000L};
        Pace pace = new Pace(() -> now[0]);
        assertEquals(Double.POSITIVE_INFINITY, pace.secondsLeft(0, 100));
        now[0] += 10_000_000_000L;
        assertEquals(10, pace.seconds(), 1e-9);
        assertEquals(30, pace.secondsLeft(25, 100), 1e-9);
        assertEquals(0, pace.secondsLeft(100, 90), 0);
    }
}
