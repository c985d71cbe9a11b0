package provingyard.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import provingyard.quantity.Parsed.Reason;
import provingyard.quantity.Parsed.Refused;
import provingyard.quantity.Parsed.Value;

class QuantitiesTest {

    @ParameterizedTest
    @CsvSource({
        "FLOW, 18 gpm, 1.135623535200e-3",
        "LENGTH, 15ft, 4.572",
        "LENGTH, 1/4 in, 0.00635",
        "LENGTH, 1 1/2 in, 0.0381",
        "LENGTH, 1-1/2 in, 0.0381",
        "LENGTH, 2.5e-3 m, 0.0025",
        "LENGTH, .5 ft, 0.1524",
        "TEMPERATURE, -3 °C, -3",
        "TEMPERATURE, \u22123 °C, -3",
        "TEMPERATURE, 38 °F, 3.33333333333",
        "TEMPERATURE_DIFFERENCE, 9 °F, 5",
        "PRESSURE, 4.1 bar, 410000",
        "PRESSURE, 60 psi, 413685.438",
        "FRACTION, 80 %, 0.8",
        "FRACTION, 0.8, 0.8",
        "DURATION, -5 h, -18000",
        "AREA, 0.4 in², 2.580640e-4",
        "PRICE_OF_WATER, 7.5 USD/kgal, 1.98129039",
        "OCCURRENCE, 0.3 per season, 0.3",
    })
    void readsWhatPeopleInTheTradeWrite(Dimension dimension, String text, double inner) {
        Value value = assertInstanceOf(Value.class, Quantities.parse(dimension, text));
        assertEquals(inner, value.inner(), 1e-7 * Math.max(1e-3, Math.abs(inner)));
    }

    @ParameterizedTest
    @CsvSource({
        "LENGTH, 15, NO_UNIT, m",
        "LENGTH, '1,5 m', COMMA, 1.5 m",
        "FLOW, 18 gmp, UNKNOWN_UNIT, gpm",
        "FLOW, 18 GPM, UNKNOWN_UNIT, gpm",
        "LENGTH, 15 feet, UNKNOWN_UNIT, ft",
        "TEMPERATURE, 38 F, UNKNOWN_UNIT, °F",
        "LENGTH, about 15 ft, NO_NUMBER, 15 ft",
        "LENGTH, 1/0 ft, ZERO_DENOMINATOR, ''",
        "LENGTH, 1e999 ft, NOT_FINITE, ''",
        "LENGTH, 1e308 km, NOT_FINITE, ''",
        "FRACTION, 5 1, UNKNOWN_UNIT, ''",
        "LENGTH, 1.2.3 m, NO_NUMBER, 15 ft",
        "LENGTH, '', EMPTY, 15 ft",
    })
    void saysWhyNotAndWhatWasProbablyMeant(Dimension dimension, String text, Reason reason, String maybe) {
        Refused refused = assertInstanceOf(Refused.class, Quantities.parse(dimension, text));
        assertEquals(reason, refused.reason());
        assertEquals(maybe, refused.maybe());
    }

    @Test
    void pointsAtTheWrongPart() {
        Refused refused = assertInstanceOf(Refused.class, Quantities.parse(Dimension.FLOW, "  18  gmp"));
        assertEquals("gmp", refused.found());
        assertEquals(6, refused.at());
    }

    @Property(tries = 2000)
    void whatIsWrittenReadsBackBitForBit(@ForAll Dimension dimension, @ForAll double value) {
        if (Double.isNaN(value) || Double.isInfinite(value)) {
            return;
        }
        String text = Quantities.exact(dimension, value);
        Value read = assertInstanceOf(Value.class, Quantities.parse(dimension, text), text);
        assertEquals(value == 0 ? 0.0 : value, read.inner(), 0.0, text);
    }

    @Property(tries = 2000)
    void neverThrows(@ForAll Dimension dimension, @ForAll @StringLength(max = 80) String text) {
        Parsed parsed = Quantities.parse(dimension, text);
        if (parsed instanceof Refused refused) {
            assertEquals(true, refused.at() <= text.length());
        }
    }
}
