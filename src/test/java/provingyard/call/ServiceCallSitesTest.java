package provingyard.call;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import provingyard.scenario.Catalogue;
import provingyard.scenario.FaultPlan;
import provingyard.scenario.FaultPlan.Kind;
import provingyard.scenario.Plumbing;
import provingyard.scenario.Plumbing.FittingKind;
import provingyard.scenario.Plumbing.Normally;
import provingyard.scenario.Read;
import provingyard.scenario.Scenario;
import provingyard.scenario.Schedule;
import provingyard.scenario.ServiceCall;
import provingyard.scenario.Severity;
import provingyard.scenario.Work;
import provingyard.setup.Placement;
import provingyard.setup.References;
import provingyard.setup.SetUp;
import provingyard.world.electric.Wiring;
import provingyard.world.hydraulics.Hands;
import provingyard.world.hydraulics.WaterFlows;
import provingyard.world.hydraulics.Waterworks;

/** The shipped service calls: sound documents, plumbing that works, and a complaint that holds in every deal. */
class ServiceCallSitesTest {

    private static final List<String> IDS =
            List.of("sedge-nook", "mallow-quad", "sumac-bend", "spikenard-rise", "lovage-mews", "mallow-fair");

    /** Usual bound against water hammer and wear, m/s (common practice, no source). */
    private static final double FASTEST = 1.5;

    private static final double GPM = 3.785411784e-3 / 60;
    private static final double MINUTE = 60;

    private static Scenario site(String id) {
        return read(id).orThrow();
    }

    private static Read<Scenario> read(String id) {
        Path file = Path.of("scenarios", id + ".json");
        try {
            return References.readWithSite(file.toString(), Files.readString(file));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"sedge-nook", "mallow-quad", "sumac-bend", "spikenard-rise", "lovage-mews", "mallow-fair"})
    void readsWithoutProblem(String id) {
        Read<Scenario> read = read(id);
        assertEquals(
                List.of(),
                read.problems().stream()
                        .filter(p -> p.severity() != Severity.NOTE)
                        .toList());
        assertEquals(id, read.orThrow().id());
        assertEquals(Work.SERVICE_CALL, read.orThrow().work());
    }

    @ParameterizedTest
    @ValueSource(strings = {"sedge-nook", "mallow-quad", "sumac-bend", "spikenard-rise", "lovage-mews", "mallow-fair"})
    void everyDealIsThereBeforeTheTechnician(String id) {
        Scenario site = site(id);
        FaultPlan.When arrives = site.call().arrives();
        assertTrue(arrives.day() >= 8 && arrives.day() <= 15, "arrives on day " + arrives.day());
        assertFalse(arrives.at().isBefore(LocalTime.of(8, 0)) || arrives.at().isAfter(LocalTime.of(10, 0)));
        List<List<Integer>> deals = site.call().deals();
        assertTrue(deals.size() >= 4);
        assertEquals(deals.size(), new HashSet<>(deals).size(), "no deal twice");
        Set<Integer> dealt = deals.stream().flatMap(List::stream).collect(Collectors.toSet());
        for (int i = 0; i < site.faults().size(); i++) {
            assertTrue(dealt.contains(i), "fault " + i + " is in a deal");
            assertTrue(minutes(site.faults().get(i).when(), arrives) > 0, "fault " + i + " began before");
        }
    }

    /** Minutes from one time of a season to another. */
    private static long minutes(FaultPlan.When from, FaultPlan.When to) {
        long days = to.day() - from.day();
        return days * 1440 + (to.at().toSecondOfDay() - from.at().toSecondOfDay()) / 60;
    }

    /** What is dealt is one of the things that can be suspected, so that it can be found and named. */
    @ParameterizedTest
    @ValueSource(strings = {"sedge-nook", "mallow-quad", "sumac-bend", "spikenard-rise", "lovage-mews", "mallow-fair"})
    void everyFaultCanBeSuspected(String id) {
        Scenario site = site(id);
        CallSite call = CallSite.of(site);
        Set<String> suspected = new HashSet<>();
        for (int i = 0; i < call.authored(0); i++) {
            suspected.add(call.repairClass(i));
        }
        for (int i = 0; i < site.faults().size(); i++) {
            String mended = call.repairClass(call.authored(i));
            assertTrue(suspected.contains(mended), mended);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"sedge-nook", "mallow-quad", "sumac-bend", "spikenard-rise", "lovage-mews", "mallow-fair"})
    void soundZonesHaveTheirPressureAndNoPipeIsTooFast(String id) {
        Scenario site = site(id);
        Waterworks pipes = Waterworks.of(site);
        List<String> wrong = new ArrayList<>();
        for (int z = 0; z < pipes.zones().size(); z++) {
            WaterFlows flows = flows(pipes, z, List.of());
            assertNull(flows.problem());
            for (int h = 0; h < flows.heads().length; h++) {
                Plumbing.Head head = site.plumbing().heads().get(h);
                if (head.zone().equals(pipes.zones().get(z))) {
                    Catalogue.Nozzle nozzle = nozzle(site, head.nozzle());
                    double pressure = flows.headPressures()[h];
                    if (pressure < nozzle.lowest() || pressure > nozzle.highest()) {
                        wrong.add(String.format("%s %s at %.0f psi", id, head.id(), pressure / 6894.76));
                    }
                }
            }
            for (Plumbing.Pipe pipe : site.plumbing().pipes()) {
                double bore = pipes.innerDiameter(pipe.id());
                double flow = flows.parts().get(pipe.id()).stream()
                        .mapToDouble(p -> Math.abs(p.flow()))
                        .max()
                        .orElse(0);
                double speed = flow / (Math.PI / 4 * bore * bore);
                if (speed > FASTEST) {
                    wrong.add(String.format("%s zone %d %s at %.2f m/s", id, z + 1, pipe.id(), speed));
                }
            }
        }
        assertEquals(List.of(), wrong);
    }

