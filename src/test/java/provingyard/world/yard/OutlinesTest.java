package provingyard.world.yard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import provingyard.TestYards;
import provingyard.scenario.Point;
import provingyard.scenario.SeasonPlan;
import provingyard.scenario.YardPlan.StructureKind;

/** Outlines, walls, crowns and what they leave of sky and wind, against closed forms. */
@Tag("unit")
class OutlinesTest {

    /** An L: 6 x 4 m less its north-east 3 x 2 m. */
    private static final List<Point> ELL = List.of(
            new Point(0, 0), new Point(6, 0), new Point(6, 2), new Point(3, 2), new Point(3, 4), new Point(0, 4));

    private static List<Point> reversed(List<Point> points) {
        return List.of(points.get(5), points.get(4), points.get(3), points.get(2), points.get(1), points.get(0));
    }

    @Test
    void anOutlineHoldsWhatIsInsideWhicheverWayItIsDrawn() {
        for (Polygon p : List.of(Polygon.of(ELL), Polygon.of(reversed(ELL)))) {
            assertEquals(6, p.corners());
            for (double[] in : new double[][] {{1, 1}, {5, 1}, {1, 3}, {2.9, 3.9}, {5.9, 1.9}, {0.1, 2}}) {
                assertTrue(p.contains(in[0], in[1]), in[0] + " " + in[1]);
            }
            for (double[] out : new double[][] {{3.1, 2.1}, {5, 3}, {-1, 1}, {7, 1}, {1, 5}, {1, -1}, {-0.1, 2}}) {
                assertFalse(p.contains(out[0], out[1]), out[0] + " " + out[1]);
            }
        }
        Polygon slanted = Polygon.of(List.of(new Point(0, 0), new Point(4, 2), new Point(2, 6), new Point(-2, 4)));
        assertTrue(slanted.contains(0.5, 0.5) && slanted.contains(3.5, 2.5) && slanted.contains(-1, 3.5));
        assertFalse(slanted.contains(2, 0.9) || slanted.contains(-1.5, 2) || slanted.contains(3.5, 4));
    }

    @Test
    void equalNeighboursAreOneCornerAndTwoCornersHoldNothing() {
        Point a = new Point(0, 0);
        Point b = new Point(4, 0);
        Point c = new Point(0, 3);
        assertEquals(3, Polygon.of(List.of(a, a, b, b, c, a)).corners());
        assertEquals(3, Polygon.of(List.of(a, b, c)).corners());
        Polygon line = Polygon.of(List.of(a, b, a));
        assertEquals(0, line.corners());
        assertFalse(line.contains(1, 0));
        assertEquals(-1, line.nearestEdge(1, 0));
        assertEquals(Double.POSITIVE_INFINITY, line.distance(1, 0));
        assertEquals(0, Polygon.of(List.of(a)).corners());
    }

    @Test
    void distancesAndNormalsAreThoseOfTheNearestEdge() {
        Polygon p = Polygon.of(ELL);
        int east = p.nearestEdge(7, 1);
        assertEquals(1, p.normalX(east), 1e-12);
        assertEquals(0, p.normalY(east), 1e-12);
        assertEquals(1, p.distance(7, 1), 1e-12);
        assertEquals(5, p.distance(9, -4), 1e-12, "to the corner: 3, 4, 5");
        int inner = p.nearestEdge(4, 2.5);
        assertEquals(1, p.normalY(inner), 1e-12);
        assertEquals(0.5, p.distance(4, 2.5, inner), 1e-12);
        assertEquals(0.25, Polygon.along(1, 7, 0, 0, 4, 0), 1e-12);
        assertEquals(0, Polygon.along(-3, 7, 0, 0, 4, 0));
        assertEquals(1, Polygon.along(9, 7, 0, 0, 4, 0));
        assertEquals(0, Polygon.along(9, 7, 2, 2, 2, 2));
        assertEquals(5, Polygon.distance(5, 6, 2, 2, 2, 2), 1e-12);
    }

