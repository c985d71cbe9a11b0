package provingyard.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import provingyard.scenario.SensorKind;
import provingyard.score.Loss;
import provingyard.season.Season;
import provingyard.season.Site;
import provingyard.setup.References;
import provingyard.setup.SetUp;

/**
 * A first, honest search for the mark: the set-up that is best on average over draws of the site's climate, its events
 * and its faults, without a look at this season's weather.
 *
 * <p>It starts from the best of clock alone, careless and textbook, and improves one kind at a time, places first, then
 * settings, until a whole round brings nothing or the rounds are used up. Candidates meet a few draws first; the better
 * ones meet all (successive halving). The search is deterministic.
 */
public final class MarkSearch {

    private static final int FEW_DRAWS = 2;
    private static final int ALL_DRAWS = 6;
    private static final int ROUNDS = 2;
    private static final int FINALISTS = 4;
    private static final int ABOUT = 420;

    private MarkSearch() {}

    /**
     * Searches.
     *
     * @throws java.util.concurrent.CancellationException when the progress asks to stop
     */
    public static Mark search(Site site, Progress progress) {
        List<SetUp> references = references(site);
        Candidates candidates = new Candidates(site, references);
        try (Trials trials = new Trials(site, ABOUT, progress)) {
            SetUp best = best(trials, references);
            for (int round = 0; round < ROUNDS; round++) {
                SetUp before = best;
                for (SensorKind kind : candidates.kinds()) {
                    best = better(trials, best, candidates.places(best, kind));
                    best = better(trials, best, candidates.settings(best, kind));
                }
                if (best.equals(before)) {
                    break;
                }
            }
            double clock =
                    trials.meanLosses(List.of(SetUp.CLOCK_ALONE), ALL_DRAWS).get(0);
            double mark = trials.meanLosses(List.of(best), ALL_DRAWS).get(0);
            Mark.OwnSeason own = new Mark.OwnSeason(ownLoss(site, SetUp.CLOCK_ALONE), ownLoss(site, best));
            return new Mark(site.scenario().id(), site.contentHash(), Season.ENGINE, best, clock, mark, ALL_DRAWS, own);
        }
    }

    private static Loss ownLoss(Site site, SetUp setUp) {
        Season season = Season.begin(site, setUp);
        season.liveToEnd();
        return Loss.of(season);
    }

    private static List<SetUp> references(Site site) {
        List<SetUp> references = new ArrayList<>(List.of(SetUp.CLOCK_ALONE));
        References.careless(site.scenario()).ifPresent(references::add);
        References.textbook(site.scenario()).ifPresent(references::add);
        return references;
    }

    private static SetUp better(Trials trials, SetUp now, List<SetUp> others) {
        List<SetUp> all = new ArrayList<>(others);
        all.remove(now);
        all.add(0, now);
        List<Double> first = trials.meanLosses(all, FEW_DRAWS);
        List<Integer> order = new ArrayList<>();
        for (int i = 1; i < all.size(); i++) {
            order.add(i);
        }
        order.sort(Comparator.<Integer>comparingDouble(first::get).thenComparingInt(i -> i));
        List<SetUp> finalists = new ArrayList<>(List.of(now));
        order.stream().limit(FINALISTS).forEach(i -> finalists.add(all.get(i)));
        return best(trials, finalists);
    }

    /** The best over all draws; the earlier one of equals. */
    private static SetUp best(Trials trials, List<SetUp> setUps) {
        List<Double> means = trials.meanLosses(setUps, ALL_DRAWS);
        int best = 0;
        for (int i = 1; i < setUps.size(); i++) {
            if (means.get(i) < means.get(best)) {
                best = i;
            }
        }
        return setUps.get(best);
    }
}
