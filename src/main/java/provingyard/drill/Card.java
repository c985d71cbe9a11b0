package provingyard.drill;

import java.util.List;
import provingyard.call.Call;
import provingyard.call.CallSite;
import provingyard.call.Deal;
import provingyard.call.Judge;
import provingyard.scenario.ServiceCall.Seen;
import provingyard.scenario.Text;

/**
 * A short service call.
 *
 * @param slot its place in the deck
 * @param site the site, on which the owner has seen what the card says
 * @param seen what the owner saw: first what is complained of, then what looks well
 * @param deal what is wrong
 * @param seed what all chance of it is drawn from
 * @param atypical whether what the owner saw speaks most for another family
 * @param way ids of the reference's actions, in order
 * @param done how many of them are done when the trainee comes
 * @param reference how long the reference takes
 * @param reached evidence of the truth that the reference reaches
 */
public record Card(
        Deck.Slot slot,
        CallSite site,
        List<Seen> seen,
        Deal deal,
        long seed,
        boolean atypical,
        List<String> way,
        int done,
        Judge.Reference reference,
        double reached) {

    /** What the reference is ahead of a trainee whose evidence is enough, where it does not reach what others need. */
    private static final double ALMOST = 0.02;

    public Card {
        seen = List.copyOf(seen);
        way = List.copyOf(way);
    }

    /** The same card in the owner's words. */
    public Card saying(Text complaint) {
        CallSite heard = site.hearing(complaint, seen);
        return new Card(slot, heard, seen, deal, seed, atypical, way, done, reference, reached);
    }

    /** What it asks for. */
    public Goal goal() {
        return Goal.of(reference.minutes(), reached - ALMOST);
    }

    /** The call as the trainee finds it. Takes some moments where tests are done already. */
    public Call begin() {
        return begin(done);
    }

    /** The reference's whole way, its finding stated. */
    public Call example() {
        Call call = begin(way.size());
        String leading = call.belief().leading();
        call.state(new Call.Finding(leading, call.belief().ofClass(leading)));
        return call;
    }

    private Call begin(int tests) {
        Call call = Call.begin(site, deal, seed);
        way.subList(0, tests).forEach(call::act);
        return call;
    }
}
