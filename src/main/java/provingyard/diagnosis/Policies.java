package provingyard.diagnosis;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Predicate;
import java.util.stream.Stream;
import provingyard.numeric.RandomStreams;

/** Ways of going about a service call that a score must put in the right order. All are design. */
public final class Policies {

    /** Probability at which the early guesser is content. */
    public static final double EARLY = 0.40;

    /** Splits that the textbook makes before anything else. */
    private static final int TEXTBOOK_SPLITS = 2;

    private Policies() {}

    /** Most bits per minute, one test ahead. */
    public static Policy best(Premises premises, Trust trust) {
        return choosing("best", premises, trust, Solver.ENOUGH, (inquiry, ranked) -> ranked.get(0));
    }

    /** Most bits, whatever the minutes. */
    public static Policy mostBits(Premises premises, Trust trust) {
        return choosing(
                "most-bits",
                premises,
                trust,
                Solver.ENOUGH,
                (inquiry, ranked) -> withMostBits(ranked, r -> true).orElseThrow());
    }

    /** Halves the line twice whatever the complaint, by the splits with the most bits, then does the best. */
    public static Policy halfSplit(Premises premises, Trust trust) {
        return choosing("half-split", premises, trust, Solver.ENOUGH, (inquiry, ranked) -> {
            boolean more = inquiry.done().size() < TEXTBOOK_SPLITS;
            return (more ? withMostBits(ranked, r -> isNewSplit(r.action(), inquiry)) : Optional.<Ranked>empty())
                    .orElse(ranked.get(0));
        });
    }

    /** Best, but content with little evidence. */
    public static Policy early(Premises premises, Trust trust) {
        return choosing("early", premises, trust, EARLY, (inquiry, ranked) -> ranked.get(0));
    }

    /** The best test or, as the dice say each time, any action that is judged, digs and swaps among them. */
    public static Policy halfRandom(Premises premises, Trust trust, long seed) {
        return random("half-random", 0.5, premises, trust, seed);
    }

    /** Any action that is judged, digs and swaps among them. */
    public static Policy random(Premises premises, Trust trust, long seed) {
        return random("random", 1, premises, trust, seed);
    }

    /** A checklist, one item after the other, until the evidence is enough. */
    public static Policy fixedList(List<String> ids, Premises premises) {
        return new InTurn("fixed-list", ids, premises, Solver.ENOUGH);
    }

    /** Everything in the order in which it is shown, digs last only if they are shown last. */
    public static Policy asShown(Premises premises) {
        List<String> ids = premises.actions().stream()
                .filter(a -> a.kind().judged() || a.kind() == Action.Kind.REQUEST)
                .map(Action::id)
                .toList();
        return new InTurn("as-shown", ids, premises, Solver.ENOUGH);
    }

    /** Has lines marked, walks to all looks given, then digs one place after the other. */
    public static Policy digEverywhere(List<String> looks, Premises premises) {
        List<String> requests = ids(premises, a -> a.kind() == Action.Kind.REQUEST);
        List<String> digs = ids(premises, a -> a.kind() == Action.Kind.DIG);
        List<String> all =
                Stream.of(requests, looks, digs).flatMap(List::stream).toList();
        return new InTurn("dig-everywhere", all, premises, Solver.ENOUGH);
    }

    private static List<String> ids(Premises premises, Predicate<Action> wanted) {
        return premises.actions().stream().filter(wanted).map(Action::id).toList();
    }

    private static Policy random(String name, double share, Premises premises, Trust trust, long seed) {
        long key = new RandomStreams(seed).key("policy." + name);
        return choosing(name, premises, trust, Solver.ENOUGH, (inquiry, ranked) -> {
            long n = inquiry.done().size();
            if (RandomStreams.uniform(key, 2 * n) >= share) {
                return ranked.get(0);
            }
            return ranked.get((int) (RandomStreams.uniform(key, 2 * n + 1) * ranked.size()));
        });
    }

    private static boolean isNewSplit(Action action, Inquiry inquiry) {
        return action.kind() == Action.Kind.SPLIT && !inquiry.done().contains(action.id());
    }

    private static Optional<Ranked> withMostBits(List<Ranked> ranked, Predicate<Ranked> wanted) {
        // The first of equals is the one that ranks higher.
        return ranked.stream().filter(wanted).min(Comparator.comparingDouble(r -> -r.gain()));
    }

    private static Policy choosing(
            String name,
            Premises premises,
            Trust trust,
            double enough,
            BiFunction<Inquiry, List<Ranked>, Ranked> choice) {
        Ranking ranking = new Ranking(premises, trust);
        return new Choosing(name, ranking, enough, choice);
    }

    private record Choosing(
            String name, Ranking ranking, double enough, BiFunction<Inquiry, List<Ranked>, Ranked> choice)
            implements Policy {

        @Override
        public Move next(Inquiry inquiry) {
            Belief belief = inquiry.belief();
            List<Ranked> ranked = ranking.of(inquiry);
            boolean useless = ranked.stream().allMatch(r -> r.gain() < Solver.NOTHING);
            if (useless || belief.ofClass(belief.leadingClass()) >= enough) {
                return new Move.Declare(belief.leading());
            }
            return new Move.Do(choice.apply(inquiry, ranked).action());
        }
    }

    private record InTurn(String name, List<String> ids, Premises premises, double enough) implements Policy {

        @Override
        public Move next(Inquiry inquiry) {
            Belief belief = inquiry.belief();
            if (belief.ofClass(belief.leadingClass()) < enough) {
                for (String id : ids) {
                    Action action = action(id);
                    if (!inquiry.done().contains(id) && Ranking.isOpen(action, inquiry.state())) {
                        return new Move.Do(action);
                    }
                }
            }
            return new Move.Declare(belief.leading());
        }

        private Action action(String id) {
            return premises.actions().stream()
                    .filter(a -> a.id().equals(id))
                    .findFirst()
                    .orElseThrow(() -> new IllegalArgumentException("no action " + id));
        }
    }
}
