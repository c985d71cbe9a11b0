package provingyard.world.hydraulics;

import provingyard.numeric.Deterministic;

/** Head loss h(q) of an open link from its first to its second node, in m for q in m3/s, rising with q. */
sealed interface LinkLaw {

    /** h = r q^1.852 + k q^2, odd in q: pipes by Hazen-Williams, valves (r = 0), supply curves (k = 0). */
    record Power(double r, double k) implements LinkLaw {}

    /**
     * h = (resistance f(Re) + k) q^2, odd in q: pipes by Darcy-Weisbach.
     *
     * @param resistance D L / d^5
     * @param relativeRoughness e / d
     * @param reynoldsPerFlow Re / q
     */
    record Darcy(double resistance, double relativeRoughness, double reynoldsPerFlow, double k) implements LinkLaw {}

    /** Straight lines between measured points; beyond the last it grows with the square of flow. No reverse flow. */
    record Curve(double[] flowsM3s, double[] lossesM) implements LinkLaw {}

    /** h = -(h0 - b q^c): a pump's lift counts as negative loss. No reverse flow. */
    record PumpCurve(double h0, double b, double c) implements LinkLaw {

        /**
         * Through three points, the first at zero flow: c = ln((h0-h2)/(h0-h1)) / ln(q2/q1), b = (h0-h1) / q1^c (power
         * law form of a pump curve, as in EPANET 2's manual, Rossman 2000).
         */
        static PumpCurve through(double h0, double q1, double h1, double q2, double h2) {
            double c = Deterministic.log((h0 - h2) / (h0 - h1)) / Deterministic.log(q2 / q1);
            return new PumpCurve(h0, (h0 - h1) / Deterministic.pow(q1, c), c);
        }
    }
}
