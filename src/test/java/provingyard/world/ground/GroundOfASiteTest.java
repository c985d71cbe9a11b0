package provingyard.world.ground;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import provingyard.scenario.Scenario;
import provingyard.scenario.ScenarioReader;
import provingyard.scenario.Sites;
import provingyard.world.yard.Yard;

/** The ground and the heads of a shipped site. */
class GroundOfASiteTest {

    private static GroundCells cells;
    private static Sprinklers heads;

    @BeforeAll
    static void read() throws IOException {
        String file = "scenarios/quillback-clinic.json";
        try (InputStream in = Sites.resource(file)) {
            Scenario site = ScenarioReader.read(file, new String(in.readAllBytes(), StandardCharsets.UTF_8))
                    .orThrow();
            cells = GroundCells.of(Yard.of(site), site.catalogue());
            heads = new Sprinklers(site.plumbing(), site.catalogue(), cells);
        }
    }

    @Test
    void shadeSetsPlantedCellsApart() {
        double[] shares = IntStream.range(0, cells.count())
                .filter(cells::planted)
                .mapToDouble(cells::sunShare)
                .sorted()
                .toArray();
        assertTrue(shares[0] < 0.6 && shares[shares.length - 1] > 0.9, shares[0] + " to " + shares[shares.length - 1]);
        assertTrue(shares[0] >= 0 && shares[shares.length - 1] <= 1);
    }

    @Test
    void pavedCellsFallIntoFewExposureClasses() {
        Pavement pavement = new Pavement(cells, 9);
        assertTrue(pavement.classCount() > 5 && pavement.classCount() < 100, pavement.classCount() + " classes");
        assertTrue(pavement.count > 10 * pavement.classCount(), pavement.count + " cells");
    }

    @Test
    void everyHeadWatersPlantsAndTheBooksClose() {
        Watering landed = Watering.none(cells.count());
        SprayFate fate = new SprayFate();
        SprayAir air = new SprayAir(3, 300, 70, -10);
        for (int h = 0; h < heads.heads(); h++) {
            double before = fate.onPlants();
            heads.spray(h, 0.01, 250e3, air, landed, fate);
            assertTrue(fate.onPlants() > before, "head " + h);
        }
        double ground =
                IntStream.range(0, cells.count()).mapToDouble(landed::depth).sum() * cells.area();
        assertEquals(0.01 * heads.heads(), fate.supplied(), 1e-12);
        assertEquals(fate.supplied(), fate.drift() + fate.offSite() + ground, 1e-12);
        assertTrue(fate.overspray() < 0.4 * fate.supplied(), "overspray " + fate.overspray());
    }

    @Test
    void threeWateredNightsCloseTheirBalance() {
        Ground ground = new Ground(cells, GroundSettings.usual(9));
        double before = ground.store();
        SprayAir air = new SprayAir(1, 300, 80, -10);
        SprayFate fate = new SprayFate();
        for (int m = 0; m < 3 * 1440; m++) {
            boolean runs = m % 1440 >= 300 && m % 1440 < 320;
            Watering landed = runs ? Watering.none(cells.count()) : null;
            for (int h = 0; runs && h < heads.heads(); h++) {
                heads.spray(h, 0.004, 220e3, air, landed, fate);
            }
            ground.step(Plots.night(2, 0, 0.5, 0), landed);
        }
        Totals totals = ground.totals();
        assertEquals(fate.supplied() - fate.drift() - fate.offSite(), totals.irrigation(), 1e-9);
        assertEquals(0, totals.residual(before) / totals.irrigation(), 1e-11);
        assertTrue(totals.store() > before);
    }

    /** Passing only the places that water reached gives the same bits as passing all of them. */
    @Test
    void placesThatNoWaterReachesNeedNoLook() {
        Ground some = new Ground(cells, GroundSettings.usual(9));
        Ground all = some.copy();
        SprayAir air = new SprayAir(2, 200, 80, 30);
        for (int m = 0; m < 400; m++) {
            Watering landed = m < 60 || m % 37 == 0 ? Watering.none(cells.count()) : null;
            for (int h = 0; landed != null && h < heads.heads(); h += 1 + m % 3) {
                heads.spray(h, 0.01, 220e3, air, landed, new SprayFate());
            }
            double[] depth = landed == null
                    ? null
                    : IntStream.range(0, cells.count())
                            .mapToDouble(landed::depth)
                            .toArray();
            some.step(Plots.night(2, 0, 0.5, 0), landed);
            all.step(Plots.night(2, 0, 0.5, 0), depth == null ? null : Watering.of(depth));
        }
        assertTrue(some.totals().runoff() > 0, "water ran");
        assertEquals(all.totals(), some.totals());
    }
}
