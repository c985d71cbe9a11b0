package provingyard.world.yard;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import provingyard.TestYards;
import provingyard.scenario.Point;
import provingyard.scenario.YardPlan;
import provingyard.scenario.YardPlan.Hollow;
import provingyard.scenario.YardPlan.SurfaceKind;

/** Heights fitted to drawn falls, the way of runoff on small grids, and cells, all worked by hand. */
@Tag("unit")
class GroundShapeTest {

    private static double[] all(int n, double value) {
        double[] values = new double[n];
        Arrays.fill(values, value);
        return values;
    }

    @Test
    void fallsThatFitTogetherAreMetExactly() {
        // 4 x 3 cells of 2 m that rise by 0.1 to the east and fall by 0.05 to the north: a plane of mean 0.
        double[] z = Terrain.fit(4, 3, 2, all(12, 0.1), all(12, -0.05), new boolean[12]);
        for (int i = 0; i < 12; i++) {
            assertEquals(0.2 * (i % 4 - 1.5) - 0.1 * (i / 4 - 1), z[i], 1e-9, "cell " + i);
        }
    }

    @Test
    void betweenTwoCellsTheirMeanFallCounts() {
        double[] rise = {0, 0.1, 0.3, 0.1};
        double[] expected = {-0.1875, -0.1375, 0.0625, 0.2625};
        assertArrayEquals(expected, Terrain.fit(4, 1, 1, rise, all(4, 9), new boolean[4]), 1e-9);
        assertArrayEquals(expected, Terrain.fit(1, 4, 1, all(4, 9), rise, new boolean[4]), 1e-9);
    }

    @Test
    void fallsThatDoNotFitShareTheMisfitEvenly() {
        // South row rises by 0.2 from west to east, north row not at all: each of the loop's four sides gives 0.05.
        double[] z = Terrain.fit(2, 2, 1, new double[] {0.2, 0.2, 0, 0}, all(4, 0), new boolean[4]);
        assertEquals(0.15, z[1] - z[0], 1e-9);
        assertEquals(-0.05, z[3] - z[1], 1e-9);
        assertEquals(0.05, z[3] - z[2], 1e-9);
        assertEquals(0.05, z[2] - z[0], 1e-9);
        assertEquals(0, Arrays.stream(z).sum(), 1e-12);
    }

    @Test
    void belowBuildingsFallsHardlyCount() {
        // The two sides at the loose cell carry a hundredth of the weight, so a hundred times the misfit.
        boolean[] loose = {false, false, true, false};
        double[] z = Terrain.fit(2, 2, 1, new double[] {0.2, 0.2, 0, 0}, all(4, 0), loose);
        assertEquals(0.2 - 0.2 / 202, z[1] - z[0], 1e-9);
        assertEquals(-0.2 / 202, z[3] - z[1], 1e-9);
        assertEquals(20.0 / 202, z[3] - z[2], 1e-9);
        assertEquals(20.0 / 202, z[2] - z[0], 1e-9);
    }

    @Test
    void levelGroundIsLevel() {
        assertArrayEquals(new double[6], Terrain.fit(3, 2, 0.6, new double[6], new double[6], new boolean[6]));
        assertArrayEquals(new double[1], Terrain.fit(1, 1, 0.6, all(1, 0.1), all(1, 0.1), new boolean[1]));
    }

    private static final int N = 5;

    private int[] downhill(double[] ground, int... drained) {
        boolean[] drains = new boolean[N * N];
        for (int cell : drained) {
            drains[cell] = true;
        }
        return Drainage.downhill(N, N, ground, new boolean[N * N], drains);
    }

    /** A plane over 5 x 5 cells that rises to the north by a tenth a row. */
    private static double[] plane() {
        double[] ground = new double[N * N];
        for (int i = 0; i < ground.length; i++) {
            ground[i] = 0.1 * (i / N);
        }
        return ground;
    }

    @Test
    void waterTakesTheSteepestFallAndLeavesOverTheLowEdge() {
        int[] to = downhill(plane());
        for (int i = 0; i < N * N; i++) {
            assertEquals(i < N ? -1 : i - N, to[i]);
        }
        // A fall across is steeper when its drop is over root two of that straight ahead.
        double[] ground = plane();
        ground[5] -= 0.05;
        assertEquals(5, downhill(ground)[11]);
        ground[5] += 0.02;
        assertEquals(6, downhill(ground)[11]);
    }

    @Test
    void waterGathersInAPitAndLeavesItOverTheLowestRim() {
        double[] ground = plane();
        ground[12] = -0.5;
        ground[6] = 0.02;
        int[] to = downhill(ground);
        for (int around : new int[] {11, 13, 16, 17, 18}) {
            assertEquals(12, to[around], "from " + around);
        }
        assertEquals(6, to[12], "the lowest rim is the notch");
        assertEquals(1, to[6]);
    }

