package provingyard.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import provingyard.scenario.FaultPlan;
import provingyard.scenario.FaultPlan.Kind;
import provingyard.scenario.Scenario;
import provingyard.scenario.SensorKind;
import provingyard.scenario.Sites;
import provingyard.setup.FlowWatch;
import provingyard.setup.Placement;
import provingyard.setup.References;
import provingyard.setup.SetUp;
import provingyard.world.hydraulics.Hands;

/**
 * Each kind of fault in a living season: on the row, which waters four zones one after the other from five on every other
 * day (10, 10, 10 and 22 minutes), and the flow watch's ones on the clinic. Faults are dealt by chosen minutes.
 */
class LivingFaultsTest {

    private static final int DAY = 1440;
    private static final int NOON = 720;

    private static FaultPlan fault(Kind kind, String on, double along, double opening, double amount) {
        return new FaultPlan(kind, on, along, opening, 0.5, amount, null, 0);
    }

    private static final List<FaultPlan> ROW_FAULTS = List.of(
            fault(Kind.COIL_OPEN, "zone-2", 0, 0, 0),
            fault(Kind.COIL_SHORTED, "zone-2", 0, 0, 2),
            fault(Kind.WIRE_CUT, "zone-2", 2, 0, 0),
            fault(Kind.COMMON_CUT, "zone-1", 0, 0, 0),
            fault(Kind.SPLICE_BAD, "zone-2", 0, 0, 200),
            fault(Kind.OUTPUT_DEAD, "zone-2", 0, 0, 0),
            fault(Kind.TRANSFORMER_DEAD, "controller", 0, 0, 0),
            fault(Kind.ZONES_ON_ONE_OUTPUT, "zone-3", 0, 0, 0),
            fault(Kind.EXTRA_START, "controller", 0, 0, 3),
            fault(Kind.SEASONAL_WRONG, "controller", 0, 0, 1.8),
            fault(Kind.VALVE_STUCK_OPEN, "zone-1", 0, 0, 0),
            fault(Kind.VALVE_STUCK_SHUT, "zone-2", 0, 0, 0),
            fault(Kind.MASTER_STUCK_OPEN, "master", 0, 0, 0),
            fault(Kind.MASTER_STUCK_SHUT, "master", 0, 0, 0),
            fault(Kind.FILTER_CLOGGED, "filter-4", 0, 0, 60),
            fault(Kind.REGULATOR_LOW, "regulator-4", 0, 0, 0.45),
            fault(Kind.SUPPLY_LOW, "street-tap", 0, 0, 0.35),
            fault(Kind.HEAD_BROKEN, "h-101", 0, 0, 1.5),
            fault(Kind.NOZZLE_CLOGGED, "h-101", 0, 0, 0.6),
            fault(Kind.MAINLINE_BREAK, "service", 0.5, 1e-4, 0),
            fault(Kind.COMMON_CUT, "zone-2", 0, 0, 0));

    private static final List<FaultPlan> CLINIC_FAULTS = List.of(
            fault(Kind.ZONES_ON_ONE_OUTPUT, "zone-3", 0, 0, 0),
            fault(Kind.FLOW_FACTOR_WRONG, "flow", 0, 0, 1.4),
            fault(Kind.TRANSFORMER_DEAD, "controller", 0, 0, 0),
            fault(Kind.MAINLINE_BREAK, "main-4", 1, 2e-4, 0),
            fault(Kind.VALVE_PARTLY_SHUT, "iso-a", 0, 0, 1000));

    private static final Site ROW = site("tansy-row", ROW_FAULTS);
    private static final Site CLINIC = site("quillback-clinic", CLINIC_FAULTS);
    private static final Map<String, Double> SOUND = morning();

    private static Site site(String id, List<FaultPlan> faults) {
        Scenario scenario = Sites.open(id).orThrow();
        return Site.of(scenario.with(scenario.catalogue(), scenario.yard(), faults));
    }

    private static int indexOf(List<FaultPlan> faults, Kind kind) {
        return faults.stream().map(FaultPlan::kind).toList().indexOf(kind);
    }

