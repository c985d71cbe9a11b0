package provingyard.study;

import java.util.function.LongSupplier;

/**
 * How long a search will still take, from how long it took so far. The clock is the caller's: what is computed never
 * looks at one.
 */
public final class Pace {

    private static final double NANOS = 1e9;

    private final LongSupplier nanos;
    private final long began;

    /**
     * Begins to count.
     *
     * @param nanos a clock in ns, such as {@code System::nanoTime}
     */
    public Pace(LongSupplier nanos) {
        this.nanos = nanos;
        began = nanos.getAsLong();
    }

    /** Seconds since it began. */
    public double seconds() {
        return (nanos.getAsLong() - began) / NANOS;
    }

    /**
     * Seconds that are left when {@code done} of {@code of} seasons were lived, at the mean pace so far; infinite while
     * none was.
     */
    public double secondsLeft(int done, int of) {
        return done == 0 ? Double.POSITIVE_INFINITY : seconds() * Math.max(0, of - done) / done;
    }
}
