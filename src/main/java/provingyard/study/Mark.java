package provingyard.study;

import provingyard.score.Loss;
import provingyard.setup.SetUp;

/**
 * The best set-up found for a site: best on average over draws of its climate, events and faults, without hindsight.
 *
 * @param site scenario id
 * @param content hash of the scenario it was found for
 * @param engine version of the simulator that found it
 * @param setUp what is placed and how it is set
 * @param meanClock mean loss of the clock alone over the draws, USD
 * @param meanMark mean loss of the mark over the same draws, USD
 * @param draws how many draws
 * @param own what the clock alone and the mark lose in the site's own season
 */
public record Mark(
        String site,
        String content,
        String engine,
        SetUp setUp,
        double meanClock,
        double meanMark,
        int draws,
        OwnSeason own) {

    /** Losses in the site's own season, lived once when the mark was found, so that nobody waits for them again. */
    public record OwnSeason(Loss clock, Loss mark) {}

    /** Mean gap between the clock alone and the mark over the draws, USD. */
    public double meanGap() {
        return meanClock - meanMark;
    }
}
