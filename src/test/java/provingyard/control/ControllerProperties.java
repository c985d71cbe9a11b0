package provingyard.control;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.DayOfWeek;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import provingyard.numeric.RandomStreams;
import provingyard.scenario.Plumbing.Normally;
import provingyard.scenario.Scenario;
import provingyard.scenario.Schedule;
import provingyard.scenario.SensorKind;
import provingyard.sensor.Readings;
import provingyard.sensor.Readings.Reading;
import provingyard.setup.FlowWatch;
import provingyard.setup.Interlock;
import provingyard.setup.SetUp;

/** What holds for any schedule, any set-up and any readings. */
class ControllerProperties {

    private static final int DAYS = 4;
    private static final int LENGTH = DAYS * 1440;

    /** A drawn case: its schedule, its set-up, and readings that depend on the tick alone. */
    private record Case(long seed, Schedule schedule, Scenario scenario, SetUp setUp) {

        static Case of(long seed, boolean soilStarts, boolean earlyOnly) {
            Random random = new Random(seed);
            Schedule schedule = draw(random, earlyOnly);
            Normally master = random.nextInt(3) == 0 ? null : Normally.values()[random.nextInt(2)];
            SetUp setUp = SetUp.CLOCK_ALONE
                    .with(Bench.rain())
                    .with(Bench.wind())
                    .with(Bench.soil())
                    .with(Bench.flow(1))
                    .with(lock(random, "rain-1", 4))
                    .with(lock(random, "wind-1", 4))
                    .with(lock(random, "soil-1", soilStarts ? 7 : 6))
                    .with(Bench.watch(1.1, action(random), action(random)));
            return new Case(seed, schedule, Bench.scenario(schedule, master), setUp);
        }

        private static FlowWatch.Action action(Random random) {
            return FlowWatch.Action.values()[random.nextInt(3)];
        }

        private static Interlock lock(Random random, String id, int actions) {
            List<String> zones = random.nextBoolean() ? List.of() : List.of("a", "c");
            return new Interlock(id, Interlock.Action.values()[random.nextInt(actions)], zones);
        }

        private static Schedule draw(Random random, boolean earlyOnly) {
            List<Schedule.ZoneRun> runs = new ArrayList<>();
            for (String zone : Bench.ZONES.subList(0, 1 + random.nextInt(4))) {
                runs.add(Bench.run(
                        zone, 1 + random.nextInt(earlyOnly ? 30 : 90), random.nextInt(12), random.nextInt(30)));
            }
            TreeSet<LocalTime> starts = new TreeSet<>();
            for (int i = 0; i <= random.nextInt(3); i++) {
                starts.add(LocalTime.of(random.nextInt(earlyOnly ? 5 : 24), random.nextInt(60)));
            }
            List<DayOfWeek> days = random.nextBoolean() ? List.of() : List.of(DayOfWeek.MONDAY, DayOfWeek.WEDNESDAY);
            List<Schedule.Window> windows = new ArrayList<>();
            for (int i = 0; i < random.nextInt(3); i++) {
                windows.add(Bench.window(random.nextInt(24), random.nextInt(24)));
            }
            boolean weekly = random.nextBoolean();
            return new Schedule(
                    runs,
                    weekly ? Bench.DAILY : List.of(),
                    weekly ? 0 : 1 + random.nextInt(2),
                    List.copyOf(starts),
                    0.5 + random.nextDouble(),
                    new Schedule.Allowed(days, windows));
        }

        Readings at(long tick) {
            double flow = 1e-3 * (1 + 0.3 * uniform("flow", tick / 37));
            boolean leaks = uniform("leak", tick / 60) > 0.7;
            boolean wet = uniform("soil", tick / 400) > 0.5;
            return new Readings(List.of(
                    new Reading("rain-1", SensorKind.RAIN, 0, uniform("rain", tick / 300) > 0.7, false, false, 0),
                    new Reading("wind-1", SensorKind.WIND, 0, uniform("wind", tick / 45) > 0.6, false, false, 0),
                    new Reading("soil-1", SensorKind.SOIL, 0.2, wet, !wet, uniform("wire", tick / 500) > 0.9, 0),
                    new Reading("flow-1", SensorKind.FLOW, leaks ? flow : 0, false, false, false, 0)));
        }

        private double uniform(String name, long n) {
            return RandomStreams.uniform(new RandomStreams(seed).key(name), n);
        }

        Commands decide(Controller controller, long tick) {
            return controller.decide(tick, at(tick));
        }
    }

    private static LocalDateTime clock(long tick) {
        return Bench.MONDAY.atStartOfDay().plusMinutes(tick);
    }

    private static int opened(Commands commands) {
        int count = 0;
        for (boolean open : commands.open()) {
            count += open ? 1 : 0;
        }
        return count;
    }

    /** Said again in other words: minutes of the day in whose windows the time lies. */
    private static boolean allowed(Schedule.Allowed allowed, LocalDateTime clock) {
        boolean day = allowed.days().isEmpty() || allowed.days().contains(clock.getDayOfWeek());
        boolean time = allowed.windows().isEmpty();
        for (Schedule.Window w : allowed.windows()) {
            int length = Math.floorMod(w.to().toSecondOfDay() - w.from().toSecondOfDay(), 86_400);
            int into =
                    Math.floorMod(clock.toLocalTime().toSecondOfDay() - w.from().toSecondOfDay(), 86_400);
            time |= length == 0 || into < length;
        }
        return day && time;
    }

