package provingyard.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import provingyard.quantity.Display;
import provingyard.quantity.Show;
import provingyard.quantity.UnitSystem;
import provingyard.season.Chronicle;
import provingyard.season.Season;

class DebriefPageTest {

    private static final String CLINIC = page(LivedDebriefs.clinic());

    private static String page(Story story) {
        return DebriefPage.of(story, "en", UnitSystem.METRIC).text();
    }

    private static String shown(String page) throws Exception {
        return PageReader.xml(page)
                .getElementsByTagName("body")
                .item(0)
                .getTextContent()
                .replaceAll("[\\s\\u00a0]+", " ");
    }

    @ParameterizedTest
    @CsvSource({"en,METRIC", "en,US", "es,METRIC", "es,US"})
    void allIsSaidInBothLanguagesAndUnits(String language, UnitSystem units) throws Exception {
        Story story = LivedDebriefs.clinic();
        String shown = shown(DebriefPage.of(story, language, units).text());
        assertFalse(shown.contains("[["), "a text is missing");
        assertFalse(shown.matches(".*\\{\\d.*"), "a value is missing");
        boolean us = units == UnitSystem.US;
        assertEquals(us, shown.contains(" gal"), "gallons");
        assertEquals(!us, shown.contains(" m³"), "cubic metres");
        assertEquals(us, shown.contains("°F"), "degrees Fahrenheit");
        assertEquals(us, shown.contains(" ft east") || shown.contains(" ft al este"), "places in feet");
        String score = Integer.toString(story.debrief().standing().score().shown());
        assertTrue(shown.contains(score), score);
        assertEquals("es".equals(language), shown.contains("La marca"), shown);
    }

    @Test
    void thePageTellsWhatWasLostAndHowItWasComputed() throws Exception {
        Story story = LivedDebriefs.clinic();
        Season season = story.debrief().season();
        String shown = shown(CLINIC);
        Display display = Display.of(UnitSystem.METRIC, "en");
        for (String said : List.of(
                "Ana",
                Long.toString(season.seed()),
                season.site().contentHash().substring(0, 16),
                season.ledgerHash().substring(0, 16),
                display.text(Show.MONEY, story.debrief().standing().trainee().total()),
                display.text(Show.VOLUME, season.ledger().irrigation().leaked()),
                String.format(
                        java.util.Locale.ROOT, "%.1e", season.ledger().water().closure()),
                "You named the decision that cost most",
                "It sat behind the first branch and saw half of it.",
                "Break in the mainline, pipe main-4",
                "Leak: flow sensor badly set",
                "seen by people after 5.8 h",
                new MomentWords(season.site().scenario(), "en", UnitSystem.METRIC)
                        .sentence(story.debrief().moments().get(0)))) {
            assertTrue(shown.contains(said.replace('\u00a0', ' ')), said);
        }
    }

    @Test
    void theBarsAreSaidInWordsToo() throws Exception {
        boolean said = PageReader.elements(PageReader.xml(CLINIC)).stream()
                .anyMatch(e -> e.getAttribute("alt").matches(".*Flow \u2212[0-9.]+\u00a0USD placed elsewhere.*"));
        assertTrue(said, "what the picture shows");
    }

    @Test
    void sharesOnThePageAddUpToTheWholeGap() throws Exception {
        Document page = PageReader.xml(CLINIC);
        double sum = 0;
        double whole = Double.NaN;
        for (Element row : PageReader.elements(page)) {
            if (!row.getTagName().equals("tr") || row.getElementsByTagName("td").getLength() != 7) {
                continue;
            }
            Element last = (Element) row.getElementsByTagName("td").item(6);
            if (!last.getAttribute("data-head").equals("In all")) {
                continue;
            }
            double money = Double.parseDouble(
                    last.getTextContent().replaceAll("[^0-9.\\u2212]", "").replace('\u2212', '-'));
            boolean total = row.getAttribute("class").equals("sum");
            whole = total ? money : whole;
            sum += total ? 0 : money;
        }
        assertEquals(whole, sum, 0.03, "five roundings to the cent");
    }

