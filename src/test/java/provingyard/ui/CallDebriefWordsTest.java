package provingyard.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import provingyard.call.Call;
import provingyard.call.CallReview;
import provingyard.call.FieldTest;
import provingyard.call.Judge;
import provingyard.call.LivedCalls;
import provingyard.call.ReviewedTest;
import provingyard.call.Tool;
import provingyard.diagnosis.CaseScore;
import provingyard.diagnosis.Declaration;
import provingyard.diagnosis.Trust;
import provingyard.quantity.UnitSystem;
import provingyard.text.Texts;

/** Sentences of a service call's debrief: made from the review, whole in both languages, with units. */
class CallDebriefWordsTest {

    private static CallReview good;
    private static CallReview lucky;
    private static CallReview unsafe;

    private final Words words = new Words();
    private final CallDebriefWords sayings = new CallDebriefWords(words, good.site());

    @BeforeAll
    static void review() {
        Call lived = LivedCalls.good();
        Judge.Reference reference = Judge.reference(lived.site(), lived.deal());
        good = CallReview.of(lived, reference, Trust.USUAL);
        lucky = CallReview.of(LivedCalls.lucky(), reference, Trust.USUAL);
        unsafe = CallReview.of(LivedCalls.unsafe(), reference, Trust.USUAL);
    }

    @AfterEach
    void english() {
        words.speak("en");
        words.units().set(UnitSystem.US);
    }

    private List<String> all(CallReview review) {
        List<String> all = new ArrayList<>(sayings.unsafe(review));
        all.add(sayings.outcome(review));
        review.remarks().forEach(f -> all.add(sayings.remark(f)));
        for (int test : List.of(0, 1, 3)) {
            sayings.said(review, new CallDebriefModel.Said(test, "so")).ifPresent(all::add);
        }
        for (CallReview.Way way : List.of(review.yours(), review.experts())) {
            for (ReviewedTest test : way.tests()) {
                all.add(sayings.explained(test));
                all.add(sayings.name(test.note().test()));
                all.add(sayings.brief(test.note().test()));
                test.rows().forEach(r -> all.add(sayings.suspect(r.classes())));
                test.better().ifPresent(b -> {
                    all.add(sayings.why(test, b));
                    all.addAll(sayings.parts(b.test(), b.split()));
                });
            }
        }
        return all;
    }

    @Test
    void noTextIsMissingInEitherLanguage() {
        for (String language : Texts.LANGUAGES) {
            words.speak(language);
            for (CallReview review : List.of(good, lucky, unsafe)) {
                for (String text : all(review)) {
                    assertFalse(text.isBlank() || text.contains("[[") || text.contains("{"), language + ": " + text);
                }
            }
            for (FieldTest test : good.site().tests()) {
                assertFalse(sayings.name(test).contains("[["), test.id());
                assertTrue(Texts.of("callreview", language).has("review.test." + test.kind()), test.kind());
                if (test.measure() instanceof FieldTest.Measure.Answers answers) {
                    answers.keys()
                            .forEach(k -> assertTrue(
                                    Texts.of("callreview", language).has("review.answer." + k), test.kind() + " " + k));
                }
            }
            good.site()
                    .hypotheses()
                    .classes()
                    .forEach(c -> assertFalse(sayings.suspect(c).contains("[["), c));
        }
    }

    @Test
    void keysThatAreMadeFromNamesAreThere() {
        Texts texts = Texts.of("callreview", "en");
        for (CallReview.Remark remark : CallReview.Remark.values()) {
            assertTrue(texts.has(remark.key()), remark.key());
        }
        for (Tool tool : Tool.values()) {
            assertTrue(texts.has("review.tool." + tool.name()), tool.name());
        }
        for (ReviewedTest.Family family : ReviewedTest.Family.values()) {
            assertTrue(texts.has("review.family." + family.name()), family.name());
        }
        for (Declaration.Hit hit : Declaration.Hit.values()) {
            assertTrue(texts.has("review.outcome." + hit.name()), hit.name());
        }
        for (CaseScore.Kind kind : CaseScore.Kind.values()) {
            boolean known = texts.has("review.line." + kind.name()) || texts.has("review.taken." + kind.name());
            assertTrue(known, kind.name());
        }
    }

    @Test
    void theMeterIsExplainedWithWhatASoundSystemWouldRead() {
        ReviewedTest meter = unsafe.yours().tests().get(0);
        String us = sayings.explained(meter);
        assertTrue(us.contains("gpm") && us.contains("leaks of the main") && us.contains("Dropped: "), us);
        words.units().set(UnitSystem.METRIC);
        assertTrue(sayings.explained(meter).contains("L/min"), sayings.explained(meter));
        words.speak("es");
        assertTrue(sayings.explained(meter).contains("fugas de la principal"), sayings.explained(meter));
    }

    @Test
    void whatWasUnsafeIsSaidWithItsTestsAndRule() {
        List<String> lines = sayings.unsafe(unsafe);
        assertTrue(lines.get(0).contains("tests 2 and 3"), lines.get(0));
        assertTrue(lines.get(0).contains("Ask for buried lines to be marked"), lines.get(0));
        assertTrue(lines.get(lines.size() - 1).startsWith("Local codes"), lines.toString());
    }

    @Test
    void whatWasSaidBeforehandIsHeldAgainstTheWorst() {
        int worst = lucky.worst().get(0).number();
        String right =
                sayings.said(lucky, new CallDebriefModel.Said(worst, "dry")).orElseThrow();
        assertTrue(right.contains("“dry”") && right.contains("gave most away"), right);
        String other = sayings.said(lucky, new CallDebriefModel.Said(worst == 1 ? 2 : 1, ""))
                .orElseThrow();
        assertTrue(other.contains("test " + worst + " gave most"), other);
        String fine = sayings.said(good, new CallDebriefModel.Said(0, "")).orElseThrow();
        assertTrue(fine.startsWith("You would change nothing."), fine);
    }

    @Test
    void neighboursOfAMainAreNamedTogether() {
        List<String> run = good.map().mains().stream()
                .filter(m -> m.pipe().equals("main-4"))
                .map(m -> m.repairClass())
                .toList();
        assertEquals("Main, stretches 12 to 16, south-west", sayings.suspect(run));
        assertEquals("Main, stretches 12 to 13, south-west", sayings.suspect(run.subList(0, 2)));
        CallWords onSite = new CallWords(good.site(), words);
        assertEquals("Main, stretch 12", onSite.place(run.get(0)), "as it was called during the call");
    }

    @Test
    void sharesNearTheirEndsAreNotRoundedToCertainty() {
        assertEquals("under 1 %", sayings.percent(0.004));
        assertEquals("over 99 %", sayings.percent(0.996));
        assertEquals("41\u00a0%", sayings.percent(0.41));
    }
}
