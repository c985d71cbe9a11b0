package provingyard.world.ground;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Single steps of the ground against numbers worked by hand from its laws. */
@Tag("unit")
class GroundLawsTest {

    private static final MinuteForcing STILL = Plots.day(20, 0, 0);

    /** Available water of loam under turf in m: (0.27 - 0.12) x 0.25. */
    private static final double AVAILABLE = 0.0375;

    private static Ground ground(double wetness, String... rows) {
        return new Ground(Plots.of(1, 0, rows), new GroundSettings(0.8, 15, 10, wetness));
    }

    private static void pass(Ground ground, MinuteForcing weather, int minutes) {
        for (int m = 0; m < minutes; m++) {
            ground.step(weather, null);
        }
    }

    private static Watering water(double... depths) {
        return Watering.of(depths);
    }

    @Test
    void plantsDrawByTheHourWhatTheirCoefficientSays() {
        Ground ground = ground(1, "l");
        MinuteForcing day = Plots.day(20, 0, 4.8);
        pass(ground, day, 59);
        assertEquals(0, ground.totals().evapotranspiration());
        double before = ground.soilWater(0);
        pass(ground, day, 1);
        // 4.8 mm a day are 0.2 mm an hour, times 0.9 for turf.
        assertEquals(0.18e-3, ground.totals().evapotranspiration(), 1e-15);
        assertEquals(before - 0.18e-3, ground.soilWater(0), 1e-15);
        assertEquals(60, ground.minute());
    }

    @Test
    void withinAnHourOfWaterTheBeatIsHalfAnHour() {
        Ground ground = ground(0.5, "l");
        MinuteForcing day = Plots.day(20, 0, 4.8);
        ground.step(day, water(1e-5));
        StringBuilder beats = new StringBuilder();
        double last = 0;
        for (int minute = 2; minute <= 200; minute++) {
            ground.step(day, null);
            double gone = ground.totals().evapotranspiration();
            if (gone > last) {
                beats.append(minute).append(' ');
            }
            last = gone;
        }
        assertEquals("30 60 120 180 ", beats.toString());
    }

    @Test
    void shadeHalvesWhatPlantsDraw() {
        GroundCells cells = Plots.of(1, 0, "ll");
        for (int b = 0; b < GroundCells.BEARINGS; b++) {
            cells.horizon()[b] = 90;
            cells.horizon()[GroundCells.BEARINGS + b] = 30;
        }
        Ground ground = new Ground(cells, new GroundSettings(0.8, 15, 10, 1));
        double full = ground.soilWater(0);
        pass(ground, Plots.day(20, 0, 4.8), 60);
        assertEquals(0.09e-3, full - ground.soilWater(0), 1e-15);
        // A horizon at 30 degrees leaves half of the sun's paths, so three quarters of the draw.
        assertEquals(0.135e-3, full - ground.soilWater(1), 1e-15);
    }

    @Test
    void stressGrowsBeyondTheAllowedDepletion() {
        // FAO-56 table 22: p = 0.4 + 0.04 (5 - 0.9 x 4) = 0.456 at 4 mm a day; Ks = left share / (1 - p).
        assertEquals(0.3 / 0.544, ground(0.3, "l").ks(0), 1e-12);
        assertEquals(1, ground(0.6, "l").ks(0));
        assertEquals(0, ground(0, "l").ks(0));
        assertEquals(1, ground(0.1, "w").ks(0));
        // Shrubs: p = 0.5 + 0.04 (5 - 2) = 0.62.
        assertEquals(0.2 / 0.38, ground(0.2, "b").ks(0), 1e-12);
    }

    @Test
    void stressedPlantsDrawLess() {
        Ground ground = ground(0.3, "l");
        double reference = 0.2e-3;
        pass(ground, Plots.day(20, 0, 4.8), 60);
        // The mean of the day has moved a 24th of the way from 4 to 4.8 mm.
        double p = 0.4 + 0.04 * (5 - 0.9 * (4 + 0.8 / 24));
        assertEquals(reference * 0.9 * 0.3 / (1 - p), ground.totals().evapotranspiration(), 1e-12);
    }

