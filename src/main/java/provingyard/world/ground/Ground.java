package provingyard.world.ground;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * The yard's ground, minute by minute: soil water and plants on planted cells, temperature, film and ice on paved ones,
 * and the runoff between them.
 *
 * <p>Where irrigation lands, water moves by the minute; rain and standing water alone move in beats of five minutes, the
 * finest step that rain is recorded in. Within a beat all cells are passed in the order in which runoff moves, so that
 * run-on can still soak in where it comes by. Rain that roofs, eaves and crowns keep off the ground is counted as rain and at once as runoff (roof drains);
 * so is irrigation that lands on buildings. Evapotranspiration, drainage and stress come in beats: half an hour within an
 * hour of water, an hour else; pavements have their own. The beats depend on the state alone, so equal weather and
 * watering give equal bits.
 *
 * <p>The unwatered twin of a season is another ground, stepped with the same weather and no watering.
 */
public final class Ground {

    /** Ice in m of water from which a walk counts as iced. */
    public static final double ICED = 1e-4;

    private static final int RAIN_BEAT = 5;
    private static final int WET_BEAT = 30;
    private static final int DRY_BEAT = 60;

    private final GroundCells cells;
    private final GroundSettings settings;
    private final RootZone soil;
    private final Pavement pavement;
    private final WaterPass pass;
    private final int[][] pavedOf;
    private final double keptOff;
    private final Sum rain;
    private final Sum irrigation;
    private final Sum evapotranspiration;
    private final Sum walkEvaporation;
    private final Sum runoff;
    private final Sum percolation;
    private final Sum fromPlants;
    private final Sum toPlants;
    private long minute;
    private long lastWater;
    private long lastMoved;
    /** Rain in m that fell since water last moved. */
    private double fallen;

    private boolean standing;
    private double pendingReference;
    private int sinceBeat;

    /** A ground at its first minute. */
    public Ground(GroundCells cells, GroundSettings settings) {
        this.cells = cells;
        this.settings = settings;
        soil = new RootZone(cells, settings.startWetness());
        pavement = new Pavement(cells, settings.deepGround());
        RunoffWay way = new RunoffWay(cells, soil.slotOf, pavement.slotOf);
        pass = new WaterPass(way, soil, pavement, settings.supply());
        pavedOf = pavedOf(cells, pavement.slotOf);
        double off = 0;
        for (int c = 0; c < cells.count(); c++) {
            off += bare(c) ? 1 : 1 - cells.rainShare()[c];
        }
        keptOff = off;
        rain = new Sum();
        irrigation = new Sum();
        evapotranspiration = new Sum();
        walkEvaporation = new Sum();
        runoff = new Sum();
        percolation = new Sum();
        fromPlants = new Sum();
        toPlants = new Sum();
        lastWater = -DRY_BEAT - 1;
    }

    private Ground(Ground from) {
        cells = from.cells;
        settings = from.settings;
        soil = from.soil.copy();
        pavement = from.pavement.copy();
        pass = from.pass.over(soil, pavement);
        pavedOf = from.pavedOf;
        keptOff = from.keptOff;
        rain = from.rain.copy();
        irrigation = from.irrigation.copy();
        evapotranspiration = from.evapotranspiration.copy();
        walkEvaporation = from.walkEvaporation.copy();
        runoff = from.runoff.copy();
        percolation = from.percolation.copy();
        fromPlants = from.fromPlants.copy();
        toPlants = from.toPlants.copy();
        minute = from.minute;
        lastWater = from.lastWater;
        lastMoved = from.lastMoved;
        fallen = from.fallen;
        standing = from.standing;
        pendingReference = from.pendingReference;
        sinceBeat = from.sinceBeat;
    }

    /** A ground in the same state that goes its own way. */
    public Ground copy() {
        return new Ground(this);
    }

    /** The cells that this ground lies on. */
    public GroundCells cells() {
        return cells;
    }

    /**
     * Passes one minute.
     *
     * @param watering irrigation that landed; null for none
     */
    public void step(MinuteForcing weather, Watering watering) {
        minute++;
        pendingReference += weather.reference();
        fallen += weather.rain();
        if (watering != null || minute % RAIN_BEAT == 0) {
            moveWater(weather, watering);
        }
        sinceBeat++;
        if (sinceBeat >= DRY_BEAT || sinceBeat >= WET_BEAT && minute - lastWater <= DRY_BEAT) {
            soil.beat(pendingReference, sinceBeat, settings.allowedStress(), evapotranspiration, percolation);
            pendingReference = 0;
            sinceBeat = 0;
        }
        pavement.minute(weather, walkEvaporation);
    }

    private void moveWater(MinuteForcing weather, Watering watering) {
        boolean since = standing || fallen > weather.rain();
        int minutes = since ? (int) (minute - lastMoved) : 1;
        lastMoved = minute;
        if (fallen == 0 && watering == null && !standing) {
            return;
        }
        double fall = fallen;
        fallen = 0;
        pass.pass(fall, rainTemperature(weather), watering, minute, minutes);
        standing = pass.anyStands();
        rain.add(fall * cells.count() * cells.area());
        irrigation.add(pass.watered() * cells.area());
        runoff.add((fall * keptOff + pass.left()) * cells.area());
        fromPlants.add(pass.leftPlants() * cells.area());
        toPlants.add(pass.cameToPlants() * cells.area());
        if (fall > 0 || pass.watered() > 0) {
            lastWater = minute;
        }
    }

