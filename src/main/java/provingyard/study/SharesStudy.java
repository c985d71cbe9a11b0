package provingyard.study;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.function.ToDoubleFunction;
import provingyard.scenario.Scenario;
import provingyard.score.Loss;
import provingyard.season.Season;
import provingyard.setup.SetUp;

/**
 * What each choice of a season cost against a mark: the season is lived again with every part of its choices taken from
 * it and the rest from the mark, on the same weather, and the differences are shared out exactly ({@link Shapley}).
 * Where the set-up changed within the season, a choice's whole history is exchanged.
 */
public final class SharesStudy {

    /** What shares add up to and the gap may differ by, as a share of the largest loss among the seasons lived. */
    private static final double TOLERANCE = 1e-9;

    private static final List<ToDoubleFunction<Amounts>> MEASURES =
            List.of(Amounts::water, Amounts::ice, Amounts::leaks, Amounts::plants, Amounts::sensors, Amounts::money);

    private final Season trainee;
    private final SetUp mark;
    private final Decisions decisions;
    private final List<Choice> open;
    /** The open choices that are not the same in both; the others cost nothing, and no season is lived for them. */
    private final List<Choice> players;

    private SharesStudy(Season trainee, SetUp mark) {
        this.trainee = trainee;
        this.mark = mark;
        decisions = Decisions.of(trainee);
        Scenario scenario = trainee.site().scenario();
        open = new ArrayList<>();
        players = new ArrayList<>();
        for (Choice choice : Choice.values()) {
            boolean same = decisions.same(choice, mark, scenario.schedule());
            // What a lesson locks is the same in all set-ups that it takes; in others it must not be lost.
            if (!same || choice.isOpen(scenario)) {
                open.add(choice);
            }
            if (!same) {
                players.add(choice);
            }
        }
    }

    /**
     * The shares of a season, as far as it was lived; takes up to 62 seasons, on all cores. The result does not depend on
     * how many there are.
     *
     * @param trainee the season; not changed
     * @param markLoss what the mark loses in the very same season where that is known, so that it is not lived again
     * @throws java.util.concurrent.CancellationException when the progress asks to stop
     */
    public static Shares of(Season trainee, SetUp mark, Optional<Loss> markLoss, Progress progress) {
        return of(trainee, mark, markLoss, SideBySide.onAllCores(progress));
    }

    static Shares of(Season trainee, SetUp mark, Optional<Loss> markLoss, SideBySide threads) {
        SharesStudy study = new SharesStudy(trainee, mark);
        return study.shares(study.seasons(markLoss.map(Amounts::of), threads));
    }

    /** What each coalition loses: bit i of its number is set where player i's choice is the trainee's. */
    private List<Amounts> seasons(Optional<Amounts> markLoss, SideBySide threads) {
        int all = (1 << players.size()) - 1;
        List<Callable<Amounts>> lived = new ArrayList<>();
        for (int coalition = markLoss.isPresent() ? 1 : 0; coalition < all; coalition++) {
            Decisions mixed = decisions.keeping(kept(coalition), mark);
            lived.add(() -> Amounts.of(Loss.of(mixed.live(trainee))));
        }
        List<Amounts> losses = new ArrayList<>();
        if (all > 0) {
            markLoss.ifPresent(losses::add);
        }
        losses.addAll(threads.live(lived));
        losses.add(Amounts.of(Loss.of(trainee)));
        return losses;
    }

    private Set<Choice> kept(int coalition) {
        Set<Choice> kept = EnumSet.noneOf(Choice.class);
        for (int i = 0; i < players.size(); i++) {
            if ((coalition >> i & 1) != 0) {
                kept.add(players.get(i));
            }
        }
        return kept;
    }

    private Shares shares(List<Amounts> losses) {
        List<Amounts> values = Shapley.values(players.size(), losses::get);
        List<Shares.Share> shares = new ArrayList<>();
        for (Choice choice : open) {
            int player = players.indexOf(choice);
            shares.add(new Shares.Share(choice, player < 0 ? Amounts.NONE : values.get(player)));
        }
        Amounts gap = losses.get(losses.size() - 1).minus(losses.get(0));
        Shares result = new Shares(gap, shares);
        addsUp(result, losses);
        return result;
    }

    /** Shares that do not add up to the gap are a defect. */
    private static void addsUp(Shares shares, List<Amounts> losses) {
        Amounts sum = Amounts.NONE;
        for (Shares.Share share : shares.shares()) {
            sum = sum.plus(share.cost());
        }
        for (ToDoubleFunction<Amounts> measure : MEASURES) {
            double largest =
                    losses.stream().mapToDouble(measure).map(Math::abs).max().orElse(0);
            double off = Math.abs(measure.applyAsDouble(sum) - measure.applyAsDouble(shares.gap()));
            if (!(off <= TOLERANCE * largest)) {
                throw new IllegalStateException("shares add up to " + sum + ", the gap is " + shares.gap());
            }
        }
    }
}
