package provingyard.season;

import provingyard.scenario.Point;
import provingyard.world.weather.Spot;

/**
 * The climate at the few places that one season's sensors ask for minute by minute: found by the very same point, without
 * looking into the site's own table.
 */
final class Spots {

    private static final int MOST = 16;

    private final Site site;
    private final Point[] at = new Point[MOST];
    private final double[] height = new double[MOST];
    private final Spot[] spots = new Spot[MOST];
    private int known;

    Spots(Site site) {
        this.site = site;
    }

    Spot of(Point place, double above) {
        for (int i = 0; i < known; i++) {
            if (at[i] == place && height[i] == above) {
                return spots[i];
            }
        }
        Spot spot = site.spot(place, above);
        known = known == MOST ? 0 : known;
        at[known] = place;
        height[known] = above;
        spots[known++] = spot;
        return spot;
    }
}
