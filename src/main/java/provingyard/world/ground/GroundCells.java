package provingyard.world.ground;

import java.util.List;
import provingyard.numeric.Deterministic;
import provingyard.scenario.Catalogue;
import provingyard.scenario.Catalogue.Paving;
import provingyard.scenario.Catalogue.Plant;
import provingyard.scenario.Catalogue.Soil;
import provingyard.scenario.YardPlan;
import provingyard.world.yard.Yard;

/**
 * What the ground needs of a yard, as flat arrays by cell; shared between grounds and never changed.
 *
 * @param soil index into soils; -1 where nothing grows
 * @param plant index into plants; -1 where nothing grows
 * @param paving index into pavings; -1 where nothing is paved; a cell with neither lies under a building
 * @param surface index of the cell's surface in the plan
 * @param keeps share of its conductivity that a compacted soil keeps
 * @param grade fall of the ground in m per m
 * @param rainShare share of the open rain that reaches the cell
 * @param skyView 0 to 1
 * @param hollow share of passing runoff that the cell holds back
 * @param downhill cell that takes the runoff; -1 off the site
 * @param order all cells, each before the one that takes its runoff; those of one kind mostly together
 * @param horizon height of the horizon in degrees, {@value #BEARINGS} values a cell, bearing (i + 0.5) x 22.5 degrees
 */
public record GroundCells(
        int nx,
        int ny,
        double cellSize,
        int[] soil,
        int[] plant,
        int[] paving,
        int[] surface,
        double[] keeps,
        double[] grade,
        double[] rainShare,
        double[] skyView,
        double[] hollow,
        int[] downhill,
        int[] order,
        double[] horizon,
        List<Soil> soils,
        List<Plant> plants,
        List<Paving> pavings) {

    /** Bearings of the horizon kept for each cell. */
    public static final int BEARINGS = Yard.SECTORS;

    /** The cells of a yard; soils, plants and pavings of its catalogue. */
    public static GroundCells of(Yard yard, Catalogue catalogue) {
        int n = yard.cells();
        int[] soil = new int[n];
        int[] plant = new int[n];
        int[] paving = new int[n];
        int[] surface = new int[n];
        int[] downhill = new int[n];
        int[] kind = new int[n];
        double[] keeps = new double[n];
        double[] grade = new double[n];
        double[] rainShare = new double[n];
        double[] skyView = new double[n];
        double[] hollow = new double[n];
        double[] horizon = new double[n * BEARINGS];
        for (int c = 0; c < n; c++) {
            YardPlan.Surface of = yard.plan().surfaces().get(yard.surface(c));
            soil[c] = yard.planted(c) ? yard.soil(c) : -1;
            plant[c] = yard.planted(c) ? yard.plant(c) : -1;
            paving[c] = yard.paved(c) ? yard.paving(c) : -1;
            surface[c] = yard.surface(c);
            kind[c] = kind(soil[c], paving[c]).ordinal();
            downhill[c] = yard.downhill(c);
            keeps[c] = of.compacted();
            grade[c] = of.slope() == null ? 0 : of.slope().grade();
            rainShare[c] = yard.rainShare(c);
            skyView[c] = yard.skyView(c);
            hollow[c] = yard.hollow(c);
            for (int b = 0; b < BEARINGS; b++) {
                horizon[c * BEARINGS + b] = yard.horizon(c, b);
            }
        }
        return new GroundCells(
                yard.nx(),
                yard.ny(),
                yard.cellSize(),
                soil,
                plant,
                paving,
                surface,
                keeps,
                grade,
                rainShare,
                skyView,
                hollow,
                downhill,
                RunoffOrder.grouped(downhill, kind, Kind.values().length),
                horizon,
                catalogue.soils(),
                catalogue.plants(),
                catalogue.pavings());
    }

    /** What water meets on a cell. */
    enum Kind {
        /** Roofs: all runs off. */
        BUILT,
        PAVED,
        PLANTED
    }

    private static Kind kind(int soil, int paving) {
        return soil >= 0 ? Kind.PLANTED : paving >= 0 ? Kind.PAVED : Kind.BUILT;
    }

    /** What water meets on a cell. */
    Kind kind(int cell) {
        return kind(soil[cell], paving[cell]);
    }

    /** Number of cells. */
    public int count() {
        return soil.length;
    }

    /** Area of a cell in m2. */
    public double area() {
        return cellSize * cellSize;
    }

    /** Plants grow there. */
    public boolean planted(int cell) {
        return soil[cell] >= 0;
    }

    /** It is paved and open to the sky or under an eave. */
    public boolean paved(int cell) {
        return paving[cell] >= 0;
    }

    /** East coordinate of a cell's middle in m. */
    public double x(int cell) {
        return (cell % nx + 0.5) * cellSize;
    }

    /** North coordinate of a cell's middle in m. */
    public double y(int cell) {
        return (cell / nx + 0.5) * cellSize;
    }

    /**
     * Share of the beam's paths over a day that reach a cell, 0 to 1: bearings from 90 to 270 degrees (the sun's half of
     * the sky at mid latitudes), each lit in the share 1 - sin(horizon), which weights high sun more.
     */
    double sunShare(int cell) {
        double sum = 0;
        for (int b = BEARINGS / 4; b < 3 * BEARINGS / 4; b++) {
            double height = Math.min(90, Math.max(0, horizon[cell * BEARINGS + b]));
            sum += 1 - Deterministic.sin(Math.toRadians(height));
        }
        return sum / (BEARINGS / 2.0);
    }
}
