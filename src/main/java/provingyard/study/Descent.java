package provingyard.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import provingyard.scenario.SensorKind;
import provingyard.setup.SetUp;

/**
 * Coordinate descent: one kind after the other, and the schedule where it is open, is changed for the better while the
 * others stay, until a whole round brings nothing.
 *
 * <p>Dials are turned by a section search of our own: a season's loss is a step function of a setting (a sensor trips or
 * it does not), so that the parabolas of a library's univariate optimiser fit nothing; and points that are asked for
 * together live side by side on all cores under weather that is made once.
 */
final class Descent {

    /** A dial's first step as a share of its range, how often it gets finer, and by how much. */
    private static final double FIRST_STEP = 0.1;

    private static final int FINER = 3;
    private static final double FINER_BY = 3;

    private final Limits limits;
    private final List<Options> options;
    private final Optional<ScheduleOptions> schedule;
    private final Screening screening;
    private final TellingDraws telling;

    Descent(
            Limits limits,
            List<Options> options,
            Optional<ScheduleOptions> schedule,
            Screening screening,
            TellingDraws telling) {
        this.limits = limits;
        this.options = options;
        this.schedule = schedule;
        this.screening = screening;
        this.telling = telling;
    }

    /** Places and switches only, one round. */
    SetUp coarse(SetUp from, Heats heats) {
        SetUp now = from;
        for (Options option : options) {
            now = heats.best(now, allowed(others(now, option)), telling.of(option.kind()));
        }
        return now;
    }

    /** Places, switches and dials, one round. */
    SetUp fine(SetUp from, Heats heats) {
        SetUp now = from;
        for (Options option : options) {
            now = kind(now, option, heats);
        }
        return schedule.isPresent() ? clock(now, schedule.get(), heats) : now;
    }

    private SetUp kind(SetUp from, Options option, Heats heats) {
        List<Integer> few = telling.of(option.kind());
        SetUp now = heats.best(from, allowed(others(from, option)), few);
        now = heats.best(now, allowed(switches(now, option)), few);
        int placed = now.of(option.kind()).size();
        for (int i = 0; i < placed; i++) {
            int at = i;
            int dials = option.dials(Fitting.of(now, option.kind()).get(i)).size();
            for (int d = 0; d < dials; d++) {
                int dial = d;
                now = turn(now, s -> dial(s, option, at, dial), few, heats);
            }
        }
        return now;
    }

    private static Dial<SetUp> dial(SetUp setUp, Options option, int at, int dial) {
        Dial<Fitting> of =
                option.dials(Fitting.of(setUp, option.kind()).get(at)).get(dial);
        return new Dial<>(
                of.low(), of.high(), of.step(), of.now(), v -> of.at().apply(v).into(setUp));
    }

    private SetUp clock(SetUp from, ScheduleOptions open, Heats heats) {
        List<Integer> few = telling.ofAll();
        SetUp now = heats.best(from, allowed(open.switches(from)), few);
        int dials = open.dials(now).size();
        for (int d = 0; d < dials; d++) {
            int dial = d;
            now = turn(now, s -> open.dials(s).get(dial), few, heats);
        }
        return now;
    }

    /** Two steps either way, then finer ones around the best. */
    private SetUp turn(SetUp from, Function<SetUp, Dial<SetUp>> dialOf, List<Integer> few, Heats heats) {
        SetUp now = from;
        double step = FIRST_STEP * dialOf.apply(from).range();
        for (int i = 0; i < FINER; i++) {
            Dial<SetUp> dial = dialOf.apply(now);
            if (step < dial.step() / 2) {
                break;
            }
            List<SetUp> around = new ArrayList<>();
            for (int k : new int[] {-1, 1}) {
                around.add(dial.turned(dial.now() + k * step));
            }
            now = heats.nearby(now, allowed(around), few);
            step /= FINER_BY;
        }
        return now;
    }

    /** Without the kind, with each of its short list in its stead, and with one more of it. */
    private List<SetUp> others(SetUp from, Options option) {
        SensorKind kind = option.kind();
        List<Fitting> listed = screening.of(kind).fittings();
        SetUp without = Fitting.without(from, kind);
        List<SetUp> others = new ArrayList<>(List.of(without));
        int placed = from.of(kind).size();
        for (Fitting fitting : listed) {
            others.add(fitting.numbered(1).into(without));
            if (placed > 0 && placed < limits.most(kind)) {
                others.add(fitting.numbered(placed + 1).into(from));
            }
        }
        return others;
    }

    private static List<SetUp> switches(SetUp from, Options option) {
        List<SetUp> switched = new ArrayList<>();
        for (Fitting fitting : Fitting.of(from, option.kind())) {
            option.switches(fitting).forEach(f -> switched.add(f.into(from)));
        }
        return switched;
    }

    private List<SetUp> allowed(List<SetUp> setUps) {
        return setUps.stream().filter(limits::keeps).toList();
    }
}
