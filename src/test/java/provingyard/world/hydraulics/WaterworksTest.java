package provingyard.world.hydraulics;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import provingyard.TestYards;
import provingyard.scenario.Catalogue;
import provingyard.scenario.FaultPlan;
import provingyard.scenario.FaultPlan.Kind;
import provingyard.scenario.Plumbing;
import provingyard.scenario.Plumbing.Fitting;
import provingyard.scenario.Plumbing.FittingKind;
import provingyard.scenario.Plumbing.FlowingPoint;
import provingyard.scenario.Plumbing.Friction;
import provingyard.scenario.Plumbing.Normally;
import provingyard.scenario.Plumbing.Pipe;
import provingyard.scenario.Plumbing.Supply;
import provingyard.scenario.Plumbing.SupplyKind;
import provingyard.scenario.Point;
import provingyard.scenario.Scenario;
import provingyard.scenario.Text;

/** A small plumbing of two zones, each flow and pressure against the laws of its parts worked by hand. */
@Tag("unit")
class WaterworksTest {

    private static final double WEIGHT = 9806.65;
    private static final double GRAVITY = 9.80665;
    private static final double INNER = 0.0266;
    private static final double SIZE = 0.025;
    private static final double C = 150;
    private static final Text NAME = new Text("n", "n");
    private static final Supply MAINS = new Supply(SupplyKind.FIXED, "poc", 400e3, List.of());

    private static Catalogue catalogue() {
        Catalogue plain = TestYards.catalogue();
        return new Catalogue(
                plain.soils(),
                plain.plants(),
                plain.pavings(),
                List.of(
                        nozzle("full", 1e-4, false),
                        nozzle("arc", 1e-4, true),
                        new Catalogue.Nozzle(
                                "drip",
                                NAME,
                                Catalogue.Throw.DRIP,
                                1e-6,
                                false,
                                100e3,
                                0.1,
                                0.1,
                                50e3,
                                400e3,
                                Catalogue.Profile.UNIFORM,
                                null,
                                1e-3)),
                List.of(new Catalogue.PipeMake(
                        "pvc",
                        NAME,
                        C,
                        1.5e-6,
                        2.8e9,
                        List.of(
                                new Catalogue.PipeSize(0.020, 0.0209, 0.0028),
                                new Catalogue.PipeSize(SIZE, INNER, 0.0034),
                                new Catalogue.PipeSize(0.050, 0.0525, 0.0039)))));
    }

    private static Catalogue.Nozzle nozzle(String id, double flow, boolean scales) {
        return new Catalogue.Nozzle(
                id,
                NAME,
                Catalogue.Throw.SPRAY,
                flow,
                scales,
                200e3,
                0.5,
                4,
                140e3,
                300e3,
                Catalogue.Profile.UNIFORM,
                null,
                1e-3);
    }

    private static Fitting fitting(String id, FittingKind kind, String on, double along, double losses) {
        return new Fitting(id, kind, null, on, along, SIZE, losses, 20e3, 200e3, Normally.CLOSED);
    }

    private static List<Fitting> fittings(Fitting... more) {
        List<Fitting> all = new ArrayList<>(List.of(
                fitting("meter", FittingKind.METER, "main", 2, 5),
                fitting("bfp", FittingKind.BACKFLOW_PREVENTER, "main", 4, 10),
                fitting("mv", FittingKind.MASTER_VALVE, "main", 6, 3),
                fitting("v1", FittingKind.ZONE_VALVE, "z1", 1, 4),
                fitting("v2", FittingKind.ZONE_VALVE, "z2", 1, 4)));
        all.addAll(List.of(more));
        return all;
    }

    private static Pipe pipe(String id, String from, String to) {
        return new Pipe(id, from, to, 0.0262, "pvc", List.of(), null, id.equals("main") ? 2 : 0);
    }

    private static Plumbing.Junction junction(String id, double x, double y, double z) {
        return new Plumbing.Junction(id, new Point(x, y), z);
    }

