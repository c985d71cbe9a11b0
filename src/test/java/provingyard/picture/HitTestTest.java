package provingyard.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.Set;
import org.junit.jupiter.api.Test;
import provingyard.scenario.Point;
import provingyard.setup.SetUp;

class HitTestTest {

    private final YardShapes shapes = YardShapes.of(DemoYard.clinic());
    private final View view = View.fit(new Point(60, 36), 1280, 720, View.Free.ALL, Theme.LIGHT);

    private HitTest.Hit at(double x, double fromNorth) {
        Point p = DemoYard.at(x, fromNorth);
        return HitTest.at(shapes, DemoYard.setUp(), view, view.x(p.x()), view.y(p.y()));
    }

    private void expect(HitTest.Kind kind, String id, HitTest.Hit hit) {
        assertEquals(kind, hit.kind());
        assertEquals(id, hit.id());
    }

    @Test
    void findsEachKind() {
        expect(HitTest.Kind.FITTING, "iso-c", at(30, 4.15));
        expect(HitTest.Kind.FITTING, "zone-1", at(9.2, 28.4));
        expect(HitTest.Kind.HEAD, "h-3-16", at(1, 12));
        expect(HitTest.Kind.PIPE, "m7", at(22, 4.15));
        expect(HitTest.Kind.TREE, "tree-0", at(7.6, 11.2));
        expect(HitTest.Kind.STRUCTURE, "clinic", at(22, 15));
        expect(HitTest.Kind.STRUCTURE, "porch-roof", at(32, 19));
        expect(HitTest.Kind.STRUCTURE, "fence", at(20, 0.13));
        expect(HitTest.Kind.VENT, "dryer", at(36.6, 8.2));
        expect(HitTest.Kind.SURFACE, "parking", at(52, 12));
        expect(HitTest.Kind.SURFACE, "north-walk", at(40, 5.5));
        expect(HitTest.Kind.SURFACE, "lawn", at(25, 7.2));
        expect(HitTest.Kind.DRIP_LINE, "d3", at(40, 18.8));
        expect(HitTest.Kind.OFF_SITE, "", at(70, 12));
    }

    @Test
    void sensorIsInFrontAndHitOnItsDisc() {
        Point foot = DemoYard.at(38.6, 7.4);
        double x = view.x(foot.x());
        double y = view.y(foot.y());
        HitTest.Hit disc = HitTest.at(shapes, DemoYard.setUp(), view, x + 6, y - SensorArt.rise(Theme.LIGHT));
        expect(HitTest.Kind.SENSOR, "freeze-1", disc);
        expect(HitTest.Kind.SENSOR, "freeze-1", HitTest.at(shapes, DemoYard.setUp(), view, x, y));
        HitTest.Hit without = HitTest.at(shapes, SetUp.CLOCK_ALONE, view, x, y);
        expect(HitTest.Kind.SURFACE, "lawn", without);
    }

    @Test
    void hiddenPipesAreNotHit() {
        View bare = view.layers(Set.of());
        Point p = DemoYard.at(1, 12);
        expect(HitTest.Kind.SURFACE, "lawn", HitTest.at(shapes, SetUp.CLOCK_ALONE, bare, view.x(p.x()), view.y(p.y())));
    }

    @Test
    void pipesTellHowFarAlong() {
        HitTest.Hit hit = HitTest.pipe(shapes, view, DemoYard.at(25.4, 4.3), 16);
        expect(HitTest.Kind.PIPE, "m7", hit);
        assertEquals(10, hit.along(), 1e-9);
        assertEquals(DemoYard.at(25.4, 4.15), hit.at());
        assertNull(HitTest.pipe(shapes, view, DemoYard.at(25, 12), 16));
    }

    @Test
    void pixelsAndMetresAgree() {
        Point p = view.yard(view.x(12.5), view.y(30.25));
        assertEquals(12.5, p.x(), 1e-9);
        assertEquals(30.25, p.y(), 1e-9);
    }
}
