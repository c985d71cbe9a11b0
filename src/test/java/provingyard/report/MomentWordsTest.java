package provingyard.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import provingyard.picture.Icons;
import provingyard.quantity.UnitSystem;
import provingyard.scenario.Scenario;
import provingyard.scenario.SensorKind;
import provingyard.scenario.Sites;
import provingyard.study.Gauge;
import provingyard.study.Moment;
import provingyard.study.Moment.What;
import provingyard.study.Moment.Why;
import provingyard.study.Moments;
import provingyard.text.Texts;

class MomentWordsTest {

    private static final int LONGEST_TITLE = 60;
    private static final Scenario SITE = Sites.open("quillback-clinic").orThrow();

    private static MomentWords words(String language, UnitSystem units) {
        return new MomentWords(SITE, language, units);
    }

    /** A moment of a form whose gauges all read something, given in the order of the What. */
    private static Moment moment(Moments.Form form, double reading) {
        List<Double> readings = Gauge.of(form.what()).stream()
                .map(g -> g == Gauge.DEAD ? 0.0 : reading)
                .toList();
        List<String> subjects =
                switch (form.what()) {
                    case ICED -> List.of("north-walk", "north-door-walk");
                    case LEAKED, LEAK_SHUT -> List.of("main-4");
                    default -> List.of("zone-1", "zone-2", "zone-3", "zone-7");
                };
        double money = form.why() == Why.WORKED ? -12.5 : 12.5;
        return new Moment(
                8 * 1440 + 300, 9 * 1440, form.what(), form.why(), form.sensor(), subjects, 3.1, money, readings);
    }

    private static Moment with(Moment m, Gauge gauge, double value) {
        List<Double> readings = new ArrayList<>(m.readings());
        readings.set(Gauge.of(m.what()).indexOf(gauge), value);
        return new Moment(
                m.tick(), m.until(), m.what(), m.why(), m.sensor(), m.subjects(), m.amount(), m.money(), readings);
    }

    @Test
    void everyFormHasItsSentenceAndTitleInBothLanguagesAndUnits() {
        for (String language : Texts.LANGUAGES) {
            for (UnitSystem units : UnitSystem.values()) {
                for (Moments.Form form : Moments.all()) {
                    for (double reading : new double[] {0.002, 0.8, 400_000}) {
                        check(words(language, units), moment(form, reading), form);
                    }
                }
            }
        }
    }

    private static void check(MomentWords words, Moment moment, Moments.Form form) {
        String sentence = words.sentence(moment);
        assertFalse(sentence.contains("[[") || sentence.contains("{"), form + ": " + sentence);
        assertFalse(sentence.contains("null") || sentence.contains("  "), form + ": " + sentence);
        assertTrue(sentence.endsWith("."), sentence);
        assertTrue(Character.isUpperCase(sentence.charAt(0)), sentence);
        assertTrue(sentence.contains("12.50") || sentence.contains("12,50"), "what it cost: " + sentence);
        String title = words.title(moment);
        assertFalse(title.contains("[[") || title.isBlank(), title);
        assertTrue(title.length() <= LONGEST_TITLE, title.length() + ": " + title);
    }

    /** Nobody is told the same for two causes. */
    @Test
    void noTwoFormsSayTheSame() {
        for (String language : Texts.LANGUAGES) {
            Set<String> sentences = new HashSet<>();
            Set<String> titles = new HashSet<>();
            for (Moments.Form form : Moments.all()) {
                Moment moment = moment(form, 0.8);
                String sentence = words(language, UnitSystem.METRIC).sentence(moment);
                assertTrue(sentences.add(sentence), form + ": " + sentence);
                assertTrue(titles.add(words(language, UnitSystem.METRIC).title(moment)), form.toString());
            }
        }
    }

    /** Each text of a sentence is one that some moment is said with. */
    @Test
    void noSentenceIsLeftOver() {
        Set<String> said = new HashSet<>();
        for (Moments.Form form : Moments.all()) {
            said.add("moment." + form.what() + "." + form.why());
            said.add("moment." + form.what() + "." + form.why() + "." + form.sensor());
        }
        for (String key : Texts.of("debrief", "en").all().keySet()) {
            boolean sentence = key.matches("moment\\.[A-Z_]+\\.[A-Z_]+(\\.[A-Z]+)?");
            assertTrue(!sentence || said.contains(key), key);
        }
    }

