package provingyard.world.electric;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import provingyard.TestYards;
import provingyard.scenario.Plumbing;
import provingyard.scenario.Plumbing.Fitting;
import provingyard.scenario.Plumbing.FittingKind;
import provingyard.scenario.Point;
import provingyard.scenario.Scenario;
import provingyard.scenario.Sites;

/** The wiring that a plan without one gets. */
class UsualWiringTest {

    private static Fitting fitting(String id, FittingKind kind, double along) {
        return new Fitting(id, kind, null, "main", along, 0.0254, 2, 0, 0, null);
    }

    private static TestYards yard(Double given) {
        List<Fitting> fittings = List.of(
                fitting("master", FittingKind.MASTER_VALVE, 2),
                fitting("far", FittingKind.ZONE_VALVE, 24),
                fitting("near", FittingKind.ZONE_VALVE, 10),
                fitting("beside", FittingKind.ZONE_VALVE, 10.5),
                fitting("filter", FittingKind.FILTER, 3));
        return TestYards.lawn(40, 40)
                .plumbing(new Plumbing(
                        Plumbing.Friction.HAZEN_WILLIAMS,
                        new Plumbing.Supply(Plumbing.SupplyKind.FIXED, "poc", 400_000, List.of()),
                        List.of(
                                new Plumbing.Junction("poc", new Point(10, 5), 0),
                                new Plumbing.Junction("end", new Point(30, 25), 0)),
                        List.of(new Plumbing.Pipe(
                                "main", "poc", "end", 0.0254, "any", List.of(new Point(30, 5)), given, 0)),
                        fittings,
                        List.of(),
                        List.of()));
    }

    @Test
    @Tag("unit")
    void theControllerHangsOnTheNearestWall() {
        Scenario house = yard(null)
                .building("far-house", 30, 30, 35, 35, 4, 0.5, true)
                .building("house", 4, 9, 20, 20, 4, 0.5, true)
                .fence("fence", 0, 6, 40, 6, 2)
                .scenario();
        assertEquals(new Point(10, 9), UsualWiring.controller(house));
        assertEquals(new Point(10, 5), UsualWiring.controller(yard(null).scenario()), "no building");
    }

    @Test
    @Tag("unit")
    void boxesStandAtTheValvesInTheOrderOfTheirDistance() {
        Wiring w = Wiring.usual(yard(null).scenario(), new Point(10, 5));
        assertEquals(3, w.boxes().size());
        assertEquals(new Point(12, 5), w.boxes().get(0).at());
        assertEquals(new Point(20, 5), w.boxes().get(1).at());
        assertEquals(new Point(30, 9), w.boxes().get(2).at());
        assertEquals(1.5 + 1.1 * 2, w.boxes().get(0).metres(), 1e-12);
        assertEquals(1.5 + 1.1 * 10, w.boxes().get(1).metres(), 1e-12);
        assertEquals(1.5 + 1.1 * (10 + Math.sqrt(116)), w.length(Wiring.COMMON), 1e-12);
        assertEquals("MV", w.wire("master").terminal());
        assertEquals("1", w.wire("far").terminal(), "zones are counted in the document's order");
        assertEquals("2", w.wire("near").terminal());
        assertEquals("3", w.wire("beside").terminal());
        assertEquals("box-2", w.wire("near").box());
        assertEquals("box-2", w.wire("beside").box(), "half a metre apart, one box");
    }

    @Test
    @Tag("unit")
    void aGivenLengthIsScaledToTheDrawnWay() {
        Wiring w = Wiring.usual(yard(80.0).scenario(), new Point(10, 5));
        assertEquals(new Point(22, 5), w.box(w.wire("far").box()).at());
    }

    @Test
    void everyShippedSiteRunsOnItsUsualWiring() {
        List<Sites.Site> shipped =
                Sites.list().stream().filter(Sites.Site::shipped).toList();
        assertTrue(shipped.size() >= 5);
        for (Sites.Site listed : shipped) {
            String id = listed.id();
            Scenario site = Sites.open(id).orThrow();
            Wiring w = Wiring.usual(site);
            long zones = site.plumbing().fittings().stream()
                    .filter(f -> f.kind() == FittingKind.ZONE_VALVE)
                    .count();
            assertTrue(zones > 0);
            assertEquals(zones + 1, w.outputs().size(), id);
            LiveReadings.drawnByOutput(w, Conditions.DRY).forEach((terminal, drawn) -> {
                assertEquals(1, drawn.size(), id + " terminal " + terminal);
                double ohms = new OhmReadings(w, Conditions.DRY).toCommon(terminal);
                assertTrue(ohms > 30 && ohms < 40, id + " reads " + ohms);
            });
            LiveReadings both = LiveReadings.of(w, Conditions.DRY, Panel.running("1", Output.MASTER));
            assertEquals(LiveReadings.Fuse.HOLDS, both.fuse());
            assertEquals(2, both.drawn().size());
            assertEquals(
                    Set.of(),
                    LiveReadings.of(w, Conditions.DRY, Panel.running()).drawn());
        }
    }
}
