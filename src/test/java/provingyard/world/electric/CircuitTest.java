package provingyard.world.electric;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Circuits whose answers a hand works out. */
@Tag("unit")
class CircuitTest {

    private static Complex ohms(double value) {
        return Complex.real(value);
    }

    @Test
    void ohmsLawInSeries() {
        Circuit c = new Circuit();
        c.join("source", "a", "b", ohms(2), Complex.real(24));
        c.join("load", "b", "a", ohms(10));
        Circuit.Solution s = c.solve();
        assertEquals(2, s.amps("load").re(), 1e-12);
        assertEquals(2, s.amps("source").re(), 1e-12);
        assertEquals(20, s.volts("b", "a").re(), 1e-12);
        assertEquals(48, s.given().re(), 1e-12);
        assertEquals(48, s.taken().re(), 1e-12);
    }

    @Test
    void branchesSideBySideShareTheCurrent() {
        Circuit c = new Circuit();
        c.join("source", "a", "b", ohms(1), Complex.real(9));
        c.join("three", "b", "a", ohms(3));
        c.join("six", "b", "a", ohms(6));
        Circuit.Solution s = c.solve();
        assertEquals(2, s.amps("three").re(), 1e-12);
        assertEquals(1, s.amps("six").re(), 1e-12);
        assertTrue(s.leftOver() < 1e-12);
    }

    @Test
    void aBalancedBridgeCarriesNothingAcross() {
        Circuit c = new Circuit();
        c.join("source", "low", "high", ohms(1), Complex.real(10));
        c.join("p", "high", "left", ohms(2));
        c.join("q", "left", "low", ohms(4));
        c.join("r", "high", "right", ohms(3));
        c.join("s", "right", "low", ohms(6));
        c.join("across", "left", "right", ohms(5));
        assertEquals(0, c.solve().amps("across").size(), 1e-12);
    }

    @Test
    void resistanceAndReactanceAddAtARightAngle() {
        Circuit c = new Circuit();
        c.join("source", "a", "b", new Complex(1, 0), Complex.real(26));
        c.join("coil", "b", "a", new Complex(4, 12));
        Complex amps = c.solve().amps("coil");
        assertEquals(2, amps.size(), 1e-12);
        assertEquals(10.0 / 13, amps.re(), 1e-12, "26 V over 5 + 12j ohm is 2 A, lagging");
        assertEquals(-24.0 / 13, amps.im(), 1e-12);
    }

    @Test
    void partsWithoutAWayBetweenThemDoNotDisturbEachOther() {
        Circuit c = new Circuit();
        c.join("source", "a", "b", ohms(1), Complex.real(4));
        c.join("load", "b", "a", ohms(1));
        c.join("elsewhere", "x", "y", ohms(7));
        assertFalse(c.joined("a", "x"));
        assertFalse(c.joined("a", "nowhere"));
        assertTrue(c.joined("a", "b"));
        assertEquals(0, c.solve().amps("elsewhere").size());
        assertEquals(0, c.solve().amps("no such branch").size());
        assertEquals(2, c.solve().amps("load").re(), 1e-12);
    }

    @Test
    void aPivotIsFoundWhereTheDiagonalIsEmpty() {
        ComplexMatrix m = new ComplexMatrix(2);
        m.add(0, 1, new Complex(0, 2));
        m.add(1, 0, ohms(4));
        m.add(1, 1, ohms(1));
        m.addRight(0, ohms(6));
        m.addRight(1, ohms(8));
        Complex[] x = m.solve();
        assertEquals(-3, x[1].im(), 1e-12);
        assertEquals(2, x[0].re(), 1e-12);
        assertEquals(0.75, x[0].im(), 1e-12);
        assertThrows(IllegalStateException.class, () -> new ComplexMatrix(1).solve());
    }

    @Test
    void branchesNeedAnImpedanceAndANameOfTheirOwn() {
        Circuit c = new Circuit();
        c.join("one", "a", "b", ohms(1));
        assertThrows(IllegalArgumentException.class, () -> c.join("one", "a", "b", ohms(1)));
        assertThrows(IllegalArgumentException.class, () -> c.join("none", "a", "b", Complex.ZERO));
    }
}