    @Test
    void contentsAndSharesAreThoseOfTheStore() {
        Ground ground = ground(0.3, "lw", "cr");
        // Rows are drawn from the north: cells 0 and 1 are clay and roof, 2 and 3 loam and walk.
        assertEquals(0.12 + 0.3 * 0.15, ground.waterContent(2, 0.1), 1e-12);
        assertEquals((0.24 + 0.3 * 0.14) * 0.25, ground.soilWater(0), 1e-12);
        assertEquals(0.3, ground.wetness(2), 1e-12);
        assertEquals(0.3, ground.meanWetness(), 1e-12);
        for (int none : new int[] {1, 3}) {
            assertTrue(Double.isNaN(ground.waterContent(none, 0.1)));
            assertEquals(0, ground.wetness(none));
            assertEquals(0, ground.soilWater(none));
            assertEquals(0, ground.pond(none));
            assertFalse(ground.dead(none));
        }
        assertEquals(0, ground(0.3, "w").meanWetness());
        assertTrue(Double.isNaN(ground.surfaceTemperature(2)));
        assertEquals(0, ground.filmMm(2));
        assertEquals(0, ground.iceMm(2));
        assertEquals(ground.soilWater(0) + ground.soilWater(2), ground.flows().soil(), 1e-12);
        assertEquals(ground.flows().soil(), ground.store(), 1e-12);
    }

    @Test
    void rainThatRoofsAndCrownsKeepOffRunsOffAtOnce() {
        GroundCells cells = Plots.of(2, 0, "lr");
        cells.rainShare()[0] = 0.25;
        Ground ground = new Ground(cells, new GroundSettings(0.8, 15, 10, 0.5));
        double before = ground.soilWater(0);
        pass(ground, Plots.rained(STILL, 12), 5);
        // 1 mm on two cells of 4 m2; all of it off the roof and three quarters off the crown.
        assertEquals(0.008, ground.totals().rain(), 1e-15);
        assertEquals(0.004 + 0.003, ground.totals().runoff(), 1e-15);
        assertEquals(0.25e-3, ground.soilWater(0) - before, 1e-15);
    }

    @Test
    void irrigationOnARoofRunsOff() {
        Ground ground = ground(0.5, "r");
        ground.step(STILL, water(0.002));
        assertEquals(0.002, ground.totals().irrigation(), 1e-15);
        assertEquals(0.002, ground.totals().runoff(), 1e-15);
        assertEquals(0, ground.totals().residual(0), 1e-15);
    }

    @Test
    void pavingHoldsItsFilmAndAHollowMore() {
        Ground ground = ground(0.5, "w");
        pass(ground, Plots.rained(STILL, 60), 5);
        assertEquals(1, ground.filmMm(0), 1e-3);
        assertEquals(0.004, ground.totals().runoff(), 1e-5);
        GroundCells cells = Plots.of(1, 0, "w");
        cells.hollow()[0] = 0.1;
        Ground hollow = new Ground(cells, new GroundSettings(0.8, 15, 10, 0.5));
        pass(hollow, Plots.rained(STILL, 60), 5);
        // 1 mm and a tenth of 30 mm.
        assertEquals(4, hollow.filmMm(0), 1e-3);
    }

    @Test
    void plantedGroundHoldsThreeMillimetresAndLessOnASlope() {
        assertEquals(0.003, pondAfterFlood(0, 0), 1e-12);
        assertEquals(0.0015, pondAfterFlood(0.05, 0), 1e-12);
        assertEquals(0.018, pondAfterFlood(0, 0.5), 1e-12);
    }

    private static double pondAfterFlood(double grade, double hollow) {
        GroundCells cells = Plots.of(1, grade, "c");
        cells.hollow()[0] = hollow;
        Ground ground = new Ground(cells, new GroundSettings(0.8, 15, 10, 0.5));
        ground.step(STILL, water(0.1));
        return ground.pond(0);
    }

    @Test
    void standingWaterGoesOnSoakingIn() {
        Ground ground = ground(0.5, "c");
        ground.step(STILL, water(0.1));
        double before = ground.soilWater(0) + ground.pond(0);
        double pond = ground.pond(0);
        for (int beat = 0; beat < 5; beat++) {
            pass(ground, STILL, 5);
            assertTrue(ground.pond(0) < pond || pond == 0, "at " + ground.minute());
            pond = ground.pond(0);
        }
        assertEquals(before, ground.soilWater(0) + ground.pond(0), 1e-15);
    }

