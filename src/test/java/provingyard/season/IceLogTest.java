package provingyard.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import provingyard.scenario.Sites;
import provingyard.scenario.YardPlan.Surface;
import provingyard.scenario.YardPlan.SurfaceKind;

/** Iced walks are counted from one square metre, by the beat, and in foot traffic where the plan says when people walk. */
class IceLogTest {

    private final List<Surface> surfaces =
            Sites.open("quillback-clinic").orThrow().yard().surfaces();
    private final IceLog log = new IceLog(surfaces);

    private int first(SurfaceKind kind) {
        for (int i = 0; i < surfaces.size(); i++) {
            Surface s = surfaces.get(i);
            if (s.kind() == kind && (kind != SurfaceKind.WALK || s.footTraffic().size() == 2)) {
                return i;
            }
        }
        throw new IllegalStateException("the clinic has none");
    }

    private List<SeasonEvent> beat(long tick, int surface, double area) {
        double[] areas = new double[surfaces.size()];
        areas[surface] = area;
        return log.beat(tick, areas);
    }

    @Test
    void lessThanASquareMetreDoesNotCount() {
        assertTrue(beat(4, first(SurfaceKind.WALK), 0.9).isEmpty());
        assertEquals(0, log.ice().areaHours());
    }

    @Test
    void iceElsewhereThanOnAWalkDoesNotCount() {
        assertTrue(beat(4, first(SurfaceKind.TURF), 50).isEmpty());
        assertEquals(0, log.ice().mornings());
    }

    @Test
    void aWalkIsCountedByTheBeatAndToldOnce() {
        int walk = first(SurfaceKind.WALK);
        int opens = surfaces.get(walk).footTraffic().get(0).toSecondOfDay() / 60;
        long before = opens - IceLog.BEAT;
        assertEquals(SeasonEvent.Kind.WALK_ICED, beat(before, walk, 12).get(0).kind());
        assertTrue(beat(opens, walk, 12).isEmpty());
        assertEquals(
                SeasonEvent.Kind.WALK_CLEAR,
                beat(opens + IceLog.BEAT, walk, 0).get(0).kind());
        assertEquals(2, log.ice().areaHours(), 1e-12);
        assertEquals(1, log.ice().areaHoursInTraffic(), 1e-12);
        assertEquals(1, log.ice().mornings());
    }
}
