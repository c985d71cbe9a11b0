package provingyard.numeric;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FixedPowerTest {

    @ParameterizedTest(name = "x^{0} is within 2e-15 of StrictMath over exp(-20) to exp(2)")
    @ValueSource(doubles = {0.852, 1.852, 0.9, 0.05, 0.1, 0.5, 1.0, 1.15, 1.5, 2.0, -0.5, 1 / 0.3, 10.0, 20.0, -20.0})
    void isCloseToStrictMath(double exponent) {
        FixedPower power = FixedPower.withExponent(exponent);
        double worst = 0;
        for (int i = 0; i < 40_000; i++) {
            double x = StrictMath.exp(-20 + 22 * RandomStreams.uniform(7, i));
            double exact = StrictMath.pow(x, exponent);
            worst = Math.max(worst, Math.abs(power.of(x) - exact) / exact);
        }
        assertTrue(worst < 2e-15, "worst relative error " + worst);
    }

    @ParameterizedTest(name = "x^{0} at the edges")
    @ValueSource(doubles = {0.852, 0.05, 20.0})
    void edges(double exponent) {
        FixedPower power = FixedPower.withExponent(exponent);
        for (double x : new double[] {
            0, Double.MIN_VALUE, Double.POSITIVE_INFINITY, Double.NaN, -1, -0.0, Double.NEGATIVE_INFINITY
        }) {
            assertEquals(StrictMath.pow(x, exponent), power.of(x), "x = " + x);
        }
        assertEquals(1.0, power.of(1.0), 1e-15);
        assertSame(power, FixedPower.withExponent(exponent));
        assertThrows(IllegalArgumentException.class, () -> FixedPower.withExponent(20.5));
        assertThrows(IllegalArgumentException.class, () -> FixedPower.withExponent(Double.NaN));
    }
}
