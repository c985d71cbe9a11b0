package provingyard.world.ground;

/** A running sum that keeps the bits lost by each addition (Neumaier 1974), so that a season's balance closes. */
final class Sum {

    private double sum;
    private double lost;

    /** Adds a value. */
    void add(double value) {
        double next = sum + value;
        lost += Math.abs(sum) >= Math.abs(value) ? sum - next + value : value - next + sum;
        sum = next;
    }

    /** The sum now. */
    double value() {
        return sum + lost;
    }

    Sum copy() {
        Sum copy = new Sum();
        copy.sum = sum;
        copy.lost = lost;
        return copy;
    }
}
