package provingyard.world.weather;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import provingyard.TestYards;
import provingyard.scenario.Scenario;
import provingyard.world.yard.Wall;
import provingyard.world.yard.Yard;

/** The laws of a spot's climate, each against numbers worked by hand from its description. */
@Tag("unit")
class LocalLawsTest {

    private final StoredHeat noHeat = StoredHeat.none();

    private static final Scenario OPEN = TestYards.lawn(60, 60)
            .cell(5)
            .hollow("dip", 10, 10, 6, 2.5, 0.3)
            .hollow("shallow", 10, 10, 12, 1, 0.3)
            .vent("dryer", 40, 40, 4, 2)
            .vent("boiler", 40, 42, 3, 4)
            .scenario();
    private final LocalClimate climate = LocalClimate.of(Yard.of(OPEN), OPEN);

    private static Weather night(double air, double wind, double cloud, double altitude) {
        return new Weather(air, air - 2, wind, 0, 0, cloud, 0, 0, altitude, 0);
    }

    private static Weather day(double sun, double cloud, double altitude, double bearing) {
        return new Weather(12, 3, 2, 0, sun, cloud, 0.0002, 5e-6, altitude, bearing);
    }

    @Test
    void layersNeedAClearCalmNight() {
        assertEquals(1, LocalClimate.stillness(night(3, 0, 0, -40)));
        assertEquals(0.5, LocalClimate.stillness(night(3, 1.5, 0, -40)), 1e-12);
        assertEquals(0.2, LocalClimate.stillness(night(3, 3, 0, -40)), 1e-12);
        assertEquals(0.75, LocalClimate.stillness(night(3, 0, 0.25, -40)), 1e-12);
        assertEquals(0.5, LocalClimate.stillness(night(3, 0, 0, 1)), 1e-12);
        assertEquals(1, LocalClimate.stillness(night(3, 0, 0, -3)), 1e-12);
        assertEquals(0, LocalClimate.stillness(night(3, 0, 0, 5)), 1e-12);
        assertEquals(0, LocalClimate.stillness(night(3, 0, 0, 30)));
    }

    @Test
    void theInversionIsLinearInTheLogarithmOfHeight() {
        assertEquals(0, LocalClimate.inversion(2, 1), 1e-12);
        assertEquals(3, LocalClimate.inversion(0.1, 1), 1e-12);
        assertEquals(3, LocalClimate.inversion(0, 1), 1e-12);
        assertEquals(1.5, LocalClimate.inversion(0.1, 0.5), 1e-12);
        // The root of 0.1 x 2 is half way in the logarithm.
        assertEquals(1.5, LocalClimate.inversion(Math.sqrt(0.2), 1), 1e-12);
        // Above 2 m warmer by 3 ln(5) / ln(20) at 10 m, whatever the ground's view of the sky.
        assertEquals(-1.6117, LocalClimate.inversion(10, 0.3), 1e-4);
        assertEquals(-1.6117, LocalClimate.inversion(30, 1), 1e-4);
    }

    @Test
    void theDeepestHollowCountsAndThinsUpward() {
        assertEquals(2.5, climate.pool(10, 10, 0.5), 1e-12);
        assertEquals(2.5, climate.pool(10, 10, 0), 1e-12);
        assertEquals(2.5 * 0.75, climate.pool(13, 10, 0.5), 1e-12);
        assertEquals(2.5 * 0.75, climate.pool(10, 7, 0.5), 1e-12);
        // Beyond the narrow one the wide one is left: 1 - (9 / 12)2.
        assertEquals(0.4375, climate.pool(10, 19, 0.5), 1e-12);
        assertEquals(0, climate.pool(30, 10, 0.5));
        assertEquals(2.5 / Math.E, climate.pool(10, 10, 1.7), 1e-12);
    }

    @Test
    void ventsAddUpAndThinOverTheirPlume() {
        // At the dryer 4 K, and half of the boiler's 3 K from 2 m of its 4 m away.
        assertEquals(5.5, climate.vent(40, 40, 1), 1e-12);
        assertEquals(2 + 3 * 0.75, climate.vent(40, 41, 2.5), 1e-12);
        assertEquals(5.5 / Math.E, climate.vent(40, 40, 3.5), 1e-12);
        assertEquals(2, climate.vent(39, 40, 1) - 3 * (1 - Math.sqrt(5) / 4), 1e-12);
        assertEquals(0, climate.vent(10, 10, 1));
    }

