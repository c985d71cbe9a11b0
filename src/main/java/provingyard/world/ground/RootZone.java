package provingyard.world.ground;

import java.util.Arrays;
import provingyard.numeric.Deterministic;
import provingyard.scenario.Catalogue.Plant;
import provingyard.scenario.Catalogue.Soil;

/**
 * Soil water, ponds and plants of the planted cells, numbered by slot in the order in which runoff passes them.
 *
 * <p>Each cell is one store between (at the driest) wilting point and saturation. Plants draw coefficient x microclimate
 * x Ks x reference evapotranspiration (FAO-56 eq. 80 and 84; microclimate from 0.5 in full shade to 1 in full sun, within
 * the range of the University of California's landscape method). Water above field capacity drains below the roots so
 * that a tenth is left after the soil's drainage time, at most at the saturated conductivity. There is no snow: what falls
 * is water.
 */
final class RootZone {

    /** Ks under which a plant is near its end, and how long it bears it (common practice, no source). */
    private static final double DYING = 0.1;

    private static final int DAYS_TO_DIE = 10;

    /** What bare ground under dead plants still evaporates, as a share (common practice, no source). */
    private static final double BARE = 0.3;

    /** Water that turf and mulch hold on level ground in m (3 mm: common practice, no source); falls with the grade. */
    private static final double HELD = 0.003;

    /** Water that a full hollow holds in m (common practice, no source). */
    private static final double HOLLOW = 0.03;

    private static final double DAY_MINUTES = 1440;
    private static final double MINUTE = 60;

    final int[] slotOf;
    final int count;
    private final double area;
    private final double[] roots;
    private final double[] wilting;
    private final double[] field;
    private final double[] full;
    private final double[] conductivity;
    /** Minutes in which each soil drains to a tenth, and the soil of each slot. */
    private final double[] tenths;

    private final int[] soilOf;
    private final double[] coefficient;
    private final double[] draws;
    private final double[] depletion;
    private final double[] holds;
    private final double[] store;
    private final double[] pond;
    private final double[] drying;
    /** Available water when full, and what the last beat found and moved. */
    private final double[] total;

    private final double[] perTotal;
    private final double[] shares;

    private final double[] stress;
    private final double[] drawn;
    private final double[] drained;
    private final double[] drainShare;
    /** Slots whose fronts are to be woken. */
    private final int[] waking;

    private final boolean[] dead;
    private final WettingFronts fronts;
    private double dayReference;
    private double dryAreaDays;
    private double drainMinutes;
    private boolean thirsty;

    RootZone(GroundCells cells, double startWetness) {
        area = cells.area();
        slotOf = new int[cells.count()];
        Arrays.fill(slotOf, -1);
        int n = 0;
        for (int c : cells.order()) {
            if (cells.planted(c)) {
                slotOf[c] = n++;
            }
        }
        count = n;
        roots = new double[n];
        wilting = new double[n];
        field = new double[n];
        full = new double[n];
        conductivity = new double[n];
        tenths = cells.soils().stream().mapToDouble(s -> s.drainage() / 60).toArray();
        soilOf = new int[n];
        coefficient = new double[n];
        draws = new double[n];
        depletion = new double[n];
        holds = new double[n];
        store = new double[n];
        pond = new double[n];
        drying = new double[n];
        total = new double[n];
        perTotal = new double[n];
        shares = new double[n];
        stress = new double[n];
        drawn = new double[n];
        drained = new double[n];
        drainShare = new double[n];
        waking = new int[n];
        dead = new boolean[n];
        SoilCurve[] bySoil = cells.soils().stream().map(SoilCurve::new).toArray(SoilCurve[]::new);
        SoilCurve[] curve = new SoilCurve[n];
        for (int c = 0; c < cells.count(); c++) {
            int s = slotOf[c];
            if (s >= 0) {
                fill(s, c, cells, startWetness);
                curve[s] = bySoil[cells.soil()[c]];
            }
        }
        fronts = new WettingFronts(curve, conductivity, roots);
        dayReference = 0.004;
    }

    private void fill(int s, int c, GroundCells cells, double startWetness) {
        Soil soil = cells.soils().get(cells.soil()[c]);
        Plant plant = cells.plants().get(cells.plant()[c]);
        roots[s] = plant.roots();
        wilting[s] = soil.wiltingPoint() * plant.roots();
        field[s] = soil.fieldCapacity() * plant.roots();
        full[s] = soil.saturation() * plant.roots();
        total[s] = field[s] - wilting[s];
        perTotal[s] = 1 / total[s];
        conductivity[s] = soil.conductivity() * cells.keeps()[c];
        soilOf[s] = cells.soil()[c];
        coefficient[s] = plant.coefficient();
        draws[s] = plant.coefficient() * (0.5 + 0.5 * cells.sunShare(c));
        depletion[s] = plant.depletion();
        holds[s] = HELD / (1 + 20 * cells.grade()[c]) + HOLLOW * cells.hollow()[c];
        store[s] = wilting[s] + startWetness * (field[s] - wilting[s]);
    }

