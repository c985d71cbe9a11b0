package provingyard.world.ground;

import java.util.Arrays;

/**
 * How fast each planted cell can take in water: a Green-Ampt front, redistribution in the pauses, and a fresh front into
 * the wetted zone with each new pulse. The water itself is kept by the root zone; here is only its shape.
 *
 * <p>The front of the present pulse holds {@code front} m of water and fills {@code fills} of the soil's volume, up to
 * saturation. It starts in the zone that earlier pulses left: {@code zone} m of water above the ambient content, {@code
 * depth} m deep. In a pause the front joins the zone, which sinks and thins ({@link SinkingZones}). A new pulse starts a
 * front in soil of that content, hence takes in fast at first, until it overtakes the zone: so cycle and soak works for
 * the right reason. After a day's pause, or when the zone has spread through the root zone, the event is over.
 *
 * <p>Water that comes no faster than the saturated conductivity always soaks in and builds no front of its own: it only
 * thickens what is there.
 */
final class WettingFronts {

    private static final double MINUTE = 60;
    private static final int EVENT_ENDS = 24 * 60;

    /** Room in a zone that is as good as saturated, m3/m3. */
    private static final double SATURATED = 1e-6;

    private final SoilCurve[] curve;
    private final double[] conductivity;
    private final double[] roots;
    /** Volume of pores by slot. */
    private final double[] pores;

    private final double[] suction;
    private final double[] front;
    private final double[] fills;
    private final double[] zone;
    private final double[] depth;
    private final double[] ambient;
    private final long[] lastWet;
    private final SinkingZones sinking = new SinkingZones();

    /** Fresh soil; conductivity in m/s and root depth in m by slot. */
    WettingFronts(SoilCurve[] curve, double[] conductivity, double[] roots) {
        this.curve = curve;
        this.conductivity = conductivity;
        this.roots = roots;
        int n = roots.length;
        pores = Arrays.stream(curve).mapToDouble(c -> c.soil.saturation()).toArray();
        suction = Arrays.stream(curve).mapToDouble(c -> c.soil.suction()).toArray();
        front = new double[n];
        fills = new double[n];
        zone = new double[n];
        depth = new double[n];
        ambient = new double[n];
        lastWet = new long[n];
        Arrays.fill(lastWet, Long.MIN_VALUE / 2);
    }

    private WettingFronts(WettingFronts from) {
        curve = from.curve;
        conductivity = from.conductivity;
        roots = from.roots;
        pores = from.pores;
        suction = from.suction;
        front = from.front.clone();
        fills = from.fills.clone();
        zone = from.zone.clone();
        depth = from.depth.clone();
        ambient = from.ambient.clone();
        lastWet = from.lastWet.clone();
    }

    WettingFronts copy() {
        return new WettingFronts(this);
    }

    /** Takes in water (m) that comes no faster than the saturated conductivity. */
    void thicken(int s, double water) {
        if (front[s] + zone[s] > 0) {
            front[s] += water;
        }
    }

    /** Whether a cell's front paused before the minutes up to now. */
    boolean paused(int s, long now, int minutes) {
        return now - lastWet[s] > minutes;
    }

    /**
     * Starts the fronts of new pulses in cells whose fronts paused, each after its own pause.
     *
     * @param slots the cells, the first {@code count} of the array
     * @param store water in the root zone in m by slot
     * @param now minute of the season at the end of the minutes
     * @param minutes their number
     */
    void wake(int[] slots, int count, double[] store, long now, int minutes) {
        for (int from = 0; from < count; from += SinkingZones.MOST) {
            int to = Math.min(count, from + SinkingZones.MOST);
            sink(slots, from, to, now - minutes);
            int sunk = 0;
            for (int n = from; n < to; n++) {
                int s = slots[n];
                if (goesOn(s, now - minutes)) {
                    resume(s, sinking.depth(sunk++), store[s]);
                } else {
                    startAnew(s, store[s]);
                }
                lastWet[s] = now - minutes;
            }
        }
    }

