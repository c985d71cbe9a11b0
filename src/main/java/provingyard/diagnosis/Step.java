package provingyard.diagnosis;

import java.util.Set;

/**
 * One action of a service call with what the score needs to know of it.
 *
 * @param gain bits expected before it was done
 * @param minutes minutes it took
 * @param bestRate bits per minute of the best action then possible
 * @param before entropy before it, bits
 * @param after entropy after it, bits
 * @param targetProbability for digs and swaps: probability then of what was dug up or swapped; 1 for others
 * @param tellsApart whether the leading repair class and its nearest rival predicted different outcomes
 * @param breaches what was unsafe about it
 */
public record Step(
        String action,
        Action.Kind kind,
        double gain,
        double minutes,
        double bestRate,
        double before,
        double after,
        double targetProbability,
        boolean tellsApart,
        Set<Hazard> breaches) {

    /** Bits below which a test is redundant (design). */
    public static final double REDUNDANT = 0.05;

    /** Probability below which a dig or swap is unsupported (design). */
    public static final double SUPPORTED = 0.25;

    public Step {
        breaches = Set.copyOf(breaches);
    }

    /**
     * Bits that the best action would have told in the same minutes, no more than what was left to be told: a dig of half an
     * hour is not held against thirty minutes of looks that would have run out of anything to tell.
     */
    public double bestBits() {
        return Math.max(gain, Math.min(bestRate * minutes, before));
    }

    /** Share of the best bits, 0 to 1; 1 where nothing could have been told. */
    public double share() {
        return bestBits() > 0 ? Math.min(1, gain / bestBits()) : 1;
    }

    /** Bits given away: {@code min(c rho*, H) - c rho}, with H the bits that were left. */
    public double regret() {
        return Math.max(0, bestBits() - gain);
    }

    /** Bits by which uncertainty fell, negative where it rose. Shown, never scored. */
    public double realised() {
        return before - after;
    }

    /** Bits told beyond what could be expected. Shown, never scored. */
    public double luck() {
        return realised() - gain;
    }

    /** Whether its outcome was as good as known. */
    public boolean redundant() {
        return kind.judged() && gain < REDUNDANT;
    }

    /** Whether something was dug up or swapped that the evidence did not point to. */
    public boolean unsupported() {
        return (kind == Action.Kind.DIG || kind == Action.Kind.SWAP) && targetProbability < SUPPORTED;
    }
}
