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
 * Works out the first part of a debrief: what the season lost beside the clock alone and the mark, which live the same
 * weather side by side. Shares and worth take many more seasons and come after it.
 */
public final class Debriefing {

    private Debriefing() {}

    /**
     * The debrief of a season, without shares and worth. Only the site's own season, lived to its end, has a score.
     *
     * @param lived a season; not changed
     * @param mark the mark, where one is known
     * @param learner who lived it, may be empty
     */
    public static Debrief of(Season lived, Optional<Mark> mark, String learner) {
        Site site = lived.site();
        Optional<CompletableFuture<Outcome>> best = mark.map(m -> beside(lived, m.setUp()));
        Story story = Story.of(lived);
        Outcome clock = story.clock().outcome();
        Optional<Outcome> markCame = best.map(CompletableFuture::join);
        Costs costs = site.scenario().costs();
        Outcome trainee = lived.outcome();
        boolean over = !Cost.of(lived.setUp(), site.scenario().kit()).withinBudget();
        SeasonPlan plan = site.scenario().season();
        boolean own = lived.over() && lived.seed() == plan.seed() && trainee.days() == plan.days();
        Standing standing = Standing.of(
                Loss.of(clock, costs),
                Loss.of(trainee, costs),
                markCame.map(o -> Loss.of(o, costs)),
                mark.map(Mark::meanGap).orElse(0.0),
                over,
                own,
                costs);
        return new Debrief(
                lived,
                standing,
                clock,
                markCame,
                mark,
                story.told(),
                Moments.of(story),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                learner);
    }

    /** What the same weather comes to under another set-up, as far as the season was lived. */
    private static CompletableFuture<Outcome> beside(Season lived, SetUp setUp) {
        return CompletableFuture.supplyAsync(() -> {
            Season other = lived.beside(setUp);
            while (other.tick() < lived.tick()) {
                other.advance();
            }
            return other.outcome();
        });
    }
}
