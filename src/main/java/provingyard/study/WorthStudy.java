package provingyard.study;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import provingyard.scenario.Scenario;
import provingyard.scenario.SensorKind;
import provingyard.score.Loss;
import provingyard.season.Season;
import provingyard.season.Site;
import provingyard.setup.Cost;
import provingyard.setup.References;
import provingyard.setup.SetUp;

/**
 * What each kind of sensor, and the whole set-up, is worth on a site: seasons with it against seasons without it, all
 * else as it was, over draws that no search for a mark has seen. All set-ups meet the same draws.
 */
public final class WorthStudy {

    /** The first draw that is kept for this; searches use smaller numbers. */
    public static final int FIRST_DRAW = 401;

    /**
     * What was found.
     *
     * @param kinds in the order of the kinds; those that neither the set-up nor the reference has are left out
     * @param whole the whole set-up against the clock alone
     * @param unsolvedMinutes minutes in which the pipes' flows could not be worked out, over all seasons; with any, the
     *     numbers cannot be trusted
     */
    public record Result(List<Worth> kinds, WholeWorth whole, long unsolvedMinutes) {

        public Result {
            kinds = List.copyOf(kinds);
        }
    }

    /** Two set-ups that differ by what is asked about. */
    private record Pair(SetUp with, SetUp without) {}

    /** What one season came to. */
    private record Lived(Amounts amounts, double running, long unsolvedMinutes) {

        static Lived of(Season season) {
            Loss loss = Loss.of(season);
            return new Lived(Amounts.of(loss), running(loss), season.unsolvedMinutes());
        }

        /** USD of all but the sensors' price; summed without it, so that a sensor that does nothing saves exactly 0. */
        private static double running(Loss loss) {
            double sum = 0;
            for (Loss.Entry entry : loss.entries()) {
                sum += entry.kind() == Loss.Kind.SENSORS ? 0 : entry.money();
            }
            return sum;
        }
    }

    private record Saved(Worth.Span water, Worth.Span ice, Worth.Span money) {}

    private final Site site;
    private final SetUp own;
    private final Optional<SetUp> reference;
    private final int draws;
    private final double seasonsAYear;
    /** The set-ups to be lived, each once. */
    private final List<SetUp> setUps;

    /** What they came to, draw by draw in their order. */
    private List<Lived> lived;

    private WorthStudy(Site site, SetUp own, Optional<SetUp> reference, int draws) {
        this.site = site;
        this.own = own;
        this.reference = reference;
        this.draws = draws;
        seasonsAYear = site.scenario().season().seasonsAYear();
        Set<SetUp> different = new LinkedHashSet<>(List.of(SetUp.CLOCK_ALONE, own));
        for (SensorKind kind : kinds()) {
            different.add(pair(kind).with());
            different.add(pair(kind).without());
        }
        setUps = List.copyOf(different);
    }

    /**
     * What all is worth, on all cores; the result does not depend on how many there are. Takes one season more for each
     * draw than there are kinds, and one for the clock alone.
     *
     * @param own the set-up that was lived
     * @param reference where kinds that are not placed are taken from, usually the mark; the textbook set-up without one
     * @param draws how many draws from {@link #FIRST_DRAW} on, at least 1
     * @throws java.util.concurrent.CancellationException when the progress asks to stop
     */
    public static Result of(Site site, SetUp own, Optional<SetUp> reference, int draws, Progress progress) {
        return of(site, own, reference, draws, SideBySide.onAllCores(progress));
    }

    static Result of(Site site, SetUp own, Optional<SetUp> reference, int draws, SideBySide threads) {
        Optional<SetUp> from = reference.or(() -> References.textbook(site.scenario()));
        return new WorthStudy(site, own, from, draws).result(threads);
    }

    private List<SensorKind> kinds() {
        List<SensorKind> kinds = new ArrayList<>();
        for (SensorKind kind : SensorKind.values()) {
            boolean known =
                    placed(kind) || reference.map(r -> !r.of(kind).isEmpty()).orElse(false);
            if (known && Choice.of(kind).isOpen(site.scenario())) {
                kinds.add(kind);
            }
        }
        return kinds;
    }

    private boolean placed(SensorKind kind) {
        return !own.of(kind).isEmpty();
    }

    private Pair pair(SensorKind kind) {
        return placed(kind)
                ? new Pair(own, Mix.without(own, kind))
                : new Pair(Mix.with(own, kind, reference.orElseThrow()), own);
    }

    private Result result(SideBySide threads) {
        List<Callable<Lived>> seasons = new ArrayList<>();
        // All set-ups of a draw before the next draw: seasons of one weather share it and its unwatered twin.
        for (int draw = FIRST_DRAW; draw < FIRST_DRAW + draws; draw++) {
            for (SetUp setUp : setUps) {
                seasons.add(season(draw, setUp));
            }
        }
        lived = threads.live(seasons);
        List<Worth> worth = kinds().stream().map(this::worth).toList();
        long unsolved = lived.stream().mapToLong(Lived::unsolvedMinutes).sum();
        return new Result(worth, whole(), unsolved);
    }

    private Callable<Lived> season(int draw, SetUp setUp) {
        return () -> {
            Season season = Season.drawn(site, draw, setUp);
            season.liveToEnd();
            return Lived.of(season);
        };
    }

    private Worth worth(SensorKind kind) {
        Pair pair = pair(kind);
        double price = price(pair.with()) - price(pair.without());
        Saved saved = saved(pair);
        return new Worth(kind, price, placed(kind), saved.water(), saved.ice(), saved.money(), seasonsAYear, draws);
    }

    private WholeWorth whole() {
        Saved saved = saved(new Pair(own, SetUp.CLOCK_ALONE));
        return new WholeWorth(price(own), saved.water(), saved.ice(), saved.money(), seasonsAYear, draws);
    }

    private double price(SetUp setUp) {
        Scenario scenario = site.scenario();
        return Cost.of(setUp, scenario.kit()).spent();
    }

    private Saved saved(Pair pair) {
        double[] water = new double[draws];
        double[] ice = new double[draws];
        double[] money = new double[draws];
        for (int draw = 0; draw < draws; draw++) {
            Lived with = lived(draw, pair.with());
            Lived without = lived(draw, pair.without());
            water[draw] = without.amounts().water() - with.amounts().water();
            ice[draw] = without.amounts().ice() - with.amounts().ice();
            money[draw] = without.running() - with.running();
        }
        return new Saved(Worth.Span.over(water), Worth.Span.over(ice), Worth.Span.over(money));
    }

    private Lived lived(int draw, SetUp setUp) {
        return lived.get(draw * setUps.size() + setUps.indexOf(setUp));
    }
}
