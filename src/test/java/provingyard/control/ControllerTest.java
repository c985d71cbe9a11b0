package provingyard.control;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static provingyard.control.Bench.DAILY;
import static provingyard.control.Bench.allowing;
import static provingyard.control.Bench.atFive;
import static provingyard.control.Bench.rain;
import static provingyard.control.Bench.run;
import static provingyard.control.Bench.scenario;
import static provingyard.control.Bench.schedule;
import static provingyard.control.Bench.soil;
import static provingyard.control.Bench.wind;
import static provingyard.control.Bench.window;
import static provingyard.control.Bench.with;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import provingyard.control.ControlEvent.Kind;
import provingyard.scenario.Plumbing.Normally;
import provingyard.scenario.Schedule;
import provingyard.scenario.SensorKind;
import provingyard.season.SeasonEvent;
import provingyard.setup.Interlock.Action;
import provingyard.setup.SetUp;

/** Each rule of the controller, on the bench. */
class ControllerTest {

    private static Bench bench(Schedule schedule) {
        return bench(schedule, SetUp.CLOCK_ALONE);
    }

    private static Bench bench(Schedule schedule, SetUp setUp) {
        return new Bench(scenario(schedule, null), setUp);
    }

    @Test
    void kindsOfEventAreNamedAsTheSeasons() {
        Set<String> season = new TreeSet<>();
        Arrays.stream(SeasonEvent.Kind.values()).forEach(k -> season.add(k.name()));
        for (Kind kind : Kind.values()) {
            assertTrue(season.contains(kind.name()), kind.name());
        }
    }

    // Schedule

    @Test
    void zonesRunInOrderOneAfterAnother() {
        Bench bench = bench(atFive(run("b", 10), run("a", 5))).until(0, 5, 0);
        assertEquals(-1, bench.last.openZone());
        bench.live(10);
        assertEquals("b", bench.last.openId());
        bench.live(5);
        assertEquals("a", bench.last.openId());
        bench.live(1);
        assertEquals(-1, bench.last.openZone());
        assertEquals(10, bench.ran("b"));
        assertEquals(5, bench.ran("a"));
        assertArrayEquals(new boolean[4], bench.last.open());
        assertEquals(0, bench.ran("c") + bench.ran("d"), "zones without a place in the schedule never run");
    }

    @Test
    void weekdaysAndIntervals() {
        Schedule daily = atFive(run("a", 10));
        Schedule twice = new Schedule(
                daily.zones(), List.of(DayOfWeek.TUESDAY, DayOfWeek.SATURDAY), 0, daily.starts(), 1, daily.allowed());
        assertEquals(20, bench(twice).until(7, 0, 0).ran("a"));
        Schedule everyThird = new Schedule(daily.zones(), List.of(), 3, daily.starts(), 1, daily.allowed());
        Bench bench = bench(everyThird).until(1, 0, 0);
        assertEquals(10, bench.ran("a"), "the first day");
        assertEquals(10, bench.until(3, 0, 0).ran("a"));
        assertEquals(20, bench.until(4, 0, 0).ran("a"));
        assertEquals(30, bench.until(9, 0, 0).ran("a"));
    }

    @Test
    void startTimesQueue() {
        Schedule two = schedule(List.of(LocalTime.of(5, 0), LocalTime.of(5, 10)), run("a", 20), run("b", 20));
        Bench bench = bench(two).until(1, 0, 0);
        assertEquals("abab", bench.order.toString().replace("-", ""));
        assertEquals(40, bench.ran("a"));
        assertEquals(40, bench.ran("b"));
    }

    @Test
    void theSeasonalPercentageCutsDownToWholeMinutes() {
        Schedule full = atFive(run("a", 18), run("b", 1));
        Schedule part = new Schedule(full.zones(), DAILY, 0, full.starts(), 0.8, full.allowed());
        Bench bench = bench(part).until(1, 0, 0);
        assertEquals(14, bench.ran("a"), "14.4 min");
        assertEquals(0, bench.ran("b"), "less than a minute");
    }

    @Test
    void partsOfZonesTakeTurnsAndSoak() {
        Bench bench = bench(atFive(run("a", 12, 4, 20), run("b", 8, 4, 10))).until(0, 6, 30);
        assertEquals(12, bench.ran("a"));
        assertEquals(8, bench.ran("b"));
        assertEquals("ab-b-a-a-", bench.order.toString());
        List<ControllerRecords.Run> runs = bench.controller.records().runs();
        long shut = -1;
        for (ControllerRecords.Run run : runs) {
            if (run.zone().equals("a")) {
                assertTrue(shut < 0 || run.start() - shut >= 20, "soak");
                assertEquals(4, run.end() - run.start());
                shut = run.end();
            }
        }
        assertEquals(ControllerRecords.End.DONE, runs.get(runs.size() - 1).why());
        assertEquals(ControllerRecords.End.SOAK, runs.get(0).why());
    }

