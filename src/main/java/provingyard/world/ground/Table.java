package provingyard.world.ground;

import java.util.function.DoubleUnaryOperator;

/** A function of one number at even steps, read by linear interpolation; beyond its ends the last step goes on. */
final class Table {

    private final double from;
    private final double step;
    private final double[] values;

    /** The values of a function from one number up to another. */
    Table(double from, double to, double step, DoubleUnaryOperator function) {
        this.from = from;
        this.step = step;
        values = new double[(int) Math.round((to - from) / step) + 2];
        for (int i = 0; i < values.length; i++) {
            values[i] = function.applyAsDouble(from + i * step);
        }
    }

    /** The function at a number. */
    double at(double x) {
        double place = (x - from) / step;
        int i = Math.min(values.length - 2, Math.max(0, (int) place));
        return values[i] + (place - i) * (values[i + 1] - values[i]);
    }
}