    @Test
    void eavesMoveEachEdgeOutward() {
        Polygon grown = Polygon.of(ELL).grown(0.5);
        assertTrue(grown.contains(-0.45, -0.45) && grown.contains(6.45, 2.45) && grown.contains(3.45, 4.45));
        assertTrue(grown.contains(3.4, 3) && grown.contains(5, 2.45), "the inner corner's edges too");
        assertFalse(grown.contains(-0.55, 1) || grown.contains(1, -0.55) || grown.contains(3.55, 3.5));
        assertFalse(grown.contains(5, 2.55) || grown.contains(6.55, 1) || grown.contains(1, 4.55));
        Polygon same = Polygon.of(ELL);
        assertEquals(same, same.grown(0));
        assertEquals(0, Polygon.of(List.of()).grown(1).corners());
    }

    @Test
    void aSharpCornersEaveReachesThreeTimesAsFarAtMost() {
        // A needle of 20 x 0.2 m to the east: its mitre would be 100 times the eave.
        Polygon grown = Polygon.of(List.of(new Point(0, -0.1), new Point(20, 0), new Point(0, 0.1)))
                .grown(1);
        double farthest = 0;
        for (int i = 0; i < 3; i++) {
            farthest = Math.max(farthest, grown.x(i));
        }
        assertTrue(farthest > 20 && farthest <= 23, "to " + farthest);
    }

    @Test
    void aRayCrossesInAscendingOrder() {
        double[] out = new double[6];
        Polygon p = Polygon.of(ELL);
        assertEquals(2, p.crossings(-1, 3, 1, 0, out));
        assertEquals(1, out[0], 1e-12);
        assertEquals(4, out[1], 1e-12);
        assertEquals(1, p.crossings(1, 1, 1, 0, out));
        assertEquals(5, out[0], 1e-12);
        assertEquals(0, p.crossings(-1, 3, -1, 0, out));
        // Slanting over the notch: in and out twice. From (-1, 0.5) up a slope of 1/2.
        double root = Math.sqrt(1.25);
        assertEquals(2, p.crossings(-1, 0.5, 1 / root, 0.5 / root, out));
        assertEquals(root, out[0], 1e-12);
        assertEquals(4 * root, out[1], 1e-12, "leaves by the inner wall's foot at (3, 2.5)");
        assertTrue(Polygon.crossing(0, 0, 1, 0, 2, 1, 2, 3) <= 0);
        assertEquals(2, Polygon.crossing(0, 0, 1, 0, 2, 1, 2, -3), 1e-12);
    }

    @Test
    void aFreeWallFacesThePointOnEitherSide() {
        List<Point> line = List.of(new Point(10, 10), new Point(10, 10), new Point(20, 10), new Point(20, 20));
        Yard yard = Yard.of(TestYards.lawn(30, 30)
                .cell(5)
                .structure("wall", StructureKind.WALL, 2, 0, true, line)
                .scenario());
        assertEquals(new Wall(0, 3, 180, 2, false), yard.nearestWall(14, 7));
        assertEquals(0, yard.nearestWall(12, 12).faces(), 1e-12);
        assertEquals(2, yard.nearestWall(12, 12).distance(), 1e-12);
        assertEquals(new Wall(0, 4, 90, 2, false), yard.nearestWall(24, 15));
        assertEquals(new Wall(0, 1, 270, 2, false), yard.nearestWall(19, 16));
        assertEquals(5, yard.nearestWall(7, 6).distance(), 1e-12);
        assertFalse(yard.insideBuilding(15, 10));
    }

    @Test
    void theNearestOfSeveralWallsCounts() {
        Yard yard = Yard.of(TestYards.lawn(40, 40)
                .cell(5)
                .building("a", 5, 5, 10, 10, 3, 0, true)
                .building("b", 20, 5, 30, 10, 4, 0, false)
                .fence("c", 14, 0, 14, 40, 2)
                .scenario());
        assertEquals(new Wall(0, 2, 90, 3, true), yard.nearestWall(12, 7));
        assertEquals(new Wall(1, 4, 270, 4, false), yard.nearestWall(16, 7));
    }

    @Test
    void aPointOnAWallHangsATenthOfAMetreInFrontOfIt() {
        Geometry g = new Geometry(
                TestYards.lawn(30, 30).building("a", 10, 10, 20, 15, 3, 0, true).plan(), 1);
        assertPoint(14, 9.9, g.outdoors(14, 10.25, 1));
        assertPoint(14, 9.9, g.outdoors(14, 9.95, 1));
        assertPoint(20.1, 12, g.outdoors(19.8, 12, 1));
        assertPoint(9.9, 12, g.outdoors(10, 12, 1));
        assertPoint(14, 15.1, g.outdoors(14, 15.05, 1));
        assertPoint(14, 9.85, g.outdoors(14, 9.85, 1));
        assertPoint(14, 10.35, g.outdoors(14, 10.35, 1));
        assertPoint(14, 10.2, g.outdoors(14, 10.2, 3));
    }

