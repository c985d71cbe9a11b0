package provingyard.call;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Predicate;
import provingyard.diagnosis.Action;
import provingyard.diagnosis.CaseScore;
import provingyard.diagnosis.Declaration;
import provingyard.diagnosis.Policies;
import provingyard.diagnosis.SafetyGates;
import provingyard.diagnosis.ServiceRun;
import provingyard.diagnosis.Step;
import provingyard.diagnosis.Trust;
import provingyard.scenario.Point;

/**
 * A service call looked at afterwards: what each test told and could have told, what was believed when, what stands out,
 * and how the reference goes about the same call. Made once, never changed.
 *
 * @param site the site
 * @param map where everything lies that may be wrong
 * @param truth repair classes of what was wrong; that of nothing being wrong where nothing was
 * @param places where it was, in m; empty where nothing was wrong
 * @param yours the trainee's way
 * @param experts the reference's way through the same call, with the same luck
 * @param declaration what was stated, and what the evidence gave it
 * @param score the score, line by line
 * @param reference what the reference's minutes and litres are on average
 * @param remarks what stands out: unsafe acts first, then what could be better, then what was done well
 */
public record CallReview(
        CallSite site,
        CallMap map,
        List<String> truth,
        List<Point> places,
        Way yours,
        Way experts,
        Declaration declaration,
        CaseScore score,
        Judge.Reference reference,
        List<Found> remarks) {

    /**
     * A way through the call.
     *
     * @param tests the field notes in order
     * @param stated repair class that was stated
     * @param probability what the evidence gave it then
     * @param litres L that ran away
     * @param curve from no minutes and no bits, one point after each judged test
     */
    public record Way(
            List<ReviewedTest> tests, String stated, double probability, double litres, List<CurvePoint> curve) {

        public Way {
            tests = List.copyOf(tests);
            curve = List.copyOf(curve);
        }

        /** Minutes of its judged tests. */
        public double minutes() {
            return curve.get(curve.size() - 1).minutes();
        }
    }

    /**
     * How much had been told when.
     *
     * @param minutes of judged tests
     * @param expected bits that the tests could be expected to tell
     * @param cameOut bits by which uncertainty fell
     */
    public record CurvePoint(double minutes, double expected, double cameOut) {}

    /** What stands out in a call, with the keys of its texts. */
    public enum Remark {
        UNSAFE("review.remark.unsafe", false),
        DUG_EARLY("review.remark.dugEarly", false),
        STOPPED_EARLY("review.remark.stoppedEarly", false),
        LUCKY("review.remark.lucky", false),
        ASKED_TWICE("review.remark.askedTwice", false),
        COULD_NOT_TELL("review.remark.couldNotTell", false),
        ONE_SIDED("review.remark.oneSided", false),
        NOT_CHECKED("review.remark.notChecked", false),
        ENOUGH("review.remark.enough", true),
        NOTHING_TWICE("review.remark.nothingTwice", true),
        MADE_SAFE("review.remark.madeSafe", true),
        MARKS_FIRST("review.remark.marksFirst", true),
        CHECKED("review.remark.checked", true);

        private final String key;
        private final boolean good;

        Remark(String key, boolean good) {
            this.key = key;
            this.good = good;
        }

        /** Key of its text, whose value is {@link Found#tests}. */
        public String key() {
            return key;
        }

        /** Whether it was done well. */
        public boolean good() {
            return good;
        }
    }

    /** A remark with the numbers of the tests that it is about; none where it is about the whole. */
    public record Found(Remark remark, List<Integer> tests) {}

    /** Probability below which a right statement was more luck than evidence (design). */
    private static final double LUCK = 0.5;

    /** As many tests in a row that cannot tell the favourite from its rival are worth a word. */
    private static final int ONE_SIDED = 3;

    public CallReview {
        truth = List.copyOf(truth);
        places = List.copyOf(places);
        remarks = List.copyOf(remarks);
    }

    /**
     * Looks at a call afterwards. Takes a second or some: each test is held against all others, and the reference plays
     * the call.
     *
     * @throws IllegalStateException where no finding was stated
     */
    public static CallReview of(Call call, Judge.Reference reference, Trust trust) {
        if (call.finding().isEmpty()) {
            throw new IllegalStateException("no finding was stated");
        }
        CallSite site = call.site();
        Declaration declaration = call.declaration();
        CaseScore score = call.score(reference);
        Way yours = way(call, trust);
        Way experts = way(expert(call, trust), trust);
        List<Integer> wrong = call.deal().wrong().faults();
        List<Point> places = wrong.stream()
                .map(f -> CallMap.place(site, f))
                .flatMap(Optional::stream)
                .toList();
        List<String> truth = wrong.isEmpty()
                ? List.of(Suspects.NONE)
                : wrong.stream().map(site::repairClass).distinct().toList();
        return new CallReview(
                site,
                CallMap.of(site),
                truth,
                places,
                yours,
                experts,
                declaration,
                score,
                reference,
                remarks(yours, declaration, score));
    }

    /** The reference's way through the same call, with the same luck. */
    private static Call expert(Call call, Trust trust) {
        ServiceRun run = Judge.play(call.site(), call.deal(), Policies.best(call.site(), trust), call.seed());
        Call expert = Call.begin(call.site(), call.deal(), call.seed());
        run.steps().forEach(s -> expert.act(s.action()));
        expert.state(new Call.Finding(run.declared(), run.declaredProbability()));
        return expert;
    }

    private static Way way(Call call, Trust trust) {
        List<ReviewedTest> tests = ReviewedTest.of(call, trust);
        List<CurvePoint> curve = new ArrayList<>(List.of(new CurvePoint(0, 0, 0)));
        for (ReviewedTest test : tests) {
            if (test.judged()) {
                CurvePoint last = curve.get(curve.size() - 1);
                Step step = test.step();
                curve.add(new CurvePoint(
                        last.minutes() + step.minutes(),
                        last.expected() + step.gain(),
                        last.cameOut() + step.realised()));
            }
        }
        return new Way(
                tests,
                call.finding().orElseThrow().repairClass(),
                call.run().declaredProbability(),
                call.litres(),
                curve);
    }

    /** The tests that gave most bits away, the worst first; at most two, none where none was worth a word. */
    public List<ReviewedTest> worst() {
        return yours.tests().stream()
                .filter(t -> t.givenAway() >= ReviewedTest.WORTH_A_WORD)
                .sorted(Comparator.comparingDouble(t -> -t.givenAway()))
                .limit(2)
                .toList();
    }

    private static List<Found> remarks(Way way, Declaration declaration, CaseScore score) {
        List<Found> found = new ArrayList<>();
        List<ReviewedTest> tests = way.tests();
        some(found, Remark.UNSAFE, numbers(tests, t -> !t.step().breaches().isEmpty()));
        some(found, Remark.DUG_EARLY, numbers(tests, t -> t.step().unsupported()));
        boolean enough = declaration.probability() >= CaseScore.SUPPORTED;
        whole(found, Remark.STOPPED_EARLY, !enough);
        whole(found, Remark.LUCKY, declaration.hit() == Declaration.Hit.RIGHT && declaration.probability() < LUCK);
        some(found, Remark.ASKED_TWICE, numbers(tests, t -> t.step().redundant() && isAsked(t, tests)));
        some(found, Remark.COULD_NOT_TELL, numbers(tests, t -> t.step().redundant() && !isAsked(t, tests)));
        some(found, Remark.ONE_SIDED, oneSided(tests));
        boolean unverified = score.flags().contains(CaseScore.Flag.UNVERIFIED);
        whole(found, Remark.NOT_CHECKED, unverified);
        whole(found, Remark.ENOUGH, enough);
        whole(found, Remark.NOTHING_TWICE, score.tests() > 0 && score.redundant() == 0);
        some(found, Remark.MADE_SAFE, numbers(tests, t -> t.step().kind() == Action.Kind.MAKE_SAFE));
        some(found, Remark.MARKS_FIRST, numbers(tests, CallReview::isMarkedDig));
        boolean checked = tests.stream().anyMatch(t -> t.step().kind() == Action.Kind.VERIFY);
        whole(found, Remark.CHECKED, checked && !unverified);
        return found;
    }

    private static boolean isMarkedDig(ReviewedTest test) {
        return test.step().kind() == Action.Kind.DIG
                && test.note().before().condition(SafetyGates.MARKS).equals(SafetyGates.SHOWN);
    }

    /** Whether the same was read before under the same conditions. */
    private static boolean isAsked(ReviewedTest test, List<ReviewedTest> tests) {
        return tests.stream()
                .filter(t -> t.number() < test.number())
                .anyMatch(t -> asking(t).equals(asking(test)));
    }

    private static String asking(ReviewedTest test) {
        return ReviewedTest.asking(test.note().test().action(), test.note().before());
    }

    private static List<Integer> oneSided(List<ReviewedTest> tests) {
        TreeSet<Integer> all = new TreeSet<>();
        List<Integer> row = new ArrayList<>();
        for (ReviewedTest test : tests) {
            if (!test.judged()) {
                continue;
            }
            // Neighbouring cells of a main are rivals that only the last tests tell apart: no matter, where nothing
            // better could be done.
            if (test.step().tellsApart() || test.better().isEmpty()) {
                row.clear();
            } else {
                row.add(test.number());
            }
            if (row.size() >= ONE_SIDED) {
                all.addAll(row);
            }
        }
        return List.copyOf(all);
    }

    private static List<Integer> numbers(List<ReviewedTest> tests, Predicate<ReviewedTest> wanted) {
        return tests.stream().filter(wanted).map(ReviewedTest::number).toList();
    }

    private static void some(List<Found> found, Remark remark, List<Integer> tests) {
        if (!tests.isEmpty()) {
            found.add(new Found(remark, tests));
        }
    }

    private static void whole(List<Found> found, Remark remark, boolean so) {
        if (so) {
            found.add(new Found(remark, List.of()));
        }
    }
}
