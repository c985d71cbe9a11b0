package provingyard.world.ground;

/**
 * Wetted zones of several cells that sink and thin in a pause, each with its water kept: d(theta)/dt = -(K(theta) -
 * K(ambient) + K_s psi g / Z) / Z (Ogden and Saghafian 1997, rectangular profile; from memory). Explicit steps that grow
 * from half a minute, by a quarter of the depth at most.
 *
 * <p>All zones take a step before any takes its next: a zone's step has to wait for its last one, another zone's does not,
 * so that this takes less than half the time of one zone after the other, and gives the same bits.
 */
final class SinkingZones {

    /** Zones that are worked out at once. */
    static final int MOST = 256;

    private static final double MINUTE = 60;
    private static final double FIRST_STEP = 30;
    private static final double GROWTH = 1.3;

    private final SoilCurve[] curve = new SoilCurve[MOST];
    private final double[] water = new double[MOST];
    private final double[] ambient = new double[MOST];
    private final double[] rate = new double[MOST];
    private final double[] below = new double[MOST];
    private final double[] driveBelow = new double[MOST];
    private final double[] pull = new double[MOST];
    private final double[] roots = new double[MOST];
    private final double[] depth = new double[MOST];
    private final double[] left = new double[MOST];
    private final int[] sinking = new int[MOST];
    private int count;

    /** Forgets all zones. */
    void clear() {
        count = 0;
    }

    /**
     * Adds a zone, the next in number.
     *
     * @param held its water in m above the ambient content
     * @param content ambient content
     * @param conductivity at saturation in m/s
     * @param suction head at the front in m
     * @param from its depth in m now
     * @param deepest depth in m beyond which it need not be followed
     * @param minutes that it sinks
     */
    void add(
            SoilCurve soil,
            double held,
            double content,
            double conductivity,
            double suction,
            double from,
            double deepest,
            long minutes) {
        int i = count++;
        curve[i] = soil;
        water[i] = held;
        ambient[i] = content;
        rate[i] = conductivity / held;
        below[i] = soil.conductivity(content);
        driveBelow[i] = soil.drive(content);
        pull[i] = suction / (1 - driveBelow[i]);
        depth[i] = from;
        roots[i] = deepest;
        left[i] = minutes * MINUTE;
    }

    /** Lets all zones sink. */
    void sink() {
        int active = 0;
        for (int i = 0; i < count; i++) {
            sinking[active] = i;
            active += left[i] > 0 && depth[i] < roots[i] ? 1 : 0;
        }
        for (double step = FIRST_STEP; active > 0; step *= GROWTH) {
            active = sink(step, active);
        }
    }

    /** One step of those that still sink; returns how many go on. */
    private int sink(double step, int active) {
        int on = 0;
        for (int a = 0; a < active; a++) {
            int i = sinking[a];
            double dt = step < left[i] ? step : left[i];
            double z = depth[i];
            double perDepth = 1 / z;
            double content = ambient[i] + water[i] * perDepth;
            double speed = rate[i] * z * curve[i].speed(content, below[i], driveBelow[i], pull[i] * perDepth);
            double sinks = speed * dt;
            double most = 0.25 * z;
            depth[i] = z + (sinks < most ? sinks : most);
            left[i] -= dt;
            sinking[on] = i;
            on += left[i] > 0 && depth[i] < roots[i] ? 1 : 0;
        }
        return on;
    }

    /** Depth in m to which a zone has sunk, the roots' at most. */
    double depth(int zone) {
        return Math.min(depth[zone], roots[zone]);
    }
}