    private static void assertPoint(double x, double y, double[] point) {
        assertEquals(x, point[0], 1e-12);
        assertEquals(y, point[1], 1e-12);
    }

    private static Yard tree(boolean evergreen, LocalDate from) {
        return Yard.of(TestYards.lawn(40, 40)
                .cell(5)
                .season(from, 10)
                .tree("t", 20, 20, 6, 10, evergreen)
                .scenario());
    }

    @Test
    void aCrownStandsBetweenThreeTenthsOfItsHeightAndItsTop() {
        Yard yard = tree(true, LocalDate.of(2013, 7, 1));
        // From 10 m south of the trunk at 1 m: crown from 7 to 13 m away, 3 to 10 m high.
        assertEquals(1, yard.sunlit(20, 10, 1, degrees(2.0 / 13) - 0.1, 0));
        assertEquals(0.15, yard.sunlit(20, 10, 1, degrees(2.0 / 13) + 0.1, 0), 1e-12);
        assertEquals(0.15, yard.sunlit(20, 10, 1, degrees(9.0 / 7) - 0.1, 0), 1e-12);
        assertEquals(1, yard.sunlit(20, 10, 1, degrees(9.0 / 7) + 0.1, 0));
        assertEquals(1, yard.sunlit(20, 10, 1, 20, 180), "away from it");
        // Past the trunk by 2.9 and 3.1 m of its 3 m.
        assertEquals(0.15, yard.sunlit(22.9, 10, 1, 30, 0), 1e-12);
        assertEquals(1, yard.sunlit(23.1, 10, 1, 30, 0));
        assertEquals(0.15, yard.sunlit(17.1, 10, 1, 30, 0), 1e-12);
        assertEquals(1, yard.sunlit(16.9, 10, 1, 30, 0));
        // Under it, straight up; beyond it on the far side; over its top.
        assertEquals(0.15, yard.sunlit(20, 19, 1, 89.95, 0), 1e-12);
        assertEquals(1, yard.sunlit(20, 24, 1, 30, 0));
        assertEquals(1, yard.sunlit(20, 18, 10, 30, 0));
    }

    private static double degrees(double tangent) {
        return Math.toDegrees(Math.atan(tangent));
    }

    @Test
    void aBareCrownLetsMoreLightThrough() {
        assertEquals(0.6, tree(false, LocalDate.of(2013, 1, 5)).sunlit(20, 10, 1, 30, 0), 1e-12);
        assertEquals(0.15, tree(false, LocalDate.of(2013, 7, 5)).sunlit(20, 10, 1, 30, 0), 1e-12);
        // Half the leaves of April: 0.6 - 0.45 / 2.
        assertEquals(0.375, tree(false, LocalDate.of(2013, 4, 5)).sunlit(20, 10, 1, 30, 0), 1e-12);
        assertEquals(0.15, tree(true, LocalDate.of(2013, 1, 5)).sunlit(20, 10, 1, 30, 0), 1e-12);
        double rain = tree(true, LocalDate.of(2013, 1, 5)).rainShare(20, 20, 1);
        assertEquals(0.75, rain, 0.08, "0.75 through the crown and some from the side");
    }

    @Test
    void leavesFollowTheMonthsAndTheHemisphere() {
        assertEquals(0, Leaves.over(season(2013, 1, 1, 59), 45), 1e-12);
        assertEquals(1, Leaves.over(season(2013, 6, 1, 122), 45), 1e-12);
        assertEquals(1, Leaves.over(season(2013, 1, 1, 59), -35), 1e-12);
        assertEquals(0.5, Leaves.over(season(2013, 4, 1, 30), 0), 1e-12);
        // Ten days of March and ten of April: (0.1 + 0.5) / 2.
        assertEquals(0.3, Leaves.over(season(2013, 3, 22, 20), 45), 1e-12);
        assertEquals(0.9, Leaves.over(season(2013, 5, 1, 0), 45), 1e-12);
    }

