package provingyard.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import provingyard.call.Call;
import provingyard.call.CallReview;
import provingyard.call.Judge;
import provingyard.call.LivedCalls;
import provingyard.call.ReviewedTest;
import provingyard.diagnosis.Trust;
import provingyard.quantity.UnitSystem;
import provingyard.report.CallCsv;
import provingyard.report.CallPage;

/** The page of a service call's debrief says what the screen says. */
class CallDebriefPageTest {

    private static Call unsafe;
    private static CallReview review;

    @BeforeAll
    static void lived() {
        unsafe = LivedCalls.unsafe();
        review = review(unsafe);
    }

    private static CallReview review(Call call) {
        return CallReview.of(call, Judge.reference(call.site(), call.deal()), Trust.USUAL);
    }

    private static CallDebriefPage page(String language, UnitSystem units) {
        return new CallDebriefPage(unsafe, review, new CallDebriefModel.Said(1, "<b>why</b>"), language, units);
    }

    private static String shown(String page) {
        return page.replaceAll("(?s)<style.*?</style>", "")
                .replaceAll("<[^>]*>", " ")
                .replaceAll("[\\s\\u00a0]+", " ");
    }

    @ParameterizedTest
    @CsvSource({"en,METRIC", "en,US", "es,METRIC", "es,US"})
    void allIsSaidInBothLanguagesAndUnits(String language, UnitSystem units) {
        String shown = shown(CallPage.of(page(language, units).story()).text());
        assertFalse(shown.contains("[["), "a text is missing");
        assertFalse(shown.matches(".*\\{\\d.*"), "a value is missing");
        boolean us = units == UnitSystem.US;
        assertEquals(us, shown.contains(" gpm"), shown);
        assertEquals(!us, shown.contains(" L/min"), shown);
        assertEquals(us, shown.contains(" gal "), shown);
        assertEquals("es".equals(language), shown.contains("Lo que llama la atención") || shown.contains("Prueba"));
        assertTrue(shown.contains("&lt;b&gt;why"), "as it was written");
    }

    @Test
    void itTellsWhatTheScreenTells() {
        CallDebriefPage page = page("en", UnitSystem.US);
        String shown = shown(CallPage.of(page.story()).text()).replace("&#39;", "'");
        Words words = new Words();
        CallDebriefWords sayings = new CallDebriefWords(words, unsafe.site());
        ReviewedTest first = review.yours().tests().get(0);
        for (String said : List.of(
                sayings.outcome(review),
                sayings.whole(Math.rint(review.score().total())),
                sayings.unsafe(review).get(0),
                sayings.explained(first),
                sayings.name(first.note().test()),
                sayings.reading(first),
                sayings.bits(first.step().gain()),
                sayings.remark(review.remarks().get(0)),
                sayings.litres(review.experts().litres()),
                sayings.suspect(review.experts().stated()))) {
            assertTrue(shown.contains(said.replace('\u00a0', ' ')), said + " in " + shown);
        }
        assertTrue(shown.indexOf(sayings.say("review.unsafe.title")) < shown.indexOf(sayings.say("review.points")));
    }

    @Test
    void eachTestIsALineOfTheTable() {
        List<CallCsv.Line> lines = page("en", UnitSystem.US).lines();
        assertEquals(unsafe.notes().size(), lines.size());
        for (int i = 0; i < lines.size(); i++) {
            assertEquals(unsafe.notes().get(i).test().id(), lines.get(i).id());
            assertEquals(unsafe.notes().get(i).litres(), lines.get(i).litres());
        }
        assertEquals(review.yours().tests().get(0).step().gain(), lines.get(0).expected());
    }

    @Test
    void aCallWithoutATestHasAPage() {
        Call call = LivedCalls.untested();
        CallDebriefPage page = new CallDebriefPage(call, review(call), null, "en", UnitSystem.US);
        assertTrue(CallPage.of(page.story()).text().contains("points of 100"));
        assertEquals(List.of(), page.lines());
    }
}
