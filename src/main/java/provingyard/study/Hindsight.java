package provingyard.study;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import provingyard.score.Loss;
import provingyard.season.Site;
import provingyard.setup.SetUp;

/**
 * The bound of hindsight: the best set-up found for the site's own season, its weather and faults known beforehand. No
 * technician can know them; it says how much of what the mark still loses nobody could have saved. Computed when looked
 * at, never shipped.
 */
public final class Hindsight {

    private static final List<Integer> OWN = List.of(Draws.OWN);
    private static final int ROUNDS = 2;

    private Hindsight() {}

    /**
     * What was found.
     *
     * @param loss what it loses in the site's own season
     */
    public record Bound(SetUp setUp, Loss loss) {}

    /**
     * Searches on all cores; never ends above what the mark and the site's reference set-ups lose.
     *
     * @param start the mark, where the search begins
     * @throws CancellationException when the progress asks to stop
     */
    public static Bound search(Site site, Mark start, Progress progress) {
        try (Trials trials = new Trials(site, progress)) {
            return search(site, start, trials);
        }
    }

    static Bound search(Site site, Mark start, Trials trials) {
        List<SetUp> known = new ArrayList<>(List.of(start.setUp()));
        known.addAll(Search.references(site.scenario()));
        SetUp best = new Search(site, trials, MarkSearch.SEED, new Search.Effort(OWN, 1, 1, 0, ROUNDS)).run(known);
        return new Bound(best, trials.losses(best, OWN).get(0));
    }
}