    private static Season.Dealt row(Kind kind, long tick) {
        return new Season.Dealt(indexOf(ROW_FAULTS, kind), tick);
    }

    private static Season.Dealt clinic(Kind kind, long tick) {
        return new Season.Dealt(indexOf(CLINIC_FAULTS, kind), tick);
    }

    private static void live(Season season, long until) {
        while (season.tick() < until) {
            season.advance();
        }
    }

    /** m3 by zone of the row's first morning, with some faults from the first minute on. */
    private static Map<String, Double> morning(Kind... kinds) {
        List<Season.Dealt> dealt = Stream.of(kinds).map(k -> row(k, 0)).toList();
        return volumes(Season.begin(ROW, SetUp.CLOCK_ALONE, dealt), NOON);
    }

    private static Map<String, Double> volumes(Season season, long until) {
        Map<String, Double> volumes = new LinkedHashMap<>();
        List<String> zones = ROW.waterworks().zones();
        zones.forEach(z -> volumes.put(z, 0.0));
        while (season.tick() < until) {
            season.advance();
            for (int z = 0; z < zones.size(); z++) {
                volumes.merge(zones.get(z), season.flows().zones()[z] * 60, Double::sum);
            }
        }
        assertBalanced(season);
        return volumes;
    }

    private static void assertBalanced(Season season) {
        assertTrue(season.ledger().water().closure() < 1e-9, "water of the site");
        assertTrue(season.ledger().irrigation().closure() < 1e-9, "irrigation's share");
        assertEquals(0, season.unsolvedMinutes());
    }

    /** Some zones get what they should times a factor; the others what they should. */
    private static void assertMorning(Map<String, Double> now, double factor, String... zones) {
        SOUND.forEach((zone, volume) -> {
            double wanted = List.of(zones).contains(zone) ? factor * volume : volume;
            assertEquals(wanted, now.get(zone), 1e-9 * volume, zone);
        });
    }

    private static final String[] ALL = {"zone-1", "zone-2", "zone-3", "zone-4"};

    // Wires

    @Test
    void whatBreaksOneValvesWireKeepsItsZoneDry() {
        assertTrue(SOUND.values().stream().allMatch(v -> v > 0.01), "sound, all are watered");
        for (Kind kind : List.of(
                Kind.COIL_OPEN,
                Kind.COIL_SHORTED,
                Kind.WIRE_CUT,
                Kind.SPLICE_BAD,
                Kind.OUTPUT_DEAD,
                Kind.VALVE_STUCK_SHUT)) {
            assertMorning(morning(kind), 0, "zone-2");
        }
    }

    @Test
    void aDeadTransformerAndAStuckMasterValveKeepAllDry() {
        assertMorning(morning(Kind.TRANSFORMER_DEAD), 0, ALL);
        assertMorning(morning(Kind.MASTER_STUCK_SHUT), 0, ALL);
    }

    /** Boxes on the row, from the controller: zones 2 and 4; zone 1 and the normally closed master valve; zone 3. */
    @Test
    void aCutCommonKeepsDryWhatLiesBeyond() {
        assertMorning(morning(Kind.COMMON_CUT), 0, "zone-3");
        int first = ROW_FAULTS.size() - 1;
        Season season = Season.begin(ROW, SetUp.CLOCK_ALONE, List.of(new Season.Dealt(first, 0)));
        assertMorning(volumes(season, NOON), 0, ALL);
    }

    @Test
    void twoZonesOnOneOutputRunInOnesTime() {
        Season season = Season.begin(ROW, SetUp.CLOCK_ALONE, List.of(row(Kind.ZONES_ON_ONE_OUTPUT, 0)));
        int together = 0;
        int idle = 0;
        while (season.tick() < NOON) {
            season.advance();
            double[] flows = season.flows().zones();
            String wanted = season.commands().openId();
            if ("zone-2".equals(wanted)) {
                assertTrue(flows[1] > 1e-5 && flows[2] > 1e-5);
                assertTrue(season.snapshot().zones().get(2).open(), "and is seen open");
                together++;
            } else if ("zone-3".equals(wanted)) {
                assertEquals(0, season.flows().supply(), 1e-12);
                idle++;
            }
        }
        assertEquals(7, together);
        assertEquals(7, idle);
        assertBalanced(season);
    }