    @Test
    void aWallsWarmthFadesAsideAndAboveIt() {
        assertEquals(1, LocalClimate.nearness(new Wall(0, 0, 180, 4, true), 4), 1e-12);
        assertEquals(1 / Math.E, LocalClimate.nearness(new Wall(0, 0.4, 180, 4, true), 1), 1e-12);
        assertEquals(1 / Math.E, LocalClimate.nearness(new Wall(0, 0.1, 180, 4, true), 4.3), 1e-12);
    }

    @Test
    void aHeatedHouseAddsAKelvinInHardColdAndHalfOfItInWind() {
        assertEquals(1, LocalClimate.heatedWalls(-2, 0), 1e-12);
        assertEquals(1, LocalClimate.heatedWalls(-20, 0), 1e-12);
        assertEquals(0.5, LocalClimate.heatedWalls(8, 0), 1e-12);
        assertEquals(0, LocalClimate.heatedWalls(18, 0), 1e-12);
        assertEquals(0, LocalClimate.heatedWalls(25, 0), 1e-12);
        assertEquals(0.25, LocalClimate.heatedWalls(8, 2), 1e-12);
        assertEquals(0.2, LocalClimate.unmixed(4), 1e-12);
    }

    @Test
    void windGrowsWithHeightAsFao56Says() {
        // FAO-56 eq. 47: the factor from 10 m is 0.748.
        assertEquals(1 / 0.748, Spot.profile(10), 1e-3);
        assertEquals(1, Spot.profile(2), 2e-3);
        assertEquals(Spot.profile(0.1), Spot.profile(0.05));
        assertEquals(Spot.profile(10) * 2, climate.at(30, 10, 10).wind(day(500, 0, 40, 180)), 1e-9);
    }

    @Test
    void anOpenSpotFollowsTheLaws() {
        Weather w = night(3, 1.5, 0, -40);
        // Half of 3 K of layering and 1 K of cold in the wide hollow's middle ground.
        assertEquals(3 - 0.5 * (3 + 0.4375), climate.at(10, 19, 0.1).air(w, noHeat), 1e-9);
        assertEquals(3 + 5.5, climate.at(40, 40, 2).air(w, noHeat), 1e-9);
        assertEquals(5.5, climate.at(40, 40, 2).warmth(w, noHeat), 1e-9);
    }

    @Test
    void beamAndSkyLightAFlatPlate() {
        Spot spot = climate.at(30, 10, 2);
        assertEquals(600, spot.sun(day(600, 0.4, 40, 180)), 1e-9);
        assertEquals(0, spot.sun(day(0, 0.4, 40, 180)));
        // With the sun's disc below the horizon only the sky's share is left: 0.15 + 0.85 x 0.4.
        assertEquals(10 * 0.49, spot.sun(day(10, 0.4, 0, 180)), 1e-9);
        assertEquals(
                12 + 0.006 * 600 / (1 + spot.wind(day(600, 0, 40, 180))),
                spot.unshielded(day(600, 0, 40, 180), noHeat),
                1e-3);
        assertEquals(0.0002, spot.rain(day(600, 0, 40, 180)), 1e-12);
    }

    @Test
    void dryingGoesWithSunWindAndWarmth() {
        Spot open = climate.at(30, 10, 2);
        double profile = Spot.profile(2);
        assertEquals(5e-6 * (0.7 + 0.3 * profile), open.evaporation(day(600, 0, 40, 180), noHeat), 1e-12);
        assertEquals(5e-6 * profile, open.evaporation(day(5, 0, 40, 180), noHeat), 1e-12);
        // 5.5 K of the vents: 6.5 % faster for each.
        assertEquals(
                5e-6 * (0.7 + 0.3 * profile) * (1 + 0.065 * 5.5),
                climate.at(40, 40, 2).evaporation(day(600, 0, 40, 180), noHeat),
                1e-12);
    }

