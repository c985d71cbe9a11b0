package provingyard.numeric;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NormalLawTest {

    @ParameterizedTest(name = "below {0}")
    @CsvSource({
        // Abramowitz and Stegun 1964, table 26.1, 15 digits.
        "0, 0.5",
        "0.1, 0.539827837277029",
        "0.5, 0.691462461274013",
        "1, 0.841344746068543",
        "1.5, 0.933192798731142",
        "2, 0.977249868051821",
        "2.5, 0.993790334674224",
        "3, 0.998650101968370"
    })
    void probabilitiesAreThoseOfTheTable(double z, double below) {
        assertEquals(below, NormalLaw.below(z), 1e-15);
        assertEquals(1 - below, NormalLaw.below(-z), 1e-15);
    }

    @ParameterizedTest(name = "above {0}")
    @CsvSource({
        // Upper tail, from tables: each to its last digit, so the comparison is of shares.
        "3.5, 2.326290790e-4",
        "4, 3.167124183e-5",
        "5, 2.866515719e-7",
        "6, 9.865876450e-10",
        "8, 6.220960574e-16"
    })
    void farTailsKeepTheirDigits(double z, double above) {
        assertEquals(1, NormalLaw.below(-z) / above, 1e-9);
        assertEquals(1, NormalLaw.between(z, Double.POSITIVE_INFINITY) / above, 1e-9);
        assertEquals(1, NormalLaw.between(Double.NEGATIVE_INFINITY, -z) / above, 1e-9);
    }

    @ParameterizedTest(name = "complementary error function at {0}")
    @CsvSource({
        // On each side of both joints; values of the C library's erfc.
        "0.25, 0.7236736098317631",
        "0.46875, 0.507386526782062",
        "0.46876, 0.5073774688931535",
        "-0.75, 1.7111556336535152",
        "3.999, 1.554474949099499e-08",
        "4.001, 1.5290782173248732e-08",
        "10, 2.088487583762545e-45"
    })
    void joinsFitTogether(double x, double expected) {
        assertEquals(1, NormalLaw.complement(x) / expected, 1e-13);
    }

    @Test
    void theDensityIsTheSlopeOfTheProbability() {
        for (double z = -4; z <= 4; z += 0.25) {
            double slope = NormalLaw.between(z - 1e-4, z + 1e-4) / 2e-4;
            assertEquals(1, slope / NormalLaw.density(z), 1e-7);
        }
    }

    @Test
    void allProbabilityIsOne() {
        assertEquals(1, NormalLaw.between(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY));
        assertEquals(0, NormalLaw.below(Double.NEGATIVE_INFINITY));
    }
}
