package provingyard.diagnosis;

/**
 * One thing that may be wrong.
 *
 * @param kind what is wrong, such as {@code mainlineBreak}, or {@code none}
 * @param place where: a pipe cell, a valve, a wire run, a sensor
 * @param size how much
 * @param repairClass what would be repaired. Hypotheses that lead to the same repair share it; belief is judged by
 *     class, so that nobody must guess a size
 */
public record Hypothesis(String kind, String place, Size size, String repairClass) {

    /** Sizes of a fault in three bins, each several times the one before; what they mean is the kind's affair. */
    public enum Size {
        /** The kind has no sizes. */
        PLAIN,
        SMALL,
        MEDIUM,
        LARGE
    }

    public Hypothesis {
        if (kind.isBlank() || repairClass.isBlank()) {
            throw new IllegalArgumentException("a hypothesis needs a kind and a repair class");
        }
    }
}
