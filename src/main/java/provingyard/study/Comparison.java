package provingyard.study;

import java.util.Optional;
import provingyard.scenario.Costs;
import provingyard.score.Loss;
import provingyard.season.Outcome;
import provingyard.season.Season;
import provingyard.season.Site;
import provingyard.setup.Cost;
import provingyard.setup.SetUp;

/** Puts a lived season beside the clock alone and the mark on the same weather, events and faults. */
public final class Comparison {

    private Comparison() {}

    /**
     * Lives the clock alone, and the mark where it is known, through the same season.
     *
     * @param trainee what the trainee's season came to
     * @param setUp the trainee's last set-up, for the budget
     */
    public static Standing of(Site site, long seed, int days, Outcome trainee, SetUp setUp, Optional<Mark> mark) {
        Costs costs = site.scenario().costs();
        Loss clock = Loss.of(live(site, seed, days, SetUp.CLOCK_ALONE), costs);
        Optional<Loss> best = mark.map(m -> Loss.of(live(site, seed, days, m.setUp()), costs));
        boolean over = !Cost.of(setUp, site.scenario().kit()).withinBudget();
        double gap = mark.map(Mark::meanGap).orElse(0.0);
        return Standing.of(clock, Loss.of(trainee, costs), best, gap, over, costs);
    }

    private static Outcome live(Site site, long seed, int days, SetUp setUp) {
        Season season = Season.begin(site, seed, days, setUp);
        season.liveToEnd();
        return season.outcome();
    }
}
