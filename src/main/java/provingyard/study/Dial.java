package provingyard.study;

import java.util.function.DoubleFunction;

/**
 * A setting that can be turned, with whatever it belongs to.
 *
 * @param low least value
 * @param high greatest value
 * @param step what a hand can set: values are whole multiples of it
 * @param now the value
 * @param at what it belongs to, with another value
 */
record Dial<T>(double low, double high, double step, double now, DoubleFunction<T> at) {

    /** What it belongs to, with the value nearest to the one asked for that can be set. */
    T turned(double value) {
        double within = Math.max(low, Math.min(high, value));
        // Divided by a whole number where that can be, so that 3.3 is 3.3 and not 3.3000000000000003.
        double perUnit = Math.rint(1 / step);
        double settable = Math.abs(perUnit * step - 1) < 1e-9
                ? Math.rint(within * perUnit) / perUnit
                : Math.rint(within / step) * step;
        return at.apply(Math.max(low, Math.min(high, settable)));
    }

    /** How far it can be turned. */
    double range() {
        return high - low;
    }
}
