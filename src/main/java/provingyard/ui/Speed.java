package provingyard.ui;

/** How fast time runs. */
public enum Speed {
    /** Real time: a minute is a minute. */
    REAL(1 / 60.0),
    /** A minute a second. */
    SIXTY(1),
    /** Ten minutes a second. */
    SIX_HUNDRED(10),
    /** Six hours a second. */
    SWIFT(360),
    /** As fast as it goes. */
    MOST(Double.POSITIVE_INFINITY);

    private final double minutesPerSecond;

    Speed(double minutesPerSecond) {
        this.minutesPerSecond = minutesPerSecond;
    }

    /** Minutes of the season lived in a second of the clock. */
    public double minutesPerSecond() {
        return minutesPerSecond;
    }
}
