package provingyard.world.yard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import provingyard.TestYards;
import provingyard.numeric.RandomStreams;
import provingyard.scenario.Point;
import provingyard.scenario.YardPlan.StructureKind;
import provingyard.scenario.YardPlan.SurfaceKind;

/** Surfaces by cell and the way of runoff. */
class YardCellsTest {

    private static TestYards clinic() {
        return TestYards.lawn(48.768, 36.576, 0.04, 140)
                .cell(0.6096)
                .surface("bed", SurfaceKind.BED, 14, 12, 34, 27, 0.01, 180)
                .surface("walk", SurfaceKind.WALK, 20, 3, 21.8, 15, 0.02, 180)
                .surface("drive", SurfaceKind.DRIVE, 40, 3, 45, 20, 0.02, 180)
                .surface("street", SurfaceKind.STREET, 0, 0, 48.768, 3, 0.02, 180)
                .building("clinic", 16, 15, 32, 25, 4.2, 0.6, true)
                .building("shed", 2, 30, 6, 34, 2.5, 0.3, false)
                .fence("fence", 0, 36, 48, 36, 1.8)
                .tree("ash", 8, 24, 6, 9, false)
                .tree("oak", 40, 30, 8, 11, false)
                .tree("pine", 36, 8, 4, 8, true)
                .hollow("dip", 8, 12, 4, 2, 0.3);
    }

    @Tag("unit")
    @Test
    void laterSurfacesLieOverEarlierOnes() {
        Yard yard = Yard.of(clinic().scenario());
        assertEquals(80, yard.nx());
        assertEquals(60, yard.ny());
        assertEquals(SurfaceKind.WALK, yard.kind(yard.cellAt(20.9, 13)));
        assertEquals(SurfaceKind.BED, yard.kind(yard.cellAt(15, 13)));
        assertEquals(SurfaceKind.TURF, yard.kind(yard.cellAt(2, 20)));
        int walk = yard.cellAt(20.9, 13);
        assertEquals(0, yard.walk(walk));
        assertEquals(2, yard.walks()[0]);
        assertTrue(yard.paved(walk) && !yard.planted(walk));
        assertEquals(-1, yard.soil(walk));
        assertEquals(0, yard.paving(walk));
        assertEquals(0, yard.soil(yard.cellAt(2, 20)));
        assertEquals(-1, yard.cellAt(-0.01, 5));
        assertEquals(-1, yard.cellAt(5, 36.6));
        assertEquals(yard.cells() - 1, yard.cellAt(48.768, 36.576));
    }

    @Tag("unit")
    @Test
    void noGroundInsideBuildings() {
        Yard yard = Yard.of(clinic().scenario());
        int inside = yard.cellAt(24, 20);
        assertTrue(yard.builtOver(inside));
        assertFalse(yard.planted(inside) || yard.paved(inside));
        assertEquals(0, yard.rainShare(inside));
        assertEquals(-1, yard.downhill(inside));
        double ground = 0;
        for (int s = 0; s < yard.plan().surfaces().size(); s++) {
            ground += yard.area(s);
        }
        assertEquals(yard.cells() * yard.cellArea() - 160 - 16, ground, 12);
    }

    @Tag("unit")
    @Test
    void waterRunsDownTheLawnsFall() {
        Yard yard = Yard.of(TestYards.lawn(12, 12, 0.04, 180).scenario());
        for (int i = 0; i < yard.cells(); i++) {
            assertEquals(i < yard.nx() ? -1 : i - yard.nx(), yard.downhill(i), "cell " + i);
        }
        double fall = yard.elevation(yard.cellAt(6, 9)) - yard.elevation(yard.cellAt(6, 3));
        assertEquals(0.04 * 6, fall, 0.025);
    }

