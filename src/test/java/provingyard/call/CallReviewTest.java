package provingyard.call;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import provingyard.call.CallReview.Remark;
import provingyard.diagnosis.CaseScore;
import provingyard.diagnosis.Declaration;
import provingyard.diagnosis.Policies;
import provingyard.diagnosis.ServiceRun;
import provingyard.diagnosis.Trust;
import provingyard.scenario.Point;

class CallReviewTest {

    private static final double EPS = 1e-9;

    private static Judge.Reference reference;
    private static CallReview good;
    private static CallReview lucky;
    private static CallReview unsafe;

    @BeforeAll
    static void review() {
        Call lived = LivedCalls.good();
        reference = Judge.reference(lived.site(), lived.deal());
        good = CallReview.of(lived, reference, Trust.USUAL);
        lucky = CallReview.of(LivedCalls.lucky(), reference, Trust.USUAL);
        unsafe = CallReview.of(LivedCalls.unsafe(), reference, Trust.USUAL);
    }

    private static Set<Remark> remarks(CallReview review) {
        Set<Remark> all = new TreeSet<>();
        review.remarks().forEach(f -> all.add(f.remark()));
        return all;
    }

    private static List<Integer> tests(CallReview review, Remark remark) {
        return review.remarks().stream()
                .filter(f -> f.remark() == remark)
                .findFirst()
                .orElseThrow()
                .tests();
    }

    @Test
    void aGoodCallIsSaidToBeGood() {
        assertTrue(good.score().total() > 90, good.score().toString());
        assertEquals(
                Set.of(Remark.ENOUGH, Remark.NOTHING_TWICE, Remark.MADE_SAFE),
                remarks(good),
                good.remarks().toString());
        assertEquals(List.of(2), tests(good, Remark.MADE_SAFE));
        assertEquals(good.truth(), List.of(good.yours().stated()));
        assertEquals(Declaration.Hit.RIGHT, good.declaration().hit());
    }

    @Test
    void aLuckyHitIsSaidToBeLuck() {
        assertEquals(Declaration.Hit.RIGHT, lucky.declaration().hit());
        assertTrue(lucky.declaration().probability() < 0.5);
        Set<Remark> said = remarks(lucky);
        assertTrue(said.containsAll(Set.of(Remark.LUCKY, Remark.STOPPED_EARLY, Remark.ASKED_TWICE)), said.toString());
        assertEquals(List.of(3), tests(lucky, Remark.ASKED_TWICE));
        assertFalse(said.contains(Remark.ENOUGH));
        assertTrue(lucky.score().total() < good.score().total() - 30);
    }

    @Test
    void anUnsafeActComesFirstAndCapsTheCase() {
        assertEquals(Remark.UNSAFE, unsafe.remarks().get(0).remark());
        assertEquals(List.of(2, 3), tests(unsafe, Remark.UNSAFE));
        assertEquals(CaseScore.Kind.UNSAFE, unsafe.score().lines().get(0).kind());
        assertTrue(unsafe.score().total() <= CaseScore.CAP);
        assertTrue(remarks(unsafe).contains(Remark.DUG_EARLY));
        assertFalse(remarks(unsafe).contains(Remark.MARKS_FIRST));
    }

    @Test
    void beliefGoesOnFromTestToTest() {
        for (CallReview review : List.of(good, lucky, unsafe)) {
            List<ReviewedTest> tests = review.yours().tests();
            for (int i = 0; i < tests.size(); i++) {
                ReviewedTest test = tests.get(i);
                assertEquals(test.step().before(), test.note().prior().entropy(), EPS);
                assertEquals(test.step().after(), test.after().entropy(), EPS);
                assertEquals(
                        1,
                        test.families().values().stream()
                                .mapToDouble(ReviewedTest.Change::after)
                                .sum(),
                        1e-6);
            }
            assertEquals(
                    review.declaration().probability(),
                    tests.get(tests.size() - 1).after().ofClass(review.yours().stated()),
                    EPS);
        }
    }

    /** What does not fit loses, and what gains fits: the explainer says what Bayes' rule did. */
    @Test
    void rowsAgreeWithTheBelief() {
        for (CallReview review : List.of(good, lucky, unsafe)) {
            for (ReviewedTest test : review.yours().tests()) {
                assertEquals(test.note().reading() == null, test.rows().isEmpty());
                assertTrue(test.rows().size() <= ReadingRow.LEADING);
                for (ReadingRow row : test.rows()) {
                    assertEquals(
                            row.classes().stream()
                                    .mapToDouble(test.after()::ofClass)
                                    .sum(),
                            row.after(),
                            EPS);
                    assertTrue(row.fits() || row.after() <= row.before() + EPS, test.number() + " " + row);
                    assertTrue(row.after() <= row.before() * 1.5 + EPS || row.fits(), test.number() + " " + row);
                    assertTrue(row.bands().isEmpty() != row.odds().isEmpty(), row.toString());
                }
            }
        }
    }

