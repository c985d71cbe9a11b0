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
 * The clock alone, and the mark where it is known, living one season in the background while the trainee lives it too;
 * then all are put beside each other. Seasons do not touch each other, so the result does not depend on threads.
 */
public final class Comparison {

    private final Site site;
    private final long seed;
    private final int days;
    private final Optional<Mark> mark;
    /** Seasons lived here; the one that the trainee lives anyway is left out. */
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
        clock = Optional.of(SetUp.CLOCK_ALONE)
                .filter(s -> !whole.equals(Optional.of(s)))
                .map(this::live);
        best = mark.map(Mark::setUp).filter(s -> !whole.equals(Optional.of(s))).map(this::live);
    }

    private CompletableFuture<Loss> live(SetUp setUp) {
        return CompletableFuture.supplyAsync(() -> {
            Season season = Season.begin(site, seed, days, setUp);
            season.liveToEnd();
            return Loss.of(season.outcome(), site.scenario().costs());
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
        SeasonPlan plan = site.scenario().season();
        boolean own = seed == plan.seed() && days == plan.days() && trainee.days() == days;
        Loss lost = Loss.of(trainee, costs);
        Loss clockLost = clock.map(CompletableFuture::join).orElse(lost);
        Optional<Loss> markLost =
                mark.map(m -> best.map(CompletableFuture::join).orElse(lost));
        return Standing.of(clockLost, lost, markLost, gap, over, own, costs);
    }
}