    @Test
    void iconsAreThere() {
        for (What what : What.values()) {
            assertEquals(
                    MomentWords.icon(what), Icons.get(MomentWords.icon(what)).name());
        }
    }

    @Test
    void theRainSensorUnderTheEave() {
        Moment moment = new Moment(
                2 * 1440 + 300,
                2 * 1440 + 405,
                What.WATERED_WET_SOIL,
                Why.PLACE,
                SensorKind.RAIN,
                List.of("zone-3", "zone-1", "zone-2", "zone-4"),
                3.1,
                6.14,
                List.of(0.014, 0.002, 0.0, 0.001, 0.00635, 1.2, 3.0, 0.1));
        assertEquals(
                "The rain sensor caught 2 mm of 14 mm of rain where it hangs: zones 1 to 4 ran at 05:00, and 3.1 m³ ran"
                        + " off or went below the roots (6.14 USD). Hang it under open sky.",
                plain(words("en", UnitSystem.METRIC).sentence(moment)));
        assertEquals(
                "Donde está colgado, el sensor de lluvia recibió 0,079 in de 0,551 in de lluvia: a las 05:00 arrancó el"
                        + " riego de las zonas 1 a 4 y se perdieron 819 gal por escurrimiento o bajo las raíces"
                        + " (6,14 USD). Cuélguelo a cielo abierto.",
                plain(words("es", UnitSystem.US).sentence(moment)));
        assertEquals("Nov 3, 05:00", words("en", UnitSystem.METRIC).when(moment));
        assertEquals(
                "Wet soil watered: rain sensor badly placed",
                words("en", UnitSystem.METRIC).title(moment));
        assertTrue(words("en", UnitSystem.METRIC)
                .sentence(with(moment, Gauge.CAUGHT, 0.0135))
                .contains("dried too soon"));
    }

    private static String plain(String text) {
        return text.replace('\u00a0', ' ');
    }

    @Test
    void sayingsThatReadingsChoose() {
        MomentWords en = words("en", UnitSystem.METRIC);
        Moment leak = moment(new Moments.Form(What.LEAKED, Why.SETTING, SensorKind.FLOW), 600);
        assertTrue(en.sentence(leak).contains("did not shut its water"));
        assertTrue(en.sentence(with(leak, Gauge.FOUND_AFTER, 13 * 3600)).contains("only after 13"));
        assertTrue(en.sentence(with(leak, Gauge.FOUND_AFTER, Double.NaN)).contains("limits of the watch"));
        Moment dry = moment(new Moments.Form(What.WENT_DRY, Why.PLACE, SensorKind.RAIN), 0.01);
        assertTrue(en.sentence(dry).contains("out of the spray"));
        assertTrue(en.sentence(with(dry, Gauge.SPRAYED, 0)).contains("Hang it in the open"));
        assertTrue(plain(en.sentence(with(dry, Gauge.DEAD, 4))).endsWith("4 m² of plants died."));
    }

    @Test
    void zonesAreCountedAndOneOClockIsSingular() {
        Moments.Form form = new Moments.Form(What.DRIFTED, Why.SCHEDULE, null);
        Moment some = moment(form, 5);
        assertTrue(words("en", UnitSystem.METRIC).sentence(some).startsWith("Zones 1 to 3 and 7 ran at 05:00"));
        Moment night = new Moment(65, 70, What.DRIFTED, Why.SCHEDULE, null, List.of("zone-5"), 1, 2, some.readings());
        assertTrue(plain(words("es", UnitSystem.METRIC).sentence(night))
                .contains("a la 01:05 arrancó el riego de la zona 5"));
        Moment all = new Moment(
                300,
                310,
                What.DRIFTED,
                Why.SCHEDULE,
                null,
                List.of("zone-1", "zone-2", "zone-3", "zone-4", "zone-5", "zone-6", "zone-7"),
                1,
                2,
                some.readings());
        assertTrue(words("en", UnitSystem.METRIC).sentence(all).startsWith("All zones ran"));
        Moment idle = new Moment(
                300,
                301,
                What.FALSE_ALARM,
                Why.SETTING,
                SensorKind.FLOW,
                List.of("flow-1"),
                1,
                35,
                List.of(1e-4, 5e-5, 0.0));
        assertTrue(words("en", UnitSystem.METRIC).sentence(idle).contains("with all zones shut"));
    }
}
