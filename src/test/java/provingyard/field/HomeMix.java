package provingyard.field;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import provingyard.field.FieldHome.Card;
import provingyard.field.FieldHome.Ground;
import provingyard.field.FieldHome.Hang;

/**
 * Which homes make up the trial in homes: eight, whose parts are put together anew for each seed, so that every seed has
 * the same shares and any two parts may meet. The study did not publish its homes one by one: the mix is our assumption,
 * chosen before its result was seen.
 *
 * <ul>
 *   <li>Ground: fine sand is what the county stands on, builders' fill is finer; roots of lawns reach 4 to 12 in (common
 *       practice). Roots hold 8 to 24 mm that plants can use.
 *   <li>Days a week: local rules allow one or two (from memory), and not all homes keep to them.
 *   <li>Minutes a week: half to one and a half of 48, the 34 mm a week of typical homes of central Florida (Haley, Dukes
 *       and Miller 2007, from memory), on average as much. Nobody turns the clock with the season.
 *   <li>Rain sensors: a five-year evaluation found accuracies from 27 to 97 %, so about half are taken as sited well;
 *       the others hang under an eave, in a tree, in the spray, or are dead, as many of each.
 *   <li>Card: more than half follow it in year one, fewer in year two, as published; the others keep their clock.
 * </ul>
 */
final class HomeMix {

    /** Homes of each seed. */
    static final int HOMES = 8;

    /** Grounds of the homes, in order. */
    static final List<Ground> GROUNDS = List.of(
            new Ground("sand", 4),
            new Ground("sand", 6),
            new Ground("sand", 8),
            new Ground("sand", 12),
            new Ground("loamy-sand", 6),
            new Ground("loamy-sand", 8),
            new Ground("loamy-sand", 10),
            new Ground("sandy-loam", 8));

    private static final List<Integer> DAYS_A_WEEK = List.of(1, 1, 2, 2, 2, 2, 3, 7);

    private static final List<Integer> MINUTES_A_WEEK = List.of(24, 36, 36, 48, 48, 60, 60, 72);

    private static final List<Hang> HANGS =
            List.of(Hang.OPEN, Hang.OPEN, Hang.OPEN, Hang.OPEN, Hang.EAVE, Hang.TREE, Hang.SPRAY, Hang.DEAD);

    private static final List<Card> CARDS = List.of(
            Card.BOTH_YEARS,
            Card.BOTH_YEARS,
            Card.BOTH_YEARS,
            Card.FIRST_YEAR,
            Card.FIRST_YEAR,
            Card.NEVER,
            Card.NEVER,
            Card.NEVER);

    /** Keeps apart the chance of seeds that follow one another. */
    private static final long SCATTER = 0x9E3779B97F4A7C15L;

    private HomeMix() {}

    /** The homes of a seed, in the order of their grounds; every other list is shuffled by itself. */
    static List<FieldHome> of(long seed) {
        Random chance = new Random(SCATTER * seed);
        List<Integer> days = shuffled(DAYS_A_WEEK, chance);
        List<Integer> minutes = shuffled(MINUTES_A_WEEK, chance);
        List<Hang> hangs = shuffled(HANGS, chance);
        List<Card> cards = shuffled(CARDS, chance);
        return IntStream.range(0, HOMES)
                .mapToObj(i -> new FieldHome(GROUNDS.get(i), days.get(i), minutes.get(i), hangs.get(i), cards.get(i)))
                .toList();
    }

    private static <T> List<T> shuffled(List<T> parts, Random chance) {
        List<T> shuffled = new ArrayList<>(parts);
        Collections.shuffle(shuffled, chance);
        return shuffled;
    }
}
