package provingyard.world.hydraulics;

import java.util.List;
import provingyard.numeric.Deterministic;
import provingyard.numeric.FixedPower;

/**
 * The loss laws of all links in flat arrays, with what Newton's method needs near zero flow.
 *
 * <p>Near zero the slope dh/dq of a power law vanishes. Below the flow where it would fall under a floor the law is a
 * straight line of that slope, and the rest of the curve is shifted to meet it, so loss and slope stay continuous. With
 * a floor of 1e-3 m per m3/s the shift is below 1e-10 m on any pipe of a yard. A link with no loss at all gets 1e-5 m
 * per m3/s.
 *
 * <p>One-way links (check valves, backflow preventers, pumps, regulators) answer reverse flow with a resistance of
 * 1e12 m per m3/s: at 60 m of back pressure 6e-11 m3/s, reported as zero.
 */
final class LinkLaws {

    /** Resistance of a one-way link to reverse flow, m per m3/s. */
    static final double REVERSE = 1e12;

    private static final double FLOOR = 1e-3;
    private static final double FLOOR_NO_LOSS = 1e-5;
    private static final int POWER = 0;
    private static final int DARCY = 1;
    private static final int CURVE = 2;
    private static final int PUMP = 3;
    private static final FixedPower POWER_0_852 = FixedPower.withExponent(Constants.HAZEN_FLOW_EXPONENT - 1);

    private final int[] form;
    private final boolean[] oneWay;
    private final double[] r;
    private final double[] k;
    private final double[] floor;
    private final double[] floorFlow;
    private final double[] shift;
    private final double[] relativeRoughness;
    private final double[] reynoldsPerFlow;
    private final double[] atRest;
    private final FixedPower[] power;
    private final double[][] curveFlow;
    private final double[][] curveLoss;

    /** Loss of the last evaluated link, m. */
    double loss;
    /** Slope dh/dq of the last evaluated link, m per m3/s. */
    double slope;

    LinkLaws(List<LinkLaw> laws, boolean[] oneWay) {
        int n = laws.size();
        this.oneWay = oneWay.clone();
        form = new int[n];
        r = new double[n];
        k = new double[n];
        floor = new double[n];
        floorFlow = new double[n];
        shift = new double[n];
        relativeRoughness = new double[n];
        reynoldsPerFlow = new double[n];
        atRest = new double[n];
        power = new FixedPower[n];
        curveFlow = new double[n][];
        curveLoss = new double[n][];
        for (int l = 0; l < n; l++) {
            LinkLaw law = laws.get(l);
            if (law instanceof LinkLaw.Power p) {
                setPower(l, p);
            } else if (law instanceof LinkLaw.Darcy d) {
                setDarcy(l, d);
            } else if (law instanceof LinkLaw.Curve c) {
                setCurve(l, c);
            } else if (law instanceof LinkLaw.PumpCurve p) {
                setPump(l, p);
            }
        }
    }

    private LinkLaws(LinkLaws o) {
        form = o.form;
        oneWay = o.oneWay;
        r = o.r;
        k = o.k;
        floor = o.floor;
        floorFlow = o.floorFlow;
        shift = o.shift;
        relativeRoughness = o.relativeRoughness;
        reynoldsPerFlow = o.reynoldsPerFlow;
        atRest = o.atRest;
        power = o.power;
        curveFlow = o.curveFlow;
        curveLoss = o.curveLoss;
    }

    /** The same laws with result fields of its own, for another solver or thread. */
    LinkLaws forSolver() {
        return new LinkLaws(this);
    }

    private void setPower(int l, LinkLaw.Power law) {
        form[l] = POWER;
        power[l] = POWER_0_852;
        r[l] = law.r();
        k[l] = law.k();
        setFloor(l, Constants.HAZEN_FLOW_EXPONENT);
    }

    private void setDarcy(int l, LinkLaw.Darcy law) {
        form[l] = DARCY;
        r[l] = law.resistance();
        k[l] = law.k();
        relativeRoughness[l] = law.relativeRoughness();
        reynoldsPerFlow[l] = law.reynoldsPerFlow();
        floor[l] = FLOOR_NO_LOSS;
    }

    private void setCurve(int l, LinkLaw.Curve law) {
        form[l] = CURVE;
        curveFlow[l] = law.flowsM3s().clone();
        curveLoss[l] = law.lossesM().clone();
        double[] loss = curveLoss[l];
        for (int i = 1; i < loss.length; i++) {
            loss[i] = Math.max(loss[i], loss[i - 1] + FLOOR_NO_LOSS * (curveFlow[l][i] - curveFlow[l][i - 1]));
        }
        atRest[l] = loss[0];
    }

    private void setPump(int l, LinkLaw.PumpCurve law) {
        form[l] = PUMP;
        power[l] = FixedPower.withExponent(law.c() - 1);
        r[l] = law.b();
        atRest[l] = -law.h0();
        setFloor(l, law.c());
    }

