package provingyard.world.weather;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import provingyard.TestYards;
import provingyard.reference.ReferenceRow;
import provingyard.scenario.Scenario;
import provingyard.world.yard.Yard;

/** How the air of a spot differs from the open field's. */
public class LocalClimateTest {

    /** Rows that are compared here. */
    public static final Set<String> ROWS =
            Set.of("fao56-eq47-3m", "fao56-ex14-u2", "surfdiff-169", "surfdiff-171", "surfdiff-172");

    private static final StoredHeat NO_HEAT = StoredHeat.none();

    /** A heated house of 20 x 10 m with its south wall at y 25, a dip, a vent and a tree. */
    private static final Scenario SITE = TestYards.lawn(60, 60)
            .cell(1)
            .building("house", 20, 25, 40, 35, 4, 0.6, true)
            .building("shed", 50, 50, 54, 54, 4, 0, false)
            .hollow("dip", 10, 10, 6, 2.5, 0.3)
            .vent("dryer", 45, 20, 4, 2)
            .tree("pine", 50, 10, 8, 9, true)
            .scenario();

    private static final Yard YARD = Yard.of(SITE);
    private static final LocalClimate CLIMATE = LocalClimate.of(YARD, SITE);

    private static Weather night(double air, double wind, double cloud) {
        return new Weather(air, air - 2, wind, 0, 0, cloud, 0, 0, -40, 0);
    }

    private static Weather day(double sun, double altitude, double bearing, double wind, double cloud) {
        return new Weather(12, 3, wind, 0, sun, cloud, 0.0002, 5e-6, altitude, bearing);
    }

    private static double air(double x, double y, double h, Weather w) {
        return CLIMATE.at(x, y, h).air(w, NO_HEAT);
    }

    @Test
    void theOpenLawnAtTwoMetresIsTheOpenField() {
        Weather w = night(3, 0, 0);
        assertEquals(3, air(10, 50, 2, w), 0.01);
        Weather noon = day(600, 40, 180, 2, 0);
        Spot spot = CLIMATE.at(10, 50, 2);
        assertEquals(12, spot.air(noon, NO_HEAT), 1e-3);
        assertEquals(600, spot.sun(noon), 5);
        assertEquals(0.0002, spot.rain(noon), 1e-6);
        assertEquals(2, spot.wind(noon), 0.02);
        assertEquals(5e-6, spot.evaporation(noon, NO_HEAT), 1e-7);
    }

    @Test
    void windFollowsThePublishedProfile() {
        ReferenceRow factor = ReferenceRow.of("fao56-eq47-3m");
        assertEquals(factor.expected().asDouble(), 1 / Spot.profile(factor.in("z_m")), factor.tolerance());
        ReferenceRow wind = ReferenceRow.of("fao56-ex14-u2");
        assertEquals(wind.expected().asDouble(), wind.in("uz_m_s") / Spot.profile(wind.in("z_m")), wind.tolerance());
        assertTrue(Spot.profile(0) > 0);
    }

    @Test
    void clearCalmNightsLayTheColdAtTheGround() {
        double difference = air(10, 50, 2.5, night(3, 0.5, 0)) - air(10, 50, 0.1, night(3, 0.5, 0));
        JsonNode road = ReferenceRow.of("surfdiff-169").expected();
        assertTrue(
                difference >= road.get(0).asDouble()
                        && difference <= road.get(1).asDouble(),
                "K " + difference);
        double strongest = air(10, 50, 2, night(3, 0, 0)) - air(10, 50, 0, night(3, 0, 0));
        double usual = ReferenceRow.of("surfdiff-171").expected().asDouble() / 1.8;
        assertTrue(strongest > usual, "more than the mean of all nights, " + usual + " K: " + strongest);
        assertTrue(strongest < ReferenceRow.of("surfdiff-172").expected().asDouble(), "less than over snow");
        double cloudy = air(10, 50, 2.5, night(3, 0.5, 1)) - air(10, 50, 0.1, night(3, 0.5, 1));
        double windy = air(10, 50, 2.5, night(3, 6, 0)) - air(10, 50, 0.1, night(3, 6, 0));
        assertEquals(0, cloudy, 1e-12);
        assertTrue(windy < 0.25, "windy " + windy);
        assertEquals(0, LocalClimate.stillness(day(100, 10, 120, 0, 0)));
    }

