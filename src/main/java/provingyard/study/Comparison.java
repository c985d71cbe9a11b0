package provingyard.study;

import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import provingyard.scenario.Costs;
import provingyard.scenario.SeasonPlan;
import provingyard.score.Loss;
import provingyard.season.Outcome;
import provingyard.season.Season;
import provingyard.season.Site;
import provingyard.setup.Cost;
import provingyard.setup.SetUp;

/**
 * The clock alone, and the mark where it is known, beside a trainee's season: lived in the background, unless what they
 * lose in it is known with the mark. Seasons do not touch each other, so the result does not depend on threads.
 */
public final class Comparison {

    private final Site site;
    private final long seed;
    private final int days;
    private final Optional<Mark> mark;
    /** Losses of seasons lived here, or known; empty for the season that the trainee lives anyway. */
    private final Optional<CompletableFuture<Loss>> clock;

    private final Optional<CompletableFuture<Loss>> best;

    /**
     * Begins to live the season of a seed and a number of days.
     *
     * @param whole the set-up that the trainee keeps for the whole season, where that is known beforehand
     */
    public Comparison(Site site, long seed, int days, Optional<Mark> mark, Optional<SetUp> whole) {
        this.site = site;
        this.seed = seed;
        this.days = days;
        this.mark = mark;
        Optional<Mark.OwnSeason> known = mark.filter(m -> own()).map(Mark::own);
        clock = beside(SetUp.CLOCK_ALONE, whole, known.map(Mark.OwnSeason::clock));
        best = mark.flatMap(m -> beside(m.setUp(), whole, known.map(Mark.OwnSeason::mark)));
    }

    private Optional<CompletableFuture<Loss>> beside(SetUp setUp, Optional<SetUp> whole, Optional<Loss> known) {
        return whole.equals(Optional.of(setUp))
                ? Optional.empty()
                : Optional.of(known.map(CompletableFuture::completedFuture).orElseGet(() -> live(setUp)));
    }

    private CompletableFuture<Loss> live(SetUp setUp) {
        return CompletableFuture.supplyAsync(() -> {
            Season season = Season.begin(site, seed, days, setUp);
            season.liveToEnd();
            return Loss.of(season);
        });
    }

    /**
     * Puts a lived season beside them; waits until they are there. Only the site's own season, lived to its end, has a
     * score: the mark's gap was found for that many days, and points of different weather cannot be compared.
     *
     * @param trainee what the trainee's season came to
     * @param setUp the trainee's last set-up, for the budget
     */
    public Standing with(Outcome trainee, SetUp setUp) {
        Costs costs = site.scenario().costs();
        boolean over = !Cost.of(setUp, site.scenario().kit()).withinBudget();
        double gap = mark.map(Mark::meanGap).orElse(0.0);
        boolean own = own() && trainee.days() == days;
        Loss lost = Loss.of(trainee, costs);
        Loss clockLost = clock.map(CompletableFuture::join).orElse(lost);
        Optional<Loss> markLost =
                mark.map(m -> best.map(CompletableFuture::join).orElse(lost));
        return Standing.of(clockLost, lost, markLost, gap, over, own, costs);
    }

    private boolean own() {
        SeasonPlan plan = site.scenario().season();
        return seed == plan.seed() && days == plan.days();
    }
}