    @Test
    void theOrdinancesWindowCutsRunsAndDropsStarts() {
        Schedule night = allowing(atFive(run("a", 40), run("b", 40)), List.of(), window(22, 6));
        Bench bench = bench(night).until(1, 0, 0);
        assertEquals(40, bench.ran("a"));
        assertEquals(20, bench.ran("b"), "cut at 06:00");
        assertEquals(ControlEvent.WINDOW, bench.first(Kind.RUN_SHUT).cause());
        assertEquals("b", bench.first(Kind.RUN_SHUT).subject());
        Schedule noon = allowing(schedule(List.of(LocalTime.NOON), run("a", 40)), List.of(), window(22, 6));
        Bench dropped = bench(noon).until(1, 0, 0);
        assertEquals(0, dropped.ran("a"));
        assertEquals(ControlEvent.WINDOW, dropped.first(Kind.START_SKIPPED).cause());
        Schedule days = allowing(atFive(run("a", 10)), List.of(DayOfWeek.WEDNESDAY));
        assertEquals(10, bench(days).until(7, 0, 0).ran("a"));
    }

    @Test
    void theOrdinanceIsTheSitesWhateverTheSetUpSays() {
        Schedule site = allowing(atFive(run("a", 10)), List.of(), window(22, 6));
        Schedule own = schedule(List.of(LocalTime.of(12, 0), LocalTime.of(23, 0)), run("b", 10));
        Bench bench = bench(site, SetUp.CLOCK_ALONE.withSchedule(own)).until(1, 0, 0);
        assertEquals(0, bench.ran("a"));
        assertEquals(10, bench.ran("b"), "23:00 only");
    }

    // Interlocks

    @Test
    void skipDropsStartsButLetsARunGoOn() {
        Bench bench = bench(atFive(run("a", 30)), with(rain(), Action.SKIP)).until(0, 5, 10);
        bench.trip("rain-1", true);
        bench.until(1, 0, 0);
        assertEquals(30, bench.ran("a"));
        bench.until(2, 0, 0);
        assertEquals(30, bench.ran("a"), "Tuesday is skipped");
        assertEquals("rain-1", bench.first(Kind.START_SKIPPED).cause());
        bench.trip("rain-1", false);
        assertEquals(60, bench.until(3, 0, 0).ran("a"));
        assertEquals(1, bench.count(Kind.SENSOR_TRIPPED));
        assertEquals(1, bench.count(Kind.SENSOR_REARMED));
    }

    @Test
    void aCutWireSkipsAsATripDoes() {
        Bench bench = bench(atFive(run("a", 30)), with(rain(), Action.SKIP));
        bench.set("rain-1", SensorKind.RAIN, 0, false, false, true);
        assertEquals(0, bench.until(1, 0, 0).ran("a"));
        assertEquals(1, bench.count(Kind.START_SKIPPED));
    }

    @Test
    void pauseKeepsTheRestForLater() {
        Bench bench = bench(atFive(run("a", 30), run("b", 10)), with(wind(), Action.PAUSE))
                .until(0, 5, 10);
        bench.trip("wind-1", true);
        bench.until(0, 6, 0);
        assertEquals(10, bench.ran("a"));
        assertEquals(0, bench.ran("b"));
        bench.trip("wind-1", false);
        bench.until(1, 0, 0);
        assertEquals(30, bench.ran("a"));
        assertEquals(10, bench.ran("b"));
        assertEquals(2, bench.count(Kind.RUN_PAUSED), "the one that ran and the one that waited");
        assertEquals(2, bench.count(Kind.RUN_RESUMED));
        assertEquals(0, bench.count(Kind.RUN_SHUT));
    }

    @Test
    void aPauseOfSomeZonesLetsTheOthersRun() {
        Bench bench = bench(atFive(run("a", 30), run("b", 10)), with(wind(), Action.PAUSE, "a"));
        bench.trip("wind-1", true);
        bench.until(0, 5, 11);
        assertEquals(10, bench.ran("b"));
        bench.trip("wind-1", false);
        assertEquals(30, bench.until(0, 7, 0).ran("a"));
    }

    @Test
    void aHeldRunDoesNotWaitForEver() {
        Bench bench = bench(atFive(run("a", 30)), with(wind(), Action.PAUSE));
        bench.trip("wind-1", true);
        bench.until(0, 18, 0);
        bench.trip("wind-1", false);
        assertEquals(0, bench.until(1, 0, 0).ran("a"), "12 h are over");
        assertEquals(ControlEvent.HELD, bench.first(Kind.RUN_SHUT).cause());
        Schedule often = schedule(List.of(LocalTime.of(5, 0), LocalTime.of(6, 0), LocalTime.of(7, 0)), run("a", 30));
        Bench piling = bench(often, with(wind(), Action.PAUSE));
        piling.trip("wind-1", true);
        piling.until(0, 8, 0);
        piling.trip("wind-1", false);
        assertEquals(30, piling.until(1, 0, 0).ran("a"), "one start, not three");
    }

