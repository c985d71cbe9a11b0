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
    private final Exposure[] exposures;
    /** Class of each slot; of each class its exposure and its place among that exposure's classes. */
    private final int[] classOf;

    private final int[] exposureOf;
    private final int[] placeOf;
    private final double[] holds;
    private final double[] film;
    private final double[] ice;
    private final boolean[] wet;
    private final Columns[] dryColumns;
    private final Columns[] wetColumns;
    private final int[] dryCells;
    private final int[] wetCells;
    /** Cells of each class that came under water, or dried, since the columns were last joined. */
    private final int[] joining;

    private final double[] poured;
    private final double[] pouredWarmth;
    private final double[] meanFilm;
    private final double[] meanIce;
    /** What the last pass would have evaporated from, and froze on, the wet cells of each class, in m. */
    private final double[] potential;

    private final double[] freezes;
    private final double[][] takenUp;
    /** The wet slots in rising order, as they were when last listed. */
    private final int[] wetSlots;

    private int listed;
    private boolean listIsStale;
    private boolean pouring;
    private boolean frozen;
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
        classOf = new int[n];
        exposureOf = new int[byKey.size()];
        placeOf = new int[byKey.size()];
        dryCells = new int[byKey.size()];
        Map<Integer, List<List<Integer>>> byPaving = new LinkedHashMap<>();
        int next = 0;
        for (List<Integer> members : byKey.values()) {
            int paving = cells.paving()[members.get(0)];
            List<List<Integer>> alike = byPaving.computeIfAbsent(paving, p -> new ArrayList<>());
            exposureOf[next] = new ArrayList<>(byPaving.keySet()).indexOf(paving);
            placeOf[next] = alike.size();
            dryCells[next] = members.size();
            alike.add(members);
            for (int c : members) {
                classOf[slotOf[c]] = next;
            }
            next++;
        }
        exposures = byPaving.values().stream().map(a -> new Exposure(cells, a)).toArray(Exposure[]::new);
        holds = new double[n];
        for (int c = 0; c < cells.count(); c++) {
            if (slotOf[c] >= 0) {
                double held = exposures[exposureOf[classOf[slotOf[c]]]].paving.filmHeld();
                holds[slotOf[c]] = held + HOLLOW * cells.hollow()[c];
            }
        }
        film = new double[n];
        ice = new double[n];
        wet = new boolean[n];
        wetSlots = new int[n];
        wetCells = new int[exposureOf.length];
        joining = new int[exposureOf.length];
        poured = new double[exposureOf.length];
        pouredWarmth = new double[exposureOf.length];
        meanFilm = new double[exposureOf.length];
        meanIce = new double[exposureOf.length];
        potential = new double[exposureOf.length];
        freezes = new double[exposureOf.length];
        takenUp = Arrays.stream(exposures).map(e -> new double[e.classes]).toArray(double[][]::new);
        dryColumns = columns();
        wetColumns = columns();
        for (Columns columns : dryColumns) {
            columns.fill(deepGround);
        }
        deep = deepGround;
    }

    private Columns[] columns() {
        return Arrays.stream(exposures)
                .map(e -> new Columns(e.classes, e.slab, e.paving.emissivity()))
                .toArray(Columns[]::new);
    }

    private Pavement(Pavement from) {
        slotOf = from.slotOf;
        count = from.count;
        area = from.area;
        exposures = from.exposures;
        classOf = from.classOf;
        exposureOf = from.exposureOf;
        placeOf = from.placeOf;
        holds = from.holds;
        film = from.film.clone();
        ice = from.ice.clone();
        wet = from.wet.clone();
        dryColumns = Arrays.stream(from.dryColumns).map(Columns::copy).toArray(Columns[]::new);
        wetColumns = Arrays.stream(from.wetColumns).map(Columns::copy).toArray(Columns[]::new);
        dryCells = from.dryCells.clone();
        wetCells = from.wetCells.clone();
        joining = from.joining.clone();
        poured = from.poured.clone();
        pouredWarmth = from.pouredWarmth.clone();
        meanFilm = from.meanFilm.clone();
        meanIce = from.meanIce.clone();
        potential = from.potential.clone();
        freezes = from.freezes.clone();
        takenUp = Arrays.stream(from.takenUp).map(double[]::clone).toArray(double[][]::new);
        wetSlots = from.wetSlots.clone();
        listed = from.listed;
        listIsStale = from.listIsStale;
        pouring = from.pouring;
        frozen = from.frozen;
        deep = from.deep;
        sinceDry = from.sinceDry;
        sinceWet = from.sinceWet;
    }

    Pavement copy() {
        return new Pavement(this);
    }

    /** Number of exposure classes. */
    int classCount() {
        return exposureOf.length;
    }

    /** Adds water (m) of a temperature (°C) to a cell and returns what runs off (m). */
    double receive(int s, double water, double temperature) {
        int k = classOf[s];
        if (!wet[s]) {
            wetten(s, k);
        }
        pouring = true;
        poured[k] += water;
        pouredWarmth[k] += water * temperature;
        double filled = film[s] + water;
        double over = Math.max(0, Math.min(filled, filled + ice[s] - holds[s]));
        film[s] = filled - over;
        return over;
    }

    private void wetten(int s, int k) {
        Columns dry = dryColumns[exposureOf[k]];
        joining[k]++;
        film[s] = dry.film(placeOf[k]);
        ice[s] = dry.ice(placeOf[k]);
        wet[s] = true;
        listIsStale = true;
    }

    /** The cells that came under water bring the heat of their class's dry column along. */
    private void joinWet() {
        for (int k = 0; k < joining.length; k++) {
            if (joining[k] > 0) {
                Columns dry = dryColumns[exposureOf[k]];
                wetColumns[exposureOf[k]].join(placeOf[k], wetCells[k], joining[k], dry);
                wetCells[k] += joining[k];
                dryCells[k] -= joining[k];
                joining[k] = 0;
                if (dryCells[k] == 0) {
                    dry.end(placeOf[k]);
                }
            }
        }
    }

    /** Cells that have dried go back to their class's dry side, whose dew, if any, they come to share. */
    private void joinDry() {
        for (int k = 0; k < joining.length; k++) {
            if (joining[k] > 0) {
                Columns dry = dryColumns[exposureOf[k]];
                Columns wetSide = wetColumns[exposureOf[k]];
                int place = placeOf[k];
                dry.join(place, dryCells[k], joining[k], wetSide);
                double share = dryCells[k] / (double) (dryCells[k] + joining[k]);
                dry.cover(place, dry.film(place) * share, dry.ice(place) * share);
                dryCells[k] += joining[k];
                wetCells[k] -= joining[k];
                joining[k] = 0;
                if (wetCells[k] == 0) {
                    wetSide.end(place);
                }
            }
        }
    }

    /** Passes a minute; most do nothing while it is warm. Evaporation in m3 is added to the sum. */
    void minute(MinuteForcing weather, Sum evaporation) {
        deep += (weather.air() - deep) / DEEP_LAG_MINUTES;
        sinceDry++;
        if (pouring) {
            joinWet();
            mixPoured();
        }
        boolean anyWet = anyWet();
        sinceWet = anyWet ? sinceWet + 1 : 0;
        boolean dryDue = sinceDry >= BEAT;
        boolean wetDue = anyWet && (sinceWet >= BEAT || wetAndCold());
        if (dryDue || wetDue) {
            SurfaceAir air = new SurfaceAir(weather);
            for (int e = 0; e < exposures.length; e++) {
                exposures[e].absorbed(air, takenUp[e]);
            }
            if (dryDue) {
                evaporation.add(area * passDry(air, 60.0 * sinceDry));
                sinceDry = 0;
            }
            if (wetDue) {
                evaporation.add(area * passWet(air, 60.0 * sinceWet));
                sinceWet = 0;
            }
            frozen = lookForIce();
        }
    }

    /** Mixes the minute's water with the wet surfaces. */
    private void mixPoured() {
        for (int k = 0; k < poured.length; k++) {
            if (poured[k] > 0) {
                wetColumns[exposureOf[k]].pour(placeOf[k], poured[k] / wetCells[k], pouredWarmth[k] / poured[k]);
                poured[k] = 0;
                pouredWarmth[k] = 0;
            }
        }
        pouring = false;
    }

    private boolean anyWet() {
        boolean any = false;
        for (Columns columns : wetColumns) {
            any |= columns.live() > 0;
        }
        return any;
    }

    private boolean wetAndCold() {
        boolean cold = false;
        for (int e = 0; e < wetColumns.length && !cold; e++) {
            cold = wetColumns[e].anyColder(COLD);
        }
        return cold;
    }

    private double passDry(SurfaceAir air, double seconds) {
        for (int e = 0; e < exposures.length; e++) {
            dryColumns[e].pass(air, takenUp[e], deep, seconds);
        }
        double lost = 0;
        for (int k = 0; k < dryCells.length; k++) {
            lost += dryCells[k] * dryColumns[exposureOf[k]].lost(placeOf[k]);
        }
        return lost;
    }

    private double passWet(SurfaceAir air, double seconds) {
        if (listIsStale) {
            listWetSlots();
        }
        coverWithMeans();
        for (int e = 0; e < exposures.length; e++) {
            wetColumns[e].pass(air, takenUp[e], deep, seconds);
        }
        for (int k = 0; k < wetCells.length; k++) {
            if (wetCells[k] > 0) {
                potential[k] = wetColumns[exposureOf[k]].potential(placeOf[k]);
                freezes[k] = wetColumns[exposureOf[k]].frozen(placeOf[k]);
            }
        }
        double lost = 0;
        for (int i = 0; i < listed; i++) {
            lost += passCell(wetSlots[i]);
        }
        joinDry();
        return lost;
    }

    private boolean lookForIce() {
        boolean found = false;
        for (int e = 0; e < exposures.length && !found; e++) {
            found = dryColumns[e].anyIce();
        }
        if (listIsStale) {
            listWetSlots();
        }
        for (int i = 0; i < listed && !found; i++) {
            found = ice[wetSlots[i]] > 0;
        }
        return found;
    }

    /** The ice as it is now. */
    Frost frost() {
        if (!frozen) {
            return Frost.NONE;
        }
        if (listIsStale) {
            listWetSlots();
        }
        int[] slots = Arrays.copyOf(wetSlots, listed);
        double[] wetIce = Arrays.stream(slots).mapToDouble(s -> ice[s]).toArray();
        double[] dryIce = new double[dryCells.length];
        for (int k = 0; k < dryIce.length; k++) {
            dryIce[k] = dryCells[k] > 0 ? dryColumns[exposureOf[k]].ice(placeOf[k]) : 0;
        }
        return new Frost(slotOf, classOf, dryIce, slots, wetIce);
    }

    private void listWetSlots() {
        listed = 0;
        for (int s = 0; s < count; s++) {
            if (wet[s]) {
                wetSlots[listed++] = s;
            }
        }
        listIsStale = false;
    }

    private void coverWithMeans() {
        Arrays.fill(meanFilm, 0);
        Arrays.fill(meanIce, 0);
        for (int i = 0; i < listed; i++) {
            int s = wetSlots[i];
            meanFilm[classOf[s]] += film[s];
            meanIce[classOf[s]] += ice[s];
        }
        for (int k = 0; k < wetCells.length; k++) {
            if (wetCells[k] > 0) {
                wetColumns[exposureOf[k]].cover(placeOf[k], meanFilm[k] / wetCells[k], meanIce[k] / wetCells[k]);
            }
        }
    }

    private double passCell(int s) {
        int k = classOf[s];
        double lost = Math.min(potential[k], film[s] + ice[s]);
        double fromFilm = Math.min(lost, film[s]);
        film[s] -= fromFilm;
        ice[s] = Math.max(0, ice[s] - (lost - fromFilm));
        double turns = Math.max(-ice[s], Math.min(film[s], freezes[k]));
        film[s] -= turns;
        ice[s] += turns;
        if (film[s] == 0 && ice[s] == 0) {
            wet[s] = false;
            joining[k]++;
            listIsStale = true;
        }
        return lost;
    }

    /** Whether any cell carries ice. */
    boolean frozen() {
        return frozen;
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
        return wet[s] ? film[s] : dryOf(s).film(placeOf[classOf[s]]);
    }

    /** Ice of a slot in m of water. */
    double ice(int s) {
        return wet[s] ? ice[s] : dryOf(s).ice(placeOf[classOf[s]]);
    }

    /** Surface temperature of a slot in °C. */
    double surface(int s) {
        int k = classOf[s];
        return (wet[s] ? wetColumns[exposureOf[k]] : dryOf(s)).surface(placeOf[k]);
    }

    private Columns dryOf(int s) {
        return dryColumns[exposureOf[classOf[s]]];
    }
}