    @Test
    void aWrittenFaultActsLikeADealtOne() {
        FaultPlan dealt = ROW_FAULTS.get(0);
        FaultPlan.When when = new FaultPlan.When(1, LocalTime.MIDNIGHT);
        FaultPlan written = new FaultPlan(dealt.kind(), dealt.on(), 0, 0, 0.5, 0, when, 0);
        Season own = Season.begin(site("tansy-row", List.of(written)), SetUp.CLOCK_ALONE);
        live(own, NOON);
        Season other =
                Season.begin(site("tansy-row", List.of(dealt)), SetUp.CLOCK_ALONE, List.of(new Season.Dealt(0, 0)));
        live(other, NOON);
        assertEquals(own.ledgerHash(), other.ledgerHash());
        assertEquals(0, own.outcome().leaks().happened(), "it loses no water");
    }

    // Controller

    @Test
    void aSecondStartWatersTwiceAndAWrongPercentageLonger() {
        assertMorning(morning(Kind.EXTRA_START), 2, ALL);
        Map<String, Double> longer = morning(Kind.SEASONAL_WRONG);
        // 12 min * 60 % * 1.8 = 13.0 and 25 min * 60 % * 1.8 = 27, cut down to minutes, instead of 7 and 15.
        assertEquals(12.0 / 7 * SOUND.get("zone-1"), longer.get("zone-1"), 1e-9);
        assertEquals(27.0 / 15 * SOUND.get("zone-4"), longer.get("zone-4"), 1e-9);
    }

    // Pipes

    @Test
    void faultsOfTheWaterActWhileTheyLast() {
        Map<String, Double> clogged = morning(Kind.FILTER_CLOGGED);
        assertTrue(clogged.get("zone-4") < SOUND.get("zone-4"));
        assertEquals(SOUND.get("zone-1"), clogged.get("zone-1"), 1e-9);
        assertTrue(morning(Kind.REGULATOR_LOW).get("zone-4") < SOUND.get("zone-4"));
        Map<String, Double> weak = morning(Kind.SUPPLY_LOW);
        assertTrue(weak.get("zone-1") < SOUND.get("zone-1") && weak.get("zone-2") < SOUND.get("zone-2"));
        assertTrue(morning(Kind.HEAD_BROKEN).get("zone-1") > SOUND.get("zone-1"));
        assertTrue(morning(Kind.NOZZLE_CLOGGED).get("zone-1") < SOUND.get("zone-1"));
    }

    @Test
    void aHalfShutIsolationValveStarvesWhatLiesBeyond() {
        Season season = Season.begin(CLINIC, SetUp.CLOCK_ALONE, List.of(clinic(Kind.VALVE_PARTLY_SHUT, 30)));
        Hands shut = Hands.of(List.of(), List.of("iso-a"));
        int starved = 0;
        for (String zone : CLINIC.waterworks().zones()) {
            int z = CLINIC.waterworks().zones().indexOf(zone);
            boolean beyond = CLINIC.waterworks()
                            .flows(Set.of("master", zone), shut, List.of())
                            .supply()
                    < 1e-9;
            double sound = CLINIC.waterworks()
                    .flows(Set.of("master", zone), Hands.OFF, List.of())
                    .zones()[z];
            live(season, Math.max(31, season.tick()));
            season.runByHand(zone);
            season.advance();
            double now = season.flows().zones()[z];
            assertTrue(beyond ? now < sound * (1 + 1e-9) : Math.abs(now - sound) < 1e-9 * sound, zone);
            starved += now < 0.98 * sound ? 1 : 0;
        }
        assertTrue(starved > 0, "where no regulator makes up for it");
    }

