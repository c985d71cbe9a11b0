package provingyard.ui;

import java.util.TreeMap;
import provingyard.season.Season;

/**
 * Copies of a season at minutes apart, from which any lived minute is replayed. They begin half a day apart; when there
 * are more than {@link #MOST}, every second one goes and the rest stand twice as far apart, so that a long season takes no
 * more memory than a short one. A copy of a yard of 6,000 cells is about 1 MB.
 */
final class Keyframes {

    /** Most copies kept. */
    static final int MOST = 72;

    private static final long FIRST_SPACING = 720;

    private final TreeMap<Long, Season> copies = new TreeMap<>();
    private long spacing = FIRST_SPACING;

    /** Keeps a copy of this very minute, whatever the spacing. */
    void keep(Season season) {
        copies.put(season.tick(), season.copy());
    }

    /** A minute was lived: keeps a copy when one is due. */
    void pass(Season season) {
        if (season.tick() % spacing == 0) {
            keep(season);
            if (copies.size() > MOST) {
                spacing *= 2;
                copies.keySet().removeIf(tick -> tick % spacing != 0);
            }
        }
    }

    /** The last copy at or before a minute; not to be changed, but copied. */
    Season at(long tick) {
        return copies.floorEntry(tick).getValue();
    }

    /** Forgets what lies after a minute. */
    void forgetAfter(long tick) {
        copies.tailMap(tick, false).clear();
    }

    int size() {
        return copies.size();
    }
}