    @Test
    void shutEndsTheRunAndDropsStarts() {
        Bench bench = bench(atFive(run("a", 30), run("b", 30)), with(rain(), Action.SHUT, "a"))
                .until(0, 5, 10);
        bench.trip("rain-1", true);
        bench.until(2, 0, 0);
        assertEquals(10, bench.ran("a"));
        assertEquals(60, bench.ran("b"));
        assertEquals("rain-1", bench.first(Kind.RUN_SHUT).cause());
        assertEquals(1, bench.count(Kind.START_SKIPPED));
        assertEquals(
                ControllerRecords.End.SENSOR,
                bench.controller.records().runs().get(0).why());
    }

    @Test
    void soilBlocksWhileWet() {
        Bench bench = bench(atFive(run("a", 10)), with(soil(), Action.BLOCK));
        bench.soilIs(false, false);
        bench.until(1, 0, 0);
        bench.soilIs(true, false);
        assertEquals(10, bench.until(2, 0, 0).ran("a"));
    }

    @Test
    void soilAllowsOnlyWhileDry() {
        Bench bench = bench(atFive(run("a", 10)), with(soil(), Action.ALLOW));
        bench.soilIs(false, false);
        assertEquals(0, bench.until(1, 0, 0).ran("a"));
        bench.soilIs(false, true);
        assertEquals(10, bench.until(2, 0, 0).ran("a"));
    }

    @Test
    void soilStartsItsZonesWhenDryAndWithinTheWindow() {
        Schedule night = allowing(atFive(run("a", 10), run("b", 10)), List.of(), window(22, 6));
        Bench bench = bench(night, with(soil(), Action.START, "a"));
        bench.soilIs(false, false);
        bench.until(0, 12, 0);
        assertEquals(0, bench.ran("a"), "its clock start is dropped");
        assertEquals(10, bench.ran("b"));
        bench.soilIs(false, true);
        bench.until(0, 22, 0);
        assertEquals(0, bench.ran("a"), "not by day");
        assertEquals(10, bench.until(1, 0, 0).ran("a"));
        assertEquals(10, bench.until(1, 21, 0).ran("a"), "once in 24 h");
        assertEquals(20, bench.until(2, 0, 0).ran("a"));
        bench.soilIs(true, false);
        assertEquals(20, bench.until(4, 0, 0).ran("a"));
    }

    @Test
    void aWetRainSensorHoldsBackWhatDrySoilWouldStart() {
        SetUp both = with(soil(), Action.START, "a")
                .with(rain())
                .with(with(rain(), Action.SKIP).interlocks().get(0));
        Bench bench = bench(atFive(run("a", 10)), both);
        bench.trip("rain-1", true);
        bench.soilIs(false, true);
        assertEquals(0, bench.until(0, 12, 0).ran("a"));
        bench.trip("rain-1", false);
        assertEquals(10, bench.until(0, 13, 0).ran("a"));
    }

    // Master valve, records, change

    @Test
    void theMasterValveOpensWithRunsOrRestsOpen() {
        Bench closed = new Bench(scenario(atFive(run("a", 10)), Normally.CLOSED), SetUp.CLOCK_ALONE).until(0, 5, 0);
        assertFalse(closed.last.masterOpen());
        assertTrue(closed.minute().masterOpen());
        closed.live(15);
        assertFalse(closed.last.masterOpen());
        Bench open = new Bench(scenario(atFive(run("a", 10)), Normally.OPEN), SetUp.CLOCK_ALONE).until(0, 5, 0);
        assertTrue(open.last.masterOpen());
        assertTrue(bench(atFive(run("a", 10))).minute().masterOpen(), "there is none");
    }

    @Test
    void recordsHoldRunsAndNights() {
        Bench bench = bench(atFive(run("a", 10), run("b", 5))).until(2, 13, 0);
        ControllerRecords records = bench.controller.records();
        assertEquals(6, records.runs().size());
        assertEquals(new LongPair(300, 310), LongPair.of(records.runs().get(0)));
        assertTrue(Double.isNaN(records.runs().get(0).meanFlow()), "no flow sensor");
        assertEquals(4, records.nights().size());
        assertEquals(Bench.MONDAY.minusDays(1), records.nights().get(0).evening());
        assertEquals(15, records.nights().get(0).minutes());
        assertEquals(15, records.nights().get(1).minutes());
        assertEquals(0, records.nights().get(3).minutes());
    }

    private record LongPair(long start, long end) {
        static LongPair of(ControllerRecords.Run run) {
            return new LongPair(run.start(), run.end());
        }
    }

    @Test
    void anotherScheduleEndsWhatRunsAndAnotherSettingDoesNot() {
        Bench bench = bench(atFive(run("a", 30)), with(rain(), Action.SKIP)).until(0, 5, 10);
        bench.controller = bench.controller.changed(with(rain(), Action.SHUT));
        bench.until(0, 5, 20);
        assertEquals("a", bench.last.openId());
        SetUp other = with(rain(), Action.SHUT).withSchedule(atFive(run("b", 10)));
        bench.controller = bench.controller.changed(other);
        bench.live(1);
        assertEquals(-1, bench.last.openZone());
        assertEquals(ControlEvent.SET_UP, bench.first(Kind.RUN_SHUT).cause());
        assertEquals(10, bench.until(2, 0, 0).ran("b"));
        assertEquals(20, bench.ran("a"));
    }
}
