package provingyard.ui;

/**
 * Which minutes the ribbon shows. It stands still while the head moves within it, so that what lies under the hand stays
 * there; it follows time that runs, and turns over when the head leaves it.
 */
final class RibbonWindow {

    private static final int MARGIN = 12;

    private final long whole;
    private long span;
    private long from;

    /** A window of so many minutes over a season of so many minutes. */
    RibbonWindow(long whole, long span) {
        this.whole = whole;
        span(span);
    }

    /** Another width in minutes; 0 for the whole season. */
    void span(long minutes) {
        span = minutes == 0 ? whole : Math.min(whole, minutes);
        from = Math.min(from, whole - span);
    }

    /** Takes in where the head is and whether time runs. */
    void follow(long head, boolean running) {
        long margin = span / MARGIN;
        long last = running ? from + span - margin : from + span;
        if (head > last) {
            from = head - span + margin;
        } else if (head <= from) {
            from = head - margin;
        }
        from = Math.max(0, Math.min(whole - span, from));
    }

    long from() {
        return from;
    }

    long to() {
        return from + span;
    }
}
