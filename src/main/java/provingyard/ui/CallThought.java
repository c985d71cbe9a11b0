package provingyard.ui;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import provingyard.diagnosis.Belief;

/**
 * What a test changed in what the evidence says: generated from the belief before and after it.
 *
 * @param ruledOut kinds of fault that were possible before and are as good as out of the question now, the likeliest
 *     first
 * @param left kinds that remain, the likeliest first
 * @param gained bits by which the uncertainty shrank; negative where it grew
 */
record CallThought(List<String> ruledOut, List<Left> left, double gained) {

    /** Probability that makes a kind worth a word, and under which it is as good as out of the question. */
    private static final double WORTH = 0.015;

    private static final double OUT = 0.004;

    private static final double POSSIBLE = 0.02;

    private static final int MOST = 3;

    /**
     * A kind of fault that remains.
     *
     * @param kind as repair classes begin
     * @param share its probability, all places together
     * @param places in how many places it may be, of those that are not out of the question
     */
    record Left(String kind, double share, int places) {}

    static CallThought of(Belief before, Belief after) {
        Map<String, Double> was = byKind(before);
        Map<String, Double> is = byKind(after);
        List<String> out = was.keySet().stream()
                .filter(k -> was.get(k) >= WORTH && is.get(k) < Math.max(OUT, 0.05 * was.get(k)))
                .sorted(Comparator.comparingDouble(k -> -was.get(k)))
                .limit(MOST)
                .toList();
        List<Left> left = is.keySet().stream()
                .filter(k -> is.get(k) >= POSSIBLE)
                .sorted(Comparator.comparingDouble(k -> -is.get(k)))
                .limit(MOST)
                .map(k -> new Left(k, is.get(k), places(after, k)))
                .toList();
        return new CallThought(out, left, before.entropy() - after.entropy());
    }

    /** Whether it told next to nothing. */
    boolean isEmpty() {
        return Math.abs(gained) < 0.05 && ruledOut.isEmpty();
    }

    /** What a repair class is of. */
    static String kind(String repairClass) {
        int end = repairClass.indexOf(':');
        return end < 0 ? repairClass : repairClass.substring(0, end);
    }

    /** All kinds of fault that a belief is about, in the order in which they first appear. */
    static Set<String> kinds(Belief belief) {
        return byKind(belief).keySet();
    }

    /** Repair classes of a kind. */
    static List<String> classes(Belief belief, String kind) {
        return belief.hypotheses().classes().stream()
                .filter(c -> kind(c).equals(kind))
                .toList();
    }

    private static Map<String, Double> byKind(Belief belief) {
        Map<String, Double> shares = new LinkedHashMap<>();
        List<String> classes = belief.hypotheses().classes();
        for (int c = 0; c < classes.size(); c++) {
            shares.merge(kind(classes.get(c)), belief.ofClass(c), Double::sum);
        }
        return shares;
    }

    private static int places(Belief belief, String kind) {
        Set<String> places = new TreeSet<>();
        for (String each : classes(belief, kind)) {
            if (belief.ofClass(each) >= OUT) {
                places.add(each);
            }
        }
        return places.size();
    }
}
