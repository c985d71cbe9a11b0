package provingyard.picture;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import provingyard.scenario.Point;

class PathTest {

    @Test
    void readsLinesAbsoluteAndRelative() {
        Path expected = Path.polygon(List.of(new Point(1, 2), new Point(4, 2), new Point(4, 6.5), new Point(-1, 6)));
        assertEquals(expected, Path.svg("M1 2H4V6.5L-1 6Z"));
        assertEquals(expected, Path.svg("m1,2 h3v4.5l-5-.5z"));
        assertEquals(expected, Path.svg("M1 2 4 2 4 6.5-1 6Z"));
    }

    @Test
    void relativeStartsAgainAfterClosing() {
        Path p = Path.svg("M2 3L5 3L5 5Zl1 1");
        assertArrayEquals(new double[] {2, 3, 5, 5}, p.bounds(), 1e-12);
    }

    @Test
    void readsCurves() {
        Path.Builder b = Path.builder();
        b.moveTo(0, 0);
        b.cubicTo(0, 1, 2, 3, 4, 4);
        b.quadTo(5, 5, 6, 4);
        assertEquals(b.build(), Path.svg("M0 0C0 1 2 3 4 4Q5 5 6 4"));
    }

    @Test
    void arcsLieOnTheirCircle() {
        // Half a circle about (5, 0): over it for one sweep flag, under it for the other.
        assertArrayEquals(new double[] {0, -5, 10, 0}, Path.svg("M0 0A5 5 0 0 1 10 0").bounds(), 1e-9);
        assertArrayEquals(new double[] {0, 0, 10, 5}, Path.svg("M0 0A5 5 0 0 0 10 0").bounds(), 1e-9);
        // Three quarters about (5, 5) from (5, 0) clockwise on the screen end at (0, 5).
        assertArrayEquals(new double[] {0, 0, 10, 10}, Path.svg("M5 0A5 5 0 1 1 0 5").bounds(), 1e-9);
    }

    @Test
    void nonsenseIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> Path.svg("1 2L3 4"));
        assertThrows(IllegalArgumentException.class, () -> Path.svg("M1 2T3 4"));
        assertThrows(IllegalArgumentException.class, () -> Path.svg("M1 x"));
    }

    @Test
    void everyIconLiesOnItsGrid() {
        assertFalse(Icons.all().isEmpty());
        for (Icons.Icon icon : Icons.all()) {
            for (String d : List.of(icon.fill(), icon.line())) {
                double[] b = Path.svg(d).bounds();
                assertFalse(b[0] < -0.5 || b[1] < -0.5 || b[2] > 24.5 || b[3] > 24.5, icon.name());
            }
        }
    }
}