    private RootZone(RootZone from) {
        slotOf = from.slotOf;
        count = from.count;
        area = from.area;
        roots = from.roots;
        wilting = from.wilting;
        field = from.field;
        full = from.full;
        conductivity = from.conductivity;
        tenths = from.tenths;
        soilOf = from.soilOf;
        coefficient = from.coefficient;
        draws = from.draws.clone();
        depletion = from.depletion;
        holds = from.holds;
        store = from.store.clone();
        pond = from.pond.clone();
        drying = from.drying.clone();
        total = from.total;
        perTotal = from.perTotal;
        shares = new double[count];
        stress = from.stress.clone();
        drawn = new double[count];
        drained = new double[count];
        drainShare = from.drainShare.clone();
        waking = new int[count];
        drainMinutes = from.drainMinutes;
        thirsty = from.thirsty;
        dead = from.dead.clone();
        fronts = from.fronts.copy();
        dayReference = from.dayReference;
        dryAreaDays = from.dryAreaDays;
    }

    RootZone copy() {
        return new RootZone(this);
    }

    /**
     * Wakes the fronts that paused in cells to which more water comes within the minutes up to now than soaks in unhindered:
     * all together, in less than half the time of one after the other in {@link #receive}.
     *
     * @param slots the cells, the first {@code count} of the array
     * @param water what comes to each from above in m; run-on may still come upon it
     */
    void wake(int[] slots, int count, double[] water, long now, int minutes) {
        int many = 0;
        for (int n = 0; n < count; n++) {
            int s = slots[n];
            if (fronts.paused(s, now, minutes) && hurries(s, pond[s] + water[n], minutes)) {
                waking[many++] = s;
            }
        }
        fronts.wake(waking, many, store, now, minutes);
    }

    private boolean hurries(int s, double standing, int minutes) {
        return standing > full[s] - store[s] || standing > conductivity[s] * (MINUTE * minutes);
    }

    /** Adds water (m) to a cell within the minutes up to now and returns what runs off it (m). */
    double receive(int s, double water, long now, int minutes) {
        double standing = pond[s] + water;
        if (!hurries(s, standing, minutes)) {
            store[s] += standing;
            pond[s] = 0;
            fronts.thicken(s, standing);
            return 0;
        }
        if (fronts.paused(s, now, minutes)) {
            waking[0] = s;
            fronts.wake(waking, 1, store, now, minutes);
        }
        double taken = least(standing, full[s] - store[s], fronts.capacity(s, now, minutes));
        fronts.advance(s, taken);
        store[s] += taken;
        return hold(s, standing - taken);
    }

    /** Lets water stand on a cell as far as it can be held there, and returns the rest. */
    private double hold(int s, double left) {
        if (left <= holds[s]) {
            pond[s] = left;
            return 0;
        }
        pond[s] = holds[s];
        return left - holds[s];
    }

    /**
     * The least of three depths, 0 at least. Comparisons, since the library's minimum also orders zeros and what is no
     * number, at several times the cost.
     */
    private static double least(double a, double b, double c) {
        double least = a < b ? a : b;
        least = least < c ? least : c;
        return least > 0 ? least : 0;
    }

    /** Whether water stands anywhere. */
    boolean anyPonded() {
        for (int s = 0; s < count; s++) {
            if (pond[s] > 0) {
                return true;
            }
        }
        return false;
    }

    /** Whether water stands on a cell. */
    boolean ponded(int s) {
        return pond[s] > 0;
    }

    /**
     * One beat of evapotranspiration, drainage and stress.
     *
     * @param reference reference evapotranspiration since the last beat in m
     * @param minutes since the last beat
     */
    void beat(double reference, double minutes, double allowedStress, Sum evapotranspiration, Sum percolation) {
        dayReference += reference - dayReference * minutes / DAY_MINUTES;
        if (minutes != drainMinutes) {
            shareOut(minutes);
        }
        draw(reference, 1000 * dayReference, 60 * minutes);
        evapotranspiration.add(sum(drawn) * area);
        percolation.add(sum(drained) * area);
        double worst = least(stress);
        if (worst < allowedStress) {
            suffer(minutes, allowedStress);
        }
        if (thirsty || worst < DYING) {
            wither(minutes);
        }
    }

