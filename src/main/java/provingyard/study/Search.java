package provingyard.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import provingyard.numeric.RandomStreams;
import provingyard.scenario.Plumbing;
import provingyard.scenario.Point;
import provingyard.scenario.Scenario;
import provingyard.scenario.SensorKind;
import provingyard.season.Site;
import provingyard.setup.References;
import provingyard.setup.SetUp;

/**
 * The search that finds the mark, and the bound of hindsight: each kind is screened alone, then coordinate descents from
 * several starts are run coarsely, and the best of them finely. Deterministic in the site, the seed and the draws.
 */
final class Search {

    /**
     * How thorough.
     *
     * @param draws the draws that decide
     * @param few how many of them candidates meet first
     * @param some how many they meet then
     * @param byChance starts by chance
     * @param rounds of the fine descent, at most
     */
    record Effort(List<Integer> draws, int few, int some, int byChance, int rounds) {}

    private final Site site;
    private final Trials trials;
    private final Effort effort;
    private final RandomStreams streams;
    private final Limits limits;
    private final List<Options> options;

    Search(Site site, Trials trials, long seed, Effort effort) {
        this.site = site;
        this.trials = trials;
        this.effort = effort;
        streams = new RandomStreams(seed);
        limits = new Limits(site.scenario());
        options = options(site, limits, Spots.of(site, streams));
    }

    /** The references of a site that keep its limits; the clock alone first. */
    static List<SetUp> references(Scenario scenario) {
        List<SetUp> references = new ArrayList<>(List.of(SetUp.CLOCK_ALONE));
        References.careless(scenario).ifPresent(references::add);
        References.textbook(scenario).ifPresent(references::add);
        return references.stream().filter(new Limits(scenario)::keeps).toList();
    }

    /** What can be chosen about each kind that the site offers. */
    static List<Options> options(Site site, Limits limits, List<Point> spots) {
        return limits.kinds().stream().map(k -> options(site, k, spots)).toList();
    }

    private static Options options(Site site, SensorKind kind, List<Point> spots) {
        return switch (kind) {
            case RAIN -> new RainOptions(spots);
            case WIND -> new WindOptions(spots, sprayed(site.scenario().plumbing()));
            case FREEZE -> new FreezeOptions(spots);
            case FLOW -> new FlowOptions(site);
            case SOIL -> new SoilOptions(spots, site.siting());
        };
    }

    private static List<String> sprayed(Plumbing plumbing) {
        return plumbing.fittings().stream()
                .filter(f -> f.kind() == Plumbing.FittingKind.ZONE_VALVE)
                .map(Plumbing.Fitting::id)
                .filter(z -> plumbing.heads().stream().anyMatch(h -> h.zone().equals(z)))
                .toList();
    }

    /**
     * The best set-up found.
     *
     * @param known set-ups to start from, at least one; the search never ends below the best of them
     */
    SetUp run(List<SetUp> known) {
        expect(effort.rounds(), 1 + effort.byChance(), true);
        Scenario scenario = site.scenario();
        List<Integer> all = effort.draws();
        List<Integer> some = all.subList(0, effort.some());
        Optional<ScheduleOptions> schedule =
                scenario.locks().schedule() ? Optional.empty() : Optional.of(new ScheduleOptions(scenario.schedule()));
        TellingDraws telling = new TellingDraws(trials, all, effort.few());
        Screening screening = new Screening(trials, telling, options, known);
        Descent descent = new Descent(limits, options, schedule, screening, telling);
        SetUp best = best(ends(descent, new Starts(limits, options, screening), best(known, all)), all);
        Heats fine = new Heats(trials, some, all);
        for (int left = effort.rounds(); left > 0; left--) {
            expect(left, 0, false);
            SetUp before = best;
            best = descent.fine(best, fine);
            if (best.equals(before)) {
                return best;
            }
        }
        return best;
    }

    /** Where coarse descents end: from what is known, from what was best alone, and from chance. */
    private List<SetUp> ends(Descent descent, Starts starts, SetUp known) {
        List<Integer> some = effort.draws().subList(0, effort.some());
        Heats coarse = new Heats(trials, some, some);
        List<SetUp> begins = new ArrayList<>(List.of(known, starts.together()));
        for (int i = 1; i <= effort.byChance(); i++) {
            begins.add(starts.byChance(streams, i));
        }
        List<SetUp> ends = new ArrayList<>(List.of(known));
        for (int i = 0; i < begins.size(); i++) {
            expect(effort.rounds(), begins.size() - i, false);
            ends.add(descent.coarse(begins.get(i), coarse));
        }
        return ends;
    }

    /** Tells about how many seasons are ahead, from what searches of the shipped sites came to. */
    private void expect(int rounds, int starts, boolean screening) {
        int few = effort.few();
        int some = effort.some();
        double ahead = screening ? 2.0 * effort.draws().size() : 0;
        for (Options option : options) {
            Fitting any = option.places().get(0);
            int places = option.places().size()
                    + Screening.SHORT * option.settings(any).size();
            ahead += screening ? few * places : 0;
            ahead += starts * 4.0 * (few + some / 4.0);
            double kind = few * (4 + option.switches(any).size())
                    + 3.0 * some
                    + effort.draws().size();
            double dials = 3.0 * option.dials(any).size() * (2 * few + some / 2.0);
            ahead += 0.6 * rounds * (kind + dials);
        }
        trials.expect(trials.lived() + (int) ahead);
    }

    /** The best over draws, the earlier one of equals. */
    private SetUp best(List<SetUp> setUps, List<Integer> draws) {
        List<Double> means = trials.means(setUps, draws);
        int best = 0;
        for (int i = 1; i < setUps.size(); i++) {
            best = means.get(i) < means.get(best) ? i : best;
        }
        return setUps.get(best);
    }
}
