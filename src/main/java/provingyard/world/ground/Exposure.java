package provingyard.world.ground;

import java.util.List;
import provingyard.scenario.Catalogue.Paving;

/** How a class of paved cells meets sun and sky: one paving, one sky view, one horizon (of the class's mean). */
final class Exposure {

    final Paving paving;
    final PavementSlab slab;
    private final double skyView;
    private final double[] horizon;

    /** Mean exposure of the cells of a class. */
    Exposure(GroundCells cells, List<Integer> members) {
        paving = cells.pavings().get(cells.paving()[members.get(0)]);
        slab = new PavementSlab(paving);
        horizon = new double[GroundCells.BEARINGS];
        double sky = 0;
        for (int cell : members) {
            sky += cells.skyView()[cell] / members.size();
            for (int b = 0; b < GroundCells.BEARINGS; b++) {
                horizon[b] += cells.horizon()[cell * GroundCells.BEARINGS + b] / members.size();
            }
        }
        skyView = sky;
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

    /** Sun and longwave that a surface takes up in W/m2, before what it radiates itself. */
    double absorbed(SurfaceAir air) {
        // The sun's disc passes a blurred horizon within 3 degrees.
        double lit = Math.min(1, Math.max(0, (air.sunAltitude - horizon[air.bearing]) / 3));
        double sun = air.sunAltitude <= 0 ? 0 : (1 - paving.albedo()) * (air.beam * lit + air.diffuse * skyView);
        return sun + paving.emissivity() * (skyView * air.sky + (1 - skyView) * air.walls);
    }
}
