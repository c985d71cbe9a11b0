package provingyard.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import provingyard.score.Loss;
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
        return !last.isEmpty() && isAhead(last.get(0), now) ? last.get(0) : now;
    }

    /**
     * Whether another is better over all draws by more than the standard error of their paired differences: the optimum is
     * flat, and a search that takes every gain follows the luck of its draws. Over one draw nothing is left to luck.
     */
    private boolean isAhead(SetUp other, SetUp now) {
        List<Loss> theirs = trials.losses(other, all);
        List<Loss> ours = trials.losses(now, all);
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < all.size(); i++) {
            double gain = ours.get(i).total() - theirs.get(i).total();
            sum += gain;
            squares += gain * gain;
        }
        int n = all.size();
        double mean = sum / n;
        double error = n < 2 ? 0 : Math.sqrt(Math.max(0, squares / n - mean * mean) / (n - 1));
        return mean > error;
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