    private static Scenario site(Friction friction, Supply supply, List<Fitting> fittings, FaultPlan... faults) {
        Plumbing plumbing = new Plumbing(
                friction,
                supply,
                List.of(
                        junction("poc", 0, 0, 0),
                        junction("a", 10, 0, 0),
                        junction("b", 10, 10, 2),
                        junction("c", 20, 0, 0),
                        junction("e", 20, 10, 0)),
                List.of(pipe("main", "poc", "a"), pipe("z1", "a", "b"), pipe("z2", "a", "c"), pipe("z2b", "c", "e")),
                fittings,
                List.of(
                        new Plumbing.Head("h1", "v1", new Point(11, 10), "full", 0, 90, null),
                        new Plumbing.Head("h2", "v1", new Point(10.5, 5), "full", 0, 90, null),
                        new Plumbing.Head("h3", "v2", new Point(21, 8), "arc", 0, 90, null)),
                List.of(new Plumbing.DripLine(
                        "d1", "v2", List.of(new Point(12, 1), new Point(15, 1), new Point(18, 1)), 30, "drip")));
        Scenario s = TestYards.lawn(30, 20)
                .plumbing(plumbing)
                .faults(List.of(faults))
                .scenario();
        return s.with(catalogue(), s.yard(), s.faults());
    }

    private static Waterworks works(FaultPlan... faults) {
        return Waterworks.of(site(Friction.HAZEN_WILLIAMS, MAINS, fittings(), faults));
    }

    private static FaultPlan fault(Kind kind, String on, double along, double opening, double exponent, double amount) {
        return new FaultPlan(kind, on, along, opening, exponent, amount, null, 0);
    }

    private static WaterFlows flows(Waterworks works, boolean first, boolean second, long faults) {
        return works.flows(new boolean[] {first, second}, true, faults);
    }

    /** Hazen-Williams in m: 10.67 L q^1.852 / (C^1.852 d^4.871). */
    private static double friction(double length, double flow) {
        return 10.67 * length * Math.pow(flow / C, 1.852) / Math.pow(INNER, 4.871);
    }

    private static double velocityHead(double flow, double diameter) {
        double v = flow / (Math.PI / 4 * diameter * diameter);
        return v * v / (2 * GRAVITY);
    }

    private static double nozzle(double pressure) {
        return 1e-4 * Math.sqrt(pressure / 200e3);
    }

    @Test
    void pipesBehindAZoneValveAreItsLaterals() {
        Waterworks works = works();
        assertEquals(List.of("v1", "v2"), works.zones());
        assertEquals(Set.of("z1"), works.laterals().get("v1"));
        assertEquals(Set.of("z2", "z2b"), works.laterals().get("v2"));
        assertEquals(List.of("main"), works.mainline());
        assertEquals(INNER, works.innerDiameter("z1"), 1e-12);
        assertEquals(10, works.path("z1").length(), 1e-12);
    }

    @Test
    void withAllValvesShutNothingFlows() {
        WaterFlows rest = flows(works(), false, false, 0);
        assertNull(rest.problem());
        assertEquals(0, rest.supply(), 1e-12);
        assertArrayEquals(new double[3], rest.heads(), 1e-12);
        assertArrayEquals(new double[1], rest.drips(), 1e-12);
        assertArrayEquals(new double[2], rest.zones(), 1e-12);
        assertTrue(Double.isNaN(rest.zonePressures()[0]) && Double.isNaN(rest.headPressures()[2]));
        assertEquals(400e3, rest.pressureAt("main", 0), 1);
    }

    @Test
    void eachLossFromTheSupplyToAHeadIsThere() {
        WaterFlows one = flows(works(), true, false, 0);
        double q = one.supply();
        assertEquals(one.heads()[0] + one.heads()[1], q, 1e-12);
        assertEquals(q, one.zones()[0], 1e-10);
        assertEquals(0, one.zones()[1], 1e-12);
        assertEquals(0, one.heads()[2], 1e-12);
        // Main: friction, 2 velocity heads of the pipe, meter 5, preventer 10 and its 20 kPa, master valve 3; zone
        // valve 4; five metres of lateral that climb one metre.
        double losses = friction(15, q)
                + 2 * velocityHead(q, INNER)
                + (5 + 10 + 3 + 4) * velocityHead(q, SIZE)
                + 20e3 / WEIGHT
                + 1;
        // The preventer's curve is read straight between points of a quarter of a metre per second.
        assertEquals(400e3 - WEIGHT * losses, one.headPressures()[1], 400);
        double rest = friction(5, one.heads()[0]) + 1;
        assertEquals(one.headPressures()[1] - WEIGHT * rest, one.headPressures()[0], 20);
        assertEquals(nozzle(one.headPressures()[0]), one.heads()[0], 1e-10);
        assertEquals(nozzle(one.headPressures()[1]), one.heads()[1], 1e-10);
        assertEquals(one.headPressures()[1] + WEIGHT * (friction(4, q) + 0.8), one.zonePressures()[0], 20);
    }

