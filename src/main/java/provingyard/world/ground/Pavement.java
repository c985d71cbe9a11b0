package provingyard.world.ground;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Temperature, film and ice of the paved cells.
 *
 * <p>Cells of one paving and one exposure share a column as long as they were wetted alike: by dew and rain in the open.
 * A cell that takes irrigation water, run-on or another share of the rain gets a column of its own, and goes back to its
 * class when both are dry and their temperatures have met within {@value #ALIKE} K. Cold pavements (any column or the air
 * under {@value #COLD} °C) are computed each minute, warm ones every {@value #WARM_BEAT} minutes.
 */
final class Pavement {

    private static final double ALIKE = 0.25;
    private static final double COLD = 3;
    static final int WARM_BEAT = 5;
    private static final double DEEP_LAG_MINUTES = 20 * 1440.0;

    final int[] slotOf;
    final int count;
    private final double area;
    private final int[] classOf;
    private final double[] holds;
    private final Exposure[] exposures;
    private final double[] absorbed;
    private final Columns classes;
    private final Columns own;
    private final boolean[] alone;
    private final int[] members;
    private double deep;
    private int since;

    Pavement(GroundCells cells, double deepGround) {
        area = cells.area();
        slotOf = new int[cells.count()];
        Arrays.fill(slotOf, -1);
        int n = 0;
        for (int c = 0; c < cells.count(); c++) {
            if (cells.paved(c)) {
                slotOf[c] = n++;
            }
        }
        count = n;
        classOf = new int[n];
        holds = new double[n];
        Map<Long, Exposure> byKey = new LinkedHashMap<>();
        Map<Long, Integer> place = new LinkedHashMap<>();
        for (int c = 0; c < cells.count(); c++) {
            int s = slotOf[c];
            if (s >= 0) {
                long key = Exposure.key(cells, c);
                if (!byKey.containsKey(key)) {
                    byKey.put(key, new Exposure(cells, c));
                    place.put(key, place.size());
                }
                classOf[s] = place.get(key);
                holds[s] = cells.pavings().get(cells.paving()[c]).filmHeld() + 0.03 * cells.hollow()[c];
            }
        }
        exposures = byKey.values().toArray(Exposure[]::new);
        absorbed = new double[exposures.length];
        int stride = Arrays.stream(exposures).mapToInt(e -> e.slab.nodes()).max().orElse(1);
        classes = new Columns(exposures.length, stride, deepGround);
        own = new Columns(n, stride, deepGround);
        alone = new boolean[n];
        members = new int[exposures.length];
        for (int s = 0; s < n; s++) {
            members[classOf[s]]++;
        }
        deep = deepGround;
    }

    private Pavement(Pavement from) {
        slotOf = from.slotOf;
        count = from.count;
        area = from.area;
        classOf = from.classOf;
        holds = from.holds;
        exposures = from.exposures;
        absorbed = from.absorbed.clone();
        classes = from.classes.copy();
        own = from.own.copy();
        alone = from.alone.clone();
        members = from.members.clone();
        deep = from.deep;
        since = from.since;
    }

    Pavement copy() {
        return new Pavement(this);
    }

    /** Number of exposure classes. */
    int classCount() {
        return exposures.length;
    }

    /** Adds water (m) of a temperature (°C) to a cell and returns what runs off (m). */
    double receive(int s, double water, double temperature) {
        int k = classOf[s];
        if (!alone[s]) {
            alone[s] = true;
            members[k]--;
            own.take(s, classes, k);
        }
        own.pour(s, water, temperature, exposures[k].slab);
        double over = Math.max(0, Math.min(own.film[s], own.film[s] + own.ice[s] - holds[s]));
        own.film[s] -= over;
        return over;
    }

    /** Passes a minute; most do nothing while it is warm. Evaporation in m3 is added to the sum. */
    void minute(SurfaceAir air, Sum evaporation) {
        since++;
        deep += (air.air - deep) / DEEP_LAG_MINUTES;
        if (since >= WARM_BEAT || cold(air)) {
            beat(air, evaporation);
            since = 0;
        }
    }

    private boolean cold(SurfaceAir air) {
        if (air.air < COLD) {
            return true;
        }
        for (int k = 0; k < exposures.length; k++) {
            if (classes.t[k * classes.stride] < COLD) {
                return true;
            }
        }
        return false;
    }

    private void beat(SurfaceAir air, Sum evaporation) {
        double seconds = 60.0 * since;
        double lost = 0;
        for (int k = 0; k < exposures.length; k++) {
            absorbed[k] = exposures[k].absorbed(air);
            lost += members[k] * classes.pass(k, exposures[k], air, absorbed[k], deep, seconds);
        }
        for (int s = 0; s < count; s++) {
            if (alone[s]) {
                int k = classOf[s];
                lost += own.pass(s, exposures[k], air, absorbed[k], deep, seconds);
                if (own.dry(s) && classes.dry(k) && own.apart(s, classes, k, exposures[k].slab.nodes()) < ALIKE) {
                    alone[s] = false;
                    members[k]++;
                }
            }
        }
        evaporation.add(lost * area);
    }

    /** Water and ice in m3. */
    double stored() {
        Sum sum = new Sum();
        for (int s = 0; s < count; s++) {
            sum.add((film(s) + ice(s)) * area);
        }
        return sum.value();
    }

    /** Film of a slot in m. */
    double film(int s) {
        return alone[s] ? own.film[s] : classes.film[classOf[s]];
    }

    /** Ice of a slot in m of water. */
    double ice(int s) {
        return alone[s] ? own.ice[s] : classes.ice[classOf[s]];
    }

    /** Surface temperature of a slot in °C. */
    double surface(int s) {
        return alone[s] ? own.t[s * own.stride] : classes.t[classOf[s] * classes.stride];
    }
}
