package provingyard.world.ground;

import java.util.List;
import provingyard.scenario.Catalogue.Paving;

/**
 * How the classes of paved cells of one paving meet sun and sky. A class is one paving, one sky view, one horizon (of
 * the class's mean).
 */
final class Exposure {

    final Paving paving;
    final PavementSlab slab;
    final int classes;
    private final double[] skyView;
    private final double[][] horizon;

    /** Mean exposures of one paving's classes, each given by its cells. */
    Exposure(GroundCells cells, List<List<Integer>> members) {
        paving = cells.pavings().get(cells.paving()[members.get(0).get(0)]);
        slab = new PavementSlab(paving);
        classes = members.size();
        skyView = new double[classes];
        horizon = new double[GroundCells.BEARINGS][classes];
        for (int k = 0; k < classes; k++) {
            int size = members.get(k).size();
            for (int cell : members.get(k)) {
                skyView[k] += cells.skyView()[cell] / size;
                for (int b = 0; b < GroundCells.BEARINGS; b++) {
                    horizon[b][k] += cells.horizon()[cell * GroundCells.BEARINGS + b] / size;
                }
            }
        }
    }

    /**
     * Name of the class that a cell falls in: paving, sky view in quarters, and the horizon's mean height to the east,
     * south and west in three steps. North is left out: at mid northern latitudes little sun comes from there.
     */
    static int key(GroundCells cells, int cell) {
        int key = cells.paving()[cell] * 5 + (int) Math.round(cells.skyView()[cell] * 4);
        for (int quarter = 0; quarter < 3; quarter++) {
            double height = 0;
            for (int b = 0; b < 4; b++) {
                height += cells.horizon()[cell * GroundCells.BEARINGS + 2 + 4 * quarter + b] / 4;
            }
            key = key * 3 + (height < 8 ? 0 : height < 25 ? 1 : 2);
        }
        return key;
    }

    /** Sun and longwave that the surface of each class takes up in W/m2, before what it radiates itself. */
    void absorbed(SurfaceAir air, double[] takenUp) {
        double[] over = horizon[air.bearing];
        double emissivity = paving.emissivity();
        double sunTaken = air.sunAltitude <= 0 ? 0 : 1 - paving.albedo();
        for (int k = 0; k < classes; k++) {
            // The sun's disc passes a blurred horizon within 3 degrees.
            double lit = Math.min(1, Math.max(0, (air.sunAltitude - over[k]) / 3));
            takenUp[k] = sunTaken * (air.beam * lit + air.diffuse * skyView[k])
                    + emissivity * (skyView[k] * air.sky + (1 - skyView[k]) * air.walls);
        }
    }
}
