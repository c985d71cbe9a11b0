package provingyard.bench;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import provingyard.season.Season;
import provingyard.setup.References;
import provingyard.setup.SetUp;
import provingyard.study.Debriefing;
import provingyard.study.Mark;
import provingyard.study.MarkStore;
import provingyard.study.Progress;
import provingyard.study.SharesStudy;

/**
 * From the end of a season of the clinic, lived in this JVM as in the window, to what its debrief opens with (loss beside
 * clock and mark, and moments), and then to the shares; the mark is stored.
 */
public final class DebriefTimes {

    private static final int AGAIN = 9;

    private DebriefTimes() {}

    /** Prints the measure alone. */
    public static void main(String[] args) {
        System.out.println(measure());
    }

    static String measure() {
        Clinic clinic = Clinic.shipped(false);
        SetUp careless = References.careless(clinic.site().scenario()).orElseThrow();
        Season season = Season.begin(clinic.site(), careless);
        season.liveToEnd();
        double first = opening(season);
        double firstShares = shares(season);
        double[] openings = new double[AGAIN];
        double[] shares = new double[AGAIN];
        for (int i = 0; i < AGAIN; i++) {
            openings[i] = opening(season);
            shares[i] = shares(season);
        }
        Arrays.sort(openings);
        Arrays.sort(shares);
        return String.format(
                Locale.ROOT,
                "A debrief of the clinic opens %.2f s after the season's end the first time, its shares %.2f s later;"
                        + " again %.2f and %.2f s (medians of %d)",
                first,
                firstShares,
                openings[AGAIN / 2],
                shares[AGAIN / 2],
                AGAIN);
    }

    private static double opening(Season season) {
        long begun = System.nanoTime();
        Optional<Mark> mark = MarkStore.find(season.site());
        if (Debriefing.of(season, mark, "").best().isEmpty()) {
            throw new IllegalStateException("the clinic ships its mark");
        }
        return (System.nanoTime() - begun) / 1e9;
    }

    private static double shares(Season season) {
        Mark mark = MarkStore.find(season.site()).orElseThrow();
        long begun = System.nanoTime();
        SharesStudy.of(season, mark.setUp(), Optional.of(mark.own().mark()), Progress.SILENT);
        return (System.nanoTime() - begun) / 1e9;
    }
}
