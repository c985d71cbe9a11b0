package provingyard.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import provingyard.scenario.SensorKind;
import provingyard.scenario.Sites;
import provingyard.season.Needs;
import provingyard.season.Site;

class PlacingArtTest {

    private static final int WIDTH = 600;
    private static final int HEIGHT = 360;

    /** Each kind's map marks a part of the yard, never all of it, and the same twice. */
    @Test
    void mapsMarkAPartOfTheYard() {
        Site site = Site.of(Sites.open("quillback-clinic").orThrow());
        YardShapes shapes = YardShapes.of(site.scenario());
        View view = View.fit(site.scenario().yard().size(), WIDTH, HEIGHT, View.Free.ALL, Theme.LIGHT);
        for (SensorKind kind : SensorKind.values()) {
            Needs needs = site.siting().needs(kind);
            int[] first = map(shapes, view, needs);
            int marked = 0;
            for (int pixel : first) {
                marked += (pixel >>> 24) > 40 ? 1 : 0;
            }
            double share = (double) marked / first.length;
            assertTrue(share > 0.003 && share < 0.9, kind + " marks " + share);
            org.junit.jupiter.api.Assertions.assertArrayEquals(first, map(shapes, view, needs), kind.name());
            assertFalse(PlacingArt.marks(needs).isEmpty());
        }
    }

    private static int[] map(YardShapes shapes, View view, Needs needs) {
        Java2DSurface surface = new Java2DSurface(WIDTH, HEIGHT);
        PlacingArt.map(surface, shapes, view, needs);
        return YardPicture.pixels(surface.image()).argb();
    }

    @Test
    void everySwatchLooksLikeItself() {
        java.util.Set<Integer> seen = new java.util.HashSet<>();
        for (PlacingArt.Mark mark : PlacingArt.Mark.values()) {
            Java2DSurface surface = new Java2DSurface(26, 14);
            PlacingArt.swatch(surface, mark, 26, 14, Theme.LIGHT);
            seen.add(java.util.Arrays.hashCode(
                    YardPicture.pixels(surface.image()).argb()));
        }
        assertEquals(PlacingArt.Mark.values().length, seen.size());
    }

    @Test
    void aRunPlotStaysInItsWidth() {
        RunPlot.Words words = new RunPlot.Words("high 26", "20", "low 15", "settling", "05:32", "11 min");
        double[] flow = {3, 20, 20.2, 19.9, 20, 20, 20, 20};
        Java2DSurface surface = new Java2DSurface(300, 120);
        new RunPlot(flow, 20, 1.3, 0.75, 2, words).draw(surface, 250, Theme.LIGHT);
        int[] argb = YardPicture.pixels(surface.image()).argb();
        int beyond = 0;
        int within = 0;
        for (int i = 0; i < argb.length; i++) {
            boolean drawn = argb[i] >>> 24 != 0;
            beyond += drawn && i % 300 > 252 ? 1 : 0;
            within += drawn ? 1 : 0;
        }
        assertEquals(0, beyond);
        assertTrue(within > 1000);
    }
}
