package provingyard.picture;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import provingyard.scenario.Scenario;
import provingyard.season.Snapshot;
import provingyard.setup.SetUp;

/** Facts of the made pictures, pixel by pixel. */
class BackdropTest {

    private static final int WIDTH = 500;
    private static final int HEIGHT = 300;

    private static Scenario clinic;
    private static YardShapes shapes;
    private static View view;

    @BeforeAll
    static void yard() {
        clinic = DemoYard.clinic();
        shapes = YardShapes.of(clinic);
        view = View.fit(clinic.yard().size(), WIDTH, HEIGHT, View.Free.ALL, Theme.LIGHT)
                .layers(EnumSet.noneOf(Layer.class));
    }

    /** The morning's snapshot under another sky, with other leaks, film and ice. */
    private static Snapshot under(Snapshot.Sky sky, List<Snapshot.Leak> leaks, float[] film, float[] ice) {
        Snapshot s = DemoYard.snapshot(clinic, false);
        return new Snapshot(
                s.tick(),
                s.clock(),
                sky,
                s.nx(),
                s.ny(),
                s.wetness(),
                film,
                ice,
                s.stress(),
                s.cold(),
                s.paving(),
                s.zones(),
                s.heads(),
                s.links(),
                s.sensors(),
                leaks,
                s.masterOpen(),
                s.supplyFlow(),
                s.ledger(),
                s.spent());
    }

    private static Snapshot at(double altitude) {
        return under(sky(altitude), List.of(), new float[6000], new float[6000]);
    }

    private static Snapshot.Sky sky(double altitude) {
        return new Snapshot.Sky(9, 4, 0, 258, 0, 0, 0, altitude, 100);
    }

    private static int[] ground(Snapshot snapshot) {
        return new Backdrop(shapes).ground(view, 1, snapshot).premultiplied();
    }

    private static double brightness(int[] pixels) {
        double sum = 0;
        for (int p : pixels) {
            sum += (p >> 16 & 255) + (p >> 8 & 255) + (p & 255);
        }
        return sum / pixels.length / 765;
    }

    @Test
    void nightLooksLikeNightAndDuskLiesBetween() {
        double day = brightness(ground(at(40)));
        double dusk = brightness(ground(at(-2)));
        double night = brightness(ground(at(-20)));
        assertTrue(night < 0.45 * day, day + " by day, " + night + " by night");
        assertTrue(dusk > night + 0.1 && dusk < day - 0.1, day + ", " + dusk + ", " + night);
    }

    @Test
    void rainDarkensTheGround() {
        Snapshot.Sky wet = new Snapshot.Sky(9, 4, 3, 258, 0, 1, 8, 40, 100);
        double dry = brightness(ground(at(40)));
        double rained = brightness(ground(under(wet, List.of(), new float[6000], new float[6000])));
        assertTrue(rained < 0.85 * dry, dry + " dry, " + rained + " in rain");
    }

    @Test
    void whatIsKeptGivesTheSamePixelsAsWhatIsNew() {
        Backdrop kept = new Backdrop(shapes);
        kept.ground(view, 1, at(40));
        kept.top(view, 1, SetUp.CLOCK_ALONE, at(40));
        assertArrayEquals(ground(at(-2)), kept.ground(view, 1, at(-2)).premultiplied());
        assertArrayEquals(
                new Backdrop(shapes).top(view, 1, SetUp.CLOCK_ALONE, at(-2)).premultiplied(),
                kept.top(view, 1, SetUp.CLOCK_ALONE, at(-2)).premultiplied());
    }

    @Test
    void twiceThePixelsForTwiceTheScale() {
        Backdrop.Picture one = new Backdrop(shapes).ground(view, 1, at(40));
        Backdrop.Picture two = new Backdrop(shapes).ground(view, 2, at(40));
        assertEquals(2 * one.width(), two.width());
        assertEquals(2 * one.height(), two.height());
        int finer = 0;
        for (int y = 0; y < two.height(); y += 2) {
            for (int x = 0; x < two.width(); x += 2) {
                int at = y * two.width() + x;
                finer += two.premultiplied()[at] != two.premultiplied()[at + 1] ? 1 : 0;
            }
        }
        // A picture that was only stretched would have pairs of like pixels.
        assertTrue(finer > 0.2 * one.width() * one.height(), "pairs that differ: " + finer);
    }

    @Test
    void canopiesLeaveTheRestTransparent() {
        int[] top = new Backdrop(shapes).top(view, 1, SetUp.CLOCK_ALONE, at(-2)).premultiplied();
        long clear = java.util.Arrays.stream(top).filter(p -> p == 0).count();
        long solid = java.util.Arrays.stream(top).filter(p -> p >>> 24 == 255).count();
        assertTrue(clear > top.length / 2 && solid > top.length / 30, clear + " clear, " + solid + " solid");
    }

    @Test
    void filmAndIceStayOnThePaving() {
        float[] all = new float[6000];
        java.util.Arrays.fill(all, 0.6f);
        int[] bare = ground(at(40));
        for (boolean iced : new boolean[] {false, true}) {
            float[] none = new float[6000];
            int[] wet = ground(under(sky(40), List.of(), iced ? none : all, iced ? all : none));
            int on = 0;
            for (int y = 0; y < HEIGHT; y++) {
                for (int x = 0; x < WIDTH; x++) {
                    if (wet[y * WIDTH + x] != bare[y * WIDTH + x]) {
                        on++;
                        assertTrue(nearPaving(x + 0.5, y + 0.5), (iced ? "ice" : "film") + " at " + x + ", " + y);
                    }
                }
            }
            assertTrue(on > 500, "pixels: " + on);
        }
    }

    private static boolean nearPaving(double x, double y) {
        for (int dy = -2; dy <= 2; dy++) {
            for (int dx = -2; dx <= 2; dx++) {
                var p = view.yard(x + dx, y + dy);
                if (!shapes.kindAt(p.x(), p.y()).planted()) {
                    return true;
                }
            }
        }
        return false;
    }

    @Test
    void onlyALeakThatShowsAtTheSurfaceIsSeenAndItsStainGrows() {
        int[] bare = ground(at(40));
        int[] hidden = ground(leaking(new Snapshot.Leak(20, 18, 2e-4, 600, false)));
        assertArrayEquals(bare, hidden);
        int small = differing(bare, ground(leaking(new Snapshot.Leak(20, 18, 2e-3, 2, true))));
        int great = differing(bare, ground(leaking(new Snapshot.Leak(20, 18, 2e-3, 60, true))));
        assertTrue(small > 20 && great > 2 * small, small + " pixels, then " + great);
    }

    private static Snapshot leaking(Snapshot.Leak leak) {
        return under(sky(40), List.of(leak), new float[6000], new float[6000]);
    }

    private static int differing(int[] a, int[] b) {
        int count = 0;
        for (int i = 0; i < a.length; i++) {
            count += a[i] != b[i] ? 1 : 0;
        }
        return count;
    }
}
