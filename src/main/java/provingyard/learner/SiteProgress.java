package provingyard.learner;

/**
 * How far a learner came on one site.
 *
 * @param best best score, 0 to 100; null for none yet
 * @param seasons seasons lived to their end
 * @param season the season that is being lived or was lived last; null for none
 */
public record SiteProgress(Integer best, int seasons, SavedSeason season) {

    /** Nothing done yet. */
    public static final SiteProgress NONE = new SiteProgress(null, 0, null);

    /** The same after one more season. */
    public SiteProgress lived(Integer score) {
        Integer better = score == null || best != null && best >= score ? best : score;
        return new SiteProgress(better, seasons + 1, season);
    }

    /** The same with another season kept; null for none. */
    public SiteProgress with(SavedSeason next) {
        return new SiteProgress(best, seasons, next);
    }
}