    @Tag("unit")
    @Test
    void aHollowGathersTheWaterAroundIt() {
        Yard yard = Yard.of(TestYards.lawn(24, 24, 0.01, 180)
                .hollow("dip", 12, 12, 5, 2, 0.4)
                .scenario());
        assertEquals(0.4, yard.hollow(yard.cellAt(12, 12)), 0.01);
        assertEquals(0, yard.hollow(yard.cellAt(2, 12)));
        int west = yard.cellAt(9, 12);
        int east = yard.cellAt(15, 12);
        assertTrue(yard.x(yard.downhill(west)) > yard.x(west), "the dip's west side runs east, into it");
        assertTrue(yard.x(yard.downhill(east)) < yard.x(east));
        int[] upstream = new int[yard.cells()];
        for (int from = 0; from < yard.cells(); from++) {
            for (int cell = from; cell >= 0; cell = yard.downhill(cell)) {
                upstream[cell]++;
            }
        }
        int most = IntStream.range(0, yard.cells())
                .filter(c -> yard.hollow(c) > 0.35)
                .map(c -> upstream[c])
                .max()
                .orElse(0);
        assertTrue(most > 100, "cells that drain through its bottom: " + most);
    }

    @Tag("unit")
    @Test
    void runoffAlwaysLeavesTheSite() {
        assertDrains(Yard.of(clinic().scenario()));
    }

    @Tag("unit")
    @Test
    void aCourtyardDrainsInside() {
        List<Point> ring = List.of(
                new Point(3, 3),
                new Point(15, 3),
                new Point(15, 15),
                new Point(3, 15),
                new Point(3, 3),
                new Point(6, 6),
                new Point(6, 12),
                new Point(12, 12),
                new Point(12, 6),
                new Point(6, 6));
        Yard yard = Yard.of(TestYards.lawn(18, 18, 0.02, 90)
                .structure("ring", StructureKind.BUILDING, 4, 0, false, ring)
                .scenario());
        assertFalse(yard.builtOver(yard.cellAt(9, 9)));
        assertDrains(yard);
    }

    private static void assertDrains(Yard yard) {
        for (int i = 0; i < yard.cells(); i++) {
            int steps = 0;
            for (int cell = i; cell >= 0; cell = yard.downhill(cell)) {
                assertTrue(steps++ < yard.cells(), "water from cell " + i + " runs in a ring");
            }
            int to = yard.downhill(i);
            if (to >= 0) {
                assertFalse(yard.builtOver(to));
                assertTrue(Math.abs(yard.x(to) - yard.x(i)) < 1.01 * yard.cellSize());
                assertTrue(Math.abs(yard.y(to) - yard.y(i)) < 1.01 * yard.cellSize());
            }
        }
    }

    @Tag("unit")
    @Test
    void aMirroredYardIsTheMirroredAnswer() {
        Yard a = Yard.of(skewed(false));
        Yard b = Yard.of(skewed(true));
        int wrong = 0;
        for (int i = 0; i < a.cells(); i++) {
            int j = mirrored(a, i);
            assertEquals(a.skyView(i), b.skyView(j), 1e-9);
            assertEquals(a.rainShare(i), b.rainShare(j), 1e-9);
            assertEquals(a.elevation(i), b.elevation(j), 1e-6);
            int to = a.downhill(i);
            wrong += (to < 0 ? -1 : mirrored(a, to)) == b.downhill(j) ? 0 : 1;
        }
        assertTrue(wrong < a.cells() / 100, wrong + " cells drain elsewhere");
        assertEquals(a.shelter(6, 8, 1.5, 30), b.shelter(18, 8, 1.5, 330), 1e-9);
        assertEquals(a.sunlit(6, 8, 1.5, 20, 130), b.sunlit(18, 8, 1.5, 20, 230), 1e-9);
    }

    private static int mirrored(Yard yard, int cell) {
        return cell - cell % yard.nx() + yard.nx() - 1 - cell % yard.nx();
    }