    /** What each slot drains of its water above field capacity within a beat of so many minutes. */
    private void shareOut(double minutes) {
        double[] bySoil = new double[tenths.length];
        for (int i = 0; i < bySoil.length; i++) {
            bySoil[i] = drainedShare(minutes, tenths[i]);
        }
        for (int s = 0; s < count; s++) {
            drainShare[s] = bySoil[soilOf[s]];
        }
        drainMinutes = minutes;
    }

    /** Plants draw, then the soil drains: one plain loop over flat arrays, which the compiler turns into vectors. */
    private void draw(double reference, double dayMillimetres, double seconds) {
        for (int s = 0; s < count; s++) {
            double p = Math.min(0.8, Math.max(0.1, depletion[s] + 0.04 * (5 - coefficient[s] * dayMillimetres)));
            double available = store[s] - wilting[s];
            double ks = Math.min(1, Math.max(0, available / ((1 - p) * total[s])));
            double gone = Math.min(reference * draws[s] * ks, available);
            double left = store[s] - gone;
            double sinks = Math.min(Math.max(0, left - field[s]) * drainShare[s], conductivity[s] * seconds);
            store[s] = left - sinks;
            stress[s] = ks;
            drawn[s] = gone;
            drained[s] = sinks;
        }
    }

    /** Counts dryness beyond what the lesson allows, of plants that live. */
    private void suffer(double minutes, double allowedStress) {
        double sum = 0;
        for (int s = 0; s < count; s++) {
            if (stress[s] < allowedStress && !dead[s]) {
                sum += allowedStress - stress[s];
            }
        }
        dryAreaDays += sum * area * minutes / DAY_MINUTES;
    }

    /** Counts how long plants have been near their end, and lets die those that have been so too long. */
    private void wither(double minutes) {
        thirsty = false;
        for (int s = 0; s < count; s++) {
            drying[s] = stress[s] < DYING ? drying[s] + minutes : 0;
            thirsty |= drying[s] > 0;
            if (drying[s] >= DAYS_TO_DIE * DAY_MINUTES && !dead[s]) {
                dead[s] = true;
                draws[s] *= BARE;
            }
        }
    }

    /** In four lanes, so that additions need not wait for each other; the order is fixed all the same. */
    private static double sum(double[] values) {
        double a = 0;
        double b = 0;
        double c = 0;
        double d = 0;
        int whole = values.length & ~3;
        for (int i = 0; i < whole; i += 4) {
            a += values[i];
            b += values[i + 1];
            c += values[i + 2];
            d += values[i + 3];
        }
        for (int i = whole; i < values.length; i++) {
            a += values[i];
        }
        return a + b + (c + d);
    }

    private static double least(double[] values) {
        double least = Double.POSITIVE_INFINITY;
        for (double v : values) {
            if (v < least) {
                least = v;
            }
        }
        return least;
    }

    private static double drainedShare(double minutes, double minutesToTenth) {
        return 1 - Deterministic.pow(10, -minutes / minutesToTenth);
    }

    /** Water in soil and ponds in m3, summed in slot order. */
    double stored() {
        Sum sum = new Sum();
        for (int s = 0; s < count; s++) {
            sum.add(store[s] * area);
            sum.add(pond[s] * area);
        }
        return sum.value();
    }

    /** Water in the root zone of a slot in m. */
    double store(int s) {
        return store[s];
    }

    /** Water standing on a slot in m. */
    double pond(int s) {
        return pond[s];
    }

    /** Share of the available water, over 1 while draining. */
    double wetness(int s) {
        return (store[s] - wilting[s]) * perTotal[s];
    }

    /** Mean of {@link #wetness} over all slots; 0 where there are none. */
    double meanWetness() {
        if (count == 0) {
            return 0;
        }
        for (int s = 0; s < count; s++) {
            shares[s] = (store[s] - wilting[s]) * perTotal[s];
        }
        return sum(shares) / count;
    }

    /** Stress coefficient now. */
    double ks(int s) {
        double p = SoilWater.adjustedDepletion(depletion[s], coefficient[s] * 1000 * dayReference);
        return SoilWater.stress(field[s] - wilting[s], field[s] - store[s], p);
    }

    /** Volumetric content at a depth in m. */
    double content(int s, double depth, long now) {
        double average = store[s] / roots[s];
        double front = fronts.content(s, depth, average, now);
        return Double.isNaN(front) ? average : front;
    }

    boolean dead(int s) {
        return dead[s];
    }

    double dryAreaDays() {
        return dryAreaDays;
    }
}