    /** A heated house with its south wall at y 20, on an otherwise open lawn. */
    private static final Scenario HOUSE = TestYards.lawn(60, 60)
            .cell(5)
            .building("house", 20, 20, 40, 30, 4, 0, true)
            .scenario();

    private final Yard houseYard = Yard.of(HOUSE);
    private final LocalClimate beside = LocalClimate.of(houseYard, HOUSE);

    @Test
    void aWallGivesItsWarmthToTheAirBesideIt() {
        Weather w = night(-2, 0, 1, -40);
        double near = Math.exp(-0.5 / 0.4);
        assertEquals(near, beside.at(30, 19.5, 1).warmth(w, noHeat), 1e-9);
        StoredHeat heat = StoredHeat.none();
        for (int i = 0; i < 600; i++) {
            heat = heat.after(day(500, 0, 40, 180));
        }
        double south = heat.facing(180);
        assertTrue(south > 5);
        assertEquals(near * (1 + 0.25 * south), beside.at(30, 19.5, 1).warmth(w, heat), 1e-9);
        assertEquals(near * (1 + 0.25 * heat.facing(0)), beside.at(30, 30.5, 1).warmth(w, heat), 1e-9);
    }

    @Test
    void shelterRunsStraightBetweenTenDegreesOfBearing() {
        Spot spot = beside.at(30, 15, 2);
        double at20 = houseYard.shelter(30, 15, 2, 20);
        double at30 = houseYard.shelter(30, 15, 2, 30);
        double at350 = houseYard.shelter(30, 15, 2, 350);
        double at0 = houseYard.shelter(30, 15, 2, 0);
        assertTrue(Math.abs(at20 - at30) > 0.005);
        assertEquals(0.75 * at20 + 0.25 * at30, wind(spot, 22.5), 1e-9);
        assertEquals(at30, wind(spot, 30), 1e-9);
        assertEquals(0.5 * at350 + 0.5 * at0, wind(spot, 355), 1e-9);
        assertEquals(at0, wind(spot, 360), 1e-9);
    }

    private static double wind(Spot spot, double from) {
        Weather w = new Weather(3, 1, 1, from, 0, 1, 0, 0, -40, 0);
        return spot.wind(w) / Spot.profile(2);
    }

    @Test
    void theBeamIsLookedUpByTheSunsPlace() {
        Spot north = beside.at(30, 33, 1);
        // 3 m behind a house of 3 m above the point: a sun at 40 degrees is hidden in the south, not in the north; one
        // at 50 degrees stands over the roof. Sky light is 0.15 of the whole times the sky's view.
        double sky = 0.15 * houseYard.skyView(30, 33, 1) * 600;
        assertEquals(sky, north.sun(day(600, 0, 40, 180)), 1e-9);
        assertEquals(sky + 0.85 * 600, north.sun(day(600, 0, 50, 180)), 1e-9);
        assertEquals(sky + 0.85 * 600, north.sun(day(600, 0, 40, 0)), 1e-9);
        assertEquals(sky + 0.85 * 600, north.sun(day(600, 0, 40, 360)), 1e-9);
        assertEquals(sky, north.sun(day(600, 0, 40, 180)), 1e-9, "asked again");
        assertEquals(sky + 0.85 * 600, north.sun(day(600, 0, 90, 180)), 1e-9);
    }

    @Test
    void theMapAddsLayersPoolsWallsAndVents() {
        Weather w = night(-2, 0, 0, -40);
        Yard yard = Yard.of(OPEN);
        int dip = yard.cellAt(10, 10);
        double pool = climate.pool(yard.x(dip), yard.y(dip), 0.1);
        assertEquals(-2 - 3 - pool, climate.coldAt(dip, w), 1e-5);
        int vent = yard.cellAt(41, 41);
        double added = climate.vent(yard.x(vent), yard.y(vent), 0.1);
        assertTrue(added > 0);
        assertEquals(-5 + added, climate.cold(w)[vent], 1e-5);
        int wall = houseYard.cellAt(31, 16);
        double near = Math.exp(-(20 - houseYard.y(wall)) / 0.4);
        double layers = 3 * houseYard.skyView(wall);
        assertEquals(-2 - layers + near, beside.coldAt(wall, w), 1e-5);
        assertEquals(-2, beside.coldAt(houseYard.cellAt(30, 25), w), 1e-6);
    }

