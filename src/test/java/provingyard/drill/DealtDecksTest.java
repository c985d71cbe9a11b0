package provingyard.drill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import provingyard.call.CallSite;
import provingyard.scenario.Sites;

/** Whole decks as they are dealt on the shipped yards: every slot has a card, and the shares hold of the cards themselves. */
@Tag("calls")
class DealtDecksTest {

    private static final int SESSIONS = Integer.getInteger("drill.sessions", 2);

    private final Map<String, Dealer> dealers = new HashMap<>();

    private Dealer at(String yard) {
        return dealers.computeIfAbsent(
                yard, id -> new Dealer(CallSite.of(Sites.open(id).orThrow())));
    }

    @Test
    void decksOfShippedYardsHoldWhatTheirPlansPromise() {
        List<String> yards = Sites.list().stream()
                .filter(Sites.Site::shipped)
                .map(Sites.Site::id)
                .filter(id -> Sites.open(id).orThrow().call() != null)
                .toList();
        Progress progress = Progress.NONE;
        for (int s = 1; s <= SESSIONS; s++) {
            Deck deck = Deck.of(7, progress, s, yards);
            int atypical = 0;
            int worked = 0;
            for (Deck.Slot slot : deck.slots()) {
                Optional<Card> dealt = at(slot.yard()).deal(deck, slot, 7);
                assertTrue(dealt.isPresent(), slot::toString);
                Card card = dealt.get();
                System.out.printf(
                        "%d %s %s: %d tests, %d done, %.0f min, atypical %s%n",
                        s,
                        slot,
                        card.seen().get(0),
                        card.way().size(),
                        card.done(),
                        card.reference().minutes(),
                        card.atypical());
                assertTrue(!slot.atypical() || card.atypical(), slot::toString);
                worked += slot.form() == Form.EXAMPLE ? 0 : 1;
                atypical += slot.form() != Form.EXAMPLE && card.atypical() ? 1 : 0;
                Result result = slot.form() == Form.EXAMPLE ? Result.shown(s) : new Result(slot.form(), s, 70, false);
                progress = progress.after(slot.family(), result);
            }
            assertTrue(Deck.ATYPICAL_IN * atypical >= worked, atypical + " of " + worked);
            assertEquals(Deck.CARDS, deck.slots().size());
        }
    }
}
