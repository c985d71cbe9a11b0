package provingyard.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import provingyard.quantity.Parsed.Value;

class DisplayTest {

    private static final Display US = Display.of(UnitSystem.US, "en");
    private static final Display METRIC = Display.of(UnitSystem.METRIC, "en");
    private static final Display SPANISH = Display.of(UnitSystem.METRIC, "es");

    @ParameterizedTest
    @CsvSource({
        "LENGTH, 4.572, 15 ft, 4.57 m, '4,57 m'",
        "DEPTH, 0.00635, 0.25 in, 6.4 mm, '6,4 mm'",
        "FLOW, 1.1356235352e-3, 18 gpm, 68 L/min, 68 L/min",
        "PRESSURE, 410000, 59 psi, 4.1 bar, '4,1 bar'",
        "TEMPERATURE, -3, 26.6 °F, −3 °C, −3 °C",
        "TEMPERATURE, -0.01, 32 °F, 0 °C, 0 °C",
        "SPEED, 4, 8.9 mph, 4 m/s, 4 m/s",
        "VOLUME, 0.25, 66 gal, 250 L, 250 L",
        "VOLUME, 12.5, '3302 gal', 12.5 m³, '12,5 m³'",
        "AREA, 1234, '13,283 ft²', 1234 m², 1234 m²",
        "RATE, 1.1e-5, 1.56 in/h, 40 mm/h, 40 mm/h",
        "MONEY, 1234.5, 1234.50 USD, 1234.50 USD, '1234,50 USD'",
        "ICE, 2.5, 27 ft²·h, 2.5 m²·h, '2,5 m²·h'",
        "DURATION, 45, 45 s, 45 s, 45 s",
        "DURATION, 1080, 18 min, 18 min, 18 min",
        "DURATION, 9000, 2.5 h, 2.5 h, '2,5 h'",
        "DURATION, 864000, 10 d, 10 d, 10 d",
        "FRACTION, 0.8, 80 %, 80 %, 80 %",
        "LENGTH, NaN, –, –, –",
        "PULSES, 10.67, 40.39 pulses/gal, 10.67 pulses/L, '10,67 pulsos/L'",
    })
    void suitsUnitsAndLanguage(Show show, double inner, String us, String metric, String spanish) {
        assertEquals(us, US.text(show, inner).replace('\u00a0', ' '));
        assertEquals(metric, METRIC.text(show, inner).replace('\u00a0', ' '));
        assertEquals(spanish, SPANISH.text(show, inner).replace('\u00a0', ' '));
    }

    @Test
    void setsThousandsApart() {
        assertEquals("12,345.00\u00a0USD", US.text(Show.MONEY, 12345));
        assertEquals("12\u00a0345,00\u00a0USD", SPANISH.text(Show.MONEY, 12345));
    }

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void shownAndInnerAreInverse(UnitSystem system) {
        Display display = Display.of(system, "en");
        for (Show show : Show.values()) {
            assertEquals(7.25, display.inner(show, display.shown(show, 7.25)), 1e-12, show.name());
        }
    }

    @Test
    void readsTypedNumbersInTheShownUnit() {
        assertEquals(4.572, inner(US.read(Show.LENGTH, "15")), 1e-12);
        assertEquals(1.5, inner(SPANISH.read(Show.LENGTH, "1,5")), 1e-12);
        assertEquals(0.8, inner(US.read(Show.FRACTION, "80")), 1e-12);
        assertEquals(0.3048, inner(SPANISH.read(Show.LENGTH, "1 ft")), 1e-12);
    }

    @ParameterizedTest
    @CsvSource({
        "more than {10 gpm} ran, more than 10 gpm ran, 'more than 38 L/min ran', 'more than 38 L/min ran'",
        "{54 psi} and {90 °F}, 54 psi and 90 °F, 3.72 bar and 32.2 °C, '3,72 bar and 32,2 °C'",
        "{1/4 in} of {30 m}, 0.25 in of 98 ft, 6.4 mm of 30 m, '6,4 mm of 30 m'",
        "{370 kPa} at {5 m/s}, 54 psi at 11 mph, 3.7 bar at 5 m/s, '3,7 bar at 5 m/s'",
        "{ten gpm} {} {$1} 10 gpm, {ten gpm} {} {$1} 10 gpm, {ten gpm} {} {$1} 10 gpm, {ten gpm} {} {$1} 10 gpm",
    })
    void quantitiesInSentencesAreShownInTheSystem(String written, String us, String metric, String spanish) {
        assertEquals(us, US.sentence(written));
        assertEquals(metric, METRIC.sentence(written));
        assertEquals(spanish, SPANISH.sentence(written));
    }

    private static double inner(Parsed parsed) {
        return assertInstanceOf(Value.class, parsed).inner();
    }

    @Test
    void theWordForPulsesIsReadInTheLanguageInWhichItIsShown() {
        Parsed typed = SPANISH.read(Show.PULSES, "40,39 pulsos/gal");
        assertEquals(40.39 / 3.785411784, ((Parsed.Value) typed).inner(), 1e-9);
    }
}
