package provingyard.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import provingyard.numeric.RandomStreams;

/** The four laws that make the values what they are, on random games, and the values of games known otherwise. */
class ShapleyTest {

    private static final double SAME = 1e-9;

    /** A game whose coalitions come to anything between -1000 and 1000 in each measure. */
    private static IntFunction<Amounts> game(long seed) {
        return coalition -> new Amounts(
                number(seed, coalition, 0),
                number(seed, coalition, 1),
                number(seed, coalition, 2),
                number(seed, coalition, 3),
                number(seed, coalition, 4),
                number(seed, coalition, 5));
    }

    private static double number(long seed, int coalition, int measure) {
        return 2000 * RandomStreams.uniform(seed, 6L * coalition + measure) - 1000;
    }

    private static Amounts money(double usd) {
        return new Amounts(0, 0, 0, 0, 0, usd);
    }

    private static void assertSame(Amounts expected, Amounts found) {
        assertEquals(expected.water(), found.water(), SAME);
        assertEquals(expected.ice(), found.ice(), SAME);
        assertEquals(expected.leaks(), found.leaks(), SAME);
        assertEquals(expected.plants(), found.plants(), SAME);
        assertEquals(expected.sensors(), found.sensors(), SAME);
        assertEquals(expected.money(), found.money(), SAME);
    }

    @Property
    void efficiency(@ForAll long seed, @ForAll @IntRange(max = 6) int players) {
        IntFunction<Amounts> game = game(seed);
        Amounts sum = Shapley.values(players, game).stream().reduce(Amounts.NONE, Amounts::plus);
        assertSame(game.apply((1 << players) - 1).minus(game.apply(0)), sum);
    }

    /** Two players of whom it only matters how many of them are in. */
    @Property
    void symmetry(
            @ForAll long seed,
            @ForAll @IntRange(min = 2, max = 6) int players,
            @ForAll @IntRange(max = 5) int one,
            @ForAll @IntRange(max = 5) int two) {
        int a = one % players;
        int b = two % players == a ? (a + 1) % players : two % players;
        int both = 1 << a | 1 << b;
        IntFunction<Amounts> game = game(seed);
        IntFunction<Amounts> alike =
                coalition -> game.apply((coalition & both) == 1 << b ? coalition & ~both | 1 << a : coalition);
        List<Amounts> values = Shapley.values(players, alike);
        assertSame(values.get(a), values.get(b));
    }

    /** Who adds the same to every coalition gets that, and who adds nothing gets exactly nothing. */
    @Property
    void dummy(
            @ForAll long seed,
            @ForAll @IntRange(min = 1, max = 6) int players,
            @ForAll @IntRange(max = 5) int who,
            @ForAll @DoubleRange(min = -1000, max = 1000) double adds) {
        int player = who % players;
        IntFunction<Amounts> game = game(seed);
        IntFunction<Amounts> rest = coalition -> game.apply(coalition & ~(1 << player));
        assertEquals(Amounts.NONE, Shapley.values(players, rest).get(player));
        IntFunction<Amounts> constant =
                coalition -> rest.apply(coalition).plus(money((coalition >> player & 1) * adds));
        assertSame(money(adds), Shapley.values(players, constant).get(player));
    }

    @Property
    void linearity(
            @ForAll long seed,
            @ForAll long other,
            @ForAll @IntRange(max = 6) int players,
            @ForAll @DoubleRange(min = -3, max = 3) double factor) {
        IntFunction<Amounts> v = game(seed);
        IntFunction<Amounts> w = game(other);
        List<Amounts> together =
                Shapley.values(players, c -> v.apply(c).times(factor).plus(w.apply(c)));
        for (int i = 0; i < players; i++) {
            Amounts mine = Shapley.values(players, v).get(i).times(factor);
            assertSame(mine.plus(Shapley.values(players, w).get(i)), together.get(i));
        }
    }

    /** What a player adds on average over all orders of coming in, counted out order by order. */
    @Property(tries = 50)
    void isTheMeanOverAllOrders(@ForAll long seed, @ForAll @IntRange(min = 1, max = 5) int players) {
        IntFunction<Amounts> game = game(seed);
        List<List<Integer>> orders = orders(players);
        List<Amounts> values = Shapley.values(players, game);
        for (int player = 0; player < players; player++) {
            Amounts sum = Amounts.NONE;
            for (List<Integer> order : orders) {
                int before = 0;
                for (int each : order.subList(0, order.indexOf(player))) {
                    before |= 1 << each;
                }
                sum = sum.plus(game.apply(before | 1 << player).minus(game.apply(before)));
            }
            assertSame(sum.times(1.0 / orders.size()), values.get(player));
        }
    }

    private static List<List<Integer>> orders(int players) {
        if (players == 0) {
            return List.of(List.of());
        }
        List<List<Integer>> all = new ArrayList<>();
        for (List<Integer> shorter : orders(players - 1)) {
            for (int at = 0; at < players; at++) {
                List<Integer> longer = new ArrayList<>(shorter);
                longer.add(at, players - 1);
                all.add(longer);
            }
        }
        return all;
    }

    /** One left glove, two right ones; a pair is worth 1. By hand: the left one adds 1 in four of the six orders. */
    @Example
    void gloves() {
        IntFunction<Amounts> pairs = c -> money((c & 1) != 0 && (c & 6) != 0 ? 1 : 0);
        List<Amounts> values = Shapley.values(3, pairs);
        assertEquals(4 / 6.0, values.get(0).money(), 1e-15);
        assertEquals(1 / 6.0, values.get(1).money(), 1e-15);
        assertEquals(1 / 6.0, values.get(2).money(), 1e-15);
    }

    @Example
    void asksForEachCoalitionOnceAndTakesSixPlayersAtMost() {
        List<Integer> asked = new ArrayList<>();
        Shapley.values(6, c -> {
            asked.add(c);
            return Amounts.NONE;
        });
        assertEquals(java.util.stream.IntStream.range(0, 64).boxed().toList(), asked);
        assertThrows(IllegalArgumentException.class, () -> Shapley.values(7, c -> Amounts.NONE));
    }
}
