package provingyard.sensor;

import java.util.List;

/**
 * The body of a flow sensor by nominal size. A table of our own for an invented wheel that gives 16 pulses per metre of
 * flow through its bore and starts 0.03 m/s early (the offset); bores are those of class 200 PVC pipe. Real makes
 * differ: a technician reads the numbers off the body in hand.
 *
 * @param size nominal size in m
 * @param bore inner diameter in m
 * @param pulses pulses per litre, the K of frequency = K (Q + offset)
 * @param offset m3/s
 */
public record FlowBody(double size, double bore, double pulses, double offset) {

    /** Velocity in m/s under which the wheel stands still. */
    public static final double LOWEST_VELOCITY = 0.1;

    private static final double INCH = 0.0254;
    private static final double LITRE_A_MINUTE = 1e-3 / 60;

    private static final List<FlowBody> TABLE = List.of(
            body(0.75, 0.930, 36.51, 0.79),
            body(1, 1.189, 22.34, 1.29),
            body(1.25, 1.502, 14.00, 2.06),
            body(1.5, 1.720, 10.67, 2.70),
            body(2, 2.149, 6.84, 4.21),
            body(2.5, 2.601, 4.67, 6.17),
            body(3, 3.166, 3.15, 9.14),
            body(4, 4.072, 1.90, 15.12));

    private static FlowBody body(double inches, double bore, double pulses, double offset) {
        return new FlowBody(inches * INCH, bore * INCH, pulses, offset * LITRE_A_MINUTE);
    }

    /** All sizes, smallest first. */
    public static List<FlowBody> all() {
        return TABLE;
    }

    /** The body nearest to a nominal size in m. */
    public static FlowBody of(double size) {
        FlowBody best = TABLE.get(0);
        for (FlowBody body : TABLE) {
            if (Math.abs(body.size - size) < Math.abs(best.size - size)) {
                best = body;
            }
        }
        return best;
    }

    /** Flow in m3/s below which the wheel stands still: 0.1 m/s through its bore. */
    public double cannotSeeBelow() {
        return LOWEST_VELOCITY * Math.PI / 4 * bore * bore;
    }
}
