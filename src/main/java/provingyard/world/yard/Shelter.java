package provingyard.world.yard;

import provingyard.numeric.Deterministic;

/**
 * Wind at a point as a share of the open wind at the same height.
 *
 * <p>Lee: behind a thing of height H the wind is least within a few H and recovers by 10 to 20 H; porous things shelter
 * a little less but further (form after measured windbreaks: Naegeli in Geiger 1965, from memory; quietest zone about
 * 4 H, effect gone by some 15 H behind belts of 15 to 18 m; numbers of this formula are common practice, no source).
 * Windward: the air slows before a wall, slightly up to 10 H (MIL-HDBK-1011/2, 4.3.2.1). The wind swings about its
 * mean, so rays within 32 degrees of it are averaged: narrow things shelter little far behind them.
 *
 * <p>Roof edges: 1.2 (lee side) to 1.4 (windward side) times the open wind within 0.5 m of the edge and up to 1 m above
 * it, fading over the next 1 m sideways and 1.5 m upward; common practice, no source.
 */
final class Shelter {

    private static final int RAYS = 4;
    private static final double STEP_DEGREES = 8;
    private static final double SWING_DEGREES = 15;
    private static final double DEEPEST = 0.85;
    private static final double STAGNATION = 0.4;

    private final Caster[] casters;
    private final SkyDome dome;
    private final double[] weights = new double[2 * RAYS + 1];

    Shelter(Caster[] casters, SkyDome dome) {
        this.casters = casters;
        this.dome = dome;
        double sum = 0;
        for (int k = -RAYS; k <= RAYS; k++) {
            double swings = k * STEP_DEGREES / SWING_DEGREES;
            weights[k + RAYS] = Deterministic.exp(-0.5 * swings * swings);
            sum += weights[k + RAYS];
        }
        for (int k = 0; k < weights.length; k++) {
            weights[k] /= sum;
        }
    }

    /** Wind factor at a point for wind from a bearing in degrees. */
    double factor(double x, double y, double h, double windFrom) {
        double[] scratch = dome.scratch();
        double[] edge = new double[casters.length];
        double speedUp = 0;
        for (int i = 0; i < casters.length; i++) {
            edge[i] = roofEdge(casters[i], x, y, h);
            speedUp = Math.max(speedUp, edge[i] * overEdge(casters[i], x, y, windFrom));
        }
        double mean = 0;
        for (int k = -RAYS; k <= RAYS; k++) {
            double bearing = Math.toRadians(windFrom + k * STEP_DEGREES);
            double dx = Deterministic.sin(bearing);
            double dy = Deterministic.cos(bearing);
            mean += weights[k + RAYS]
                    * (1 - strongest(x, y, h, dx, dy, edge, scratch, true))
                    * (1 - strongest(x, y, h, -dx, -dy, edge, scratch, false));
        }
        return mean * (1 + speedUp);
    }

    private double strongest(
            double x, double y, double h, double dx, double dy, double[] edge, double[] scratch, boolean lee) {
        double most = 0;
        for (int i = 0; i < casters.length; i++) {
            Caster c = casters[i];
            double reached = c.sheltersAt(h) * (1 - edge[i]);
            if (reached > 0 && !c.misses(x, y, dx, dy)) {
                double heights = c.meets(x, y, dx, dy, scratch) / c.height;
                if (heights < 60) {
                    double loss = lee ? leeLoss(heights, c.porosity) : windwardLoss(heights, c.porosity);
                    most = Math.max(most, reached * loss);
                }
            }
        }
        return most;
    }

    /** Share of the open wind lost at a distance of so many heights behind a thing. */
    static double leeLoss(double heights, double porosity) {
        double x = heights / (7 + 6 * porosity);
        return DEEPEST * (1 - porosity * porosity) * Deterministic.exp(-x * Math.sqrt(x));
    }

    private static double windwardLoss(double heights, double porosity) {
        return STAGNATION * (1 - porosity) * Deterministic.exp(-heights / 3);
    }

    /** How much a point is at a roof's edge: 1 at it, 0 away from it. */
    private static double roofEdge(Caster c, double x, double y, double h) {
        double above = h - c.height;
        if (!(c instanceof Caster.Roofed roofed) || above < -0.05 || above > 2.5) {
            return 0;
        }
        double aside = Math.max(0, Math.min(1, 1.5 - roofed.roof.distance(x, y)));
        return aside * Math.min(1, (2.5 - above) / 1.5);
    }

    private static double overEdge(Caster c, double x, double y, double windFrom) {
        if (!(c instanceof Caster.Roofed roofed) || roofed.roof.corners() == 0) {
            return 0;
        }
        int edge = roofed.roof.nearestEdge(x, y);
        double b = Math.toRadians(windFrom);
        double against =
                roofed.roof.normalX(edge) * Deterministic.sin(b) + roofed.roof.normalY(edge) * Deterministic.cos(b);
        return 0.3 + 0.1 * against;
    }
}
