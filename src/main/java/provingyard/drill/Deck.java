package provingyard.drill;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import provingyard.numeric.RandomStreams;

/**
 * The plan of one session: which family comes when, in which form, on which yard. A pure function of seed, progress and
 * session number.
 *
 * <p>A family that is new comes as an example, then half done, one right after the other; all later cards are mixed, so that
 * none comes more than twice in a row, and never twice where others are left. A mastered family rests every other session,
 * all others come in each. In every deck something has nothing wrong with it, and at least one in {@link #ATYPICAL_IN} of
 * the cards that the trainee works on is asked to be atypical. Numbers are design; mixing and spacing are R7 to R9 of the
 * training design.
 *
 * @param session number of the session, from 1
 * @param slots its cards, in order
 */
public record Deck(int session, List<Slot> slots) {

    /** Cards of a session. */
    public static final int CARDS = 8;

    /** One card in so many is atypical. */
    public static final int ATYPICAL_IN = 6;

    /** Yards of a session: each has to be made ready. */
    static final int YARDS = 3;

    /** Families that are new in a first session, and in later ones. */
    private static final int NEW_AT_FIRST = 3;

    private static final int NEW_LATER = 2;

    /** The order in which families come for the first time. */
    private static final List<Family> ORDER =
            List.of(Family.HYDRAULIC, Family.ELECTRICAL, Family.NONE, Family.CONTROLLER, Family.SENSOR);

    /** Families of which some cases look like another one's. */
    static final Set<Family> DECEPTIVE = EnumSet.of(Family.HYDRAULIC, Family.CONTROLLER, Family.SENSOR);

    /**
     * A place in the deck.
     *
     * @param number from 1
     * @param atypical whether the case should look like another family's
     * @param yard id of the site
     */
    public record Slot(int number, Family family, Form form, boolean atypical, String yard) {}

    public Deck {
        slots = List.copyOf(slots);
    }

    /**
     * The deck of a session.
     *
     * @param yards ids of all service calls' sites, at least one
     */
    public static Deck of(long seed, Progress progress, int session, List<String> yards) {
        return new Planning(seed, progress, session).deck(yards);
    }

    /** Where blocked order ends: number of the first card that is mixed. */
    public int mixedFrom() {
        int at = 0;
        while (at < slots.size() && slots.get(at).form() != Form.WHOLE) {
            at++;
        }
        return at + 1;
    }

    private record Plain(Family family, Form form) {}

    /** The work of planning one session. */
    private static final class Planning {

        private final Progress progress;
        private final int session;
        private final long key;
        private final Map<Family, Integer> left = new EnumMap<>(Family.class);
        private long drawn;

        Planning(long seed, Progress progress, int session) {
            this.progress = progress;
            this.session = session;
            key = new RandomStreams(seed).key("drill.deck." + session);
        }

        private int draw(int below) {
            return (int) (RandomStreams.uniform(key, drawn++) * below);
        }

        Deck deck(List<String> yards) {
            List<Plain> cards = new ArrayList<>();
            List<Family> fresh = fresh();
            for (Family family : fresh) {
                if (progress.at(family).next() == Form.EXAMPLE) {
                    cards.add(new Plain(family, Form.EXAMPLE));
                }
                cards.add(new Plain(family, Form.HALF));
            }
            int examples =
                    (int) cards.stream().filter(c -> c.form() == Form.EXAMPLE).count();
            int wanted = atypical(CARDS - examples);
            share(fresh, CARDS - cards.size(), wanted);
            mix(cards);
            List<Integer> deceptive = deceptive(cards, wanted);
            int first = (YARDS * (session - 1)) % yards.size();
            int turn = draw(YARDS);
            List<Slot> slots = new ArrayList<>();
            for (int i = 0; i < cards.size(); i++) {
                String yard = yards.get((first + (turn + i) % YARDS) % yards.size());
                slots.add(new Slot(i + 1, cards.get(i).family(), cards.get(i).form(), deceptive.contains(i), yard));
            }
            return new Deck(session, slots);
        }

        /** Families that are new in this session. */
        private List<Family> fresh() {
            boolean first = ORDER.stream().allMatch(f -> progress.at(f).next() != Form.WHOLE);
            return ORDER.stream()
                    .filter(f -> progress.at(f).next() != Form.WHOLE)
                    .limit(first ? NEW_AT_FIRST : NEW_LATER)
                    .toList();
        }

        /** How many whole cards each family has. */
        private void share(List<Family> fresh, int count, int wanted) {
            List<Family> known = ORDER.stream()
                    .filter(f -> progress.at(f).next() == Form.WHOLE || fresh.contains(f))
                    .filter(f -> !rests(f))
                    .toList();
            known.stream().filter(f -> !fresh.contains(f)).forEach(f -> left.put(f, 1));
            int given = left.size();
            for (; given < count; given++) {
                boolean needed = left.entrySet().stream()
                                .filter(e -> DECEPTIVE.contains(e.getKey()))
                                .mapToInt(Map.Entry::getValue)
                                .sum()
                        < wanted;
                left.merge(weakest(known, needed), 1, Integer::sum);
            }
        }

        /** Mastered families rest in turn, so that some of all sorts are always there. */
        private boolean rests(Family family) {
            return family != Family.NONE && progress.at(family).mastered() && (session + family.ordinal()) % 2 == 0;
        }

        /** The family with the fewest cards yet in this session, and of these the weakest; nothing wrong comes last. */
        private Family weakest(List<Family> known, boolean deceptive) {
            return known.stream()
                    .filter(f -> !deceptive || DECEPTIVE.contains(f))
                    .min(Comparator.<Family>comparingInt(f -> left.getOrDefault(f, 0))
                            .thenComparing(f -> f == Family.NONE)
                            .thenComparingInt(f -> progress.at(f).good())
                            .thenComparing(ORDER::indexOf))
                    .orElseThrow();
        }

        /** Whole cards in a drawn order, the fullest family first where others could not keep it apart. */
        private void mix(List<Plain> cards) {
            int count = left.values().stream().mapToInt(Integer::intValue).sum();
            for (; count > 0; count--) {
                Family last =
                        cards.isEmpty() ? null : cards.get(cards.size() - 1).family();
                List<Family> may = left.keySet().stream()
                        .filter(f -> left.get(f) > 0 && f != last)
                        .toList();
                Family next = may.isEmpty() ? last : drawn(may, count);
                left.merge(next, -1, Integer::sum);
                cards.add(new Plain(next, Form.WHOLE));
            }
        }

        private Family drawn(List<Family> may, int count) {
            int room = (count + 1) / 2;
            Family picked = may.get(draw(may.size()));
            return may.stream().filter(f -> left.get(f) >= room).findFirst().orElse(picked);
        }

        /** Indices of the cards that are asked to be atypical, whole ones first. */
        private List<Integer> deceptive(List<Plain> cards, int wanted) {
            List<Integer> may = new ArrayList<>();
            for (int i = 0; i < cards.size(); i++) {
                if (DECEPTIVE.contains(cards.get(i).family()) && cards.get(i).form() == Form.WHOLE) {
                    may.add(draw(may.size() + 1), i);
                }
            }
            return may.subList(0, Math.min(may.size(), wanted));
        }

        /** Of so many cards, how many are atypical. */
        private static int atypical(int cards) {
            return (cards + ATYPICAL_IN - 1) / ATYPICAL_IN;
        }
    }
}
