package provingyard.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import provingyard.setup.SetUp;

/**
 * Successive halving over the draws: many candidates meet few draws, the better ones some more, the best all. The set-up
 * in force meets them beside each and is given up only for one that is better over all, so that no heat makes it worse.
 *
 * @param some the draws of the second heat
 * @param all the draws that decide
 */
record Heats(Trials trials, List<Integer> some, List<Integer> all) {

    /** How many come to the second heat, whatever they lose in the first. */
    private static final int SECOND = 2;

    /** The best of a set-up and others, the earlier one of equals. */
    SetUp best(SetUp now, List<SetUp> others, List<Integer> few) {
        return last(now, survivors(now, others, few, SECOND, Double.POSITIVE_INFINITY));
    }

    /** The same for others that differ little: only one that is better on few draws already goes on. */
    SetUp nearby(SetUp now, List<SetUp> others, List<Integer> few) {
        return last(now, survivors(now, others, few, 1, 0));
    }

    private SetUp last(SetUp now, List<SetUp> second) {
        List<SetUp> last = survivors(now, second, some, 1, 0);
        return last.isEmpty() || trials.mean(last.get(0), all) >= trials.mean(now, all) ? now : last.get(0);
    }

    /**
     * The best of the others over some draws. One that comes to the very same as the set-up in force, or as an earlier
     * one, does the same and is left out.
     *
     * @param worse USD that a survivor may lose more than the set-up in force
     */
    private List<SetUp> survivors(SetUp now, List<SetUp> others, List<Integer> draws, int most, double worse) {
        List<SetUp> together = new ArrayList<>(List.of(now));
        others.stream().distinct().filter(o -> !o.equals(now)).forEach(together::add);
        List<Double> means = trials.means(together, draws);
        Set<Double> seen = new HashSet<>(Set.of(means.get(0)));
        return IntStream.range(1, together.size())
                .filter(i -> means.get(i) < means.get(0) + worse && seen.add(means.get(i)))
                .boxed()
                .sorted(Comparator.<Integer>comparingDouble(means::get))
                .limit(most)
                .map(together::get)
                .toList();
    }
}
