package provingyard.diagnosis;

/**
 * What was stated to be wrong.
 *
 * @param repairClass repair class stated
 * @param probability what the evidence gave it then
 * @param hit how near the truth it is
 * @param confidence confidence stated, 0 to 1; NaN where none was asked for
 */
public record Declaration(String repairClass, double probability, Hit hit, double confidence) {

    /** How near the truth a statement is. */
    public enum Hit {
        WRONG(0),
        /** The next cell, or the right branch. */
        NEAR(0.5),
        RIGHT(1);

        private final double credit;

        Hit(double credit) {
            this.credit = credit;
        }

        /** Share of the credit. */
        public double credit() {
            return credit;
        }
    }

    /** Squared difference of confidence and truth (Brier 1950), 0 to 1, less is better; formative only. */
    public double brier() {
        double truth = hit == Hit.RIGHT ? 1 : 0;
        return (confidence - truth) * (confidence - truth);
    }
}