    private static StoredHeat steady(Weather w) {
        StoredHeat heat = StoredHeat.none();
        for (int i = 0; i < 15_000; i++) {
            heat = heat.after(w);
        }
        return heat;
    }

    @Test
    void wallsInSteadySunStandOverTheAirByAbsorptanceOverTransfer() {
        // Overcast: half of 200 W/m2 from the sky and half of a fifth of it from the ground, times 0.65 / 25.
        StoredHeat even = steady(day(200, 1, 40, 180));
        for (int bearing = 0; bearing < 360; bearing += 45) {
            assertEquals(0.026 * 0.5 * 200 * 1.2, even.facing(bearing), 1e-9);
        }
        // Clear, 400 W/m2 from 60 degrees in the south: beam 400 x 0.85 / sin 60, half of it level; even light 70.
        StoredHeat sunny = steady(day(400, 0, 60, 180));
        double level = 400 * 0.85 / Math.sin(Math.PI / 3) / 2;
        assertEquals(0.026 * (70 + level), sunny.facing(180), 1e-9);
        assertEquals(0.026 * (70 + level * Math.sqrt(0.5)), sunny.facing(135), 1e-9);
        assertEquals(0.026 * (70 + level * Math.sqrt(0.5)), sunny.facing(225), 1e-9);
        assertEquals(0.026 * 70, sunny.facing(90), 1e-9);
        assertEquals(0.026 * 70, sunny.facing(0), 1e-9);
        StoredHeat east = steady(day(400, 0, 60, 90));
        assertEquals(0.026 * (70 + level), east.facing(90), 1e-9);
        assertEquals(0.026 * 70, east.facing(270), 1e-9);
    }

    @Test
    void wallsCoolAndWarmWithSixHours() {
        StoredHeat heat = steady(day(200, 1, 40, 180));
        double full = heat.facing(90);
        for (int i = 0; i < 360; i++) {
            heat = heat.after(night(3, 1, 1, -20));
        }
        assertEquals(full / Math.E, heat.facing(90), 1e-9);
        StoredHeat warming = StoredHeat.none();
        for (int i = 0; i < 360; i++) {
            warming = warming.after(day(200, 1, 40, 180));
        }
        assertEquals(full * (1 - 1 / Math.E), warming.facing(90), 1e-9);
        StoredHeat cooler = warming.after(night(3, 1, 1, -20));
        assertTrue(cooler.facing(90) < warming.facing(90));
        assertEquals(full * (1 - 1 / Math.E), warming.facing(90), 1e-9);
    }

    @Test
    void theBeamIsTheLevelSunOverTheSineOfItsHeight() {
        assertEquals(300 * 0.85 / 0.5, StoredHeat.beam(day(300, 0, 30, 180)), 1e-9);
        assertEquals(300 * 0.425 / 0.5, StoredHeat.beam(day(300, 0.5, 30, 180)), 1e-9);
        assertEquals(1000, StoredHeat.beam(day(900, 0, 30, 180)));
        // A grazing sun is divided by the sine of 3 degrees.
        assertEquals(20 * 0.85 / 0.0523360, StoredHeat.beam(day(20, 0, 1, 180)), 1e-3);
        assertEquals(0, StoredHeat.beam(day(20, 0, 0, 180)));
        assertEquals(0.15, StoredHeat.diffuseShare(day(20, 0, 1, 180)), 1e-12);
        assertEquals(1, StoredHeat.diffuseShare(day(20, 1, 1, 180)), 1e-12);
    }

    @Test
    void bearingsTurnIntoTheCircle() {
        assertEquals(270, StoredHeat.turned(-90));
        assertEquals(0, StoredHeat.turned(720));
        assertEquals(5, StoredHeat.turned(725));
        StoredHeat heat = steady(day(400, 0, 60, 90));
        assertEquals((heat.facing(315) + heat.facing(0)) / 2, heat.facing(337.5), 1e-12);
        assertEquals(0.75 * heat.facing(90) + 0.25 * heat.facing(135), heat.facing(101.25), 1e-12);
        assertEquals(heat.facing(0), heat.facing(360), 1e-12);
    }
}