    private static boolean starts(Schedule schedule, LocalDateTime clock) {
        long day = clock.toLocalDate().toEpochDay() - Bench.MONDAY.toEpochDay();
        return schedule.starts().contains(clock.toLocalTime())
                && (schedule.every() > 0
                        ? day % schedule.every() == 0
                        : schedule.days().contains(clock.getDayOfWeek()));
    }

    @Property(tries = 150)
    void neverTwoZonesNeverOutsideTheWindowsNeverMoreThanProgrammed(@ForAll @LongRange(min = 0) long seed) {
        Case drawn = Case.of(seed, true, false);
        Controller controller = Controller.of(drawn.scenario(), drawn.setUp());
        double[] ran = new double[4];
        int starts = 0;
        for (long t = 0; t < LENGTH; t++) {
            starts += starts(drawn.schedule(), clock(t)) ? 1 : 0;
            Commands commands = drawn.decide(controller, t);
            assertTrue(opened(commands) <= 1);
            if (commands.openZone() >= 0) {
                assertTrue(allowed(drawn.schedule().allowed(), clock(t)), "open at " + clock(t));
                assertTrue(!controller.lockedOut(commands.openZone()) && !controller.masterShut());
                assertTrue(commands.masterOpen());
                ran[commands.openZone()]++;
            }
            long soilStarts = t / 1440 + 1;
            for (Schedule.ZoneRun run : drawn.schedule().zones()) {
                double programmed = run.runs() / 60 * drawn.schedule().seasonal();
                int zone = controller.zones().indexOf(run.zone());
                assertTrue(ran[zone] <= (starts + soilStarts) * programmed + 1e-9, "zone " + zone);
            }
        }
    }

    @Property(tries = 150)
    void noDayHasMoreThanItsStartsAskFor(@ForAll @LongRange(min = 0) long seed) {
        Case drawn = Case.of(seed, false, true);
        Controller controller = Controller.of(drawn.scenario(), drawn.setUp());
        for (int day = 0; day < DAYS; day++) {
            int starts = 0;
            double ran = 0;
            for (int m = 0; m < 1440; m++) {
                long t = day * 1440L + m;
                starts += starts(drawn.schedule(), clock(t)) ? 1 : 0;
                ran += opened(drawn.decide(controller, t));
            }
            double programmed = drawn.schedule().zones().stream()
                    .mapToDouble(r -> r.runs() / 60 * drawn.schedule().seasonal())
                    .sum();
            assertTrue(ran <= starts * programmed + 1e-9, ran + " min on day " + day);
        }
    }

    @Test
    void theDrawnCasesAreWorthDrawing() {
        Map<ControlEvent.Kind, Integer> casesWith = new TreeMap<>();
        for (long seed = 0; seed < 60; seed++) {
            Case drawn = Case.of(seed, true, false);
            Controller controller = Controller.of(drawn.scenario(), drawn.setUp());
            Set<ControlEvent.Kind> seen = new TreeSet<>();
            for (long t = 0; t < LENGTH; t++) {
                drawn.decide(controller, t).events().forEach(e -> seen.add(e.kind()));
            }
            seen.forEach(k -> casesWith.merge(k, 1, Integer::sum));
        }
        for (ControlEvent.Kind kind : ControlEvent.Kind.values()) {
            boolean possible = kind != ControlEvent.Kind.FLOW_LOW;
            assertTrue(!possible || casesWith.getOrDefault(kind, 0) >= 5, () -> kind + " in " + casesWith);
        }
    }

    @Property(tries = 80)
    void theSameAgainAndACopyContinuesAsTheOriginal(
            @ForAll @LongRange(min = 0) long seed, @ForAll @IntRange(max = LENGTH - 1) int at) {
        Case drawn = Case.of(seed, true, false);
        Controller first = Controller.of(drawn.scenario(), drawn.setUp());
        Controller second = Controller.of(drawn.scenario(), drawn.setUp());
        Controller copy = null;
        for (long t = 0; t < LENGTH; t++) {
            if (t == at) {
                copy = first.copy();
            }
            Commands commands = drawn.decide(first, t);
            assertEquals(commands, drawn.decide(second, t));
            if (copy != null) {
                assertEquals(commands, drawn.decide(copy, t));
            }
        }
        assertEquals(first.records(), second.records());
        assertEquals(first.records(), copy.records());
    }

    @Property(tries = 60)
    void recordedRunsDoNotOverlapAndAddUp(@ForAll @LongRange(min = 0) long seed) {
        Case drawn = Case.of(seed, true, false);
        Controller controller = Controller.of(drawn.scenario(), drawn.setUp());
        long open = 0;
        for (long t = 0; t < LENGTH; t++) {
            open += opened(drawn.decide(controller, t));
        }
        long recorded = 0;
        long before = -1;
        for (ControllerRecords.Run run : controller.records().runs()) {
            assertTrue(run.start() >= before && run.end() > run.start());
            before = run.end();
            recorded += run.end() - run.start();
        }
        assertTrue(open - recorded >= 0 && open - recorded <= 90 * 2, "all but what is open at the end");
        long byNight = controller.records().nights().stream()
                .mapToLong(ControllerRecords.Night::minutes)
                .sum();
        assertTrue(open - byNight >= 0 && open - byNight <= 1, "the last minute is noted in the next");
    }
}
