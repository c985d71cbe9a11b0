package provingyard.ui;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import provingyard.call.Call;
import provingyard.call.CallReview;
import provingyard.call.ReadingRow;
import provingyard.call.ReviewedTest;
import provingyard.diagnosis.Belief;
import provingyard.diagnosis.Reading;
import provingyard.picture.Java2DSurface;
import provingyard.picture.Layer;
import provingyard.picture.Theme;
import provingyard.picture.View;
import provingyard.picture.YardPicture;
import provingyard.quantity.UnitSystem;
import provingyard.report.CallCsv;
import provingyard.report.CallStory;
import provingyard.scenario.Point;
import provingyard.scenario.Scenario;
import provingyard.setup.SetUp;

/** Tells a service call's debrief for a page, in one language and one system of units, whatever the window shows. */
final class CallDebriefPage {

    private static final int WIDTH = 1000;
    private static final double LETTERING = 1.7;
    private static final View.Free MARGIN = new View.Free(8, 8, 8, 8);

    private final Call call;
    private final CallReview review;
    private final CallDebriefModel.Said said;
    private final Words words = new Words();
    private final CallDebriefWords sayings;
    private final Scenario scenario;

    CallDebriefPage(Call call, CallReview review, CallDebriefModel.Said said, String language, UnitSystem units) {
        this.call = call;
        this.review = review;
        this.said = said;
        words.speak(language);
        words.units().set(units);
        sayings = new CallDebriefWords(words, call.site());
        scenario = call.site().scenario();
    }

    CallStory story() {
        String title = words.say(scenario.title());
        CallDebriefScore score = new CallDebriefScore(sayings, review);
        return new CallStory(
                words.language(),
                sayings.say("review.page.title", title),
                title,
                about(),
                "“" + words.say(scenario.call().complaint()) + "”",
                unsafe(),
                new CallStory.Points(sayings.whole(Math.rint(review.score().total())), sayings.say("review.points")),
                new CallStory.Grid(
                        List.of(
                                sayings.say("review.page.line"),
                                sayings.say("review.page.why"),
                                sayings.say("review.page.points")),
                        score.given(),
                        1),
                score.taken(),
                sayings.said(review, said).orElse(""),
                plan(),
                remarks(),
                new CallStory.Part(
                        sayings.say("review.strip.title"),
                        sayings.say("review.strip.hint"),
                        List.of(),
                        tests(review.yours())),
                curve(),
                readings(),
                expert());
    }

    private List<String> about() {
        String outcome =
                sayings.say("review.subtitle", sayings.whole(Math.rint(sayings.stated(call))), sayings.outcome(review));
        Call.Finding stated = call.finding().orElseThrow();
        String finding = sayings.say(
                "review.page.stated",
                sayings.suspect(stated.repairClass()),
                sayings.percent(stated.confidence()),
                sayings.percent(review.declaration().probability()));
        return List.of(words.say(scenario.subtitle()), outcome, finding);
    }

    private CallStory.Part unsafe() {
        List<String> lines = review.score().unsafe().isEmpty() ? List.of() : sayings.unsafe(review);
        return new CallStory.Part(sayings.say("review.unsafe.title"), "", lines, null);
    }

    /** What was likely when the finding was stated. */
    private CallStory.Plan plan() {
        Point size = scenario.yard().size();
        int height = (int) Math.round(WIDTH * Math.max(0.3, Math.min(1, size.y() / size.x())));
        View view = View.fit(size, WIDTH, height, MARGIN, Theme.LIGHT)
                .layers(EnumSet.of(Layer.PIPES))
                .labels(false);
        BufferedImage image = YardPicture.render(scenario, SetUp.CLOCK_ALONE, null, view);
        CallDebriefArt.Moment end = new CallDebriefArt.Moment(belief(), null, "");
        new CallDebriefArt(review, view, LETTERING, end).draw(new Java2DSurface(image));
        String legend = sayings.say("review.page.plan")
                + (review.places().isEmpty() ? "" : " " + sayings.say("review.page.planTruth"));
        return new CallStory.Plan(png(image), sayings.say("review.plan"), legend);
    }

    private Belief belief() {
        List<ReviewedTest> tests = review.yours().tests();
        return tests.isEmpty()
                ? Belief.before(call.site().hypotheses())
                : tests.get(tests.size() - 1).after();
    }

