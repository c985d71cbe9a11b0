package provingyard.diagnosis;

/**
 * What an instrument adds to the truth, in the unit of its reading.
 *
 * @param sigma standard deviation that does not depend on the reading
 * @param relative standard deviation as a share of the reading
 * @param resolution smallest step shown, above 0
 * @param low lowest reading; what is lower shows as this
 * @param high highest reading; what is higher shows as this
 */
public record Instrument(double sigma, double relative, double resolution, double low, double high) {

    public Instrument {
        if (!(sigma >= 0 && relative >= 0 && resolution > 0 && high - low >= resolution)) {
            throw new IllegalArgumentException("an instrument needs noise of 0 or more, a step above 0 and a range");
        }
    }

    /** Width of the range. */
    public double range() {
        return high - low;
    }

    /** What the instrument shows for a value: rounded to its steps and kept within its range. */
    public double shown(double value) {
        double within = Math.max(low, Math.min(high, value));
        return Math.min(high, low + Math.rint((within - low) / resolution) * resolution);
    }
}