    /** Lets the zones of those cells sink whose event goes on at a minute. */
    private void sink(int[] slots, int from, int to, long minute) {
        sinking.clear();
        for (int n = from; n < to; n++) {
            if (goesOn(slots[n], minute)) {
                addSinking(slots[n], minute - lastWet[slots[n]]);
            }
        }
        sinking.sink();
    }

    private boolean goesOn(int s, long minute) {
        return minute - lastWet[s] < EVENT_ENDS && zone[s] + front[s] > 0;
    }

    /**
     * What a cell whose front is awake can take in within some minutes of water that comes faster than the saturated
     * conductivity, in m.
     *
     * @param now minute of the season at their end
     * @param minutes their number
     */
    double capacity(int s, long now, int minutes) {
        lastWet[s] = now;
        return GreenAmpt.quadratic(conductivity[s], suction[s] * fills[s], front[s], minutes * MINUTE);
    }

    /** Takes in water (m), no more than the capacity of these minutes. */
    void advance(int s, double water) {
        front[s] += water;
        if (zone[s] > 0 && front[s] >= fills[s] * depth[s]) {
            front[s] += zone[s];
            startFrom(s, 0, 0);
        }
    }

    /** Starts the front of a new pulse, or goes on with the old one where the zone is still as good as saturated. */
    private void resume(int s, double sunk, double store) {
        if (sunk >= roots[s]) {
            startAnew(s, store);
            return;
        }
        double water = zone[s] + front[s];
        boolean saturated = pores[s] - ambient[s] - water / sunk <= SATURATED;
        front[s] = saturated ? water : 0;
        startFrom(s, saturated ? 0 : water, sunk);
    }

    private void startAnew(int s, double store) {
        ambient[s] = Math.min(store / roots[s], pores[s] - 0.005);
        front[s] = 0;
        startFrom(s, 0, 0);
    }

    /** Lays the zone that the front has yet to fill: water in m above the ambient content, depth in m. */
    private void startFrom(int s, double water, double deep) {
        zone[s] = water;
        depth[s] = deep;
        fills[s] = pores[s] - ambient[s] - (water > 0 ? water / deep : 0);
    }

    /** Lets front and zone of a cell sink as one for a pause of so many minutes. */
    private void addSinking(int s, long minutes) {
        double water = zone[s] + front[s];
        double from = Math.max(depth[s], water / (pores[s] - ambient[s]));
        sinking.add(curve[s], water, ambient[s], conductivity[s], suction[s], from, roots[s], minutes);
    }

    /** Depth in m of front and zone as one after a pause of so many minutes. */
    private double sunk(int s, long minutes) {
        sinking.clear();
        addSinking(s, minutes);
        sinking.sink();
        return sinking.depth(0);
    }

    /**
     * Content near the surface as the front leaves it, at a depth in m; NaN where no front is. Not for several threads at
     * once.
     *
     * @param average content of the whole root zone
     */
    double content(int s, double at, double average, long now) {
        long pause = now - lastWet[s];
        double water = zone[s] + front[s];
        if (pause >= EVENT_ENDS || water <= 0) {
            return Double.NaN;
        }
        boolean pulses = pause <= 1 && zone[s] > 0 && front[s] > 0;
        if (pulses && at <= front[s] / fills[s]) {
            return pores[s];
        }
        double z = pulses ? depth[s] : sunk(s, Math.max(0, pause - 1));
        if (z <= 0 || z >= roots[s]) {
            return Double.NaN;
        }
        double wet = Math.min(pores[s], ambient[s] + (pulses ? zone[s] : water) / z);
        double below = (average * roots[s] - z * wet - (pulses ? front[s] : 0)) / (roots[s] - z);
        return at <= z ? wet : Math.max(curve[s].soil.wiltingPoint() * 0.5, Math.min(below, pores[s]));
    }
}
