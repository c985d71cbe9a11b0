package provingyard.world.ground;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Soil, runoff and plants behave as irrigators know them. */
@Tag("unit")
class SoilBehaviourTest {

    private static final MinuteForcing STILL = Plots.day(20, 0, 0);

    /** Waters a plot in runs of so many minutes with pauses, at 40 mm/h, and lets it rest to three hours in all. */
    private static Ground watered(GroundCells cells, int runs, int run, int pause) {
        Ground ground = new Ground(cells, new GroundSettings(0.8, 15, 10, 0.5));
        double[] landed = Plots.filled(cells.count(), 0.040 / 60);
        for (int r = 0; r < runs; r++) {
            for (int m = 0; m < run; m++) {
                ground.step(STILL, Watering.of(landed));
            }
            for (int m = 0; m < pause; m++) {
                ground.step(STILL, null);
            }
        }
        return ground;
    }

    @Test
    void cycleAndSoakRunsOffLessOnAClaySlope() {
        GroundCells slope = Plots.of(0.6, 0.08, "c", "c", "c", "c");
        double once = watered(slope, 1, 24, 180).totals().runoff();
        double soaked = watered(slope, 4, 6, 45).totals().runoff();
        assertTrue(once > 0.1 * 4 * 0.36 * 0.016, "one run loses over a tenth: " + once);
        assertTrue(soaked < 0.7 * once, soaked + " against " + once);
    }

    @Test
    void pauseRestoresIntakeByRedistributionAlone() {
        GroundCells flat = Plots.of(0.6, 0, "c");
        Ground ground = new Ground(flat, new GroundSettings(0.8, 15, 10, 0.5));
        double[] flood = {0.01};
        double first = soaked(ground, flood);
        for (int m = 0; m < 5; m++) {
            ground.step(STILL, Watering.of(flood));
        }
        double late = soaked(ground, flood);
        Ground rested = ground.copy();
        while (rested.pond(0) > 0) {
            rested.step(STILL, null);
        }
        for (int m = 0; m < 60; m++) {
            rested.step(STILL, null);
        }
        double again = soaked(rested, flood);
        assertTrue(late < 0.5 * first, late + " against " + first);
        assertTrue(again > 1.3 * late && again < first, again + " between " + late + " and " + first);
    }

    private static double soaked(Ground ground, double[] landed) {
        double before = ground.soilWater(0);
        ground.step(STILL, Watering.of(landed));
        return ground.soilWater(0) - before;
    }

    @Test
    void sandTakesInWhatClayLoses() {
        double sand = watered(Plots.of(0.6, 0.05, "s", "s"), 1, 20, 30).totals().runoff();
        double clay = watered(Plots.of(0.6, 0.05, "c", "c"), 1, 20, 30).totals().runoff();
        assertEquals(0, sand, 0);
        assertTrue(clay > 0);
    }

    @Test
    void runOnSoaksInOnLowerGround() {
        GroundCells cells = Plots.of(0.6, 0.05, "c", "s");
        Ground ground = new Ground(cells, new GroundSettings(0.8, 15, 10, 0.5));
        for (int m = 0; m < 20; m++) {
            ground.step(STILL, Watering.of(new double[] {0, 0.001}));
        }
        assertEquals(0, ground.totals().runoff(), 0);
        assertTrue(ground.soilWater(0) > new Ground(cells, new GroundSettings(0.8, 15, 10, 0.5)).soilWater(0) + 1e-3);
    }

    @Test
    void waterOverFieldCapacityFallsToATenthInTheDrainageTime() {
        Ground ground = new Ground(Plots.of(1, 0, "l"), new GroundSettings(0.8, 15, 10, 1));
        double field = ground.soilWater(0);
        for (int m = 0; m < 180; m++) {
            ground.step(STILL, Watering.of(new double[] {5e-5}));
        }
        double drainedBefore = ground.totals().percolation();
        double over = ground.soilWater(0) - field;
        for (int m = 0; m < 1440; m++) {
            ground.step(STILL, null);
        }
        assertEquals(0.1, (ground.soilWater(0) - field) / over, 0.02);
        assertEquals(field + over - ground.soilWater(0), ground.totals().percolation() - drainedBefore, 1e-12);
    }

    @Test
    void plantsDryStressAndDie() {
        Ground ground = new Ground(Plots.of(1, 0, "l"), new GroundSettings(0.8, 15, 10, 1));
        double lastKs = 1;
        for (int day = 0; day < 40; day++) {
            for (int m = 0; m < 1440; m++) {
                ground.step(Plots.day(28, 300, 7), null);
            }
            assertTrue(ground.ks(0) <= lastKs);
            lastKs = ground.ks(0);
            if (day == 1) {
                assertEquals(0, ground.dryAreaDays(), 0);
                assertFalse(ground.dead(0));
            }
        }
        assertTrue(lastKs < 0.1 && ground.dryAreaDays() > 3, lastKs + ", " + ground.dryAreaDays());
        assertEquals(1, ground.deadArea(), 0);
        assertTrue(ground.refillVolume(
                        new Ground(ground.cells(), new GroundSettings(0.8, 15, 10, 1)), new boolean[] {true})
                > 0.02);
    }

    @Test
    void aShallowProbeSeesTheWettingFrontBeforeADeepOne() {
        Ground ground = new Ground(Plots.of(1, 0, "l"), new GroundSettings(0.8, 15, 10, 0.2));
        double before = ground.waterContent(0, 0.05);
        for (int m = 0; m < 30; m++) {
            ground.step(STILL, Watering.of(new double[] {0.0003}));
        }
        double shallow = ground.waterContent(0, 0.02);
        double deep = ground.waterContent(0, 0.2);
        assertTrue(shallow > before + 0.1 && deep < before + 0.02, shallow + ", " + deep + " from " + before);
        for (int m = 0; m < 600; m++) {
            ground.step(STILL, null);
        }
        assertTrue(ground.waterContent(0, 0.02) < shallow - 0.05, "the front thins in the pause");
    }
}
