package provingyard.control;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static provingyard.control.Bench.GPM;
import static provingyard.control.Bench.atFive;
import static provingyard.control.Bench.flow;
import static provingyard.control.Bench.run;
import static provingyard.control.Bench.scenario;
import static provingyard.control.Bench.watch;

import java.util.List;
import org.junit.jupiter.api.Test;
import provingyard.control.ControlEvent.Kind;
import provingyard.scenario.Plumbing.Normally;
import provingyard.setup.FlowWatch;
import provingyard.setup.FlowWatch.Action;
import provingyard.setup.FlowWatch.Expected;
import provingyard.setup.SetUp;

/** The flow watch, on the bench: zone a runs 30 minutes and zone b 10, from 05:00. */
class FlowWatchTest {

    private static final Expected EIGHTEEN = new Expected("a", 18.3 * GPM);

    private static Bench bench(FlowWatch watch, Normally master) {
        SetUp setUp = SetUp.CLOCK_ALONE.with(flow(1)).with(watch);
        return new Bench(scenario(atFive(run("a", 30), run("b", 10)), master), setUp);
    }

    private static Bench bench(FlowWatch watch) {
        return bench(watch, null);
    }

    /** Lives a day in which open zones pass a flow, and shut ones none. */
    private static void day(Bench bench, double flow) {
        for (int i = 0; i < 1440; i++) {
            bench.minute();
            bench.flowIs(bench.last.openZone() >= 0 ? flow : 0);
        }
    }

    @Test
    void aTightLimitFindsWhatAWideOneMisses() {
        Bench tight = bench(watch(1.05, Action.ALARM, Action.ALARM, EIGHTEEN));
        day(tight, 20 * GPM);
        assertEquals(1, tight.count(Kind.FLOW_HIGH));
        assertEquals("a", tight.first(Kind.FLOW_HIGH).subject());
        assertEquals(20 * GPM, tight.first(Kind.FLOW_HIGH).values().get("flow"), 1e-12);
        assertEquals(30, tight.ran("a"), "an alarm alone lets it run");
        Bench wide = bench(watch(1.3, Action.ALARM, Action.ALARM, EIGHTEEN));
        day(wide, 20 * GPM);
        assertEquals(0, wide.count(Kind.FLOW_HIGH));
    }

    @Test
    void settlingAndAveragingDelayTheJudgement() {
        Bench bench = bench(watch(1.05, Action.ALARM, Action.ALARM, EIGHTEEN));
        day(bench, 20 * GPM);
        assertEquals(303, bench.first(Kind.FLOW_HIGH).tick(), "1 min settling and 2 min averaging after 05:00");
        FlowWatch slow =
                new FlowWatch("flow-1", List.of(EIGHTEEN), true, 1.05, 0, 180, 300, Action.ALARM, 0, 600, Action.ALARM);
        Bench later = bench(slow);
        day(later, 20 * GPM);
        assertEquals(308, later.first(Kind.FLOW_HIGH).tick());
    }

    @Test
    void aZoneThatIsShutStaysOutUntilItIsRearmed() {
        Bench bench = bench(watch(1.05, Action.SHUT_ZONE, Action.ALARM, EIGHTEEN));
        day(bench, 20 * GPM);
        assertEquals(3, bench.ran("a"));
        assertEquals(10, bench.ran("b"), "goes on with the next");
        assertTrue(bench.controller.lockedOut(0));
        assertEquals(1, bench.count(Kind.ZONE_LOCKED_OUT));
        day(bench, 18 * GPM);
        assertEquals(3, bench.ran("a"));
        assertEquals(ControlEvent.LOCK_OUT, bench.first(Kind.START_SKIPPED).cause());
        bench.controller.rearm("a");
        day(bench, 18 * GPM);
        assertEquals(33, bench.ran("a"));
        assertEquals(
                ControllerRecords.End.FLOW,
                bench.controller.records().runs().get(0).why());
    }

    @Test
    void anotherFlowWatchRearms() {
        FlowWatch tight = watch(1.05, Action.SHUT_ZONE, Action.ALARM, EIGHTEEN);
        Bench bench = bench(tight);
        day(bench, 20 * GPM);
        SetUp same = SetUp.CLOCK_ALONE.with(flow(1)).with(tight);
        assertTrue(bench.controller.changed(same).lockedOut(0));
        FlowWatch wider = watch(1.3, Action.SHUT_ZONE, Action.ALARM, EIGHTEEN);
        assertFalse(bench.controller.changed(same.with(wider)).lockedOut(0));
    }

    @Test
    void lowFlowIsFoundWhenItIsAskedFor() {
        FlowWatch low =
                new FlowWatch("flow-1", List.of(EIGHTEEN), true, 1.3, 0.7, 60, 120, Action.ALARM, 0, 600, Action.ALARM);
        Bench bench = bench(low);
        day(bench, 12 * GPM);
        assertEquals(1, bench.count(Kind.FLOW_LOW));
        Bench off = bench(watch(1.3, Action.ALARM, Action.ALARM, EIGHTEEN));
        day(off, 12 * GPM);
        assertEquals(0, off.count(Kind.FLOW_LOW));
    }

