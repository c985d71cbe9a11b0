package provingyard.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import provingyard.learner.Learner;
import provingyard.learner.Look;
import provingyard.learner.SavedSeason;
import provingyard.scenario.Scenario;
import provingyard.setup.History;
import provingyard.setup.SetUp;
import provingyard.ui.RouteModel.State;

class RouteModelTest {

    private static final List<Scenario> SITES = ProvingYardApp.sites();
    private static final String FIRST = SITES.get(0).id();
    private static final String SECOND = SITES.get(1).id();

    private static Learner learner() {
        return Learner.fresh("a", "Ana", Look.first("en", "US"));
    }

    private static SavedSeason at(long tick) {
        return SavedSeason.of("c", "e", tick, List.of(new History.Change(0, SetUp.CLOCK_ALONE)), List.of());
    }

    private static String next(Learner learner) {
        return RouteModel.of(SITES, learner).next(learner).orElseThrow().site().id();
    }

    @Test
    void somebodyNewBeginsAtTheFirstStop() {
        RouteModel route = RouteModel.of(SITES, learner());
        assertEquals(FIRST, next(learner()));
        assertEquals(0, route.done());
        assertEquals(State.NEW, route.stops().get(0).state());
        assertFalse(route.stops().get(0).kept());
        assertEquals(1, route.stops().get(0).number());
    }

    @Test
    void whatIsUnderWayIsGoneOnWithOnItsDay() {
        Learner ana = learner().on(SECOND, p -> p.with(at(16 * 1440 + 30)));
        RouteModel.Stop stop = RouteModel.of(SITES, ana).at(SECOND).orElseThrow();
        assertEquals(State.UNDER_WAY, stop.state());
        assertEquals(17, stop.day());
        assertTrue(stop.kept());
        assertEquals(SECOND, next(ana));
        // Of two, the one that was left last.
        assertEquals(FIRST, next(ana.on(FIRST, p -> p.with(at(10)))));
    }

    @Test
    void afterAScoreTheNextNewStopThenTheWeakest() {
        Learner ana = learner().on(FIRST, p -> p.lived(92));
        assertEquals(SECOND, next(ana));
        assertEquals(1, RouteModel.of(SITES, ana).done());
        assertEquals(92, RouteModel.of(SITES, ana).stops().get(0).best());
        Learner all = ana;
        for (Scenario site : SITES) {
            all = all.on(site.id(), p -> p.lived(site.id().equals(SECOND) ? 12 : 95));
        }
        assertEquals(SECOND, next(all));
        assertEquals(SITES.size(), RouteModel.of(SITES, all).done());
    }

    @Test
    void aSeasonLivedToItsEndIsLookedAtNotGoneOnWith() {
        long end = SITES.get(0).season().days() * 1440L;
        Learner ana = learner().on(FIRST, p -> p.with(at(end)));
        RouteModel.Stop stop = RouteModel.of(SITES, ana).stops().get(0);
        assertEquals(State.LIVED, stop.state());
        assertEquals(stop.days(), stop.day());
        // A second season of a stop with a score is under way again.
        Learner again = ana.on(FIRST, p -> p.lived(50).with(at(5)));
        assertEquals(State.UNDER_WAY, RouteModel.of(SITES, again).stops().get(0).state());
        assertEquals(1, RouteModel.of(SITES, again).done());
    }

    @Test
    void filtersCountWhatTheyShow() {
        List<Scenario> many = new ArrayList<>(SITES);
        RouteModel route = RouteModel.of(many, learner());
        assertEquals(many.size(), route.count(RouteModel.Filter.ALL));
        assertEquals(many.size(), route.count(RouteModel.Filter.TUNE) + route.count(RouteModel.Filter.CALLS));
    }
}
