package provingyard.world.ground;

import java.util.Arrays;
import provingyard.scenario.Catalogue.Paving;

/** How a class of paved cells meets sun and sky: one paving, one sky view, one horizon. */
final class Exposure {

    final Paving paving;
    final PavementSlab slab;
    private final double skyView;
    private final double[] horizon;

    /** Exposure of a cell, which stands for its class. */
    Exposure(GroundCells cells, int cell) {
        paving = cells.pavings().get(cells.paving()[cell]);
        slab = new PavementSlab(paving);
        skyView = cells.skyView()[cell];
        int at = cell * GroundCells.BEARINGS;
        horizon = Arrays.copyOfRange(cells.horizon(), at, at + GroundCells.BEARINGS);
    }

    /** Name of the class that a cell falls in: sky view in fifths, horizon at eight bearings in four heights. */
    static long key(GroundCells cells, int cell) {
        long key = cells.paving()[cell] * 6L + Math.round(cells.skyView()[cell] * 5);
        int at = cell * GroundCells.BEARINGS;
        for (int b = 0; b < GroundCells.BEARINGS; b += 2) {
            double height = (cells.horizon()[at + b] + cells.horizon()[at + b + 1]) / 2;
            key = key * 4 + (height < 8 ? 0 : height < 20 ? 1 : height < 40 ? 2 : 3);
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