    /** The meter with all zones off splits the tight ones from the leaking ones; nobody calls a sound yard's reading fit. */
    @Test
    void theMeterSaysThatWaterRuns() {
        ReviewedTest meter = unsafe.yours().tests().get(0);
        assertEquals("readMeter", meter.note().test().id());
        assertFalse(meter.sound().fits());
        assertTrue(meter.families().get(ReviewedTest.Family.MAINS).after()
                > 5 * meter.families().get(ReviewedTest.Family.MAINS).before());
        assertTrue(meter.families().get(ReviewedTest.Family.WIRES).after()
                < 0.1 * meter.families().get(ReviewedTest.Family.WIRES).before());
        assertEquals(
                1,
                meter.split().shares().stream().mapToDouble(Double::doubleValue).sum(),
                EPS);
    }

    @Test
    void theBetterTestTellsMoreForItsMinutes() {
        ReviewedTest dig = unsafe.yours().tests().get(1);
        ReviewedTest.Better better = dig.better().orElseThrow();
        assertTrue(better.gain() / better.minutes()
                > dig.step().gain() / dig.step().minutes());
        assertEquals(
                1,
                better.split().shares().stream()
                        .mapToDouble(Double::doubleValue)
                        .sum(),
                EPS);
        List<ReviewedTest> worst = unsafe.worst();
        assertEquals(2, worst.size());
        assertTrue(worst.get(0).givenAway() >= worst.get(1).givenAway());
        assertTrue(worst.get(0).best() <= worst.get(0).step().before() + EPS, "no test tells more than is left");
        ReviewedTest again = lucky.yours().tests().get(2);
        assertFalse(again.better().orElseThrow().test().id().equals("readMeter"), "the meter was read a test before");
        assertTrue(good.worst().isEmpty(), good.worst().toString());
        assertTrue(good.yours().tests().stream().allMatch(t -> t.better().isEmpty()));
    }

    @Test
    void theExpertPlaysTheSameCallWithTheSameLuck() {
        Call call = LivedCalls.begun();
        ServiceRun run = Judge.play(call.site(), call.deal(), Policies.best(call.site(), Trust.USUAL), LivedCalls.SEED);
        assertEquals(
                run.steps(),
                good.experts().tests().stream().map(ReviewedTest::step).toList());
        assertEquals(run.testMinutes(), good.experts().minutes(), EPS);
        assertEquals(good.truth().get(0), good.experts().stated());
        assertEquals(good.experts().curve(), lucky.experts().curve());
    }

    @Test
    void theCurveAddsUpWhatTheTestsTold() {
        List<CallReview.CurvePoint> curve = unsafe.yours().curve();
        assertEquals(unsafe.score().tests() + 1, curve.size());
        CallReview.CurvePoint end = curve.get(curve.size() - 1);
        assertEquals(unsafe.score().minutes(), end.minutes(), EPS);
        List<ReviewedTest> tests = unsafe.yours().tests();
        assertEquals(
                tests.get(0).step().before()
                        - tests.get(tests.size() - 1).step().after(),
                end.cameOut(),
                EPS);
    }

    @Test
    void everythingThatMayBeWrongHasAPlace() {
        Set<String> placed = new TreeSet<>(good.map().spots().keySet());
        good.map().mains().forEach(m -> placed.add(m.repairClass()));
        Set<String> all = new TreeSet<>(good.site().hypotheses().classes());
        all.remove(Suspects.NONE);
        assertEquals(all, placed);
        Point truth = good.places().get(0);
        CallMap.Stretch cell = good.map().mains().stream()
                .filter(m -> m.repairClass().equals(good.truth().get(0)))
                .findFirst()
                .orElseThrow();
        assertTrue(cell.way().stream().anyMatch(p -> p.distance(truth) < 0.3));
    }

    @Test
    void aCallWithoutAFindingIsNotReviewed() {
        Call call = LivedCalls.begun();
        assertThrows(IllegalStateException.class, () -> CallReview.of(call, reference, Trust.USUAL));
    }

    @Test
    void aCallWithoutATestIsReviewed() {
        CallReview review = CallReview.of(LivedCalls.untested(), reference, Trust.USUAL);
        assertEquals(List.of(), review.yours().tests());
        assertEquals(0, review.yours().minutes());
        assertEquals(Set.of(Remark.STOPPED_EARLY), remarks(review));
        assertTrue(review.score().total() < 10, review.score().toString());
    }

    @Test
    void theSameCallGivesTheSameReview() {
        CallReview again = CallReview.of(LivedCalls.unsafe(), reference, Trust.USUAL);
        assertEquals(unsafe.yours().curve(), again.yours().curve());
        assertEquals(unsafe.remarks(), again.remarks());
        assertEquals(unsafe.score(), again.score());
    }
}
