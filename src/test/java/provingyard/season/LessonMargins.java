package provingyard.season;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.IntStream;
import provingyard.score.Loss;
import provingyard.setup.References;
import provingyard.setup.SetUp;

/** How clearly a site's textbook set-up loses less than the clock alone and the careless one. */
final class LessonMargins {

    private static final int DRAWS = 8;
    private static final double GAPS = 5;

    private LessonMargins() {}

    /**
     * Textbook loses less than both in the site's own season by a margin in USD, and on the mean of draws by five times
     * what the site says is the least gap worth teaching.
     */
    static void clear(Site site, double margin) {
        SetUp textbook = References.textbook(site.scenario()).orElseThrow();
        SetUp careless = References.careless(site.scenario()).orElseThrow();
        double own = LivedSeasons.loss(site, textbook).total();
        double mean = mean(site, textbook);
        double least = GAPS * site.scenario().costs().leastGap();
        for (SetUp other : new SetUp[] {SetUp.CLOCK_ALONE, careless}) {
            String which = other == careless ? "careless " : "clock ";
            double theirs = LivedSeasons.loss(site, other).total();
            assertTrue(theirs - own >= margin, which + theirs + ", textbook " + own);
            double theirMean = mean(site, other);
            assertTrue(theirMean - mean >= least, "mean of draws: " + which + theirMean + ", textbook " + mean);
        }
    }

    /** Mean loss in USD over drawn seasons of the same place. */
    static double mean(Site site, SetUp setUp) {
        double sum = 0;
        for (double loss : losses(site, setUp)) {
            sum += loss;
        }
        return sum / DRAWS;
    }

    private static double[] losses(Site site, SetUp setUp) {
        return IntStream.range(0, DRAWS)
                .mapToDouble(draw -> {
                    Season season = Season.drawn(site, draw, setUp);
                    season.liveToEnd();
                    return Loss.of(season).total();
                })
                .toArray();
    }
}
