package provingyard.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import provingyard.season.Season;
import provingyard.season.SeasonEvent;

/**
 * What a season's beats touch at the least: once for each beat of the very same season, twelve arrays, six of them written,
 * streamed over all cells when it rains or plants draw, over one zone's share of them while one waters.
 */
final class Beats {

    private static final int RAIN_BEAT = 5;
    private static final int WET_BEAT = 30;
    private static final int DRY_BEAT = 60;
    private static final int ARRAYS = 6;

    private final int[] cellsOfBeat;
    private final double[][] written;
    private final double[][] read;

    private Beats(int[] cellsOfBeat, int cells) {
        this.cellsOfBeat = cellsOfBeat;
        written = arrays(cells);
        read = arrays(cells);
    }

    /** The beats of a season that was lived. */
    static Beats of(Season lived) {
        int cells = lived.snapshot().film().length;
        return new Beats(beats(lived, cells), cells);
    }

    private static double[][] arrays(int cells) {
        double[][] arrays = new double[ARRAYS][cells];
        Arrays.stream(arrays).forEach(a -> Arrays.fill(a, 0.5));
        return arrays;
    }

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

    /** Streams the state of all beats. */
    double stream() {
        for (int cells : cellsOfBeat) {
            for (int a = 0; a < ARRAYS; a++) {
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
