package provingyard.world.ground;

import java.util.Arrays;

/**
 * How fast each planted cell can take in water: a Green-Ampt front, redistribution in the pauses, and a fresh front into
 * the wetted zone with each new pulse. The water itself is kept by the root zone; here is only its shape.
 *
 * <p>A wetted zone of {@code zone} m of water above the ambient content reaches {@code depth} m down. Under water its
 * content is saturation. In a pause it sinks and thins: d(theta)/dt = -(K(theta) - K(ambient) + K_s psi g / Z) / Z with
 * the zone's water kept (Ogden and Saghafian 1997, rectangular profile; from memory). A new pulse starts a front in soil
 * of that content, hence takes in fast at first, until it overtakes the old front: so cycle and soak works for the right
 * reason. After a day's pause, or when the zone has spread through the root zone, the event is over.
 *
 * <p>Water that comes no faster than the saturated conductivity always soaks in and builds no front of its own: it only
 * thickens the zone that is there.
 */
final class WettingFronts {

    private static final double MINUTE = 60;
    private static final int EVENT_ENDS = 24 * 60;

    private final SoilCurve[] curve;
    private final double[] conductivity;
    private final double[] roots;
    private final double[] zone;
    private final double[] depth;
    private final double[] pulse;
    private final double[] ambient;
    private final long[] lastWet;

    /** Fresh soil; conductivity in m/s and root depth in m by slot. */
    WettingFronts(SoilCurve[] curve, double[] conductivity, double[] roots) {
        this.curve = curve;
        this.conductivity = conductivity;
        this.roots = roots;
        int n = roots.length;
        zone = new double[n];
        depth = new double[n];
        pulse = new double[n];
        ambient = new double[n];
        lastWet = new long[n];
        Arrays.fill(lastWet, Long.MIN_VALUE / 2);
    }

    private WettingFronts(WettingFronts from) {
        curve = from.curve;
        conductivity = from.conductivity;
        roots = from.roots;
        zone = from.zone.clone();
        depth = from.depth.clone();
        pulse = from.pulse.clone();
        ambient = from.ambient.clone();
        lastWet = from.lastWet.clone();
    }

    WettingFronts copy() {
        return new WettingFronts(this);
    }

    /**
     * Takes in what it can within some minutes.
     *
     * @param available depth of water on the cell in m
     * @param store water in the root zone in m
     * @param now minute of the season at their end
     * @param minutes their number
     * @return depth taken in, in m
     */
    double takeIn(int s, double available, double store, long now, int minutes) {
        long pause = now - lastWet[s] - minutes;
        double seconds = minutes * MINUTE;
        boolean slow = available <= conductivity[s] * seconds;
        if (pause > 0) {
            if (slow) {
                zone[s] += zone[s] > 0 ? available : 0;
                return available;
            }
            afterPause(s, pause, store);
        }
        lastWet[s] = now;
        double saturation = curve[s].soil.saturation();
        double content = depth[s] > 0 ? ambient[s] + zone[s] / depth[s] : saturation;
        double missing = saturation - content;
        if (missing > 1e-6) {
            double taken = slow ? available : Math.min(available, capacity(s, missing, pulse[s], seconds));
            pulse[s] += taken;
            if (pulse[s] >= missing * depth[s]) {
                zone[s] += pulse[s];
                pulse[s] = 0;
                depth[s] = zone[s] / (saturation - ambient[s]);
            }
            return taken;
        }
        double fills = saturation - ambient[s];
        double taken = slow ? available : Math.min(available, capacity(s, fills, zone[s], seconds));
        zone[s] += taken;
        depth[s] = zone[s] / fills;
        return taken;
    }

    private double capacity(int s, double fills, double before, double seconds) {
        return GreenAmpt.quadratic(conductivity[s], curve[s].soil.suction() * fills, before, seconds);
    }

    private void afterPause(int s, long minutes, double store) {
        if (minutes < EVENT_ENDS && zone[s] + pulse[s] > 0) {
            merge(s);
            depth[s] = spread(s, minutes);
            if (depth[s] < roots[s]) {
                return;
            }
        }
        zone[s] = 0;
        pulse[s] = 0;
        depth[s] = 0;
        double saturation = curve[s].soil.saturation();
        ambient[s] = Math.min(store / roots[s], saturation - 0.005);
    }

    /** The pulse and the zone it lies in become one zone of the same depth and water. */
    private void merge(int s) {
        zone[s] += pulse[s];
        pulse[s] = 0;
        depth[s] = Math.max(depth[s], zone[s] / (curve[s].soil.saturation() - ambient[s]));
    }

    /** Depth of the zone after a pause of so many minutes; steps grow from half a minute. */
    private double spread(int s, long minutes) {
        double left = minutes * MINUTE;
        double step = 30;
        double z = depth[s];
        double water = zone[s];
        double low = ambient[s];
        double rate = conductivity[s] / water;
        SoilCurve of = curve[s];
        double below = of.conductivity(low);
        double driveBelow = of.drive(low);
        double suction = of.soil.suction() / (1 - driveBelow);
        while (left > 0 && z < roots[s]) {
            double dt = Math.min(step, left);
            double perDepth = 1 / z;
            double speed = rate * z * of.speed(low + water * perDepth, below, driveBelow, suction * perDepth);
            z += Math.min(speed * dt, 0.25 * z);
            left -= dt;
            step *= 1.3;
        }
        return Math.min(z, roots[s]);
    }

    /**
     * Content near the surface as the front leaves it, at a depth in m; NaN where no front is.
     *
     * @param average content of the whole root zone
     */
    double content(int s, double at, double average, long now) {
        long pause = now - lastWet[s];
        if (pause >= EVENT_ENDS || zone[s] + pulse[s] <= 0) {
            return Double.NaN;
        }
        double saturation = curve[s].soil.saturation();
        if (pulse[s] > 0 && pause <= 1) {
            double missing = saturation - ambient[s] - zone[s] / depth[s];
            if (at <= pulse[s] / missing) {
                return saturation;
            }
        }
        WettingFronts later = pause > 1 ? single(s) : this;
        int i = pause > 1 ? 0 : s;
        double z = pause > 1 ? later.settled(pause - 1) : depth[s];
        if (z <= 0 || z >= roots[s]) {
            return Double.NaN;
        }
        double wet = Math.min(saturation, later.ambient[i] + later.zone[i] / z);
        double below = (average * roots[s] - (z * wet + later.pulse[i])) / (roots[s] - z);
        return at <= z ? wet : Math.max(curve[s].soil.wiltingPoint() * 0.5, Math.min(below, saturation));
    }

    private WettingFronts single(int s) {
        WettingFronts one =
                new WettingFronts(new SoilCurve[] {curve[s]}, new double[] {conductivity[s]}, new double[] {roots[s]});
        one.zone[0] = zone[s];
        one.depth[0] = depth[s];
        one.pulse[0] = pulse[s];
        one.ambient[0] = ambient[s];
        return one;
    }

    private double settled(long minutes) {
        merge(0);
        return spread(0, minutes);
    }
}