    @Test
    void flowsOfPartsAreThoseOfWhatLiesBeyond() {
        WaterFlows one = flows(works(), true, false, 0);
        assertEquals(one.supply(), one.at("main", 0), 1e-10);
        assertEquals(one.supply(), one.at("main", 9.9), 1e-10);
        assertEquals(one.supply(), one.at("z1", 4.9), 1e-10);
        assertEquals(one.heads()[0], one.at("z1", 5.1), 1e-10);
        assertEquals(one.heads()[0], one.at("z1", 99), 1e-10);
        assertEquals(0, one.at("z2", 5), 1e-10);
        assertEquals(one.headPressures()[1], one.pressureAt("z1", 7), 1e-6);
    }

    @Test
    void arcsAndEmittersScaleTheirNozzles() {
        WaterFlows two = flows(works(), false, true, 0);
        // A quarter circle takes a quarter; thirty emitters q = k p^0.1 each.
        assertEquals(nozzle(two.headPressures()[2]) / 4, two.heads()[2], 1e-10);
        double atDrip = two.pressureAt("z2", 6);
        assertEquals(30e-6 * Math.pow(atDrip / 100e3, 0.1), two.drips()[0], 1e-10);
        assertEquals(two.heads()[2] + two.drips()[0], two.supply(), 1e-12);
        assertEquals(two.heads()[2], two.at("z2b", 1), 1e-10);
        assertEquals(0, two.at("z2b", 9), 1e-10, "past the tap at 8 m");
    }

    @Test
    void theMasterValveShutsAll() {
        Waterworks works = works();
        WaterFlows shut = works.flows(new boolean[] {true, true}, false, 0);
        assertEquals(0, shut.supply(), 1e-12);
        assertFalse(works.masterOpenAtRest());
        Fitting open = new Fitting("mv2", FittingKind.MASTER_VALVE, null, "main", 8, SIZE, 3, 0, 0, Normally.OPEN);
        List<Fitting> both = fittings(open);
        assertFalse(Waterworks.of(site(Friction.HAZEN_WILLIAMS, MAINS, both)).masterOpenAtRest());
        both.removeIf(f -> f.id().equals("mv"));
        assertTrue(Waterworks.of(site(Friction.HAZEN_WILLIAMS, MAINS, both)).masterOpenAtRest());
        both.removeIf(f -> f.id().equals("mv2"));
        assertTrue(Waterworks.of(site(Friction.HAZEN_WILLIAMS, MAINS, both)).masterOpenAtRest());
    }

    @Test
    void aLeakIsAnOrifice() {
        Waterworks works = works(fault(Kind.MAINLINE_LEAK, "main", 8, 1e-5, 0.5, 0));
        WaterFlows leaking = flows(works, false, false, 1);
        double head = leaking.pressureAt("main", 8.5) / WEIGHT;
        assertTrue(head > 30);
        assertEquals(0.61 * 1e-5 * Math.sqrt(2 * GRAVITY * head), leaking.lost(0), 1e-9);
        assertEquals(leaking.lost(0), leaking.leaked(), 1e-15);
        assertEquals(leaking.lost(0), leaking.supply(), 1e-15);
        assertEquals(0, flows(works, false, false, 0).leaked());
        assertEquals(0, works.flows(new boolean[2], false, 1).leaked(), 1e-12, "behind the master valve");
        assertEquals(new Point(8, 0), works.leakAt(0));
        WaterFlows watering = flows(works, true, false, 1);
        assertEquals(watering.heads()[0] + watering.heads()[1] + watering.leaked(), watering.supply(), 1e-12);
        assertEquals(watering.supply() - watering.leaked(), watering.at("main", 9), 1e-10);
    }

