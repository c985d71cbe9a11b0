package provingyard.world.ground;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Temperature, film and ice of the paved cells.
 *
 * <p>Cells of one paving and one exposure share two slab columns: one for those that only dew wets, one for those under
 * water or ice from rain, irrigation or run-on. Each wet cell keeps its own film and ice, which dry and freeze at the wet
 * column's rates; the column's heat balance sees their mean. A cell that changes sides takes its heat along. Wet
 * columns are computed each minute while one of them is under {@value #COLD} °C; all else every {@value #BEAT}
 * minutes.
 *
 * <p>While no cell of a class runs dry and none carries ice, all its films lose the same: that is kept once for the class,
 * and the cells are not looked at.
 */
final class Pavement {

    private static final double COLD = 1.5;
    private static final int BEAT = 5;
    private static final double DEEP_LAG_MINUTES = 20 * 1440.0;

    final int[] slotOf;
    final int count;
    private final double area;
    private final PavedClasses classes;
    /** Film of each wet slot and what its whole class lost since; 0 for all others, whose water their class's column has. */
    private final double[] filled;

    private final double[] ice;
    private final boolean[] wet;

    private final Columns[] dryColumns;
    private final Columns[] wetColumns;
    /** The columns that each class's dry and wet sides lie in. */
    private final Columns[] dryOf;

    private final Columns[] wetOf;
    private final int[] dryCells;
    private final int[] wetCells;
    /** Cells of each class that came under water, or dried, since the columns were last joined. */
    private final int[] joining;

    /** What each wet film of a class lost since its cells were last looked at, in m; negative after dew. */
    private final double[] sunk;
    /** No wet slot of the class was filled less than this. */
    private final double[] leastFilled;
    /** Sums of each class's film and ice. */
    private final double[] filmSum;

    private final double[] iceSum;

    private final double[] poured;
    private final double[] pouredWarmth;
    private final double[][] takenUp;
    private boolean pouring;
    private boolean frozen;
    /** Sum of {@code wetCells}. */
    private int allWet;

    private double deep;
    private int sinceDry;
    private int sinceWet;

    Pavement(GroundCells cells, double deepGround) {
        area = cells.area();
        classes = new PavedClasses(cells);
        slotOf = classes.slotOf;
        count = classes.count();
        filled = new double[count];
        ice = new double[count];
        wet = new boolean[count];
        int n = classes.classes();
        dryCells = new int[n];
        for (int k = 0; k < n; k++) {
            dryCells[k] = classes.start[k + 1] - classes.start[k];
        }
        wetCells = new int[n];
        joining = new int[n];
        sunk = new double[n];
        leastFilled = new double[n];
        Arrays.fill(leastFilled, Double.POSITIVE_INFINITY);
        filmSum = new double[n];
        iceSum = new double[n];
        poured = new double[n];
        pouredWarmth = new double[n];
        takenUp =
                Arrays.stream(classes.exposures).map(e -> new double[e.classes]).toArray(double[][]::new);
        dryColumns = columns(deepGround);
        wetColumns = columns(deepGround);
        dryOf = ofClasses(dryColumns);
        wetOf = ofClasses(wetColumns);
        deep = deepGround;
    }

    private Columns[] columns(double temperature) {
        return Arrays.stream(classes.exposures)
                .map(e -> new Columns(e.classes, e.slab, e.paving.emissivity(), temperature))
                .toArray(Columns[]::new);
    }

    private Columns[] ofClasses(Columns[] ofExposures) {
        return Arrays.stream(classes.exposureOf).mapToObj(e -> ofExposures[e]).toArray(Columns[]::new);
    }

    private Pavement(Pavement from) {
        slotOf = from.slotOf;
        count = from.count;
        area = from.area;
        classes = from.classes;
        filled = from.filled.clone();
        ice = from.ice.clone();
        wet = from.wet.clone();
        dryColumns = Arrays.stream(from.dryColumns).map(Columns::copy).toArray(Columns[]::new);
        wetColumns = Arrays.stream(from.wetColumns).map(Columns::copy).toArray(Columns[]::new);
        dryOf = ofClasses(dryColumns);
        wetOf = ofClasses(wetColumns);
        dryCells = from.dryCells.clone();
        wetCells = from.wetCells.clone();
        joining = from.joining.clone();
        sunk = from.sunk.clone();
        leastFilled = from.leastFilled.clone();
        filmSum = from.filmSum.clone();
        iceSum = from.iceSum.clone();
        poured = from.poured.clone();
        pouredWarmth = from.pouredWarmth.clone();
        takenUp = Arrays.stream(from.takenUp).map(double[]::clone).toArray(double[][]::new);
        pouring = from.pouring;
        frozen = from.frozen;
        allWet = from.allWet;
        deep = from.deep;
        sinceDry = from.sinceDry;
        sinceWet = from.sinceWet;
    }

    Pavement copy() {
        return new Pavement(this);
    }

    /** Number of exposure classes. */
    int classCount() {
        return classes.classes();
    }

    /** Adds water (m) of a temperature (°C) to a cell and returns what runs off (m). */
    double receive(int s, double water, double temperature) {
        int k = classes.classOf[s];
        if (!wet[s]) {
            wetten(s, k);
        }
        pouring = true;
        poured[k] += water;
        pouredWarmth[k] += water * temperature;
        double room = classes.holds[s] - ice[s] + sunk[k] - filled[s];
        if (water <= room) {
            filled[s] += water;
            filmSum[k] += water;
            return 0;
        }
        // Dew may have filled a film over what it holds; ice alone may, too, and then no film stays.
        double before = filled[s] - sunk[k];
        double stays = room + before > 0 ? room + before : 0;
        filled[s] = stays + sunk[k];
        filmSum[k] += stays - before;
        if (filled[s] < leastFilled[k]) {
            leastFilled[k] = filled[s];
        }
        return water + before - stays;
    }

    private void wetten(int s, int k) {
        Columns dry = dry(k);
        joining[k]++;
        double dew = dry.film(place(k));
        filled[s] = dew + sunk[k];
        leastFilled[k] = Math.min(leastFilled[k], filled[s]);
        ice[s] = dry.ice(place(k));
        filmSum[k] += dew;
        iceSum[k] += ice[s];
        wet[s] = true;
    }

    private int place(int k) {
        return classes.placeOf[k];
    }

    private Columns dry(int k) {
        return dryOf[k];
    }

    private Columns wet(int k) {
        return wetOf[k];
    }

    /** The cells that came under water bring the heat of their class's dry column along. */
    private void joinWet() {
        for (int k = 0; k < joining.length; k++) {
            if (joining[k] > 0) {
                wet(k).join(place(k), wetCells[k], joining[k], dry(k));
                wetCells[k] += joining[k];
                allWet += joining[k];
                dryCells[k] -= joining[k];
                joining[k] = 0;
                if (dryCells[k] == 0) {
                    dry(k).cover(place(k), 0, 0);
                }
            }
        }
    }

    /** Cells that have dried go back to their class's dry side, whose dew, if any, they come to share. */
    private void joinDry() {
        for (int k = 0; k < joining.length; k++) {
            if (joining[k] > 0) {
                Columns dry = dry(k);
                int place = place(k);
                dry.join(place, dryCells[k], joining[k], wet(k));
                double share = dryCells[k] / (double) (dryCells[k] + joining[k]);
                dry.cover(place, dry.film(place) * share, dry.ice(place) * share);
                dryCells[k] += joining[k];
                wetCells[k] -= joining[k];
                allWet -= joining[k];
                joining[k] = 0;
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
        boolean anyWet = allWet > 0;
        sinceWet = anyWet ? sinceWet + 1 : 0;
        boolean dryDue = sinceDry >= BEAT;
        boolean wetDue = anyWet && (sinceWet >= BEAT || wetAndCold());
        if (dryDue || wetDue) {
            SurfaceAir air = new SurfaceAir(weather);
            for (int e = 0; e < takenUp.length; e++) {
                classes.exposures[e].absorbed(air, takenUp[e]);
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
                wet(k).pour(place(k), poured[k] / wetCells[k], pouredWarmth[k] / poured[k]);
                poured[k] = 0;
                pouredWarmth[k] = 0;
            }
        }
        pouring = false;
    }

    private boolean wetAndCold() {
        return anyCold(wetColumns) && anyWetClassCold();
    }

    private static boolean anyCold(Columns[] columns) {
        for (Columns some : columns) {
            if (some.anyColder(COLD)) {
                return true;
            }
        }
        return false;
    }

    private boolean anyWetClassCold() {
        for (int k = 0; k < wetCells.length; k++) {
            if (wetCells[k] > 0 && wet(k).surface(place(k)) < COLD) {
                return true;
            }
        }
        return false;
    }

    private double passDry(SurfaceAir air, double seconds) {
        for (int e = 0; e < dryColumns.length; e++) {
            dryColumns[e].pass(air, takenUp[e], deep, seconds);
        }
        double sum = 0;
        for (int k = 0; k < dryCells.length; k++) {
            sum += dryCells[k] * dry(k).lost(place(k));
        }
        return sum;
    }

    private double passWet(SurfaceAir air, double seconds) {
        for (int k = 0; k < wetCells.length; k++) {
            double cells = Math.max(1, wetCells[k]);
            wet(k).cover(place(k), filmSum[k] / cells, iceSum[k] / cells);
        }
        for (int e = 0; e < wetColumns.length; e++) {
            wetColumns[e].pass(air, takenUp[e], deep, seconds);
        }
        double sum = 0;
        for (int k = 0; k < wetCells.length; k++) {
            if (wetCells[k] > 0) {
                sum += passCells(k, wet(k).potential(place(k)), wet(k).frozen(place(k)));
            }
        }
        joinDry();
        return sum;
    }

    /** The wet cells of a class lose and freeze what they have of it; returns the sum of what they lost. */
    private double passCells(int k, double potential, double freezes) {
        if (iceSum[k] > 0 || freezes > 0) {
            return passFilmsAndIce(k, potential, freezes);
        }
        double sinks = sunk[k] + potential;
        if (sinks >= leastFilled[k]) {
            return passFilms(k, potential);
        }
        sunk[k] = sinks;
        double lost = potential * wetCells[k];
        filmSum[k] -= lost;
        return lost;
    }

    private double passFilms(int k, double potential) {
        double lost = 0;
        double before = sunk[k];
        forgetSums(k);
        int end = classes.start[k + 1];
        for (int s = classes.start[k]; s < end; s++) {
            if (wet[s]) {
                double film = filled[s] - before;
                double gone = potential < film ? potential : film;
                lost += gone;
                lay(s, k, film - gone, 0);
            }
        }
        return lost;
    }

    private double passFilmsAndIce(int k, double potential, double freezes) {
        double lost = 0;
        double before = sunk[k];
        forgetSums(k);
        int end = classes.start[k + 1];
        for (int s = classes.start[k]; s < end; s++) {
            if (wet[s]) {
                double film = filled[s] - before;
                double gone = least(potential, film + ice[s]);
                double fromFilm = least(gone, film);
                double water = film - fromFilm;
                double solid = gone - fromFilm < ice[s] ? ice[s] - (gone - fromFilm) : 0;
                double canFreeze = least(water, freezes);
                double turns = canFreeze > -solid ? canFreeze : -solid;
                lost += gone;
                lay(s, k, water - turns, solid + turns);
            }
        }
        return lost;
    }

    /** Comparisons instead of the library's minimum, which costs several times as much. */
    private static double least(double a, double b) {
        return a < b ? a : b;
    }

    private void forgetSums(int k) {
        sunk[k] = 0;
        filmSum[k] = 0;
        iceSum[k] = 0;
        leastFilled[k] = Double.POSITIVE_INFINITY;
    }

    /** What a wet slot of a class carries from now on, in m; without any it has dried. */
    private void lay(int s, int k, double film, double solid) {
        filled[s] = film;
        ice[s] = solid;
        filmSum[k] += film;
        iceSum[k] += solid;
        if (film == 0 && solid == 0) {
            wet[s] = false;
            joining[k]++;
        } else if (film < leastFilled[k]) {
            leastFilled[k] = film;
        }
    }

    private boolean lookForIce() {
        for (int k = 0; k < wetCells.length; k++) {
            if (wetCells[k] > 0 && iceSum[k] > 0 || dryCells[k] > 0 && dry(k).ice(place(k)) > 0) {
                return true;
            }
        }
        return false;
    }

    /** The ice as it is now. */
    Frost frost() {
        if (!frozen) {
            return Frost.NONE;
        }
        int[] slots = IntStream.range(0, count).filter(s -> wet[s]).toArray();
        double[] wetIce = Arrays.stream(slots).mapToDouble(s -> ice[s]).toArray();
        return new Frost(slotOf, classes.classOf, dryIce(), slots, wetIce);
    }

    /** Ice in m on the dry cells of each class. */
    private double[] dryIce() {
        double[] dryIce = new double[dryCells.length];
        for (int k = 0; k < dryIce.length; k++) {
            dryIce[k] = dryCells[k] > 0 ? dry(k).ice(place(k)) : 0;
        }
        return dryIce;
    }

    /** Whether one of some slots carries at least so many mm of ice. */
    boolean iced(int[] slots, double mm) {
        double[] dryIce = dryIce();
        for (int s : slots) {
            if (1000 * (wet[s] ? ice[s] : dryIce[classes.classOf[s]]) >= mm) {
                return true;
            }
        }
        return false;
    }

    /** How many of some slots carry at least so many mm of ice, and so many more than in a frost. */
    int icedBeyond(int[] slots, double mm, Frost frost) {
        double[] dryIce = dryIce();
        int iced = 0;
        for (int s : slots) {
            double here = 1000 * (wet[s] ? ice[s] : dryIce[classes.classOf[s]]);
            if (here >= mm && here - frost.mmOfSlot(s) >= mm) {
                iced++;
            }
        }
        return iced;
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
        int k = classes.classOf[s];
        return wet[s] ? filled[s] - sunk[k] : dry(k).film(place(k));
    }

    /** Ice of a slot in m of water. */
    double ice(int s) {
        int k = classes.classOf[s];
        return wet[s] ? ice[s] : dry(k).ice(place(k));
    }

    /** Surface temperature of a slot in °C. */
    double surface(int s) {
        int k = classes.classOf[s];
        return (wet[s] ? wet(k) : dry(k)).surface(place(k));
    }
}
