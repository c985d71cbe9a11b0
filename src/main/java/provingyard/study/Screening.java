package provingyard.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import provingyard.scenario.SensorKind;
import provingyard.setup.SetUp;

/**
 * Each kind alone on the clock: all places with usual settings first, then the better places with all usual settings.
 * What comes of it is a short list for each kind, the best first, and what its best saves alone.
 */
final class Screening {

    /** How many places of a kind stay. */
    static final int SHORT = 2;

    /** A kind's short list. */
    record Listed(List<Fitting> fittings, double saves) {}

    private final Trials trials;
    private final TellingDraws telling;
    private final Map<SensorKind, Listed> lists = new EnumMap<>(SensorKind.class);

    /**
     * Screens.
     *
     * @param references set-ups whose places and settings are looked at too
     */
    Screening(Trials trials, TellingDraws telling, List<Options> options, List<SetUp> references) {
        this.trials = trials;
        this.telling = telling;
        for (Options option : options) {
            lists.put(option.kind(), screen(option, references));
        }
    }

    /** The short list of a kind. */
    Listed of(SensorKind kind) {
        return lists.get(kind);
    }

    private Listed screen(Options option, List<SetUp> references) {
        List<Integer> few = telling.of(option.kind());
        List<Fitting> places = new ArrayList<>(option.places());
        references.forEach(r -> places.addAll(Fitting.of(r, option.kind())));
        List<Fitting> better = best(places, few, SHORT);
        List<Fitting> shortList = new ArrayList<>();
        for (Fitting place : better) {
            List<Fitting> set = new ArrayList<>(List.of(place));
            set.addAll(option.settings(place));
            shortList.addAll(best(set, few, 1));
        }
        List<Fitting> ordered = best(shortList, few, SHORT);
        double saves =
                ordered.isEmpty() ? 0 : trials.mean(SetUp.CLOCK_ALONE, few) - trials.mean(alone(ordered.get(0)), few);
        return new Listed(ordered, saves);
    }

    private static SetUp alone(Fitting fitting) {
        return fitting.numbered(1).into(SetUp.CLOCK_ALONE);
    }

    /** The best alone, best first; the earlier one of equals. */
    private List<Fitting> best(List<Fitting> fittings, List<Integer> few, int most) {
        List<Fitting> each =
                fittings.stream().map(f -> f.numbered(1)).distinct().toList();
        List<Double> means = trials.means(each.stream().map(Screening::alone).toList(), few);
        return IntStream.range(0, each.size())
                .boxed()
                .sorted(Comparator.<Integer>comparingDouble(means::get))
                .limit(most)
                .map(each::get)
                .toList();
    }
}