    @Test
    void drainedCellsKeepTheirWaterFromTheirNeighbours() {
        int[] to = downhill(plane(), 17);
        assertEquals(-1, to[17]);
        assertEquals(17, to[22]);
        assertEquals(11, to[16]);
    }

    @Test
    void anEdgeLetsWaterOutOnlyWhereItFallsOutward() {
        // Two sides of a roof's ridge along the middle column: water leaves to the west and to the east.
        double[] ground = new double[N * N];
        for (int i = 0; i < ground.length; i++) {
            ground[i] = -0.1 * Math.abs(i % N - 2);
        }
        int[] to = downhill(ground);
        for (int row = 0; row < N; row++) {
            assertEquals(-1, to[row * N]);
            assertEquals(row * N, to[row * N + 1]);
            assertEquals(row * N + 4, to[row * N + 3]);
            assertEquals(-1, to[row * N + 4]);
        }
        // A bowl's rim lets none out but at the lowest places of the edge.
        for (int i = 0; i < ground.length; i++) {
            ground[i] = 0.1 * (Math.abs(i % N - 2) + Math.abs(i / N - 2));
        }
        int[] bowl = downhill(ground);
        assertNotEquals(-1, bowl[0]);
        assertNotEquals(-1, bowl[N * N - 1]);
    }

    @Test
    void closedCellsTakeNoWaterAndComeLast() {
        boolean[] closed = new boolean[N * N];
        closed[7] = true;
        int[] to = Drainage.downhill(N, N, plane(), closed, new boolean[N * N]);
        assertEquals(-1, to[7]);
        assertTrue(to[12] == 6 || to[12] == 8, "around the building: " + to[12]);
    }

    @Test
    void enclosedGroundDrainsAtItsLowestCell() {
        // A ring of closed cells around the middle nine, whose lowest cell gets the drain.
        boolean[] closed = new boolean[N * N];
        for (int i = 0; i < N * N; i++) {
            closed[i] = i % N == 0 || i % N == 4 || i / N == 0 || i / N == 4;
        }
        double[] ground = plane();
        ground[13] = 0.05;
        int[] to = Drainage.downhill(N, N, ground, closed, new boolean[N * N]);
        assertEquals(-1, to[13]);
        for (int around : new int[] {12, 7, 8, 17, 18}) {
            assertEquals(13, to[around], "from " + around);
        }
        assertEquals(6, to[11]);
    }

    @Test
    void ofEqualWaysTheShorterIsTaken() {
        // A level bowl with one way out: its bottom leaves by the fewest steps.
        double[] ground = all(N * N, 1);
        for (int i : new int[] {6, 7, 8, 11, 12, 13, 16, 17, 18}) {
            ground[i] = 0;
        }
        ground[2] = -1;
        int[] to = downhill(ground);
        assertEquals(-1, to[2]);
        for (int i : new int[] {6, 7, 8}) {
            assertEquals(2, to[i]);
        }
        for (int i : new int[] {11, 12, 13}) {
            assertTrue(to[i] / N == 1, "row of " + to[i]);
        }
        for (int i : new int[] {16, 17, 18}) {
            assertTrue(to[i] / N == 2, "row of " + to[i]);
        }
    }

    @Test
    void aHollowIsAParabolaWithinItsReach() {
        Hollow dip = new Hollow("dip", new Point(10, 20), 4, 2, 0.5);
        assertEquals(1, Cells.inside(dip, 10, 20));
        assertEquals(0.75, Cells.inside(dip, 12, 20), 1e-12);
        assertEquals(0.75, Cells.inside(dip, 10, 18), 1e-12);
        assertEquals(0.5, Cells.inside(dip, 8, 22), 1e-12);
        assertEquals(0, Cells.inside(dip, 14, 20), 1e-12);
        assertEquals(0, Cells.inside(dip, 20, 20));
        assertEquals(0, Cells.inside(new Hollow("none", new Point(10, 20), 0, 2, 0.5), 10, 20));
    }

    @Test
    void aHollowDeepensLevelGroundAndHoldsItsShare() {
        Yard yard = Yard.of(TestYards.lawn(20, 20)
                .cell(1)
                .hollow("dip", 10.5, 10.5, 4, 2, 0.5)
                .hollow("small", 10.5, 10.5, 2, 2, 0.2)
                .scenario());
        // 0.05 x reach in its middle: 0.2 m, and 0.1 m of the other; half way out 9/16 of the first alone.
        assertEquals(-0.3, yard.elevation(yard.cellAt(10.5, 10.5)), 1e-9);
        assertEquals(-0.2 * 0.5625, yard.elevation(yard.cellAt(12.5, 10.5)), 1e-9);
        assertEquals(0, yard.elevation(yard.cellAt(2.5, 10.5)), 1e-9);
        assertEquals(0.5, yard.hollow(yard.cellAt(10.5, 10.5)), 1e-12);
        assertEquals(0.375, yard.hollow(yard.cellAt(10.5, 12.5)), 1e-12);
    }

