package provingyard.study;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;
import provingyard.numeric.RandomStreams;
import provingyard.scenario.Point;
import provingyard.season.Site;

/**
 * Places where a post or a probe can stand: in plants, since nobody drives one into a walk. A coarse grid over the yard
 * and a few drawn with the search's seed.
 */
final class Spots {

    static final int ACROSS = 5;
    static final int UP = 4;
    static final int DRAWN = 4;
    private static final int TRIES = 200;

    private Spots() {}

    /** The spots of a site. */
    static List<Point> of(Site site, RandomStreams streams) {
        List<Point> spots = new ArrayList<>();
        Point size = site.scenario().yard().size();
        for (int j = 0; j < UP; j++) {
            for (int i = 0; i < ACROSS; i++) {
                addIfGood(site, spots, (i + 0.5) * size.x() / ACROSS, (j + 0.5) * size.y() / UP);
            }
        }
        UniformRandomProvider random = streams.sequence("spots");
        int wanted = spots.size() + DRAWN;
        for (int i = 0; i < TRIES && spots.size() < wanted; i++) {
            addIfGood(site, spots, random.nextDouble() * size.x(), random.nextDouble() * size.y());
        }
        return spots;
    }

    /** To the decimetre, as on a plan. */
    private static void addIfGood(Site site, List<Point> spots, double x, double y) {
        Point spot = new Point(Math.rint(10 * x) / 10, Math.rint(10 * y) / 10);
        if (site.siting().planted(spot) && !site.siting().insideBuilding(spot) && !spots.contains(spot)) {
            spots.add(spot);
        }
    }
}
