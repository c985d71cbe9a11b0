package provingyard.world.hydraulics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Nozzles, outlets and surges by their laws. */
@Tag("unit")
class FlowLawsTest {

    @Test
    void nozzlesFollowTorricelli() {
        // A quarter of an inch at 50 psi gives 29.83 x 0.0625 x sqrt(50) = 13.18 gpm in theory.
        double head = 50 * 6894.757 / 9806.65;
        double flow = 13.18 * 3.785411784e-3 / 60;
        assertEquals(flow, NozzleFlow.discharge(1, 0.25 * 0.0254, head), 0.001 * flow);
        assertEquals(0.5, NozzleFlow.dischargeCoefficient(flow / 2, 0.25 * 0.0254, head), 0.001);
        assertEquals(2e-4, NozzleFlow.kFromPoint(1e-3, 25, 0.5), 1e-15);
        assertEquals(2e-6, NozzleFlow.applicationRate(1e-4, 50), 1e-18);
    }

    @Test
    void outletsAreTheirLawTurnedRound() {
        for (double n : new double[] {0.05, 0.3, 0.5, 1, 1.5, 2}) {
            OutletLaw law = OutletLaw.withExponent(n);
            assertEquals(n, law.exponent());
            assertEquals(0, law.flow(1e-4, 0));
            assertEquals(0, law.flow(1e-4, -1));
            for (double p : new double[] {0.5, 1, 20}) {
                double q = law.flow(1e-4, p);
                assertEquals(1e-4 * Math.pow(p, n), q, 1e-12);
                assertEquals(p, law.pressure(1e-4, q), 1e-9 * p);
                // dp/dq = p / (n q).
                double step = 1e-5 * q;
                double slope = (law.pressure(1e-4, q + step) - law.pressure(1e-4, q - step)) / (2 * step);
                assertEquals(1, law.slope(1e-4, q, p) / slope, 1e-4);
            }
        }
    }

    @Test
    void closeToNoPressureOutletsAreLinear() {
        // Compensating outlets from 1 mm of water down, others from 1 nm, opening ones from a micrometre.
        double[][] cases = {{0.1, 1e-3}, {0.5, 1e-9}, {1.5, 1e-6}};
        for (double[] c : cases) {
            OutletLaw law = OutletLaw.withExponent(c[0]);
            double whole = law.flow(1, c[1]);
            assertEquals(Math.pow(c[1], c[0]), whole, 1e-9 * whole);
            double half = law.flow(1, c[1] / 2);
            assertEquals(whole / 2, half, 1e-9 * whole);
            assertEquals(c[1] / 2, law.pressure(1, half), 1e-9 * c[1]);
            assertEquals(1, law.slope(1, half, c[1] / 2) * whole / c[1], 1e-9);
            assertTrue(law.flow(1, 4 * c[1]) > whole);
        }
    }

    @Test
    void surgesFollowJoukowsky() {
        // SDR 21 PVC: 4660 / sqrt(1 + 0.75 x 19) = 1193 ft/s, and 1.52 m/s stopped is 56 m of water.
        double speed = Surge.waveSpeed(21, Surge.WATER_OVER_PVC);
        assertEquals(1193 * 0.3048, speed, 0.5);
        assertEquals(speed * 1.52 / 9.80665, Surge.headRise(speed, 1.52), 1e-9);
        assertEquals(1000 * speed * 1.52, Surge.pressureRise(1000, speed, 1.52), 1e-6);
        assertEquals(0.55, Surge.reflectionTime(100, speed), 0.01);
    }
}