    @Test
    void aSplitThatOpensPassesAtThirtyMetresWhatAPlainHoleWould() {
        Waterworks works = works(fault(Kind.LATERAL_BREAK, "z1", 8, 2e-5, 1.2, 0));
        WaterFlows leaking = flows(works, true, false, 1);
        double head = leaking.pressureAt("z1", 8.5) / WEIGHT;
        double plain = 0.61 * 2e-5 * Math.sqrt(2 * GRAVITY * 30);
        assertEquals(plain * Math.pow(head / 30, 1.2), leaking.lost(0), 1e-9);
        assertEquals(0, flows(works, false, false, 1).lost(0), 1e-12);
    }

    @Test
    void aValveThatSticksOpenLosesItsZonesFlowWhileNobodyAsksForIt() {
        Waterworks works = works(fault(Kind.VALVE_STUCK_OPEN, "v2", 0, 0, 0.5, 0));
        WaterFlows stuck = flows(works, false, false, 1);
        WaterFlows asked = flows(works, false, true, 0);
        assertEquals(asked.supply(), stuck.supply(), 1e-12);
        assertEquals(stuck.zones()[1], stuck.lost(0), 1e-15);
        assertEquals(0, stuck.leaked());
        assertEquals(0, flows(works, false, true, 1).lost(0));
        assertEquals(0, flows(works, false, false, 0).lost(0));
    }

    @Test
    void aValveThatSticksShutGivesNothing() {
        Waterworks works =
                works(fault(Kind.RAIN_STUCK, null, 0, 0, 0.5, 0), fault(Kind.VALVE_STUCK_SHUT, "v1", 0, 0, 0.5, 0));
        WaterFlows stuck = flows(works, true, true, 2);
        assertEquals(0, stuck.zones()[0], 1e-12);
        assertTrue(stuck.zones()[1] > 1e-5);
        assertEquals(0, stuck.lost(1));
    }

    @Test
    void aWeepingValveIsAnOrificePastIt() {
        Waterworks works =
                works(fault(Kind.VALVE_WEEPS, "v1", 0, 3e-6, 0.5, 0), fault(Kind.VALVE_WEEPS, "v2", 0, 3e-6, 0.5, 0));
        WaterFlows weeping = flows(works, false, false, 1);
        double before = weeping.pressureAt("z1", 0) / WEIGHT;
        double behind = weeping.zonePressures()[0] / WEIGHT;
        // Between the junction and the valve, a metre of pipe on, the lateral has climbed 0.2 m.
        double across = before - behind - 0.2 - friction(1, weeping.lost(0));
        assertEquals(0.61 * 3e-6 * Math.sqrt(2 * GRAVITY * across), weeping.lost(0), 2e-9);
        assertEquals(0, weeping.lost(1));
        assertEquals(weeping.heads()[0] + weeping.heads()[1], weeping.lost(0), 1e-10);
        assertEquals(0, flows(works, true, false, 1).lost(0));
        assertEquals(0, flows(works, false, false, 0).supply(), 1e-12);
    }

    @Test
    void brokenHeadsTakeMoreAndCloggedOnesLess() {
        Waterworks works = works(
                fault(Kind.HEAD_BROKEN, "h2", 0, 0, 0.5, 3),
                fault(Kind.NOZZLE_CLOGGED, "h1", 0, 0, 0.5, 0.4),
                fault(Kind.NOZZLE_CLOGGED, "h1", 0, 0, 0.5, 1.5));
        WaterFlows broken = flows(works, true, false, 1);
        assertEquals(4 * nozzle(broken.headPressures()[1]), broken.heads()[1], 1e-9);
        assertEquals(0.75 * broken.heads()[1], broken.lost(0), 1e-12);
        WaterFlows clogged = flows(works, true, false, 2);
        assertEquals(0.6 * nozzle(clogged.headPressures()[0]), clogged.heads()[0], 1e-10);
        assertEquals(0, clogged.lost(1));
        assertEquals(0, flows(works, true, false, 4).heads()[0], 1e-12);
    }

    /** Main and first zone up to its nearer head, with K velocity heads more than the sound fittings have. */
    private static double atNearHead(double static0, WaterFlows one, double more) {
        double q = one.supply();
        double losses = friction(15, q)
                + 2 * velocityHead(q, INNER)
                + (5 + 10 + 3 + 4 + more) * velocityHead(q, SIZE)
                + 20e3 / WEIGHT
                + 1;
        return static0 - WEIGHT * losses;
    }

