package provingyard.study;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;

/**
 * Exact Shapley values of a small game: what each player adds, on average over all orders in which the players can come
 * in.
 *
 * <pre>phi_i = sum over S in N without i of |S|! (n - |S| - 1)! / n! * (v(S and i) - v(S))</pre>
 *
 * <p>N are the n players, S a coalition, v(S) what it comes to. They are the only values that add up to v(N) - v(empty),
 * treat alike who adds alike, give nothing to who adds nothing, and add up over sums of games. Source: Shapley 1953, A
 * value for n-person games, Contributions to the Theory of Games II (Annals of Mathematics Studies 28), 307-317; the
 * formula is given there for games with v(empty) = 0, from which this one differs by a constant that cancels.
 */
final class Shapley {

    /** Most players: 64 coalitions. */
    static final int MOST_PLAYERS = 6;

    private Shapley() {}

    /**
     * The values, one per player.
     *
     * @param players n, 0 to {@link #MOST_PLAYERS}
     * @param game v: what a coalition comes to; bit i of its number is set where player i belongs to it; asked once each
     * @throws IllegalArgumentException for more players
     */
    static List<Amounts> values(int players, IntFunction<Amounts> game) {
        if (players < 0 || players > MOST_PLAYERS) {
            throw new IllegalArgumentException("players: " + players);
        }
        List<Amounts> worth = new ArrayList<>();
        for (int coalition = 0; coalition < 1 << players; coalition++) {
            worth.add(game.apply(coalition));
        }
        List<Amounts> values = new ArrayList<>();
        for (int player = 0; player < players; player++) {
            values.add(value(player, players, worth));
        }
        return values;
    }

    private static Amounts value(int player, int players, List<Amounts> worth) {
        Amounts sum = Amounts.NONE;
        for (int coalition = 0; coalition < worth.size(); coalition++) {
            if ((coalition >> player & 1) == 0) {
                Amounts added = worth.get(coalition | 1 << player).minus(worth.get(coalition));
                sum = sum.plus(added.times(weight(Integer.bitCount(coalition), players)));
            }
        }
        return sum;
    }

    /** |S|! (n - |S| - 1)! / n!. */
    private static double weight(int size, int players) {
        return (double) factorial(size) * factorial(players - size - 1) / factorial(players);
    }

    private static long factorial(int n) {
        return n < 2 ? 1 : n * factorial(n - 1);
    }
}
