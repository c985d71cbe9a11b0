package provingyard.world.electric;

/**
 * The coil of a valve's solenoid: resistance R and inductance L in series, Z = R + j 2 pi f L. The plunger out leaves an
 * air gap, so little inductance and the larger inrush current; seated it closes the gap, and the smaller holding current
 * flows. Losses in its iron are left out.
 *
 * <p>Shorted turns are a second winding on the same core that is closed on itself (a transformer with a shorted
 * secondary). With a share s of all turns, coupling k and w = 2 pi f: the rest has R (1 - s) and L1 = L (1 - s)^2, the
 * shorted ones R s and L2 = L s^2, M = k sqrt(L1 L2), and seen from the leads Z = R (1 - s) + j w L1 + (w M)^2 / (R s + j w
 * L2) (coupled circuits, any textbook of circuit theory). They carry I2 = -j w M I1 / (R s + j w L2), against the rest, so
 * each ampere at the leads pulls less. Behind a transformer's and wires' resistance the current
 * grows much and the pull falls slowly.
 *
 * @param ohms DC resistance at 20 °C in ohm
 * @param seatedHenry inductance with the plunger in, H
 * @param outHenry inductance with the plunger out, H
 * @param pullInAmps A (root mean square, through all turns) that draw the plunger in
 * @param holdAmps A (root mean square, through all turns) that hold it
 * @param open the winding is broken
 * @param shortedTurns share of turns that are shorted, 0 up to but not 1
 * @param shortOhms a short from lead to lead in ohm; infinite where there is none
 */
public record Coil(
        double ohms,
        double seatedHenry,
        double outHenry,
        double pullInAmps,
        double holdAmps,
        boolean open,
        double shortedTurns,
        double shortOhms) {

    /** Coupling k between turns on one core (no source; near 1). */
    static final double COUPLING = 0.98;

    /**
     * A usual coil of the 24 V AC class: 30 ohm, 0.40 A inrush and 0.25 A holding at 24 V and 60 Hz; pulled in by 70 % of
     * that inrush, held by half of that holding current (all common practice, no source).
     */
    public static final Coil USUAL = new Coil(30, 0.2419, 0.1378, 0.28, 0.125, false, 0, Double.POSITIVE_INFINITY);

    public Coil {
        Conditions.above(ohms, "ohms");
        Conditions.above(shortOhms, "shortOhms");
        if (!(shortedTurns >= 0 && shortedTurns < 1)) {
            throw new IllegalArgumentException("Share of shorted turns " + shortedTurns + " is not from 0 to below 1");
        }
    }

    /** Impedance in ohm of the winding at w = 2 pi f (0 for direct current), °C. */
    Complex impedance(double w, double celsius, boolean seated) {
        double all = Copper.warmed(ohms, celsius);
        double rest = 1 - shortedTurns;
        Complex own = new Complex(all * rest, w * henry(seated) * rest * rest);
        if (shortedTurns == 0) {
            return own;
        }
        double wm = mutual(w, seated);
        return own.plus(Complex.real(wm * wm).over(shorted(w, celsius, seated)));
    }

    /** Current in A that, through all turns, would pull as hard as the winding does with a current at its leads. */
    double pull(Complex amps, double w, double celsius, boolean seated) {
        if (shortedTurns == 0) {
            return amps.size();
        }
        Complex induced = new Complex(0, -mutual(w, seated)).times(amps).over(shorted(w, celsius, seated));
        return amps.times(Complex.real(1 - shortedTurns))
                .plus(induced.times(Complex.real(shortedTurns)))
                .size();
    }

    private Complex shorted(double w, double celsius, boolean seated) {
        double s = shortedTurns;
        return new Complex(Copper.warmed(ohms, celsius) * s, w * henry(seated) * s * s);
    }

    private double mutual(double w, boolean seated) {
        return w * COUPLING * henry(seated) * (1 - shortedTurns) * shortedTurns;
    }

    private double henry(boolean seated) {
        return seated ? seatedHenry : outHenry;
    }

    Coil asOpen() {
        return new Coil(ohms, seatedHenry, outHenry, pullInAmps, holdAmps, true, shortedTurns, shortOhms);
    }

    Coil withShortedTurns(double share) {
        return new Coil(ohms, seatedHenry, outHenry, pullInAmps, holdAmps, open, share, shortOhms);
    }

    Coil withShort(double leadToLead) {
        return new Coil(ohms, seatedHenry, outHenry, pullInAmps, holdAmps, open, shortedTurns, leadToLead);
    }
}
