package provingyard.score;

/**
 * Points between the clock alone (0) and the mark (100) on the same weather.
 *
 * @param points raw points, may lie outside 0 to 100; null where there is no score
 * @param reason why there is no score; null where there is one
 */
public record Score(Double points, Reason reason) {

    /** Why a season has no score. */
    public enum Reason {
        /** The mark of this site is not known yet. */
        MARK_NOT_KNOWN,
        /** The clock alone does as well as the mark: the site teaches nothing. */
        GAP_TOO_SMALL,
        /** The sensors cost more than the budget. */
        OVER_BUDGET,
        /** The season was not lived to its end. */
        NOT_LIVED
    }

    /** No score, with its reason. */
    public static Score none(Reason reason) {
        return new Score(null, reason);
    }

    /**
     * Score = 100 (clock - trainee) / G with the guarded gap G = max(clock - mark, meanGap / 2).
     *
     * @param clock loss of the clock alone on this season's weather, USD
     * @param trainee loss of the trainee, USD
     * @param mark loss of the mark on this season's weather, USD
     * @param meanGap mean of clock - mark over draws of the climate, USD
     * @param leastGap smallest mean gap that teaches something, USD
     */
    public static Score of(double clock, double trainee, double mark, double meanGap, double leastGap) {
        if (meanGap < leastGap) {
            return none(Reason.GAP_TOO_SMALL);
        }
        double gap = Math.max(clock - mark, meanGap / 2);
        return new Score(100 * (clock - trainee) / gap, null);
    }

    /** Points as shown: clamped to 0 to 100 and rounded; only where there is a score. */
    public int shown() {
        return (int) Math.round(Math.max(0, Math.min(100, points)));
    }

    /** Whether the raw points, rounded, lie outside 0 to 100, so that a note is due. */
    public boolean outside() {
        return points != null && Math.round(points) != shown();
    }
}
