package provingyard.picture;

import provingyard.numeric.Deterministic;
import provingyard.scenario.Plumbing.Head;

/**
 * A head's pattern: p(t) = head + r t u + w t², t from 0 at the head to 1 at its edge, u a unit vector within the arc,
 * w the wind's carry at the edge. The square is a drawing convention: drops slow down, so wind acts most at the end.
 *
 * @param radius r in m
 * @param driftX w east in m
 * @param driftY w north in m
 */
record Jet(Head head, double radius, double driftX, double driftY) {

    /** East of a bearing in degrees at t. */
    double x(double bearing, double t) {
        return head.at().x() + Deterministic.sin(Math.toRadians(bearing)) * radius * t + driftX * t * t;
    }

    double y(double bearing, double t) {
        return head.at().y() + Deterministic.cos(Math.toRadians(bearing)) * radius * t + driftY * t * t;
    }

    /** The same with more or less reach and carry. */
    Jet scaled(double reach, double carry) {
        return new Jet(head, radius * reach, driftX * carry, driftY * carry);
    }

    double drift() {
        return Deterministic.hypot(driftX, driftY);
    }

    boolean full() {
        return head.sweep() >= 359.5;
    }

    /** Outline of the watered sector. */
    Path sector() {
        double from = head.from();
        double sweep = Math.min(360, head.sweep());
        int n = Math.max(8, (int) Math.round(sweep / 9));
        Path.Builder b = Path.builder();
        if (full()) {
            for (int i = 0; i <= n; i++) {
                double a = from + sweep * i / n;
                if (i == 0) {
                    b.moveTo(x(a, 1), y(a, 1));
                } else {
                    b.lineTo(x(a, 1), y(a, 1));
                }
            }
        } else {
            b.moveTo(x(from, 0), y(from, 0));
            for (int i = 1; i <= 5; i++) {
                b.lineTo(x(from, i / 5.0), y(from, i / 5.0));
            }
            for (int i = 1; i <= n; i++) {
                double a = from + sweep * i / n;
                b.lineTo(x(a, 1), y(a, 1));
            }
            for (int i = 4; i >= 0; i--) {
                b.lineTo(x(from + sweep, i / 5.0), y(from + sweep, i / 5.0));
            }
        }
        b.close();
        return b.build();
    }
}
