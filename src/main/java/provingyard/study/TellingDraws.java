package provingyard.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import provingyard.scenario.SensorKind;
import provingyard.score.Loss;
import provingyard.setup.SetUp;

/**
 * The few draws on which candidates of a kind meet first. A season without frost says nothing of freeze sensors: so the
 * draws are ranked by what the clock alone loses where the kind can help, and few are taken at even ranks from the worst
 * down, which keeps mild ones among them.
 */
final class TellingDraws {

    private static final Map<SensorKind, List<Loss.Kind>> HELPS = new EnumMap<>(Map.of(
            SensorKind.RAIN, List.of(Loss.Kind.RUNOFF, Loss.Kind.BELOW_ROOTS),
            SensorKind.WIND, List.of(Loss.Kind.DRIFT, Loss.Kind.OVERSPRAY),
            SensorKind.FREEZE, List.of(Loss.Kind.ICED_WALK),
            SensorKind.FLOW, List.of(Loss.Kind.LEAK, Loss.Kind.MISSED_LEAK),
            SensorKind.SOIL, List.of(Loss.Kind.RUNOFF, Loss.Kind.BELOW_ROOTS)));

    private final List<Integer> draws;
    private final List<Loss> clock;
    private final int few;

    /** Ranks draws; {@code few} of them are taken each time. */
    TellingDraws(Trials trials, List<Integer> draws, int few) {
        this.draws = draws;
        this.few = Math.min(few, draws.size());
        clock = trials.losses(SetUp.CLOCK_ALONE, draws);
    }

    /** The few draws for a kind, in rising order. */
    List<Integer> of(SensorKind kind) {
        List<Loss.Kind> helps = HELPS.get(kind);
        return spread(loss -> helps.stream().mapToDouble(loss::money).sum());
    }

    /** The few draws for what is not one kind's alone. */
    List<Integer> ofAll() {
        return spread(Loss::total);
    }

    private List<Integer> spread(ToDoubleFunction<Loss> by) {
        List<Integer> ranked = IntStream.range(0, draws.size())
                .boxed()
                .sorted(Comparator.<Integer>comparingDouble(i -> -by.applyAsDouble(clock.get(i))))
                .toList();
        List<Integer> chosen = new ArrayList<>();
        for (int i = 0; i < few; i++) {
            chosen.add(draws.get(ranked.get(i * draws.size() / few)));
        }
        return chosen.stream().sorted().toList();
    }
}
