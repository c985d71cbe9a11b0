package provingyard.study;

import java.util.List;
import java.util.concurrent.CancellationException;
import provingyard.score.Loss;
import provingyard.season.Season;
import provingyard.season.Site;
import provingyard.setup.SetUp;

/**
 * The search for the mark: the set-up that is best on average over draws of the site's climate, its events and its
 * faults ({@link Draws#search}), without a look at this season's weather. How it is searched: {@link Search}.
 */
public final class MarkSearch {

    /** The seed that shipped marks are searched with. */
    public static final long SEED = 1;

    private static final int FEW = 6;
    private static final int SOME = 3;
    private static final int BY_CHANCE = 1;
    private static final int ROUNDS = 2;

    private MarkSearch() {}

    /**
     * Searches with the usual seed on all cores.
     *
     * @throws CancellationException when the progress asks to stop
     */
    public static Mark search(Site site, Progress progress) {
        return search(site, SEED, progress);
    }

    /**
     * Searches on all cores.
     *
     * @param seed gives a few of the places that are looked at, and starts by chance; other seeds should end within 3
     *     points of each other
     * @throws CancellationException when the progress asks to stop
     */
    public static Mark search(Site site, long seed, Progress progress) {
        try (Trials trials = new Trials(site, progress)) {
            return search(site, seed, trials, effort(Draws.search(site.scenario())));
        }
    }

    /** How thorough a search for a mark is over some draws. */
    static Search.Effort effort(List<Integer> draws) {
        int all = draws.size();
        return new Search.Effort(
                draws, Math.min(all, Math.max(2, all / FEW)), Math.max(1, all / SOME), BY_CHANCE, ROUNDS);
    }

    /** Searches with trials of one's own. */
    static Mark search(Site site, long seed, Trials trials, Search.Effort effort) {
        SetUp best = new Search(site, trials, seed, effort).run(Search.references(site.scenario()));
        List<Integer> draws = effort.draws();
        return of(site, best, trials, draws);
    }

    /** A set-up as a mark, with its means over draws and its loss in the site's own season. */
    static Mark of(Site site, SetUp setUp, Trials trials, List<Integer> draws) {
        double clock = trials.mean(SetUp.CLOCK_ALONE, draws);
        double mark = trials.mean(setUp, draws);
        Loss ownClock = trials.losses(SetUp.CLOCK_ALONE, List.of(Draws.OWN)).get(0);
        Loss ownMark = trials.losses(setUp, List.of(Draws.OWN)).get(0);
        Mark.OwnSeason own = new Mark.OwnSeason(ownClock, ownMark);
        return new Mark(site.scenario().id(), site.contentHash(), Season.ENGINE, setUp, clock, mark, draws.size(), own);
    }
}
