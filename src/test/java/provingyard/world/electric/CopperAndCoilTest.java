package provingyard.world.electric;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Wire against published tables, coils against circuit theory. */
@Tag("unit")
class CopperAndCoilTest {

    private static final double W = 2 * Math.PI * 60;

    /**
     * Ohms per 1000 ft of solid copper at 20 °C: the wire table of T. L. Floyd, Electric Circuit Fundamentals, as
     * HyperPhysics (Georgia State University) shows it.
     */
    @Test
    void wireHasItsPublishedResistance() {
        int[] gauges = {10, 12, 14, 16, 18, 20, 22, 24};
        double[] perThousandFeet = {0.9989, 1.588, 2.525, 4.016, 6.385, 10.15, 16.14, 25.67};
        for (int i = 0; i < gauges.length; i++) {
            double published = perThousandFeet[i] / 304.8;
            assertEquals(published, Copper.ohmsPerMetre(gauges[i], 20), 0.002 * published, gauges[i] + " AWG");
        }
    }

    /** NEC chapter 9 table 8: uncoated solid copper at 75 °C, 3.07 ohm/1000 ft or 10.07 ohm/km for 14 AWG. */
    @Test
    void warmWireHasThePublishedResistanceOfTheCode() {
        assertEquals(10.07e-3, Copper.ohmsPerMetre(14, 75), 0.002 * 10.07e-3);
    }

    /** Published in mils: 40.303 for 18 AWG, 64.084 for 14 AWG, 5 for 36 AWG (ASTM B258). */
    @Test
    void diametersFollowTheGauge() {
        assertEquals(40.303 * 25.4e-6, Copper.diameter(18), 1e-8);
        assertEquals(64.084 * 25.4e-6, Copper.diameter(14), 1e-8);
        assertEquals(0.127e-3, Copper.diameter(36), 1e-12);
        assertThrows(IllegalArgumentException.class, () -> Copper.diameter(41));
        assertThrows(IllegalArgumentException.class, () -> Copper.diameter(-1));
    }

    @Test
    void theUsualCoilDrawsItsCurrents() {
        assertEquals(0.25, 24 / Coil.USUAL.impedance(W, 20, true).size(), 1e-3);
        assertEquals(0.40, 24 / Coil.USUAL.impedance(W, 20, false).size(), 1e-3);
        assertEquals(30, Coil.USUAL.impedance(0, 20, true).re());
        assertEquals(0, Coil.USUAL.impedance(0, 20, true).im());
        assertEquals(30 * (1 + 0.00393 * 20), Coil.USUAL.impedance(0, 40, true).re(), 1e-12);
        assertEquals(0.3, Coil.USUAL.pull(new Complex(0, 0.3), W, 20, true), 1e-15);
    }

    @Test
    void shortedTurnsTakeTheirShareOfTheResistance() {
        Coil coil = Coil.USUAL.withShortedTurns(0.25);
        assertEquals(22.5, coil.impedance(0, 20, true).re(), 1e-12);
        assertEquals(0, coil.impedance(0, 20, true).im(), 1e-12);
    }

    /** The impedance by two loop equations: I1 (Z1) + j w M I2 = V, I2 (Z2) + j w M I1 = 0. */
    @Test
    void shortedTurnsAreACoupledWinding() {
        double s = 0.2;
        double l = 0.2419;
        Complex z1 = new Complex(30 * (1 - s), W * l * (1 - s) * (1 - s));
        Complex z2 = new Complex(30 * s, W * l * s * s);
        Complex jwm = new Complex(0, W * Coil.COUPLING * l * s * (1 - s));
        Complex determinant = z1.times(z2).minus(jwm.times(jwm));
        Complex i1 = z2.over(determinant);
        Complex i2 = Complex.ZERO.minus(jwm).over(determinant);
        Coil coil = Coil.USUAL.withShortedTurns(s);
        assertEquals(
                0, Complex.real(1).over(i1).minus(coil.impedance(W, 20, true)).size(), 1e-9);
        Complex turns = i1.times(Complex.real(1 - s)).plus(i2.times(Complex.real(s)));
        assertEquals(turns.size(), coil.pull(i1, W, 20, true), 1e-12);
    }

    @Test
    void shortedTurnsBehindAResistanceDrawMoreAndPullLess() {
        double amps = behind5Ohm(Coil.USUAL).size();
        double pull = amps;
        for (double share : new double[] {0.02, 0.05, 0.1, 0.2, 0.4, 0.8}) {
            Coil coil = Coil.USUAL.withShortedTurns(share);
            Complex now = behind5Ohm(coil);
            assertTrue(now.size() > amps, "more current at " + share);
            assertTrue(coil.pull(now, W, 20, true) < pull, "less pull at " + share);
            amps = now.size();
            pull = coil.pull(now, W, 20, true);
        }
    }

    private static Complex behind5Ohm(Coil coil) {
        return Complex.real(27).over(coil.impedance(W, 20, true).plus(Complex.real(5)));
    }

    @Test
    void valuesWithoutMeaningAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> Coil.USUAL.withShortedTurns(1));
        assertThrows(IllegalArgumentException.class, () -> Coil.USUAL.withShortedTurns(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> Coil.USUAL.withShort(0));
        assertThrows(IllegalArgumentException.class, () -> new Splice(0, 1, 1));
        assertThrows(IllegalArgumentException.class, () -> new Cut(-1, 1));
        assertThrows(IllegalArgumentException.class, () -> Conditions.everywhere(20, 1.1));
    }

    @Test
    void wetSoilLeaksWithTheSquareOfItsWetness() {
        assertEquals(Double.POSITIVE_INFINITY, Conditions.leak(5000, 0));
        assertEquals(20_000, Conditions.leak(5000, 0.5), 1e-9);
        assertEquals(5000, Conditions.leak(5000, 1), 1e-9);
        Splice splice = new Splice(0.1, 1000, 5000);
        assertEquals(0.1, splice.ohms(0), 1e-12);
        assertEquals(10, splice.ohms(0.5), 1e-9);
        assertEquals(1000, splice.ohms(1), 1e-9);
    }
}
