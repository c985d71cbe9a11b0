package provingyard.call;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import provingyard.diagnosis.Action;
import provingyard.diagnosis.Belief;
import provingyard.diagnosis.Inquiry;
import provingyard.diagnosis.Ranked;
import provingyard.diagnosis.Ranking;
import provingyard.diagnosis.SiteState;
import provingyard.diagnosis.Step;
import provingyard.diagnosis.Trust;

/**
 * One line of the field notes, looked at afterwards.
 *
 * @param note what was done and read
 * @param step how it rates
 * @param after what the evidence said after it
 * @param rows what the reading says about the leading suspects; empty where nothing was read
 * @param sound what would have been read with nothing wrong; null where nothing was read
 * @param families what was believed of each family of faults before and after
 * @param split how it divided what was left; null where nothing new could be read
 * @param better a test that would have told more for its minutes; empty where this one was as good as any
 */
public record ReviewedTest(
        Call.Note note,
        Step step,
        Belief after,
        List<ReadingRow> rows,
        ReadingRow sound,
        Map<Family, Change> families,
        TestSplit split,
        Optional<Better> better) {

    /** Bits given away below which a test was as good as any (design). */
    static final double WORTH_A_WORD = 0.05;

    /** Faults that are found and mended alike. */
    public enum Family {
        NONE,
        MAINS,
        ZONE_PIPES,
        VALVES,
        WIRES,
        SUPPLY,
        PROGRAM,
        SENSORS;

        /** The family of a hypothesis's kind. */
        public static Family of(String kind) {
            return switch (kind) {
                case "none" -> NONE;
                case "mainlineBreak", "mainlineLeak" -> MAINS;
                case "lateralBreak", "headBroken", "nozzleClogged" -> ZONE_PIPES;
                case "valveWeeps",
                        "valveStuckOpen",
                        "valveStuckShut",
                        "valvePartlyShut",
                        "masterStuckOpen",
                        "masterStuckShut" -> VALVES;
                case "filterClogged", "supplyLow", "regulatorLow", "houseRuns" -> SUPPLY;
                case "extraStart", "seasonalWrong" -> PROGRAM;
                case "rainStuck",
                        "rainStuckDry",
                        "windSeized",
                        "freezeReadsWarm",
                        "flowJammed",
                        "flowFactorWrong",
                        "soilVoid" -> SENSORS;
                default -> WIRES;
            };
        }
    }

    /** Probability before and after a reading. */
    public record Change(double before, double after) {}

    /**
     * A test that would have told more for its minutes.
     *
     * @param gain bits expected of it
     * @param minutes from where the technician stood
     */
    public record Better(FieldTest test, double gain, double minutes, TestSplit split) {}

    public ReviewedTest {
        rows = List.copyOf(rows);
        families = Map.copyOf(families);
    }

    /** Number in the field notes, from 1. */
    public int number() {
        return note.number();
    }

    /** Whether it is judged by what it tells for its minutes. */
    public boolean judged() {
        return step.kind().judged();
    }

    /** Bits of the best that could be done in its minutes: no more than what was left to be told. */
    public double best() {
        return step.bestBits();
    }

    /** Bits given away: what the best would have told beyond it, no more than what was left. */
    public double givenAway() {
        return best() - step.gain();
    }

    /** A call's notes, looked at afterwards. */
    static List<ReviewedTest> of(Call call, Trust trust) {
        Ranking ranking = new Ranking(call.site(), trust);
        List<ReviewedTest> all = new ArrayList<>();
        List<String> done = new ArrayList<>();
        Set<String> asked = new HashSet<>();
        double minutes = 0;
        for (int i = 0; i < call.notes().size(); i++) {
            Call.Note note = call.notes().get(i);
            Belief after = i + 1 < call.notes().size() ? call.notes().get(i + 1).prior() : call.belief();
            Inquiry inquiry = new Inquiry(note.prior(), note.before(), done, minutes);
            all.add(of(note, call.run().steps().get(i), after, inquiry, asked, call.site(), ranking, trust));
            asked.add(asking(note.test().action(), note.before()));
            done.add(note.test().id());
            minutes = note.minute();
        }
        return all;
    }

    private static ReviewedTest of(
            Call.Note note,
            Step step,
            Belief after,
            Inquiry inquiry,
            Set<String> asked,
            CallSite site,
            Ranking ranking,
            Trust trust) {
        Belief prior = note.prior();
        boolean read = note.reading() != null;
        boolean known = note.test()
                .action()
                .latentKey(note.before())
                .map(prior::answered)
                .orElse(false);
        return new ReviewedTest(
                note,
                step,
                after,
                read ? ReadingRow.leading(prior, after, note.prediction(), note.reading(), trust) : List.of(),
                read ? ReadingRow.sound(prior, after, note.prediction(), note.reading(), trust) : null,
                families(prior, after),
                read && !known ? TestSplit.of(prior, note.prediction(), trust) : null,
                better(step, inquiry, asked, site, ranking, trust));
    }

    private static Optional<Better> better(
            Step step, Inquiry inquiry, Set<String> asked, CallSite site, Ranking ranking, Trust trust) {
        if (!step.kind().judged() || step.regret() < WORTH_A_WORD) {
            return Optional.empty();
        }
        // A number read again under the same conditions has fresh noise, but nobody would call that a better test.
        Optional<Ranked> best = ranking.of(inquiry).stream()
                .filter(r -> !asked.contains(asking(r.action(), inquiry.state())))
                .findFirst();
        return best.filter(b -> !b.action().id().equals(step.action()))
                .filter(b -> (b.rate() - step.gain() / step.minutes()) * step.minutes() >= WORTH_A_WORD)
                .map(b -> new Better(
                        site.test(b.action().id()).orElseThrow(),
                        b.gain(),
                        b.minutes(),
                        TestSplit.of(inquiry.belief(), site.predict(b.action(), inquiry.state()), trust)));
    }

    /** A test together with the conditions that its reading is taken under. */
    static String asking(Action action, SiteState before) {
        return action.id() + "|" + action.after(before).configuration();
    }

    private static Map<Family, Change> families(Belief before, Belief after) {
        Map<Family, Change> changes = new EnumMap<>(Family.class);
        for (int h = 0; h < before.hypotheses().size(); h++) {
            Change one = new Change(before.probability(h), after.probability(h));
            changes.merge(
                    Family.of(before.hypotheses().get(h).kind()),
                    one,
                    (a, b) -> new Change(a.before() + b.before(), a.after() + b.after()));
        }
        return changes;
    }
}