    /** Finds the flow at which the slope of r q^m + k q^2 reaches the floor, by bisection in log scale. */
    private void setFloor(int l, double m) {
        floor[l] = r[l] == 0 && k[l] == 0 ? FLOOR_NO_LOSS : FLOOR;
        double low = -700;
        double high = 5;
        for (int i = 0; i < 100; i++) {
            double middle = 0.5 * (low + high);
            if (powerSlope(l, m, Deterministic.exp(middle)) < floor[l]) {
                low = middle;
            } else {
                high = middle;
            }
        }
        double q = Deterministic.exp(high);
        if (m <= 1) {
            // The slope falls with flow: no floor needed but at zero, where it has no bound.
            q = 1e-9;
            floor[l] = r[l] * Deterministic.pow(q, m - 1);
        }
        floorFlow[l] = q;
        shift[l] = floor[l] * q - q * (r[l] * Deterministic.pow(q, m - 1) + k[l] * q);
    }

    private double powerSlope(int l, double m, double q) {
        return m * r[l] * Deterministic.pow(q, m - 1) + 2 * k[l] * q;
    }

    /** Whether the link lets no reverse flow pass. */
    boolean isOneWay(int l) {
        return oneWay[l];
    }

    /** Loss at no flow, m: what a one-way link needs before it opens. Zero but for loss curves and pumps. */
    double lossAtRest(int l) {
        return atRest[l];
    }

    /** Sets {@link #loss} and {@link #slope} for a flow q, m3/s. */
    void evaluate(int l, double q) {
        if (q < 0 && oneWay[l]) {
            loss = atRest[l] + REVERSE * q;
            slope = REVERSE;
            return;
        }
        switch (form[l]) {
            case POWER -> evaluatePlain(l, q);
            case DARCY -> evaluateDarcy(l, q);
            case CURVE -> evaluateCurve(l, q);
            default -> evaluatePump(l, q);
        }
    }

    /** Sets {@link #loss} and {@link #slope} of a link with a plain power law for a flow q, m3/s. */
    void evaluatePlain(int l, double q) {
        double size = Math.abs(q);
        if (size <= floorFlow[l]) {
            loss = floor[l] * q;
            slope = floor[l];
            return;
        }
        // No test for r = 0 here: an open valve costs less with the power than with a branch that misses.
        double friction = r[l] * POWER_0_852.of(size);
        double minor = k[l] * size;
        loss = Math.copySign(size * (friction + minor) + shift[l], q);
        slope = Constants.HAZEN_FLOW_EXPONENT * friction + 2 * minor;
    }

    /**
     * The flow at which the loss is a given drop of head: Newton's method held in a bracket.
     *
     * @param dropM head at the first node less head at the second, m
     * @param guess a flow to start from, m3/s
     */
    double flow(int l, double dropM, double guess) {
        if (oneWay[l] && dropM <= atRest[l]) {
            return (dropM - atRest[l]) / REVERSE;
        }
        double sign = oneWay[l] || dropM >= 0 ? 1 : -1;
        double target = sign * dropM;
        double low = 0;
        double high = Math.max(Math.abs(guess), 1e-6);
        evaluate(l, high);
        while (loss < target) {
            low = high;
            high *= 4;
            evaluate(l, high);
        }
        double q = Math.min(Math.max(Math.abs(guess), low), high);
        for (int i = 0; i < 200 && high - low > 1e-15 * high; i++) {
            evaluate(l, q);
            if (loss > target) {
                high = q;
            } else {
                low = q;
            }
            double next = q - (loss - target) / slope;
            if (Math.abs(next - q) <= 1e-15 * q) {
                break;
            }
            q = next > low && next < high ? next : 0.5 * (low + high);
        }
        return sign * q;
    }

    private void evaluateDarcy(int l, double q) {
        double size = Math.abs(q);
        double re = reynoldsPerFlow[l] * size;
        double minor = k[l] * size;
        if (re <= 2000) {
            double linear = Math.max(64 * r[l] / reynoldsPerFlow[l], floor[l]);
            loss = q * (linear + minor);
            slope = linear + 2 * minor;
            return;
        }
        double f = Friction.darcyFactor(re, relativeRoughness[l]);
        double fSlope = Friction.darcyFactorSlope(re, relativeRoughness[l]);
        loss = q * (r[l] * f * size + minor);
        slope = r[l] * size * (2 * f + fSlope) + 2 * minor;
    }

    private void evaluateCurve(int l, double q) {
        double[] x = curveFlow[l];
        double[] y = curveLoss[l];
        int last = x.length - 1;
        if (q >= x[last]) {
            double ratio = q / x[last];
            loss = y[last] * ratio * ratio;
            slope = Math.max(2 * y[last] * ratio / x[last], FLOOR_NO_LOSS);
            return;
        }
        int i = 1;
        while (q >= x[i]) {
            i++;
        }
        slope = (y[i] - y[i - 1]) / (x[i] - x[i - 1]);
        loss = y[i - 1] + slope * (q - x[i - 1]);
    }

    private void evaluatePump(int l, double q) {
        if (q <= floorFlow[l]) {
            loss = atRest[l] + floor[l] * q;
            slope = floor[l];
            return;
        }
        double part = r[l] * power[l].of(q);
        loss = atRest[l] + q * part + shift[l];
        slope = (power[l].exponent() + 1) * part;
    }
}
