package provingyard.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import provingyard.quantity.UnitSystem;
import provingyard.setup.Cautions;
import provingyard.study.Debrief;
import provingyard.study.WorthStudy;

class OwnerPageTest {

    /** The fullest page: all five kinds, by someone with a long name. */
    private static Debrief full(String learner) {
        return LivedDebriefs.withWorth(LivedDebriefs.told(LivedDebriefs.clinicAsTheMark(), learner), true)
                .debrief();
    }

    @ParameterizedTest
    @CsvSource({
        "en,US,A4", "en,US,LETTER", "en,METRIC,A4", "en,METRIC,LETTER",
        "es,US,A4", "es,US,LETTER", "es,METRIC,A4", "es,METRIC,LETTER"
    })
    void allOfItIsOnOneSheet(String language, UnitSystem units, Paper paper) throws IOException {
        byte[] pdf = OwnerPage.pdf(full("María de los Ángeles Fernández-Villanueva"), language, units, paper);
        assertEquals(1, Pdf.pages(pdf));
        String text = PageReader.text(pdf);
        assertTrue(text.contains("1 / 1"), text);
        for (String key : List.of(Cautions.NOT_WINTERISED, Cautions.CODES, Cautions.BURIED_LINES)) {
            assertTrue(text.contains(Cautions.text(key, language)), key);
        }
        assertTrue(text.contains("es".equals(language) ? "ni una garantía" : "no guarantee"), text);
        assertFalse(text.contains("[[") || text.contains("#"), text);
        assertEquals(units == UnitSystem.US, text.contains(" gal"), text);
        assertEquals(units == UnitSystem.US, text.contains("°F"), text);
    }

    @Test
    void savingsPaybackAndSpreadAreSaidForEachSensor() throws IOException {
        String text = PageReader.text(OwnerPage.pdf(full("Ana"), "en", UnitSystem.METRIC, Paper.A4));
        // Freeze: 310 USD a season, four seasons a year, for 108 USD.
        for (String said : List.of("108 USD", "310 USD", "186 to 651 USD", "1240 USD", "744 to 2604 USD", "5 weeks")) {
            assertTrue(text.contains(said), said + " in " + text);
        }
        assertTrue(text.contains("\u221213 USD"), "a sensor that costs more than it saves says so");
        assertTrue(text.contains("not by its savings"), text);
        assertTrue(text.contains("A year holds 4 such seasons."), text);
        assertTrue(text.contains("48 computed seasons"), text);
        // All five together: 431 USD a season, four seasons a year, for 875 USD.
        for (String said : List.of("1724 USD", "1034 to 3620 USD", "284 m³ (170 to 596 m³)", "875 USD", "6 months")) {
            assertTrue(text.contains(said), said + " in " + text);
        }
    }

    @Test
    void whereAYearHasOneSeasonSavingsStandOnce() throws IOException {
        Debrief once = full("Ana").with(LivedDebriefs.worth(true, 1));
        String text = PageReader.text(OwnerPage.pdf(once, "en", UnitSystem.METRIC, Paper.A4));
        assertTrue(text.contains("A year holds one such season."), text);
        assertTrue(text.contains("Saves a year") && !text.contains("Saves a season"), text);
        assertEquals(2, text.split("310 USD", -1).length - 1, "a price, and what the freeze sensor saves");
    }

    @Test
    void flowsThatCouldNotBeWorkedOutAreSaid() throws IOException {
        var worth = LivedDebriefs.worth(true, 4);
        Debrief doubted = full("Ana").with(new WorthStudy.Result(worth.kinds(), worth.whole(), 7));
        String text = PageReader.text(OwnerPage.pdf(doubted, "en", UnitSystem.METRIC, Paper.A4))
                .replaceAll("\\s+", " ");
        assertTrue(text.contains("could not be worked out: 7. These numbers cannot be trusted."), text);
    }

    @Test
    void whatIsNotPlacedIsOnlyNamedBelow() throws IOException {
        Debrief some =
                LivedDebriefs.withWorth(LivedDebriefs.clinicAsTheMark(), false).debrief();
        String text = PageReader.text(OwnerPage.pdf(some, "en", UnitSystem.METRIC, Paper.A4));
        assertTrue(text.contains("Not bought. Wind sensor: 145 USD, would save 86 USD a year."), text);
        assertFalse(text.contains("so that the water lands on the plants"), text);
    }

    @Test
    void withoutWorthThereIsNothingToTellAnOwner() {
        assertFalse(OwnerPage.tells(
                LivedDebriefs.bare(LivedDebriefs.clinicAsTheMark()).debrief()));
        assertTrue(OwnerPage.tells(full("Ana")));
    }

    @Test
    void aSensorThatTheControllerIgnoresIsSaidToOnlyShowItsReading() throws IOException {
        var debrief = full("Ana");
        var setUp = debrief.season().setUp();
        var deaf = new provingyard.setup.SetUp(
                setUp.sensors(), List.of(), provingyard.setup.FlowWatch.OFF, setUp.schedule());
        var season = provingyard.season.Season.begin(debrief.season().site(), deaf);
        Debrief idle = new Debrief(
                season,
                debrief.standing(),
                debrief.clock(),
                debrief.best(),
                debrief.mark(),
                debrief.chronicle(),
                List.of(),
                debrief.shares(),
                debrief.worth(),
                debrief.commitment(),
                "");
        String text = PageReader.text(OwnerPage.pdf(idle, "en", UnitSystem.METRIC, Paper.A4));
        assertEquals(5, text.split("Only shows its reading", -1).length - 1, text);
    }

    @Test
    void namesFromOutsideAreShownAndDoNothing() throws Exception {
        String page =
                OwnerPage.of(full(LivedDebriefs.SLY), "en", UnitSystem.METRIC).text();
        var document = PageReader.xml(page);
        assertEquals(0, document.getElementsByTagName("script").getLength());
        assertTrue(document.getElementsByTagName("body")
                .item(0)
                .getTextContent()
                .contains("Prepared by " + LivedDebriefs.SLY));
    }
}
