package provingyard.study;

import java.util.List;

/**
 * What each choice cost against the mark, on the same weather: exact Shapley values, which add up to the whole gap.
 *
 * @param gap the trainee's loss less the mark's
 * @param shares one per choice that the lesson leaves open, in the order of {@link Choice}
 */
public record Shares(Amounts gap, List<Share> shares) {

    /**
     * One choice's part of the gap.
     *
     * @param cost what it cost more than the mark's choice (negative: it gained)
     */
    public record Share(Choice choice, Amounts cost) {}

    public Shares {
        shares = List.copyOf(shares);
    }
}
