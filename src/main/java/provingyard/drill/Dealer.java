package provingyard.drill;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import provingyard.call.CallSite;
import provingyard.call.Case;
import provingyard.call.Deal;
import provingyard.call.Judge;
import provingyard.diagnosis.CaseScore;
import provingyard.diagnosis.Declaration;
import provingyard.diagnosis.Policies;
import provingyard.diagnosis.ServiceRun;
import provingyard.diagnosis.Step;
import provingyard.diagnosis.Trust;
import provingyard.numeric.RandomStreams;
import provingyard.scenario.ServiceCall.Seen;
import provingyard.scenario.Text;

/**
 * Deals the cards of one site: draws a case of the wanted family by the site's own weights together with what the owner sees
 * of it, and takes it if the reference finds it with enough evidence by {@link #FEWEST} tests or more. Where the reference
 * needs more than {@link #MOST}, its first tests are done already, so that every card is short. Keeps what the site is known
 * to show; for one thread.
 */
public final class Dealer {

    /** Judged tests that a card has at least: with one there is nothing to decide (design). */
    static final int FEWEST = 2;

    /** Judged tests of the reference that are left to the trainee at most (design: 3 to 6 minutes for a person). */
    public static final int MOST = 6;

    /** Tests left where the first ones are done (design). */
    private static final int LEFT = 4;

    /** Bits of uncertainty that are left to the trainee at least (design). */
    private static final double OPEN = 1;

    /** Times the reference's mean minutes that it may take with this card's own luck, so that the goal can be met (design). */
    private static final double FAIR = 1.1;

    private static final int TRIES = 16;

    /** Tries where nothing is wrong: a yard that hides its small faults well never lets that be proven. */
    private static final int SOUND_TRIES = 6;

    /** Evidence of nothing being wrong that is enough: small faults hide behind the noise, so that more is seldom reached (design). */
    private static final double SOUND_ENOUGH = 0.80;

    private final CallSite site;
    private final List<Sight> sights;

    /** A dealer at a site, whatever its own complaint is. Takes some seconds: all that an owner may see is computed. */
    public Dealer(CallSite base) {
        site = base.hearing(new Text("", ""), List.of());
        sights = Sight.of(site);
    }

    /** What can be dealt. */
    List<Sight> sights() {
        return sights;
    }

    /** A card for a place in a deck; empty where the site has none of its family. The same seed deals the same card. */
    public Optional<Card> deal(Deck deck, Deck.Slot slot, long seed) {
        RandomStreams streams = new RandomStreams(seed);
        long key = streams.key("drill.card." + deck.session() + "." + slot.number());
        List<Sight> family =
                sights.stream().filter(s -> s.family() == slot.family()).toList();
        List<Sight> wanted =
                family.stream().filter(s -> s.atypical() == slot.atypical()).toList();
        Optional<Card> card = first(slot, wanted, key, 0);
        boolean others = wanted.size() < family.size();
        return card.isPresent() || !others ? card : first(slot, family, key, TRIES);
    }

    private Optional<Card> first(Deck.Slot slot, List<Sight> from, long key, int number) {
        int tries = slot.family() == Family.NONE ? SOUND_TRIES : TRIES;
        for (int t = number; !from.isEmpty() && t < number + tries; t++) {
            Sight sight = drawn(from, RandomStreams.uniform(key, 3L * t));
            long luck = (long) (RandomStreams.uniform(key, 3L * t + 1) * Long.MAX_VALUE);
            // Who complains of a sound yard has looked around; others have every other time.
            boolean looked = sight.family() == Family.NONE || RandomStreams.uniform(key, 3L * t + 2) < 0.5;
            Optional<Card> card = card(slot, sight, looked, luck);
            if (card.isPresent()) {
                return card;
            }
        }
        return Optional.empty();
    }

    private static Sight drawn(List<Sight> from, double chance) {
        double sum = from.stream().mapToDouble(Sight::weight).sum();
        double left = chance * sum;
        for (Sight sight : from) {
            left -= sight.weight();
            if (left < 0) {
                return sight;
            }
        }
        return from.get(from.size() - 1);
    }

    private Optional<Card> card(Deck.Slot slot, Sight sight, boolean looked, long luck) {
        List<Seen> seen = new ArrayList<>(List.of(sight.seen()));
        if (looked) {
            seen.addAll(sight.rest(site));
        }
        CallSite heard = site.hearing(new Text("", ""), seen);
        // A drill's case is none of the author's deals.
        Deal deal = new Deal(-1, sight.hypothesis() == 0 ? Case.SOUND : Case.of(sight.hypothesis() - 1));
        ServiceRun run = Judge.play(heard, deal, Policies.best(heard, Trust.USUAL), luck);
        boolean found = Judge.hit(heard, deal, run.declared()) == Declaration.Hit.RIGHT
                && run.declaredProbability() >= (sight.family() == Family.NONE ? SOUND_ENOUGH : CaseScore.SUPPORTED);
        if (!found || judged(run.steps()) < FEWEST) {
            return Optional.empty();
        }
        int done = done(slot.form(), run.steps());
        if (slot.form() == Form.HALF && done == 0) {
            return Optional.empty();
        }
        // Where part of a way is done, that way is what the rest is measured by.
        boolean own = slot.form() == Form.EXAMPLE || done > 0;
        Judge.Reference reference = own ? Judge.of(heard, deal, run) : Judge.reference(heard, deal);
        if (run.testMinutes() > FAIR * reference.minutes()) {
            return Optional.empty();
        }
        List<String> way = run.steps().stream().map(Step::action).toList();
        return Optional.of(new Card(
                slot, heard, seen, deal, luck, sight.atypical(), way, done, reference, run.declaredProbability()));
    }

    private static int judged(List<Step> steps) {
        return (int) steps.stream().filter(s -> s.kind().judged()).count();
    }

    /** How many of the reference's steps are done when the trainee comes. */
    private static int done(Form form, List<Step> steps) {
        int judged = judged(steps);
        if (form == Form.EXAMPLE || form == Form.WHOLE && judged <= MOST) {
            return 0;
        }
        int least = Math.min(LEFT, judged - judged / 2);
        int done = steps.size();
        int left = 0;
        while (done > 0 && left < MOST && (left < least || steps.get(done).before() < OPEN)) {
            done--;
            left += steps.get(done).kind().judged() ? 1 : 0;
        }
        return done;
    }
}