    private static Waterworks works(List<Fitting> fittings, FaultPlan... faults) {
        return Waterworks.of(site(Friction.HAZEN_WILLIAMS, MAINS, fittings, faults));
    }

    @Test
    void aHalfShutValveAndACloggedFilterLoseTimesTheirOwnAndOneVelocityHead() {
        List<Fitting> iso = fittings(fitting("iso", FittingKind.ISOLATION_VALVE, "main", 8, 2));
        Waterworks partly = works(iso, fault(Kind.VALVE_PARTLY_SHUT, "iso", 0, 0, 0.5, 60));
        WaterFlows sound = flows(partly, true, false, 0);
        assertEquals(atNearHead(400e3, sound, 2), sound.headPressures()[1], 400);
        WaterFlows half = flows(partly, true, false, 1);
        assertEquals(atNearHead(400e3, half, 60 * 3), half.headPressures()[1], 400);
        assertTrue(half.headPressures()[1] < sound.headPressures()[1] - 5e3);
        assertEquals(0, half.lost(0), "it loses no water");
        List<Fitting> filter = fittings(fitting("filter", FittingKind.FILTER, "main", 8, 6));
        WaterFlows clogged = flows(works(filter, fault(Kind.FILTER_CLOGGED, "filter", 0, 0, 0.5, 20)), true, false, 1);
        assertEquals(atNearHead(400e3, clogged, 20 * 7), clogged.headPressures()[1], 400);
    }

    @Test
    void aPreventersCloggedStrainerKeepsWhatItLosesBeforeAnythingFlows() {
        Waterworks works = works(fittings(), fault(Kind.FILTER_CLOGGED, "bfp", 0, 0, 0.5, 20));
        WaterFlows clogged = flows(works, true, false, 1);
        // 20 (10 + 1) instead of 10 velocity heads, and its 20 kPa as before; the curve is read between points.
        assertEquals(atNearHead(400e3, clogged, 20 * 11 - 10), clogged.headPressures()[1], 3e3);
        assertTrue(clogged.supply() < flows(works, true, false, 0).supply());
    }

    @Test
    void aLowRegulatorHoldsAShareLess() {
        List<Fitting> fittings = fittings(fitting("prv", FittingKind.REGULATOR, "main", 9, 2));
        Waterworks works = works(fittings, fault(Kind.REGULATOR_LOW, "prv", 0, 0, 0.5, 0.45));
        assertEquals(200e3, flows(works, true, false, 0).pressureAt("main", 9.5), 1);
        assertEquals(110e3, flows(works, true, false, 1).pressureAt("main", 9.5), 1);
    }

    @Test
    void aLowSupplyIsOneWithSoMuchLessPressure() {
        FaultPlan low = fault(Kind.SUPPLY_LOW, "poc", 0, 0, 0.5, 0.35);
        Waterworks works = works(low);
        assertEquals(260e3, flows(works, false, false, 1).pressureAt("main", 0), 1);
        Supply weaker = new Supply(SupplyKind.FIXED, "poc", 260e3, List.of());
        WaterFlows other = flows(Waterworks.of(site(Friction.HAZEN_WILLIAMS, weaker, fittings())), true, false, 0);
        assertEquals(other.supply(), flows(works, true, false, 1).supply(), 1e-12);
        assertEquals(atNearHead(260e3, other, 0), other.headPressures()[1], 400);
    }

    @Test
    void aLowSupplysCurveIsLowerEverywhere() {
        FaultPlan low = fault(Kind.SUPPLY_LOW, "poc", 0, 0, 0.5, 0.35);
        Supply curve = new Supply(SupplyKind.CURVE, "poc", 400e3, List.of(new FlowingPoint(2e-4, 300e3)));
        WaterFlows one = flows(Waterworks.of(site(Friction.HAZEN_WILLIAMS, curve, fittings(), low)), true, false, 1);
        double drop = 100e3 * Math.pow(one.supply() / 2e-4, 1.852);
        assertEquals(260e3 - drop, one.pressureAt("main", 0), 1);
        Supply pump = new Supply(
                SupplyKind.PUMP,
                "poc",
                0,
                List.of(new FlowingPoint(0, 400e3), new FlowingPoint(2e-4, 350e3), new FlowingPoint(4e-4, 200e3)));
        WaterFlows lifted = flows(Waterworks.of(site(Friction.HAZEN_WILLIAMS, pump, fittings(), low)), true, false, 1);
        double share = lifted.supply() / 2e-4;
        assertEquals(260e3 - 50e3 * Math.pow(share, 2), lifted.pressureAt("main", 0), 50);
    }

