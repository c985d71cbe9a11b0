package provingyard.field;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import provingyard.field.FieldHome.Card;
import provingyard.field.FieldHome.Ground;
import provingyard.field.FieldHome.Hang;

/**
 * Which homes make up the trial in homes: eight, whose parts are put together anew for each seed, so that every seed has
 * the same shares and any two parts may meet. The study did not publish its homes one by one: the mix is our assumption,
 * chosen before its result was seen; {@link #table} says why.
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

    /** The mix as a table for readers. */
    static String table() {
        return """
                | part | the eight homes | because |
                | --- | --- | --- |
                | soil and roots | %s | the county stands on fine sand, builders' fill is finer; lawns' roots reach 4 to 12 in (common practice) |
                | starts | %s days a week | local rules allow one or two (from memory), and not all homes keep to them |
                | clock | %s min a week all year, 0.7 mm each | half to one and a half of the 34 mm a week of typical homes (Haley, Dukes and Miller 2007, from memory) |
                | rain sensor | %s | accuracies of 27 to 97 %% in the field [2]: about half sited well |
                | card | %s | weaker in year 2, as published; the others keep their clock |
                """.formatted(
                        counted(GROUNDS.stream().map(Ground::text)),
                        listed(DAYS_A_WEEK),
                        listed(MINUTES_A_WEEK),
                        counted(HANGS.stream().map(Hang::text)),
                        counted(CARDS.stream().map(Card::text)));
    }

    private static String listed(List<Integer> numbers) {
        return numbers.stream().map(String::valueOf).collect(Collectors.joining(", "));
    }

    /** Each text once, with its number where it is not one. */
    private static String counted(Stream<String> texts) {
        Map<String, Long> counts =
                texts.collect(Collectors.groupingBy(t -> t, LinkedHashMap::new, Collectors.counting()));
        return counts.entrySet().stream()
                .map(e -> (e.getValue() == 1 ? "" : e.getValue() + " × ") + e.getKey())
                .collect(Collectors.joining(", "));
    }

    private static <T> List<T> shuffled(List<T> parts, Random chance) {
        List<T> shuffled = new ArrayList<>(parts);
        Collections.shuffle(shuffled, chance);
        return shuffled;
    }
}
