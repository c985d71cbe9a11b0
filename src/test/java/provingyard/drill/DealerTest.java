package provingyard.drill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import provingyard.call.Call;
import provingyard.call.CallSite;
import provingyard.diagnosis.Action;
import provingyard.diagnosis.Declaration;
import provingyard.scenario.Sites;
import provingyard.scenario.Text;

/** Cards on a shipped yard, as the simulator has them. */
class DealerTest {

    private static final Text SAID = new Text("It is dry.", "Está seco.");
    private static CallSite base;
    private static Dealer dealer;

    @BeforeAll
    static void ready() {
        base = CallSite.of(Sites.open("sedge-nook").orThrow());
        dealer = new Dealer(base);
    }

    private static Card dealt(Family family, Form form, boolean atypical, long seed) {
        Deck.Slot slot = new Deck.Slot(1, family, form, atypical, "sedge-nook");
        return dealer.deal(new Deck(1, List.of(slot)), slot, seed).orElseThrow();
    }

    @ParameterizedTest
    @EnumSource(Family.class)
    void aCardIsOfItsFamilyShortAndCanBeFound(Family family) {
        Card card = dealt(family, Form.WHOLE, false, 3);
        List<Integer> wrong = card.deal().wrong().faults();
        assertEquals(
                family,
                wrong.isEmpty()
                        ? Family.NONE
                        : Family.of(card.site().faults().get(wrong.get(0)).kind()));
        Call call = card.example();
        assertEquals(Declaration.Hit.RIGHT, call.declaration().hit());
        assertTrue(call.declaration().probability() >= card.goal().evidence());
        double asked = card.goal().evidence();
        assertTrue(asked <= 0.9 && asked >= (family == Family.NONE ? 0.78 : 0.9), "asked for " + asked);
        long left = call.notes().stream()
                .skip(card.done())
                .filter(n -> n.test().action().kind().judged())
                .count();
        assertTrue(left >= Dealer.FEWEST && left <= Dealer.MOST, left + " tests are left");
        Call begun = card.begin();
        assertEquals(card.done(), begun.notes().size());
        // What is done already is what the reference did, with the same readings.
        for (int i = 0; i < card.done(); i++) {
            assertEquals(call.notes().get(i).reading(), begun.notes().get(i).reading());
        }
    }

    /** Hearing another complaint changes what is believed, and computes nothing anew. */
    @Test
    void anotherComplaintSharesAllThatIsKnown() {
        Card card = dealt(Family.ELECTRICAL, Form.WHOLE, false, 2);
        Action meter = base.test("readMeter").orElseThrow().action();
        assertSame(
                base.predict(meter, base.start()),
                card.site().predict(meter, card.site().start()));
        assertNotEquals(
                base.hypotheses().prior(0), card.site().hypotheses().prior(0), "another complaint, another belief");
    }

    @Test
    void halfDoneCardsHaveTestsDoneAndSomeLeft() {
        for (long seed = 0; seed < 4; seed++) {
            Card card = dealt(Family.ELECTRICAL, Form.HALF, false, seed);
            assertTrue(card.done() > 0, "seed " + seed);
            assertTrue(card.done() < card.way().size(), "seed " + seed);
        }
        assertEquals(0, dealt(Family.ELECTRICAL, Form.EXAMPLE, false, 1).done());
    }

    @Test
    void theSameSeedDealsTheSameCard() {
        Card one = dealt(Family.HYDRAULIC, Form.WHOLE, false, 5);
        Card other = new Dealer(base)
                .deal(new Deck(1, List.of(one.slot())), one.slot(), 5)
                .orElseThrow();
        assertEquals(one.deal(), other.deal());
        assertEquals(one.seed(), other.seed());
        assertEquals(one.seen(), other.seen());
        assertEquals(one.way(), other.way());
        assertEquals(one.reference(), other.reference());
    }

    /** The owner's words are what a sound site does not show and the fault does; the belief has heard them. */
    @Test
    void whatTheOwnerSawFollowsFromTheFault() {
        Card card = dealt(Family.ELECTRICAL, Form.WHOLE, false, 2).saying(SAID);
        assertSame(SAID, card.site().scenario().call().complaint());
        assertEquals(card.seen(), card.site().scenario().call().seen());
        String truth = card.deal().answer(card.site());
        double before = classPrior(base.hearing(SAID, List.of()), truth);
        assertTrue(classPrior(card.site(), truth) > before, "the complaint speaks for the truth");
    }

    private static double classPrior(CallSite site, String repairClass) {
        double sum = 0;
        for (int h = 0; h < site.hypotheses().size(); h++) {
            sum += site.hypotheses().get(h).repairClass().equals(repairClass)
                    ? site.hypotheses().prior(h)
                    : 0;
        }
        return sum;
    }

    @Test
    void anAtypicalCaseLooksLikeAnotherFamily() {
        for (Family family : Deck.DECEPTIVE) {
            Card card = dealt(family, Form.WHOLE, true, 1);
            assertTrue(card.atypical(), family.name());
            assertFalse(dealt(family, Form.WHOLE, false, 1).atypical(), family.name());
        }
        assertTrue(dealer.sights().stream().noneMatch(s -> s.family() == Family.NONE && s.atypical()));
    }
}
