package provingyard.world.yard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import provingyard.TestYards;
import provingyard.scenario.Point;
import provingyard.scenario.YardPlan.StructureKind;

/** Sky, sun, rain and wind among simple things. */
@Tag("unit")
class YardGeometryTest {

    /** A house of 20 x 10 m, 4 m to the eaves, in the middle of a wide lawn: x 40 to 60, y 45 to 55. */
    private static TestYards house(double eave) {
        return TestYards.lawn(100, 100).cell(2).building("house", 40, 45, 60, 55, 4, eave, true);
    }

    private static Yard open() {
        return Yard.of(TestYards.lawn(30, 30).scenario());
    }

    @Test
    void theOpenLawnSeesAllOfSkySunRainAndWind() {
        Yard yard = open();
        assertEquals(1, yard.skyView(15, 15, 0));
        assertEquals(1, yard.rainShare(15, 15, 1));
        assertEquals(1, yard.sunlit(15, 15, 0, 5, 200));
        assertEquals(1, yard.shelter(15, 15, 2, 270), 1e-12);
        assertEquals(0, yard.horizon(3, 3, 1)[17]);
        assertNull(yard.nearestWall(3, 3));
    }

    @Test
    void aLongHighWallTakesHalfTheSkyFromAPointAtItsFoot() {
        Yard yard = Yard.of(TestYards.lawn(30, 30)
                .structure(
                        "wall", StructureKind.WALL, 1000, 0, false, List.of(new Point(-9000, 20), new Point(9000, 20)))
                .scenario());
        assertEquals(0.5, yard.skyView(15, 19.9, 0), 0.005);
        assertEquals(0.5, yard.rainShare(15, 19.9, 0), 0.03);
    }

    @Test
    void anInfiniteWallLeavesTheViewOfTheClosedForm() {
        // Sky view beside an endless wall of height H at distance d: (1 + cos(atan(H / d))) / 2 (Oke 1987).
        Yard yard = Yard.of(TestYards.lawn(30, 30)
                .structure("wall", StructureKind.WALL, 6, 0, false, List.of(new Point(-9000, 20), new Point(9000, 20)))
                .scenario());
        for (double d : new double[] {1, 3, 6, 12}) {
            double expected = (1 + d / Math.sqrt(d * d + 36)) / 2;
            assertEquals(expected, yard.skyView(15, 20 - d, 0), 0.003, "at " + d + " m");
        }
        assertEquals(45, yard.horizon(15, 14, 0)[0], 0.2);
        assertEquals(0, yard.horizon(15, 14, 0)[32]);
    }

    @Test
    void underAnEaveLittleRainFallsAndAboveTheRoofAllOfIt() {
        Yard yard = Yard.of(house(0.6).scenario());
        assertTrue(yard.rainShare(50, 44.9, 3.5) < 0.1, "just under the eave " + yard.rainShare(50, 44.9, 3.5));
        assertTrue(yard.rainShare(50, 44.9, 2) < 0.25, "at eye height " + yard.rainShare(50, 44.9, 2));
        assertTrue(yard.rainShare(50, 44.9, 2) > 0.02, "wind carries some in");
        assertTrue(yard.rainShare(50, 44.9, 0) > yard.rainShare(50, 44.9, 2), "the lower, the further in");
        assertEquals(1, yard.rainShare(50, 44.4, 4.3));
        assertTrue(yard.rainShare(50, 40, 2) > 0.95);
        assertTrue(yard.skyView(50, 44.9, 3.5) < 0.3);
    }

    @Test
    void aPointOnTheWallHangsInFrontOfIt() {
        Yard yard = Yard.of(house(0.6).scenario());
        assertEquals(yard.skyView(50, 44.9, 2), yard.skyView(50, 45, 2), 1e-9);
        assertEquals(yard.skyView(50, 44.9, 2), yard.skyView(50, 45.2, 2), 1e-9);
        assertEquals(0, yard.skyView(50, 50, 2), "deep inside there is no sky");
    }

    @Test
    void theNorthSideIsShadedAtNoonAndTheSouthSideIsNot() {
        Yard yard = Yard.of(house(0.6).scenario());
        double noonInNovember = 31.6; // latitude 40, declination -18.4
        assertEquals(0, yard.sunlit(50, 58, 1, noonInNovember, 180));
        assertEquals(1, yard.sunlit(50, 40, 1, noonInNovember, 180));
        assertEquals(0, yard.sunlit(50, 40, 1, -1, 180), "no sun by night");
        assertEquals(1, yard.sunlit(50, 70, 1, noonInNovember, 180), "beyond the shadow");
        assertEquals(0, yard.sunlit(50, 44.9, 3.5, 89.95, 180), "a high sun does not reach under the eave");
        assertEquals(1, yard.sunlit(50, 44.9, 2, 20, 180), "a low sun does");
    }

