package provingyard.ui;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import provingyard.call.Call;
import provingyard.call.CallMap;
import provingyard.call.CallReview;
import provingyard.call.CallSite;
import provingyard.call.FieldTest;
import provingyard.call.FieldTest.Quantity;
import provingyard.call.ReadingRow;
import provingyard.call.ReviewedTest;
import provingyard.call.TestSplit;
import provingyard.diagnosis.Action;
import provingyard.diagnosis.Belief;
import provingyard.diagnosis.Hazard;
import provingyard.diagnosis.Reading;
import provingyard.quantity.Display;
import provingyard.scenario.Point;
import provingyard.text.Texts;

/** All sentences of a service call's debrief, made from its review, in the language and units of now. */
final class CallDebriefWords {

    private static final String MAIN = "main:";

    /** A family whose probability grew or fell by this factor is named. */
    private static final double NAMED = 1.5;

    private static final double DROPPED = 1 / 3.0;

    /** Probability from which a family is worth naming. */
    private static final double WORTH = 0.03;

    /** Share of the yard's half about its middle that has no side. */
    private static final double MIDDLE = 0.25;

    /** Bits below which only that is said. */
    private static final double LITTLE = 0.01;

    /** Minutes by which two tests take about the same. */
    private static final double ABOUT = 1;

    private final Words words;
    private final CallSite site;
    private final CallMap map;
    /** The names of the call itself: what was called so on the site is called so afterwards. */
    private final CallWords names;

    CallDebriefWords(Words words, CallSite site) {
        this.words = words;
        this.site = site;
        map = CallMap.of(site);
        names = new CallWords(site, words);
    }

    /** A text of the debrief. */
    static String say(Words words, String key, Object... values) {
        return Texts.of("callreview", words.language()).say(key, values);
    }

    String say(String key, Object... values) {
        return say(words, key, values);
    }

    private boolean has(String key) {
        return Texts.of("callreview", words.language()).has(key);
    }

    private String diagnosis(String key) {
        return Texts.of("diagnosis", words.language()).say(key);
    }

    private Display display() {
        return words.display();
    }

    /** A short name of a test. */
    String name(FieldTest test) {
        String key = "review.test." + test.kind();
        return capital(
                has(key)
                        ? say(key, place(test.target()))
                        : say("review.tool." + test.tool().name()));
    }

    /** What is done in a test, without where. */
    String brief(FieldTest test) {
        String key = "review.test." + test.kind();
        String text = has(key) ? say(key, "") : say("review.tool." + test.tool().name());
        return capital(text.replaceAll("^[,: ]+|[,: ]+$", ""));
    }

    /** What a finding or a suspect is, with its place. */
    String suspect(String repairClass) {
        return suspect(List.of(repairClass));
    }

    /** The same of neighbouring stretches of a main, with the side of the yard on which they lie. */
    String suspect(List<String> classes) {
        String first = classes.get(0);
        if (!first.startsWith(MAIN)) {
            return names.finding(first);
        }
        List<CallMap.Stretch> cells = map.mains().stream()
                .filter(m -> classes.contains(m.repairClass()))
                .toList();
        return say("review.sided", capital(names.stretches(classes)), side(middle(cells)));
    }

    private static Point middle(List<CallMap.Stretch> cells) {
        List<Point> way = cells.get(cells.size() / 2).way();
        return way.get(way.size() / 2);
    }

    String whole(double value) {
        return display().plain(value, 0);
    }

    /** Points that are given or taken. */
    String signed(double points) {
        return display().plain(points, 0);
    }

    private String side(Point at) {
        Point size = site.scenario().yard().size();
        double east = 2 * at.x() / size.x() - 1;
        double north = 2 * at.y() / size.y() - 1;
        String up = north > MIDDLE ? "N" : north < -MIDDLE ? "S" : "";
        String across = east > MIDDLE ? "E" : east < -MIDDLE ? "W" : "";
        return say("review.side." + ((up + across).isEmpty() ? "C" : up + across));
    }

    /** What a fitting, zone, pipe or stretch is called. */
    String place(String id) {
        return names.target(id);
    }

    static String capital(String text) {
        return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }

    /** A share in whole per cent; near its ends only that it is beyond. */
    String percent(double share) {
        if (share < 0.01) {
            return say("review.under");
        }
        return share > 0.99 ? say("review.over") : Math.round(share * 100) + "\u00a0%";
    }

