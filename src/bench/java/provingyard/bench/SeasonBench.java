package provingyard.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import provingyard.scenario.Sites;
import provingyard.season.Season;
import provingyard.season.SeasonEvent;
import provingyard.season.Site;
import provingyard.setup.References;
import provingyard.setup.SetUp;

/**
 * A whole season of the clinic (30 days, 5,742 cells, 7 zones, 60 heads, nights of frost, a main break), with weather, twin
 * and plumbing made before. The floor streams, once for each beat of the very same season, as much state as that beat has
 * to touch: twelve arrays, six of them written, over all cells when it rains or plants draw, over one zone's share of them
 * while one waters.
 */
@State(Scope.Benchmark)
public class SeasonBench {

    private static final int MINUTES = 1440;
    private static final int RAIN_BEAT = 5;
    private static final int WET_BEAT = 30;
    private static final int DRY_BEAT = 60;

    /** The set-up lived. */
    @Param({"textbook", "clock"})
    public String setUp;

    private Site site;
    private SetUp lived;
    private int[] beats;
    private double[][] written;
    private double[][] read;

    /** Lives the season once, to know its beats. */
    @Setup
    public void open() {
        site = Site.of(Sites.open("quillback-clinic").orThrow());
        lived = setUp.equals("clock")
                ? SetUp.CLOCK_ALONE
                : References.textbook(site.scenario()).orElseThrow();
        Season season = Season.begin(site, lived);
        season.liveToEnd();
        int cells = season.snapshot().film().length;
        beats = beats(season, cells);
        written = arrays(cells);
        read = arrays(cells);
    }

    private static double[][] arrays(int cells) {
        double[][] arrays = new double[6][cells];
        Arrays.stream(arrays).forEach(a -> Arrays.fill(a, 0.5));
        return arrays;
    }

    /** Cells to touch in each beat of a season. */
    private static int[] beats(Season season, int cells) {
        int zones = season.site().scenario().schedule().zones().size();
        List<SeasonEvent> events = season.events();
        List<Integer> beats = new ArrayList<>();
        int next = 0;
        int open = 0;
        boolean rains = false;
        long lastWater = -DRY_BEAT;
        for (long tick = 0; tick < season.end(); tick++) {
            for (; next < events.size() && events.get(next).tick() <= tick; next++) {
                switch (events.get(next).kind()) {
                    case ZONE_ON -> open++;
                    case ZONE_OFF -> open--;
                    case RAIN_BEGAN -> rains = true;
                    case RAIN_ENDED -> rains = false;
                    default -> {}
                }
            }
            lastWater = open > 0 || rains ? tick : lastWater;
            if (open > 0) {
                beats.add(cells / zones);
            }
            if (rains && tick % RAIN_BEAT == 0) {
                beats.add(cells);
            }
            if (tick % (tick - lastWater <= DRY_BEAT ? WET_BEAT : DRY_BEAT) == 0) {
                beats.add(cells);
            }
        }
        return beats.stream().mapToInt(b -> b).toArray();
    }

    /** The season. */
    @Benchmark
    public double season() {
        Season season = Season.begin(site, lived);
        season.liveToEnd();
        return season.ledger().water().supplied();
    }

    /** The floor: the state that the season's beats touch, streamed. */
    @Benchmark
    public double floor() {
        for (int cells : beats) {
            for (int a = 0; a < written.length; a++) {
                stream(written[a], read[a], cells);
            }
        }
        return written[0][0];
    }

    private static void stream(double[] to, double[] from, int cells) {
        for (int c = 0; c < cells; c++) {
            to[c] = 0.5 * (to[c] + from[c]);
        }
    }
}
