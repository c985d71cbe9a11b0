package provingyard.season;

import java.util.BitSet;

/** The minutes at which a sensor, or one that might have stood in its stead, was tripped. Immutable. */
public final class Trips {

    private final BitSet minutes;

    private Trips(BitSet minutes) {
        this.minutes = minutes;
    }

    static Trips of(BitSet minutes) {
        return new Trips((BitSet) minutes.clone());
    }

    /** Whether the controller saw it tripped when it decided on a minute: what was shown at the end of the one before. */
    public boolean seenAt(long tick) {
        return tick > 0 && minutes.get((int) (tick - 1));
    }

    /** Minutes from {@code from} to before {@code until} in which the controller saw it tripped. */
    public int seen(long from, long until) {
        long first = Math.max(1, from);
        return until <= first
                ? 0
                : minutes.get((int) (first - 1), (int) (until - 1)).cardinality();
    }

    /** The same of those in which it saw another tripped as well. */
    public int seenWith(Trips other, long from, long until) {
        BitSet both = (BitSet) minutes.clone();
        both.and(other.minutes);
        return new Trips(both).seen(from, until);
    }
}