    @Test
    void onlyWhatLosesWaterIsALeak() {
        Kind[] none = {Kind.MASTER_STUCK_OPEN, Kind.FILTER_CLOGGED, Kind.SUPPLY_LOW, Kind.REGULATOR_LOW};
        Season season = Season.begin(
                ROW, SetUp.CLOCK_ALONE, Stream.of(none).map(k -> row(k, 0)).toList());
        live(season, NOON);
        assertEquals(new Outcome.Leaks(0, 0, 0, 0), season.outcome().leaks());
        assertEquals(List.of(), Chronicle.of(season).leaks());
        Season stuck = Season.begin(
                ROW, SetUp.CLOCK_ALONE, List.of(row(Kind.MASTER_STUCK_OPEN, 0), row(Kind.VALVE_STUCK_OPEN, 0)));
        live(stuck, 60);
        assertTrue(stuck.flows().lost(indexOf(ROW_FAULTS, Kind.VALVE_STUCK_OPEN)) > 1e-5, "through both stuck valves");
        assertEquals(1, stuck.outcome().leaks().happened());
    }

    // Begin and end

    @Test
    void aFaultBeginsAndEndsAtItsMinute() {
        Season season = Season.begin(ROW, SetUp.CLOCK_ALONE, List.of(row(Kind.TRANSFORMER_DEAD, 5 * 60 + 3)));
        live(season, 5 * 60 + 3);
        assertTrue(season.flows().supply() > 1e-5);
        season.advance();
        assertEquals(0, season.flows().supply(), 1e-12);
        live(season, 5 * 60 + 8);
        season.repair(indexOf(ROW_FAULTS, Kind.TRANSFORMER_DEAD));
        season.advance();
        assertTrue(season.flows().supply() > 1e-5);
        assertEquals(0, season.faultsActive());
        assertEquals(
                List.of(new Season.Repair(5 * 60 + 8, indexOf(ROW_FAULTS, Kind.TRANSFORMER_DEAD))), season.repairs());
    }

    @Test
    void aFaultCanComeBack() {
        Season season = Season.begin(ROW, SetUp.CLOCK_ALONE, List.of(row(Kind.COIL_OPEN, 0), row(Kind.COIL_OPEN, 100)));
        live(season, 50);
        season.repair(0);
        live(season, 60);
        assertEquals(0, season.faultsActive());
        live(season, 2 * DAY);
        assertEquals(1, season.faultsActive());
    }

    @Test
    void nobodyComesUnaskedToRepairWhatWasDealt() {
        Season season = Season.begin(CLINIC, watched(), List.of(clinic(Kind.MAINLINE_BREAK, 600)));
        live(season, 3 * DAY);
        int broken = indexOf(CLINIC_FAULTS, Kind.MAINLINE_BREAK);
        assertEquals(1L << broken, season.faultsActive());
        assertTrue(season.events().stream().anyMatch(e -> e.kind() == SeasonEvent.Kind.FAULT_FOUND));
        assertEquals(0, season.flows().supply(), 1e-12, "the alarm shut the master valve");
        season.repair(broken);
        season.rearm();
        live(season, 5 * DAY);
        assertTrue(season.records().runs().stream().anyMatch(r -> r.start() > 4 * DAY));
        assertBalanced(season);
        assertEquals(new Outcome.Leaks(1, 1, 0, 0), season.outcome().leaks());
    }

    @Test
    void faultsThatTheSiteDoesNotListAreRefused() {
        for (Season.Dealt wrong :
                List.of(new Season.Dealt(ROW_FAULTS.size(), 0), new Season.Dealt(-1, 0), new Season.Dealt(0, -1))) {
            List<Season.Dealt> dealt = List.of(wrong);
            assertThrows(IllegalArgumentException.class, () -> Season.begin(ROW, SetUp.CLOCK_ALONE, dealt));
        }
    }

    // Flow watch

    /** The clinic's flow sensor and flow watch alone, which records each zone's flow in its first run. */
    private static SetUp watched() {
        SetUp textbook = References.textbook(CLINIC.scenario()).orElseThrow();
        Placement sensor = textbook.of(SensorKind.FLOW).get(0);
        FlowWatch watch = textbook.flowWatch();
        return new SetUp(List.of(sensor), List.of(), watch, null);
    }

