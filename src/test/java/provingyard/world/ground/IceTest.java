package provingyard.world.ground;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Walks freeze and thaw as they do outdoors. */
@Tag("unit")
class IceTest {

    private static final GroundCells WALK = Plots.of(0.6, 0, "ww", "ww");

    /** A night of ten hours under one sky, walks wetted with 1 mm half-way; ice in mm at its end. */
    private static double iceAfter(MinuteForcing night, double deepGround) {
        return afterNight(night, deepGround).iceMm(0);
    }

    private static Ground afterNight(MinuteForcing night, double deepGround) {
        Ground ground = new Ground(WALK, GroundSettings.usual(deepGround));
        for (int m = 0; m < 600; m++) {
            ground.step(night, m >= 300 && m < 310 ? Watering.of(Plots.filled(4, 1e-4)) : null);
        }
        return ground;
    }

    @Test
    void wetWalkFreezesOnAClearCalmNightWithTheAirAboveZero() {
        double ice = iceAfter(Plots.night(2.5, 0.5, 0.5, 0), 6);
        assertTrue(ice > 0.3, ice + " mm");
    }

    @Test
    void cloudOrWindKeepsItWet() {
        assertEquals(0, iceAfter(Plots.night(2.5, 0.5, 0.5, 1), 6), 0);
        assertEquals(0, iceAfter(Plots.night(2.5, 0.5, 8, 0), 6), 0);
    }

    @Test
    void coldSlabFreezesMore() {
        MinuteForcing night = Plots.night(2.5, 0.5, 1, 0.6);
        double cold = iceAfter(night, -4);
        double warm = iceAfter(night, 6);
        assertTrue(cold > warm + 0.2, cold + " against " + warm);
    }

    @Test
    void iceMeltsAfterSunrise() {
        Ground ground = afterNight(Plots.night(-2, -5, 0.5, 0), 3);
        assertTrue(ground.iceMm(0) > 0.5);
        MinuteForcing morning = new MinuteForcing(0, 0, 3, -3, 1, 350, 0, 25, 150);
        for (int m = 0; m < 240; m++) {
            ground.step(morning, null);
        }
        assertEquals(0, ground.iceMm(0), 0);
        assertTrue(ground.surfaceTemperature(0) > 0);
    }

    @Test
    void onlyIceFromWateringIcesAWalk() {
        MinuteForcing night = Plots.night(-2, -3, 0.5, 0);
        Ground watered = afterNight(night, 3);
        Ground twin = new Ground(WALK, GroundSettings.usual(3));
        for (int m = 0; m < 600; m++) {
            twin.step(night, null);
        }
        int walk = WALK.surface()[0];
        assertEquals(4 * 0.36, watered.icedArea(walk, twin.frost()), 1e-12);
        assertEquals(0, twin.icedArea(walk, watered.frost()), 0);
        assertEquals(0, watered.icedArea(walk + 1, twin.frost()), 0);
        assertTrue(watered.irrigationIceMm(0, twin.frost()) <= watered.iceMm(0));
    }

    @Test
    void onlyCellsThatAreIcedCount() {
        Ground ground = new Ground(WALK, GroundSettings.usual(-3));
        MinuteForcing night = Plots.night(-3, -5, 1, 0);
        Ground twin = ground.copy();
        for (int m = 0; m < 200; m++) {
            ground.step(night, m < 10 ? Watering.of(new double[] {1e-4, 1e-4, 0, 0}) : null);
            twin.step(night, null);
        }
        int walk = WALK.surface()[0];
        assertEquals(0.72, ground.icedArea(walk, twin.frost()), 1e-12);
    }

    @Test
    void filmIsHeldToItsLimitAndDriesInTheSun() {
        Ground ground = new Ground(WALK, GroundSettings.usual(12));
        for (int m = 0; m < 20; m++) {
            ground.step(Plots.day(18, 0, 0), Watering.of(Plots.filled(4, 2e-4)));
        }
        assertTrue(ground.filmMm(0) > 0.9 && ground.filmMm(0) <= 1.0 + 1e-9, ground.filmMm(0) + " mm");
        assertTrue(ground.totals().runoff() > 0.5 * 4 * 0.36 * 0.003);
        for (int m = 0; m < 300; m++) {
            ground.step(Plots.day(18, 500, 0), null);
        }
        assertEquals(0, ground.filmMm(0), 0);
        assertTrue(ground.totals().walkEvaporation() > 0.9 * 4 * 0.36 * 0.001);
    }
}