    @Test
    void theGroundFallsTowardTheBearingOfItsSurface() {
        Yard yard = Yard.of(TestYards.lawn(10, 10, 0.04, 90).cell(1).scenario());
        assertEquals(-0.04, yard.elevation(yard.cellAt(5.5, 5.5)) - yard.elevation(yard.cellAt(4.5, 5.5)), 1e-9);
        assertEquals(0, yard.elevation(yard.cellAt(5.5, 6.5)) - yard.elevation(yard.cellAt(5.5, 5.5)), 1e-9);
        Yard north = Yard.of(TestYards.lawn(10, 10, 0.04, 0).cell(1).scenario());
        assertEquals(-0.04, north.elevation(north.cellAt(5.5, 6.5)) - north.elevation(north.cellAt(5.5, 5.5)), 1e-9);
    }

    @Test
    void cellsCoverTheSiteAndCellsAreFoundByTheirPoints() {
        Yard yard = Yard.of(TestYards.lawn(10.2, 6).cell(2).scenario());
        assertEquals(6, yard.nx());
        assertEquals(3, yard.ny());
        assertEquals(18, yard.cells());
        assertEquals(4, yard.cellArea());
        assertEquals(3, yard.x(7));
        assertEquals(3, yard.y(7));
        assertEquals(7, yard.cellAt(2, 2));
        assertEquals(7, yard.cellAt(3.99, 3.99));
        assertEquals(0, yard.cellAt(0, 0));
        assertEquals(17, yard.cellAt(12, 6));
        assertEquals(5, yard.cellAt(12, 1));
        assertEquals(12, yard.cellAt(1, 6));
        for (double[] outside : new double[][] {{-0.01, 1}, {1, -0.01}, {12.01, 1}, {1, 6.01}, {Double.NaN, 1}}) {
            assertEquals(-1, yard.cellAt(outside[0], outside[1]));
        }
    }

    @Test
    void cellsKnowTheirSurfaceAndWhatItIsMadeOf() {
        Yard yard = Yard.of(TestYards.lawn(20, 10)
                .cell(1)
                .surface("bed", SurfaceKind.BED, 2, 2, 8, 8, 0, 0)
                .surface("path", SurfaceKind.WALK, 4, 2, 6, 8, 0, 0)
                .surface("drive", SurfaceKind.DRIVE, 12, 0, 14, 10, 0, 0)
                .surface("way", SurfaceKind.WALK, 16, 0, 18, 10, 0, 0)
                .building("house", 5, 4, 7, 6, 3, 0, false)
                .scenario());
        int lawn = yard.cellAt(0.5, 0.5);
        int path = yard.cellAt(4.5, 4.5);
        int house = yard.cellAt(5.5, 4.5);
        int drive = yard.cellAt(12.5, 5);
        int way = yard.cellAt(16.5, 5);
        assertArrayEquals(new int[] {0, 1, 2, 2, 3, 4}, new int[] {
            yard.surface(lawn),
            yard.surface(yard.cellAt(2.5, 2.5)),
            yard.surface(path),
            yard.surface(house),
            yard.surface(drive),
            yard.surface(way)
        });
        assertArrayEquals(new int[] {2, 4}, yard.walks());
        assertEquals(-1, yard.walk(lawn));
        assertEquals(0, yard.walk(path));
        assertEquals(-1, yard.walk(house));
        assertEquals(1, yard.walk(way));
        assertTrue(yard.planted(lawn) && !yard.paved(lawn) && yard.paved(path) && !yard.planted(path));
        assertTrue(yard.builtOver(house) && !yard.paved(house) && !yard.builtOver(path));
        assertEquals(0, yard.soil(lawn));
        assertEquals(-1, yard.soil(path));
        assertEquals(-1, yard.plant(drive));
        assertEquals(0, yard.plant(lawn));
        assertEquals(0, yard.paving(drive));
        assertEquals(-1, yard.paving(lawn));
        assertEquals(-1, yard.downhill(drive), "drives have drains");
        // 12 m2 of path less two cells of the house; the bed lost the path's and the house's cells.
        assertEquals(10, yard.area(2), 1e-9);
        assertEquals(36 - 12 - 2, yard.area(1), 1e-9);
        assertEquals(20, yard.area(3), 1e-9);
        yard.walks()[0] = 9;
        assertEquals(2, yard.walks()[0]);
    }

    @Test
    void aPlanNeedsItsBaseSurface() {
        YardPlan plan = TestYards.lawn(4, 4).plan();
        YardPlan baseless = new YardPlan(
                plan.size(),
                plan.cell(),
                "nowhere",
                plan.surfaces(),
                plan.structures(),
                plan.trees(),
                plan.vents(),
                plan.hollows(),
                plan.furnishings());
        IllegalArgumentException e = assertThrows(
                IllegalArgumentException.class,
                () -> new Cells(baseless, TestYards.catalogue(), new Geometry(baseless, 1)));
        assertTrue(e.getMessage().contains("nowhere"), e.getMessage());
    }
}