    @Test
    void icedNightsAreToldByWalkTheWorstFirst() throws Exception {
        Story story = LivedDebriefs.clinic();
        List<Chronicle.IcedWalk> iced = story.debrief().chronicle().iced();
        Chronicle.IcedWalk worst = iced.stream()
                .max(Comparator.comparingDouble(Chronicle.IcedWalk::inTraffic))
                .orElseThrow();
        PageWords words = new PageWords(story.debrief().season().site().scenario(), "en", UnitSystem.METRIC);
        String walk = words.thing(worst.walk());
        String row = "Fri 29 Nov " + walk + " " + words.text(Show.ICE, worst.areaHours()) + " "
                + words.text(Show.ICE, worst.inTraffic());
        String shown = shown(CLINIC);
        assertTrue(shown.contains(row.replace('\u00a0', ' ')), row);
        assertTrue(shown.contains("The worst 10 of " + iced.size()), shown);
        assertTrue(shown.contains("The night to Fri 29 Nov: " + walk), shown);
    }

    @Test
    void leaksAreToldWithWhatTheyLostAndWhenTheyWereFound() throws Exception {
        Chronicle told = LivedDebriefs.clinicAsTheMark().debrief().chronicle();
        Chronicle.Leak first = told.leaks().get(0);
        assertTrue(first.found() != Chronicle.NEVER, first.toString());
        Display display = Display.of(UnitSystem.METRIC, "en");
        String shown = shown(page(LivedDebriefs.clinicAsTheMark()));
        String after = "after " + display.text(Show.DURATION, (first.found() - first.began()) * 60.0);
        for (String said : List.of(after, display.text(Show.VOLUME, first.volume()))) {
            assertTrue(shown.contains(said.replace('\u00a0', ' ')), said);
        }
    }

    @Test
    void whatIsNotKnownIsLeftOut() throws Exception {
        String shown = shown(page(LivedDebriefs.bare(LivedDebriefs.clinic())));
        String all = shown(CLINIC);
        for (String title : List.of(
                "What each decision cost",
                "What each sensor is worth",
                "The moments that mattered",
                "What you would change")) {
            assertFalse(shown.contains(title), title);
            assertTrue(all.contains(title), title);
        }
        assertTrue(shown.contains("Where the water went"), shown);
    }

    @Test
    void withoutAMarkThePageSaysSoAndComparesWithTheClockAlone() throws Exception {
        String shown = shown(page(LivedDebriefs.withoutMark(LivedDebriefs.clinic())));
        assertTrue(shown.contains("No score"), shown);
        assertTrue(shown.contains("The mark of this site is not known yet."), shown);
        assertTrue(shown.contains("You named: Flow. Your reason"), shown);
        assertTrue(shown.contains("was not worked out for this page"), shown);
        assertFalse(shown.contains("Draws behind the mark") || shown.contains("NaN"), shown);
    }

    @Test
    void aSeasonThatLeakedNothingAndIcedNothingSaysSo() throws Exception {
        String shown = shown(page(LivedDebriefs.clinicAsTheMark()));
        assertTrue(shown.contains("No walk iced over from irrigation."), shown);
        assertTrue(shown.contains("Computed: no decision cost more"), shown);
    }

    @Test
    void namesFromOutsideAreShownAndDoNothing() throws Exception {
        String sly = LivedDebriefs.SLY + "\"' onload=alert(2) &amp; {0}";
        Document page = PageReader.xml(page(LivedDebriefs.told(LivedDebriefs.clinic(), sly)));
        Set<String> names = new TreeSet<>();
        for (Element element : PageReader.elements(page)) {
            names.add(element.getTagName());
            for (int i = 0; i < element.getAttributes().getLength(); i++) {
                String attribute = element.getAttributes().item(i).getNodeName();
                assertFalse(attribute.startsWith("on"), element.getTagName() + " " + attribute);
            }
            String source = element.getAttribute("src") + element.getAttribute("srcset");
            assertTrue(source.isEmpty() || source.startsWith("data:image/png;base64,"), element.getTagName());
            assertFalse(element.hasAttribute("href"), "nothing is linked");
        }
        assertFalse(names.contains("script") || names.contains("link") || names.contains("iframe"), names.toString());
        String body = page.getElementsByTagName("body").item(0).getTextContent();
        // Learner, foot of the sheets, reason, and the set-up's name.
        assertEquals(4, body.split(java.util.regex.Pattern.quote(sly), -1).length - 1);
    }

    @Test
    void nothingIsLoadedFromElsewhere() {
        String page = CLINIC;
        assertFalse(page.matches("(?s).*(https?:|url\\((?!data:)|@import).*"), "something is loaded");
    }

    @Test
    void theLettersOfThePageAreInIt() {
        String page = CLINIC;
        assertEquals(3, page.split("@font-face", -1).length - 1);
        assertTrue(page.length() < 6_000_000, "characters: " + page.length());
    }
}
