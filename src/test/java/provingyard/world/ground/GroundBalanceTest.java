package provingyard.world.ground;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Water is kept: on random yards, in random weather, with random watering. */
class GroundBalanceTest {

    private static final String LETTERS = "llccssbbwwwddr";

    @Property(tries = 60)
    void balanceClosesAndNoStoreIsNegative(@ForAll @LongRange(min = 0, max = 1L << 40) long seed) {
        Random random = new Random(seed);
        GroundCells cells = randomPlot(random);
        Ground ground = new Ground(cells, new GroundSettings(0.8, 5, 10, random.nextDouble()));
        double before = ground.store();
        double cold = random.nextDouble() * 25 - 8;
        for (int minute = 0; minute < 2000; minute++) {
            boolean rains = minute / 90 % 5 == 1 && random.nextBoolean();
            Watering landed = minute / 30 % 7 == 2 ? Watering.of(sprinkle(cells, random)) : null;
            ground.step(weather(minute, cold, rains ? random.nextDouble() * 60 : 0), landed);
        }
        Totals totals = ground.totals();
        double handled = totals.rain() + totals.irrigation() + before;
        assertEquals(0, totals.residual(before) / handled, 1e-12);
        assertTrue(totals.rain() > 0 && totals.irrigation() > 0);
        for (int c = 0; c < cells.count(); c++) {
            assertTrue(ground.soilWater(c) >= 0 && ground.pond(c) >= 0, "soil " + c);
            assertTrue(ground.filmMm(c) >= 0 && ground.iceMm(c) >= 0, "pavement " + c);
            assertTrue(ground.ks(c) >= 0 && ground.ks(c) <= 1);
        }
    }

    private static GroundCells randomPlot(Random random) {
        String[] rows = new String[2 + random.nextInt(5)];
        int nx = 2 + random.nextInt(5);
        for (int r = 0; r < rows.length; r++) {
            StringBuilder row = new StringBuilder();
            for (int x = 0; x < nx; x++) {
                row.append(LETTERS.charAt(random.nextInt(LETTERS.length())));
            }
            rows[r] = row.toString();
        }
        GroundCells cells = Plots.of(0.6, random.nextDouble() * 0.1, rows);
        for (int c = 0; c < cells.count(); c++) {
            cells.rainShare()[c] = random.nextInt(4) == 0 ? random.nextDouble() : 1;
            cells.hollow()[c] = random.nextInt(6) == 0 ? random.nextDouble() : 0;
            cells.skyView()[c] = 0.4 + 0.6 * random.nextDouble();
        }
        return cells;
    }

    private static double[] sprinkle(GroundCells cells, Random random) {
        double[] landed = new double[cells.count()];
        for (int c = 0; c < landed.length; c++) {
            landed[c] = random.nextInt(3) == 0 ? 0 : random.nextDouble() * 1e-3;
        }
        return landed;
    }

    private static MinuteForcing weather(int minute, double cold, double rain) {
        double hour = minute / 60.0 % 24;
        double sun = Math.max(0, 600 * (1 - Math.abs(hour - 12) / 6));
        double air = cold + 4 * (1 - Math.abs(hour - 14) / 12);
        return new MinuteForcing(rain / 60e3, sun * 1e-8, air, air - 2, hour % 5, sun, hour / 24, sun / 10, 15 * hour);
    }

    @Tag("unit")
    @Test
    void copyLivesOnAlikeAndApart() {
        Ground ground = new Ground(Plots.of(0.6, 0.03, "llww", "ccbb", "wwss"), GroundSettings.usual(4));
        double[] landed = Plots.filled(12, 3e-4);
        for (int m = 0; m < 500; m++) {
            ground.step(weather(m, -3, m % 100 < 20 ? 5 : 0), m % 60 < 10 ? Watering.of(landed) : null);
        }
        Ground copy = ground.copy();
        for (int m = 500; m < 1500; m++) {
            ground.step(weather(m, -3, m % 100 < 20 ? 5 : 0), m % 60 < 10 ? Watering.of(landed) : null);
        }
        assertEquals(500, copy.minute());
        for (int m = 500; m < 1500; m++) {
            copy.step(weather(m, -3, m % 100 < 20 ? 5 : 0), m % 60 < 10 ? Watering.of(landed) : null);
        }
        assertEquals(ground.totals(), copy.totals());
        assertTrue(Arrays.equals(ground.cells().rainShare(), copy.cells().rainShare()));
    }

    @Tag("unit")
    @Test
    void roofRainLeavesWithItsBeat() {
        Ground ground = new Ground(Plots.of(1, 0, "rr"), GroundSettings.usual(4));
        for (int m = 0; m < 5; m++) {
            ground.step(Plots.rained(Plots.day(15, 0, 3), 60), null);
        }
        assertEquals(0.01, ground.totals().rain(), 1e-15);
        assertEquals(0.01, ground.totals().runoff(), 1e-15);
    }

    @Tag("unit")
    @Test
    void rainThatFallsBetweenTwoBeatsIsNowhereYet() {
        Ground ground = new Ground(Plots.of(1, 0, "rr"), GroundSettings.usual(4));
        double before = ground.store();
        ground.step(Plots.rained(Plots.day(15, 0, 3), 60), null);
        assertEquals(0, ground.totals().rain());
        assertEquals(before, ground.store());
    }
}
