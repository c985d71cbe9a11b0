package provingyard.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import provingyard.scenario.Point;

class RoofTest {

    private static double area(Path path) {
        double[] sum = new double[3];
        double[] start = new double[2];
        path.walk(new LineWalker() {
            private double x;
            private double y;

            @Override
            public void moveTo(double toX, double toY) {
                x = toX;
                y = toY;
                start[0] = x;
                start[1] = y;
            }

            @Override
            public void lineTo(double toX, double toY) {
                sum[0] += x * toY - toX * y;
                x = toX;
                y = toY;
            }

            @Override
            public void close() {
                lineTo(start[0], start[1]);
            }
        });
        return Math.abs(sum[0]) / 2;
    }

    private static void covers(List<Point> wall, int facets) {
        Roof roof = Roof.over(wall, 0.5);
        assertEquals(facets, roof.facets().size());
        double all = roof.facets().stream().mapToDouble(f -> area(f.path())).sum();
        // Facets meet without gap or overlap.
        assertEquals(Math.abs(Polygons.area(roof.eave())), all, 0.02);
    }

    @Test
    void rectangleHasFourSlopes() {
        covers(DemoYard.points(0, 0, 10, 0, 10, 6, 0, 6), 4);
    }

    @Test
    void turnedRectangleToo() {
        covers(Polygons.turned(DemoYard.points(0, 0, 10, 0, 10, 6, 0, 6), 0.4), 4);
    }

    @Test
    void elbowHasSix() {
        covers(DemoYard.points(18.8, 8.8, 41.2, 8.8, 41.2, 17.2, 27.2, 17.2, 27.2, 22.7, 18.8, 22.7), 6);
    }

    @Test
    void eavesInOneLineShareASlope() {
        covers(DemoYard.points(0, 0, 20, 0, 20, 6, 13, 6, 13, 14, 7, 14, 7, 6, 0, 6), 7);
        covers(DemoYard.points(0, 0, 20, 0, 20, 14, 14, 14, 14, 5, 6, 5, 6, 14, 0, 14), 7);
    }

    @Test
    void otherConvexOutlinesHaveOneEach() {
        covers(DemoYard.points(0, 4, 4, 0, 10, 1, 12, 7, 5, 10), 5);
    }

    @Test
    void eaveReachesBeyondTheWall() {
        Roof roof = Roof.over(DemoYard.points(0, 0, 10, 0, 10, 6, 0, 6), 0.8);
        double[] b = Polygons.bounds(roof.eave());
        assertEquals(11.6, b[2] - b[0], 1e-9);
        assertEquals(7.6, b[3] - b[1], 1e-9);
        assertTrue(Polygons.contains(roof.eave(), 5, 33));
    }

    /** Two wings share one slope to the south; the court between them is not on it. */
    @Test
    void aSlopeOfTwoPiecesHoldsNothingBetweenThem() {
        List<Point> walls = List.of(
                new Point(0, 0),
                new Point(8, 0),
                new Point(8, 8),
                new Point(16, 8),
                new Point(16, 0),
                new Point(24, 0),
                new Point(24, 14),
                new Point(0, 14));
        Roof roof = Roof.over(walls, 0.5);
        Roof.Facet south = roof.facets().stream()
                .filter(f -> f.faceY() < -0.9 && f.path().bounds()[1] < 0)
                .findFirst()
                .orElseThrow();
        assertTrue(south.holds(3.5, 0, 1, 1));
        assertTrue(south.holds(19.5, 0, 1, 1));
        assertFalse(south.holds(11, 0, 1, 1));
        assertFalse(south.holds(7.5, 0, 2, 1));
    }
}