    String minutes(double minutes) {
        return display().plain(minutes, minutes < 10 ? 1 : 0) + "\u00a0min";
    }

    String wholeMinutes(double minutes) {
        return display().plain(Math.rint(minutes), 0) + "\u00a0min";
    }

    String litres(double litres) {
        return names.litres(litres);
    }

    String bits(double bits) {
        if (bits > 0 && bits < LITTLE) {
            return say("review.little", display().plain(LITTLE, 2));
        }
        return display().plain(bits, Math.abs(bits) < 1 ? 2 : 1);
    }

    /** A measured value with its unit. */
    String value(Quantity quantity, double value) {
        return names.value(quantity, value);
    }

    /** A range of a number that a test would give, its unit once where both ends have the same. */
    String span(FieldTest test, ReadingRow.Band band) {
        Quantity quantity = ((FieldTest.Measure.Number) test.measure()).quantity();
        String low = value(quantity, band.low());
        String high = value(quantity, band.high());
        int unit = high.lastIndexOf('\u00a0');
        boolean same = unit >= 0 && low.endsWith(high.substring(unit));
        String from = same ? low.substring(0, low.length() - (high.length() - unit)) : low;
        return low.equals(high) ? high : from + "\u2013" + high;
    }

    /** What a test read; empty where nothing was read. */
    String reading(ReviewedTest test) {
        FieldTest.Measure measure = test.note().test().measure();
        if (test.note().reading() instanceof Reading.Shown shown
                && measure instanceof FieldTest.Measure.Number number) {
            return value(number.quantity(), shown.value());
        }
        if (test.note().reading() instanceof Reading.Seen seen) {
            return answer(test.note().test(), seen.category());
        }
        return "";
    }

    /** One of a test's answers. */
    String answer(FieldTest test, int category) {
        String key = ((FieldTest.Measure.Answers) test.measure()).keys().get(category);
        return has("review.answer." + key) ? say("review.answer." + key) : key;
    }

    /** Minutes on the site when the finding was stated. */
    double stated(Call call) {
        int notes = call.notesBeforeFinding();
        return notes == 0 ? 0 : call.notes().get(notes - 1).minute();
    }

    /** What was stated and how near it is. */
    String outcome(CallReview review) {
        String truth =
                String.join("; ", review.truth().stream().map(this::suspect).toList());
        return say("review.outcome." + review.declaration().hit().name(), truth);
    }

    /** The numbers of some tests. */
    String tests(List<Integer> numbers) {
        String list = "";
        for (int i = 0; i < numbers.size(); i++) {
            String number = Integer.toString(numbers.get(i));
            boolean last = i > 0 && i == numbers.size() - 1;
            list = i == 0 ? number : last ? say("review.and", list, number) : list + ", " + number;
        }
        return say("review.tests", numbers.size(), list);
    }

    String remark(CallReview.Found found) {
        return say(found.remark().key(), tests(found.tests()));
    }

    /** Each unsafe act with its tests, then what the rule is, then that local rules decide. */
    List<String> unsafe(CallReview review) {
        List<String> lines = new ArrayList<>();
        for (Hazard hazard : review.score().unsafe()) {
            List<Integer> numbers = review.yours().tests().stream()
                    .filter(t -> t.step().breaches().contains(hazard))
                    .map(ReviewedTest::number)
                    .toList();
            String breach = diagnosis(hazard.breachKey());
            lines.add(say("review.unsafe.line", breach.substring(0, breach.length() - 1), tests(numbers)) + ". "
                    + diagnosis(hazard.ruleKey()));
        }
        lines.add(diagnosis(Hazard.LOCAL_RULES));
        return lines;
    }

