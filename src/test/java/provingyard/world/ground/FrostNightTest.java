package provingyard.world.ground;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A whole frosty night and the day after it, from a mild evening to the next afternoon. */
class FrostNightTest {

    private static final GroundCells WALK = Plots.of(0.6, 0, "ww", "ww");
    private static final int SUNRISE = 13 * 60;
    private static final int EVENING = 23 * 60;
    private static final int WATERED_AT = 10 * 60;

    /** Minute of a night that begins at 18:00 at 8 °C and falls to a low at sunrise, then warms in the sun and a breeze of 2 m/s. */
    private static MinuteForcing minute(int m, double low, double wind, double cloud) {
        double night = Math.min(1, m / (double) SUNRISE);
        double morning = Math.min(1, Math.max(0, m - SUNRISE) / 300.0);
        double breeze = wind + 2 * morning;
        double air = 8 + (low - 8) * Math.sqrt(night) + 6 * morning;
        double sun = (1 - 0.75 * cloud) * 450 * morning;
        return new MinuteForcing(0, 0, air, low - 2, breeze, sun, cloud, m < SUNRISE ? -20 : 35 * morning, 120);
    }

    /** What one night did to a walk that was watered with 1 mm four in the morning. */
    private record Night(
            double lowestAir, double mostIce, int firstIce, int lastIce, double airAtFirstIce, Ground end) {}

    private static Night night(double low, double wind, double cloud) {
        Ground ground = new Ground(WALK, GroundSettings.usual(6));
        double lowestAir = Double.POSITIVE_INFINITY;
        double mostIce = 0;
        double airAtFirstIce = Double.NaN;
        int first = -1;
        int last = -1;
        for (int m = 0; m < EVENING; m++) {
            MinuteForcing now = minute(m, low, wind, cloud);
            ground.step(now, m >= WATERED_AT && m < WATERED_AT + 10 ? Watering.of(Plots.filled(4, 1e-4)) : null);
            lowestAir = Math.min(lowestAir, now.air());
            mostIce = Math.max(mostIce, ground.iceMm(0));
            if (ground.iceMm(0) >= 0.1) {
                airAtFirstIce = first < 0 ? now.air() : airAtFirstIce;
                first = first < 0 ? m : first;
                last = m;
            }
        }
        return new Night(lowestAir, mostIce, first, last, airAtFirstIce, ground);
    }

    @Tag("unit")
    @Test
    void aClearCalmNightIcesTheWateredWalkWhileTheAirIsAboveFreezing() {
        Night clear = night(1.5, 0.5, 0);
        assertTrue(clear.lowestAir() > 0 && clear.airAtFirstIce() > 1.5, clear.toString());
        assertTrue(clear.mostIce() > 0.3, clear.toString());
        assertTrue(clear.firstIce() > WATERED_AT && clear.firstIce() < SUNRISE, clear.toString());
    }

    @Tag("unit")
    @Test
    void theSameWalkUnderCloudOrInWindDoesNotIce() {
        assertEquals(0, night(1.5, 0.5, 1).mostIce(), 0, "cloud");
        Night windy = night(1.5, 8, 0);
        assertTrue(windy.firstIce() < 0, "less than the 0.1 mm from which a walk counts as iced: " + windy);
    }

    @Tag("unit")
    @Test
    void iceMeltsAfterSunriseAndTheWalkDries() {
        Night clear = night(1.5, 0.5, 0);
        assertTrue(clear.lastIce() > SUNRISE && clear.lastIce() < SUNRISE + 180, clear.toString());
        assertEquals(0, clear.end().iceMm(0), 0);
        assertEquals(0, clear.end().filmMm(0), 0);
        assertTrue(clear.end().totals().walkEvaporation() > 0);
    }

    @Tag("unit")
    @Test
    void aHarderFrostIcesEarlierAndLastsLonger() {
        Night mild = night(1.5, 0.5, 0);
        Night hard = night(-3, 0.5, 0);
        assertTrue(hard.firstIce() < mild.firstIce(), hard + " against " + mild);
        assertTrue(hard.lastIce() > mild.lastIce(), hard + " against " + mild);
    }

    /** Freezing and melting only turn film into ice and back: the walk loses what evaporates and what runs off. */
    @Property(tries = 80, shrinking = ShrinkingMode.OFF)
    void filmAndIceTogetherAreConserved(@ForAll @LongRange(min = 0, max = 1L << 40) long seed) {
        Random random = new Random(seed);
        double low = -8 + 12 * random.nextDouble();
        double wind = 4 * random.nextDouble();
        double cloud = random.nextDouble();
        int waters = random.nextInt(SUNRISE);
        double depth = 2e-4 * random.nextDouble();
        Ground ground = new Ground(Plots.of(0.6, 0, "wwd", "dww"), GroundSettings.usual(4));
        for (int m = 0; m < EVENING; m++) {
            Totals before = ground.totals();
            ground.step(
                    minute(m, low, wind, cloud),
                    m >= waters && m < waters + 10 ? Watering.of(Plots.filled(6, depth)) : null);
            Totals after = ground.totals();
            double came = after.irrigation() - before.irrigation();
            double left = after.walkEvaporation() - before.walkEvaporation() + after.runoff() - before.runoff();
            assertEquals(came - left, after.store() - before.store(), 1e-15, "minute " + m);
            for (int c = 0; c < 6; c++) {
                assertTrue(ground.filmMm(c) >= 0 && ground.iceMm(c) >= 0, "minute " + m);
            }
        }
    }
}