    private static byte[] png(BufferedImage image) {
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        try {
            YardPicture.writePng(image, png);
        } catch (IOException e) {
            throw new UncheckedIOException("a picture can be written to memory", e);
        }
        return png.toByteArray();
    }

    private CallStory.Remarks remarks() {
        return new CallStory.Remarks(
                sayings.say("review.remarks.title"),
                review.remarks().stream()
                        .map(r -> new CallStory.Remark(CallDebriefSigns.of(r.remark()), sayings.remark(r)))
                        .toList());
    }

    private CallStory.Grid tests(CallReview.Way way) {
        List<String> head = new ArrayList<>();
        for (String each : List.of("number", "test", "reading", "expected", "best", "came", "minutes")) {
            head.add(sayings.say("review.page." + each));
        }
        return new CallStory.Grid(head, way.tests().stream().map(this::row).toList(), 4);
    }

    private List<String> row(ReviewedTest test) {
        boolean judged = test.judged();
        return List.of(
                Integer.toString(test.number()),
                sayings.name(test.note().test()),
                sayings.reading(test),
                judged ? sayings.bits(test.step().gain()) : "",
                judged ? sayings.bits(test.best()) : "",
                judged ? sayings.bits(test.step().realised()) : "",
                sayings.minutes(test.step().minutes()));
    }

    private CallStory.Chart curve() {
        CallDebriefCurve curve = new CallDebriefCurve(sayings, Theme.LIGHT);
        return new CallStory.Chart(
                sayings.say("review.curve.title"),
                sayings.say("review.curve.hint"),
                (s, width) -> curve.draw(s, width, review),
                curve.accessible(review));
    }

    private CallStory.Readings readings() {
        return new CallStory.Readings(
                sayings.say("review.page.readings"),
                review.yours().tests().stream()
                        .filter(t -> !t.rows().isEmpty())
                        .map(this::reading)
                        .toList());
    }

    private CallStory.Part reading(ReviewedTest test) {
        List<String> sentences = new ArrayList<>();
        sentences.add(sayings.explained(test));
        test.better()
                .ifPresent(b ->
                        sentences.add(sayings.say("review.page.better", sayings.name(b.test()), sayings.why(test, b))));
        String title = sayings.say(
                "review.explain.title", test.number(), sayings.name(test.note().test()), sayings.reading(test));
        return new CallStory.Part(title, "", sentences, suspects(test));
    }

    private CallStory.Grid suspects(ReviewedTest test) {
        List<String> head = new ArrayList<>();
        for (String each : List.of("if", "would", "fits", "before", "after")) {
            head.add(sayings.say("review.page." + each));
        }
        return new CallStory.Grid(
                head, test.rows().stream().map(r -> suspect(test, r)).toList(), 2);
    }

    private List<String> suspect(ReviewedTest test, ReadingRow row) {
        return List.of(
                sayings.suspect(row.classes()),
                would(test, row),
                sayings.say(row.fits() ? "review.explain.fits" : "review.explain.no"),
                sayings.percent(row.before()),
                sayings.percent(row.after()));
    }

    private String would(ReviewedTest test, ReadingRow row) {
        if (test.note().reading() instanceof Reading.Seen seen) {
            return sayings.say(
                    "review.page.odds",
                    sayings.answer(test.note().test(), seen.category()),
                    sayings.percent(row.odds().get(seen.category())));
        }
        return String.join(
                ", ",
                row.bands().stream()
                        .map(b -> sayings.span(test.note().test(), b))
                        .toList());
    }

    private CallStory.Part expert() {
        CallReview.Way way = review.experts();
        String end = sayings.say(
                "review.page.expertEnd",
                sayings.suspect(way.stated()),
                sayings.wholeMinutes(way.minutes()),
                sayings.litres(way.litres()));
        return new CallStory.Part(sayings.say("review.title.expert"), "", List.of(end), tests(way));
    }

    /** The tests as a table's lines. */
    List<CallCsv.Line> lines() {
        return review.yours().tests().stream()
                .map(t -> new CallCsv.Line(
                        t.number(),
                        t.note().minute(),
                        t.note().test().id(),
                        sayings.name(t.note().test()),
                        sayings.reading(t),
                        t.step().minutes(),
                        t.judged() ? t.step().gain() : Double.NaN,
                        t.judged() ? t.best() : Double.NaN,
                        t.judged() ? t.step().realised() : Double.NaN,
                        t.note().litres()))
                .toList();
    }
}
