package provingyard.world.hydraulics;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import provingyard.numeric.FixedPower;

/**
 * The law of one outlet, q = k p^n, turned round: pressure head p(q) in m and its slope, as the solver needs it.
 *
 * <p>Low-pressure law (own choice, so that the law has a finite slope everywhere): below p0 the flow falls linearly to
 * zero. p0 is 1 mm for n below 0.3 (a compensating outlet does not compensate without pressure), 1 nm for n up to 1, 1
 * micrometre above.  Below zero pressure nothing flows.
 */
final class OutletLaw {

    /** Least exponent n. */
    static final double LEAST_EXPONENT = 0.05;
    /** Greatest exponent n. */
    static final double GREATEST_EXPONENT = 2;

    /** Pressure head below which an outlet with n from 0.3 to 1 takes the low-pressure law, m. */
    static final double LOW_PRESSURE_M = 1e-9;

    private static final Map<Double, OutletLaw> MADE = new ConcurrentHashMap<>();

    private final FixedPower forward;
    private final FixedPower backward;
    private final double n;
    private final double lowPressureM;
    private final double lowShare;

    private OutletLaw(double n) {
        this.n = n;
        forward = FixedPower.withExponent(n);
        backward = FixedPower.withExponent(1 / n);
        lowPressureM = n < 0.3 ? 1e-3 : n <= 1 ? LOW_PRESSURE_M : 1e-6;
        lowShare = forward.of(lowPressureM);
    }

    /** The law for an exponent; made once and kept. */
    static OutletLaw withExponent(double n) {
        return MADE.computeIfAbsent(n, OutletLaw::new);
    }

    /** Exponent n. */
    double exponent() {
        return n;
    }

    /** Flow at a pressure head, m3/s, zero for none. */
    double flow(double k, double pressureM) {
        if (pressureM <= 0) {
            return 0;
        }
        if (pressureM < lowPressureM) {
            return k * lowShare * (pressureM / lowPressureM);
        }
        return k * (n == 0.5 ? Math.sqrt(pressureM) : forward.of(pressureM));
    }

    /** Pressure head at a flow above zero, m. */
    double pressure(double k, double q) {
        double x = q / k;
        if (x < lowShare) {
            return lowPressureM * (x / lowShare);
        }
        return n == 0.5 ? x * x : backward.of(x);
    }

    /** Slope dp/dq at a flow above zero with its pressure head, m per m3/s. */
    double slope(double k, double q, double pressureM) {
        return pressureM < lowPressureM ? lowPressureM / (k * lowShare) : pressureM / (n * q);
    }
}