    /** What a reading says, in a few sentences. */
    String explained(ReviewedTest test) {
        if (test.rows().isEmpty()) {
            return unread(test);
        }
        List<String> all = new ArrayList<>();
        FieldTest.Measure measure = test.note().test().measure();
        if (measure instanceof FieldTest.Measure.Number number) {
            List<ReadingRow.Band> bands = test.sound().bands();
            all.add(say(
                    "review.explain.sound",
                    value(number.quantity(), bands.get(0).low()),
                    value(number.quantity(), bands.get(bands.size() - 1).high())));
        } else {
            int seen = ((Reading.Seen) test.note().reading()).category();
            all.add(say("review.explain.soundSeen", percent(test.sound().odds().get(seen))));
        }
        if (test.split() == null) {
            all.add(say("review.explain.again"));
            return String.join(" ", all);
        }
        List<String> risen = families(test, true);
        List<String> dropped = families(test, false);
        if (!risen.isEmpty()) {
            all.add(say("review.explain.risen", String.join(", ", risen)));
        }
        if (!dropped.isEmpty()) {
            all.add(say("review.explain.dropped", String.join(", ", dropped)));
        }
        if (test.step().redundant()) {
            all.add(say("review.explain.nothing", bits(test.step().gain())));
        }
        return String.join(" ", all);
    }

    /** What is likely before any test: families of faults, the likeliest first. */
    String start(Belief belief) {
        Map<ReviewedTest.Family, Double> sums = new EnumMap<>(ReviewedTest.Family.class);
        for (int h = 0; h < belief.hypotheses().size(); h++) {
            ReviewedTest.Family family =
                    ReviewedTest.Family.of(belief.hypotheses().get(h).kind());
            sums.merge(family, belief.probability(h), Double::sum);
        }
        List<String> parts = sums.entrySet().stream()
                .sorted(Comparator.comparingDouble(e -> -e.getValue()))
                .map(e -> say("review.family." + e.getKey().name()) + " " + percent(e.getValue()))
                .toList();
        return say("review.explain.prior", String.join(", ", parts));
    }

    private String unread(ReviewedTest test) {
        Action.Kind kind = test.step().kind();
        return say(
                kind == Action.Kind.MAKE_SAFE
                        ? "review.explain.safe"
                        : kind == Action.Kind.REQUEST ? "review.explain.request" : "review.explain.unread");
    }

    private List<String> families(ReviewedTest test, boolean risen) {
        return test.families().entrySet().stream()
                .filter(e -> risen
                        ? e.getValue().after() >= WORTH
                                && e.getValue().after() > NAMED * e.getValue().before()
                        : e.getValue().before() >= WORTH
                                && e.getValue().after() < DROPPED * e.getValue().before())
                .sorted(Comparator.comparing(e -> e.getKey()))
                .map(e -> say("review.family." + e.getKey().name()))
                .toList();
    }

    /** Why another test would have been better. */
    String why(ReviewedTest test, ReviewedTest.Better better) {
        double own = test.step().minutes();
        String minutes = minutes(better.minutes());
        if (Math.abs(better.minutes() - own) < ABOUT) {
            return say(
                    "review.better.same",
                    minutes,
                    bits(better.gain() - test.step().gain()));
        }
        return say(
                better.minutes() < own ? "review.better.shorter" : "review.better.longer",
                minutes,
                minutes(own),
                bits(better.gain() / better.minutes()),
                bits(test.step().gain() / own));
    }

    /** What each part of a split is. */
    List<String> parts(FieldTest test, TestSplit split) {
        if (test.measure() instanceof FieldTest.Measure.Number number) {
            String at = value(number.quantity(), split.threshold());
            return List.of(say("review.better.below", at), say("review.better.above", at));
        }
        List<String> parts = new ArrayList<>();
        for (int y = 0; y < split.shares().size(); y++) {
            parts.add(answer(test, y));
        }
        return parts;
    }

    /** What the trainee said beforehand, held against the review. */
    Optional<String> said(CallReview review, CallDebriefModel.Said said) {
        if (said == null) {
            return Optional.empty();
        }
        String what = said.test() == 0 ? say("review.said.none") : say("review.said", tests(List.of(said.test())));
        String why = said.why().isEmpty() ? "" : say("review.said.why", said.why());
        return Optional.of(what + why + judged(review, said.test()));
    }

    private String judged(CallReview review, int test) {
        List<ReviewedTest> worst = review.worst();
        if (worst.isEmpty()) {
            return say("review.said.fine");
        }
        ReviewedTest most = worst.get(0);
        double given = review.yours().tests().stream()
                .filter(t -> t.number() == test)
                .mapToDouble(ReviewedTest::givenAway)
                .findFirst()
                .orElse(0);
        return most.number() == test
                ? say("review.said.worst", bits(given))
                : say("review.said.other", bits(given), most.number(), bits(most.givenAway()));
    }
}
