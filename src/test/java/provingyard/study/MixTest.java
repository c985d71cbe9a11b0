package provingyard.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import provingyard.scenario.Point;
import provingyard.scenario.SensorKind;
import provingyard.season.Season;
import provingyard.setup.FlowWatch;
import provingyard.setup.Interlock;
import provingyard.setup.Mount;
import provingyard.setup.Placement;
import provingyard.setup.SetUp;

class MixTest {

    private static final Set<Choice> NOTHING = EnumSet.noneOf(Choice.class);

    private static Placement rain(String id, double x) {
        return new Placement.Rain(id, new Point(x, 2), Mount.POST, 2.1, 0.006, 0.5);
    }

    private static Placement wind(String id, double trip) {
        return new Placement.Wind(id, new Point(3, 2), Mount.POST, 3, trip, 3, 300, 600);
    }

    private static Placement flow(String id) {
        return new Placement.Flow(id, "main-1", 1, 0.025, 10, 0);
    }

    private static Interlock link(String id, Interlock.Action action) {
        return new Interlock(id, action, List.of("zone-1"));
    }

    private static SetUp own() {
        return SetUp.CLOCK_ALONE
                .with(wind("wind-1", 4))
                .with(rain("rain-1", 1))
                .with(link("rain-1", Interlock.Action.SKIP))
                .with(link("wind-1", Interlock.Action.PAUSE));
    }

    private static SetUp mark() {
        return SetUp.CLOCK_ALONE
                .with(rain("rain-7", 9))
                .with(flow("flow-1"))
                .with(wind("wind-1", 5))
                .with(link("rain-7", Interlock.Action.SHUT))
                .with(FlowWatch.OFF.watching("flow-1"));
    }

    @Test
    void eachKindComesWithItsInterlocksAndFlowWithItsWatch() {
        SetUp mixed = Mix.of(own(), EnumSet.of(Choice.WIND), mark());
        assertEquals(Set.of(rain("rain-7", 9), wind("wind-1", 4), flow("flow-1")), Set.copyOf(mixed.sensors()));
        assertEquals(
                Set.of(link("rain-7", Interlock.Action.SHUT), link("wind-1", Interlock.Action.PAUSE)),
                Set.copyOf(mixed.interlocks()));
        assertEquals("flow-1", mixed.flowWatch().sensor());
        SetUp other = Mix.of(own(), EnumSet.of(Choice.RAIN, Choice.FLOW), mark());
        assertEquals(Set.of(rain("rain-1", 1), wind("wind-1", 5)), Set.copyOf(other.sensors()));
        assertEquals(List.of(link("rain-1", Interlock.Action.SKIP)), other.interlocks());
        assertEquals(FlowWatch.OFF, other.flowWatch());
    }

    @Test
    void whereTwoKindsHaveOneNameTheOtherSetUpsOneIsRenamedInAllThatNamesIt() {
        SetUp named = SetUp.CLOCK_ALONE
                .with(flow("rain-1"))
                .with(rain("rain-1-2", 5))
                .with(link("rain-1-2", Interlock.Action.SHUT))
                .with(FlowWatch.OFF.watching("rain-1"));
        Decisions mixed =
                new Decisions(List.of(new Season.Change(0, own())), List.of()).keeping(EnumSet.of(Choice.RAIN), named);
        SetUp found = mixed.changes().get(0).setUp();
        assertEquals(List.of(rain("rain-1", 1)), found.of(SensorKind.RAIN));
        assertEquals(List.of(flow("rain-1-3")), found.of(SensorKind.FLOW));
        assertEquals("rain-1-3", found.flowWatch().sensor());
        assertEquals(List.of(link("rain-1", Interlock.Action.SKIP)), found.interlocks());
        SetUp alone = new Decisions(List.of(new Season.Change(0, own())), List.of())
                .keeping(NOTHING, named)
                .changes()
                .get(0)
                .setUp();
        assertEquals(named.of(SensorKind.FLOW), alone.of(SensorKind.FLOW), "nobody else has the name");
    }

    @Test
    void aNameIsTheSameOverTheWholeHistory() {
        SetUp named = SetUp.CLOCK_ALONE.with(flow("rain-1"));
        Decisions history = new Decisions(
                List.of(new Season.Change(0, SetUp.CLOCK_ALONE), new Season.Change(900, own())), List.of(950L));
        Decisions mixed = history.keeping(EnumSet.of(Choice.RAIN), named);
        assertEquals(
                List.of(List.of(flow("rain-1-2")), List.of(flow("rain-1-2"))),
                mixed.changes().stream().map(c -> c.setUp().of(SensorKind.FLOW)).toList());
        assertEquals(List.of(), mixed.rearms(), "re-arming goes with the flow watch");
        assertEquals(
                List.of(950L), history.keeping(EnumSet.of(Choice.FLOW), named).rearms());
    }

    @Test
    void aKindIsTakenAwayOrAddedAndAllElseStays() {
        SetUp less = Mix.without(own(), SensorKind.RAIN);
        assertEquals(List.of(wind("wind-1", 4)), less.sensors());
        assertEquals(List.of(link("wind-1", Interlock.Action.PAUSE)), less.interlocks());
        SetUp watched = Mix.with(less, SensorKind.FLOW, mark());
        assertEquals(Set.of(wind("wind-1", 4), flow("flow-1")), Set.copyOf(watched.sensors()));
        assertEquals("flow-1", watched.flowWatch().sensor());
        assertEquals(less, Mix.without(watched, SensorKind.FLOW));
        SetUp twice = SetUp.CLOCK_ALONE.with(rain("wind-1", 4)).with(link("wind-1", Interlock.Action.SKIP));
        SetUp both = Mix.with(less, SensorKind.RAIN, twice);
        assertEquals(Optional.of(rain("wind-1-2", 4)), both.sensor("wind-1-2"));
        assertTrue(both.interlocks().contains(link("wind-1-2", Interlock.Action.SKIP)), both.toString());
        assertTrue(both.interlocks().contains(link("wind-1", Interlock.Action.PAUSE)), both.toString());
    }
}
