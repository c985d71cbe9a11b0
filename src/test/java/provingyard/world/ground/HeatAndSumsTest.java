package provingyard.world.ground;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Sums that lose no bit, and heat that goes where it must. */
@Tag("unit")
class HeatAndSumsTest {

    @Test
    void aSumKeepsWhatEachAdditionLoses() {
        Sum sum = new Sum();
        for (double value : new double[] {1, 1e100, 1, -1e100}) {
            sum.add(value);
        }
        assertEquals(2, sum.value());
        Sum copy = sum.copy();
        copy.add(0.5);
        assertEquals(2, sum.value());
        assertEquals(2.5, copy.value());
        Sum tenths = new Sum();
        for (int i = 0; i < 1_000; i++) {
            tenths.add(0.1);
        }
        assertEquals(100, tenths.value(), 0);
    }

    @Test
    void aSteadyNightBalances() {
        double surface = SurfaceHeat.steadyNight(2, 8, 0.92, 230, 15);
        double left = 8 * (2 - surface) + 0.92 * (230 - SurfaceHeat.radiated(surface)) + 15;
        assertEquals(0, left, 1e-9);
        assertTrue(surface < 2 && surface > -15);
        // Under a sky as warm as the air and without heat from below it has the air's temperature.
        assertEquals(5, SurfaceHeat.steadyNight(5, 8, 0.92, SurfaceHeat.radiated(5), 0), 1e-9);
    }

    @Test
    void surfacesTradeHeatByTheirPublishedLaws() {
        // Stefan-Boltzmann at 0 °C: 315.66 W/m2; McAdams 5.6 + 4 v, and 7.2 v^0.78 = 43.39 at 10 m/s.
        assertEquals(315.66, SurfaceHeat.radiated(0), 0.01);
        assertEquals(13.6, SurfaceHeat.convection(2), 1e-12);
        assertEquals(25.6, SurfaceHeat.convection(5), 1e-12);
        assertEquals(43.39, SurfaceHeat.convection(10), 0.01);
        // Bolz: a quarter of cloud hardly counts, an overcast sky adds 22 %, never above a black body.
        assertEquals(0.7 * 1.22, SurfaceHeat.cloudy(0.7, 1), 1e-12);
        assertEquals(0.7 * (1 + 0.22 * Math.pow(0.5, 2.75)), SurfaceHeat.cloudy(0.7, 0.5), 1e-12);
        assertEquals(0.7, SurfaceHeat.cloudy(0.7, 0));
        assertEquals(1, SurfaceHeat.cloudy(0.95, 1));
        assertEquals(100, SurfaceHeat.humidity(10, 12));
        assertEquals(0, SurfaceHeat.evaporation(10, 5, SurfaceHeat.saturation(5)), 1e-12);
        assertTrue(SurfaceHeat.evaporation(10, 5, SurfaceHeat.saturation(8)) < 0, "dew");
        for (double air : new double[] {-59.93, -12.34, 0.05, 17.77, 89.98}) {
            assertEquals(SurfaceHeat.saturation(air), SurfaceAir.saturation(air), 2e-5 * SurfaceHeat.saturation(air));
        }
    }

    @Test
    void skyFromTablesIsNearTheFormulas() {
        double worst = 0;
        for (double air = -29.97; air < 45; air += 0.83) {
            for (double below = 0; below < 25; below += 1.31) {
                for (double cloud = 0; cloud <= 1; cloud += 0.0613) {
                    double clear = SurfaceHeat.brutsaert(air, SurfaceHeat.saturation(air - below));
                    double exact = SurfaceHeat.cloudy(Math.min(1, clear), cloud);
                    worst = Math.max(worst, Math.abs(SurfaceAir.emissivity(air, air - below, cloud) - exact));
                }
            }
        }
        assertTrue(worst < 1e-5 && worst > 1e-8, "worst " + worst);
    }

    @Test
    void aSlabInEqualHeatRunsStraightFromItsSurfaceToTheGround() {
        PavementSlab slab = new PavementSlab(Plots.CONCRETE);
        double[] t = new double[slab.nodes()];
        Arrays.fill(t, 10);
        double[][] columns = new double[slab.nodes()][1];
        for (double[] node : columns) {
            node[0] = 10;
        }
        double step = 60.0 / slab.substeps(60);
        double[] flux = new double[1];
        double[] capacity = {slab.surfaceCapacity()};
        for (int i = 0; i < 200_000; i++) {
            slab.conduct(t, 0, 30, 0, 10, step);
            flux[0] = 30;
            slab.conduct(columns, flux, capacity, 10, step, 1);
        }
        // 30 W/m2 through 0.1 m of concrete (1.5 W/(m K)) and 0.2 m of soil (0.3): 2 K and 20 K.
        assertEquals(10 + 2 + 20, t[0], 1e-3);
        assertEquals(10 + 20, t[slab.nodes() - PavementSlab.SOIL_CELLS], 1e-3);
        assertEquals(10 + 5, t[slab.nodes() - 1], 1e-3);
        for (int i = 0; i < t.length; i++) {
            assertEquals(t[i], columns[i][0], 1e-9, "node " + i);
        }
    }

    @Test
    void heatThatEntersASlabStaysInItsNodes() {
        PavementSlab slab = new PavementSlab(Plots.ASPHALT);
        double[] t = new double[slab.nodes()];
        double seconds = 60.0 / slab.substeps(60);
        slab.conduct(t, 0, 100, 0, 0, seconds);
        assertEquals(100 * seconds / slab.surfaceCapacity(), t[0], 1e-12);
        assertEquals(0, t[1]);
        double[] filmed = new double[slab.nodes()];
        slab.conduct(filmed, 0, 100, slab.surfaceCapacity(), 0, seconds);
        assertEquals(t[0] / 2, filmed[0], 1e-12);
        // Half of one of three cells of 80 mm of asphalt: 2300 kg/m3 x 920 J/(kg K).
        assertEquals(2300 * 920 * 0.08 / 6, slab.surfaceCapacity(), 1e-6);
    }
}
