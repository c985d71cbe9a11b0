package provingyard.quantity;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** The nearest word to a mistyped one, for "maybe you meant". */
public final class Nearest {

    private static final int LONGEST = 64;

    private Nearest() {}

    /**
     * The candidate with the smallest edit distance (Levenshtein, upper and lower case alike), the first of equals.
     *
     * @return empty when the nearest differs in more than a third of its letters (at least one may differ)
     */
    public static Optional<String> of(String word, Collection<String> candidates) {
        String best = null;
        int least = Integer.MAX_VALUE;
        if (word.length() > LONGEST) {
            return Optional.empty();
        }
        for (String candidate : candidates) {
            if (Math.abs(candidate.length() - word.length()) >= least || candidate.length() > LONGEST) {
                continue;
            }
            int distance = distance(word.toLowerCase(Locale.ROOT), candidate.toLowerCase(Locale.ROOT));
            if (distance < least) {
                least = distance;
                best = candidate;
            }
        }
        if (best == null || least > Math.max(1, Math.max(best.length(), word.length()) / 3)) {
            return Optional.empty();
        }
        return least == Math.max(best.length(), word.length()) ? Optional.empty() : Optional.of(best);
    }

    /** Edit distance: insertions, deletions, replacements and swaps of neighbours (Damerau 1964, restricted form). */
    static int distance(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                d[i][j] = i == 0 || j == 0 ? i + j : cheapest(d, a, b, i, j);
            }
        }
        return d[a.length()][b.length()];
    }

    private static int cheapest(int[][] d, String a, String b, int i, int j) {
        boolean same = a.charAt(i - 1) == b.charAt(j - 1);
        int least = Math.min(d[i - 1][j - 1] + (same ? 0 : 1), Math.min(d[i - 1][j], d[i][j - 1]) + 1);
        boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(least, d[i - 2][j - 2] + 1) : least;
    }
}