    @Test
    void plantedAndOtherGroundKeepBooksOfWhatTheyGiveEachOther() {
        Ground fromPlants = ground(0.5, "c", "w");
        fromPlants.step(STILL, water(0, 0.1));
        double left = 0.1 - (fromPlants.soilWater(1) - ground(0.5, "c").soilWater(0)) - fromPlants.pond(1);
        assertEquals(left, fromPlants.flows().fromPlants(), 1e-12);
        assertEquals(0, fromPlants.flows().toPlants());
        Ground toPlants = ground(0.5, "w", "s");
        toPlants.step(STILL, water(0, 0.005));
        assertEquals(0.004, toPlants.flows().toPlants(), 1e-12);
        assertEquals(0, toPlants.flows().fromPlants());
        assertEquals(0.004, toPlants.soilWater(0) - ground(0.5, "s").soilWater(0), 1e-12);
        Ground plants = ground(0.5, "c", "c");
        plants.step(STILL, water(0, 0.1));
        assertEquals(plants.totals().runoff(), plants.flows().fromPlants(), 1e-15);
        assertTrue(plants.pond(0) > 0, "what ran off above stands below");
    }

    @Test
    void freshSoilTakesInByGreenAndAmpt() {
        Ground ground = ground(1, "l");
        double before = ground.soilWater(0);
        ground.step(STILL, water(0.1));
        // K 0.34 cm/h, suction 8.89 cm into the 0.46 - 0.27 that field capacity leaves (Rawls and others 1983).
        double k = 0.34e-2 / 3600;
        double m = 0.0889 * 0.19;
        double first = ground.soilWater(0) - before;
        assertEquals(GreenAmpt.ponded(k, m, 0, 60), first, 0.01 * first);
        ground.step(STILL, water(0.1));
        double second = ground.soilWater(0) - before - first;
        assertEquals(GreenAmpt.ponded(k, m, first, 60) - first, second, 0.02 * second);
        assertTrue(second < 0.5 * first);
    }

    @Test
    void compactedSoilTakesInLess() {
        GroundCells cells = Plots.of(1, 0, "ll");
        cells.keeps()[1] = 0.25;
        Ground ground = new Ground(cells, new GroundSettings(0.8, 15, 10, 1));
        double before = ground.soilWater(0);
        ground.step(STILL, water(0.1, 0.1));
        // Early intake goes with the root of conductivity.
        assertEquals(0.5, (ground.soilWater(1) - before) / (ground.soilWater(0) - before), 0.03);
    }

    @Test
    void aProbeFindsTheFrontSaturatedAndTheSoilBelowAsItWas() {
        Ground ground = ground(1, "l");
        double before = ground.soilWater(0);
        for (int m = 0; m < 10; m++) {
            ground.step(STILL, water(0.02));
        }
        double front = (ground.soilWater(0) - before) / 0.19;
        assertEquals(0.46, ground.waterContent(0, 0.5 * front), 1e-9);
        assertEquals(0.46, ground.waterContent(0, 0.99 * front), 1e-9);
        assertEquals(0.27, ground.waterContent(0, 1.01 * front), 1e-9);
        assertEquals(0.27, ground.waterContent(0, 0.24), 1e-9);
    }

    @Test
    void slowWaterBuildsNoFront() {
        Ground ground = ground(0.5, "l");
        for (int m = 0; m < 30; m++) {
            ground.step(STILL, water(5e-5));
        }
        double average = ground.soilWater(0) / 0.25;
        assertEquals(average, ground.waterContent(0, 0.01), 1e-12);
        assertEquals(0.0015, ground.soilWater(0) - ground(0.5, "l").soilWater(0), 1e-12);
    }

    @Test
    void aFrontSinksAndThinsAndIsForgottenAfterADay() {
        Ground ground = ground(0.2, "c");
        for (int m = 0; m < 5; m++) {
            ground.step(STILL, water(0.02));
        }
        while (ground.pond(0) > 0) {
            ground.step(STILL, null);
        }
        double last = ground.waterContent(0, 0.005);
        for (int hour = 0; hour < 12; hour++) {
            pass(ground, STILL, 60);
            double now = ground.waterContent(0, 0.005);
            assertTrue(now < last, "thins in hour " + hour);
            last = now;
        }
        double average = ground.soilWater(0) / 0.25;
        assertTrue(last > average + 0.01, last + " over " + average);
        pass(ground, STILL, 720);
        assertEquals(ground.soilWater(0) / 0.25, ground.waterContent(0, 0.005), 1e-12);
    }

