package provingyard.diagnosis;

/**
 * How far predictions and readings are trusted. Both defaults are design, not measurement.
 *
 * @param modelError share of a predicted value that a real technician could not know: roughness of pipes, drift of
 *     supply
 * @param outliers probability of a reading that has nothing to do with the truth; keeps one odd reading from killing it
 */
public record Trust(double modelError, double outliers) {

    /** Five per cent of model error, one odd reading in two hundred. */
    public static final Trust USUAL = new Trust(0.05, 0.005);

    /** Nothing but the instrument's own noise. */
    public static final Trust FULL = new Trust(0, 0);

    public Trust {
        if (!(modelError >= 0 && outliers >= 0 && outliers < 1)) {
            throw new IllegalArgumentException("shares must lie between 0 and 1");
        }
    }
}