    @Test
    void treesKeepTheGroundBelowThemWarmer() {
        Weather w = night(1, 0, 0);
        assertTrue(air(50, 10, 0.1, w) > air(10, 50, 0.1, w) + 0.5);
    }

    @Test
    void coldGathersInTheHollow() {
        Weather w = night(3, 0, 0);
        assertTrue(air(10, 10, 0.2, w) < air(10, 10, 3, w) - 3);
        assertEquals(2.5, air(10, 50, 0.5, w) - air(10, 10, 0.5, w), 0.05);
        assertTrue(air(10, 10, 0.5, w) < air(13, 10, 0.5, w));
        assertEquals(air(10, 50, 0.5, w), air(10, 17, 0.5, w), 0.05);
        assertEquals(3 + 0.69, air(10, 10, 4, w), 0.25, "a high mount looks over the pool");
    }

    @Test
    void heatedWallsAndVentsWarmTheAirBesideThem() {
        Weather w = night(0, 0.5, 1);
        double wall = air(30, 24.9, 2, w);
        assertTrue(wall > 0.5 && wall <= 1, "at the heated wall " + wall);
        assertTrue(air(30, 24, 2, w) < 0.1);
        assertEquals(0, air(52, 49.9, 2, w), 1e-12, "the shed is not heated");
        assertEquals(4, air(45, 20, 1, w), 0.01);
        assertEquals(2, air(46, 20, 1, w), 0.01);
        assertEquals(0, air(47.1, 20, 1, w), 0.01);
    }

    @Test
    void sunnyWallsGiveTheirHeatBackAfterSunset() {
        StoredHeat heat = StoredHeat.none();
        double afternoon = 0;
        for (int minute = 0; minute < 10 * 60; minute++) {
            double share = Math.sin(Math.PI * minute / 600);
            heat = heat.after(day(480 * share, 32 * share, 120 + minute * 0.2, 1, 0));
            afternoon = Math.max(afternoon, heat.facing(180));
        }
        double sunset = heat.facing(180);
        assertTrue(afternoon > 6 && afternoon < 16, "K at the south wall " + afternoon);
        assertTrue(heat.facing(0) < 0.3 * sunset, "the north wall saw no beam");
        StoredHeat kept = heat;
        Spot spot = CLIMATE.at(30, 24.95, 1.5);
        Weather dusk = night(5, 0.5, 1);
        double early = spot.air(dusk, heat) - spot.air(dusk, NO_HEAT);
        assertTrue(early > 0.8 && early < 3, "K in the air at dusk " + early);
        for (int minute = 0; minute < 11 * 60; minute++) {
            heat = heat.after(dusk);
        }
        double late = spot.air(dusk, heat) - spot.air(dusk, NO_HEAT);
        assertTrue(late > 0.1 && late < 0.3 * early, "K in the air before dawn " + late);
        assertNotEquals(kept.facing(180), heat.facing(180));
        assertEquals(sunset, kept.facing(180));
        assertTrue(spot.air(night(5, 8, 1), kept) - spot.air(night(5, 8, 1), NO_HEAT) < early);
    }

    @Test
    void anUnshieldedBodyReadsWarmInTheSunOnly() {
        Weather noon = day(600, 35, 180, 0.5, 0);
        Spot south = CLIMATE.at(30, 20, 1.5);
        Spot north = CLIMATE.at(30, 36, 1.5);
        assertTrue(south.unshielded(noon, NO_HEAT) > south.air(noon, NO_HEAT) + 1.5);
        assertTrue(north.unshielded(noon, NO_HEAT) < north.air(noon, NO_HEAT) + 0.6);
        assertEquals(air(30, 20, 1.5, night(2, 1, 0)), south.unshielded(night(2, 1, 0), NO_HEAT));
    }