    private static SeasonPlan season(int year, int month, int day, int days) {
        return new SeasonPlan(LocalDate.of(year, month, day), days, 1, 0.8, 0, 1);
    }

    @Test
    void theLeeLosesMostAtTheThingAndRecoversOverItsHeights() {
        assertEquals(0.85, Shelter.leeLoss(0, 0), 1e-12);
        // 0.85 exp(-1) at 7 heights behind a solid thing; half as open: a quarter less at once, 10 heights instead.
        assertEquals(0.312698, Shelter.leeLoss(7, 0), 1e-6);
        assertEquals(0.6375, Shelter.leeLoss(0, 0.5), 1e-12);
        assertEquals(0.75 * 0.312698, Shelter.leeLoss(10, 0.5), 1e-6);
        assertEquals(0.85 * Math.exp(-8), Shelter.leeLoss(28, 0), 1e-12);
    }

    /** A wall so long that all rays within the swing of the wind meet it. */
    private static Yard longWall() {
        return Yard.of(TestYards.lawn(40, 40)
                .cell(5)
                .structure("wall", StructureKind.WALL, 2, 0, false, List.of(new Point(-9000, 20), new Point(9000, 20)))
                .scenario());
    }

    @Test
    void besideAnEndlessWallTheWindIsTheMeanOfItsSwing() {
        Yard yard = longWall();
        double lee = 0;
        double front = 0;
        double weights = 0;
        for (int k = -4; k <= 4; k++) {
            double weight = Math.exp(-0.5 * Math.pow(k * 8 / 15.0, 2));
            double heights = 6 / Math.cos(Math.toRadians(8 * k)) / 2;
            lee += weight * (1 - 0.85 * Math.exp(-Math.pow(heights / 7, 1.5)));
            front += weight * (1 - 0.4 * Math.exp(-heights / 3));
            weights += weight;
        }
        assertEquals(lee / weights, yard.shelter(20, 14, 1, 0), 1e-9);
        assertEquals(front / weights, yard.shelter(20, 14, 1, 180), 1e-9);
    }

    @Test
    void aCrownSheltersFromTheRaysThatMeetIt() {
        Yard yard = tree(true, LocalDate.of(2013, 7, 1));
        double lee = 0;
        double front = 0;
        double weights = 0;
        for (int k = -4; k <= 4; k++) {
            double weight = Math.exp(-0.5 * Math.pow(k * 8 / 15.0, 2));
            double across = 13 * Math.sin(Math.toRadians(8 * k));
            boolean meets = Math.abs(across) < 3;
            double to = 13 * Math.cos(Math.toRadians(8 * k)) - Math.sqrt(Math.max(0, 9 - across * across));
            double heights = to / 10;
            // Openings of 0.45 in leaf.
            lee += weight * (meets ? 1 - Shelter.leeLoss(heights, 0.45) : 1);
            front += weight * (meets ? 1 - 0.4 * 0.55 * Math.exp(-heights / 3) : 1);
            weights += weight;
        }
        assertEquals(lee / weights, yard.shelter(20, 7, 5, 0), 1e-9);
        assertEquals(front / weights, yard.shelter(20, 7, 5, 180), 1e-9);
        // In the crown itself the wind meets it at once, from all sides.
        assertEquals(1 - Shelter.leeLoss(0, 0.45), yard.shelter(20, 20, 5, 90) / (1 - 0.4 * 0.55), 1e-9);
    }

    @Test
    void shelterEndsAboveTheThing() {
        Yard yard = longWall();
        double whole = 1 - yard.shelter(20, 14, 1.6, 0);
        assertEquals(whole, 1 - yard.shelter(20, 14, 0.5, 0), 1e-12);
        // From 1.6 to 2.8 m over ground, straight: half at 2.2 m.
        double half = 1 - yard.shelter(20, 14, 2.2, 0);
        assertEquals(whole / 2, half, 1e-9);
        assertEquals(1, yard.shelter(20, 14, 2.8, 0), 1e-12);
    }

