package provingyard.call;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BiPredicate;
import java.util.stream.Stream;
import provingyard.call.Memory.Turn;
import provingyard.control.ControlFaults;
import provingyard.control.Controller;
import provingyard.scenario.FaultPlan;
import provingyard.scenario.Scenario;
import provingyard.scenario.SensorKind;
import provingyard.season.ControlTroubles;
import provingyard.season.Exposure;
import provingyard.season.Season;
import provingyard.season.SensorTroubles;
import provingyard.season.Site;
import provingyard.sensor.Readings;
import provingyard.sensor.SensorFaults;
import provingyard.setup.SetUp;

/**
 * The days before the technician arrives, lived in each case, and what the controller remembers of them.
 *
 * <p>The site's own season is lived once without any fault until the arrival. Its last {@link #DAYS} days are then lived
 * again in each case by the real sensors and the real controller, minute by minute: sensors under the case's troubles and
 * the season's weather ({@link Exposure} says what is not lived again), the controller under the program that the case
 * leaves in it, and flows by the pipes with the valves that the case's wires draw. A controller whose transformer gives
 * nothing stands still. The author's faults begin when the author says; the suspected ones have no time, so both of them
 * having been there all those days and for the last {@link #FRESH} days are thought equally probable (no source).
 *
 * <p>The program that is set is read as well: what it would do by the clock alone in these days is compared with what the
 * wanted one would do.
 *
 * <p>Cases are lived when they are asked for, and kept. Safe for several threads.
 */
final class LastDays {

    /** Days that the controller's records are looked at (common practice, no source). */
    static final int DAYS = 7;

    /** Days that a fresh fault has acted. */
    static final int FRESH = 3;

    /** Nothing ran when no zone was opened since so many of the program's starts. */
    private static final int STARTS = 2;

    /** Minutes beyond a sound site's that a zone must have been open while a sensor should have held (no source). */
    private static final int NOTED = 5;

    private static final int DAY = 1440;
    private static final int MINUTE = 60;

    /** What records say, in the order in which it is noticed: the first that holds is the answer. */
    enum Answer {
        /** Some zone has more turns by the program that is set than by the wanted one. */
        EXTRA_RUNS("extraRuns"),
        /** Some zone's turns are longer by the program that is set than by the wanted one. */
        LONGER_RUNS("longerRuns"),
        /** Some zone's turns are shorter by the program that is set than by the wanted one. */
        SHORTER_RUNS("shorterRuns"),
        /** Flow was too high, too low or unscheduled. */
        FLOW_ALARM("flowAlarm"),
        /** No zone was opened since the last two starts of the wanted program. */
        NOTHING_RAN("nothingRan"),
        /** Zones were open while a sound rain sensor at the same place would have held. */
        RAN_IN_RAIN("ranInRain"),
        /** The same with a freeze sensor. */
        RAN_IN_FROST("ranInFrost"),
        /** The same with a wind sensor. */
        RAN_IN_WIND("ranInWind"),
        /** The same with a soil sensor that would have been wet. */
        RAN_ON_WET_SOIL("ranOnWetSoil"),
        AS_PLANNED("asPlanned");

        private final String key;

        Answer(String key) {
            this.key = key;
        }

        String key() {
            return key;
        }
    }

    private final Ground ground;
    private final boolean metered;
    private final Map<Case, Expected.Odds> known = new ConcurrentHashMap<>();
    private Site yard;
    private Exposure exposure;
    private Memory sound;
    private Memory planned;

    LastDays(Ground ground) {
        this.ground = ground;
        metered = !ground.installed().of(SensorKind.FLOW).isEmpty();
    }

    /** What the sensors were exposed to in these days. */
    synchronized Exposure exposure() {
        if (exposure == null) {
            exposure = lived();
        }
        return exposure;
    }

    /** The yard with nothing wrong on it. */
    synchronized Site yard() {
        if (yard == null) {
            Scenario all = ground.scenario();
            yard = Site.of(all.with(all.catalogue(), all.yard(), List.of()));
        }
        return yard;
    }

    private Exposure lived() {
        Season season = Season.begin(yard(), ground.installed());
        FaultPlan.When arrives = ground.scenario().call().arrives();
        long until = arrives == null ? season.end() : Math.min(season.end(), tick(arrives));
        long from = Math.max(0, until / DAY - DAYS) * DAY;
        while (season.tick() < from) {
            season.advance();
        }
        return Exposure.of(season, until);
    }

    /** Minute of the season. */
    static long tick(FaultPlan.When when) {
        return (when.day() - 1L) * DAY + when.at().toSecondOfDay() / MINUTE;
    }

    /** How probable each {@link Answer} is in a case. */
    Expected.Odds odds(Case wrong) {
        return known.computeIfAbsent(noticed(wrong), this::live);
    }