    @Test
    void rainAndDryingDependOnThePlace() {
        Weather noon = day(600, 35, 180, 2, 0);
        Spot open = CLIMATE.at(10, 50, 2);
        Spot eave = CLIMATE.at(30, 24.9, 3.6);
        Spot shade = CLIMATE.at(30, 36, 1.5);
        Spot vent = CLIMATE.at(45, 20, 2);
        assertTrue(eave.rain(noon) < 0.1 * open.rain(noon));
        assertTrue(shade.evaporation(noon, NO_HEAT) < 0.6 * open.evaporation(noon, NO_HEAT));
        assertTrue(vent.evaporation(noon, NO_HEAT) > 1.15 * open.evaporation(noon, NO_HEAT));
    }

    @Test
    void windInTheLeeIsLess() {
        Weather northerly = day(0, -5, 0, 4, 1);
        assertTrue(CLIMATE.at(30, 20, 2).wind(northerly)
                < 0.5 * CLIMATE.at(5, 50, 2).wind(northerly));
    }

    @Test
    void theMapAgreesWithTheSpots() {
        Weather w = night(2, 0.7, 0.1);
        float[] map = CLIMATE.cold(w);
        for (int cell : new int[] {YARD.cellAt(10, 10), YARD.cellAt(10.5, 50.5), YARD.cellAt(45.2, 20.2)}) {
            double spot = air(YARD.x(cell), YARD.y(cell), LocalClimate.MAP_HEIGHT, w);
            assertEquals(spot, map[cell], 0.02);
            assertEquals(map[cell], CLIMATE.coldAt(cell, w), 1e-5);
        }
        int coldest = 0;
        for (int i = 0; i < map.length; i++) {
            coldest = map[i] < map[coldest] ? i : coldest;
        }
        assertTrue(Math.hypot(YARD.x(coldest) - 10, YARD.y(coldest) - 10) < 2);
    }

    @Test
    void heatTurnsSmoothlyWithTheBearing() {
        StoredHeat heat = StoredHeat.none();
        for (int i = 0; i < 300; i++) {
            heat = heat.after(day(500, 30, 225, 1, 0));
        }
        assertEquals(heat.facing(360), heat.facing(0));
        assertEquals(heat.facing(-90), heat.facing(270));
        assertEquals((heat.facing(180) + heat.facing(225)) / 2, heat.facing(202.5), 1e-12);
        assertTrue(heat.facing(225) > heat.facing(180) && heat.facing(180) > heat.facing(45));
    }

    @Property(tries = 200)
    void anySpotHasASensibleClimate(
            @ForAll @DoubleRange(min = -2, max = 62) double x,
            @ForAll @DoubleRange(min = -2, max = 62) double y,
            @ForAll @DoubleRange(min = 0, max = 8) double h,
            @ForAll @DoubleRange(min = -30, max = 90) double altitude,
            @ForAll @DoubleRange(min = 0, max = 360) double bearing) {
        double sun = Math.max(0, altitude * 10);
        Weather w = new Weather(4, 1, 2, 360 - bearing, sun, 0.3, 0.001, 4e-6, altitude, bearing);
        StoredHeat heat = StoredHeat.none();
        heat = heat.after(w);
        Spot spot = CLIMATE.at(x, y, h);
        assertTrue(Math.abs(spot.air(w, heat) - 4) < 7);
        assertTrue(spot.unshielded(w, heat) >= spot.air(w, heat));
        assertTrue(spot.wind(w) >= 0 && spot.wind(w) < 4.5);
        assertTrue(spot.rain(w) >= 0 && spot.rain(w) <= 0.001 + 1e-12);
        assertTrue(spot.sun(w) >= 0 && spot.sun(w) <= sun);
        assertTrue(spot.evaporation(w, heat) >= 0);
    }
}