    @Test
    void theRoofsEdgeFadesAsideAndUpward() {
        Yard yard = Yard.of(TestYards.lawn(100, 100)
                .cell(10)
                .building("house", 40, 40, 60, 60, 4, 0, true)
                .scenario());
        assertEquals(1.4, yard.shelter(50, 60, 4.5, 0), 1e-9);
        assertEquals(1.2, yard.shelter(50, 40, 5, 0), 1e-9);
        assertEquals(1.3, yard.shelter(60, 50, 4.5, 0), 1e-9);
        // 1.75 m over the roof it is at half.
        assertEquals(1.2, yard.shelter(50, 60, 5.75, 0), 1e-9);
        assertEquals(1, yard.shelter(50, 60, 6.6, 0), 1e-9);
    }

    @Test
    void manyThingsInOneBearingAreAllSeen() {
        TestYards many = TestYards.lawn(60, 60).cell(10);
        for (int i = 0; i < 20; i++) {
            many.fence("f" + i, 10, 20 + i, 50, 20 + i, 3);
        }
        // Each of the twenty fences lets 0.4 of the beam through.
        assertEquals(Math.pow(0.4, 20), Yard.of(many.scenario()).sunlit(30, 15, 1, 3, 0), 1e-15);
    }

    @Test
    void rainComesFromUpToFortyFiveDegreesAside() {
        // Slopes t with density 2 (1 - t): steeper than 1/u falls t (2 - t).
        assertEquals(1, SkyDome.rainSteeperThan(1));
        assertEquals(1, SkyDome.rainSteeperThan(0.3));
        assertEquals(0.75, SkyDome.rainSteeperThan(2), 1e-12);
        assertEquals(0.36, SkyDome.rainSteeperThan(5), 1e-12);
    }

    @Test
    void aSightAddsUpItsBands() {
        Sight sight = new Sight();
        assertTrue(sight.open());
        assertEquals(1, sight.openSky());
        // A horizon at 45 degrees leaves cos2 = 0.5 of its bearing's sky; half through it: 0.75.
        sight.add(0, 1, 0, 0);
        assertFalse(sight.open());
        assertEquals(0.5, sight.openSky(), 1e-12);
        assertEquals(1, sight.openRain(), 1e-12);
        sight.clear();
        sight.add(0, 1, 0.5, 0.5);
        assertEquals(0.75, sight.openSky(), 1e-12);
        // A lid over tan 2 takes what comes from above it: 1 - 4/5 of the sky, 0.75 of the rain.
        sight.clear();
        sight.add(2, Double.POSITIVE_INFINITY, 0, 0);
        assertEquals(0.8, sight.openSky(), 1e-12);
        assertEquals(0.25, sight.openRain(), 1e-12);
        assertEquals(1, sight.through(1.99));
        assertEquals(0, sight.through(2));
        // Two bands that overlap between tan 1 and tan 2 let a quarter through there; weights u2 / (1 + u2).
        sight.clear();
        sight.add(0, 2, 0.5, 0.5);
        sight.add(1, 3, 0.5, 0.5);
        assertEquals(0.5 * 0.5 + 0.3 * 0.25 + 0.1 * 0.5 + 0.1, sight.openSky(), 1e-12);
        assertEquals(0.25, sight.through(1.5), 1e-12);
        sight.clear();
        sight.add(1, 1, 0, 0);
        sight.add(2, 1, 0, 0);
        assertTrue(sight.open(), "an empty band is none");
    }

    @Test
    void aCellsHorizonIsGatheredBySectors() {
        Yard yard = Yard.of(TestYards.lawn(30, 30)
                .cell(2)
                .structure("wall", StructureKind.WALL, 6, 0, false, List.of(new Point(-9000, 20), new Point(9000, 20)))
                .scenario());
        int cell = yard.cellAt(15, 13);
        double[] fine = yard.horizon(yard.x(cell), yard.y(cell), 0);
        for (int sector = 0; sector < Yard.SECTORS; sector++) {
            double mean = 0;
            for (int i = 0; i < 4; i++) {
                mean += fine[sector * 4 + i] / 4;
            }
            assertEquals(mean, yard.horizon(cell, sector), 1e-9);
        }
        assertEquals(degrees(6 / (20 - yard.y(cell))), yard.horizon(cell, 0), 2);
        assertEquals(yard.skyView(yard.x(cell), yard.y(cell), 0), yard.skyView(cell), 1e-12);
    }
}