    @Test
    void anAlarmForAZoneTooManyFindsNoLeakAndIsNotFalse() {
        Season season = Season.begin(CLINIC, watched(), List.of(clinic(Kind.ZONES_ON_ONE_OUTPUT, DAY)));
        live(season, 2 * DAY + NOON);
        assertTrue(season.events().stream()
                .anyMatch(e ->
                        e.kind() == SeasonEvent.Kind.FLOW_HIGH && e.subject().equals("zone-2")));
        assertTrue(season.events().stream()
                .anyMatch(e ->
                        e.kind() == SeasonEvent.Kind.FLOW_LOW && e.subject().equals("zone-3")));
        assertEquals(new Outcome.Leaks(0, 0, 0, 0), season.outcome().leaks());
    }

    @Test
    void aWrongPulseFactorRaisesFalseAlarms() {
        Season season = Season.begin(CLINIC, watched(), List.of(clinic(Kind.FLOW_FACTOR_WRONG, DAY)));
        live(season, 2 * DAY + NOON);
        assertTrue(season.outcome().leaks().falseAlarms() > 0);
        Chronicle.FalseAlarm first = Chronicle.of(season).falseAlarms().get(0);
        assertTrue(first.broken());
        assertEquals(1.4, first.shown() / first.truth(), 0.05);
    }

    @Test
    void aNormallyOpenMasterValveNeedsPowerToShutForAnAlarm() {
        Season season = Season.begin(
                CLINIC, watched(), List.of(clinic(Kind.MAINLINE_BREAK, 600), clinic(Kind.TRANSFORMER_DEAD, 0)));
        live(season, 800);
        assertTrue(season.events().stream().anyMatch(e -> e.kind() == SeasonEvent.Kind.MASTER_SHUT));
        assertTrue(season.flows().leaked() > 1e-4, "it stays open");
        assertTrue(season.snapshot().masterOpen());
    }

    // Hands

    @Test
    void aZoneRunByHandFlowsAsInItsRun() {
        Season season = Season.begin(ROW, SetUp.CLOCK_ALONE, List.of());
        live(season, 5 * 60 + 18);
        double asByClock = season.flows().zones()[2];
        live(season, NOON);
        season.runByHand("zone-3");
        season.advance();
        assertEquals(asByClock, season.flows().zones()[2], 1e-15);
        assertEquals("zone-3", season.runsByHand());
        live(season, NOON + 10);
        season.runByHand(null);
        season.advance();
        assertEquals(0, season.flows().supply());
        assertEquals(
                List.of(new Season.Handled(NOON, Hands.OFF, "zone-3"), new Season.Handled(NOON + 10, Hands.OFF, null)),
                season.handled());
        double morning =
                SOUND.values().stream().mapToDouble(Double::doubleValue).sum();
        assertEquals(morning + 10 * 60 * asByClock, season.ledger().water().supplied(), 1e-9);
        assertBalanced(season);
    }

    @Test
    void wiresDecideARunByHandAsWell() {
        Season season = Season.begin(ROW, SetUp.CLOCK_ALONE, List.of(row(Kind.COIL_OPEN, 0)));
        live(season, NOON);
        season.runByHand("zone-2");
        season.advance();
        assertEquals(0, season.flows().supply(), 1e-12);
        season.hands(Hands.of(List.of("zone-2"), List.of()));
        season.advance();
        assertTrue(season.flows().zones()[1] > 1e-5, "the bleed opens what its coil does not");
        season.runByHand(null);
        season.advance();
        assertEquals(0, season.flows().supply(), 1e-12, "no water behind a normally closed master valve");
        assertEquals(Hands.of(List.of("zone-2"), List.of()), season.held());
    }

