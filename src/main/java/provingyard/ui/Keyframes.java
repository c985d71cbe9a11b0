package provingyard.ui;

import java.util.TreeMap;
import java.util.TreeSet;
import provingyard.season.Season;

/**
 * Copies of a season at minutes apart, from which any lived minute is replayed. They begin a quarter of a day apart; when
 * there are too many, every second one goes and the rest stand twice as far apart, so that a long season takes no more
 * memory than a short one. How many are kept depends on the memory at hand: a cell takes about 100 bytes of a copy, and as
 * much again where the copy knows the unwatered twin.
 */
final class Keyframes {

    private static final long FIRST_SPACING = 360;
    private static final int LEAST = 24;
    private static final int MOST = 128;
    private static final double SHARE_OF_MEMORY = 1 / 6.0;
    private static final double BYTES_A_CELL = 200;

    private final TreeMap<Long, Season> copies = new TreeMap<>();
    /** Minutes at which something was decided. */
    private final TreeSet<Long> pinned = new TreeSet<>();

    private final int most;
    private long spacing = FIRST_SPACING;

    /**
     * Keyframes of a yard.
     *
     * @param cells of the yard
     * @param memory bytes that the program may use in all
     */
    Keyframes(int cells, long memory) {
        double room = SHARE_OF_MEMORY * memory / (BYTES_A_CELL * Math.max(1, cells));
        most = (int) Math.max(LEAST, Math.min(MOST, room));
    }

    private Keyframes(Keyframes other, long tick) {
        most = other.most;
        spacing = other.spacing;
        copies.putAll(other.copies.headMap(tick, true));
        pinned.addAll(other.pinned.headSet(tick, true));
    }

    /** Keyframes of their own with the copies up to a minute. */
    Keyframes upTo(long tick) {
        return new Keyframes(this, tick);
    }

    /** Most copies kept beside those of decisions. */
    int most() {
        return most;
    }

    /**
     * Keeps a copy of this very minute for good: something was decided at it that no earlier copy knows of, so that a
     * replay must not begin before it.
     */
    void pin(Season season) {
        keep(season);
        pinned.add(season.tick());
    }

    private void keep(Season season) {
        copies.put(season.tick(), season.copy());
    }

    /** A minute was lived: keeps a copy when one is due. */
    void pass(Season season) {
        if (season.tick() % spacing == 0) {
            keep(season);
            if (copies.size() - pinned.size() > most) {
                spacing *= 2;
                copies.keySet().removeIf(tick -> tick % spacing != 0 && !pinned.contains(tick));
            }
        }
    }

    /** The last copy at or before a minute; not to be changed, but copied. */
    Season at(long tick) {
        return copies.floorEntry(tick).getValue();
    }

    /** The newest copy; not to be changed, but copied. */
    Season last() {
        return copies.lastEntry().getValue();
    }

    /** Forgets what lies after a minute. */
    void forgetAfter(long tick) {
        copies.tailMap(tick, false).clear();
        pinned.tailSet(tick, false).clear();
    }

    int size() {
        return copies.size();
    }
}
