package provingyard.call;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import provingyard.diagnosis.Belief;
import provingyard.diagnosis.CategoryPrediction;
import provingyard.diagnosis.Hypotheses;
import provingyard.diagnosis.NumericPrediction;
import provingyard.diagnosis.Prediction;
import provingyard.diagnosis.Reading;
import provingyard.diagnosis.Trust;

/**
 * What a reading says about one suspect: what it would have been if this were the fault, and what is believed of it before
 * and after. Neighbouring cells of a mainline that a reading treats alike make one row.
 *
 * @param classes repair classes, neighbours along a pipe where there are several
 * @param bands ranges of a number in SI, 99 in 100 readings of each size lie within; rising, apart; empty for answers
 * @param odds probability of each answer; empty for numbers
 * @param fits whether the reading lies in a band, or the answer is not a rare one
 * @param before probability before the reading
 * @param after probability after it
 */
public record ReadingRow(
        List<String> classes, List<Band> bands, List<Double> odds, boolean fits, double before, double after) {

    /** A range of a number, SI. */
    public record Band(double low, double high) {}

    /** Rows shown (design). */
    static final int LEADING = 6;

    /** Standard deviations within which 99 in 100 readings lie. */
    private static final double REACH = 2.576;

    /** Answers less probable than this do not fit (design). */
    private static final double RARE = 0.10;

    /** Sizes held for less than this share of their suspect make no band. */
    private static final double SHARE = 0.02;

    /** Neighbours whose beliefs a reading changes by factors this near are one row. */
    private static final double ALIKE = 1.15;

    public ReadingRow {
        classes = List.copyOf(classes);
        bands = List.copyOf(bands);
        odds = List.copyOf(odds);
    }

    /** The leading suspects, by what was or is believed of them, the likeliest now first. */
    static List<ReadingRow> leading(Belief before, Belief after, Prediction prediction, Reading reading, Trust trust) {
        List<ReadingRow> rows = new ArrayList<>();
        for (List<Integer> group : groups(before, after)) {
            rows.add(row(group, before, after, prediction, reading, trust));
        }
        rows.sort(Comparator.comparingDouble((ReadingRow r) -> -Math.max(r.before, r.after)));
        return rows.stream()
                .limit(LEADING)
                .sorted(Comparator.comparingDouble((ReadingRow r) -> -r.after))
                .toList();
    }

    /** What would be read with nothing wrong. */
    static ReadingRow sound(Belief before, Belief after, Prediction prediction, Reading reading, Trust trust) {
        int none = before.hypotheses().classes().indexOf(Suspects.NONE);
        return row(List.of(none), before, after, prediction, reading, trust);
    }

    private static List<List<Integer>> groups(Belief before, Belief after) {
        List<String> classes = before.hypotheses().classes();
        List<List<Integer>> groups = new ArrayList<>();
        for (int c = 0; c < classes.size(); c++) {
            if (c > 0 && isNext(classes.get(c - 1), classes.get(c)) && isAlike(before, after, c - 1, c)) {
                groups.get(groups.size() - 1).add(c);
            } else {
                groups.add(new ArrayList<>(List.of(c)));
            }
        }
        return groups;
    }

    private static boolean isNext(String one, String other) {
        return one.startsWith(Suspects.MAIN)
                && other.startsWith(Suspects.MAIN)
                && Suspects.pipeOf(one).equals(Suspects.pipeOf(other));
    }

    private static boolean isAlike(Belief before, Belief after, int one, int other) {
        double a = after.ofClass(one) * before.ofClass(other);
        double b = after.ofClass(other) * before.ofClass(one);
        return a <= ALIKE * b && b <= ALIKE * a;
    }

    private static ReadingRow row(
            List<Integer> group, Belief before, Belief after, Prediction prediction, Reading reading, Trust trust) {
        Hypotheses all = before.hypotheses();
        double was = group.stream().mapToDouble(before::ofClass).sum();
        double is = group.stream().mapToDouble(after::ofClass).sum();
        List<String> classes = group.stream().map(all.classes()::get).toList();
        if (prediction instanceof NumericPrediction numeric) {
            List<Band> bands = bands(group, before, was, numeric, trust);
            double half = numeric.instrument().resolution() / 2;
            double y = ((Reading.Shown) reading).value();
            boolean fits = bands.stream().anyMatch(b -> y >= b.low() - half && y <= b.high() + half);
            return new ReadingRow(classes, bands, List.of(), fits, was, is);
        }
        List<Double> odds = odds(group, before, was, (CategoryPrediction) prediction);
        boolean fits = odds.get(((Reading.Seen) reading).category()) >= RARE;
        return new ReadingRow(classes, List.of(), odds, fits, was, is);
    }

    private static List<Band> bands(
            List<Integer> group, Belief before, double was, NumericPrediction prediction, Trust trust) {
        List<Band> all = new ArrayList<>();
        for (int h = 0; h < prediction.size(); h++) {
            if (group.contains(before.hypotheses().classOf(h)) && before.probability(h) * group.size() >= SHARE * was) {
                double reach = REACH * prediction.sigma(h, trust);
                double low = Math.max(prediction.instrument().low(), prediction.mean(h) - reach);
                all.add(new Band(
                        low, Math.max(low, Math.min(prediction.instrument().high(), prediction.mean(h) + reach))));
            }
        }
        all.sort(Comparator.comparingDouble(Band::low));
        List<Band> apart = new ArrayList<>();
        for (Band next : all) {
            Band last = apart.isEmpty() ? null : apart.get(apart.size() - 1);
            if (last != null && next.low() <= last.high()) {
                apart.set(apart.size() - 1, new Band(last.low(), Math.max(last.high(), next.high())));
            } else {
                apart.add(next);
            }
        }
        return apart;
    }

    private static List<Double> odds(List<Integer> group, Belief before, double was, CategoryPrediction prediction) {
        double[] sums = new double[prediction.categories()];
        for (int h = 0; h < prediction.size(); h++) {
            if (group.contains(before.hypotheses().classOf(h))) {
                for (int y = 0; y < sums.length; y++) {
                    sums[y] += before.probability(h) / was * prediction.probability(h, y);
                }
            }
        }
        List<Double> odds = new ArrayList<>();
        for (double sum : sums) {
            odds.add(sum);
        }
        return odds;
    }
}
