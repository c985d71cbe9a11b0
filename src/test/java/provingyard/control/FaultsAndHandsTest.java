package provingyard.control;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static provingyard.control.Bench.GPM;
import static provingyard.control.Bench.allowing;
import static provingyard.control.Bench.atFive;
import static provingyard.control.Bench.flow;
import static provingyard.control.Bench.rain;
import static provingyard.control.Bench.run;
import static provingyard.control.Bench.scenario;
import static provingyard.control.Bench.schedule;
import static provingyard.control.Bench.watch;
import static provingyard.control.Bench.window;
import static provingyard.control.Bench.with;

import java.time.LocalTime;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import provingyard.control.ControlEvent.Kind;
import provingyard.scenario.Plumbing.Normally;
import provingyard.scenario.Schedule;
import provingyard.setup.FlowWatch.Action;
import provingyard.setup.FlowWatch.Expected;
import provingyard.setup.Interlock;
import provingyard.setup.SetUp;

/** A wrong program, and zones run by hand, on the bench. */
@Tag("unit")
class FaultsAndHandsTest {

    private static Bench bench(Schedule schedule) {
        return new Bench(scenario(schedule, Normally.CLOSED), SetUp.CLOCK_ALONE);
    }

    private static ControlFaults extra(int... minutes) {
        return new ControlFaults(1, Arrays.stream(minutes).boxed().toList());
    }

    @Test
    void aSecondStartRunsAllAgain() {
        Bench bench = bench(atFive(run("a", 10), run("b", 5)));
        bench.controller.faults(extra(180));
        bench.until(0, 8, 0);
        assertEquals(10, bench.ran("a"));
        bench.minute();
        assertEquals("a", bench.last.openId());
        bench.until(1, 0, 0);
        assertEquals(20, bench.ran("a"));
        assertEquals(10, bench.ran("b"));
        bench.controller.faults(ControlFaults.NONE);
        bench.until(2, 0, 0);
        assertEquals(30, bench.ran("a"), "mended");
    }

    @Test
    void aSecondStartPastMidnightFallsOnTheMorningAndTheOrdinanceStillHolds() {
        Bench late = bench(schedule(List.of(LocalTime.of(22, 0)), run("a", 10)));
        late.controller.faults(extra(180));
        late.until(0, 1, 5);
        assertEquals("a", late.last.openId());
        late.until(1, 0, 0);
        assertEquals(20, late.ran("a"));
        Bench shut = bench(allowing(atFive(run("a", 10)), Bench.DAILY, window(4, 7)));
        shut.controller.faults(extra(180));
        shut.until(1, 0, 0);
        assertEquals(10, shut.ran("a"));
        assertEquals(ControlEvent.WINDOW, shut.first(Kind.START_SKIPPED).cause());
    }

    @Test
    void aWrongSeasonalPercentageScalesEachRun() {
        Bench bench = bench(atFive(run("a", 10), run("b", 5)));
        bench.controller.faults(new ControlFaults(1.8, List.of()));
        bench.until(1, 0, 0);
        assertEquals(18, bench.ran("a"));
        assertEquals(9, bench.ran("b"));
        bench.controller.faults(new ControlFaults(0.1, List.of()));
        bench.until(2, 0, 0);
        assertEquals(19, bench.ran("a"));
        assertEquals(9, bench.ran("b"), "less than a minute does not run");
    }

    @Test
    void faultsOfTheProgramOutliveAChangeOfTheSetUpAndACopy() {
        Bench bench = bench(atFive(run("a", 10)));
        bench.controller.faults(extra(180));
        bench.controller =
                bench.controller.changed(SetUp.CLOCK_ALONE.with(rain())).copy();
        bench.until(1, 0, 0);
        assertEquals(20, bench.ran("a"));
    }

    @Test
    void aZoneRunByHandOpensItAndTheMasterValveAtAnyTime() {
        Bench bench = new Bench(
                scenario(allowing(atFive(run("a", 10)), Bench.DAILY, window(4, 7)), Normally.CLOSED),
                with(rain(), Interlock.Action.SHUT, "a", "b", "c", "d"));
        bench.trip("rain-1", true);
        bench.until(0, 12, 0);
        bench.controller.runByHand("c");
        bench.live(3);
        assertEquals("c", bench.last.openId());
        assertTrue(bench.last.masterOpen());
        bench.controller.runByHand(null);
        bench.minute();
        assertEquals(-1, bench.last.openZone());
        assertEquals(3, bench.ran("c"));
        assertEquals(ControlEvent.BY_HAND, bench.first(Kind.ZONE_ON).cause());
        assertEquals(3, bench.first(Kind.ZONE_OFF).values().get("minutes"));
        assertEquals(List.of(), bench.controller.records().runs(), "no run of the program");
    }

    @Test
    void whatTheProgramRunsWaitsAndGoesOnAfterwards() {
        Bench bench = bench(atFive(run("a", 10), run("b", 5))).until(0, 5, 4);
        bench.controller.runByHand("d");
        bench.live(20);
        assertEquals("d", bench.last.openId());
        bench.controller.runByHand("c");
        bench.live(2);
        bench.controller.runByHand(null);
        bench.until(1, 0, 0);
        assertEquals("adcab-", bench.order.toString());
        assertEquals(10, bench.ran("a"));
        assertEquals(5, bench.ran("b"));
        assertEquals(20, bench.ran("d"));
        assertEquals(ControlEvent.BY_HAND, bench.first(Kind.RUN_PAUSED).cause());
    }

    @Test
    void theFlowWatchDoesNotJudgeARunByHand() {
        SetUp setUp = SetUp.CLOCK_ALONE
                .with(flow(1))
                .with(watch(1.05, Action.SHUT_ZONE, Action.SHUT_MASTER, new Expected("a", 18 * GPM)));
        Bench bench = new Bench(scenario(atFive(run("a", 30)), Normally.CLOSED), setUp);
        bench.until(0, 12, 0);
        bench.events.clear();
        for (int i = 0; i < 60; i++) {
            bench.controller.runByHand(i < 40 ? "a" : null);
            bench.minute();
            bench.flowIs(bench.last.openZone() >= 0 ? 40 * GPM : 0);
        }
        assertEquals(0, bench.count(Kind.FLOW_HIGH) + bench.count(Kind.FLOW_UNSCHEDULED));
        for (int i = 0; i < 30; i++) {
            bench.flowIs(40 * GPM);
            bench.minute();
        }
        assertEquals(1, bench.count(Kind.FLOW_UNSCHEDULED), "it is awake again");
    }

    @Test
    void aCopyRunsOnByHandAndAnUnknownZoneIsRefused() {
        Bench bench = bench(atFive(run("a", 10)));
        bench.controller.runByHand("b");
        bench.minute();
        bench.controller = bench.controller.copy();
        bench.minute();
        assertEquals("b", bench.last.openId());
        assertThrows(IllegalArgumentException.class, () -> bench.controller.runByHand("x"));
    }
}
