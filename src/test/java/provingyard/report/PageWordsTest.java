package provingyard.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import provingyard.quantity.Show;
import provingyard.quantity.UnitSystem;
import provingyard.scenario.FaultPlan;
import provingyard.scenario.Sites;
import provingyard.season.SeasonEvent;
import provingyard.study.Worth;

class PageWordsTest {

    private static PageWords words(String language, UnitSystem units) {
        return new PageWords(Sites.open("quillback-clinic").orThrow(), language, units);
    }

    @ParameterizedTest
    @CsvSource({
        "0.001,a week",
        "0.09,5 weeks",
        "0.16,2 months",
        "0.95,11 months",
        "1.9,23 months",
        "2.04,2 years",
        "6.4,6.4 years",
        "Infinity,not by its savings"
    })
    void aPaybackIsSaidInTheUnitThatPeopleUse(double years, String said) {
        assertEquals(said, words("en", UnitSystem.US).payback(years).replace('\u00a0', ' '));
    }

    @Test
    void aNumberKeepsWhatMatters() {
        PageWords words = words("es", UnitSystem.US);
        assertEquals("2,5", words.number(2.5));
        assertEquals("4", words.number(4));
        assertEquals("1234", words.number(1234));
    }

    @Test
    void theUnitOfASpanStandsOnceWhereItIsTheSame() {
        PageWords metric = words("en", UnitSystem.METRIC);
        assertEquals("2 to 5\u00a0m³", metric.ends(Show.VOLUME, new Worth.Span(3, 2, 5)));
        assertEquals("400\u00a0L to 5\u00a0m³", metric.ends(Show.VOLUME, new Worth.Span(3, 0.4, 5)));
        assertEquals("\u22123 to 1200\u00a0USD", metric.ends(Show.MONEY, new Worth.Span(3, -3.4, 1200.2)));
        assertEquals("0\u00a0USD", metric.ends(Show.MONEY, new Worth.Span(3, 0.1, 0.4)));
    }

    @Test
    void aDifferenceHasItsSignUnlessItShowsAsNought() {
        PageWords words = words("es", UnitSystem.METRIC);
        assertEquals("+3,20\u00a0USD", words.signed(Show.MONEY, 3.2));
        assertEquals("\u22123,20\u00a0USD", words.signed(Show.MONEY, -3.2));
        assertEquals("0,00\u00a0USD", words.signed(Show.MONEY, -0.001));
    }

    @ParameterizedTest
    @CsvSource({"en", "es"})
    void whatIsNamedAfterItsKindHasAText(String language) {
        PageWords words = words(language, UnitSystem.METRIC);
        for (SeasonEvent.Kind kind : SeasonEvent.Kind.values()) {
            boolean known = words.windowHas("event." + kind.name())
                    || !words.say("happened." + kind.name()).startsWith("[[");
            assertTrue(known, kind.name());
        }
        for (FaultPlan.Kind kind : List.of(
                FaultPlan.Kind.MAINLINE_BREAK,
                FaultPlan.Kind.MAINLINE_LEAK,
                FaultPlan.Kind.LATERAL_BREAK,
                FaultPlan.Kind.VALVE_STUCK_OPEN,
                FaultPlan.Kind.VALVE_WEEPS,
                FaultPlan.Kind.HEAD_BROKEN)) {
            assertTrue(words.say("fault." + kind.name(), "x").contains("x"), kind.name());
        }
    }
}