    @Test
    void theZoneAndTheSoilBelowHoldTheWholeStore() {
        Ground ground = ground(0.2, "c");
        for (int m = 0; m < 5; m++) {
            ground.step(STILL, water(0.02));
        }
        pass(ground, STILL, 240);
        double sum = 0;
        for (int i = 0; i < 2500; i++) {
            sum += ground.waterContent(0, (i + 0.5) * 1e-4) * 1e-4;
        }
        assertEquals(ground.soilWater(0), sum, 2e-5);
    }

    @Test
    void aNewPulseStartsItsOwnFrontInTheWettedZone() {
        Ground ground = ground(0.2, "c");
        for (int m = 0; m < 5; m++) {
            ground.step(STILL, water(0.02));
        }
        while (ground.pond(0) > 0) {
            ground.step(STILL, null);
        }
        pass(ground, STILL, 120);
        double zone = ground.waterContent(0, 0.01);
        double before = ground.soilWater(0);
        ground.step(STILL, water(0.001));
        double pulse = ground.soilWater(0) - before;
        double reaches = pulse / (0.475 - zone);
        assertEquals(0.475, ground.waterContent(0, 0.9 * reaches), 1e-9);
        assertEquals(zone, ground.waterContent(0, 1.2 * reaches), 0.005);
    }

    @Test
    void waterOverFieldCapacityDrainsByItsShareAndAtMostByTheConductivity() {
        // A loam of one day to a tenth drains 1 - 10^(-1/24) of what it holds over field capacity in an hour.
        Ground ground = ground(1.5, "l");
        pass(ground, STILL, 60);
        double over = 0.5 * AVAILABLE;
        assertEquals(over * (1 - Math.pow(10, -1.0 / 24)), ground.totals().percolation(), 1e-12);
        // 45 mm over it would drain 4.1 mm; 3.4 mm an hour is all that the soil lets through.
        Ground full = ground(2.2, "l");
        pass(full, STILL, 60);
        assertEquals(0.0034, full.totals().percolation(), 1e-12);
        Ground dry = ground(0.9, "l");
        pass(dry, STILL, 60);
        assertEquals(0, dry.totals().percolation());
    }

    @Test
    void eachSoilDrainsInItsOwnTime() {
        Ground ground = ground(1.2, "cs");
        double clay = ground.soilWater(0);
        double sand = ground.soilWater(1);
        pass(ground, STILL, 60);
        assertEquals(0.2 * 0.14 * 0.25 * (1 - Math.pow(10, -1.0 / 72)), clay - ground.soilWater(0), 1e-12);
        assertEquals(0.2 * 0.07 * 0.25 * (1 - Math.pow(10, -1.0 / 6)), sand - ground.soilWater(1), 1e-12);
    }

    @Test
    void plantsDieAfterTenDaysWithoutWater() {
        Ground ground = ground(0, "lb");
        pass(ground, STILL, 10 * 1440 - 1);
        assertFalse(ground.dead(0) || ground.dead(1));
        assertEquals(0, ground.deadArea());
        Ground living = ground.copy();
        pass(ground, STILL, 1);
        assertTrue(ground.dead(0) && ground.dead(1));
        assertEquals(2, ground.deadArea());
        // Two square metres at 0.8 below the lesson's own for ten days; the dead are not dry any more.
        assertEquals(16, ground.dryAreaDays(), 1e-9);
        pass(ground, STILL, 5 * 1440);
        assertEquals(16, ground.dryAreaDays(), 1e-9);
        assertFalse(living.dead(0));
        assertTrue(living.dryAreaDays() < 16);
    }

    @Test
    void bareGroundEvaporatesThreeTenthsOfWhatItsPlantsDrew() {
        Ground dead = ground(0, "l");
        pass(dead, STILL, 10 * 1440);
        Ground alive = ground(0, "l");
        for (Ground g : new Ground[] {dead, alive}) {
            for (int m = 0; m < 900; m++) {
                g.step(STILL, water(5e-5));
            }
        }
        double deadBefore = dead.totals().evapotranspiration();
        pass(dead, Plots.day(20, 0, 2), 240);
        pass(alive, Plots.day(20, 0, 2), 240);
        double ratio = (dead.totals().evapotranspiration() - deadBefore)
                / alive.totals().evapotranspiration();
        assertEquals(0.3, ratio, 1e-6);
    }

