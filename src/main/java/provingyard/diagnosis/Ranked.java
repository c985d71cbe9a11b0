package provingyard.diagnosis;

/**
 * A possible next test with its worth.
 *
 * @param gain expected bits
 * @param minutes minutes from where one stands
 */
public record Ranked(Action action, double gain, double minutes) {

    /** Bits per minute. */
    public double rate() {
        return gain / minutes;
    }
}
