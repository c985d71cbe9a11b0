package provingyard.world.ground;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Temperature, film and ice of the paved cells.
 *
 * <p>Cells of one paving and one exposure share two slab columns: one for those that only dew wets, one for those under
 * water or ice from rain, irrigation or run-on. Each wet cell keeps its own film and ice, which dry and freeze at the wet
 * column's rates; the column's heat balance sees their mean. A cell that changes sides takes its heat along. Wet
 * columns are computed each minute while one of them is under {@value #COLD} °C; all else every {@value #BEAT}
 * minutes.
 */
final class Pavement {

    private static final double COLD = 1.5;
    private static final int BEAT = 5;
    private static final double DEEP_LAG_MINUTES = 20 * 1440.0;

    /** Water that a full hollow holds in m (common practice, no source). */
    private static final double HOLLOW = 0.03;

    final int[] slotOf;
    final int count;
    private final double area;
    private final int[] classOf;
    private final double[] holds;
    private final Exposure[] exposures;
    private final double[] film;
    private final double[] ice;
    private final boolean[] wet;
    private final Columns dryColumns;
    private final Columns wetColumns;
    private final int[] dryCells;
    private final int[] wetCells;
    private final double[] poured;
    private final double[] pouredWarmth;
    private double deep;
    private int sinceDry;
    private int sinceWet;

    Pavement(GroundCells cells, double deepGround) {
        area = cells.area();
        slotOf = new int[cells.count()];
        Arrays.fill(slotOf, -1);
        int n = 0;
        Map<Integer, List<Integer>> byKey = new LinkedHashMap<>();
        for (int c = 0; c < cells.count(); c++) {
            if (cells.paved(c)) {
                slotOf[c] = n++;
                byKey.computeIfAbsent(Exposure.key(cells, c), key -> new ArrayList<>())
                        .add(c);
            }
        }
        count = n;
        exposures = new Exposure[byKey.size()];
        classOf = new int[n];
        holds = new double[n];
        dryCells = new int[exposures.length];
        int k = 0;
        for (List<Integer> members : byKey.values()) {
            exposures[k] = new Exposure(cells, members);
            dryCells[k] = members.size();
            for (int c : members) {
                classOf[slotOf[c]] = k;
                holds[slotOf[c]] = exposures[k].paving.filmHeld() + HOLLOW * cells.hollow()[c];
            }
            k++;
        }
        film = new double[n];
        ice = new double[n];
        wet = new boolean[n];
        wetCells = new int[exposures.length];
        poured = new double[exposures.length];
        pouredWarmth = new double[exposures.length];
        int stride =
                Arrays.stream(exposures).mapToInt(e -> e.slab.nodes()).max().orElse(1);
        dryColumns = new Columns(exposures.length, stride, deepGround);
        wetColumns = new Columns(exposures.length, stride, deepGround);
        deep = deepGround;
    }

    private Pavement(Pavement from) {
        slotOf = from.slotOf;
        count = from.count;
        area = from.area;
        classOf = from.classOf;
        holds = from.holds;
        exposures = from.exposures;
        film = from.film.clone();
        ice = from.ice.clone();
        wet = from.wet.clone();
        dryColumns = from.dryColumns.copy();
        wetColumns = from.wetColumns.copy();
        dryCells = from.dryCells.clone();
        wetCells = from.wetCells.clone();
        poured = from.poured.clone();
        pouredWarmth = from.pouredWarmth.clone();
        deep = from.deep;
        sinceDry = from.sinceDry;
        sinceWet = from.sinceWet;
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
        if (!wet[s]) {
            wetColumns.join(k, wetCells[k]++, dryColumns);
            dryCells[k]--;
            wet[s] = true;
            film[s] = dryColumns.film[k];
            ice[s] = dryColumns.ice[k];
        }
        poured[k] += water;
        pouredWarmth[k] += water * temperature;
        double filled = film[s] + water;
        double over = Math.max(0, Math.min(filled, filled + ice[s] - holds[s]));
        film[s] = filled - over;
        return over;
    }

    /** Passes a minute; most do nothing while it is warm. Evaporation in m3 is added to the sum. */
    void minute(MinuteForcing weather, Sum evaporation) {
        deep += (weather.air() - deep) / DEEP_LAG_MINUTES;
        sinceDry++;
        boolean anyWet = mixPoured();
        sinceWet = anyWet ? sinceWet + 1 : 0;
        boolean dryDue = sinceDry >= BEAT;
        boolean wetDue = anyWet && (sinceWet >= BEAT || cold());
        if (dryDue || wetDue) {
            SurfaceAir air = new SurfaceAir(weather);
            if (dryDue) {
                evaporation.add(area * passDry(air, 60.0 * sinceDry));
                sinceDry = 0;
            }
            if (wetDue) {
                evaporation.add(area * passWet(air, 60.0 * sinceWet));
                sinceWet = 0;
            }
        }
    }

    /** Mixes the minute's water with the wet surfaces; tells whether any cell is wet. */
    private boolean mixPoured() {
        boolean anyWet = false;
        for (int k = 0; k < exposures.length; k++) {
            anyWet |= wetCells[k] > 0;
            if (poured[k] > 0) {
                wetColumns.pour(k, poured[k] / wetCells[k], pouredWarmth[k] / poured[k], exposures[k].slab);
                poured[k] = 0;
                pouredWarmth[k] = 0;
            }
        }
        return anyWet;
    }

    private boolean cold() {
        boolean cold = false;
        for (int k = 0; k < exposures.length && !cold; k++) {
            cold = wetCells[k] > 0 && wetColumns.surface(k) < COLD;
        }
        return cold;
    }

    private double passDry(SurfaceAir air, double seconds) {
        double lost = 0;
        for (int k = 0; k < exposures.length; k++) {
            double absorbed = exposures[k].absorbed(air);
            lost += dryCells[k] * dryColumns.pass(k, exposures[k], air, absorbed, deep, seconds);
        }
        return lost;
    }

    private double passWet(SurfaceAir air, double seconds) {
        takeMeans();
        for (int k = 0; k < exposures.length; k++) {
            if (wetCells[k] > 0) {
                wetColumns.pass(k, exposures[k], air, exposures[k].absorbed(air), deep, seconds);
            }
        }
        double lost = 0;
        for (int s = 0; s < count; s++) {
            if (wet[s]) {
                lost += passCell(s, classOf[s]);
            }
        }
        return lost;
    }

    private void takeMeans() {
        Arrays.fill(wetColumns.film, 0);
        Arrays.fill(wetColumns.ice, 0);
        for (int s = 0; s < count; s++) {
            if (wet[s]) {
                wetColumns.film[classOf[s]] += film[s];
                wetColumns.ice[classOf[s]] += ice[s];
            }
        }
        for (int k = 0; k < exposures.length; k++) {
            wetColumns.film[k] /= Math.max(1, wetCells[k]);
            wetColumns.ice[k] /= Math.max(1, wetCells[k]);
        }
    }

    private double passCell(int s, int k) {
        double lost = Math.min(wetColumns.potential[k], film[s] + ice[s]);
        double fromFilm = Math.min(lost, film[s]);
        film[s] -= fromFilm;
        ice[s] = Math.max(0, ice[s] - (lost - fromFilm));
        double turns = Math.max(-ice[s], Math.min(film[s], wetColumns.frozen[k]));
        film[s] -= turns;
        ice[s] += turns;
        if (film[s] == 0 && ice[s] == 0) {
            leave(s, k);
        }
        return lost;
    }

    /** A cell that has dried goes back to its class's dry side, whose dew, if any, it comes to share. */
    private void leave(int s, int k) {
        wet[s] = false;
        int others = dryCells[k]++;
        dryColumns.join(k, others, wetColumns);
        dryColumns.film[k] *= others / (others + 1.0);
        dryColumns.ice[k] *= others / (others + 1.0);
        wetCells[k]--;
    }

    /** Whether any cell carries ice. */
    boolean frozen() {
        for (int s = 0; s < count; s++) {
            if (ice(s) > 0) {
                return true;
            }
        }
        return false;
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
        return wet[s] ? film[s] : dryColumns.film[classOf[s]];
    }

    /** Ice of a slot in m of water. */
    double ice(int s) {
        return wet[s] ? ice[s] : dryColumns.ice[classOf[s]];
    }

    /** Surface temperature of a slot in °C. */
    double surface(int s) {
        return wet[s] ? wetColumns.surface(classOf[s]) : dryColumns.surface(classOf[s]);
    }
}