    private static provingyard.scenario.Scenario skewed(boolean mirror) {
        TestYards t = TestYards.lawn(24, 18, 0.03, mirror ? 200 : 160);
        double[] x = mirror ? new double[] {11, 17} : new double[] {7, 13};
        t.building("house", x[0], 5, x[1], 11, 3.5, 0.5, true);
        t.tree("oak", mirror ? 5 : 19, 12, 5, 8, true);
        return t.hollow("dip", mirror ? 20 : 4, 13, 3, 2, 0.3).scenario();
    }

    @Tag("unit")
    @Test
    void aShiftedYardIsTheShiftedAnswer() {
        Yard a = Yard.of(
                TestYards.lawn(24, 18).building("h", 6, 6, 12, 9, 3, 0.5, true).scenario());
        Yard b = Yard.of(
                TestYards.lawn(24, 18).building("h", 9, 9, 15, 12, 3, 0.5, true).scenario());
        assertEquals(a.skyView(5, 5, 0.4), b.skyView(8, 8, 0.4), 1e-9);
        assertEquals(a.rainShare(6.3, 5.8, 0.4), b.rainShare(9.3, 8.8, 0.4), 1e-9);
        assertEquals(a.shelter(5, 5, 1, 77), b.shelter(8, 8, 1, 77), 1e-9);
        assertEquals(a.skyView(a.cellAt(4, 4)), b.skyView(b.cellAt(7, 7)), 1e-9);
    }

    @Property(tries = 60)
    void randomYardsAreCoveredAndDrain(
            @ForAll @IntRange(min = 0, max = 1_000_000) int seed,
            @ForAll @DoubleRange(min = 2, max = 25) double east,
            @ForAll @DoubleRange(min = 2, max = 25) double north) {
        Yard yard = Yard.of(random(seed, east, north).scenario());
        assertTrue(yard.nx() * yard.cellSize() >= east - 1e-3);
        for (int i = 0; i < yard.cells(); i++) {
            assertTrue(yard.surface(i) >= 0);
            assertTrue(yard.skyView(i) >= 0 && yard.skyView(i) <= 1);
            assertTrue(yard.rainShare(i) >= 0 && yard.rainShare(i) <= 1 + 1e-12);
            assertEquals(i, yard.cellAt(yard.x(i), yard.y(i)));
        }
        assertDrains(yard);
        double factor = yard.shelter(east / 3, north / 3, 1.5, seed % 360);
        assertTrue(factor > 0 && factor <= 1.4, "wind factor " + factor);
    }

    private static TestYards random(int seed, double east, double north) {
        long key = new RandomStreams(seed).key("yard");
        double[] u = new double[200];
        for (int i = 0; i < u.length; i++) {
            u[i] = RandomStreams.uniform(key, i);
        }
        TestYards t = TestYards.lawn(east, north, 0.08 * u[0], 360 * u[1]);
        int k = 2;
        for (int n = 0; n < 3; n++) {
            List<Point> corners = new ArrayList<>();
            for (int c = 0; c < 3 + n; c++) {
                corners.add(new Point(east * (1.4 * u[k++] - 0.2), north * (1.4 * u[k++] - 0.2)));
            }
            StructureKind kind = StructureKind.values()[(int) (4 * u[k++])];
            t.structure("s" + n, kind, 5 * u[k++], u[k++], n == 0, corners);
            double x = east * u[k++];
            double y = north * u[k++];
            SurfaceKind surface = SurfaceKind.values()[(int) (5 * u[k++])];
            t.surface("f" + n, surface, x, y, x + 6 * u[k++], y + 6 * u[k++], 0.05 * u[k++], 360 * u[k++]);
            t.tree("t" + n, east * u[k++], north * u[k++], 1 + 6 * u[k++], 2 + 8 * u[k++], u[k++] < 0.5);
            t.hollow("h" + n, east * u[k++], north * u[k++], 6 * u[k++], 3 * u[k++], u[k++]);
        }
        return t;
    }
}