    private static Catalogue.Nozzle nozzle(Scenario site, String id) {
        return site.catalogue().nozzles().stream()
                .filter(n -> n.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** What flows with one zone open, or none for -1, as the controller would have it. */
    private static WaterFlows flows(Waterworks pipes, int zone, List<Integer> deal) {
        boolean[] open = new boolean[pipes.zones().size()];
        if (zone >= 0) {
            open[zone] = true;
        }
        return pipes.flows(open, zone >= 0 || pipes.masterOpenAtRest(), Hands.OFF, deal);
    }

    @ParameterizedTest
    @ValueSource(strings = {"sedge-nook", "mallow-quad", "sumac-bend", "spikenard-rise", "lovage-mews", "mallow-fair"})
    void pipesSolveInEveryDeal(String id) {
        Scenario site = site(id);
        Waterworks pipes = Waterworks.of(site);
        for (List<Integer> deal : site.call().deals()) {
            for (int z = -1; z < pipes.zones().size(); z++) {
                WaterFlows flows = flows(pipes, z, deal);
                assertNull(flows.problem(), id + " " + deal + " zone " + z);
                double out = IntStream.range(0, flows.heads().length)
                                .mapToDouble(h -> flows.heads()[h])
                                .sum()
                        + IntStream.range(0, flows.drips().length)
                                .mapToDouble(d -> flows.drips()[d])
                                .sum()
                        + flows.leaked();
                assertEquals(out, flows.supply(), 1e-9);
            }
        }
    }

    @Test
    void theFiveYardsArePlumbedInFiveWays() {
        assertEquals(Normally.CLOSED, master("sedge-nook"));
        assertEquals(3, count("sedge-nook", FittingKind.ISOLATION_VALVE));
        assertEquals(Normally.OPEN, master("sumac-bend"));
        assertEquals(1, flowSensors("sumac-bend"));
        assertEquals(2, flowSensors("lovage-mews"));
        assertTrue(count("lovage-mews", FittingKind.FILTER) >= 2);
        assertEquals(
                Plumbing.SupplyKind.PUMP,
                site("spikenard-rise").plumbing().supply().kind());
        Waterworks dead = Waterworks.of(site("spikenard-rise"));
        assertEquals(0, flows(dead, 4, List.of()).at("main-7", 5), 1e-9);
        // On the ring no single valve cuts a zone off; on the chain the first one cuts all off.
        for (String valve : List.of("iso-a", "iso-b", "iso-c", "iso-d")) {
            assertEquals(7, watered("mallow-quad", valve), valve);
        }
        assertEquals(0, watered("sedge-nook", "iso-a"));
        assertEquals(3, watered("sedge-nook", "iso-b"));
        assertEquals(4, watered("sedge-nook", "iso-c"));
    }

    private static Normally master(String id) {
        return site(id).plumbing().fittings().stream()
                .filter(f -> f.kind() == FittingKind.MASTER_VALVE)
                .findFirst()
                .orElseThrow()
                .normally();
    }

    private static long count(String id, FittingKind kind) {
        return site(id).plumbing().fittings().stream()
                .filter(f -> f.kind() == kind)
                .count();
    }

    private static long flowSensors(String id) {
        SetUp installed = References.textbook(site(id)).orElseThrow();
        return installed.sensors().stream()
                .filter(Placement.Flow.class::isInstance)
                .count();
    }

    /** How many zones still give water with a valve shut by hand. */
    private static long watered(String id, String valve) {
        Waterworks pipes = Waterworks.of(site(id));
        return IntStream.range(0, pipes.zones().size())
                .filter(z -> {
                    boolean[] open = new boolean[pipes.zones().size()];
                    open[z] = true;
                    Hands hands = Hands.of(List.of(), List.of(valve));
                    return pipes.flows(open, true, hands, List.of()).supply() > 1e-6;
                })
                .count();
    }

    @Test
    void theDryZoneGetsNoWaterAndTheOthersDo() {
        Scenario site = site("sedge-nook");
        Waterworks pipes = Waterworks.of(site);
        Wires wires = new Wires(site, Wiring.usual(site));
        for (List<Integer> deal : site.call().deals()) {
            for (int z = 0; z < pipes.zones().size(); z++) {
                String zone = pipes.zones().get(z);
                Set<String> drawn = wires.drawn(new Case(deal), zone, false);
                boolean waters = drawn.contains(zone)
                        && drawn.contains("master")
                        && flows(pipes, z, deal).zones()[z] > 1e-6;
                assertEquals(
                        !zone.equals("zone-4"),
                        waters,
                        site.faults().get(deal.get(0)).kind() + " " + zone);
            }
        }
    }

    /** Call 3 says: twice the month's use, no alarm. */
    @Test
    void theSilentMainDoublesTheUseAndStaysUnderTheAlarm() {
        Scenario site = site("sumac-bend");
        Waterworks pipes = Waterworks.of(site);
        double month = month(site, pipes);
        double alarm = 10 * GPM;
        for (List<Integer> deal : site.call().deals()) {
            FaultPlan fault = site.faults().get(deal.get(0));
            double lost = flows(pipes, -1, deal).leaked();
            double volume = lost * MINUTE * minutes(fault.when(), site.call().arrives());
            assertTrue(lost < alarm, fault.on() + " would alarm");
            assertEquals(1, volume / month, 0.3, fault.on() + " " + fault.along());
        }
    }

    /** m3 that the program takes in a month of 30 days. */
    private static double month(Scenario site, Waterworks pipes) {
        Schedule schedule = site.schedule();
        double once = 0;
        for (Schedule.ZoneRun run : schedule.zones()) {
            int z = pipes.zones().indexOf(run.zone());
            once += flows(pipes, z, List.of()).supply() * run.runs();
        }
        return once * schedule.seasonal() * 30 / schedule.every();
    }

    /** Call 4 says: no strength anywhere, and worst up the hill. */
    @Test
    void lowPressureIsEverywhereAndWorstUphill() {
        Scenario site = site("spikenard-rise");
        Waterworks pipes = Waterworks.of(site);
        for (List<Integer> deal : site.call().deals()) {
            String kind = site.faults().get(deal.get(0)).kind().name();
            for (int z = 0; z < 6; z++) {
                double share = pressure(site, pipes, z, deal) / pressure(site, pipes, z, List.of());
                assertTrue(share < 0.75 && share > 0.1, kind + " zone " + (z + 1) + " has " + share);
            }
            assertTrue(pressure(site, pipes, 4, deal) < pressure(site, pipes, 0, deal), kind);
        }
    }

    private static double pressure(Scenario site, Waterworks pipes, int zone, List<Integer> deal) {
        WaterFlows flows = flows(pipes, zone, deal);
        return IntStream.range(0, flows.heads().length)
                .filter(h -> site.plumbing()
                        .heads()
                        .get(h)
                        .zone()
                        .equals(pipes.zones().get(zone)))
                .mapToDouble(h -> flows.headPressures()[h])
                .average()
                .orElseThrow();
    }

    @Test
    void callsRiseInLevelAndSomeHaveNothingWrong() {
        List<Integer> levels = IDS.stream().map(id -> site(id).level()).toList();
        assertEquals(List.of(1, 2, 3, 3, 4, 5), levels);
        for (String id : IDS) {
            boolean none = site(id).call().deals().contains(List.<Integer>of());
            assertEquals(List.of("mallow-quad", "lovage-mews", "mallow-fair").contains(id), none, id);
            boolean twice = site(id).call().deals().stream().anyMatch(d -> d.size() == 2);
            assertEquals(id.equals("mallow-fair"), twice, id);
        }
        // A call on wires needs an electrical fault that only ohms can tell.
        assertTrue(site("sedge-nook").faults().stream().anyMatch(f -> f.kind() == Kind.WIRE_CUT));
    }

    @ParameterizedTest
    @ValueSource(strings = {"sedge-nook", "mallow-quad", "sumac-bend", "spikenard-rise", "lovage-mews", "mallow-fair"})
    void whatTheOwnerSawIsATestAndAnAnswerOfThisSite(String id) {
        CallSite ready = CallSite.of(site(id));
        for (ServiceCall.Seen seen : ready.scenario().call().seen()) {
            FieldTest test = ready.test(seen.test()).orElseThrow(() -> new AssertionError(seen.test()));
            if (test.measure() instanceof FieldTest.Measure.Answers answers) {
                assertTrue(
                        !seen.answers().isEmpty() && answers.keys().containsAll(seen.answers()),
                        seen.answers() + " of " + answers.keys());
            } else {
                assertTrue(seen.above() > 0, seen.test());
            }
        }
    }
}