    @Test
    void aMasterValveThatSticksDoesNotObey() {
        Waterworks works = works(
                fault(Kind.MASTER_STUCK_OPEN, "mv", 0, 0, 0.5, 0), fault(Kind.MASTER_STUCK_SHUT, "mv", 0, 0, 0.5, 0));
        double sound = flows(works, true, false, 0).supply();
        assertEquals(0, works.flows(new boolean[] {true, false}, false, 0).supply(), 1e-12);
        assertEquals(sound, works.flows(new boolean[] {true, false}, false, 1).supply(), 1e-12);
        assertEquals(0, flows(works, true, false, 2).supply(), 1e-12);
        assertEquals(0, flows(works, true, false, 3).supply(), 1e-12, "stuck shut is stronger");
    }

    @Test
    void eachMasterValveStandsForItself() {
        Fitting second = new Fitting("mv2", FittingKind.MASTER_VALVE, null, "z1", 0.5, SIZE, 3, 0, 0, Normally.CLOSED);
        Waterworks works = works(fittings(second));
        assertEquals(List.of("mv", "mv2"), works.masters());
        assertEquals(0, works.flows(Set.of("mv", "v1"), Hands.OFF, List.of()).supply(), 1e-12);
        double both =
                works.flows(Set.of("mv", "mv2", "v1"), Hands.OFF, List.of()).supply();
        assertEquals(flows(works, true, false, 0).supply(), both, 1e-15);
        assertTrue(works.flows(Set.of("mv", "v2"), Hands.OFF, List.of()).supply() > 1e-5);
    }

    @Test
    void handsOpenWhatTheControllerLeavesShut() {
        Waterworks works = works(fault(Kind.VALVE_STUCK_OPEN, "v2", 0, 0, 0.5, 0));
        boolean[] none = new boolean[2];
        Hands zone = Hands.of(List.of("v1"), List.of());
        assertEquals(0, works.flows(none, false, zone, List.of()).supply(), 1e-12, "no water behind the master valve");
        Hands both = Hands.of(List.of("v1", "mv"), List.of());
        double asked = flows(works, true, false, 0).supply();
        assertEquals(asked, works.flows(none, true, zone, List.of()).supply(), 1e-12);
        assertEquals(asked, works.flows(none, false, both, List.of()).supply(), 1e-12);
        WaterFlows stuck = works.flows(none, true, Hands.of(List.of("v2"), List.of()), List.of(0));
        assertTrue(stuck.zones()[1] > 1e-5);
        assertEquals(0, stuck.lost(0), "what people want is not lost");
    }

    @Test
    void handsShutAnyFittingThatIsNotStuckOpen() {
        List<Fitting> fittings = fittings(fitting("iso", FittingKind.ISOLATION_VALVE, "z2", 0.5, 2));
        Waterworks works = works(
                fittings,
                fault(Kind.VALVE_PARTLY_SHUT, "iso", 0, 0, 0.5, 60),
                fault(Kind.VALVE_STUCK_OPEN, "v1", 0, 0, 0.5, 0));
        boolean[] all = {true, true};
        for (String each : List.of("meter", "bfp", "mv")) {
            Hands shut = Hands.of(List.of(), List.of(each));
            assertEquals(0, works.flows(all, true, shut, List.of()).supply(), 1e-12, each);
        }
        Hands iso = Hands.of(List.of(), List.of("iso"));
        double first = flows(works, true, false, 0).supply();
        assertEquals(first, works.flows(all, true, iso, List.of()).supply(), 1e-10, "the other zone is cut off");
        assertEquals(first, works.flows(all, true, iso, List.of(0)).supply(), 1e-10, "half shut before, shut now");
        Hands valve = Hands.of(List.of("v1"), List.of("v1"));
        assertEquals(0, works.flows(new boolean[2], true, valve, List.of()).supply(), 1e-12, "shut is stronger");
        assertTrue(works.flows(new boolean[2], true, valve, List.of(1)).supply() > 1e-5, "stuck stays stuck");
    }