    /** Half way to the dew point, near the wet bulb, not under freezing (common practice, no source). */
    private static double rainTemperature(MinuteForcing weather) {
        return Math.max(0, (weather.air() + weather.dewPoint()) / 2);
    }

    private boolean bare(int cell) {
        return !cells.planted(cell) && !cells.paved(cell);
    }

    /** Minutes passed. */
    public long minute() {
        return minute;
    }

    /** Where the water went so far. Evapotranspiration is as of the last beat, and so is the store. */
    public Totals totals() {
        return new Totals(
                rain.value(),
                irrigation.value(),
                evapotranspiration.value(),
                walkEvaporation.value(),
                runoff.value(),
                percolation.value(),
                store());
    }

    /** What passed between planted ground and the rest so far, and what the planted ground holds. */
    public Flows flows() {
        return new Flows(fromPlants.value(), toPlants.value(), soil.stored());
    }

    /** Water in soil, ponds, film and ice in m3. */
    public double store() {
        return soil.stored() + pavement.stored();
    }

    /** Volumetric water content at a depth (m), as a probe there would find it; NaN where nothing grows. */
    public double waterContent(int cell, double depth) {
        int s = soil.slotOf[cell];
        return s < 0 ? Double.NaN : soil.content(s, depth, minute);
    }

    /** Share of the available water in the root zone, over 1 while it drains; 0 where nothing grows. */
    public double wetness(int cell) {
        int s = soil.slotOf[cell];
        return s < 0 ? 0 : soil.wetness(s);
    }

    /** Mean of {@link #wetness} over all planted cells; 0 where there are none. */
    public double meanWetness() {
        return soil.meanWetness();
    }

    /** Water in a cell's root zone in m; 0 where nothing grows. */
    public double soilWater(int cell) {
        int s = soil.slotOf[cell];
        return s < 0 ? 0 : soil.store(s);
    }

    /** Water standing on a planted cell in m. */
    public double pond(int cell) {
        int s = soil.slotOf[cell];
        return s < 0 ? 0 : soil.pond(s);
    }

    /** Stress coefficient Ks; 1 where nothing grows. */
    public double ks(int cell) {
        int s = soil.slotOf[cell];
        return s < 0 ? 1 : soil.ks(s);
    }

    /** Whether the cell's plants died. */
    public boolean dead(int cell) {
        int s = soil.slotOf[cell];
        return s >= 0 && soil.dead(s);
    }

    /** Water film on a paved cell in mm. */
    public double filmMm(int cell) {
        int s = pavement.slotOf[cell];
        return s < 0 ? 0 : 1000 * pavement.film(s);
    }

    /** Ice on a paved cell in mm of water. */
    public double iceMm(int cell) {
        int s = pavement.slotOf[cell];
        return s < 0 ? 0 : 1000 * pavement.ice(s);
    }

    /** Whether any paved cell carries ice. */
    public boolean frozen() {
        return pavement.frozen();
    }

    /** Surface temperature of a paved cell in °C; NaN elsewhere. */
    public double surfaceTemperature(int cell) {
        int s = pavement.slotOf[cell];
        return s < 0 ? Double.NaN : pavement.surface(s);
    }

    /** Dryness beyond what the lesson allows: area x days x (allowed Ks - Ks), in m2 d. */
    public double dryAreaDays() {
        return soil.dryAreaDays();
    }

    /** Area in m2 whose plants died. */
    public double deadArea() {
        int dead = 0;
        for (int s = 0; s < soil.count; s++) {
            dead += soil.dead(s) ? 1 : 0;
        }
        return dead * cells.area();
    }

    /** Water in m3 that would bring the soil of the given cells, where drier, back to what it held in another ground. */
    public double refillVolume(Ground initial, boolean[] watered) {
        double sum = 0;
        for (int c = 0; c < cells.count(); c++) {
            if (watered[c]) {
                sum += Math.max(0, initial.soilWater(c) - soilWater(c));
            }
        }
        return sum * cells.area();
    }

    /** The ice as it is now, for a ground that is watered to be held against this one. */
    public Frost frost() {
        return pavement.frost();
    }

    /** Ice on a paved cell that is there because of watering, in mm: this ground's less its unwatered twin's. */
    public double irrigationIceMm(int cell, Frost twin) {
        return Math.max(0, iceMm(cell) - twin.mm(cell));
    }

    /** Whether some cell of a plan's surface carries at least 0.1 mm of ice, from whatever water. */
    public boolean iced(int surface) {
        return surface < pavedOf.length && pavement.iced(pavedOf[surface], 1000 * ICED);
    }

    /** Area in m2 of a plan's surface with at least 0.1 mm of ice from watering. */
    public double icedArea(int surface, Frost twin) {
        int iced = surface < pavedOf.length ? pavement.icedBeyond(pavedOf[surface], 1000 * ICED, twin) : 0;
        return iced * cells.area();
    }

    /** Slots of the paved cells of each of the plan's surfaces. */
    private static int[][] pavedOf(GroundCells cells, int[] slotOf) {
        int surfaces = Arrays.stream(cells.surface()).max().orElse(-1) + 1;
        return IntStream.range(0, surfaces)
                .mapToObj(s -> IntStream.range(0, cells.count())
                        .filter(c -> cells.paved(c) && cells.surface()[c] == s)
                        .map(c -> slotOf[c])
                        .toArray())
                .toArray(int[][]::new);
    }
}
