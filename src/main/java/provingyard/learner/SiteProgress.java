package provingyard.learner;

/**
 * How far a learner came on one site.
 *
 * @param best best score, 0 to 100; null for none yet
 * @param seasons seasons lived to their end
 * @param season the season that is being lived or was lived last; null for none
 * @param answer what they would change, said before the last debrief; null where they were not asked
 * @param call the service call that was left before its end; null for none
 */
public record SiteProgress(Integer best, int seasons, SavedSeason season, Answer answer, SavedCall call) {

    /** Nothing done yet. */
    public static final SiteProgress NONE = new SiteProgress(null, 0, null, null, null);

    /** Longest reason that is kept, in characters. */
    public static final int LONGEST = 400;

    /**
     * What a learner would change after a season.
     *
     * @param choice which choice, as the debrief calls it; empty for none
     * @param why in their own words, at most {@link #LONGEST} characters
     */
    public record Answer(String choice, String why) {
        public Answer {
            why = why.length() > LONGEST ? why.substring(0, LONGEST) : why;
        }
    }

    /** The same after one more season. */
    public SiteProgress lived(Integer score) {
        Integer better = score == null || best != null && best >= score ? best : score;
        return new SiteProgress(better, seasons + 1, season, answer, call);
    }

    /** The same with another season kept; null for none. */
    public SiteProgress with(SavedSeason next) {
        return new SiteProgress(best, seasons, next, answer, call);
    }

    /** The same with another answer. */
    public SiteProgress answering(Answer next) {
        return new SiteProgress(best, seasons, season, next, call);
    }

    /** The same with a service call left before its end; null for none. */
    public SiteProgress leaving(SavedCall next) {
        return new SiteProgress(best, seasons, season, answer, next);
    }
}