    @Test
    void eachConfigurationIsSolvedOnce() {
        Waterworks works =
                works(fault(Kind.FLOW_JAMMED, null, 0, 0, 0.5, 0), fault(Kind.HEAD_BROKEN, "h2", 0, 0, 0.5, 3));
        WaterFlows plain = flows(works, true, false, 0);
        assertSame(plain, flows(works, true, false, 0));
        assertSame(plain, flows(works, true, false, 1), "a sensor's fault does not touch the water");
        assertNotSame(plain, flows(works, true, false, 2));
        assertNotSame(plain, flows(works, false, true, 0));
        assertNotSame(plain, works.flows(new boolean[] {true, false}, false, 0));
    }

    @Test
    void straightPipeReachesToTheNextThingOnEachSide() {
        Waterworks works = works(
                fault(Kind.MAINLINE_LEAK, "main", 7.5, 1e-5, 0.5, 0),
                fault(Kind.LATERAL_BREAK, "z1", 3.5, 1e-5, 0.5, 0));
        assertArrayEquals(new double[] {1, 3}, works.straight("main", 7), 1e-9);
        assertArrayEquals(new double[] {1, 1}, works.straight("main", 3), 1e-9);
        assertArrayEquals(new double[] {1, 1}, works.straight("main", 1), 1e-9);
        assertArrayEquals(new double[] {2, 2}, works.straight("z1", 3), 1e-9);
        assertArrayEquals(new double[] {0, 2}, works.straight("main", 2), 1e-9);
        assertArrayEquals(new double[] {3, 2}, works.straight("z1", 8), 1e-9);
    }

    @Test
    void aRegulatorHoldsItsPressureBehindIt() {
        Waterworks works = Waterworks.of(
                site(Friction.HAZEN_WILLIAMS, MAINS, fittings(fitting("prv", FittingKind.REGULATOR, "main", 9, 2))));
        WaterFlows one = flows(works, true, false, 0);
        assertEquals(200e3, one.pressureAt("main", 9.5), 1);
        assertTrue(one.pressureAt("main", 8.5) > 300e3);
    }

    @Test
    void aSupplyCurveFallsThroughItsPoint() {
        Supply curve = new Supply(SupplyKind.CURVE, "poc", 400e3, List.of(new FlowingPoint(2e-4, 300e3)));
        Waterworks works = Waterworks.of(site(Friction.HAZEN_WILLIAMS, curve, fittings()));
        assertEquals(400e3, flows(works, false, false, 0).pressureAt("main", 0), 1);
        WaterFlows one = flows(works, true, false, 0);
        // The form of hydrant flow tests (NFPA 291): 400 - 100 (q / 0.2 l/s)^1.852 kPa.
        double drop = 100e3 * Math.pow(one.supply() / 2e-4, 1.852);
        assertEquals(400e3 - drop, one.pressureAt("main", 0), 1);
        WaterFlows fixed = flows(works(), true, false, 0);
        assertTrue(fixed.supply() > one.supply());
    }

    @Test
    void aPumpLiftsByItsCurve() {
        Supply pump = new Supply(
                SupplyKind.PUMP,
                "poc",
                0,
                List.of(new FlowingPoint(0, 400e3), new FlowingPoint(2e-4, 350e3), new FlowingPoint(4e-4, 200e3)));
        Waterworks works = Waterworks.of(site(Friction.HAZEN_WILLIAMS, pump, fittings()));
        WaterFlows one = flows(works, true, false, 0);
        // Through the three points: 400 - 50 (q / 0.2 l/s)^2 kPa.
        double share = one.supply() / 2e-4;
        assertEquals(400e3 - 50e3 * Math.pow(share, 2), one.pressureAt("main", 0), 50);
    }

    @Test
    void bothFrictionLawsAgreeOnSmoothPipe() {
        WaterFlows hazen = flows(works(), true, false, 0);
        WaterFlows darcy = flows(Waterworks.of(site(Friction.DARCY_WEISBACH, MAINS, fittings())), true, false, 0);
        double q = darcy.supply();
        assertEquals(hazen.supply(), q, 0.02 * q);
        double reynolds = q / (Math.PI / 4 * INNER * INNER) * INNER / 1.1386e-6;
        double f = 0.25 / Math.pow(Math.log10(1.5e-6 / INNER / 3.7 + 5.74 / Math.pow(reynolds, 0.9)), 2);
        double perMetre = f / INNER * velocityHead(q, INNER);
        double drop = darcy.zonePressures()[0] - darcy.headPressures()[1];
        assertEquals(WEIGHT * (4 * perMetre + 0.8), drop, 10);
    }