    @Test
    void anExpectedFlowIsRecordedOnTheFirstProvenRunAndThenHolds() {
        Bench bench = bench(watch(1.05, Action.ALARM, Action.ALARM));
        assertTrue(Double.isNaN(bench.controller.expected(0)));
        day(bench, 18.3 * GPM);
        assertEquals(2, bench.count(Kind.EXPECTED_RECORDED));
        assertEquals(18.3 * GPM, bench.controller.expected(0), 1e-9);
        day(bench, 20 * GPM);
        assertEquals(2, bench.count(Kind.FLOW_HIGH));
        assertEquals(2, bench.count(Kind.EXPECTED_RECORDED), "once");
        SetUp wider = SetUp.CLOCK_ALONE.with(flow(1)).with(watch(1.3, Action.ALARM, Action.ALARM));
        assertEquals(18.3 * GPM, bench.controller.changed(wider).expected(0), 1e-9, "kept with the same sensor");
        SetUp bigger = SetUp.CLOCK_ALONE.with(flow(2)).with(watch(1.3, Action.ALARM, Action.ALARM));
        assertTrue(Double.isNaN(bench.controller.changed(bigger).expected(0)), "another sensor reads anew");
    }

    @Test
    void anUnseenFlowIsNotRecorded() {
        Bench bench = bench(watch(1.05, Action.ALARM, Action.ALARM));
        day(bench, 0);
        assertEquals(0, bench.count(Kind.EXPECTED_RECORDED));
    }

    @Test
    void unscheduledFlowMustLastAndCanShutTheMaster() {
        Bench bench = bench(watch(1.3, Action.ALARM, Action.SHUT_MASTER), Normally.OPEN)
                .live(60);
        bench.flowIs(6 * GPM);
        bench.live(9);
        assertEquals(0, bench.count(Kind.FLOW_UNSCHEDULED));
        bench.flowIs(0);
        bench.live(1);
        bench.flowIs(6 * GPM);
        bench.live(10);
        assertEquals(1, bench.count(Kind.FLOW_UNSCHEDULED));
        assertEquals("flow-1", bench.first(Kind.FLOW_UNSCHEDULED).subject());
        assertFalse(bench.last.masterOpen());
        assertEquals(1, bench.count(Kind.MASTER_SHUT));
        bench.flowIs(0);
        bench.until(1, 0, 0);
        assertEquals(0, bench.ran("a"), "nothing runs until it is re-armed");
        assertEquals(ControlEvent.MASTER, bench.first(Kind.START_SKIPPED).cause());
        bench.controller.rearm();
        assertTrue(bench.minute().masterOpen());
        assertEquals(30, bench.until(2, 0, 0).ran("a"));
    }

    @Test
    void unscheduledFlowBelowWhatTheSensorSeesIsNoAlarm() {
        Bench bench = bench(watch(1.3, Action.ALARM, Action.ALARM));
        double sees = Controller.cannotSeeBelow(flow(1));
        assertEquals(sees, bench.controller.unscheduledLimit(), 1e-12, "2 L/min were asked for");
        assertTrue(sees > 4e-3 / 60);
        bench.flowIs(sees * 0.9);
        bench.live(120);
        assertEquals(0, bench.count(Kind.FLOW_UNSCHEDULED));
        bench.flowIs(sees * 1.1);
        bench.live(120);
        assertEquals(1, bench.count(Kind.FLOW_UNSCHEDULED), "once while it lasts");
    }

    @Test
    void aHighZoneCanShutTheMaster() {
        Bench bench = bench(watch(1.05, Action.SHUT_MASTER, Action.ALARM, EIGHTEEN), Normally.CLOSED);
        day(bench, 20 * GPM);
        assertEquals(3, bench.ran("a"));
        assertEquals(0, bench.ran("b"));
        assertTrue(bench.controller.masterShut());
        Bench none = bench(watch(1.05, Action.SHUT_MASTER, Action.ALARM, EIGHTEEN));
        day(none, 20 * GPM);
        assertEquals(0, none.count(Kind.MASTER_SHUT), "there is no master valve");
        assertEquals(4, none.count(Kind.ZONE_LOCKED_OUT));
        assertTrue(none.last.masterOpen());
    }

    @Test
    void recordsHoldWhatTheSensorShowed() {
        Bench bench = bench(watch(1.3, Action.ALARM, Action.ALARM));
        day(bench, 18 * GPM);
        ControllerRecords.Run run = bench.controller.records().runs().get(0);
        assertEquals(18 * GPM, run.meanFlow(), 1e-9);
        assertEquals(18 * GPM * 1800, run.volume(), 1e-9);
        ControllerRecords.Night night = bench.controller.records().nights().get(0);
        assertEquals(18 * GPM * 2400, night.volume(), 1e-9);
        assertEquals(0, night.idleVolume());
        bench.flowIs(1 * GPM);
        bench.live(240);
        assertTrue(bench.controller.records().nights().get(1).idleVolume() > 0.8);
    }
}