    @Test
    void aWetHourStartsTheDaysToDieAnew() {
        Ground ground = ground(0, "l");
        pass(ground, STILL, 9 * 1440);
        for (int m = 0; m < 300; m++) {
            ground.step(STILL, water(5e-5));
        }
        assertTrue(ground.ks(0) > 0.1);
        pass(ground, STILL, 3 * 1440);
        assertFalse(ground.dead(0));
    }

    @Test
    void refillIsWhatWateredCellsLostOnly() {
        Ground wet = ground(0.8, "lll");
        Ground dry = ground(0.3, "lll");
        assertEquals(0.5 * AVAILABLE * 2, dry.refillVolume(wet, new boolean[] {true, false, true}), 1e-12);
        assertEquals(0, wet.refillVolume(dry, new boolean[] {true, true, true}));
        assertEquals(0, dry.refillVolume(wet, new boolean[3]));
    }

    @Test
    void iceIsFoundOnItsSurfaceOnly() {
        Ground ground = new Ground(Plots.of(1, 0, "wd"), GroundSettings.usual(-3));
        MinuteForcing night = Plots.night(-5, -8, 1, 0);
        assertFalse(ground.frozen() || ground.iced(4) || ground.iced(5));
        Ground twin = ground.copy();
        for (int m = 0; m < 240; m++) {
            ground.step(night, m < 5 ? water(1e-4, 0) : null);
            twin.step(night, null);
        }
        assertTrue(ground.frozen() && ground.iced(4));
        assertFalse(ground.iced(5) || ground.iced(0) || ground.iced(99));
        assertEquals(ground.iceMm(0), ground.irrigationIceMm(0, Frost.NONE), 1e-12);
        assertEquals(0, Frost.NONE.mm(0));
        assertEquals(ground.iceMm(0), ground.frost().mm(0), 1e-12);
        assertEquals(ground.iceMm(1), ground.frost().mm(1), 1e-12);
        assertEquals(0, twin.irrigationIceMm(0, ground.frost()));
        assertEquals(1, ground.icedArea(4, twin.frost()));
        assertEquals(0, ground.icedArea(5, twin.frost()));
        assertEquals(0, ground.icedArea(99, twin.frost()));
        // Half a millimetre of water is half a millimetre of ice, less what the night took.
        assertTrue(ground.iceMm(0) > 0.35 && ground.iceMm(0) + ground.filmMm(0) <= 0.5 + twin.iceMm(0) + 1e-9);
    }

    @Test
    void pavementFollowsTheSunAndForgetsSlowly() {
        Ground ground = new Ground(Plots.of(1, 0, "wd"), GroundSettings.usual(15));
        double before = ground.surfaceTemperature(0);
        for (int m = 0; m < 300; m++) {
            ground.step(Plots.day(20, 700, 0), null);
        }
        assertTrue(ground.surfaceTemperature(0) > before + 8);
        assertTrue(ground.surfaceTemperature(1) > ground.surfaceTemperature(0), "asphalt is darker");
        for (int m = 0; m < 600; m++) {
            ground.step(Plots.night(10, 5, 3, 1), null);
        }
        assertEquals(10, ground.surfaceTemperature(0), 4);
    }

    @Test
    void coldWaterCoolsAWarmWalkAndWetAndDryCellsMeetAgain() {
        Ground ground = new Ground(Plots.of(1, 0, "ww"), GroundSettings.usual(15));
        pass(ground, Plots.day(25, 700, 0), 240);
        double warm = ground.surfaceTemperature(0);
        assertEquals(warm, ground.surfaceTemperature(1));
        ground.step(Plots.day(25, 700, 0), water(1e-3, 0));
        assertTrue(ground.surfaceTemperature(0) < warm - 0.5, "wetted with water of 10 degrees");
        assertEquals(warm, ground.surfaceTemperature(1), 0.2);
        pass(ground, Plots.day(25, 700, 0), 600);
        assertEquals(0, ground.filmMm(0));
        assertEquals(ground.surfaceTemperature(0), ground.surfaceTemperature(1));
        assertEquals(1e-3, ground.totals().walkEvaporation(), 1e-9);
    }
}