    @Test
    void aWayIsMeasuredInTheLengthThatItsAuthorGives() {
        Pipe bent = new Pipe("p", "a", "b", SIZE, "pvc", List.of(new Point(3, 0), new Point(3, 4)), 18.0, 0);
        PipePath path = PipePath.of(bent, new Point(0, 0), new Point(5, 4));
        // Drawn 3 + 4 + 2 m, given twice that.
        assertEquals(18, path.length());
        assertEquals(List.of(6.0, 14.0), path.corners());
        assertEquals(4, path.points().size());
        assertPoint(1.5, 0, path.pointAt(3));
        assertPoint(3, 2, path.pointAt(10));
        assertPoint(4, 4, path.pointAt(16));
        assertPoint(0, 0, path.pointAt(-1));
        assertPoint(5, 4, path.pointAt(99));
        PipePath.Nearest side = path.nearest(new Point(4, 1));
        assertEquals(1, side.distance(), 1e-12);
        assertEquals(8, side.along(), 1e-12);
        assertEquals(0, path.nearest(new Point(-3, 0)).along(), 1e-12);
        assertEquals(18, path.nearest(new Point(9, 4)).along(), 1e-12);
        PipePath drawn =
                PipePath.of(new Pipe("p", "a", "b", SIZE, "pvc", List.of(), null, 0), new Point(0, 0), new Point(3, 4));
        assertEquals(5, drawn.length(), 1e-12);
        assertEquals(List.of(), drawn.corners());
        PipePath none =
                PipePath.of(new Pipe("p", "a", "b", SIZE, "pvc", List.of(), null, 0), new Point(1, 2), new Point(1, 2));
        assertPoint(1, 2, none.pointAt(0));
        assertEquals(0, none.nearest(new Point(5, 5)).along());
    }

    private static void assertPoint(double x, double y, Point point) {
        assertEquals(x, point.x(), 1e-12);
        assertEquals(y, point.y(), 1e-12);
    }

    @Test
    void leaksFollowTheirLaws() {
        // 0.6 x 1 cm2 x sqrt(2 g): 2.657e-4 m3/s at 1 m.
        assertEquals(2.657e-4, Leak.orificeK(0.6, 1e-4), 1e-7);
        assertEquals(Leak.orificeK(0.6, 1e-6), Leak.splitK(0.6, 1e-6));
        assertEquals(1e-4, Leak.kFromFlow(2.7e-3, 9, 1.5), 1e-12);
        assertEquals(8, Leak.flowRatio(10, 40, 1.5), 1e-12);
    }

    @Test
    void pipeSizesAreThoseOfTheStandards() {
        // One inch: 1.049 in inside in Schedule 40, 1.189 in in Class 200, 1.195 in in Class 160.
        assertEquals(1.049 * 0.0254, inner(PipeSizes.WallClass.SCHEDULE_40), 1e-9);
        assertEquals(1.189 * 0.0254, inner(PipeSizes.WallClass.CLASS_200), 1e-9);
        assertEquals(1.195 * 0.0254, inner(PipeSizes.WallClass.CLASS_160), 1e-9);
        PipeSizes.Size six = PipeSizes.find(PipeSizes.WallClass.CLASS_200, 6).orElseThrow();
        assertEquals(21, six.dimensionRatio(), 0.05);
        assertTrue(six.averageInnerDiameter() < six.innerDiameter());
        assertEquals(six.outerM() - 2.12 * six.wallM(), six.averageInnerDiameter(), 1e-12);
        assertTrue(PipeSizes.find(PipeSizes.WallClass.CLASS_200, 5).isEmpty());
        assertEquals(10, PipeSizes.of(PipeSizes.WallClass.CLASS_160).size());
    }

    private static double inner(PipeSizes.WallClass wall) {
        return PipeSizes.find(wall, 1).orElseThrow().innerDiameter();
    }
}