    /** What flows is nothing to a controller that sees no flow: its case is told by its other faults alone. */
    private Case noticed(Case wrong) {
        return new Case(
                wrong.faults().stream().filter(f -> metered || isNoticed(f)).toList());
    }

    /** Whether a fault touches sensors, program or transformer. */
    private boolean isNoticed(int fault) {
        FaultPlan plan = ground.fault(fault);
        boolean sensor = SensorTroubles.of(List.of(plan)) != SensorFaults.NONE;
        boolean program = !ControlTroubles.of(List.of(plan)).equals(ControlFaults.NONE);
        return sensor
                || program
                || ground.wires().in(Case.of(fault)).transformer().dead();
    }

    private Expected.Odds live(Case wrong) {
        prepare();
        double[] odds = new double[Answer.values().length];
        Memory program = program(wrong);
        List<Long> onsets = onsets(wrong);
        for (long onset : onsets) {
            odds[answer(memory(wrong, onset), program).ordinal()] += 1.0 / onsets.size();
        }
        return new Expected.Odds(Arrays.stream(odds).boxed().toList());
    }

    private synchronized void prepare() {
        if (sound == null) {
            planned = clockAlone(ControlFaults.NONE);
            sound = memory(Case.SOUND, exposure().from());
        }
    }

    private List<Long> onsets(Case wrong) {
        long from = exposure().from();
        boolean timed = wrong.faults().stream().allMatch(f -> ground.fault(f).when() != null);
        return timed ? List.of(from) : List.of(from, Math.max(from, exposure().until() - (long) FRESH * DAY));
    }

    // What records say

    private Answer answer(Memory found, Memory program) {
        return Stream.of(Answer.values())
                .filter(a -> holds(a, found, program))
                .findFirst()
                .orElseThrow();
    }

    private boolean holds(Answer answer, Memory found, Memory program) {
        return switch (answer) {
            case EXTRA_RUNS -> anyZone(program, (set, wanted) -> set.size() > wanted.size());
            case LONGER_RUNS -> anyZone(program, (set, wanted) -> last(set) > last(wanted));
            case SHORTER_RUNS -> anyZone(program, (set, wanted) -> last(set) < last(wanted));
            case FLOW_ALARM -> found.alarm();
            case NOTHING_RAN -> nothingRan(found);
            case RAN_IN_RAIN -> ranWhile(SensorKind.RAIN, found);
            case RAN_IN_FROST -> ranWhile(SensorKind.FREEZE, found);
            case RAN_IN_WIND -> ranWhile(SensorKind.WIND, found);
            case RAN_ON_WET_SOIL -> ranWhile(SensorKind.SOIL, found);
            case AS_PLANNED -> true;
        };
    }

    private boolean nothingRan(Memory found) {
        if (planned.runs().isEmpty()) {
            return false;
        }
        List<Turn> firsts = planned.turns().get(planned.runs().get(0).zone());
        long since = firsts.get(Math.max(0, firsts.size() - STARTS)).start()
                - exposure().from();
        return found.open().nextSetBit((int) since) < 0;
    }

    private boolean anyZone(Memory program, BiPredicate<List<Turn>, List<Turn>> differs) {
        Map<String, List<Turn>> wanted = planned.turns();
        return program.turns().entrySet().stream()
                .anyMatch(e -> differs.test(e.getValue(), wanted.getOrDefault(e.getKey(), List.of())));
    }

    private static long last(List<Turn> turns) {
        return turns.isEmpty() ? 0 : turns.get(turns.size() - 1).minutes();
    }

    private boolean ranWhile(SensorKind kind, Memory found) {
        return found.openWhile(kind, sound) >= sound.openWhile(kind, sound) + NOTED;
    }

    // Living

    /** What the program that is set at the arrival would do, without sensors. */
    private Memory program(Case wrong) {
        ControlFaults set =
                ControlTroubles.of(wrong.faults().stream().map(ground::fault).toList());
        return set.equals(ControlFaults.NONE) ? planned : clockAlone(set);
    }

    private Memory clockAlone(ControlFaults set) {
        SetUp clock = SetUp.CLOCK_ALONE.withSchedule(ground.installed().schedule());
        Controller controller = Controller.of(ground.scenario(), clock);
        controller.faults(set);
        BitSet open = new BitSet();
        long from = exposure().from();
        long until = exposure().until();
        for (long tick = from; tick < until; tick++) {
            open.set((int) (tick - from), controller.decide(tick, Readings.NONE).openZone() >= 0);
        }
        return new Memory(controller.records().runs(), false, open, Map.of());
    }

    /** The days lived in a case; faults without a time begin at a tick. */
    private Memory memory(Case wrong, long onset) {
        return new DaysAgain(ground, exposure(), wrong, onset).live();
    }
}
