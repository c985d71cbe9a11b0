package provingyard.world.electric;

import provingyard.numeric.Deterministic;

/**
 * A complex number: a phasor of volts or amperes (root mean square) or an impedance in ohms.
 *
 * @param re in phase
 * @param im a quarter period ahead
 */
public record Complex(double re, double im) {

    /** Nothing. */
    public static final Complex ZERO = new Complex(0, 0);

    /** A real number. */
    public static Complex real(double value) {
        return new Complex(value, 0);
    }

    /** Sum. */
    public Complex plus(Complex other) {
        return new Complex(re + other.re, im + other.im);
    }

    /** Difference. */
    public Complex minus(Complex other) {
        return new Complex(re - other.re, im - other.im);
    }

    /** Product. */
    public Complex times(Complex other) {
        return new Complex(re * other.re - im * other.im, re * other.im + im * other.re);
    }

    /** Quotient; not a number where the other is zero. */
    public Complex over(Complex other) {
        double square = other.re * other.re + other.im * other.im;
        return new Complex((re * other.re + im * other.im) / square, (im * other.re - re * other.im) / square);
    }

    /** The number mirrored at the real axis. */
    public Complex conjugate() {
        return new Complex(re, -im);
    }

    /** Absolute value. */
    public double size() {
        return Deterministic.hypot(re, im);
    }
}
