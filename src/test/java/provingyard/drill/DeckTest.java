package provingyard.drill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import provingyard.drill.Deck.Slot;
import provingyard.numeric.RandomStreams;

/** What holds of every deck, whatever a learner did before. */
class DeckTest {

    private static final List<String> YARDS = List.of("a", "b", "c", "d", "e", "f");
    private static final int SESSIONS = 12;

    /** Decks of a learner who meets a share of the goals, and leaves a share of the sessions in the middle. */
    private static List<Deck> lived(long seed, double able, double leaves) {
        long key = new RandomStreams(seed).key("test.drill");
        long draws = 0;
        Progress progress = Progress.NONE;
        List<Deck> decks = new ArrayList<>();
        for (int s = 0; s < SESSIONS; s++) {
            progress = progress.begun();
            Deck deck = Deck.of(seed, progress, progress.sessions(), YARDS);
            decks.add(deck);
            boolean whole = RandomStreams.uniform(key, draws++) >= leaves;
            for (Slot slot : deck.slots().subList(0, whole ? Deck.CARDS : Deck.CARDS / 2)) {
                boolean met = RandomStreams.uniform(key, draws++) < able;
                Result result = slot.form() == Form.EXAMPLE
                        ? Result.shown(deck.session())
                        : new Result(slot.form(), deck.session(), met ? 92 : 61, met);
                progress = progress.after(slot.family(), result);
            }
        }
        return decks;
    }

    private static long count(Deck deck, Family family) {
        return deck.slots().stream().filter(s -> s.family() == family).count();
    }

    @Property(tries = 300)
    void noFamilyComesMoreThanTwiceInARow(
            @ForAll long seed, @ForAll @DoubleRange(max = 1) double able, @ForAll @DoubleRange(max = 1) double leaves) {
        for (Deck deck : lived(seed, able, leaves)) {
            List<Slot> slots = deck.slots();
            for (int i = 2; i < slots.size(); i++) {
                Family last = slots.get(i).family();
                boolean three =
                        slots.get(i - 1).family() == last && slots.get(i - 2).family() == last;
                assertTrue(!three, slots::toString);
            }
            // Two of a kind in a row are the first two of a family, or cannot be helped.
            for (int i = deck.mixedFrom(); i < slots.size(); i++) {
                assertNotEquals(slots.get(i - 1).family(), slots.get(i).family(), slots::toString);
            }
        }
    }

    @Property(tries = 300)
    void someHaveNothingWrongAndSomeLookLikeSomethingElse(
            @ForAll long seed, @ForAll @DoubleRange(max = 1) double able, @ForAll @DoubleRange(max = 1) double leaves) {
        for (Deck deck : lived(seed, able, leaves)) {
            assertEquals(Deck.CARDS, deck.slots().size());
            assertTrue(
                    count(deck, Family.NONE) >= 0.1 * Deck.CARDS,
                    () -> deck.slots().toString());
            assertTrue(
                    count(deck, Family.NONE) <= 0.5 * Deck.CARDS,
                    () -> deck.slots().toString());
            List<Slot> worked =
                    deck.slots().stream().filter(s -> s.form() != Form.EXAMPLE).toList();
            long atypical = worked.stream().filter(Slot::atypical).count();
            assertTrue(
                    Deck.ATYPICAL_IN * atypical >= worked.size(),
                    () -> deck.slots().toString());
            assertTrue(deck.slots().stream()
                    .allMatch(s -> !s.atypical() || Deck.DECEPTIVE.contains(s.family()) && s.form() == Form.WHOLE));
        }
    }

    @Property(tries = 300)
    void eachFamilyReturnsInALaterSessionSoonEnough(
            @ForAll long seed, @ForAll @DoubleRange(max = 1) double able, @ForAll @DoubleRange(max = 1) double leaves) {
        List<Deck> decks = lived(seed, able, leaves);
        Set<Family> known = EnumSet.noneOf(Family.class);
        for (int s = 0; s + 2 < decks.size(); s++) {
            decks.get(s).slots().forEach(slot -> known.add(slot.family()));
            for (Family family : known) {
                long next = count(decks.get(s + 1), family) + count(decks.get(s + 2), family);
                assertTrue(next > 0, family + " after session " + (s + 1));
            }
        }
        if (leaves == 0) {
            assertEquals(EnumSet.allOf(Family.class), known);
        }
    }

    @Property(tries = 100)
    void aFamilyBeginsWithOneExampleThenHalfDoneThenWhole(
            @ForAll long seed, @ForAll @DoubleRange(max = 1) double able) {
        List<Form> forms = new ArrayList<>();
        for (Family family : Family.values()) {
            forms.clear();
            lived(seed, able, 0).stream()
                    .flatMap(d -> d.slots().stream())
                    .filter(s -> s.family() == family)
                    .forEach(s -> forms.add(s.form()));
            assertEquals(List.of(Form.EXAMPLE, Form.HALF), forms.subList(0, 2));
            assertTrue(forms.subList(2, forms.size()).stream().allMatch(f -> f == Form.WHOLE), forms::toString);
        }
    }

    @Property(tries = 100)
    void theSameLearnerGetsTheSameDeckOnFewYards(@ForAll long seed, @ForAll @IntRange(min = 1, max = 6) int yards) {
        Progress progress = Progress.NONE.begun();
        Deck deck = Deck.of(seed, progress, 1, YARDS.subList(0, yards));
        assertEquals(deck, Deck.of(seed, progress, 1, YARDS.subList(0, yards)));
        long used = deck.slots().stream().map(Slot::yard).distinct().count();
        assertEquals(Math.min(yards, Deck.YARDS), used);
        assertEquals(
                IntStream.rangeClosed(1, Deck.CARDS).boxed().toList(),
                deck.slots().stream().map(Slot::number).toList());
    }

    @Test
    void decksDifferBySeedAndSession() {
        Progress far = Progress.NONE;
        for (Family family : Family.values()) {
            far = far.after(family, Result.shown(1)).after(family, new Result(Form.HALF, 1, 70, false));
        }
        Set<List<Slot>> seen = new java.util.HashSet<>();
        for (int seed = 0; seed < 10; seed++) {
            seen.add(Deck.of(seed, far, 2, YARDS).slots());
            seen.add(Deck.of(seed, far, 3, YARDS).slots());
        }
        assertTrue(seen.size() > 15, seen.size() + " of 20 decks differ");
    }
}
