package provingyard.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;
import provingyard.numeric.RandomStreams;
import provingyard.scenario.SensorKind;
import provingyard.setup.SetUp;

/** Where a search starts from, besides the reference set-ups: what was best alone put together, and what chance says. */
record Starts(Limits limits, List<Options> options, Screening screening) {

    /** How likely chance leaves a kind out. */
    private static final double LEFT_OUT = 0.2;

    /** The best of each kind alone, what saves most first, as far as the limits go. */
    SetUp together() {
        SetUp start = SetUp.CLOCK_ALONE;
        List<SensorKind> kinds = options.stream()
                .map(Options::kind)
                .filter(k -> screening.of(k).saves() > 0)
                .sorted(Comparator.comparingDouble(k -> -screening.of(k).saves()))
                .toList();
        for (SensorKind kind : kinds) {
            start = with(start, screening.of(kind).fittings().get(0));
        }
        return start;
    }

    /** Kinds, places and settings by chance. */
    SetUp byChance(RandomStreams streams, int number) {
        UniformRandomProvider random = streams.sequence("start." + number);
        List<Options> order = new ArrayList<>(options);
        for (int i = order.size() - 1; i > 0; i--) {
            order.add(order.remove(random.nextInt(i + 1)));
        }
        SetUp start = SetUp.CLOCK_ALONE;
        for (Options option : order) {
            List<Fitting> listed = screening.of(option.kind()).fittings();
            boolean leftOut = random.nextDouble() < LEFT_OUT;
            if (!leftOut && !listed.isEmpty()) {
                List<Fitting> set = option.settings(listed.get(random.nextInt(listed.size())));
                start = with(start, set.get(random.nextInt(set.size())));
            }
        }
        return start;
    }

    private SetUp with(SetUp setUp, Fitting fitting) {
        SetUp next = fitting.numbered(1).into(setUp);
        return limits.keeps(next) ? next : setUp;
    }
}