    @Test
    void aTreeTakesMoreInLeafThanBare() {
        TestYards tree = TestYards.lawn(30, 30).cell(2).tree("ash", 15, 15, 6, 10, false);
        Yard summer = Yard.of(tree.season(LocalDate.of(2013, 7, 1), 30).scenario());
        Yard winter = Yard.of(tree.season(LocalDate.of(2013, 1, 1), 30).scenario());
        Yard southern = Yard.of(tree.latitude(-35).scenario());
        assertTrue(summer.sunlit(15, 15, 1, 60, 180) < winter.sunlit(15, 15, 1, 60, 180));
        assertTrue(summer.rainShare(15, 15, 1) < winter.rainShare(15, 15, 1));
        assertTrue(summer.rainShare(15, 15, 1) > 0.6);
        assertTrue(summer.shelter(15, 11, 2, 0) < winter.shelter(15, 11, 2, 0));
        assertEquals(summer.skyView(15, 15, 1), southern.skyView(15, 15, 1), 1e-12);
    }

    @Test
    void theLeeIsCalmerThanTheWindwardSideAndTheWindRecovers() {
        Yard yard = Yard.of(house(0).scenario());
        double lee = yard.shelter(50, 40, 2, 0);
        double windward = yard.shelter(50, 60, 2, 0);
        assertTrue(lee < 0.5, "lee " + lee);
        assertTrue(windward > lee + 0.1 && windward < 1, "windward " + windward);
        double before = 0;
        for (double d = 2; d <= 44; d += 6) {
            double factor = yard.shelter(50, 45 - d, 2, 0);
            assertTrue(factor > before, "grows with distance: " + factor + " at " + d);
            before = factor;
        }
        assertTrue(yard.shelter(50, 5, 2, 0) > 0.8, "10 H behind");
        assertEquals(1, yard.shelter(50, 40, 6, 0), 1e-12, "well above the roof");
        assertTrue(yard.shelter(20, 50, 2, 0) > 0.99, "beside the house");
    }

    @Test
    void theRoofsEdgeIsWindierThanTheOpen() {
        Yard yard = Yard.of(house(0.6).scenario());
        double windward = yard.shelter(50, 55.6, 4.4, 0);
        double lee = yard.shelter(50, 44.4, 4.4, 0);
        assertEquals(1.4, windward, 1e-9);
        assertEquals(1.2, lee, 1e-9);
        assertTrue(yard.shelter(50, 50, 4.4, 0) < 1.2);
        assertEquals(1, yard.shelter(50, 55.6, 7, 0), 1e-9);
    }

    @Test
    void underACrownTheTrunkLetsTheWindPass() {
        Yard yard = Yard.of(
                TestYards.lawn(30, 30).cell(2).tree("pine", 15, 15, 6, 10, true).scenario());
        double crown = yard.shelter(15, 10, 5, 0);
        double trunk = yard.shelter(15, 10, 1.5, 0);
        assertTrue(crown < 0.6 && crown < trunk && trunk < 1, crown + " " + trunk);
        assertEquals(0.4, yard.shelter(15, 15, 5, 0), 0.15, "in the crown some 60 % are lost");
    }

    @Test
    void aFenceSheltersALittleLessThanAWall() {
        TestYards fenced = TestYards.lawn(40, 40).cell(2).fence("fence", 0, 30, 40, 30, 2);
        TestYards walled = TestYards.lawn(40, 40)
                .cell(2)
                .structure("w", StructureKind.WALL, 2, 0, false, List.of(new Point(0, 30), new Point(40, 30)));
        double fence = Yard.of(fenced.scenario()).shelter(20, 26, 1, 0);
        double wall = Yard.of(walled.scenario()).shelter(20, 26, 1, 0);
        assertTrue(wall < fence && fence < 0.7, wall + " " + fence);
    }

    @Test
    void theNearestWallSaysWhereItFaces() {
        Yard yard = Yard.of(house(0.6).scenario());
        Wall south = yard.nearestWall(50, 43);
        assertEquals(2, south.distance(), 1e-12);
        assertEquals(180, south.faces(), 1e-9);
        assertTrue(south.heated());
        assertEquals(270, yard.nearestWall(39, 50).faces(), 1e-9);
        assertTrue(yard.insideBuilding(41, 46));
        assertFalse(yard.insideBuilding(39.8, 46));
    }

    @Test
    void aCanopyKeepsRainOffButNotTheLowSun() {
        Yard yard = Yard.of(TestYards.lawn(30, 30)
                .structure("canopy", StructureKind.CANOPY, 3, 0, false, TestYards.box(10, 10, 20, 20))
                .scenario());
        assertTrue(yard.rainShare(15, 15, 1) < 0.01);
        assertEquals(1, yard.sunlit(15, 11, 1, 30, 180));
        assertEquals(0, yard.sunlit(15, 15, 1, 60, 180));
        assertFalse(yard.insideBuilding(15, 15));
        assertTrue(yard.rainShare(yard.cellAt(15, 15)) < 0.01);
    }
}