    @Test
    void shutFittingsStayShutUntilTheyAreOpened() {
        Season season = Season.begin(ROW, SetUp.CLOCK_ALONE, List.of(row(Kind.MAINLINE_BREAK, 0)));
        live(season, 10);
        double lost = season.ledger().water().leaked();
        assertTrue(lost > 0.01);
        season.hands(Hands.of(List.of(), List.of("meter", "zone-1")));
        live(season, 5 * 60 + 2);
        assertEquals("zone-1", season.commands().openId());
        assertFalse(season.snapshot().zones().get(0).open());
        season.hands(Hands.OFF);
        season.advance();
        assertTrue(season.flows().zones()[0] > 1e-6);
        assertBalanced(season);
        assertThrows(IllegalArgumentException.class, () -> season.hands(Hands.of(List.of(), List.of("nothing"))));
        assertThrows(IllegalArgumentException.class, () -> season.runByHand("meter"));
    }

    // Replay

    /** Two days with all that a technician may do. */
    private static Season busy() {
        Season season = Season.begin(
                CLINIC,
                watched(),
                List.of(
                        clinic(Kind.ZONES_ON_ONE_OUTPUT, 0),
                        clinic(Kind.MAINLINE_BREAK, 500),
                        clinic(Kind.FLOW_FACTOR_WRONG, 700)));
        season.hands(Hands.of(List.of(), List.of("iso-c")));
        live(season, 560);
        season.hands(Hands.of(List.of(), List.of("iso-a")));
        season.runByHand("zone-2");
        live(season, 575);
        season.rearm();
        season.runByHand("zone-4");
        live(season, 590);
        season.repair(indexOf(CLINIC_FAULTS, Kind.MAINLINE_BREAK));
        season.hands(Hands.of(List.of("zone-6"), List.of()));
        season.runByHand(null);
        live(season, 600);
        season.hands(Hands.OFF);
        season.change(SetUp.CLOCK_ALONE);
        live(season, 900);
        season.repair(indexOf(CLINIC_FAULTS, Kind.ZONES_ON_ONE_OUTPUT));
        return season;
    }

    @Test
    void sameDeedsSameBitsAndWaterIsConserved() {
        Season season = busy();
        Season copy = season.copy();
        live(season, 2 * DAY + NOON);
        live(copy, 2 * DAY + NOON);
        Season again = busy();
        live(again, 2 * DAY + NOON);
        assertEquals(season.ledgerHash(), copy.ledgerHash());
        assertEquals(season.ledgerHash(), again.ledgerHash());
        assertEquals(season.handled(), copy.handled());
        assertEquals(season.repairs(), copy.repairs());
        assertBalanced(season);
    }

    @Test
    void livedAgainFromTheBeginningItIsTheSame() {
        Season season = busy();
        live(season, 2 * DAY + NOON);
        Season again = season.fromTheBeginning();
        Again.live(season, again, season.tick(), t -> {}, t -> {});
        assertEquals(season.ledgerHash(), again.ledgerHash());
        assertEquals(season.handled(), again.handled());
        assertEquals(season.outcome(), Chronicle.of(season).outcome());
        Season untouched = season.fromTheBeginning();
        live(untouched, season.tick());
        assertNotEquals(season.ledgerHash(), untouched.ledgerHash(), "the deeds made a difference");
    }

    @Test
    void aCopyInTheMiddleOfARunByHandGoesOnLikeTheSeason() {
        Season season = Season.begin(ROW, SetUp.CLOCK_ALONE, List.of(row(Kind.EXTRA_START, 0)));
        live(season, 5 * 60 + 5);
        season.runByHand("zone-4");
        live(season, 5 * 60 + 9);
        Season copy = season.copy();
        for (Season one : List.of(season, copy)) {
            live(one, 5 * 60 + 15);
            one.runByHand(null);
            live(one, DAY);
        }
        assertEquals(season.ledgerHash(), copy.ledgerHash());
    }

    @Test
    void withoutFaultsAndHandsItIsTheSitesOwnSeason() {
        Season own = Season.begin(ROW, SetUp.CLOCK_ALONE);
        Season dealt = Season.begin(ROW, SetUp.CLOCK_ALONE, List.of());
        live(own, DAY);
        live(dealt, DAY);
        assertEquals(own.ledgerHash(), dealt.ledgerHash());
    }
}
