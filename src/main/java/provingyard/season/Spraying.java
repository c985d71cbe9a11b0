package provingyard.season;

import java.util.Arrays;
import provingyard.scenario.Scenario;
import provingyard.world.ground.GroundCells;
import provingyard.world.ground.MinuteForcing;
import provingyard.world.ground.SprayAir;
import provingyard.world.ground.SprayFate;
import provingyard.world.ground.Sprinklers;
import provingyard.world.ground.Watering;
import provingyard.world.hydraulics.WaterFlows;

/** Lets a minute's water fly from heads and drip lines and land; safe for several threads. */
final class Spraying {

    private static final double SECONDS = 60;
    private static final double LEAST_FLOW = 1e-12;

    /**
     * Where a minute's water went, in m3.
     *
     * @param watering what landed; null when nothing ran
     * @param lost drifted off or evaporated before it landed
     * @param beyond thrown beyond the yard
     * @param paved landed on paving and buildings
     */
    record Landing(Watering watering, double lost, double beyond, double paved) {

        static final Landing NONE = new Landing(null, 0, 0, 0);
    }

    private final Sprinklers sprinklers;
    private final GroundCells cells;
    private final boolean[] watered;

    Spraying(Scenario scenario, GroundCells cells) {
        this.cells = cells;
        sprinklers = new Sprinklers(scenario.plumbing(), scenario.catalogue(), cells);
        watered = sprinklers.reached();
        for (int c = 0; c < watered.length; c++) {
            watered[c] &= cells.planted(c);
        }
    }

    /** Planted cells that some head or drip line reaches. */
    boolean[] watered() {
        return watered;
    }

    Sprinklers sprinklers() {
        return sprinklers;
    }

    /** Whether some head or drip line gives water. */
    static boolean runs(WaterFlows flows) {
        return Arrays.stream(flows.heads()).anyMatch(f -> f > LEAST_FLOW)
                || Arrays.stream(flows.drips()).anyMatch(f -> f > LEAST_FLOW);
    }

    /** A watering to let minutes' water land in, one after the other. */
    Watering dry() {
        return Watering.none(cells.count());
    }

    /**
     * Lets a minute's water land; some head or drip line {@link #runs}.
     *
     * @param landed what it lands in; holds this minute's water alone afterwards
     */
    Landing land(WaterFlows flows, MinuteForcing weather, double windFrom, Watering landed) {
        landed.clear();
        SprayFate fate = new SprayFate();
        SprayAir air = SprayAir.of(weather, windFrom);
        for (int h = 0; h < flows.heads().length; h++) {
            if (flows.heads()[h] > LEAST_FLOW) {
                sprinklers.spray(h, flows.heads()[h] * SECONDS, flows.headPressures()[h], air, landed, fate);
            }
        }
        for (int d = 0; d < flows.drips().length; d++) {
            if (flows.drips()[d] > LEAST_FLOW) {
                sprinklers.drip(d, flows.drips()[d] * SECONDS, landed, fate);
            }
        }
        return new Landing(landed, fate.drift(), fate.offSite(), fate.onPaving() + fate.onBuildings());
    }

    /** Depths in m on each cell after a minute of a zone alone in calm, humid air. */
    double[] alone(Site site, int zone) {
        boolean[] open = new boolean[site.waterworks().zones().size()];
        open[zone] = true;
        WaterFlows flows = site.waterworks().flows(open, true, 0);
        Watering landed = land(flows, Course.forcing(Needs.NIGHT), 0, dry()).watering();
        double[] depth = new double[cells.count()];
        for (int c = 0; landed != null && c < depth.length; c++) {
            depth[c] = landed.depth(c);
        }
        return depth;
    }
}
