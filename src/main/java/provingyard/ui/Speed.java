package provingyard.ui;

/** How fast time runs. */
public enum Speed {
    /** Real time: a minute is a minute. */
    REAL(1 / 60.0, "1×"),
    /** A minute a second. */
    SIXTY(1, "60×"),
    /** Ten minutes a second. */
    SIX_HUNDRED(10, "600×"),
    /** Six hours a second. */
    SWIFT(360, "21600×"),
    /** As fast as it goes. */
    MOST(Double.POSITIVE_INFINITY, "Max");

    private final double minutesPerSecond;
    private final String sign;

    Speed(double minutesPerSecond, String sign) {
        this.minutesPerSecond = minutesPerSecond;
        this.sign = sign;
    }

    /** Minutes of the season lived in a second of the clock. */
    public double minutesPerSecond() {
        return minutesPerSecond;
    }

    /** What its button shows. */
    public String sign() {
        return sign;
    }
}
